#include "core/records/account.h"

#include <gtest/gtest.h>

namespace stow::records {
namespace {

shop::Supply supply(const char* code, shop::SupplyKind kind, std::int64_t cents, std::int64_t g)
{
    shop::Supply s;
    s.code = {code};
    s.kind = kind;
    s.cost = {cents, {}};
    s.weight = {grams(g), {}};
    return s;
}

shop::Cupboard cupboard()
{
    shop::Cupboard c;
    for (shop::Supply s :
         {supply("K", shop::SupplyKind::outer, 60, 160), supply("FILL", shop::SupplyKind::filler, 5, 20),
          supply("OLD", shop::SupplyKind::outer, 0, 200)}) {
        s.reused = s.code.text == "OLD";
        s.minutes = s.code.text == "K" ? 2 : 0;
        c.supplies[s.code] = s;
    }
    shop::Good ink;
    ink.code = {"INK"};
    ink.shape = Block{{mm(100), mm(100), mm(100)}};
    ink.own_packaging = {shop::Material::glass, grams(78)};
    c.goods[ink.code] = ink;
    return c;
}

ParcelFacts facts(const char* number, const char* outer, const char* country, const char* day)
{
    ParcelFacts f;
    f.number = number;
    f.shop = "Harbour Stall";
    f.country = country;
    f.packed_on = *parse_date(day);
    f.plan.pieces = {{{1}, 0, {"INK"}, 2}};
    f.plan.uses = {{{outer}, shop::pieces(1)}, {{"FILL"}, {3000}}};
    f.plan.outer = {outer};
    f.plan.closed = {mm(200), mm(200), mm(200)};
    f.postage = Money{490, {}};
    return f;
}

TEST(Account, AddsUpWhatAParcelCost)
{
    ParcelFacts f = facts("2611-001", "K", "DE", "2026-11-25");
    f.postage_paid = Money{450, {}};
    const ParcelAccount a = account_of(f, cupboard(), {{{"K"}, {45, {}}}});
    EXPECT_EQ(a.spent.at(Spent::outer).minor, 45) << "what it cost when it came in, not its list price";
    EXPECT_EQ(a.spent.at(Spent::filler).minor, 15);
    EXPECT_EQ(a.spent.at(Spent::postage).minor, 490);
    EXPECT_EQ(a.total.minor, 550);
    EXPECT_EQ(a.paid.minor, 450);
    EXPECT_EQ(a.seconds, 120);
    EXPECT_EQ(a.empty_permille, 750) << "2 L of goods in 8 L";
}

TEST(Account, GroupsByWeekShopAndCountryAndCountsNothingTwice)
{
    std::vector<ParcelAccount> all;
    for (const auto& [number, country, day] :
         {std::tuple{"1", "DE", "2026-11-23"}, {"2", "DE", "2026-11-29"}, {"3", "FR", "2026-11-30"}}) {
        ParcelFacts f = facts(number, "K", country, day);
        f.came_back = std::string(number) == "3";
        f.again = std::string(number) == "2";
        all.push_back(account_of(f, cupboard(), {}));
    }
    const auto weeks = sums(all, Grouped::week, {});
    ASSERT_EQ(weeks.size(), 2U);
    EXPECT_EQ(weeks[0].key, "2026-11-23");
    EXPECT_EQ(weeks[0].parcels, 2);
    EXPECT_EQ(weeks[1].key, "2026-11-30");
    EXPECT_EQ(weeks[1].lost, all[2].total);
    EXPECT_EQ(weeks[0].again, all[1].total);
    EXPECT_EQ(weeks[1].again.minor, 0);
    const auto countries = sums(all, Grouped::country, {});
    ASSERT_EQ(countries.size(), 2U);
    Money whole{};
    for (const Sum& s : countries) whole += s.total;
    EXPECT_EQ(whole.minor, 3 * 565);
    EXPECT_EQ(sums(all, Grouped::shop, {}).size(), 1U);
}

TEST(Materials, CountGoodsOwnPackagingAndLeaveOutWhatIsUsedAgain)
{
    const auto lines =
        materials({facts("1", "K", "DE", "2026-11-23"), facts("2", "OLD", "DE", "2026-11-23")}, cupboard());
    ASSERT_EQ(lines.size(), 2U);
    EXPECT_EQ(lines[0].material, shop::Material::paper);
    EXPECT_EQ(lines[0].weight, grams(160 + 60 + 60)) << "not the 200 g that came in with somebody else's goods";
    EXPECT_EQ(lines[1].material, shop::Material::glass);
    EXPECT_EQ(lines[1].weight, grams(4 * 78));
    EXPECT_EQ(lines[1].of_goods, grams(4 * 78));
}

} // namespace
} // namespace stow::records
