#include "core/supplies/stock.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <numeric>

using namespace stow;
using namespace stow::supplies;
using shop::Amount;

// Normal quantiles to four places, as printed in any table of the standard normal distribution.
TEST(ReorderPoint, UsesTheNormalQuantile)
{
    EXPECT_NEAR(z_of(0.80), 0.8416, 5e-5);
    EXPECT_NEAR(z_of(0.90), 1.2816, 5e-5);
    EXPECT_NEAR(z_of(0.95), 1.6449, 5e-5);
    EXPECT_NEAR(z_of(0.97), 1.8808, 5e-5);
    EXPECT_NEAR(z_of(0.99), 2.3263, 5e-5);
    EXPECT_NEAR(z_of(0.999), 3.0902, 5e-5);
    EXPECT_NEAR(z_of(0.5), 0.0, 1e-12);
    EXPECT_THROW(z_of(1.0), std::logic_error);
}

// Stevenson, Operations Management, 14th ed., p. 528, example 8: demand in the lead time 50, its spread 5, risk 3 %:
// safety stock 9.40 and reorder point 59.40 (with z rounded to 1.88).
TEST(ReorderPoint, AgreesWithStevensonsExample)
{
    EXPECT_NEAR(safety_stock({50, 5}, 1, 0.97), 9.40, 0.005);
    EXPECT_NEAR(reorder_point({50, 5}, 1, 0.97), 59.40, 0.005);
}

// Exercises from the literature; the numbers follow from the formula by hand: 12 a day, spread 5, 6 days, 5 % risk, and
// 5 a day, spread 2, 3 days, 95 %.
TEST(ReorderPoint, GrowsWithTheRootOfTheLeadTime)
{
    EXPECT_NEAR(safety_stock({12, 5}, 6, 0.95), 20.15, 0.01);
    EXPECT_NEAR(reorder_point({12, 5}, 6, 0.95), 92.15, 0.01);
    EXPECT_NEAR(reorder_point({5, 2}, 3, 0.95), 20.70, 0.01);
}

TEST(DaysOfCover, LastsAsLongAsTheAverageUse)
{
    EXPECT_EQ(days_of_cover(shop::pieces(40), shop::pieces(28), 14), 20);
    EXPECT_EQ(days_of_cover(Amount{1400}, Amount{1000}, 7), 9) << "1.4 l at 1 l a week is 9.8 days";
    EXPECT_EQ(days_of_cover(shop::pieces(-3), shop::pieces(28), 14), 0);
    EXPECT_EQ(days_of_cover(shop::pieces(40), Amount{}, 14), std::nullopt) << "nothing used: no end in sight";
}

RC_GTEST_PROP(OnHand, IsTheSumInAnyOrder, (std::vector<std::int32_t> amounts))
{
    std::vector<Amount> movements;
    for (const std::int32_t amount : amounts) movements.push_back({amount});
    const std::int64_t sum = std::accumulate(amounts.begin(), amounts.end(), std::int64_t{0});
    RC_ASSERT(on_hand(movements).thousandths == sum);
    std::reverse(movements.begin(), movements.end());
    RC_ASSERT(on_hand(movements).thousandths == sum);
}

namespace {

shop::Supply supply(const char* code, const char* supplier, Amount reorder_at, Amount pack, std::int64_t cost)
{
    shop::Supply made;
    made.code = {code};
    made.supplier = supplier;
    made.reorder_at = reorder_at;
    made.pack = pack;
    made.cost = {cost, {}};
    return made;
}

} // namespace

TEST(ReorderList, GroupsBySupplierAndRoundsToPacks)
{
    std::map<shop::SupplyCode, shop::Supply> supplies;
    for (const shop::Supply& one : {supply("K3", "Kaimauer Kartonagen", shop::pieces(20), shop::pieces(25), 62),
                                    supply("K1", "Kaimauer Kartonagen", shop::pieces(20), shop::pieces(25), 41),
                                    supply("TAPE", "Brede Hansen", shop::pieces(60), shop::pieces(66), 2),
                                    supply("K9", "Kaimauer Kartonagen", Amount{}, shop::pieces(10), 99)}) {
        supplies[one.code] = one;
    }
    const std::map<shop::SupplyCode, Amount> stock{
        {{"K1"}, shop::pieces(21)}, {{"K3"}, shop::pieces(22)}, {{"TAPE"}, Amount{60'400}}};
    const auto lists = reorder_list(supplies, stock, {{{"K3"}, shop::pieces(5)}, {{"TAPE"}, Amount{800}}});

    ASSERT_EQ(lists.size(), 2u);
    EXPECT_EQ(lists[0].supplier, "Brede Hansen");
    ASSERT_EQ(lists[0].lines.size(), 1u);
    EXPECT_EQ(lists[0].lines[0].on_hand, Amount{59'600});
    EXPECT_EQ(lists[0].lines[0].packs, 1) << "60.4 m up to 120 m are one roll of 66 m";
    EXPECT_EQ(lists[0].lines[0].cost.minor, 132);

    EXPECT_EQ(lists[1].supplier, "Kaimauer Kartonagen");
    ASSERT_EQ(lists[1].lines.size(), 1u) << "K1 is above its point, K9 has none";
    EXPECT_EQ(lists[1].lines[0].supply.text, "K3");
    EXPECT_EQ(lists[1].lines[0].packs, 1) << "17 up to 40 are 23: one pack of 25";
    EXPECT_EQ(lists[1].totals, (std::vector<Money>{{25 * 62, {}}}));
}

TEST(ReorderList, OrdersWhatIsShortEvenWithoutAReorderPoint)
{
    const std::map<shop::SupplyCode, shop::Supply> supplies{{{"K9"}, supply("K9", "", Amount{}, shop::pieces(10), 99)}};
    const auto lists = reorder_list(supplies, {{{"K9"}, shop::pieces(2)}}, {{{"K9"}, shop::pieces(14)}});
    ASSERT_EQ(lists.size(), 1u);
    EXPECT_EQ(lists[0].lines[0].packs, 2);
}

RC_GTEST_PROP(ReorderList, AlwaysReachesTwiceThePointWithoutAPackTooMany, ())
{
    const auto point = *rc::gen::inRange<std::int64_t>(1, 500'000);
    const auto pack = *rc::gen::inRange<std::int64_t>(1, 100'000);
    const auto have = *rc::gen::inRange<std::int64_t>(-200'000, point + 1);
    const std::map<shop::SupplyCode, shop::Supply> supplies{{{"X"}, supply("X", "", {point}, {pack}, 1)}};
    const auto line = reorder_list(supplies, {{{"X"}, {have}}}, {}).at(0).lines.at(0);
    RC_ASSERT(have + line.to_order.thousandths >= 2 * point);
    RC_ASSERT(have + line.to_order.thousandths - pack < 2 * point);
}
