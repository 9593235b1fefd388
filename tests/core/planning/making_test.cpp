#include "core/planning/making.h"

#include "workshop.h"

namespace stow::planning {
namespace {

TEST(MakingList, NamesWhatPlansAndWaitingOrdersNeedAndShelvesLack)
{
    Workshop shop;
    shop.put(block("INK", {mm(40), mm(40), mm(60)}, grams(110)), 5);
    shop.put(block("WAX", {mm(100), mm(20), mm(20)}, grams(30)), 9);
    shop::Good low = block("NIB", {mm(40), mm(10), mm(8)}, grams(4));
    low.lowest = 12;
    shop.put(low, 10);
    shop::Good set = block("SET", {}, {});
    set.parts = {{{"INK"}, 2}, {{"WAX"}, 1}};
    shop.put(set, 0);
    shop.order(1, {{{"SET"}, 2}}).order.promised = day("2026-12-04");
    shop.order(2, {{{"INK"}, 1}}).order.promised = day("2026-12-01");
    const auto list = making_list(shop.cupboard, {{{"INK"}, 3}}, shop.orders);
    ASSERT_EQ(list.size(), 2U);
    EXPECT_EQ(list[0].good.text, "INK");
    EXPECT_EQ(list[0].reserved, 3);
    EXPECT_EQ(list[0].waiting, 5);
    EXPECT_EQ(list[0].make, 3); // 3 + 5 of 5
    EXPECT_EQ(list[0].first_promise, day("2026-12-01"));
    EXPECT_EQ(list[1].good.text, "NIB");
    EXPECT_EQ(list[1].make, 2);
}

} // namespace
} // namespace stow::planning
