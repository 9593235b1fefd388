#include "workshop.h"

namespace stow::planning {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;
using testing::SizeIs;
using Why = PassedOver::Why;

std::vector<std::pair<std::string, Why>> passed(const ParcelPlan& plan)
{
    std::vector<std::pair<std::string, Why>> list;
    for (const PassedOver& p : plan.passed_over) list.emplace_back(p.outer.text, p.why);
    return list;
}

class Packing : public testing::Test {
protected:
    ParcelPlan one()
    {
        const DayPlan plan = shop.plan();
        expect_sound(shop, plan);
        EXPECT_THAT(plan.parcels, SizeIs(1));
        return plan.parcels.empty() ? ParcelPlan{} : plan.parcels.front();
    }
    Workshop shop;
};

TEST_F(Packing, TakesTheSmallestAndSaysWhyNotTheOthers)
{
    shop.put(carton("K1", {mm(90), mm(90), mm(90)}, 30));
    shop.put(carton("K2", {mm(99), mm(180), mm(60)}, 40));
    shop.put(carton("K3", {mm(100), mm(100), mm(120)}, 50));
    shop.put(carton("K4", {mm(300), mm(300), mm(300)}, 60));
    shop.put(block("CUBE", {mm(100), mm(100), mm(100)}, grams(300)));
    shop.order(1, {{{"CUBE"}, 1}});
    const ParcelPlan plan = one();
    EXPECT_EQ(plan.outer.text, "K3");
    EXPECT_TRUE(plan.proven_smallest);
    EXPECT_THAT(passed(plan), ElementsAre(std::pair{"K1"s, Why::does_not_fit}, std::pair{"K2"s, Why::does_not_fit}));
    EXPECT_EQ(plan.passed_over[0].refusal.verdict, fitting::Verdict::cannot_fit);
    EXPECT_EQ(plan.passed_over[0].refusal.outer, "K1");
    EXPECT_EQ(plan.pieces, (std::vector<shop::Piece>{{{1}, 0, {"CUBE"}, 1}}));
}

TEST_F(Packing, EaseForHandsIsTakenOffEverySide)
{
    shop.cupboard.house.ease = mm(2);
    shop.put(carton("TIGHT", {mm(101), mm(110), mm(110)}, 30));
    shop.put(carton("EASY", {mm(102), mm(110), mm(110)}, 30));
    shop.put(block("CUBE", {mm(100), mm(100), mm(100)}, grams(300)));
    shop.order(1, {{{"CUBE"}, 1}});
    EXPECT_EQ(one().outer.text, "EASY");
}

TEST_F(Packing, CushionIsKeptOnAllSixSides)
{
    // 60 + 2 × 25 = 110 and 180 + 2 × 25 = 230: the first of the worked filler examples.
    shop.put(carton("LOW", {mm(110), mm(110), mm(229)}, 30));
    shop.put(carton("RIGHT", {mm(110), mm(110), mm(230)}, 30));
    shop::Good bottle = block("BOTTLE", {mm(60), mm(60), mm(180)}, grams(400));
    bottle.cushion = mm(25);
    bottle.fragile = true;
    shop.put(bottle);
    shop.order(1, {{{"BOTTLE"}, 1}});
    const ParcelPlan plan = one();
    EXPECT_EQ(plan.outer.text, "RIGHT");
    ASSERT_THAT(plan.placements, SizeIs(1));
    EXPECT_EQ(plan.placements[0].at, (Size{mm(25), mm(25), mm(25)}));
    EXPECT_NEAR(in_litres(plan.void_volume), 2.1, 0.05);
}

TEST_F(Packing, AMailerWithoutEnoughCushionIsPassedOver)
{
    shop.put(padded_mailer("PAD", mm(250), mm(180), mm(4), 20));
    shop.put(carton("K1", {mm(200), mm(200), mm(120)}, 60));
    shop::Good tile = block("TILE", {mm(80), mm(80), mm(10)}, grams(100));
    tile.cushion = mm(4);
    shop.put(tile);
    shop.order(1, {{{"TILE"}, 1}});
    EXPECT_EQ(one().outer.text, "PAD"); // its wall gives the 4 mm
    tile.cushion = mm(5);
    shop.put(tile);
    const ParcelPlan plan = one();
    EXPECT_EQ(plan.outer.text, "K1");
    EXPECT_THAT(passed(plan), ElementsAre(std::pair{"PAD"s, Why::too_little_cushion}));
    EXPECT_EQ(plan.passed_over[0].refusal.short_by, mm(1));
}

// Mailer rule t + w <= inner width, t + l <= inner length; closed thickness = contents + two walls (common practice, no
// source). The letter of the tariff ends at 25 mm, and the closed size bulges by 2 mm before it is judged.
TEST_F(Packing, AMailerNearAThicknessLimit)
{
    shop.sheets = {tariff()};
    shop.put(padded_mailer("PAD", mm(300), mm(200), mm(3), 20));
    const auto price_of = [&](Length thickness) {
        shop.orders.clear();
        shop.put(block("BOOK", {mm(200), mm(150), thickness}, grams(300)));
        shop.order(1, {{{"BOOK"}, 1}});
        const ParcelPlan plan = one();
        EXPECT_EQ(plan.closed.z, thickness + mm(6) + mm(2));
        return plan.quotes.at(plan.chosen.value()).price()->total;
    };
    EXPECT_EQ(price_of(mm(17)), euro(200));        // 17 + 6 + 2 = 25: still a letter
    EXPECT_EQ(price_of(tenth_mm(171)), euro(450)); // a parcel
    EXPECT_EQ(price_of(mm(50)), euro(450));        // 50 + 150 = 200: just goes in
    shop.orders.clear();
    shop.put(block("BOOK", {mm(200), mm(150), tenth_mm(501)}, grams(300)));
    shop.order(1, {{{"BOOK"}, 1}});
    const DayPlan none = shop.plan();
    EXPECT_THAT(none.parcels, IsEmpty());
    ASSERT_THAT(none.stuck, SizeIs(1));
    EXPECT_EQ(none.stuck[0].why, Stuck::nothing_holds_it);
    ASSERT_THAT(none.stuck[0].passed_over, SizeIs(1));
    EXPECT_EQ(none.stuck[0].passed_over[0].refusal.reason, fitting::Reason::sleeve);
}

TEST_F(Packing, APrintIsRolledForATube)
{
    shop.put(tube("T1", mm(60), mm(430), 120));
    shop.put(tube("T2", mm(80), mm(430), 150));
    shop.put(carton("HUGE", {mm(700), mm(500), mm(100)}, 400));
    shop.put(print("MAP", mm(600), mm(420), mm(50)));
    shop.order(1, {{{"MAP"}, 1}});
    ParcelPlan plan = one();
    EXPECT_EQ(plan.outer.text, "T1");
    ASSERT_THAT(plan.items, SizeIs(1));
    EXPECT_TRUE(plan.items[0].rolled);
    EXPECT_EQ(plan.tape, Length{});
    EXPECT_EQ(plan.filler_volume, Volume{});

    // Rolled together they get thicker: 50² + 4/π · 600 · 0.3 · 6 = 62.1² no longer goes into 60.
    shop.orders.clear();
    shop.order(1, {{{"MAP"}, 6}});
    plan = one();
    EXPECT_EQ(plan.outer.text, "T2");

    // A stiff one stays flat.
    shop.orders.clear();
    shop.put(print("BOARD", mm(600), mm(420), {}));
    shop.order(1, {{{"BOARD"}, 1}});
    plan = one();
    EXPECT_EQ(plan.outer.text, "HUGE");
    EXPECT_FALSE(plan.items[0].rolled);
}

TEST_F(Packing, RolledNoTighterThanItsLeastDiameter)
{
    shop.put(tube("T1", mm(60), mm(430), 120));
    shop.put(print("MAP", mm(600), mm(420), mm(60)));
    shop.order(1, {{{"MAP"}, 1}});
    EXPECT_THAT(shop.plan().parcels, IsEmpty());
    shop.put(print("MAP", mm(600), mm(420), mm(55)));
    EXPECT_THAT(shop.plan().parcels, SizeIs(1));
}

TEST_F(Packing, AGiftBoxInACarton)
{
    shop.put(carton("K1", {mm(205), mm(110), mm(80)}, 60));
    shop::Supply box = carton("BOX", {mm(180), mm(80), mm(40)}, 150, 3);
    box.form->kind = OuterKind::gift_box;
    shop.put(box);
    shop.put(block("NIB", {mm(40), mm(10), mm(8)}, grams(4)));
    shop.put(block("PEN", {mm(170), mm(12), mm(12)}, grams(15)));
    shop::Good set = block("SET", {}, {});
    set.parts = {{{"NIB"}, 3}, {{"PEN"}, 1}};
    set.gift_box = {"BOX"};
    shop.put(set, 0); // nothing of its own on the shelf: it is packed from its parts
    shop.order(1, {{{"SET"}, 1}});
    const ParcelPlan plan = one();
    EXPECT_EQ(plan.outer.text, "K1");
    ASSERT_THAT(plan.placements, SizeIs(1));
    EXPECT_THAT(plan.placements[0].content, SizeIs(4));
    ASSERT_THAT(plan.items, SizeIs(1));
    EXPECT_EQ(plan.items[0].kind, PackedItem::Kind::gift_box);
    EXPECT_EQ(plan.contents_weight.mean, grams(80 + 3 * 4 + 15));
    EXPECT_EQ(plan.weight.mean, grams(80 + 80 + 3 * 4 + 15));
    EXPECT_THAT(plan.uses, testing::Contains(testing::Field(&Used::supply, shop::SupplyCode{"BOX"})));
}

TEST_F(Packing, InsertsMustFitAndFoldWhereTheyMay)
{
    shop.wish.slip = Wish::Slip::a4;
    shop.put(carton("FLAT", {mm(150), mm(106), mm(60)}, 40));
    shop.put(carton("WIDE", {mm(220), mm(160), mm(60)}, 50));
    shop.put(block("INK", {mm(60), mm(60), mm(50)}, grams(200)));
    shop.order(1, {{{"INK"}, 1}});
    ParcelPlan plan = one();
    EXPECT_EQ(plan.outer.text, "FLAT"); // the slip folded twice, 149 × 105
    EXPECT_TRUE(plan.items.back().folded);

    shop::Supply card = supply("CARD", shop::SupplyKind::insert, 5, 1);
    card.sheet = Sheet{mm(200), mm(150), tenth_mm(4), {}}; // too stiff to fold
    shop.put(card);
    shop.cupboard.rules = {{shop::HouseRule::When::every_order, {}, {}, {"CARD"}, 1}};
    plan = one();
    EXPECT_EQ(plan.outer.text, "WIDE");
    EXPECT_EQ(plan.passed_over.at(0).refusal.item, "insert CARD");
}

TEST_F(Packing, PapersLieBeneathTheCushion)
{
    shop.wish.slip = Wish::Slip::a4;
    shop.put(carton("K1", {mm(150), mm(110), tenth_mm(1104)}, 40));
    shop::Good ink = block("INK", {mm(60), mm(60), mm(60)}, grams(200));
    ink.cushion = mm(25);
    shop.put(ink);
    shop.order(1, {{{"INK"}, 1}});
    const ParcelPlan plan = one(); // 60 + 2 × 25 + 0.4 of folded slip
    EXPECT_EQ(plan.outer.text, "K1");
    EXPECT_TRUE(plan.items.back().under_cushion);
    EXPECT_EQ(plan.question.bed, tenth_mm(4));
    EXPECT_THAT(plan.placements, SizeIs(1));
}

TEST_F(Packing, SaysWhatALargerOuterWouldSave)
{
    shop.sheets = {tariff()};
    shop.put(carton("K1", {mm(100), mm(100), mm(100)}, 200));
    shop.put(carton("K2", {mm(110), mm(100), mm(100)}, 120));
    shop.put(carton("K3", {mm(120), mm(100), mm(100)}, 90));
    shop.put(carton("K4", {mm(130), mm(100), mm(100)}, 300));
    shop.put(block("CUBE", {mm(100), mm(100), mm(100)}, grams(300)));
    shop.order(1, {{{"CUBE"}, 1}});
    ParcelPlan plan = one();
    EXPECT_EQ(plan.outer.text, "K1");
    EXPECT_EQ(plan.saves_if_larger, euro(110));
    EXPECT_EQ(plan.cheaper_outer.text, "K3");

    shop.wish.preference = Preference::cheapest;
    plan = one();
    EXPECT_EQ(plan.outer.text, "K3");
    EXPECT_FALSE(plan.saves_if_larger);
    EXPECT_THAT(passed(plan), ElementsAre(std::pair{"K1"s, Why::dearer}, std::pair{"K2"s, Why::dearer}));
    EXPECT_FALSE(plan.proven_smallest);
}

TEST_F(Packing, LeastMaterialIsTheLightestInAll)
{
    shop::Supply light = carton("LIGHT", {mm(150), mm(100), mm(100)}, 200);
    light.weight.mean = grams(40);
    shop.put(light);
    shop.put(carton("K1", {mm(100), mm(100), mm(100)}, 50));
    shop.put(block("CUBE", {mm(100), mm(100), mm(100)}, grams(300)));
    shop.order(1, {{{"CUBE"}, 1}});
    EXPECT_EQ(one().outer.text, "K1");
    shop.wish.preference = Preference::least_material;
    EXPECT_EQ(one().outer.text, "LIGHT");
}

TEST_F(Packing, AnOuterThatNoServiceTakesIsPassedOver)
{
    shop.sheets = {tariff()};
    shop.put(carton("LONG", {mm(1050), mm(50), mm(50)}, 50)); // past the tariff's 1000 mm
    shop.put(carton("K1", {mm(300), mm(300), mm(300)}, 90));
    shop.put(block("ROD", {mm(290), mm(50), mm(50)}, grams(300)));
    shop.order(1, {{{"ROD"}, 1}});
    const ParcelPlan plan = one();
    EXPECT_EQ(plan.outer.text, "K1");
    EXPECT_THAT(passed(plan), ElementsAre(std::pair{"LONG"s, Why::no_service}));

    shop.cupboard.on_hand[{"K1"}] = {};
    const DayPlan stuck = shop.plan();
    EXPECT_THAT(stuck.parcels, IsEmpty());
    ASSERT_THAT(stuck.stuck, SizeIs(1));
    EXPECT_EQ(stuck.stuck[0].why, Stuck::no_service);
    EXPECT_THAT(stuck.stuck[0].quotes, SizeIs(2));
}

TEST_F(Packing, AWrapIsPressedByHandOnly)
{
    shop::Wrapping bubble;
    bubble.code = {"BUBBLE"};
    bubble.growth = {mm(10), mm(10), mm(10)};
    bubble.squeeze = mm(4);
    shop.put(bubble);
    shop::Good ink = block("INK", {mm(60), mm(60), mm(60)}, grams(200));
    ink.wrapping = {"BUBBLE"};
    shop.put(ink);
    shop.put(carton("TIGHT", {mm(69), mm(70), mm(70)}, 40));
    shop.put(carton("WIDE", {mm(90), mm(90), mm(90)}, 50));
    shop.order(1, {{{"INK"}, 1}});
    ParcelPlan plan = one();
    EXPECT_EQ(plan.outer.text, "WIDE");
    ASSERT_THAT(plan.passed_over, SizeIs(1));
    EXPECT_EQ(plan.passed_over[0].refusal.short_by, mm(1));
    EXPECT_EQ(plan.passed_over[0].gives, mm(4));
    EXPECT_FALSE(plan.squeezed);

    shop.wish.outer_by_hand = {{{1}, {"TIGHT"}}};
    plan = one();
    EXPECT_EQ(plan.outer.text, "TIGHT");
    EXPECT_TRUE(plan.squeezed);
    EXPECT_FALSE(plan.proven_smallest);
}

TEST_F(Packing, WeighsWhatIsInIt)
{
    shop.cupboard.house.filler = {"KRAFT"};
    shop.cupboard.house.tape = {"TAPE"};
    shop.cupboard.house.label = {"LABEL"};
    shop.cupboard.house.overfill_percent = 0;
    shop::Supply kraft = supply("KRAFT", shop::SupplyKind::filler, 10, 100);
    kraft.unit = shop::Unit::litre;
    kraft.weight.mean = grams(20);
    shop.put(kraft);
    shop::Supply tape = supply("TAPE", shop::SupplyKind::tape, 3, 66);
    tape.unit = shop::Unit::metre;
    tape.weight.mean = grams(5);
    shop.put(tape);
    shop::Supply label = supply("LABEL", shop::SupplyKind::label, 4, 100);
    label.weight.mean = grams(2);
    shop.put(label);
    shop.put(carton("K1", {mm(110), mm(110), mm(230)}, 50));
    shop.put(block("BOTTLE", {mm(60), mm(60), mm(180)}, grams(400)));
    shop.order(1, {{{"BOTTLE"}, 1}});
    const ParcelPlan plan = one();
    // 2.135 l of filler; tape H of the outer 236 × 116: 2 (236 + 140) + 4 (116 + 60) = 1456 mm... the carton stands on
    // its 116 × 116 face, so 2 (116 + 140) + 4 (116 + 60) = 1216 mm.
    EXPECT_EQ(plan.filler->amount, shop::Amount{2135});
    EXPECT_EQ(plan.tape, mm(1216));
    EXPECT_EQ(plan.contents_weight.mean, grams(400));
    EXPECT_EQ(plan.weight.mean, grams(400) + grams(80) + tenth_g(427) + tenth_g(61) + grams(2));
    EXPECT_EQ(plan.packaging, euro(50 + 21 + 4 + 4)); // 2.135 × 10, 1.216 × 3, each rounded to the cent
}

TEST_F(Packing, OneParcelOfGivenPieces)
{
    shop.put(carton("K1", {mm(100), mm(100), mm(100)}, 50, 0));
    shop.put(carton("K2", {mm(200), mm(200), mm(200)}, 70));
    shop.put(block("CUBE", {mm(100), mm(100), mm(100)}, grams(300)));
    shop.order(1, {{{"CUBE"}, 5}});
    stow::Run run;
    const std::vector<shop::Piece> some{{{1}, 0, {"CUBE"}, 1}};
    const auto plan = plan_parcel(shop.cupboard, shop.orders, some, shop.sheets, shop.wish, {}, run);
    ASSERT_TRUE(plan);
    EXPECT_EQ(plan->outer.text, "K2");
    EXPECT_THAT(passed(*plan), ElementsAre(std::pair{"K1"s, Why::none_left}));
    // By hand, although the book thinks there is none.
    const auto other =
        plan_parcel(shop.cupboard, shop.orders, some, shop.sheets, shop.wish, shop::SupplyCode{"K1"}, run);
    ASSERT_TRUE(other);
    EXPECT_EQ(other->outer.text, "K1");
    const auto unknown =
        plan_parcel(shop.cupboard, shop.orders, {{{1}, 0, {"GHOST"}, 1}}, shop.sheets, shop.wish, {}, run);
    ASSERT_FALSE(unknown);
    EXPECT_EQ(unknown.error().why, Stuck::unknown_good);
}

} // namespace
} // namespace stow::planning
