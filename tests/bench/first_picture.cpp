// Linked beside the program's own main: says when the first picture of the window was handed over, and ends it.
// One line: nanoseconds of CLOCK_MONOTONIC, milliseconds of processor time of the process until then.
#include <QCoreApplication>
#include <QQuickWindow>

#include <cstdio>
#include <ctime>

namespace {

long long nanoseconds(clockid_t clock)
{
    timespec t{};
    clock_gettime(clock, &t);
    return t.tv_sec * 1'000'000'000LL + t.tv_nsec;
}

class FirstPicture : public QObject {
public:
    using QObject::QObject;

    bool eventFilter(QObject* watched, QEvent* event) override
    {
        auto* window = event->type() == QEvent::Expose ? qobject_cast<QQuickWindow*>(watched) : nullptr;
        if (window == nullptr || known_) return false;
        known_ = true;
        connect(window, &QQuickWindow::frameSwapped, this, [] {
            std::printf("%lld %lld\n", nanoseconds(CLOCK_MONOTONIC), nanoseconds(CLOCK_PROCESS_CPUTIME_ID) / 1'000'000);
            std::fflush(stdout);
            QCoreApplication::quit();
        });
        return false;
    }

private:
    bool known_ = false;
};

void wait_for_it()
{
    QCoreApplication::instance()->installEventFilter(new FirstPicture(QCoreApplication::instance()));
}

} // namespace

Q_COREAPP_STARTUP_FUNCTION(wait_for_it)
