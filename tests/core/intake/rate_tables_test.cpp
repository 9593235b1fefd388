// The demo's rate sheets: they read without a word, have no fault, and reach every buyer.
#include "core/intake/rate_sheet_csv.h"
#include "core/postage/quote.h"

#include <algorithm>
#include <filesystem>
#include <gtest/gtest.h>
#include <sstream>

namespace stow::intake {
namespace {

std::vector<std::string> files()
{
    std::vector<std::string> paths;
    for (const auto& entry : std::filesystem::directory_iterator(STOW_SOURCE_DIR "/rate_tables")) {
        if (entry.path().extension() == ".csv") paths.push_back(entry.path().string());
    }
    std::sort(paths.begin(), paths.end());
    return paths;
}

std::vector<postage::RateSheet> sheets()
{
    std::vector<postage::RateSheet> all;
    for (const std::string& path : files()) all.push_back(read_rate_sheet_file(path).sheet.value());
    return all;
}

TEST(RateTables, ReadWithoutAProblem)
{
    ASSERT_EQ(files().size(), 4U);
    for (const std::string& path : files()) {
        const TakenRates taken = read_rate_sheet_file(path);
        EXPECT_TRUE(taken.sheet) << path;
        for (const Problem& p : taken.problems)
            ADD_FAILURE() << path << ":" << p.row << " " << p.column << " " << p.value;
    }
}

TEST(RateTables, HaveNoFault)
{
    for (const postage::RateSheet& sheet : sheets()) {
        for (const auto& p : check(sheet, *parse_date("2026-11-25"))) ADD_FAILURE() << sheet.carrier << ": " << p.where;
    }
}

postage::ParcelFacts carton(const std::string& country, Weight weight, const char* day = "2026-11-25")
{
    postage::ParcelFacts p;
    p.closed = {mm(300), mm(200), mm(150)};
    p.weight = weight;
    p.country = country;
    p.hand_over = *parse_date(day);
    return p;
}

bool taken_by_someone(const postage::ParcelFacts& parcel)
{
    const auto all = postage::quotes(sheets(), parcel);
    return std::any_of(all.begin(), all.end(), [](const postage::Quote& q) { return q.price() != nullptr; });
}

TEST(RateTables, ReachEveryBuyer)
{
    for (const char* country : {"DK", "DE", "SE", "NO", "GB", "FR", "NL", "IT", "CH", "AT",
                                "PL", "FI", "US", "ES", "IE", "BE", "IS", "CA", "JP", "AU"}) {
        EXPECT_TRUE(taken_by_someone(carton(country, grams(20'000)))) << country;
        EXPECT_TRUE(taken_by_someone(carton(country, grams(400)))) << country;
    }
}

TEST(RateTables, NextYearsSheetFollowsWithoutAGap)
{
    const auto total = [](const char* day) {
        const auto all = postage::quotes(sheets(), carton("DE", grams(400), day));
        const auto packet = std::find_if(all.begin(), all.end(), [](const postage::Quote& q) {
            return q.carrier == "Skua Post" && q.service == "packet";
        });
        return packet->price()->total.minor;
    };
    EXPECT_EQ(total("2026-12-31"), 910);
    EXPECT_EQ(total("2027-01-01"), 950);
}

TEST(RateTables, ARollOfPrintsGoesByPacketAndByTube)
{
    postage::ParcelFacts roll = carton("SE", grams(450));
    roll.closed = {mm(64), mm(64), mm(740)};
    roll.roll = true;
    std::vector<std::string> takers;
    for (const postage::Quote& q : postage::quotes(sheets(), roll)) {
        if (q.price() != nullptr) takers.push_back(q.service);
    }
    EXPECT_EQ(takers, (std::vector<std::string>{"packet", "packet-tracked", "tube"}));
}

TEST(RateTables, WrittenAgainTheyReadTheSame)
{
    for (const std::string& path : files()) {
        const auto sheet = read_rate_sheet_file(path).sheet.value();
        std::istringstream in(write_rate_sheet(sheet));
        EXPECT_EQ(read_rate_sheet(in, "again").sheet, sheet) << path;
    }
}

} // namespace
} // namespace stow::intake
