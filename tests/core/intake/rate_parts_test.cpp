#include "core/intake/rate_parts.h"

#include "core/intake/rate_sheet_csv.h"

#include <filesystem>
#include <gmock/gmock.h>

namespace stow::intake {
namespace {

using testing::ElementsAre;

std::string said(std::string_view record, std::string_view word, std::string typed)
{
    const auto& words = part_words(record);
    std::vector<std::string> values(words.size());
    for (std::size_t i = 0; i < words.size(); ++i) {
        if (words[i].word == word) values[i] = std::move(typed);
    }
    return part_details(record, values);
}

TEST(RateParts, EveryPartOfEverySheetOfTheTreeComesBackTheSame)
{
    int parts = 0;
    for (const auto& entry : std::filesystem::directory_iterator(std::string(STOW_SOURCE_DIR) + "/rate_tables")) {
        TypedSheet sheet = typed(*read_rate_sheet_file(entry.path()).sheet);
        const ReadSheet before = read(sheet);
        for (TypedPart& part : sheet.parts) {
            const auto values = part_values(part.record, part.details);
            EXPECT_EQ(values.size(), part_words(part.record).size());
            part.details = part_details(part.record, values);
            EXPECT_EQ(part_values(part.record, part.details), values) << part.record << ' ' << part.name;
            ++parts;
        }
        EXPECT_TRUE(read(sheet).sheet == before.sheet) << entry.path();
    }
    EXPECT_GT(parts, 50);
}

TEST(RateParts, ASpanIsTypedWithADashOrAsItsMost)
{
    EXPECT_EQ(said("format", "length", "140–240"), "length 140 to 240");
    EXPECT_EQ(said("format", "length", " 140 - 240 "), "length 140 to 240");
    EXPECT_EQ(said("format", "length", "140–"), "length from 140");
    EXPECT_EQ(said("format", "length", "140-"), "length from 140");
    EXPECT_EQ(said("format", "length", "240"), "length to 240");
    EXPECT_EQ(said("format", "length", "-240"), "length to 240");
    EXPECT_EQ(said("format", "length", "to 240"), "length to 240");
    EXPECT_EQ(said("format", "length", "from 140"), "length from 140");
    EXPECT_EQ(said("format", "length", "140 to 240"), "length 140 to 240");
    EXPECT_EQ(said("service", "days", "2-4"), "days 2 to 4");
    EXPECT_EQ(said("service", "days", "2"), "days 2");
}

TEST(RateParts, ASpanIsShownWithADash)
{
    const auto values = part_values("format", "length 140 to 240 / width from 90 / sum to 900");
    EXPECT_THAT(std::vector(values.begin(), values.begin() + 4), ElementsAre("140–240", "90–", "", "900"));
}

TEST(RateParts, SeveralOfAWordAreListed)
{
    EXPECT_EQ(said("service", "cut-off", "16:30, Sat 12:00"), "cut-off 16:30 / cut-off Sat 12:00");
    EXPECT_THAT(part_values("service", "cut-off 16:30 / cut-off Sat 12:00"), testing::Contains("16:30, Sat 12:00"));
    EXPECT_EQ(said("service", "not sent", "flammable, liquid"), "not sent flammable, liquid");
    EXPECT_EQ(said("zone", "", "dk, se 62, *"), "DK / SE 62 / *");
    EXPECT_EQ(said("zone", "", "DE 20 to 29 / DK"), "DE 20 to 29 / DK");
}

TEST(RateParts, WhatIsNotSaidIsBlank)
{
    EXPECT_EQ(said("service", "tracked", "tracked"), "tracked");
    EXPECT_EQ(said("service", "tracked", " "), "");
    EXPECT_TRUE(part_words("step").empty());
}

// The reader says which phrase it objects to, so that the right field is marked.
TEST(RateParts, AFaultNamesItsPhrase)
{
    TypedSheet sheet;
    sheet.carrier = "Petrel Parcels";
    sheet.parts = {{"format", "flat", "", "length to 353 / width to wide"}};
    const ReadSheet back = read(sheet);
    ASSERT_EQ(back.faults.size(), 1U);
    EXPECT_EQ(back.faults[0].value, "width to wide");
}

} // namespace
} // namespace stow::intake
