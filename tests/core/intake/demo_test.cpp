// The demo's files read without a fault but for the rows that are meant to be faulty.
#include "core/intake/goods_csv.h"
#include "core/intake/house_csv.h"
#include "core/intake/matches_csv.h"
#include "core/intake/orders_csv.h"
#include "core/intake/packing_csv.h"
#include "core/intake/stock_csv.h"
#include "core/intake/supplies_csv.h"

#include <fstream>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <set>
#include <sstream>

namespace stow::intake {
namespace {

using testing::IsEmpty;
using testing::SizeIs;

std::string path(const std::string& name)
{
    return STOW_SOURCE_DIR "/demo_orders/" + name;
}

Csv file(const std::string& name)
{
    return read_csv_file(path(name));
}

ColumnMatch stored_columns(const std::string& name)
{
    std::ifstream in(path(name));
    std::stringstream text;
    text << in.rdbuf();
    const auto match = column_match(text.str());
    EXPECT_TRUE(match) << (match ? "" : match.error());
    return match.value_or(ColumnMatch{});
}

template <class T>
std::vector<T> sound(Taken<T> taken)
{
    for (const Problem& p : taken.problems)
        ADD_FAILURE() << p.file << " row " << p.row << " " << p.column << " '" << p.value << "' " << p.detail;
    return std::move(taken.rows);
}

shop::Cupboard read_cupboard()
{
    shop::Cupboard cupboard;
    for (auto& supply : sound(read_supplies(file("supplies.csv"), {}))) cupboard.supplies.emplace(supply.code, supply);
    for (auto& house : sound(read_house(file("house.csv"), cupboard))) cupboard.house = house;
    for (auto& wrap : sound(read_wrappings(file("wrappings.csv"), cupboard)))
        cupboard.wrappings.emplace(wrap.code, wrap);
    for (auto& good : sound(read_goods(file("goods.csv"), cupboard))) cupboard.goods.emplace(good.code, good);
    cupboard.rules = sound(read_house_rules(file("house_rules.csv"), cupboard));
    return cupboard;
}

Matches read_all_matches(const shop::Cupboard& cupboard)
{
    Matches matches;
    for (auto& matched : sound(read_matches(file("matches.csv"), cupboard.goods)))
        matches.emplace(matched.called, matched.good);
    return matches;
}

const shop::Order* find(const std::vector<shop::Order>& orders, const std::string& number)
{
    for (const shop::Order& order : orders) {
        if (order.key.number == number) return &order;
    }
    return nullptr;
}

TEST(Demo, TheCupboardIsSound)
{
    const shop::Cupboard cupboard = read_cupboard();
    EXPECT_GE(cupboard.goods.size(), 30U);
    int outers = 0;
    for (const auto& [code, supply] : cupboard.supplies) {
        if (!supply.form) continue;
        ++outers;
        EXPECT_GT(supply.on_hand.thousandths, 0) << code.text;
        EXPECT_GT(supply.weight.mean.units, 0) << code.text;
        EXPECT_TRUE(supply.max_load) << code.text;
    }
    EXPECT_GE(outers, 14);
    EXPECT_THAT(cupboard.supply({"K5"})->form->cut_heights, testing::ElementsAre(mm(120), mm(90)));
    EXPECT_THAT(cupboard.rules, SizeIs(6));
    EXPECT_EQ(cupboard.house.address.town, "Siltholm");
    for (const auto& [code, good] : cupboard.goods) {
        EXPECT_TRUE(!good.parts.empty() || good.weight.mean.units > 0) << code.text;
        EXPECT_GE(good.name.size(), 5U);
        EXPECT_TRUE(good.price) << code.text;
        // A brick of the good's size would weigh between a tenth of water and steel.
        const double litres = in_litres(solid_volume(good.shape));
        if (litres == 0) continue;
        EXPECT_GT(in_grams(good.weight.mean) / litres, 100) << code.text;
        EXPECT_LT(in_grams(good.weight.mean) / litres, 8000) << code.text;
    }
}

TEST(Demo, TheNormalDayHoldsWhatItIsMeantToShow)
{
    const shop::Cupboard cupboard = read_cupboard();
    const Matches matches = read_all_matches(cupboard);
    Taken<shop::Order> stall = read_orders(file("harbour_stall.csv"), stored_columns("harbour_stall.columns.json"));
    Taken<shop::Order> federkai = read_orders(file("federkai.csv"), stored_columns("federkai.columns.json"));
    EXPECT_THAT(federkai.problems, IsEmpty());
    ASSERT_THAT(stall.problems, SizeIs(1)) << "the one bad postcode";
    EXPECT_EQ(stall.problems[0].kind, ProblemKind::bad_postcode);
    EXPECT_EQ(stall.problems[0].value, "499");
    EXPECT_FALSE(stall.problems[0].stops);

    std::vector<shop::Order> orders = stall.rows;
    orders.insert(orders.end(), federkai.rows.begin(), federkai.rows.end());
    EXPECT_THAT(orders, SizeIs(26));
    int many_lines = 0, abroad = 0, unpaid = 0, gifts = 0;
    std::size_t unmatched = 0;
    std::map<std::string, int> buyers;
    std::map<shop::GoodCode, int> wanted;
    for (shop::Order& order : orders) {
        unmatched += match_goods(order, matches, cupboard.goods);
        many_lines += order.lines.size() >= 3;
        abroad += order.to.country != cupboard.house.address.country;
        unpaid += !order.paid;
        gifts += order.gift.has_value();
        ++buyers[joining_key(order.to)];
        for (const auto& line : order.lines) wanted[line.good] += line.count;
    }
    EXPECT_GE(many_lines, 6);
    EXPECT_GE(abroad, 3);
    EXPECT_EQ(unpaid, 1);
    EXPECT_EQ(gifts, 2);
    EXPECT_EQ(unmatched, 1U);
    EXPECT_EQ(std::count_if(buyers.begin(), buyers.end(), [](const auto& b) { return b.second == 2; }), 1)
        << "two orders that can be joined";
    EXPECT_EQ(wanted[{"INKWELL"}], 2);
    EXPECT_EQ(cupboard.good({"INKWELL"})->pieces, 1) << "short";
    for (const auto& [code, count] : wanted) {
        const shop::Good* good = cupboard.good(code);
        if (good == nullptr || !good->parts.empty() || code.text == "INKWELL") continue;
        EXPECT_LE(count, good->pieces) << code.text;
    }
}

TEST(Demo, ALegacyEncodingAndDecimalCommasComeThrough)
{
    const Csv csv = file("federkai.csv");
    EXPECT_EQ(csv.encoding, "windows-1252");
    EXPECT_EQ(csv.delimiter, ';');
    EXPECT_EQ(csv.decimal_mark, ',');
    const auto taken = read_orders(csv, stored_columns("federkai.columns.json"));
    const shop::Order* order = find(taken.rows, "7303");
    ASSERT_NE(order, nullptr);
    EXPECT_EQ(order->to.country, "CH");
    EXPECT_EQ(order->gift->message, "Alles Gute zum neuen Schreibtisch! – Deine Möwen");
    EXPECT_EQ(order->lines[0].price->minor, 7900);
    EXPECT_EQ(to_text(order->date), "2026-11-22");
    EXPECT_EQ(find(taken.rows, "7302")->to.street, (std::vector<std::string>{"Grüner Weg 17a", "2. Stock"}));
}

TEST(Demo, TheGuessNeedsNoCorrection)
{
    for (const std::string name : {"harbour_stall", "federkai"}) {
        const ColumnMatch stored = stored_columns(name + ".columns.json");
        ColumnMatch guess = guess_columns(file(name + ".csv"), stored.shop);
        guess.home = stored.home;
        EXPECT_EQ(to_text(guess), to_text(stored));
    }
}

TEST(Demo, WhatIsWrongOnPurposeIsListedAndNothingElseIsWrong)
{
    using Place = std::tuple<std::string, std::string, std::string>;
    std::set<Place> listed, found;
    for (const CsvRow& row : file("wrong_on_purpose.csv").rows)
        listed.insert({row.cells[0], row.cells[1], row.cells[2]});
    for (const std::string name :
         {"harbour_stall", "harbour_stall_later", "federkai", "december_harbour_stall", "december_federkai"}) {
        const bool stall = name.find("stall") != std::string::npos;
        const auto columns = stored_columns(stall ? "harbour_stall.columns.json" : "federkai.columns.json");
        for (const Problem& p : read_orders(file(name + ".csv"), columns).problems)
            found.insert({p.file, std::to_string(p.row), p.column});
    }
    EXPECT_EQ(found, listed);
}

TEST(Demo, TheLaterFileCallsOneOffChangesOneAndBringsOne)
{
    const ColumnMatch columns = stored_columns("harbour_stall.columns.json");
    const auto before = read_orders(file("harbour_stall.csv"), columns).rows;
    const auto later = read_orders(file("harbour_stall_later.csv"), columns).rows;
    EXPECT_EQ(later.size(), before.size() + 1);
    int differ = 0;
    for (const shop::Order& order : before) {
        ASSERT_NE(find(later, order.key.number), nullptr);
        differ += !(*find(later, order.key.number) == order);
    }
    EXPECT_EQ(differ, 2);
    EXPECT_TRUE(find(later, "HS-2055")->called_off);
    EXPECT_FALSE(find(before, "HS-2055")->called_off);
    EXPECT_EQ(find(later, "HS-2056")->lines[1].count, 2);
    EXPECT_NE(find(later, "HS-2056")->to.street, find(before, "HS-2056")->to.street);
}

TEST(Demo, TheDecemberDayIsTwoHundredOrdersThatTheStockCovers)
{
    const shop::Cupboard cupboard = read_cupboard();
    const Matches matches = read_all_matches(cupboard);
    std::vector<shop::Order> orders;
    std::vector<Problem> problems;
    for (const std::string name : {"harbour_stall", "federkai"}) {
        auto taken = read_orders(file("december_" + name + ".csv"), stored_columns(name + ".columns.json"));
        orders.insert(orders.end(), taken.rows.begin(), taken.rows.end());
        problems.insert(problems.end(), taken.problems.begin(), taken.problems.end());
    }
    EXPECT_THAT(orders, SizeIs(200));
    ASSERT_THAT(problems, SizeIs(1));
    EXPECT_EQ(problems[0].kind, ProblemKind::bad_postcode);
    std::map<shop::GoodCode, int> counted;
    for (const Counted& c : sound(read_stock(file("december_stock.csv"), cupboard))) {
        if (const auto* good = std::get_if<shop::GoodCode>(&c.what))
            counted[*good] = static_cast<int>(c.found.thousandths / 1000);
    }
    int large = 0, unpaid = 0;
    for (shop::Order& order : orders) {
        EXPECT_EQ(match_goods(order, matches, cupboard.goods), 0U) << order.key.number;
        int pieces = 0;
        for (const auto& line : order.lines) {
            pieces += line.count;
            const auto& parts = cupboard.good(line.good)->parts;
            if (parts.empty()) counted[line.good] -= line.count;
            for (const auto& part : parts) counted[part.good] -= part.count * line.count;
        }
        large += pieces >= 9 && pieces <= 12;
        unpaid += !order.paid;
    }
    EXPECT_GE(large, 10);
    EXPECT_EQ(unpaid, 1);
    for (const auto& [code, left] : counted) EXPECT_GE(left, 0) << code.text;
}

} // namespace
} // namespace stow::intake
