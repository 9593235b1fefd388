// The demo day, planned from its files without book or window, is the same day in every kind of build: -O0, -O1 with
// sanitizers, -O2; on one thread and on several at once. When the engine gets better the number changes; then look at
// the day (stowbench demo) and put the new number into golden_day.txt.
#include "core/intake/csv.h"
#include "core/intake/goods_csv.h"
#include "core/intake/house_csv.h"
#include "core/intake/matches_csv.h"
#include "core/intake/orders_csv.h"
#include "core/intake/packing_csv.h"
#include "core/intake/plan_json.h"
#include "core/intake/rate_sheet_csv.h"
#include "core/intake/supplies_csv.h"
#include "core/planning/planner.h"

#include <gtest/gtest.h>

#include <cstdint>
#include <fstream>
#include <future>
#include <iomanip>
#include <sstream>

namespace {

using namespace stow;

const std::string root = STOW_SOURCE_DIR;

intake::Csv table(const std::string& file)
{
    return intake::read_csv_file(root + "/demo_orders/" + file);
}

struct Shop {
    shop::Cupboard cupboard;
    std::vector<shop::HeldOrder> orders;
    std::vector<postage::RateSheet> rate_sheets;
};

template <class Map, class T>
void put(Map& map, std::vector<T> rows)
{
    for (T& row : rows) map.emplace(row.code, std::move(row));
}

Shop demo_shop()
{
    Shop s;
    put(s.cupboard.supplies, intake::read_supplies(table("supplies.csv"), Currency{}).rows);
    s.cupboard.house = intake::read_house(table("house.csv"), s.cupboard).rows.at(0);
    put(s.cupboard.wrappings, intake::read_wrappings(table("wrappings.csv"), s.cupboard).rows);
    put(s.cupboard.goods, intake::read_goods(table("goods.csv"), s.cupboard).rows);
    s.cupboard.rules = intake::read_house_rules(table("house_rules.csv"), s.cupboard).rows;
    for (const auto& [code, supply] : s.cupboard.supplies) s.cupboard.on_hand[code] = supply.on_hand;
    for (const auto& [code, good] : s.cupboard.goods) s.cupboard.pieces[code] = good.pieces;
    for (const char* file : {"brinewind_parcels_2026", "skua_post_2026", "tern_tube_mail_2026"}) {
        s.rate_sheets.push_back(*intake::read_rate_sheet_file(root + "/rate_tables/" + file + ".csv").sheet);
    }
    intake::Matches matches;
    for (auto& m : intake::read_matches(table("matches.csv"), s.cupboard.goods).rows) matches[m.called] = m.good;
    for (const auto& [name, file] :
         {std::pair{"Harbour Stall", "harbour_stall.csv"}, std::pair{"Federkai", "federkai.csv"}}) {
        const auto csv = table(file);
        auto columns = intake::guess_columns(csv, name);
        columns.home = s.cupboard.house.address.country;
        for (shop::Order& order : intake::read_orders(csv, columns).rows) {
            intake::match_goods(order, matches, s.cupboard.goods);
            shop::HeldOrder held;
            held.id = {static_cast<std::int64_t>(s.orders.size()) + 1};
            held.order = std::move(order);
            held.state = shop::OrderState::checked;
            s.orders.push_back(std::move(held));
        }
    }
    return s;
}

std::string planned(const Shop& s)
{
    planning::Wish wish;
    wish.day = *parse_date("2026-11-25");
    Run run;
    std::string all;
    const auto day = planning::plan_day(s.cupboard, s.orders, s.rate_sheets, wish, run);
    for (const planning::ParcelPlan& parcel : day.parcels) all += intake::plan_to_json(parcel) + '\n';
    return all;
}

// FNV-1a, 64 bits (constants: Fowler, Noll, Vo; IETF draft-eastlake-fnv).
std::string hash(const std::string& text)
{
    std::uint64_t h = 0xcbf29ce484222325U;
    for (const char c : text) h = (h ^ static_cast<unsigned char>(c)) * 0x100000001b3U;
    std::ostringstream out;
    out << std::hex << std::setw(16) << std::setfill('0') << h;
    return out.str();
}

TEST(GoldenDay, IsTheSameInEveryBuild)
{
    std::string expected;
    std::ifstream(root + "/tests/outside/golden_day.txt") >> expected;
    const std::string day = planned(demo_shop());
    ASSERT_GT(std::count(day.begin(), day.end(), '\n'), 20);
    EXPECT_EQ(hash(day), expected);
}

TEST(GoldenDay, IsTheSameOnSeveralThreads)
{
    const Shop s = demo_shop();
    std::vector<std::future<std::string>> others;
    for (int i = 0; i < 3; ++i) others.push_back(std::async(std::launch::async, [&s] { return planned(s); }));
    const std::string alone = planned(s);
    for (auto& other : others) EXPECT_EQ(other.get(), alone);
}

} // namespace
