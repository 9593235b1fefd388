#include "sheets.h"

#include <gmock/gmock.h>

namespace stow::postage {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;
using Found = std::pair<SheetFault, std::string>;

const Date today = day("2026-11-25");

std::vector<Found> faults(const RateSheet& sheet)
{
    std::vector<Found> found;
    for (const SheetProblem& p : check(sheet, today)) found.emplace_back(p.fault, p.where);
    return found;
}

RateSheet good_sheet()
{
    RateSheet sheet = one_format_sheet(format_mm("small", 350, 250, 80), grams(500));
    sheet.formats.push_back(format_mm("large", 600, 400, 300));
    sheet.steps = {{"parcel", "home", "small", grams(500), euro(300)},
                   {"parcel", "home", "small", grams(1000), euro(380)},
                   {"parcel", "home", "large", grams(1000), euro(500)},
                   {"parcel", "home", "large", grams(5000), euro(700)}};
    sheet.beyond = {{"parcel", "home", "large", euro(60), grams(20'000)}};
    sheet.valid_from = day("2026-01-01");
    sheet.valid_until = day("2026-12-31");
    return sheet;
}

TEST(CheckSheet, AGoodSheetHasNoProblem)
{
    EXPECT_THAT(faults(good_sheet()), IsEmpty());
}

TEST(CheckSheet, NoSteps)
{
    RateSheet sheet = good_sheet();
    sheet.steps.clear();
    sheet.beyond.clear();
    EXPECT_THAT(faults(sheet), ElementsAre(Found{SheetFault::no_steps, "Test Carrier"}));
    EXPECT_TRUE(check(sheet, today).front().stops);
}

TEST(CheckSheet, AZoneNobodyPrices)
{
    RateSheet sheet = good_sheet();
    sheet.zones.push_back({"world", {{"*", "", ""}}});
    EXPECT_THAT(faults(sheet), ElementsAre(Found{SheetFault::no_steps, "zone world"}));
}

TEST(CheckSheet, PostcodesBetweenTheZones)
{
    RateSheet sheet = good_sheet();
    sheet.zones = {{"home", {{"DK", "0", "36"}}}, {"island", {{"DK", "38", "99"}}}};
    for (Step step : std::vector(sheet.steps)) {
        step.zone = "island";
        sheet.steps.push_back(step);
    }
    EXPECT_THAT(faults(sheet), ElementsAre(Found{SheetFault::gap_in_zones, "DK 37-37"}));
    sheet.zones[0].places[0].postcode_to = "37";
    EXPECT_THAT(faults(sheet), IsEmpty());
}

TEST(CheckSheet, APlaceInTwoZones)
{
    RateSheet sheet = good_sheet();
    sheet.zones = {{"home", {{"DK", "", ""}, {"DK", "37", "37"}}},
                   {"island", {{"DK", "37", "37"}, {"DK", "3740", "3740"}}}};
    for (Step step : std::vector(sheet.steps)) {
        step.zone = "island";
        sheet.steps.push_back(step);
    }
    EXPECT_THAT(faults(sheet), ElementsAre(Found{SheetFault::overlap_in_zones, "zones home and island, DK 37"}));
    sheet.zones[0].places.pop_back(); // a longer postcode rule is no overlap
    EXPECT_THAT(faults(sheet), IsEmpty());
}

TEST(CheckSheet, APriceThatFalls)
{
    RateSheet sheet = good_sheet();
    sheet.steps[1].price = euro(290);
    EXPECT_THAT(faults(sheet), ElementsAre(Found{SheetFault::falling_price, "parcel, zone home, small, 1000 g"}));
}

TEST(CheckSheet, AStepNobodyPays)
{
    RateSheet sheet = good_sheet();
    sheet.steps[1].price = euro(300); // as the step before
    EXPECT_THAT(faults(sheet), ElementsAre(Found{SheetFault::unreachable_step, "parcel, zone home, small, 500 g"}));
    sheet.steps[1].price = euro(510); // the larger format is cheaper
    EXPECT_THAT(faults(sheet), ElementsAre(Found{SheetFault::unreachable_step, "parcel, zone home, small, 1000 g"}));
    sheet.steps[1] = {"parcel", "home", "small", Weight{}, euro(100)};
    EXPECT_THAT(faults(sheet), ElementsAre(Found{SheetFault::unreachable_step, "parcel, zone home, small, 0 g"}));
}

TEST(CheckSheet, PerKilogramBelowTheLastStepOrWithoutOne)
{
    RateSheet sheet = good_sheet();
    sheet.beyond[0].most = grams(5000);
    sheet.beyond.push_back({"parcel", "home", "", euro(60), grams(20'000)});
    EXPECT_THAT(faults(sheet), ElementsAre(Found{SheetFault::unreachable_step, "parcel, zone home, large"},
                                           Found{SheetFault::no_steps, "parcel, zone home"}));
}

TEST(CheckSheet, NamesThatAreNotThere)
{
    RateSheet sheet = good_sheet();
    sheet.steps.push_back({"parcels", "Home", "tiny", grams(100), euro(90)});
    EXPECT_THAT(faults(sheet), ElementsAre(Found{SheetFault::unknown_service, "parcels, zone Home, tiny, 100 g"},
                                           Found{SheetFault::unknown_zone, "parcels, zone Home, tiny, 100 g"},
                                           Found{SheetFault::unknown_format, "parcels, zone Home, tiny, 100 g"}));
}

TEST(CheckSheet, TheSameTwice)
{
    RateSheet sheet = good_sheet();
    sheet.steps.push_back(sheet.steps[0]);
    sheet.formats.push_back(sheet.formats[0]);
    EXPECT_THAT(faults(sheet), ElementsAre(Found{SheetFault::repeated_step, "small"},
                                           Found{SheetFault::repeated_step, "parcel, zone home, small, 500 g"}));
}

TEST(CheckSheet, DatesAndPostcodesThatEndBeforeTheyBegin)
{
    RateSheet sheet = good_sheet();
    sheet.valid_until = day("2025-12-31");
    sheet.zones[0].places.push_back({"DE", "29", "20"});
    Surcharge peak;
    peak.name = "peak";
    peak.from = day("2026-12-24");
    peak.until = day("2026-11-01");
    sheet.surcharges = {peak};
    EXPECT_THAT(faults(sheet), testing::IsSupersetOf({Found{SheetFault::dates_reversed, "2026-01-01 - 2025-12-31"},
                                                      Found{SheetFault::dates_reversed, "peak"},
                                                      Found{SheetFault::dates_reversed, "zone home, DE 29-20"}}));
}

TEST(CheckSheet, ExpiredIsToldButNotStopped)
{
    RateSheet sheet = good_sheet();
    sheet.valid_until = day("2026-11-24");
    ASSERT_THAT(faults(sheet), ElementsAre(Found{SheetFault::expired, "2026-11-24"}));
    EXPECT_FALSE(check(sheet, today).front().stops);
    sheet.valid_until = today; // inclusive
    EXPECT_THAT(faults(sheet), IsEmpty());
}

TEST(CheckSheet, TwoCurrencies)
{
    RateSheet sheet = good_sheet();
    sheet.steps[3].price = Money{700, *Currency::from("SEK")};
    EXPECT_THAT(faults(sheet),
                testing::Contains(Found{SheetFault::mixed_currency, "parcel, zone home, large, 5000 g"}));
}

} // namespace
} // namespace stow::postage
