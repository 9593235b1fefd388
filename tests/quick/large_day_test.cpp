// A day of thousands of orders: every one is in its list, and only what is seen is alive.
#include "core/book/orders.h"
#include "tests/quick/many_orders.h"

#include <QQuickStyle>

namespace stow::quick {

namespace {

constexpr int orders = 2000;
constexpr int most_alive = 60; // rows of all lists of a window of 1280 x 800, with those kept ready above and below

} // namespace

class LargeDayTest : public QObject {
    Q_OBJECT
private slots:
    void initTestCase() { QQuickStyle::setStyle(QStringLiteral("Basic")); }
    void keeps_few_rows_alive_in_the_arrivals();
    void keeps_few_rows_alive_in_the_plan();

private:
    static QQuickItem* list(Workshop& shop, const char* name)
    {
        return shop.at().named(QString::fromLatin1(name), QAccessible::List);
    }
    static int alive(QQuickItem* list) // whether they are seen or not
    {
        return static_cast<int>(list->property("contentItem").value<QQuickItem*>()->childItems().size());
    }
    static void scroll_through(Workshop& shop, QQuickItem* list, int rows);
};

void LargeDayTest::scroll_through(Workshop& shop, QQuickItem* list, int rows)
{
    QVERIFY(list != nullptr);
    QTRY_COMPARE(list->property("count").toInt(), rows);
    QVERIFY2(alive(list) <= most_alive, qPrintable(QString::number(alive(list))));
    for (int at = 0; at < 20; ++at) {
        list->setProperty("currentIndex", at * rows / 20);
        shop.at().settle();
        QVERIFY2(alive(list) <= most_alive, qPrintable(QStringLiteral("%1 at %2").arg(alive(list)).arg(at)));
    }
    list->setProperty("currentIndex", rows - 1);
    shop.at().settle();
    QVERIFY(alive(list) > 3); // they are really counted
    QVERIFY2(alive(list) <= most_alive, qPrintable(QString::number(alive(list))));
}

void LargeDayTest::keeps_few_rows_alive_in_the_arrivals()
{
    Workshop shop;
    shop.furnish();
    take_in_many(shop, orders);
    QVERIFY(shop.open());
    shop.at().press(Qt::Key_F1);
    shop.at().settle();
    scroll_through(shop, list(shop, "Orders"), orders);
}

void LargeDayTest::keeps_few_rows_alive_in_the_plan()
{
    Workshop shop;
    shop.furnish();
    take_in_many(shop, orders);
    plan_many(shop);
    const auto parcels = static_cast<int>(book::parcels_in(shop.book(), shop::ParcelState::planned).size());
    QVERIFY(parcels > orders / 2);
    QVERIFY(shop.open());
    shop.at().press(Qt::Key_F2);
    shop.at().settle();
    QTRY_VERIFY(list(shop, "Parcels") != nullptr);
    QTRY_COMPARE_WITH_TIMEOUT(shop.desk().plan()->rows()->total(), parcels, 300'000); // read a little at a time
    scroll_through(shop, list(shop, "Parcels"), parcels);
}

} // namespace stow::quick

WINDOW_TEST_MAIN(stow::quick::LargeDayTest)
#include "large_day_test.moc"
