#include "core/postage/saving.h"

#include "sheets.h"

#include <gmock/gmock.h>

namespace stow::postage {
namespace {

using By = Saving::By;

// A large letter up to 20 mm for 2.30, a packet for 4.70.
RateSheet letters()
{
    RateSheet sheet = one_format_sheet(format_mm("large letter", 353, 250, 20), grams(500));
    sheet.steps[0].price = euro(230);
    sheet.formats.push_back(format_mm("packet", 600, 400, 300));
    sheet.steps.push_back({"parcel", "home", "packet", grams(1000), euro(470)});
    sheet.steps.push_back({"parcel", "home", "packet", grams(2000), euro(610)});
    return sheet;
}

std::vector<Saving> all(const RateSheet& sheet, const ParcelFacts& parcel, const Reach& reach = {})
{
    const Tariffs tariffs({sheet});
    return savings(tariffs, parcel, tariffs.quotes(parcel).front(), 0, reach);
}

TEST(Savings, ThreeMillimetresThinnerGoesAsALargeLetter)
{
    const auto found = all(letters(), parcel_of({mm(300), mm(200), mm(23)}));
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found[0].by, By::height);
    EXPECT_EQ(found[0].less, mm(3));
    EXPECT_EQ(found[0].format, "large letter");
    EXPECT_EQ(found[0].total, euro(230));
    EXPECT_EQ(found[0].saves, euro(240));
}

TEST(Savings, WholeMillimetresSoThatALittleTooMuchCountsAsOne)
{
    const auto found = all(letters(), parcel_of({mm(300), mm(200), tenth_mm(202)}));
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found[0].less, mm(1));
}

TEST(Savings, TwoEdgesTooLongAreNoSavingOfOne)
{
    EXPECT_TRUE(all(letters(), parcel_of({mm(360), mm(200), mm(23)})).empty());
    EXPECT_TRUE(all(letters(), parcel_of({mm(300), mm(200), mm(41)})).empty()) << "out of reach";
}

TEST(Savings, GramsToTheStepBelow)
{
    const auto found = all(letters(), parcel_of({mm(300), mm(200), mm(100)}, grams(1012)));
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found[0].by, By::weight);
    EXPECT_EQ(found[0].lighter, grams(12));
    EXPECT_EQ(found[0].saves, euro(140));
    EXPECT_TRUE(all(letters(), parcel_of({mm(300), mm(200), mm(100)}, grams(1060))).empty());
}

TEST(Savings, OnlyServicesAsGoodAsThePresentOne)
{
    RateSheet sheet = letters();
    Service tracked = sheet.services[0];
    tracked.code = "tracked";
    tracked.tracked = true;
    sheet.services.push_back(tracked);
    sheet.steps.push_back({"tracked", "home", "packet", grams(1000), euro(690)});
    const Tariffs tariffs({sheet});
    const ParcelFacts parcel = parcel_of({mm(300), mm(200), mm(23)});
    EXPECT_TRUE(savings(tariffs, parcel, tariffs.quotes(parcel).back()).empty());
}

TEST(Savings, OfARollLengthAndDiameter)
{
    Format tube = format_mm("tube", 900, 200, 200);
    tube.roll_most_length = mm(900);
    tube.roll_most_sum = mm(1040);
    RateSheet sheet = one_format_sheet(tube);
    sheet.formats.push_back(format_mm("parcel", 1200, 400, 400));
    sheet.steps.push_back({"parcel", "home", "parcel", grams(30'000), euro(900)});
    const auto found = all(sheet, roll_of(mm(75), mm(900))); // 1050: 10 mm of length or 5 of diameter
    ASSERT_EQ(found.size(), 2U);
    EXPECT_EQ(found[0].by, By::length);
    EXPECT_EQ(found[0].less, mm(10));
    EXPECT_EQ(found[1].by, By::height);
    EXPECT_EQ(found[1].less, mm(5));
}

} // namespace
} // namespace stow::postage
