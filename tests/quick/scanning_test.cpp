// What is scanned away from the shelves and the bench: known or not, it gets an answer.
#include "core/book/orders.h"
#include "core/book/parcels.h"
#include "tests/quick/workshop.h"

#include <QQuickStyle>

namespace stow::quick {

class ScanningTest : public QObject {
    Q_OBJECT
private slots:
    void initTestCase() { QQuickStyle::setStyle(QStringLiteral("Basic")); }
    void an_unknown_code_stops_data();
    void an_unknown_code_stops();
    void a_good_says_where_goods_are_scanned();
    void a_known_number_opens_find();
    void a_foreign_code_goes_into_the_field_that_is_typed_in();

private:
    static bool reads(Workshop& shop, const QString& words)
    {
        shop.at().settle();
        return shop.at().reads(words);
    }
};

void ScanningTest::an_unknown_code_stops_data()
{
    QTest::addColumn<int>("key");
    QTest::newRow("arrivals") << static_cast<int>(Qt::Key_F1);
    QTest::newRow("plan") << static_cast<int>(Qt::Key_F2);
    QTest::newRow("hand-over") << static_cast<int>(Qt::Key_F5);
    QTest::newRow("cupboard") << static_cast<int>(Qt::Key_F9);
}

void ScanningTest::an_unknown_code_stops()
{
    QFETCH(int, key);
    Workshop shop;
    shop.plan_the_morning();
    QVERIFY(shop.open());
    shop.at().press(static_cast<Qt::Key>(key));
    shop.at().scan(QStringLiteral("4006381333931")); // the example of a GTIN-13 in Wikipedia's article, from memory
    QTRY_VERIFY2(reads(shop, QStringLiteral("Not known")), qPrintable(shop.at().all_words()));
    QVERIFY(reads(shop, QStringLiteral("“4006381333931” is no good, order, parcel or tracking number")));
    shop.at().press(Qt::Key_Space);
    QTRY_VERIFY(!reads(shop, QStringLiteral("Not known")));
}

void ScanningTest::a_good_says_where_goods_are_scanned()
{
    Workshop shop;
    shop.plan_the_morning();
    QVERIFY(shop.open());
    shop.at().press(Qt::Key_F1);
    shop.at().scan(QStringLiteral("INK-SEA-30"));
    QTRY_VERIFY2(reads(shop, QStringLiteral("Ink Sea green, 30 ml is a good")), qPrintable(shop.at().all_words()));
}

void ScanningTest::a_known_number_opens_find()
{
    Workshop shop;
    shop.plan_the_morning();
    QVERIFY(shop.open());
    shop.at().press(Qt::Key_F5);
    shop.at().scan(QStringLiteral("HS-2043")); // an order of the demo, as its shop prints it
    QTRY_VERIFY2(reads(shop, QStringLiteral("Ines Kreienberg")), qPrintable(shop.at().all_words()));
    QVERIFY(shop.at().named(QStringLiteral("Find"), QAccessible::Dialog) != nullptr);
}

void ScanningTest::a_foreign_code_goes_into_the_field_that_is_typed_in()
{
    Workshop shop;
    shop.furnish();
    QVERIFY(shop.open());
    shop.at().press(Qt::Key_F9);
    shop.at().letter(Qt::Key_N); // a new good
    QQuickItem* field = shop.at().named(QStringLiteral("GTIN"), QAccessible::EditableText);
    QVERIFY(field != nullptr);
    field->forceActiveFocus(Qt::TabFocusReason);
    shop.at().scan(QStringLiteral("4006381333931"));
    QTRY_COMPARE(field->property("text").toString(), QStringLiteral("4006381333931"));
    QVERIFY(!reads(shop, QStringLiteral("Not known")));
}

} // namespace stow::quick

WINDOW_TEST_MAIN(stow::quick::ScanningTest)
#include "scanning_test.moc"
