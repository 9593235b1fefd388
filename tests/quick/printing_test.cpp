// Papers to the printer, at the window.
#include "core/book/settings.h"
#include "tests/quick/print_system.h"
#include "tests/quick/workshop.h"

#include <QFile>
#include <QQuickStyle>
#include <QTest>

namespace stow::quick {

class PrintingTest : public QObject {
    Q_OBJECT
private slots:
    void initTestCase();
    void only_papers_that_have_a_printer_are_sent();
    void a_refused_paper_says_so_and_is_sent_again_once();
    void a_stopped_printer_prints_nothing_later_by_surprise();
    void a_job_that_the_system_gives_up_is_not_taken_for_printed();
    void where_nobody_says_how_it_ended_the_reasons_do();
    void a_printer_removed_with_a_paper_before_it_is_not_taken_for_printed();
    void a_paper_tried_again_and_again_is_said_and_can_be_called_back();
    void what_was_not_printed_is_known_after_a_restart();
    void ended_in_the_middle_of_printing_it_asks_for_the_paper();
    void without_a_print_system_the_day_goes_on();
    void ways_are_read_as_typed();

private:
    static bool round_started(Workshop& shop);
    std::unique_ptr<Workshop> planned_;
};

void PrintingTest::initTestCase()
{
    QQuickStyle::setStyle(QStringLiteral("Basic"));
    planned_ = std::make_unique<Workshop>();
    planned_->plan_the_morning();
}

// The label printer set in the house's settings, the plan's round begun by its key.
bool PrintingTest::round_started(Workshop& shop)
{
    if (!shop.open()) return false;
    shop.desk().cupboard()->house()->set(QStringLiteral("labels"), QStringLiteral("a4x4")); // out with the round
    shop.desk().cupboard()->house()->set(QStringLiteral("printer of labels"), QStringLiteral("LABELS, A6, roll"));
    shop.at().press(Qt::Key_F2);
    shop.at().press(Qt::Key_Return);
    shop.at().settle();
    return shop.desk().place() == view::Desk::Place::Pick;
}

void PrintingTest::only_papers_that_have_a_printer_are_sent()
{
    const FakePrintSystem system;
    Workshop shop(*planned_);
    QVERIFY(round_started(shop));
    QTRY_COMPARE(system.asked("lp").size(), 1);
    const QString asked = system.asked("lp").first();
    QVERIFY2(asked.startsWith(QStringLiteral("-d LABELS -t Stowbench -o media=A6 -o InputSlot=roll -- ")),
             qPrintable(asked));
    QVERIFY2(QFile::exists(asked.section(QStringLiteral("-- "), 1)), qPrintable(asked));
    QVERIFY(shop.desk().printTrouble().isEmpty());
}

void PrintingTest::a_refused_paper_says_so_and_is_sent_again_once()
{
    const FakePrintSystem system;
    system.tell("refuses", "lp: Error - The printer or class does not exist.\n");
    Workshop shop(*planned_);
    QVERIFY(round_started(shop)); // a removed printer: the round begins all the same
    QTRY_VERIFY2(shop.at().reads(QStringLiteral("The printer or class does not exist")),
                 qPrintable(shop.at().all_words()));
    QVERIFY(shop.at().reads(QStringLiteral("Not printed: Labels")));
    QVERIFY(shop.at().named(QStringLiteral("Send again"), QAccessible::Button) != nullptr);
    system.tell("refuses", {});
    shop.at().press(Qt::Key_P, Qt::ControlModifier);
    QTRY_COMPARE(system.asked("lp").size(), 2);
    QTRY_VERIFY(shop.desk().printTrouble().isEmpty());
    shop.at().press(Qt::Key_P, Qt::ControlModifier); // nothing is left to mend, and nothing is printed twice
    shop.at().settle();
    QTest::qWait(200);
    QCOMPARE(system.asked("lp").size(), 2);
}

void PrintingTest::a_stopped_printer_prints_nothing_later_by_surprise()
{
    const FakePrintSystem system;
    system.tell("stopped", "Paused");
    Workshop shop(*planned_);
    QVERIFY(round_started(shop));
    QTRY_VERIFY_WITH_TIMEOUT(shop.at().reads(QStringLiteral("Waiting before a stopped printer: Labels")), 15'000);
    QVERIFY(shop.at().reads(QStringLiteral("Paused")));
    QVERIFY(shop.at().named(QStringLiteral("Call it back"), QAccessible::Button) != nullptr);
    shop.at().press(Qt::Key_P, Qt::ControlModifier); // called back: it is in no queue any more
    QTRY_COMPARE(system.asked("cancel"), QStringList{QStringLiteral("LABELS-1")});
    QTRY_VERIFY(shop.at().reads(QStringLiteral("called back")));
    QCOMPARE(system.asked("lp").size(), 1);
    system.tell("stopped", {});
    shop.at().press(Qt::Key_P, Qt::ControlModifier);
    QTRY_COMPARE(system.asked("lp").size(), 2);
    QTRY_VERIFY(shop.desk().printTrouble().isEmpty());
}

void PrintingTest::a_job_that_the_system_gives_up_is_not_taken_for_printed()
{
    const FakePrintSystem system;
    Workshop shop(*planned_);
    QVERIFY(round_started(shop));
    QTRY_COMPARE(system.asked("lp").size(), 1);
    QTRY_VERIFY(book::remembered(shop.book(), "print.waiting").value_or("").find("LABELS-1") != std::string::npos);
    system.tell("state", "aborted"); // what RFC 8011 calls it
    system.tell("waiting", "");
    QTRY_VERIFY_WITH_TIMEOUT(shop.at().reads(QStringLiteral("given up by the print system: aborted")), 15'000);
    QVERIFY(shop.at().named(QStringLiteral("Send again"), QAccessible::Button) != nullptr);
    system.tell("state", {});
    shop.at().press(Qt::Key_P, Qt::ControlModifier);
    QTRY_COMPARE(system.asked("lp").size(), 2);
    QTRY_VERIFY(book::remembered(shop.book(), "print.waiting").value_or("").find("LABELS-2") != std::string::npos);
    system.tell("waiting", "");
    QTRY_VERIFY_WITH_TIMEOUT(book::remembered(shop.book(), "print.waiting").value_or("").empty(), 15'000);
    QTest::qWait(300); // until it is asked how it ended
    QVERIFY2(shop.desk().printTrouble().isEmpty(), qPrintable(shop.desk().printTrouble()));
}

// Without ipptool, or where the system forgets its jobs at once: by the reasons that lpstat names.
void PrintingTest::where_nobody_says_how_it_ended_the_reasons_do()
{
    const FakePrintSystem system;
    system.tell("untold", "");
    Workshop shop(*planned_);
    QVERIFY(round_started(shop));
    QTRY_COMPARE(system.asked("lp").size(), 1);
    QTRY_VERIFY(book::remembered(shop.book(), "print.waiting").value_or("").find("LABELS-1") != std::string::npos);
    // As lpstat -W completed -l -o writes it (cups 2.4, systemv/lpstat.c); the reason is RFC 8011's.
    system.tell("ended", "LABELS-1 root 1024 Wed Nov 25 23:12:45 2026\n\tStatus: Filter failed\n"
                         "\tAlerts: aborted-by-system\n\tqueued for LABELS\n");
    system.tell("waiting", "");
    QTRY_VERIFY_WITH_TIMEOUT(shop.at().reads(QStringLiteral("given up by the print system: aborted-by-system")),
                             15'000);
    system.tell("ended", "LABELS-2 root 1024 Wed Nov 25 23:12:45 2026\n\tAlerts: job-completed-successfully\n");
    shop.at().press(Qt::Key_P, Qt::ControlModifier);
    QTRY_COMPARE(system.asked("lp").size(), 2);
    system.tell("waiting", "");
    QTest::qWait(4'000); // longer than between two looks
    QVERIFY2(shop.desk().printTrouble().isEmpty(), qPrintable(shop.desk().printTrouble()));
}

// Its jobs are gone with it, and nobody can be asked about them.
void PrintingTest::a_printer_removed_with_a_paper_before_it_is_not_taken_for_printed()
{
    const FakePrintSystem system;
    Workshop shop(*planned_);
    QVERIFY(round_started(shop));
    QTRY_VERIFY(book::remembered(shop.book(), "print.waiting").value_or("").find("LABELS-1") != std::string::npos);
    system.tell("untold", "");
    system.tell("removed", "");
    system.tell("waiting", "");
    QTRY_VERIFY_WITH_TIMEOUT(shop.at().reads(QStringLiteral("Not printed: Labels")), 15'000);
    QVERIFY(shop.at().reads(QStringLiteral("Invalid destination name")));
    QVERIFY(shop.at().reads(QStringLiteral("see what the printer has before sending again")));
    QCOMPARE(system.asked("lp").size(), 1);
}

// The printer is enabled, but off or out of reach: the system tries again and again, and would print it at any time.
void PrintingTest::a_paper_tried_again_and_again_is_said_and_can_be_called_back()
{
    const FakePrintSystem system;
    system.tell("alerts", "\tStatus: The printer is not responding.\n\tAlerts: resources-are-not-ready\n");
    Workshop shop(*planned_);
    QVERIFY(round_started(shop));
    QTRY_VERIFY_WITH_TIMEOUT(shop.at().reads(QStringLiteral("The printer is not responding.")), 15'000);
    shop.at().press(Qt::Key_P, Qt::ControlModifier);
    QTRY_COMPARE(system.asked("cancel"), QStringList{QStringLiteral("LABELS-1")});
    QTRY_VERIFY(shop.at().reads(QStringLiteral("called back")));
    QCOMPARE(system.asked("lp").size(), 1);
}

void PrintingTest::what_was_not_printed_is_known_after_a_restart()
{
    const FakePrintSystem system;
    system.tell("refuses", "lp: Error - The printer or class does not exist.\n");
    Workshop shop(*planned_);
    QVERIFY(round_started(shop));
    QTRY_VERIFY(!shop.desk().printTrouble().isEmpty());
    shop.close();
    system.tell("refuses", {});
    QVERIFY(shop.open());
    QVERIFY2(shop.at().reads(QStringLiteral("Not printed: Labels")), qPrintable(shop.at().all_words()));
    QCOMPARE(system.asked("lp").size(), 1); // nothing by surprise
    shop.at().press(Qt::Key_P, Qt::ControlModifier);
    QTRY_COMPARE(system.asked("lp").size(), 2);
    QTRY_VERIFY(shop.desk().printTrouble().isEmpty());
    // What was on its way is looked for: it is in no queue any more. First its number must have come.
    QTRY_VERIFY(book::remembered(shop.book(), "print.waiting").value_or("").find("LABELS-2") != std::string::npos);
    system.tell("waiting", "");
    shop.close();
    QVERIFY(shop.open());
    QTest::qWait(500);
    QVERIFY2(shop.desk().printTrouble().isEmpty(), qPrintable(shop.desk().printTrouble()));
}

// Between sending and hearing of it: whether the label exists only she can see.
void PrintingTest::ended_in_the_middle_of_printing_it_asks_for_the_paper()
{
    const FakePrintSystem system;
    system.tell("slow", "");
    Workshop shop(*planned_);
    QVERIFY(round_started(shop));
    QTRY_COMPARE(system.asked("lp").size(), 1);
    shop.close();
    system.tell("slow", {});
    QVERIFY(shop.open());
    QVERIFY2(shop.at().reads(QStringLiteral("see what the printer has before sending again")),
             qPrintable(shop.at().all_words()));
    QTest::qWait(300);
    QCOMPARE(system.asked("lp").size(), 1); // not printed twice unseen
    shop.at().press(Qt::Key_P, Qt::ControlModifier);
    QTRY_COMPARE(system.asked("lp").size(), 2);
    QTRY_VERIFY(shop.desk().printTrouble().isEmpty());
}

void PrintingTest::without_a_print_system_the_day_goes_on()
{
    const QByteArray path = qgetenv("PATH");
    qputenv("PATH", "/nowhere");
    Workshop shop(*planned_);
    const bool started = round_started(shop);
    QTRY_VERIFY(shop.at().reads(QStringLiteral("the program lp cannot be started")));
    qputenv("PATH", path);
    QVERIFY(started);
}

void PrintingTest::ways_are_read_as_typed()
{
    QVERIFY(!printing::way_of(QStringLiteral("  ")));
    QCOMPARE(printing::way_of(QStringLiteral("DESK"))->printer, QStringLiteral("DESK"));
    QCOMPARE(printing::way_of(QStringLiteral("DESK, A5"))->media, QStringLiteral("A5"));
    QVERIFY(printing::way_of(QStringLiteral("DESK, A5"))->tray.isEmpty());
    QCOMPARE(printing::way_of(QStringLiteral("DESK,, upper"))->tray, QStringLiteral("upper"));
}

} // namespace stow::quick

WINDOW_TEST_MAIN(stow::quick::PrintingTest)
#include "printing_test.moc"
