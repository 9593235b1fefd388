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
    void shows_what_the_book_holds_after_all_are_checked_undone_and_done_again();
    void filters_by_how_words_begin();

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
    enum class Told { everything, texts }; // of a row
    static QStringList all_of(const view::RowModel& model, Told told)
    {
        QList<QByteArray> roles = model.roleNames().values();
        std::sort(roles.begin(), roles.end());
        QStringList rows;
        for (int row = 0; row < model.count(); ++row) {
            QStringList words;
            for (const QByteArray& role : roles) {
                const QVariant value = model.value(row, QString::fromLatin1(role));
                if (told == Told::everything || value.typeId() == QMetaType::QString) words += value.toString();
            }
            rows += words.join(QLatin1Char(' '));
        }
        return rows;
    }
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

void LargeDayTest::shows_what_the_book_holds_after_all_are_checked_undone_and_done_again()
{
    Workshop shop;
    shop.furnish();
    take_in_many(shop, orders);
    QVERIFY(shop.open());
    AtTheWindow& at = shop.at();
    at.press(Qt::Key_F1);
    at.settle();
    const auto checked = [&] {
        return static_cast<int>(book::orders_in(shop.book(), shop::OrderState::checked).size());
    };
    const auto same_as_read_anew = [&] {
        const std::unique_ptr<Day> beside = shop.day().beside();
        view::ArrivalsController anew(*beside);
        anew.refresh();
        const view::ArrivalsController& shown = *shop.desk().arrivals();
        return all_of(*shop.desk().arrivals()->orders(), Told::everything) ==
                   all_of(*anew.orders(), Told::everything) &&
               shown.ready() == anew.ready() && shown.summary() == anew.summary() &&
               shown.headline() == anew.headline();
    };
    QVERIFY(same_as_read_anew());
    QCOMPARE(checked(), 0);
    at.letter(Qt::Key_R);
    QTRY_VERIFY(checked() > orders / 2);
    const int all = checked();
    QTRY_COMPARE(shop.desk().arrivals()->ready(), all);
    QVERIFY(same_as_read_anew());
    at.press(Qt::Key_Z, Qt::ControlModifier);
    QTRY_COMPARE(shop.desk().arrivals()->ready(), 0);
    QCOMPARE(checked(), 0);
    QVERIFY(same_as_read_anew());
    at.press(Qt::Key_Y, Qt::ControlModifier);
    QTRY_COMPARE(shop.desk().arrivals()->ready(), all);
    QVERIFY(same_as_read_anew());
    at.letter(Qt::Key_X); // one alone after so many
    QTRY_COMPARE(static_cast<int>(book::orders_in(shop.book(), shop::OrderState::called_off).size()), 1);
    QVERIFY(same_as_read_anew());
}

void LargeDayTest::filters_by_how_words_begin()
{
    Workshop shop;
    shop.furnish();
    take_in_many(shop, orders);
    QVERIFY(shop.open());
    AtTheWindow& at = shop.at();
    at.press(Qt::Key_F1);
    at.settle();
    view::RowModel& model = *shop.desk().arrivals()->orders();
    const QStringList all = all_of(model, Told::texts);
    const auto begun_by = [&](const QStringList& asked) { // as it was in words, word by word
        QStringList rows;
        for (const QString& row : all) {
            const QStringList words = row.toLower().simplified().split(QLatin1Char(' '));
            const bool left = std::all_of(asked.begin(), asked.end(), [&](const QString& ask) {
                return std::any_of(words.begin(), words.end(),
                                   [&](const QString& word) { return word.startsWith(ask); });
            });
            if (left) rows += row;
        }
        return rows;
    };
    at.press(Qt::Key_F6);
    QStringList typed;
    const auto type = [&](const char* more, const QStringList& asked) {
        at.type(QString::fromLatin1(more));
        at.settle();
        typed = all_of(model, Told::texts);
        QCOMPARE(typed, begun_by(asked));
        QVERIFY(!typed.empty() && typed.size() < all.size());
    };
    type("n", {QStringLiteral("n")});
    const auto by_one_letter = typed.size();
    type("i", {QStringLiteral("ni")});
    QVERIFY(typed.size() < by_one_letter);
    type(" d", {QStringLiteral("ni"), QStringLiteral("d")});
    type("k", {QStringLiteral("ni"), QStringLiteral("dk")});
    at.press(Qt::Key_Escape);
    at.settle();
    QCOMPARE(all_of(model, Told::texts), all);
}

} // namespace stow::quick

WINDOW_TEST_MAIN(stow::quick::LargeDayTest)
#include "large_day_test.moc"
