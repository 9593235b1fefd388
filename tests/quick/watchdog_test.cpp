// The watchdog notices an event that holds up the window, and no other. Time is let pass by hand.
#include "app/watch/application.h"

#include <QKeyEvent>
#include <QTest>
#include <QTimer>
#include <QWindow>

namespace stow::watch {

namespace {

using namespace std::chrono_literals;

Nanoseconds wall, processor;
std::vector<Held> told;

class Slow : public QWindow { // takes as long over a key as it is told to
public:
    Nanoseconds takes = 0ms;
    std::function<void()> within;

protected:
    void keyPressEvent(QKeyEvent*) override
    {
        wall += takes;
        processor += takes / 2;
        if (within) within();
    }
};

} // namespace

class WatchdogTest : public QObject {
    Q_OBJECT
private slots:
    void init() { told.clear(); }
    void notices_what_holds_the_window_up();
    void passes_over_what_is_quick();
    void counts_events_within_an_event_once();
    void takes_a_loop_that_waits_for_no_delay();
    void names_what_was_called();

private:
    static void press(Slow& window)
    {
        QKeyEvent key(QEvent::KeyPress, Qt::Key_F2, Qt::NoModifier);
        QCoreApplication::sendEvent(&window, &key);
    }
};

void WatchdogTest::notices_what_holds_the_window_up()
{
    Slow window;
    window.takes = 140ms;
    press(window);
    QCOMPARE(told.size(), std::size_t{1});
    QCOMPARE(to_words(told.front()),
             QStringLiteral("The window stood still for 140 ms (processor 70 ms): KeyPress F2 to QWindow"));
}

void WatchdogTest::passes_over_what_is_quick()
{
    Slow window;
    window.takes = 100ms; // and no more
    for (int i = 0; i < 5; ++i) press(window);
    QVERIFY(told.empty());
}

void WatchdogTest::counts_events_within_an_event_once()
{
    Slow window, other;
    window.takes = 60ms;
    other.takes = 60ms;
    window.within = [&] { press(other); };
    press(window);
    QCOMPARE(told.size(), std::size_t{1});
    QVERIFY(told.front().on_the_wall == 120ms);
}

void WatchdogTest::takes_a_loop_that_waits_for_no_delay()
{
    Slow window;
    window.takes = 80ms; // and 90 after it: never more than 100 without a pause
    window.within = [] {
        QEventLoop loop;
        QTimer::singleShot(20, &loop, [&loop] {
            wall += 90ms;
            loop.quit();
        });
        loop.exec();
    };
    press(window);
    QVERIFY(told.empty());
    window.takes = 130ms; // before it waits
    press(window);
    QVERIFY(!told.empty());
    QVERIFY(told.front().on_the_wall == 130ms);
}

void WatchdogTest::names_what_was_called()
{
    Slow window;
    window.takes = 101ms;
    window.within = [] {
        static_cast<Application&>(*QCoreApplication::instance()).calls("stow::view::PlanController", "useOuter");
    };
    press(window);
    QCOMPARE(told.size(), std::size_t{1});
    QVERIFY2(told.front().by.endsWith(QStringLiteral(", in PlanController::useOuter")), qPrintable(told.front().by));
}

} // namespace stow::watch

int main(int argc, char** argv)
{
    using namespace stow::watch;
    Application application(argc, argv, [](const Held& held) { told.push_back(held); }, Watchdog::longest,
                            {[] { return wall; }, [] { return processor; }});
    WatchdogTest test;
    return QTest::qExec(&test, argc, argv);
}
#include "watchdog_test.moc"
