// The disk fails beneath the open window: it is said there, nothing goes on behind it, and once the disk works again
// the work goes on where it stood. The disk is a faulty one beneath SQLite (tests/core/book/faulty_disk.h).
#include "core/book/orders.h"
#include "tests/core/book/faulty_disk.h"
#include "tests/quick/workshop.h"

#include <QQuickStyle>

namespace stow::quick {

using shop::OrderState;

class FailingTest : public QObject {
    Q_OBJECT
private slots:
    void initTestCase() { QQuickStyle::setStyle(QStringLiteral("Basic")); }
    void says_that_the_disk_is_full_and_goes_on_when_it_is_not();
    void says_that_the_book_cannot_be_reached();
    void keeps_what_was_typed();
    void tells_of_work_beside_the_window();
    void closes_by_key();

private:
    static bool reads(Workshop& shop, const char* words)
    {
        shop.at().settle();
        return shop.at().reads(QString::fromUtf8(words));
    }
    static void arrange(Workshop& shop)
    {
        shop.furnish();
        shop.remember_titles();
        shop.take_in("Harbour Stall", "harbour_stall.csv");
    }
    static int called_off(const Workshop& shop)
    {
        return static_cast<int>(book::orders_in(shop.book(), OrderState::called_off).size());
    }
    std::mt19937 dice_{4};
};

void FailingTest::says_that_the_disk_is_full_and_goes_on_when_it_is_not()
{
    book::FaultyDisk disk;
    Workshop shop;
    arrange(shop);
    QVERIFY(shop.open());
    shop.at().press(Qt::Key_F1);
    QTRY_VERIFY(shop.desk().arrivals()->current() != 0);
    const int before = called_off(shop);
    disk.fail(book::FaultyDisk::Fault::full, 1);
    shop.at().letter(Qt::Key_X);
    QTRY_VERIFY2(reads(shop, "The disk is full"), qPrintable(shop.at().all_words()));
    QVERIFY(reads(shop, "Every finished step is safe, the last:"));
    QVERIFY(reads(shop, "Make room on the disk"));
    QVERIFY(shop.is_open());

    shop.at().press(Qt::Key_F2); // nothing goes on behind it
    shop.at().letter(Qt::Key_R);
    QCOMPARE(shop.desk().place(), view::Desk::Place::Arrivals);
    shop.at().press(Qt::Key_Return); // still full
    QVERIFY(reads(shop, "The disk is full"));

    disk.repair(dice_);
    QCOMPARE(called_off(shop), before);
    shop.at().press(Qt::Key_Return);
    QTRY_VERIFY2(!reads(shop, "The disk is full"), qPrintable(shop.at().all_words()));
    QVERIFY(reads(shop, "The shop book works again"));
    shop.at().letter(Qt::Key_X);
    QTRY_VERIFY2(called_off(shop) == before + 1,
                 qPrintable(AtTheWindow::name_of(shop.at().focused()) + shop.desk().notice()));
}

void FailingTest::says_that_the_book_cannot_be_reached()
{
    book::FaultyDisk disk;
    Workshop shop;
    arrange(shop);
    QVERIFY(shop.open());
    shop.at().press(Qt::Key_F1);
    disk.fail(book::FaultyDisk::Fault::write_fails, 1);
    shop.at().press(Qt::Key_F2); // the place is remembered, past every step
    QTRY_VERIFY2(reads(shop, "The shop book cannot be reached"), qPrintable(shop.at().all_words()));
    disk.repair(dice_);
    shop.at().press(Qt::Key_Return);
    QTRY_VERIFY2(!reads(shop, "cannot be reached"), qPrintable(shop.at().all_words()));
}

void FailingTest::keeps_what_was_typed()
{
    book::FaultyDisk disk;
    Workshop shop;
    arrange(shop);
    QVERIFY(shop.open());
    shop.at().press(Qt::Key_F1);
    shop.at().letter(Qt::Key_N);
    const auto into = [&](const char* field, const char* words) {
        QQuickItem* item = shop.at().named(QString::fromUtf8(field), QAccessible::EditableText);
        QVERIFY2(item != nullptr, field);
        item->forceActiveFocus(Qt::TabFocusReason);
        QMetaObject::invokeMethod(item, "selectAll");
        shop.at().type(QString::fromUtf8(words));
        shop.at().settle();
    };
    into("Name", "Jorun Vik");
    into("House and street", "Kaia 4");
    into("Postcode", "5003");
    into("Town", "Bergsund");
    into("Country", "NO");
    into("What is ordered: count and code, with commas between", "1 INK-SEA-30");
    const std::size_t before = book::orders(shop.book()).size();
    disk.fail(book::FaultyDisk::Fault::full, 1);
    shop.at().press(Qt::Key_Return);
    QTRY_VERIFY2(reads(shop, "The disk is full"), qPrintable(shop.at().all_words()));
    disk.repair(dice_);
    QCOMPARE(book::orders(shop.book()).size(), before);
    shop.at().press(Qt::Key_Return);
    QTRY_VERIFY(!reads(shop, "The disk is full"));
    QVERIFY2(reads(shop, "nothing was kept"), qPrintable(shop.at().all_words())); // beside what was typed
    shop.at().press(Qt::Key_Return);
    QTRY_COMPARE(book::orders(shop.book()).size(), before + 1);
}

void FailingTest::tells_of_work_beside_the_window()
{
    book::FaultyDisk disk;
    Workshop shop;
    shop.plan_the_morning();
    QVERIFY(shop.open());
    shop.at().press(Qt::Key_F2);
    disk.fail(book::FaultyDisk::Fault::full, 1);
    shop.at().letter(Qt::Key_R); // planned and written on other threads
    QTRY_VERIFY2_WITH_TIMEOUT(!shop.desk().failure().isEmpty(), qPrintable(shop.desk().notice()), 300'000);
    QVERIFY2(reads(shop, "Every finished step is safe"), qPrintable(shop.at().all_words()));
    QVERIFY(!shop.desk().plan()->working());
    disk.repair(dice_);
    shop.at().press(Qt::Key_Return);
    QTRY_VERIFY2(shop.desk().failure().isEmpty(), qPrintable(shop.at().all_words()));
    QVERIFY(shop.is_open());
}

void FailingTest::closes_by_key()
{
    book::FaultyDisk disk;
    Workshop shop;
    arrange(shop);
    QVERIFY(shop.open());
    shop.at().press(Qt::Key_F1);
    disk.fail(book::FaultyDisk::Fault::full, 1);
    shop.at().letter(Qt::Key_X);
    QTRY_VERIFY(reads(shop, "The disk is full"));
    shop.at().press(Qt::Key_Q, Qt::ControlModifier);
    QTRY_VERIFY(!shop.is_open());
    disk.repair(dice_);
}

} // namespace stow::quick

WINDOW_TEST_MAIN(stow::quick::FailingTest)
#include "failing_test.moc"
