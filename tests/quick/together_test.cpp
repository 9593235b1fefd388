// Many rows at a time and the way back: marked, sorted, filtered, undone and done again; two outers side by side; the
// layers of a parcel taken apart; inches in place of millimetres.
#include "app/words/book.h"
#include "app/words/measures.h"
#include "core/book/orders.h"
#include "tests/quick/workshop.h"

#include <QQuickStyle>
#include <QTest>

#include <algorithm>
#include <map>

namespace stow::quick {

using shop::OrderState;
using shop::ParcelState;

class TogetherTest : public QObject {
    Q_OBJECT
private slots:
    void initTestCase();
    void marks_rows_and_treats_them_in_one_step();
    void leaves_the_mending_of_an_address();
    void undoes_and_does_again();
    void undoes_the_take_in_itself();
    void marks_all_that_the_filter_leaves();
    void filters_whatever_the_letter_case();
    void tells_of_the_found_one_in_hand_what_happened();
    void sorts_and_keeps_the_row_in_hand();
    void lays_orders_in_piles_by_what_is_to_be_done();
    void keeps_the_plans_of_several_parcels();
    void compares_two_outers();
    void takes_the_layers_apart();
    void shows_inches_and_ounces();

private:
    std::vector<shop::HeldOrder> in(Workshop& shop, OrderState state) { return book::orders_in(shop.book(), state); }

