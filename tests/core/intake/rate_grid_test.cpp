#include "core/intake/rate_grid.h"

#include "core/intake/rate_sheet_csv.h"
#include "tests/core/postage/tariff_of_three_zones.h"

#include <filesystem>
#include <gmock/gmock.h>

namespace stow::intake {
namespace {

using postage::RateSheet;
using testing::ElementsAre;

RateSheet demo(const char* file)
{
    return *read_rate_sheet_file(std::string(STOW_SOURCE_DIR) + "/rate_tables/" + file).sheet;
}

// The order of steps within a sheet means nothing; the grid keeps them by table, weight and zone.
RateSheet sorted_steps(RateSheet sheet)
{
    std::sort(sheet.steps.begin(), sheet.steps.end(), [](const auto& a, const auto& b) {
        return std::tie(a.service, a.format, a.zone, a.up_to) < std::tie(b.service, b.format, b.zone, b.up_to);
    });
    return sheet;
}

TEST(RateGrid, WhatIsShownReadsBackTheSame)
{
    std::vector<RateSheet> sheets{postage::tariff_of_three_zones()};
    for (const auto& entry : std::filesystem::directory_iterator(std::string(STOW_SOURCE_DIR) + "/rate_tables")) {
        sheets.push_back(demo(entry.path().filename().c_str()));
    }
    ASSERT_GE(sheets.size(), 5U);
    for (const RateSheet& sheet : sheets) {
        const ReadSheet back = read(typed(sheet));
        EXPECT_TRUE(back.faults.empty()) << sheet.carrier;
        ASSERT_TRUE(back.sheet) << sheet.carrier;
        EXPECT_EQ(sorted_steps(*back.sheet), sorted_steps(sheet)) << sheet.carrier;
    }
}

TEST(RateGrid, StandsThereWithHerDecimalMarkAndReadsBackTheSame)
{
    bool any = false;
    for (const auto& entry : std::filesystem::directory_iterator(std::string(STOW_SOURCE_DIR) + "/rate_tables")) {
        const RateSheet sheet = demo(entry.path().filename().c_str());
        const TypedSheet shown = typed(sheet, ',');
        for (const TypedTable& table : shown.tables) {
            for (const TypedRow& row : table.rows) {
                for (const std::string& price : row.prices) {
                    EXPECT_EQ(price.find('.'), std::string::npos) << price;
                    any = any || price.find(',') != std::string::npos;
                }
            }
        }
        const ReadSheet back = read(shown);
        EXPECT_TRUE(back.faults.empty()) << sheet.carrier;
        ASSERT_TRUE(back.sheet) << sheet.carrier;
        EXPECT_EQ(sorted_steps(*back.sheet), sorted_steps(sheet)) << sheet.carrier;
    }
    EXPECT_TRUE(any);
}

TEST(RateGrid, TypedCellByCellItIsTheTariff)
{
    TypedSheet sheet;
    sheet.carrier = "Petrel Parcels";
    sheet.parts = {{"service", "petrel", "Petrel", ""},
                   {"zone", "home", "", "DK"},
                   {"zone", "near", "", "DE / SE / NL"},
                   {"zone", "far", "", "* / DK 37"},
                   {"format", "flat", "", "length to 353 / width to 250 / height to 25"},
                   {"format", "box", "", "length to 600 / girth to 2000"},
                   {"surcharge", "fuel", "7,5 %", ""},
                   {"surcharge", "long", "4", "longer than 450"},
                   {"surcharge", "", "", ""}};
    for (const auto& l : postage::typed_ladders()) {
        TypedTable& table = sheet.table("petrel", l.format);
        table.rows.resize(8);
        const auto zones = sheet.names("zone");
        const auto zone = static_cast<std::size_t>(std::find(zones.begin(), zones.end(), l.zone) - zones.begin());
        for (std::size_t i = 0; i < 8; ++i) {
            table.rows[i].grams = std::to_string(l.grams[i]);
            table.rows[i].prices.resize(3);
            table.rows[i].prices[zone] =
                std::to_string(l.cents[i] / 100) + "," + std::to_string(100 + l.cents[i] % 100).substr(1);
        }
    }
    const ReadSheet out = read(sheet);
    EXPECT_TRUE(out.faults.empty());
    EXPECT_EQ(sorted_steps(*out.sheet), sorted_steps(postage::tariff_of_three_zones()));
}

TEST(RateGrid, FaultsAreToldByPlace)
{
    TypedSheet sheet = typed(postage::tariff_of_three_zones());
    sheet.parts[1].details = "Denmark";      // zone home
    sheet.tables[0].rows[2].grams = "a lot"; // flat, its third row
    sheet.tables[1].rows[0].prices[2] = "9;60";
    const ReadSheet out = read(sheet);
    const auto at = [&](TypedFault::At where) {
        std::vector<const TypedFault*> found;
        for (const TypedFault& f : out.faults) {
            if (f.at == where) found.push_back(&f);
        }
        return found;
    };
    ASSERT_FALSE(at(TypedFault::At::part).empty());
    EXPECT_EQ(at(TypedFault::At::part)[0]->part, 1U);
    EXPECT_EQ(at(TypedFault::At::part)[0]->kind, ProblemKind::unknown_country);
    ASSERT_FALSE(at(TypedFault::At::row).empty());
    EXPECT_EQ(at(TypedFault::At::row)[0]->row, 2U);
    const auto prices = at(TypedFault::At::price);
    const bool told = std::any_of(prices.begin(), prices.end(), [](const TypedFault* f) {
        return f->part == 1 && f->row == 0 && f->zone == 2 && f->kind == ProblemKind::not_a_number;
    });
    EXPECT_TRUE(told);
    EXPECT_TRUE(out.sheet) << "what is sound is there";
    EXPECT_FALSE(read(TypedSheet{}).sheet) << "no carrier yet";
}

TEST(RateGrid, PastesFromASpreadsheet)
{
    TypedTable table{"petrel", "flat", {}};
    EXPECT_EQ(paste(table, 3, 0, 0, "20 g\t1,10 €\t1,50 €\t1,80 €\r\n50 g\t1,20 €\t1,90 €\t2,40 €\r\n"), 8);
    ASSERT_EQ(table.rows.size(), 2U);
    EXPECT_EQ(table.rows[1].grams, "50");
    EXPECT_THAT(table.rows[1].prices, ElementsAre("1,20", "1,90", "2,40"));
    EXPECT_EQ(paste(table, 3, 1, 2, "9.99\t8.88\t7.77"), 2) << "what lies past the last zone is left";
    EXPECT_THAT(table.rows[1].prices, ElementsAre("1,20", "9.99", "8.88"));
    EXPECT_EQ(paste(table, 3, 0, 1, "1\n2\n3"), 3);
    EXPECT_EQ(table.rows.size(), 3U);
    EXPECT_EQ(table.rows[2].prices[0], "3");
}

TEST(RateGrid, NextYearsSheetStandsBesideThisYears)
{
    RateSheet sheet = postage::tariff_of_three_zones();
    sheet.valid_from = parse_date("2026-01-01");
    sheet.valid_until = parse_date("2026-12-31");
    sheet.surcharges[0].from = parse_date("2026-11-15");
    sheet.holidays = {*parse_date("2026-12-25")};
    const RateSheet next = next_year(sheet);
    EXPECT_EQ(next.valid_from, parse_date("2027-01-01"));
    EXPECT_EQ(next.valid_until, parse_date("2027-12-31"));
    EXPECT_EQ(next.surcharges[0].from, parse_date("2027-11-15"));
    EXPECT_TRUE(next.holidays.empty());
    EXPECT_EQ(next.steps, sheet.steps);
}

} // namespace
} // namespace stow::intake
