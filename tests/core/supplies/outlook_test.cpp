#include "core/supplies/outlook.h"

#include <gtest/gtest.h>

namespace stow::supplies {
namespace {

shop::Supply carton(const char* code, int lead_days, std::int64_t reorder_at)
{
    shop::Supply made;
    made.code = {code};
    made.supplier = "Kartonhof Ohlsiel";
    made.lead_days = lead_days;
    made.reorder_at = shop::pieces(reorder_at);
    made.pack = shop::pieces(20);
    return made;
}

TEST(Outlook, OrdersInTimeForWhatWillBeUsed)
{
    const std::map<shop::SupplyCode, shop::Supply> supplies{
        {{"K1"}, carton("K1", 14, 5)}, {{"K2"}, carton("K2", 14, 50)}, {{"K3"}, carton("K3", 14, 5)}};
    const std::map<shop::SupplyCode, shop::Amount> on_hand{
        {{"K1"}, shop::pieces(19)}, {{"K2"}, shop::pieces(60)}, {{"K3"}, shop::pieces(19)}};
    const std::map<shop::SupplyCode, Weeks> use{
        {{"K1"}, Weeks(20, 10'000)}, {{"K2"}, Weeks(20, 10'000)}, {{"K3"}, {0, 0, 10'000, 10'000}}};
    const auto told = outlook(supplies, on_hand, {{{"K1"}, shop::pieces(5)}}, use, 0.95);
    EXPECT_EQ(told.at({"K1"}).worked_out, shop::pieces(20)) << "two weeks of ten, and no spread";
    EXPECT_EQ(told.at({"K1"}).cover, 9) << "14 that no plan has reserved";
    EXPECT_EQ(told.at({"K2"}).reorder_at, shop::pieces(50)) << "hers is larger";
    EXPECT_FALSE(told.at({"K3"}).forecast) << "two weeks are too few";

    const auto lists = reorder_list(with_points(supplies, told), on_hand, {{{"K1"}, shop::pieces(5)}});
    ASSERT_EQ(lists.size(), 1u);
    ASSERT_EQ(lists[0].lines.size(), 1u);
    EXPECT_EQ(lists[0].lines[0].supply.text, "K1");
    EXPECT_EQ(lists[0].lines[0].packs, 2) << "14 up to 40";
}

} // namespace
} // namespace stow::supplies
