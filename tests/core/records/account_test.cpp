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
    f.pieces = {{{1}, 0, {"INK"}, 2}};
    f.plan.uses = {{{outer}, shop::pieces(1)}, {{"FILL"}, {3000}}};
    f.plan.seconds = 120;
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
    EXPECT_EQ(a.empty_permille(), 750) << "2 L of goods in 8 L";
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
    EXPECT_EQ(weeks[0].for_again, all[1].total);
    EXPECT_EQ(weeks[1].for_again.minor, 0);
    const auto countries = sums(all, Grouped::country, {});
    ASSERT_EQ(countries.size(), 2U);
    Money whole{};
    for (const Sum& s : countries) whole += s.total;
    EXPECT_EQ(whole.minor, 3 * 565);
    EXPECT_EQ(sums(all, Grouped::shop, {}).size(), 1U);
}

// Regulation (EU) 2025/40, Art. 24: filling counts as empty. Figures worked from it: a box of 9.0 L with goods of
// 3.0 L is 66.7 % empty, with 4.5 L exactly 50.0 %; two litres of filler change nothing.
TEST(Account, EmptySpaceCountsFillerAsEmpty)
{
    shop::Cupboard c = cupboard();
    for (const auto& [code, height] : {std::pair{"BOX", 300}, {"HALF", 150}}) {
        shop::Good good;
        good.code = {code};
        good.shape = Block{{mm(100), mm(100), mm(height)}};
        c.goods[good.code] = good;
    }
    ParcelFacts box = facts("1", "K", "DE", "2026-11-25");
    box.plan.closed = {mm(300), mm(200), mm(150)};
    box.pieces = {{{1}, 0, {"BOX"}, 1}};
    EXPECT_EQ(account_of(box, c, {}).empty_permille(), 667);
    box.plan.uses.push_back({{"FILL"}, {2000}});
    EXPECT_EQ(account_of(box, c, {}).empty_permille(), 667);
    box.pieces.push_back({{1}, 1, {"HALF"}, 1});
    EXPECT_EQ(account_of(box, c, {}).empty_permille(), 500);
    EXPECT_EQ(sum_of({}, {}).empty_permille(), std::nullopt);
}

TEST(Account, LeavesOutOtherCurrenciesAndSaysSo)
{
    ParcelFacts f = facts("1", "K", "DE", "2026-11-25");
    f.postage = Money{500, *Currency::from("USD")};
    const Sum sum = sum_of({account_of(f, cupboard(), {})}, {});
    EXPECT_EQ(sum.in_other_currency, 1);
    EXPECT_FALSE(sum.spent.contains(Spent::postage));
}

TEST(Sum, TellsHowFarEstimatesAreOff)
{
    std::vector<ParcelAccount> all;
    for (const std::optional<Weight> weighed : {std::optional(grams(496)), std::optional(grams(510)), {}}) {
        ParcelFacts f = facts("1", "K", "DE", "2026-11-25");
        f.plan.weight.mean = grams(500);
        f.weighed = weighed;
        all.push_back(account_of(f, cupboard(), {}));
    }
    EXPECT_EQ(sum_of(all, {}).weighed, 2);
    EXPECT_EQ(sum_of(all, {}).off_by(), grams(7));
}

TEST(Materials, CountGoodsOwnPackagingAndKeepApartWhatIsUsedAgain)
{
    const auto lines =
        materials({facts("1", "K", "DE", "2026-11-23"), facts("2", "OLD", "DE", "2026-11-23")}, cupboard());
    ASSERT_EQ(lines.size(), 2U);
    EXPECT_EQ(lines[0].material, shop::Material::paper);
    EXPECT_EQ(lines[0].weight, grams(160 + 60 + 60)) << "not the 200 g that came in with somebody else's goods";
    EXPECT_EQ(lines[0].again, grams(200));
    EXPECT_EQ(lines[1].material, shop::Material::glass);
    EXPECT_EQ(lines[1].weight, grams(4 * 78));
    EXPECT_EQ(lines[1].of_goods, grams(4 * 78));
}

} // namespace
} // namespace stow::records
