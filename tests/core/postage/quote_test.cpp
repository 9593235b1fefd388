#include "sheets.h"

#include <gmock/gmock.h>

namespace stow::postage {
namespace {

using testing::ElementsAre;

RateSheet two_formats()
{
    RateSheet sheet = one_format_sheet(format_mm("letter", 240, 165, 5), grams(100));
    sheet.formats.push_back(format_mm("parcel", 600, 400, 300));
    sheet.steps = {{"parcel", "home", "letter", grams(50), euro(110)},
                   {"parcel", "home", "letter", grams(100), euro(150)},
                   {"parcel", "home", "parcel", grams(500), euro(420)},
                   {"parcel", "home", "parcel", grams(2000), euro(560)}};
    sheet.beyond = {{"parcel", "home", "parcel", euro(90), grams(5000)}};
    return sheet;
}

TEST(Steps, UpperEdgeIsInclusive)
{
    const Size flat{mm(200), mm(120), mm(3)};
    EXPECT_EQ(price_of(two_formats(), parcel_of(flat, grams(50))).total, euro(110));
    EXPECT_EQ(price_of(two_formats(), parcel_of(flat, tenth_g(501))).total, euro(150));
    EXPECT_EQ(price_of(two_formats(), parcel_of(flat, grams(100))).format, "letter");
    EXPECT_EQ(price_of(two_formats(), parcel_of(flat, tenth_g(1001))).format, "parcel");
}

TEST(Steps, StartedKilogramsPastTheLast)
{
    const Size box{mm(200), mm(150), mm(100)};
    EXPECT_EQ(price_of(two_formats(), parcel_of(box, grams(2000))).total, euro(560));
    EXPECT_EQ(price_of(two_formats(), parcel_of(box, tenth_g(20001))).total, euro(650));
    EXPECT_EQ(price_of(two_formats(), parcel_of(box, grams(3000))).total, euro(650));
    EXPECT_EQ(price_of(two_formats(), parcel_of(box, grams(5000))).total, euro(830));
    const Refused over = refusal_of(two_formats(), parcel_of(box, grams(5001)));
    EXPECT_EQ(over.reason, NotTaken::too_heavy);
    EXPECT_EQ(over.heavier_by, grams(1));
}

TEST(Steps, EdgeAndTheTotalPastIt)
{
    const Size flat{mm(200), mm(120), mm(3)};
    const Price letter = price_of(two_formats(), parcel_of(flat, grams(80)));
    EXPECT_EQ(letter.step_edge, grams(100));
    EXPECT_EQ(letter.next_step, euro(420)); // as a parcel
    const Price last = price_of(two_formats(), parcel_of({mm(200), mm(150), mm(100)}, grams(4500)));
    EXPECT_EQ(last.step_edge, grams(5000));
    EXPECT_EQ(last.next_step, std::nullopt);
}

TEST(Formats, TheCheapestThatTakesItIsUsed)
{
    RateSheet sheet = two_formats();
    sheet.steps[1].price = euro(700); // a dear letter step
    EXPECT_EQ(price_of(sheet, parcel_of({mm(200), mm(120), mm(3)}, grams(90))).format, "parcel");
}

TEST(Formats, EdgesAreSortedBeforeTheyAreCompared)
{
    EXPECT_TRUE(takes(two_formats(), parcel_of({mm(300), mm(600), mm(400)})));
    EXPECT_FALSE(takes(two_formats(), parcel_of({mm(300), mm(600), mm(401)})));
}

TEST(Formats, ARefusalNamesTheNearestMiss)
{
    const Refused r = refusal_of(two_formats(), parcel_of({mm(612), mm(403), mm(100)}));
    EXPECT_EQ(r.reason, NotTaken::too_big);
    EXPECT_EQ(r.format, "parcel");
    EXPECT_EQ(r.what, "length");
    EXPECT_EQ(r.over_by, mm(12));
}

TEST(Formats, TooSmallSaysByHowMuch)
{
    Format f = format_mm("packet", 600, 400, 300);
    f.least_length = mm(140);
    f.least_width = mm(90);
    const Refused r = refusal_of(one_format_sheet(f), parcel_of({mm(120), mm(85), mm(40)}));
    EXPECT_EQ(r.reason, NotTaken::too_small);
    EXPECT_EQ(r.what, "length");
    EXPECT_EQ(r.over_by, mm(20));
}

TEST(Zones, TheLongestPostcodeRuleWins)
{
    RateSheet sheet = two_formats();
    sheet.zones = {{"home", {{"DK", "", ""}}}, {"island", {{"DK", "37", "37"}}}, {"quay", {{"DK", "3740", "3749"}}}};
    for (const char* zone : {"island", "quay"}) {
        for (Step step : std::vector(sheet.steps.begin(), sheet.steps.begin() + 4)) {
            step.zone = zone;
            sheet.steps.push_back(step);
        }
    }
    ParcelFacts p = parcel_of({mm(200), mm(120), mm(3)});
    const auto zone_at = [&](const char* postcode) {
        p.postcode = postcode;
        return price_of(sheet, p).zone;
    };
    EXPECT_EQ(zone_at("5700"), "home");
    EXPECT_EQ(zone_at("3700"), "island");
    EXPECT_EQ(zone_at("3740"), "quay");
    EXPECT_EQ(zone_at("3749"), "quay");
    EXPECT_EQ(zone_at("3750"), "island");
    EXPECT_EQ(zone_at(" 37-45 "), "quay");
    EXPECT_EQ(zone_at(""), "home");
}

TEST(Zones, AStarTakesWhatNoOtherPlaceNames)
{
    RateSheet sheet = two_formats();
    sheet.zones.push_back({"world", {{"*", "", ""}}});
    ParcelFacts p = parcel_of({mm(200), mm(120), mm(3)});
    p.country = "NZ";
    EXPECT_EQ(refusal_of(sheet, p).reason, NotTaken::no_price); // the zone is there, a price is not
    EXPECT_EQ(refusal_of(two_formats(), p).reason, NotTaken::no_zone);
    EXPECT_EQ(price_of(sheet, parcel_of(p.closed)).zone, "home");
}

TEST(Days, TheSheetValidOnTheDayOfHandOverCounts)
{
    RateSheet now = two_formats();
    now.valid_from = day("2026-01-01");
    now.valid_until = day("2026-12-31");
    RateSheet next = now;
    next.valid_from = day("2027-01-01");
    next.valid_until = day("2027-12-31");
    next.steps[3].price = euro(590);
    const std::vector<RateSheet> both{next, now};
    ParcelFacts p = parcel_of({mm(200), mm(150), mm(100)}, grams(1500));
    const auto total_on = [&](const char* iso) -> std::optional<Money> {
        p.hand_over = day(iso);
        const auto all = quotes(both, p);
        EXPECT_EQ(all.size(), 1U);
        if (all.front().price() == nullptr) return std::nullopt;
        return all.front().price()->total;
    };
    EXPECT_EQ(total_on("2026-12-31"), euro(560));
    EXPECT_EQ(total_on("2027-01-01"), euro(590));
    EXPECT_EQ(total_on("2025-12-31"), std::nullopt);
    p.hand_over = day("2028-01-01");
    EXPECT_EQ(std::get<Refused>(quotes(both, p).front().result).reason, NotTaken::not_valid_then);
}

TEST(Content, WhatTheServiceDoesNotSendIsNamed)
{
    RateSheet sheet = two_formats();
    sheet.services[0].not_sent = {"flammable", "liquid"};
    ParcelFacts p = parcel_of({mm(200), mm(150), mm(100)});
    p.holds = {"glass", "liquid"};
    EXPECT_EQ(refusal_of(sheet, p).reason, NotTaken::not_admitted);
    EXPECT_EQ(refusal_of(sheet, p).what, "liquid");
}

TEST(Cover, ReachesUpToItsValueInItsOwnCurrency)
{
    RateSheet sheet = two_formats();
    sheet.services[0].cover = euro(10000);
    ParcelFacts p = parcel_of({mm(200), mm(150), mm(100)});
    EXPECT_EQ(price_of(sheet, p).covered, std::nullopt);
    p.value = euro(10000);
    EXPECT_EQ(price_of(sheet, p).covered, true);
    p.value = euro(10001);
    EXPECT_EQ(refusal_of(sheet, p).reason, NotTaken::not_covered);
    EXPECT_EQ(refusal_of(sheet, p).what, "100.00 EUR");
    p.value = Money{10001, *Currency::from("SEK")};
    EXPECT_EQ(price_of(sheet, p).covered, std::nullopt);
    sheet.services[0].cover.reset();
    EXPECT_EQ(price_of(sheet, p).covered, false);
}

TEST(Surcharges, EachOnItsConditionAndInItsSeason)
{
    RateSheet sheet = two_formats();
    Surcharge fuel;
    fuel.name = "fuel";
    fuel.kind = Surcharge::Kind::percent;
    fuel.permille = 85;
    Surcharge lengthy;
    lengthy.name = "long";
    lengthy.amount = euro(300);
    lengthy.longer_than = mm(500);
    Surcharge heavy;
    heavy.name = "heavy";
    heavy.kind = Surcharge::Kind::per_kg;
    heavy.amount = euro(20);
    heavy.heavier_than = grams(3000);
    Surcharge peak;
    peak.name = "peak";
    peak.amount = euro(50);
    peak.from = day("2026-11-26");
    peak.until = day("2026-12-24");
    sheet.surcharges = {fuel, lengthy, heavy, peak};
    sheet.tax_permille = 250;

    ParcelFacts p = parcel_of({mm(501), mm(150), mm(100)}, grams(3001));
    const Price price = price_of(sheet, p);
    // 560 + 2 started kg * 90 = 740; fuel 62.9 -> 63; 4 started kg * 20 = 80; tax 25 % of 1183 = 295.75 -> 296
    std::vector<std::pair<std::string, std::int64_t>> parts;
    for (const Part& part : price.parts) parts.emplace_back(part.name, part.amount.minor);
    EXPECT_THAT(parts, ElementsAre(std::pair("parcel", 740), std::pair("fuel", 63), std::pair("long", 300),
                                   std::pair("heavy", 80), std::pair("tax", 296)));
    EXPECT_EQ(price.total, euro(1479));

    p.hand_over = day("2026-11-26");
    EXPECT_EQ(price_of(sheet, p).total, euro(740 + 63 + 300 + 80 + 50 + 308)); // tax 308.25
    p.closed.x = mm(500);
    p.weight = grams(3000);
    EXPECT_EQ(price_of(sheet, p).parts.size(), 4U); // base, fuel, peak, tax
    EXPECT_EQ(price_of(sheet, p).step_edge, grams(3000));
}

TEST(Surcharges, AServiceMayHaveItsOwnTax)
{
    RateSheet sheet = two_formats();
    sheet.tax_permille = 250;
    sheet.services[0].tax_permille = 0;
    EXPECT_EQ(price_of(sheet, parcel_of({mm(200), mm(120), mm(3)}, grams(40))).total, euro(110));
}

TEST(Ruler, MarksEveryChangeOfTotal)
{
    std::vector<std::pair<std::int64_t, std::int64_t>> marks;
    for (const Mark& m : ruler(two_formats(), "parcel", parcel_of({mm(200), mm(120), mm(3)}))) {
        marks.emplace_back(m.up_to.units / 10, m.total.minor);
    }
    EXPECT_THAT(marks, ElementsAre(std::pair(50, 110), std::pair(100, 150), std::pair(500, 420), std::pair(2000, 560),
                                   std::pair(3000, 650), std::pair(4000, 740), std::pair(5000, 830)));
    EXPECT_TRUE(ruler(two_formats(), "no such service", parcel_of({mm(200), mm(120), mm(3)})).empty());
}

TEST(Ruler, IsWhatQuotesSayAtEveryWeight)
{
    RateSheet sheet = two_formats();
    sheet.services[0].volumetric_divisor = 5000;
    Surcharge heavy;
    heavy.name = "heavy";
    heavy.kind = Surcharge::Kind::per_kg;
    heavy.amount = euro(30);
    heavy.heavier_than = grams(1200);
    sheet.surcharges = {heavy};
    const ParcelFacts box = parcel_of({mm(300), mm(200), mm(100)}); // 1.2 kg by volume, charged as 1.5
    const auto marks = ruler(sheet, "parcel", box);
    ASSERT_FALSE(marks.empty());
    std::size_t at = 0;
    for (std::int64_t g = 1; g <= 5000; ++g) {
        ParcelFacts p = box;
        p.weight = grams(g);
        if (p.weight > marks[at].up_to) ++at;
        const Price price = price_of(sheet, p);
        ASSERT_EQ(price.total, marks[at].total) << g << " g";
        ASSERT_EQ(price.step_edge, marks[at].up_to) << g << " g";
        const bool last = at + 1 == marks.size();
        ASSERT_EQ(price.next_step, last ? std::nullopt : std::optional(marks[at + 1].total)) << g << " g";
    }
    EXPECT_EQ(at + 1, marks.size());
}

TEST(Currency, TwoInOneSheetAreABrokenInvariant)
{
    RateSheet sheet = two_formats();
    sheet.steps[0].price = Money{100, *Currency::from("SEK")};
    EXPECT_THROW(quotes({sheet}, parcel_of({mm(200), mm(120), mm(3)})), std::logic_error);
}

} // namespace
} // namespace stow::postage
