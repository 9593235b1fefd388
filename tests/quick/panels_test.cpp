// While a sheet lies over a screen, Tab goes round in it and never behind it, forwards and backwards.
#include "tests/quick/workshop.h"

#include <QQuickStyle>

#include <set>

namespace stow::quick {

class PanelsTest : public QObject {
    Q_OBJECT
private slots:
    void initTestCase() { QQuickStyle::setStyle(QStringLiteral("Basic")); }
    void keep_the_tab_key_data();
    void keep_the_tab_key();
    void give_it_back_when_they_are_put_away();
    void keep_what_is_half_typed_data();
    void keep_what_is_half_typed();
    void add_nothing_by_enter_alone();
    void offer_reasons_that_suit_the_weight();
};

namespace {

QQuickItem* panel_around(QQuickItem* item)
{
    while (item != nullptr && AtTheWindow::role_of(item) != QAccessible::Dialog) item = item->parentItem();
    return item;
}

} // namespace

void PanelsTest::keep_the_tab_key_data()
{
    QTest::addColumn<int>("place");
    QTest::addColumn<int>("key");
    QTest::addColumn<bool>("control");
    QTest::addColumn<int>("least"); // places to stop at
    QTest::newRow("an order by hand") << static_cast<int>(Qt::Key_F1) << static_cast<int>(Qt::Key_N) << false << 8;
    QTest::newRow("set aside") << static_cast<int>(Qt::Key_F1) << static_cast<int>(Qt::Key_S) << false << 3;
    QTest::newRow("another outer") << static_cast<int>(Qt::Key_F2) << static_cast<int>(Qt::Key_O) << false << 2;
    QTest::newRow("find") << static_cast<int>(Qt::Key_F1) << static_cast<int>(Qt::Key_F) << true << 2;
    QTest::newRow("papers") << static_cast<int>(Qt::Key_F3) << static_cast<int>(Qt::Key_F8) << false << 3;
    QTest::newRow("a good") << static_cast<int>(Qt::Key_F9) << static_cast<int>(Qt::Key_N) << false << 10;
}

void PanelsTest::keep_the_tab_key()
{
    QFETCH(int, place);
    QFETCH(int, key);
    QFETCH(bool, control);
    QFETCH(int, least);
    Workshop shop;
    shop.plan_the_morning();
    QVERIFY(shop.open());
    shop.at().press(static_cast<Qt::Key>(place));
    shop.at().settle();
    shop.at().press(static_cast<Qt::Key>(key), control ? Qt::ControlModifier : Qt::NoModifier);
    QTRY_VERIFY2(panel_around(shop.at().focused()) != nullptr, qPrintable(shop.at().all_words()));
    const QQuickItem* panel = panel_around(shop.at().focused());
    for (const bool back : {false, true}) {
        std::set<QQuickItem*> stops;
        for (int presses = 0; presses < 60; ++presses) {
            back ? shop.at().press(Qt::Key_Backtab, Qt::ShiftModifier) : shop.at().press(Qt::Key_Tab);
            QVERIFY2(
                panel_around(shop.at().focused()) == panel,
                qPrintable(
                    QStringLiteral("after %1: %2").arg(presses + 1).arg(AtTheWindow::name_of(shop.at().focused()))));
            stops.insert(shop.at().focused());
        }
        QVERIFY2(static_cast<int>(stops.size()) >= least, qPrintable(QString::number(stops.size())));
    }
}

void PanelsTest::give_it_back_when_they_are_put_away()
{
    Workshop shop;
    shop.plan_the_morning();
    QVERIFY(shop.open());
    shop.at().press(Qt::Key_F1);
    shop.at().letter(Qt::Key_N);
    QTRY_VERIFY(panel_around(shop.at().focused()) != nullptr);
    shop.at().press(Qt::Key_Escape);
    QTRY_VERIFY(panel_around(shop.at().focused()) == nullptr);
    const QQuickItem* before = shop.at().focused();
    shop.at().press(Qt::Key_Tab); // on the screen it moves as ever
    QVERIFY(shop.at().focused() != before);
}

void PanelsTest::keep_what_is_half_typed_data()
{
    QTest::addColumn<int>("place");
    QTest::addColumn<int>("chapter");
    QTest::addColumn<QString>("field");
    QTest::newRow("an order by hand") << static_cast<int>(Qt::Key_F1) << 0 << QStringLiteral("House and street");
    QTest::newRow("a good") << static_cast<int>(Qt::Key_F9) << static_cast<int>(Qt::Key_1) << QStringLiteral("Name");
    QTest::newRow("a supply") << static_cast<int>(Qt::Key_F9) << static_cast<int>(Qt::Key_2) << QStringLiteral("Name");
}

void PanelsTest::keep_what_is_half_typed()
{
    QFETCH(int, place);
    QFETCH(int, chapter);
    QFETCH(QString, field);
    Workshop shop;
    shop.plan_the_morning();
    QVERIFY(shop.open());
    AtTheWindow& at = shop.at();
    at.press(static_cast<Qt::Key>(place));
    at.settle();
    if (chapter != 0) at.letter(static_cast<Qt::Key>(chapter));
    at.letter(Qt::Key_N);
    QTRY_VERIFY(panel_around(at.focused()) != nullptr);
    const auto typed_in = [&] { return at.named(field, QAccessible::EditableText); };
    QVERIFY2(typed_in() != nullptr, qPrintable(at.all_words()));
    typed_in()->forceActiveFocus(Qt::TabFocusReason);
    at.type(QStringLiteral("Half a wo"));
    at.press(Qt::Key_F2); // the telephone rings
    QTRY_VERIFY(typed_in() == nullptr);
    at.press(Qt::Key_F6); // keys are for the screen in sight alone
    at.settle();
    QVERIFY(at.focused() != nullptr && panel_around(at.focused()) == nullptr);
    at.press(static_cast<Qt::Key>(place));
    QTRY_VERIFY(typed_in() != nullptr);
    at.type(QStringLiteral("rd"));
    QCOMPARE(typed_in()->property("text").toString(), QStringLiteral("Half a word"));
    at.press(Qt::Key_Escape);
    QTRY_VERIFY(panel_around(at.focused()) == nullptr);
    at.press(Qt::Key_F2);
    at.settle();
    at.press(static_cast<Qt::Key>(place)); // put away, it is not there again
    at.settle();
    QVERIFY(panel_around(at.focused()) == nullptr);
}

void PanelsTest::add_nothing_by_enter_alone()
{
    Workshop shop;
    shop.plan_the_morning();
    const auto picked = shop.pick(1);
    QVERIFY(shop.open());
    AtTheWindow& at = shop.at();
    at.press(Qt::Key_F4);
    at.letter(Qt::Key_A);
    QTRY_VERIFY(panel_around(at.focused()) != nullptr);
    const auto pieces = [&] { return book::parcel(shop.book(), picked.front())->plan.pieces.size(); };
    const auto before = pieces();
    at.press(Qt::Key_Return);
    QTRY_VERIFY(at.reads(QStringLiteral("Type a code or a name")));
    QCOMPARE(pieces(), before);
    at.type(QStringLiteral("SEAL-ANCHOR"));
    at.press(Qt::Key_Return);
    QTRY_VERIFY(pieces() > before);
}

void PanelsTest::offer_reasons_that_suit_the_weight()
{
    Workshop shop;
    shop.plan_the_morning();
    shop.pick(1);
    QVERIFY(shop.open());
    AtTheWindow& at = shop.at();
    at.press(Qt::Key_F4);
    for (int step = 0; step < 60 && !shop.desk().bench()->weighing(); ++step) {
        at.press(Qt::Key_Space);
        at.settle();
    }
    QVERIFY(shop.desk().bench()->weighing());
    const auto weighed = [&](const char* grams) {
        shop.desk().bench()->weigh(QString::fromLatin1(grams));
        at.settle();
        at.press(Qt::Key_Space); // the full-screen word
        at.letter(Qt::Key_Y);
        return shop.desk().bench()->excuses();
    };
    const QStringList light = weighed("5");
    QTRY_VERIFY(at.beginning(QStringLiteral("less filler"), QAccessible::Button));
    at.press(Qt::Key_Escape);
    const QStringList heavy = weighed("4000");
    QTRY_VERIFY(at.beginning(QStringLiteral("more filler"), QAccessible::Button));
    QVERIFY(light.front() != heavy.front());
    at.press(Qt::Key_2, Qt::AltModifier); // the second of them, by its key
    QTRY_VERIFY(panel_around(at.focused()) == nullptr);
}

} // namespace stow::quick

WINDOW_TEST_MAIN(stow::quick::PanelsTest)
#include "panels_test.moc"
