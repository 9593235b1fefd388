// Rules that some carriers have: price by volume, cylinders, rounded sides, discounts, surcharges upon surcharges.
#include "sheets.h"

#include "core/postage/calendar.h"

#include <gmock/gmock.h>

namespace stow::postage {
namespace {

RateSheet box_sheet()
{
    return one_format_sheet(format_mm("box", 1200, 800, 800));
}

Surcharge percent(const char* name, std::int64_t permille)
{
    Surcharge s;
    s.name = name;
    s.kind = Surcharge::Kind::percent;
    s.permille = permille;
    return s;
}

Surcharge fixed(const char* name, std::int64_t cents)
{
    Surcharge s;
    s.name = name;
    s.amount = euro(cents);
    return s;
}

std::int64_t part(const Price& price, const std::string& name)
{
    for (const Part& p : price.parts) {
        if (p.name == name) return p.amount.minor;
    }
    return 0;
}

TEST(ByVolume, TheStepThatHoldsTheClosedVolume)
{
    RateSheet sheet = box_sheet();
    sheet.steps.clear();
    sheet.volume_steps = {{"parcel", "home", "box", millilitres(10'000), euro(600), grams(20'000)},
                          {"parcel", "home", "box", millilitres(40'000), euro(900), grams(30'000)}};
    EXPECT_EQ(price_of(sheet, parcel_of({mm(250), mm(200), mm(200)})).total, euro(600)); // 10 litres exactly
    EXPECT_EQ(price_of(sheet, parcel_of({mm(250), mm(200), tenth_mm(2001)})).total, euro(900));
    EXPECT_EQ(price_of(sheet, parcel_of({mm(250), mm(200), mm(200)}, grams(20'000))).step_edge, grams(20'000));
    EXPECT_EQ(refusal_of(sheet, parcel_of({mm(250), mm(200), mm(200)}, grams(20'001))).reason, NotTaken::too_heavy);
    const Refused large = refusal_of(sheet, parcel_of({mm(400), mm(400), mm(251)}));
    EXPECT_EQ(large.reason, NotTaken::too_big);
    EXPECT_EQ(large.what, "volume");
}

TEST(ByVolume, TheDearerOfVolumeAndWeightCounts)
{
    RateSheet sheet = box_sheet();
    sheet.steps = {{"parcel", "home", "box", grams(1000), euro(500)},
                   {"parcel", "home", "box", grams(5000), euro(800)}};
    sheet.volume_steps = {{"parcel", "home", "box", millilitres(10'000), euro(400), grams(5000)},
                          {"parcel", "home", "box", millilitres(50'000), euro(700), grams(5000)}};
    const Size small{mm(200), mm(200), mm(200)}, large{mm(400), mm(300), mm(200)};
    EXPECT_EQ(price_of(sheet, parcel_of(small, grams(900))).total, euro(500));
    EXPECT_EQ(price_of(sheet, parcel_of(large, grams(900))).total, euro(700));
    EXPECT_EQ(price_of(sheet, parcel_of(large, grams(1100))).total, euro(800));
    EXPECT_EQ(price_of(sheet, parcel_of(large, grams(900))).step_edge, grams(1000));
}

// A manual of the US post, quoted in a public note of 22 August 2026: volume times 0.785 for what is not rectangular,
// sides rounded to whole inches, weight rounded up. In millimetres here, the rule itself worked by hand.
TEST(Volumetric, ARollMayCountAsItsCylinder)
{
    RateSheet sheet = box_sheet();
    sheet.formats[0].most_width = sheet.formats[0].most_height = mm(400);
    sheet.services[0].volumetric_divisor = 5000;
    sheet.services[0].volumetric_rounding = grams(100);
    const ParcelFacts roll = roll_of(mm(300), mm(1000)); // 90 l as a block: 18 kg
    EXPECT_EQ(price_of(sheet, roll).charged, grams(18'000));
    sheet.services[0].roll_permille = 785; // 70.65 l: 14.13 kg, up to 14.2
    EXPECT_EQ(price_of(sheet, roll).charged, grams(14'200));
    EXPECT_EQ(price_of(sheet, parcel_of(roll.closed)).charged, grams(18'000)) << "a box is a box";
}

// Sides of half a centimetre and more up, less down, before multiplying: as a freight page quotes the tariff rule
// (standards.md 3). 30.4 * 45.5 * 65 cm count as 30 * 46 * 65 = 89,700 cm³.
TEST(Volumetric, SidesMayBeRoundedFirst)
{
    RateSheet sheet = box_sheet();
    sheet.services[0].volumetric_divisor = 6000;
    sheet.services[0].volumetric_rounding = grams(10);
    sheet.services[0].sides_to = mm(10);
    sheet.services[0].sides_up = false;
    const ParcelFacts parcel = parcel_of({mm(304), mm(455), mm(650)});
    EXPECT_EQ(price_of(sheet, parcel).charged, grams(14'950)); // 89,700 / 6000 = 14.95
    sheet.services[0].sides_up = true;                         // 31 * 46 * 65 = 92,690
    EXPECT_EQ(price_of(sheet, parcel).charged, grams(15'450)); // 15.4483, up to 10 g
}

// German post prints that a standard letter is at least 1.4 times as long as wide (standards.md 2).
TEST(Formats, LengthToWidth)
{
    Format f = format_mm("letter", 235, 125, 5);
    f.least_ratio = 1400;
    const RateSheet sheet = one_format_sheet(f);
    EXPECT_TRUE(takes(sheet, parcel_of({mm(154), mm(110), mm(3)})));
    const Refused r = refusal_of(sheet, parcel_of({mm(150), mm(110), mm(3)}));
    EXPECT_EQ(r.reason, NotTaken::too_small);
    EXPECT_EQ(r.what, "ratio");
    EXPECT_EQ(r.over_by, mm(4)); // 154 are needed
}

TEST(Surcharges, APercentageMayCountInOthers)
{
    RateSheet sheet = box_sheet(); // 5.00
    Surcharge fuel = percent("fuel", 100);
    fuel.also_of = {"toll"};
    sheet.surcharges = {fixed("toll", 80), fixed("roll", 40), fuel};
    const Price price = price_of(sheet, parcel_of({mm(300), mm(200), mm(100)}));
    EXPECT_EQ(part(price, "fuel"), 58); // 10 % of 5.80
    EXPECT_EQ(price.total, euro(500 + 80 + 40 + 58));
    sheet.surcharges = {fuel, fixed("toll", 80)}; // the wrong way round: not counted in, and said
    EXPECT_EQ(part(price_of(sheet, parcel_of({mm(300), mm(200), mm(100)})), "fuel"), 50);
    EXPECT_THAT(check(sheet, day("2026-11-25")),
                testing::Contains(SheetProblem{SheetFault::unknown_surcharge, "fuel: toll", true}));
}

TEST(Surcharges, ADiscountTakesNoMoreThanWhatStandsBeforeIt)
{
    RateSheet sheet = box_sheet();
    sheet.surcharges = {percent("regular", -200)};
    EXPECT_EQ(price_of(sheet, parcel_of({mm(300), mm(200), mm(100)})).total, euro(400));
    sheet.surcharges = {fixed("voucher", -700), fixed("toll", 80)};
    EXPECT_EQ(price_of(sheet, parcel_of({mm(300), mm(200), mm(100)})).total, euro(80));
}

TEST(Surcharges, OnPlaceShapeValueAndFormat)
{
    RateSheet sheet = box_sheet();
    sheet.formats.push_back(format_mm("small box", 350, 250, 150));
    sheet.steps.push_back({"parcel", "home", "small box", grams(30'000), euro(480)});
    Surcharge island = fixed("island", 300);
    island.places = {{"DK", "37", "37"}, {"DK", "5960", "5985"}};
    Surcharge odd = fixed("not a box", 150);
    odd.only_unboxed = true;
    Surcharge cover = percent("cover", 10); // 1 % of the value
    cover.kind = Surcharge::Kind::percent_of_value;
    cover.value_above = euro(5000);
    Surcharge tight = fixed("small", 30);
    tight.format = "small box";
    sheet.surcharges = {island, odd, cover, tight};

    ParcelFacts p = parcel_of({mm(300), mm(200), mm(100)});
    EXPECT_EQ(price_of(sheet, p).total, euro(500)) << "the small box would be 5.10 with its surcharge";
    EXPECT_EQ(price_of(sheet, p).format, "box");
    p.postcode = "3700";
    EXPECT_EQ(part(price_of(sheet, p), "island"), 300);
    p.postcode = "5986";
    EXPECT_EQ(part(price_of(sheet, p), "island"), 0);
    p.soft = true;
    EXPECT_EQ(part(price_of(sheet, p), "not a box"), 150);
    p.value = euro(5000);
    EXPECT_EQ(part(price_of(sheet, p), "cover"), 0);
    p.value = euro(5050);
    EXPECT_EQ(part(price_of(sheet, p), "cover"), 51); // 50.5, halves away from zero
}

TEST(Surcharges, OnWidthGirthAndVolume)
{
    RateSheet sheet = box_sheet();
    Surcharge wide = fixed("wide", 100), girth = fixed("girth", 200), bulky = fixed("bulky", 400);
    wide.wider_than = mm(300);
    girth.girth_over = mm(1500);
    bulky.larger_than = millilitres(50'000);
    sheet.surcharges = {wide, girth, bulky};
    EXPECT_EQ(price_of(sheet, parcel_of({mm(500), mm(300), mm(200)})).total, euro(500)); // girth 1500, 30 l
    EXPECT_EQ(price_of(sheet, parcel_of({mm(500), mm(301), mm(200)})).total, euro(800));
    EXPECT_EQ(price_of(sheet, parcel_of({mm(500), mm(400), mm(251)})).total, euro(1200));
}

TEST(Calendar, HolidaysAndCutOffsByWeekday)
{
    Service service;
    service.cut_off = std::chrono::hours(16);
    service.weekdays = {1, 2, 3, 4, 5, 6};
    service.cut_offs = {{6, std::chrono::hours(11)}};
    const Date thursday = day("2026-12-24"), saturday = day("2026-12-26"), monday = day("2026-12-28");
    const std::vector<Date> feast{day("2026-12-25"), saturday};
    EXPECT_EQ(cut_off_on(service, thursday), std::chrono::hours(16));
    EXPECT_EQ(cut_off_on(service, saturday), std::chrono::hours(11));
    EXPECT_EQ(collection_day(service, feast, thursday, std::chrono::hours(15)), thursday);
    EXPECT_EQ(collection_day(service, feast, thursday, std::chrono::hours(17)), monday);
    EXPECT_EQ(collection_day(service, {}, saturday, std::chrono::hours(12)), monday);
    EXPECT_EQ(working_days_after(thursday, 1, feast), monday);
    EXPECT_EQ(working_days_after(thursday, 1), day("2026-12-25"));
}

TEST(Context, WhatIsMissingAndWhatEndsSoon)
{
    RateSheet sheet = box_sheet();
    sheet.valid_until = day("2026-12-31");
    SheetContext context{day("2026-11-25"), {"DK", "NO"}, false, 42};
    EXPECT_THAT(check(sheet, context), testing::ElementsAre(SheetProblem{SheetFault::expires_soon, "2026-12-31", false},
                                                            SheetProblem{SheetFault::missing_country, "NO", false}));
    context.followed = true;
    context.countries = {"DK"};
    EXPECT_TRUE(check(sheet, context).empty());
}

TEST(Postcodes, AHundredThousandAreFoundAndChecked)
{
    RateSheet sheet = box_sheet();
    sheet.zones = {{"home", {{"DK", "", ""}}}, {"odd", {}}};
    for (int code = 1; code < 100'000; code += 2) {
        const std::string text = std::to_string(100'000 + code).substr(1);
        sheet.zones[1].places.push_back({"DK", text, text});
    }
    sheet.steps.push_back({"parcel", "odd", "box", grams(30'000), euro(700)});
    EXPECT_TRUE(check(sheet, day("2026-11-25")).empty());
    const Tariffs tariffs({sheet});
    ParcelFacts p = parcel_of({mm(300), mm(200), mm(100)});
    for (const auto& [code, cents] : {std::pair{"05701", 700}, std::pair{"05700", 500}, std::pair{"99999", 700}}) {
        p.postcode = code;
        EXPECT_EQ(tariffs.quotes(p).front().price()->total, euro(cents)) << code;
    }
    sheet.zones[0].places.push_back({"DK", "05701", "05701"});
    EXPECT_THAT(check(sheet, day("2026-11-25")),
                testing::Contains(SheetProblem{SheetFault::overlap_in_zones, "zones home and odd, DK 05701", true}));
}

} // namespace
} // namespace stow::postage
