#include "core/planning/wrapped_items.h"

#include "core/planning/cushion.h"
#include "core/planning/inserts.h"
#include "workshop.h"

#include <cmath>
#include <numbers>

namespace stow::planning {
namespace {

using testing::IsEmpty;
using testing::SizeIs;

TEST(Wrapped, GrowsEachShapeOnItsAxes)
{
    const Size g{mm(10), mm(4), mm(6)};
    EXPECT_EQ(wrapped(Block{{mm(100), mm(50), mm(20)}}, g), (Shape{Block{{mm(110), mm(54), mm(26)}}}));
    EXPECT_EQ(wrapped(Cylinder{mm(60), mm(90)}, g), (Shape{Cylinder{mm(70), mm(96)}}));
    EXPECT_EQ(wrapped(Roll{mm(60), mm(300)}, g), (Shape{Roll{mm(66), mm(310)}}));
    EXPECT_EQ(wrapped(Sheet{mm(210), mm(148), mm(1), {}}, g), (Shape{Sheet{mm(220), mm(152), mm(7), {}}}));
    // A soft litre is reckoned as a cube of 100 mm: 110 × 104 × 106 mm is 1.21264 litres.
    EXPECT_EQ(wrapped(Soft{millilitres(1000), mm(20)}, g), (Shape{Soft{{1'212'640'000}, mm(26)}}));
}

// The spiral wound turn by turn, each turn a circle lying on the one before: an independent count of the layers.
double wound(double core, double length, double thickness)
{
    double diameter = core;
    double last = 0; // share of the last turn that is covered
    while (length > 0) {
        const double turn = std::numbers::pi * (diameter + thickness);
        last = std::min(length / turn, 1.0);
        diameter += 2 * thickness * last;
        length -= turn;
    }
    return diameter;
}

TEST(Rolled, DiameterAgreesWithWindingTurnByTurn)
{
    for (const int count : {1, 3, 12}) {
        const Sheet sheet{mm(600), mm(420), tenth_mm(4), mm(50)};
        const Roll roll = rolled_together({{sheet, count}}, false);
        EXPECT_EQ(roll.length, mm(420));                    // along the shorter edge
        const double bare = in_mm(roll.diameter) - 2 * 0.4; // without the loose end
        EXPECT_NEAR(bare, wound(50, 600.0 * count, 0.4), 0.4) << count;
        EXPECT_EQ(rolled_together({{sheet, count}}, true).length, mm(600));
    }
}

TEST(Rolled, SeveralSheetsGoAroundTheWidestCore)
{
    const Sheet fine{mm(400), mm(300), tenth_mm(2), mm(30)};
    const Sheet stiff{mm(500), mm(350), tenth_mm(5), mm(60)};
    const Roll both = rolled_together({{fine, 1}, {stiff, 1}}, false);
    EXPECT_EQ(both.length, mm(350));
    // 60² + 4/π (400 · 0.2 + 500 · 0.5) = 4020.2, whose root is 63.41; the loose end twice 0.5
    EXPECT_EQ(both.diameter, tenth_mm(645));
}

TEST(Contents, ASetInItsBoxAndALooseOneAreExpanded)
{
    Workshop shop;
    shop.put(block("NIB", {mm(40), mm(10), mm(8)}, grams(4)));
    shop.put(block("PEN", {mm(170), mm(12), mm(12)}, grams(15)));
    shop::Good loose = block("LOOSE", {}, {});
    loose.parts = {{{"NIB"}, 3}, {{"PEN"}, 1}};
    shop.put(loose);
    shop::Supply box = carton("BOX", {mm(180), mm(60), mm(30)}, 100);
    box.form->kind = OuterKind::gift_box;
    shop.put(box);
    shop::Good boxed = loose;
    boxed.code = {"BOXED"};
    boxed.gift_box = {"BOX"};
    shop.put(boxed);

    const auto contents =
        contents_of(shop.cupboard, {{{1}, 0, {"LOOSE"}, 2}, {{1}, 1, {"BOXED"}, 2}, {{1}, 2, {"NIB"}, 1}});
    ASSERT_TRUE(contents);
    ASSERT_THAT(contents->loose, SizeIs(2));
    EXPECT_EQ(contents->loose[0].count, 7); // nibs: 2 × 3 + 1
    EXPECT_EQ(contents->loose[1].count, 2);
    ASSERT_THAT(contents->boxed, SizeIs(1));
    EXPECT_EQ(contents->boxed[0].count, 2);
    EXPECT_EQ(contents->boxed[0].content[0].count, 3);
    const auto shelf = off_the_shelf(*contents);
    ASSERT_THAT(shelf, SizeIs(2));
    EXPECT_EQ(shelf[0].count, 13);
    EXPECT_EQ(shelf[1].count, 4);
}

TEST(Contents, WhatIsUnknownIsNamed)
{
    Workshop shop;
    shop::Good ring = block("RING", {}, {});
    ring.parts = {{{"RING"}, 1}}; // a set that contains itself
    shop.put(ring);
    shop.put(block("FLAT", {mm(10), mm(10), {}}, grams(1)));
    const auto why = [&](const char* good) {
        const auto contents = contents_of(shop.cupboard, {{{4}, 0, {good}, 1}});
        return contents ? StuckOrder{} : contents.error();
    };
    EXPECT_EQ(why("").why, Stuck::unmatched_good);
    EXPECT_EQ(why("GHOST").why, Stuck::unknown_good);
    EXPECT_EQ(why("GHOST").order, shop::OrderId{4});
    EXPECT_EQ(why("RING").why, Stuck::unknown_good);
    EXPECT_EQ(why("FLAT").why, Stuck::missing_size);
    EXPECT_EQ(why("FLAT").good, shop::GoodCode{"FLAT"});
}

TEST(Cushion, IsWhatTheWrapsDoNotGive)
{
    Workshop shop;
    shop.cupboard.house.lining = mm(5);
    shop::Wrapping bubble;
    bubble.code = {"BUBBLE"};
    bubble.cushion = mm(8);
    shop.put(bubble);
    shop::Good ink = block("INK", {mm(60), mm(60), mm(90)}, grams(210));
    ink.cushion = mm(20);
    shop.put(ink);
    shop::Good wrapped_ink = ink;
    wrapped_ink.code = {"WRAPPED"};
    wrapped_ink.wrapping = {"BUBBLE"};
    shop.put(wrapped_ink);
    shop.put(block("BOOK", {mm(200), mm(150), mm(15)}, grams(300)));
    const auto cushion = [&](std::vector<std::string> goods) {
        std::vector<shop::Piece> pieces;
        for (const auto& g : goods) pieces.push_back({{1}, 0, {g}, 1});
        return cushion_of(shop.cupboard, contents_of(shop.cupboard, pieces).value());
    };
    EXPECT_EQ(cushion({"BOOK"}).gap, Length{});
    EXPECT_EQ(cushion({"BOOK"}).lining, mm(5));
    EXPECT_EQ(cushion({"BOOK", "WRAPPED"}).gap, mm(12));
    EXPECT_EQ(cushion({"WRAPPED", "INK"}).gap, mm(20));
    EXPECT_EQ(cushion({"INK"}).lining, mm(20));
}

TEST(Inserts, FollowTheHouseRules)
{
    using When = shop::HouseRule::When;
    Workshop shop;
    for (const char* code : {"CARD", "CARE", "GIFT", "ABROAD", "LARGE"}) {
        shop::Supply s = supply(code, shop::SupplyKind::insert, 5, 100);
        s.sheet = Sheet{mm(148), mm(105), tenth_mm(3), {}};
        shop.put(s);
    }
    shop.put(block("INK", {mm(60), mm(60), mm(90)}, grams(210)));
    shop.put(block("BOOK", {mm(200), mm(150), mm(15)}, grams(300)));
    shop.cupboard.rules = {{When::every_order, {}, {}, {"CARD"}, 2},
                           {When::good_in_order, {"INK"}, {}, {"CARE"}, 1},
                           {When::gift, {}, {}, {"GIFT"}, 1},
                           {When::abroad, {}, {}, {"ABROAD"}, 1},
                           {When::value_from, {}, euro(2500), {"LARGE"}, 1}};
    const auto papers = [&](const shop::HeldOrder& order) {
        std::vector<shop::Piece> pieces;
        for (const auto& line : order.order.lines) pieces.push_back({order.id, 0, line.good, line.count});
        std::vector<std::string> ids;
        for (const PackedItem& p : inserts_for(shop.cupboard, {&order}, contents_of(shop.cupboard, pieces).value(),
                                               Wish::Slip::a4, true, false)) {
            ids.push_back(std::to_string(p.count) + " " + p.id);
        }
        return ids;
    };
    using testing::ElementsAre;
    shop::HeldOrder order = shop.order(1, {{{"BOOK"}, 2}});
    EXPECT_THAT(papers(order), ElementsAre("2 insert CARD", "1 slip"));
    order.order.to.country = "NO";
    EXPECT_THAT(papers(order), ElementsAre("1 insert ABROAD", "2 insert CARD", "1 slip"));
    order = shop.order(2, {{{"BOOK"}, 3}}); // 30.00
    EXPECT_THAT(papers(order), ElementsAre("2 insert CARD", "1 insert LARGE", "1 slip"));
    order = shop.order(3, {{{"INK"}, 1}});
    order.order.gift = shop::Gift{"Ada", "For you"};
    EXPECT_THAT(papers(order), ElementsAre("2 insert CARD", "1 insert CARE", "1 insert GIFT", "1 gift note", "1 slip"));
}

// ISO 216: A4 is 210 × 297 mm and 1/16 m², so a sheet of 80 g/m² weighs 5 g; folded once it is A5, twice A6.
TEST(Inserts, TheSlipIsAFoldedA4)
{
    Workshop shop;
    const shop::HeldOrder order = shop.order(1, {});
    const auto slip = [&](bool folded) {
        return inserts_for(shop.cupboard, {&order}, {}, Wish::Slip::a4, true, folded).at(0);
    };
    EXPECT_EQ(slip(false).weight.mean, grams(5));
    EXPECT_EQ(sorted(bounding_size(slip(false).shape)), (Size{mm(210), mm(149), tenth_mm(2)}));
    EXPECT_EQ(sorted(bounding_size(slip(true).shape)), (Size{mm(149), mm(105), tenth_mm(4)}));
    EXPECT_THAT(inserts_for(shop.cupboard, {&order}, {}, Wish::Slip::none, true, false), IsEmpty());
}

} // namespace
} // namespace stow::planning