    std::unique_ptr<Workshop> arrived_, planned_;
};

void TogetherTest::initTestCase()
{
    QQuickStyle::setStyle(QStringLiteral("Basic"));
    arrived_ = std::make_unique<Workshop>();
    arrived_->furnish();
    arrived_->remember_titles();
    arrived_->take_in("Harbour Stall", "harbour_stall.csv");
    planned_ = std::make_unique<Workshop>(*arrived_);
    planned_->check_what_is_sound();
    planned_->plan();
}

void TogetherTest::marks_rows_and_treats_them_in_one_step()
{
    Workshop shop(*arrived_);
    QVERIFY(shop.open());
    AtTheWindow& at = shop.at();
    const auto arrived = in(shop, OrderState::arrived).size();
    at.press(Qt::Key_Down, Qt::ShiftModifier);
    at.press(Qt::Key_Down, Qt::ShiftModifier);
    QTRY_VERIFY(at.reads(QStringLiteral("3 marked")));
    at.press(Qt::Key_Space); // the last one is let go
    QTRY_VERIFY(at.reads(QStringLiteral("2 marked")));

    at.press(Qt::Key_S);
    QTRY_VERIFY(at.named(QStringLiteral("Why it waits"), QAccessible::EditableText));
    QVERIFY(at.reads(QStringLiteral("Set aside: 2 orders")));
    at.type(QStringLiteral("waiting for ink"));
    at.press(Qt::Key_Tab);
    at.type(QStringLiteral("next week"));
    at.press(Qt::Key_Return);
    QTRY_VERIFY(at.reads(QStringLiteral("is not a day"))); // asked again, not dropped
    at.press(Qt::Key_A, Qt::ControlModifier);
    at.type(QStringLiteral("2026-11-01"));
    at.press(Qt::Key_Return);
    QTRY_VERIFY(at.reads(QStringLiteral("is past")));
    QCOMPARE(in(shop, OrderState::set_aside).size(), 0U);
    at.press(Qt::Key_A, Qt::ControlModifier);
    at.press(Qt::Key_Delete);
    at.press(Qt::Key_Return);
    QTRY_COMPARE(in(shop, OrderState::set_aside).size(), 2U);
    for (const shop::HeldOrder& held : in(shop, OrderState::set_aside)) QCOMPARE(held.aside_reason, "waiting for ink");
    QVERIFY(at.reads(QStringLiteral("Undo: 2 orders set aside")));
    QVERIFY(!at.reads(QStringLiteral("marked"))); // done with
    at.press(Qt::Key_F6);
    at.type(QStringLiteral("waiting")); // they lie in a pile of their own
    QTRY_VERIFY2(at.named(QStringLiteral("Set aside: 2"), QAccessible::Heading), qPrintable(at.all_words()));
    at.press(Qt::Key_Escape);
    at.settle();

    at.press(Qt::Key_Z, Qt::ControlModifier);
    QTRY_COMPARE(in(shop, OrderState::arrived).size(), arrived); // both by one undo
}

void TogetherTest::leaves_the_mending_of_an_address()
{
    Workshop shop(*arrived_);
    QVERIFY(shop.open());
    AtTheWindow& at = shop.at();
    at.letter(Qt::Key_E);
    const auto typing = [&] { return AtTheWindow::role_of(at.focused()) == QAccessible::EditableText; };
    QTRY_VERIFY(typing());
    at.type(QStringLiteral(" and more"));
    at.press(Qt::Key_Escape);
    QTRY_VERIFY(!typing());
    const auto called_off = in(shop, OrderState::called_off).size();
    at.press(Qt::Key_X); // a key of the list again
    QTRY_COMPARE(in(shop, OrderState::called_off).size(), called_off + 1);
    QVERIFY(in(shop, OrderState::called_off).front().order.to.name.find("and more") == std::string::npos);
}

void TogetherTest::undoes_and_does_again()
{
    Workshop shop(*arrived_);
    QVERIFY(shop.open());
    AtTheWindow& at = shop.at();
    const auto called_off = [&] { return in(shop, OrderState::called_off).size(); };
    QVERIFY(!at.beginning(QStringLiteral("Again:"), QAccessible::Button)); // nothing was undone
    at.press(Qt::Key_X);
    QTRY_COMPARE(called_off(), 1U);
    at.press(Qt::Key_X);
    QTRY_COMPARE(called_off(), 2U);
    at.press(Qt::Key_Z, Qt::ControlModifier);
    at.press(Qt::Key_Z, Qt::ControlModifier);
    QTRY_COMPARE(called_off(), 0U);
    QTRY_VERIFY(at.beginning(QStringLiteral("Again: order"), QAccessible::Button));
    at.press(Qt::Key_Y, Qt::ControlModifier);
    QTRY_COMPARE(called_off(), 1U);
    at.click(at.beginning(QStringLiteral("Again: order"), QAccessible::Button));
    QTRY_COMPARE(called_off(), 2U);
    QTRY_VERIFY(!at.beginning(QStringLiteral("Again:"), QAccessible::Button));

    // Something else done in between leaves nothing to do again.
    at.press(Qt::Key_Z, Qt::ControlModifier);
    QTRY_VERIFY(at.beginning(QStringLiteral("Again:"), QAccessible::Button));
    at.press(Qt::Key_X);
    QTRY_VERIFY(!at.beginning(QStringLiteral("Again:"), QAccessible::Button));
}

// Back to before the file was taken in, past orders called off since; and forward again.
void TogetherTest::undoes_the_take_in_itself()
{
    Workshop shop(*arrived_);
    QVERIFY(shop.open());
    AtTheWindow& at = shop.at();
    const auto all = book::orders(shop.book()).size();
    for (int i = 0; i < 5; ++i) at.letter(Qt::Key_X);
    QTRY_COMPARE(in(shop, OrderState::called_off).size(), 5U);
    int back = 0;
    while (!book::orders(shop.book()).empty() && back < 10) {
        at.press(Qt::Key_Z, Qt::ControlModifier);
        at.settle();
        ++back;
    }
    QCOMPARE(back, 7); // the columns that were matched are a step of their own
    for (int i = 0; i < back; ++i) {
        at.press(Qt::Key_Y, Qt::ControlModifier);
        at.settle();
    }
    QTRY_COMPARE(book::orders(shop.book()).size(), all);
    QTRY_COMPARE(in(shop, OrderState::called_off).size(), 5U);
}

void TogetherTest::marks_all_that_the_filter_leaves()
{
    Workshop shop(*arrived_);
    QVERIFY(shop.open());
    AtTheWindow& at = shop.at();
    const shop::HeldOrder one = in(shop, OrderState::arrived).front();
    at.press(Qt::Key_F6);
    at.type(QString::fromStdString(one.order.key.number));
    at.settle();
    at.press(Qt::Key_Down); // back to the list
    at.press(Qt::Key_A, Qt::ControlModifier);
    QTRY_VERIFY(at.reads(QStringLiteral("1 marked")));
    at.press(Qt::Key_X);
    QTRY_COMPARE(in(shop, OrderState::called_off).size(), 1U);
    QCOMPARE(in(shop, OrderState::called_off).front().id, one.id);

    at.press(Qt::Key_F6);
    at.press(Qt::Key_Escape); // all are there again
    at.settle();
    at.press(Qt::Key_A, Qt::ControlModifier);
    const auto rows = static_cast<std::size_t>(shop.desk().arrivals()->orders()->total());
    QTRY_VERIFY(at.reads(QStringLiteral("%1 marked").arg(rows)));
    at.press(Qt::Key_Escape);
    QTRY_VERIFY(!at.reads(QStringLiteral("marked")));
}

void TogetherTest::filters_whatever_the_letter_case()
{
    view::Rows<view::GoodChoice> goods;
    goods.show({{QStringLiteral("INK-1"), QStringLiteral("Große  Tinte")}, // two spaces
                {QStringLiteral("CARD"), QStringLiteral("ÉTÉ\tet marine")},
                {QStringLiteral("TIN"), QStringLiteral("Ωμέγα, straße")}});
    const auto left_by = [&](const char* typed) {
        goods.setFilter(QString::fromUtf8(typed));
        QStringList left;
        for (int row = 0; row < goods.count(); ++row) left += goods.value(row, QStringLiteral("code")).toString();
        return left.join(QLatin1Char(' '));
    };
    QCOMPARE(left_by(""), QStringLiteral("INK-1 CARD TIN"));
    QCOMPARE(left_by("  "), QStringLiteral("INK-1 CARD TIN"));
    QCOMPARE(left_by("tin"), QStringLiteral("INK-1 TIN")); // a word of the name, and a code
    QCOMPARE(left_by("TINT"), QStringLiteral("INK-1"));
    QCOMPARE(left_by("inte"), QString()); // within a word
    QCOMPARE(left_by("1"), QString());    // likewise
    QCOMPARE(left_by("GROßE tinte"), QStringLiteral("INK-1"));
    QCOMPARE(left_by("groß ink"), QStringLiteral("INK-1")); // in whichever of its texts
    QCOMPARE(left_by("STRAß"), QStringLiteral("TIN"));
    QCOMPARE(left_by("ωΜΈ"), QStringLiteral("TIN"));
    QCOMPARE(left_by("été"), QStringLiteral("CARD"));
    QCOMPARE(left_by("e"), QStringLiteral("CARD"));
    goods.change(1, {QStringLiteral("CARD"), QStringLiteral("Winter")}); // shown until the filter is asked again
    QCOMPARE(left_by("wint"), QStringLiteral("CARD"));
    QCOMPARE(left_by("e"), QString());
}

void TogetherTest::tells_of_the_found_one_in_hand_what_happened()
{
    Workshop shop(*planned_);
    std::map<std::string, QString> told; // by the order's number, what happened to its parcel alone
    for (const shop::Parcel& parcel : book::parcels_in(shop.book(), ParcelState::planned)) {
        QVERIFY(book::lock_parcel(shop.day().book(), parcel.id));
        const auto held = book::order(shop.book(), parcel.pieces.front().order);
        told[held->order.key.number] = words::step(*book::last_undoable(shop.book()));
    }
    QVERIFY(told.size() > 6);
    QVERIFY(book::call_off(shop.day().book(), in(shop, OrderState::arrived).front().id)); // else Undo says the last one
    shop.day().moved();
    QVERIFY(shop.open());
    AtTheWindow& at = shop.at();
    at.press(Qt::Key_F, Qt::ControlModifier);
    at.type(QString::fromStdString(told.begin()->first.substr(0, 5))); // several have it in common
    at.settle();
    view::RowModel& found = *shop.desk().find()->found();
    QVERIFY(found.count() > 2);
    int read = 0;
    for (int row = 0; row < found.count(); ++row) {
        for (const auto& [number, words] : told) {
            const bool in_hand = number == found.value(row, QStringLiteral("number")).toString().toStdString();
            QCOMPARE(at.reads(words), in_hand);
            read += in_hand ? 1 : 0;
        }
        at.press(Qt::Key_Down);
        at.settle();
    }
    QVERIFY(read > 2);
}

void TogetherTest::sorts_and_keeps_the_row_in_hand()
{
    Workshop shop(*arrived_);
    QVERIFY(shop.open());
    AtTheWindow& at = shop.at();
    view::RowModel& orders = *shop.desk().arrivals()->orders();
    const auto buyers = [&] {
        QStringList all;
        for (int row = 0; row < orders.count(); ++row) all += orders.value(row, QStringLiteral("buyer")).toString();
        return all;
    };
    at.press(Qt::Key_Down);
    at.press(Qt::Key_Down);
    const qlonglong in_hand = shop.desk().arrivals()->current();
    const QStringList before = buyers();
    for (int i = 0; i < 8 && !at.named(QStringLiteral("Sorted: by buyer")); ++i) at.press(Qt::Key_F7);
    QStringList sorted = before;
    std::stable_sort(sorted.begin(), sorted.end(),
                     [](const QString& a, const QString& b) { return a.localeAwareCompare(b) < 0; });
    QCOMPARE(buyers(), sorted);
    QVERIFY(sorted != before);
    QCOMPARE(shop.desk().arrivals()->current(), in_hand);
    at.press(Qt::Key_Space); // marks the row in hand, wherever it lies now
    QCOMPARE(orders.marked_or(0), std::vector{in_hand});
    for (int i = 0; i < 8 && !at.named(QStringLiteral("Sorted: problems first")); ++i) at.press(Qt::Key_F7);
    QCOMPARE(buyers(), before);
}

void TogetherTest::lays_orders_in_piles_by_what_is_to_be_done()
{
    Workshop shop(*arrived_);
    QVERIFY(shop.open());
    AtTheWindow& at = shop.at();
    std::map<std::string, int> piles; // as the book says
    for (const shop::HeldOrder& held : in(shop, OrderState::arrived)) {
        using P = shop::OrderProblem;
        const auto findings = shop::look_over(held.order, shop.day().today());
        const auto blocks = std::find_if(findings.begin(), findings.end(), [](const auto& f) { return f.blocks; });
        if (blocks == findings.end()) continue;
        ++piles[blocks->problem == P::unpaid           ? "Wait for the money"
                : blocks->problem == P::unmatched_good ? "Say which good it is"
                                                       : "Mend the address"];
    }
    QVERIFY(piles.size() > 1);
    const auto head = [&](const std::string& pile, int orders) {
        return at.named(QStringLiteral("%1: %2").arg(QString::fromStdString(pile)).arg(orders), QAccessible::Heading);
    };
    for (const auto& [pile, orders] : piles) QVERIFY2(head(pile, orders), pile.c_str());
    at.press(Qt::Key_F7); // sorted otherwise they lie in no piles
    at.settle();
    for (const auto& [pile, orders] : piles) QVERIFY2(!head(pile, orders), pile.c_str());
}

void TogetherTest::keeps_the_plans_of_several_parcels()
{
    Workshop shop(*planned_);
    QVERIFY(shop.open());
    AtTheWindow& at = shop.at();
    const auto locked = [&] {
        const auto parcels = book::parcels_in(shop.book(), ParcelState::planned);
        return std::count_if(parcels.begin(), parcels.end(), [](const auto& p) { return p.locked; });
    };
    at.press(Qt::Key_F2);
    at.settle();
    at.press(Qt::Key_Down, Qt::ShiftModifier);
    at.press(Qt::Key_Down, Qt::ShiftModifier);
    QTRY_VERIFY(at.reads(QStringLiteral("3 marked")));
    at.press(Qt::Key_L);
    QTRY_COMPARE(locked(), 3);
    QVERIFY(at.reads(QStringLiteral("Undo: 3 parcels locked")));
    at.press(Qt::Key_Z, Qt::ControlModifier);
    QTRY_COMPARE(locked(), 0);
}

void TogetherTest::compares_two_outers()
{
    Workshop shop(*planned_);
    QVERIFY(shop.open());
    AtTheWindow& at = shop.at();
    at.press(Qt::Key_F2);
    at.settle();
    at.press(Qt::Key_O);
    QTRY_VERIFY(at.beginning(QStringLiteral("An outer for"), QAccessible::Heading));
    view::OuterComparison& both = *shop.desk().plan()->comparison();
    const QString chosen = both.held();
    const auto steps = book::steps(shop.book()).size();
    QVERIFY(!chosen.isEmpty());
    QCOMPARE(both.scene().outers.size(), 1U);

    // Down to one that holds it as well.
    const auto holds = [&] {
        return both.scene().outers.size() == 2 && both.scene().outers[1].stayed_out == std::nullopt &&
               both.scene().outers[1].standing == papers::Standing::chosen;
    };
    for (int i = 0; i < 20 && !holds(); ++i) {
        at.press(Qt::Key_Down);
        QTRY_VERIFY_WITH_TIMEOUT(!both.working(), 30'000);
    }
    QVERIFY(holds());
    const QString looked_at = both.other();
    QVERIFY(looked_at != chosen);
    QVERIFY2(at.reads(looked_at + QStringLiteral(" costs")) || at.reads(looked_at + QStringLiteral(" saves")),
             qPrintable(at.all_words()));
    // What is said is what planning it in that outer comes to.
    const QString weight = both.facts()->value(5, QStringLiteral("other")).toString();
    QVERIFY(at.reads(weight));

    at.press(Qt::Key_C); // this one is held; against it another
    QTRY_COMPARE(both.held(), looked_at);
    at.press(Qt::Key_Up);
    QTRY_VERIFY_WITH_TIMEOUT(!both.working() && !both.other().isEmpty(), 30'000);
    QVERIFY(both.other() != looked_at);
    QCOMPARE(book::steps(shop.book()).size(), steps); // looking changes nothing
    at.press(Qt::Key_Escape);
    QTRY_VERIFY(!at.beginning(QStringLiteral("An outer for"), QAccessible::Heading));
}

void TogetherTest::takes_the_layers_apart()
{
    Workshop shop(*planned_);
    shop::ParcelId layered;
    for (const shop::ParcelId id : shop.pick(26)) {
        const auto held = book::parcel(shop.book(), id);
        const auto layers = papers::layers(held->plan.placements);
        const OuterKind kind = shop.day().cupboard().supply(held->plan.outer)->form->kind;
        const bool boxed = kind == OuterKind::carton || kind == OuterKind::gift_box;
        if (boxed && *std::max_element(layers.begin(), layers.end()) > 1) layered = id;
    }
    QVERIFY(layered != shop::ParcelId{});
    QVERIFY(shop.open());
    AtTheWindow& at = shop.at();
    shop.desk().openParcel(layered.value);
    at.settle();
    QVERIFY(at.named(QStringLiteral("Take apart"), QAccessible::Button));
    at.press(Qt::Key_T);
    QTRY_VERIFY(at.named(QStringLiteral("Together"), QAccessible::Button));
    at.click(at.named(QStringLiteral("Together"), QAccessible::Button));
    QTRY_VERIFY(at.named(QStringLiteral("Take apart"), QAccessible::Button));
}

void TogetherTest::shows_inches_and_ounces()
{
    Workshop shop(*planned_);
    QVERIFY(shop.open());
    AtTheWindow& at = shop.at();
    view::HouseController& house = *shop.desk().cupboard()->house();
    const QString units = QString::fromLatin1(words::remembered_measures);
    at.press(Qt::Key_F2);
    at.settle();
    const QString grams = shop.desk().plan()->rows()->value(0, QStringLiteral("weight")).toString();
    QVERIFY(grams.endsWith(QStringLiteral("g")));
    QVERIFY(!house.set(units, QStringLiteral("cubits")).isEmpty());
    QVERIFY(house.set(units, QStringLiteral("inches")).isEmpty());
    at.settle();
    const QString ounces = shop.desk().plan()->rows()->value(0, QStringLiteral("weight")).toString();
    QVERIFY(ounces.endsWith(QStringLiteral("oz")));
    QVERIFY(at.reads(ounces));

    // The same weight: NIST SP 811, appendix B.8: 1 oz = 28.349 52 g.
    const double in_grams = grams.section(QChar(' '), 0, 0).toDouble();
    const double in_ounces = ounces.section(QChar(' '), 0, 0).toDouble();
    QVERIFY(in_grams > 0);
    QVERIFY(std::abs(in_ounces * 28.34952 - in_grams) < 2); // both are rounded
    QVERIFY(house.set(units, QStringLiteral("metric")).isEmpty());
    QCOMPARE(shop.desk().plan()->rows()->value(0, QStringLiteral("weight")).toString(), grams);
}

} // namespace stow::quick

QTEST_MAIN(stow::quick::TogetherTest)
#include "together_test.moc"
