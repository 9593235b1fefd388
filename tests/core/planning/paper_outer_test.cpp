#include "core/planning/paper_outer.h"

#include "workshop.h"

namespace stow::planning {
namespace {

using paperbox::Kind;
using Why = PassedOver::Why;

// Box paper of 700 × 500 mm, 300 g/m², 0.4 mm thick: 105 g a sheet.
shop::Supply paper(int sheets = 10)
{
    shop::Supply s = supply("CARD", shop::SupplyKind::paper, 55, sheets);
    s.sheet = Sheet{mm(700), mm(500), tenth_mm(4), {}};
    s.weight = {grams(105), grams(1)};
    return s;
}

// Worked here: the square of a box 100 × 70 × 40 has 201.8 mm (tests/core/paperbox), so that three by two go on a
// sheet; each is 201.8²/(700 × 500) of its weight.
TEST(PaperOuter, TakesItsShareOfTheSheet)
{
    const auto made = paper_outer({Kind::one_square, {mm(100), mm(70), mm(40)}}, paper());
    ASSERT_TRUE(made);
    EXPECT_EQ(made->from_a_sheet, 6);
    EXPECT_EQ(made->supply.takes.thousandths, 167);
    EXPECT_EQ(made->supply.made_from.text, "CARD");
    EXPECT_NEAR(in_grams(made->supply.weight.mean), 105 * 201.8 * 201.8 / 350'000, 0.05);
    EXPECT_EQ(made->supply.cost, euro(9));
    EXPECT_EQ(made->supply.form->kind, OuterKind::gift_box);
    EXPECT_EQ(made->supply.form->inner, (Size{mm(100), mm(70), mm(40)}));
    EXPECT_EQ(made->supply.form->outer.x, mm(100) + tenth_mm(24));
}

TEST(PaperOuter, OfATrayCountsItsLid)
{
    const paperbox::Wanted tray{Kind::tray, {mm(200), mm(150), mm(40)}};
    const auto made = paper_outer(tray, paper());
    ASSERT_TRUE(made);
    const auto pieces = paperbox::pieces_of(tray);
    ASSERT_EQ(pieces.size(), 2U);
    EXPECT_EQ(pieces[1].kind, Kind::lid);
    // The tray's net is 280 × 230 mm, the lid's 282.5 × 232.5 mm: four of either go on a sheet.
    EXPECT_EQ(made->supply.takes.thousandths, 500);
}

TEST(PaperOuter, IsRefusedWhereItCannotBeCut)
{
    EXPECT_FALSE(paper_outer({Kind::tray, {mm(600), mm(450), mm(60)}}, paper())) << "larger than the sheet";
    EXPECT_FALSE(paper_outer({Kind::one_square, {mm(100), mm(70), Length{}}}, paper()));
    shop::Supply other = paper();
    other.sheet.reset();
    EXPECT_FALSE(paper_outer({Kind::one_square, {mm(100), mm(70), mm(40)}}, other));
}

// It is offered like any outer, as long as the paper lasts, and the paper is what is used up.
TEST(PaperOuter, IsACandidateWhileThereIsPaper)
{
    Workshop shop;
    shop.put(carton("K1", {mm(300), mm(200), mm(60)}, 60));
    shop.put(print("PRINT", mm(180), mm(120), std::nullopt));
    shop.order(1, {{{"PRINT"}, 1}});
    shop::Supply envelope = paper_outer({Kind::envelope, {mm(200), mm(140), {}}, mm(15)}, paper())->supply;
    envelope.code = {"ENV"};
    shop.cupboard.supplies[envelope.code] = envelope;
    shop.put(paper(1));
    const DayPlan with = shop.plan();
    ASSERT_EQ(with.parcels.size(), 1U);
    EXPECT_EQ(with.parcels[0].outer.text, "ENV");
    const auto& uses = with.parcels[0].uses;
    const auto used = std::find_if(uses.begin(), uses.end(), [](const Used& u) { return u.supply.text == "CARD"; });
    ASSERT_NE(used, uses.end());
    EXPECT_EQ(used->amount, envelope.takes);

    shop.put(paper(0));
    const DayPlan without = shop.plan();
    ASSERT_EQ(without.parcels.size(), 1U);
    EXPECT_EQ(without.parcels[0].outer.text, "K1");
    ASSERT_EQ(without.parcels[0].passed_over.size(), 1U);
    EXPECT_EQ(without.parcels[0].passed_over[0].why, Why::none_left);
}

} // namespace
} // namespace stow::planning
