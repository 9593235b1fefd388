// The whole day's choice, against every way to give the outers out, and what it says about itself.
#include "core/planning/merit.h"
#include "workshop.h"

#include <functional>
#include <random>

namespace stow::planning {
namespace {

using testing::IsEmpty;
using testing::SizeIs;

Volume closed(const Workshop& shop, const ParcelPlan& plan)
{
    return closed_volume(*shop.cupboard.supply(plan.outer)->form, plan.contents_thickness, plan.cut_at);
}

// Four to six orders of one or two blocks, five cartons of which there are few, filler that may be short.
Workshop small_day(unsigned seed)
{
    std::mt19937 random(seed);
    const auto up_to = [&](int n) { return static_cast<int>(random() % static_cast<unsigned>(n)) + 1; };
    Workshop shop;
    shop.sheets = {tariff()};
    shop.cupboard.house.bulge = {};
    if (seed % 3 == 0) {
        shop.cupboard.house.filler = {"KRAFT"};
        shop::Supply kraft = supply("KRAFT", shop::SupplyKind::filler, 11, up_to(12));
        kraft.unit = shop::Unit::litre;
        kraft.weight.mean = grams(22);
        shop.put(kraft);
    }
    for (int i = 1; i <= 5; ++i) {
        shop.put(carton("K"s + std::to_string(i), {mm(90 + 40 * i), mm(80 + 25 * i), mm(60 + 20 * i)}, 20 + up_to(90),
                        up_to(4) - 1));
    }
    shop.put(padded_mailer("PAD", mm(240), mm(190), mm(3), up_to(40)));
    shop.cupboard.on_hand[{"PAD"}] = shop::pieces(up_to(3) - 1);
    for (int i = 1; i <= 4; ++i) {
        shop.put(block("G"s + std::to_string(i), {mm(30 + up_to(110)), mm(25 + up_to(70)), mm(5 + up_to(50))},
                       grams(up_to(600))));
    }
    const int orders = 3 + up_to(3);
    for (int o = 1; o <= orders; ++o) {
        std::vector<shop::SetPart> lines{{{"G"s + std::to_string(up_to(4))}, 1}};
        if (up_to(3) == 1) lines.push_back({{"G"s + std::to_string(up_to(4))}, 1});
        shop::HeldOrder& held = shop.order(o, lines);
        if (up_to(3) == 1) held.order.promised = wednesday + std::chrono::days(up_to(7));
    }
    shop.wish.prove = false;
    shop.wish.preference =
        std::array{Preference::smallest, Preference::cheapest, Preference::least_material}.at(seed % 3);
    return shop;
}

struct Choice {
    Merit merit;
    std::vector<Used> uses;
};

std::int64_t over(const Workshop& shop, const std::map<shop::SupplyCode, std::int64_t>& used)
{
    std::int64_t sum = 0;
    for (const auto& [code, amount] : used) {
        if (shop.cupboard.supplies.at(code).kind == shop::SupplyKind::outer) continue;
        sum += std::max<std::int64_t>(amount - shop.cupboard.on_hand.at(code).thousandths, 0);
    }
    return sum;
}

// Each order by hand in each outer, all ways together, whatever the planner would think of them.
Merit best_of_all(const Workshop& shop)
{
    std::vector<std::vector<Choice>> choices;
    for (const shop::HeldOrder& held : shop.orders) {
        std::vector<shop::Piece> pieces;
        for (std::size_t i = 0; i < held.order.lines.size(); ++i) {
            pieces.push_back({held.id, static_cast<int>(i), held.order.lines[i].good, held.order.lines[i].count});
        }
        choices.emplace_back();
        for (const auto& [code, supply] : shop.cupboard.supplies) {
            if (supply.kind != shop::SupplyKind::outer) continue;
            stow::Run run;
            const auto plan = plan_parcel(shop.cupboard, shop.orders, pieces, shop.sheets, shop.wish, code, run);
            if (!plan || plan->squeezed) continue;
            Merit merit = merit_of(*plan, closed(shop, *plan), shop.wish.preference, {});
            merit.code.clear();
            choices.back().push_back({merit, plan->uses});
        }
        Merit out;
        out.left_out = 1;
        choices.back().push_back({out, {}});
    }
    std::map<shop::SupplyCode, std::int64_t> used;
    std::optional<Merit> best;
    const std::function<void(std::size_t, Merit)> give_out = [&](std::size_t o, const Merit& sum) {
        if (o == choices.size()) {
            Merit whole = sum;
            whole.over = over(shop, used);
            if (!best || whole < *best) best = whole;
            return;
        }
        for (const Choice& choice : choices[o]) {
            bool there = true;
            for (const Used& u : choice.uses) {
                used[u.supply] += u.amount.thousandths;
                there = there && (shop.cupboard.supplies.at(u.supply).kind != shop::SupplyKind::outer ||
                                  used[u.supply] <= shop.cupboard.on_hand.at(u.supply).thousandths);
            }
            if (there) give_out(o + 1, sum + choice.merit);
            for (const Used& u : choice.uses) used[u.supply] -= u.amount.thousandths;
        }
    };
    give_out(0, {});
    return *best;
}

Merit merit_of(const Workshop& shop, const DayPlan& plan)
{
    Merit sum;
    std::map<shop::SupplyCode, std::int64_t> used;
    for (const ParcelPlan& p : plan.parcels) {
        sum = sum + merit_of(p, closed(shop, p), shop.wish.preference, {});
        for (const Used& u : p.uses) used[u.supply] += u.amount.thousandths;
    }
    sum.left_out = static_cast<std::int64_t>(plan.stuck.size());
    sum.over = over(shop, used);
    return sum;
}

TEST(DayShare, AgreesWithBruteForce)
{
    int scarce = 0, short_of_filler = 0, left_out = 0;
    for (unsigned seed = 1; seed <= 240; ++seed) {
        SCOPED_TRACE(seed);
        const Workshop shop = small_day(seed);
        const DayPlan plan = shop.plan();
        expect_sound(shop, plan);
        // No order is ever split here: two blocks that no carton holds together stay out of the comparison.
        const bool split =
            std::any_of(plan.parcels.begin(), plan.parcels.end(), [](const auto& p) { return p.parts > 1; });
        if (split) continue;
        EXPECT_EQ(merit_of(shop, plan), best_of_all(shop));
        EXPECT_FALSE(plan.sharing.gap);
        scarce += plan.sharing.moved > 0 ? 1 : 0;
        left_out += plan.stuck.empty() ? 0 : 1;
        short_of_filler += merit_of(shop, plan).over > 0 ? 1 : 0;
    }
    EXPECT_GT(scarce, 100); // or the days would say little
    EXPECT_GT(left_out, 10);
    EXPECT_GT(short_of_filler, 5);
}

TEST(DayShare, SavesExactlyNothingWhereNothingIsScarce)
{
    for (unsigned seed = 1; seed <= 40; ++seed) {
        SCOPED_TRACE(seed);
        Workshop shop = small_day(seed);
        for (auto& [code, amount] : shop.cupboard.on_hand) amount = shop::pieces(1000);
        for (auto& [code, supply] : shop.cupboard.supplies) supply.on_hand = shop::pieces(1000);
        const DayPlan plan = shop.plan();
        EXPECT_EQ(plan.sharing.moved, 0);
        EXPECT_EQ(plan.sharing.saves.minor, 0);
        EXPECT_EQ(plan.sharing.smaller, Volume{});
        EXPECT_THAT(plan.sharing.scarce, IsEmpty());
        EXPECT_THAT(plan.shortages, IsEmpty());
    }
}

class Scarce : public testing::Test {
protected:
    Scarce()
    {
        shop.put(block("CUBE", {mm(100), mm(100), mm(100)}, grams(300)));
        shop.put(block("DISC", {mm(150), mm(100), mm(40)}, grams(300)));
        // One good small carton. The cube can go into the middle one as well, the disc only into the large one.
        shop.put(carton("K1", {mm(160), mm(110), mm(100)}, 50, 1));
        shop.put(carton("K2", {mm(120), mm(120), mm(120)}, 60));
        shop.put(carton("K3", {mm(300), mm(200), mm(150)}, 110));
        shop.wish.preference = Preference::cheapest;
        shop.order(1, {{{"CUBE"}, 1}});
        shop.order(2, {{{"DISC"}, 1}});
    }
    static std::string outer_of(const DayPlan& plan, std::int64_t order)
    {
        for (const ParcelPlan& p : plan.parcels) {
            if (p.pieces.front().order.value == order) return p.outer.text;
        }
        return {};
    }
    Workshop shop;
};

TEST_F(Scarce, TheLastCartonGoesToWhomItSavesMost)
{
    const DayPlan plan = shop.plan();
    EXPECT_EQ(outer_of(plan, 1), "K2"); // one by one it would have taken K1: 50 + 110
    EXPECT_EQ(outer_of(plan, 2), "K1"); // together: 60 + 50
    EXPECT_EQ(plan.sharing.moved, 1);
    EXPECT_EQ(plan.sharing.saves, euro(50));
    ASSERT_THAT(plan.sharing.scarce, SizeIs(1));
    EXPECT_EQ(plan.sharing.scarce[0].supply.text, "K1");
    EXPECT_EQ(plan.sharing.scarce[0].more, shop::pieces(1));
    EXPECT_EQ(plan.sharing.scarce[0].saves, euro(10));
}

TEST_F(Scarce, WhatIsMissingToLetAnOrderGoComesFirst)
{
    shop.cupboard.on_hand[{"K2"}] = {};
    shop.cupboard.on_hand[{"K3"}] = {};
    const DayPlan plan = shop.plan();
    EXPECT_THAT(plan.parcels, SizeIs(1));
    ASSERT_THAT(plan.stuck, SizeIs(1));
    EXPECT_EQ(plan.stuck[0].why, Stuck::nothing_holds_it);
    ASSERT_FALSE(plan.sharing.scarce.empty());
    EXPECT_EQ(plan.sharing.scarce[0].supply.text, "K1");
    EXPECT_EQ(plan.sharing.scarce[0].more_go, 1);
}

TEST_F(Scarce, ANewOrderMovesNoneThatNeedNotMove)
{
    shop.orders.clear();
    for (int o = 1; o <= 4; ++o) shop.order(o, {{{"CUBE"}, 1}});
    shop.cupboard.on_hand[{"K1"}] = shop::pieces(2);
    // In the plan before, orders 3 and 4 had the two small cartons.
    shop.wish.before = {{{1}, {"K2"}}, {{2}, {"K2"}}, {{3}, {"K1"}}, {{4}, {"K1"}}};
    shop.order(5, {{{"CUBE"}, 1}}).order.promised = wednesday;
    const DayPlan plan = shop.plan();
    EXPECT_EQ(outer_of(plan, 1), "K2");
    EXPECT_EQ(outer_of(plan, 2), "K2");
    EXPECT_EQ(outer_of(plan, 3), "K1");
    EXPECT_EQ(outer_of(plan, 4), "K1");
    EXPECT_EQ(outer_of(plan, 5), "K2");
}

TEST_F(Scarce, WhatIsChosenByHandIsGoneForTheOthers)
{
    shop.wish.outer_by_hand[{1}] = {"K1"};
    const DayPlan plan = shop.plan();
    EXPECT_EQ(outer_of(plan, 1), "K1");
    EXPECT_EQ(outer_of(plan, 2), "K3");
}

// An own box is there as long as its paper is, and uses paper up.
TEST_F(Scarce, AnOwnBoxIsMadeWhileThereIsPaper)
{
    shop::Supply box = carton("OWN", {mm(105), mm(105), mm(105)}, 0, 0);
    box.made_from = {"SHEET"};
    shop.put(box);
    shop::Supply sheet = supply("SHEET", shop::SupplyKind::paper, 30, 1);
    shop.put(sheet);
    shop.orders.clear();
    shop.order(1, {{{"CUBE"}, 1}});
    shop.order(2, {{{"CUBE"}, 1}});
    shop.order(3, {{{"CUBE"}, 1}});
    const DayPlan plan = shop.plan();
    EXPECT_EQ(outer_of(plan, 1), "OWN"); // 30 for the sheet
    EXPECT_EQ(outer_of(plan, 2), "K1");
    EXPECT_EQ(outer_of(plan, 3), "K2");
    EXPECT_EQ(plan.parcels[0].uses.at(0).supply.text, "SHEET");
    EXPECT_EQ(plan.parcels[0].packaging, euro(30));
    shop.cupboard.on_hand[{"SHEET"}] = {};
    EXPECT_EQ(outer_of(shop.plan(), 1), "K1");
}

TEST_F(Scarce, AGiftBoxGoesToTheOrdersThatNeedFewest)
{
    shop::Supply box = carton("BOX", {mm(160), mm(110), mm(60)}, 150, 2);
    box.form->kind = OuterKind::gift_box;
    shop.put(box);
    shop.put(carton("K9", {mm(400), mm(300), mm(300)}, 160));
    shop::Good set = block("SET", {}, {});
    set.parts = {{{"DISC"}, 1}};
    set.gift_box = {"BOX"};
    shop.put(set, 0);
    shop.orders.clear();
    shop.order(1, {{{"SET"}, 2}}); // comes first, and would take both
    shop.order(2, {{{"SET"}, 1}});
    shop.order(3, {{{"SET"}, 1}});
    const DayPlan plan = shop.plan();
    EXPECT_THAT(plan.parcels, SizeIs(2));
    ASSERT_THAT(plan.stuck, SizeIs(1));
    EXPECT_EQ(plan.stuck[0].order, shop::OrderId{1});
    EXPECT_EQ(plan.stuck[0].why, Stuck::no_gift_box_left);
    EXPECT_EQ(plan.sharing.more_go, 1);
}

} // namespace
} // namespace stow::planning
