#include "core/planning/before_sale.h"

#include "workshop.h"

namespace stow::planning {
namespace {

Workshop empty_handed()
{
    Workshop shop;
    shop.put(carton("S", {mm(150), mm(100), mm(80)}, 40, 0)); // none on the rack, none on the shelf
    shop::Good ink = block("INK", {mm(60), mm(60), mm(70)}, grams(850));
    ink.weight.spread = grams(20);
    shop.put(ink, 0);
    shop.sheets = {tariff()};
    return shop;
}

TEST(BeforeSale, NeedsNothingOnTheShelf)
{
    const Workshop shop = empty_handed();
    stow::Run run;
    const auto plan = before_sale(shop.cupboard, {{"INK"}, 1, "DK", "5700"}, shop.sheets, shop.wish, run);
    ASSERT_TRUE(plan);
    EXPECT_EQ(plan->outer.text, "S");
    ASSERT_TRUE(plan->chosen);
    EXPECT_EQ(plan->quotes[*plan->chosen].price()->total, euro(450)); // 930 g in the slow parcel
    EXPECT_EQ(plan->quotes.size(), 2U);
    EXPECT_FALSE(before_sale(shop.cupboard, {{"NO"}, 1, "DK"}, shop.sheets, shop.wish, run));
    const auto abroad = before_sale(shop.cupboard, {{"INK"}, 1, "NZ"}, shop.sheets, shop.wish, run);
    ASSERT_FALSE(abroad);
    EXPECT_EQ(abroad.error().why, Stuck::no_service);
}

TEST(Charges, CountTheRiskOfCrossingTheEdge)
{
    Workshop shop = empty_handed();
    shop.cupboard.goods.at({"INK"}).weight.mean = grams(920); // with its 80 g carton just at the edge of 1 kg
    stow::Run run;
    const auto table = charges(shop.cupboard, {{"DK", "5700"}, {"NZ", ""}}, shop.sheets, shop.wish, run);
    ASSERT_EQ(table.size(), 2U);
    const Charge& home = table[0];
    ASSERT_TRUE(home.postage);
    EXPECT_EQ(home.weight.mean, grams(1000));
    EXPECT_EQ(home.postage, euro(450));
    EXPECT_EQ(home.next_step, euro(700));
    EXPECT_NEAR(home.risk, 0.5, 0.01); // half of all parcels are heavier than the mean
    EXPECT_EQ(home.to_charge, euro(450 + 125));
    EXPECT_FALSE(table[1].postage);
}

} // namespace
} // namespace stow::planning
