// A small invented workshop to plan in: one carrier, a few outers, glass ink and prints.
#pragma once

#include "core/fitting/check.h"
#include "core/planning/planner.h"

#include <gmock/gmock.h>

#include <string>

namespace stow::planning {

using namespace std::string_literals;

inline Money euro(std::int64_t cents)
{
    return {cents, Currency{}};
}

inline Date day(std::string_view iso)
{
    return *parse_date(iso);
}

inline const Date wednesday = day("2026-11-25"); // a Wednesday of the real calendar

inline shop::Supply supply(const std::string& code, shop::SupplyKind kind, std::int64_t cents, int pieces)
{
    shop::Supply s;
    s.code = {code};
    s.name = code;
    s.kind = kind;
    s.cost = euro(cents);
    s.on_hand = shop::pieces(pieces);
    return s;
}

inline shop::Supply carton(const std::string& code, Size inner, std::int64_t cents, int pieces = 100)
{
    shop::Supply s = supply(code, shop::SupplyKind::outer, cents, pieces);
    s.form = OuterForm{};
    s.form->inner = inner;
    s.form->outer = {inner.x + mm(6), inner.y + mm(6), inner.z + mm(6)};
    s.weight = {grams(80), grams(2)};
    return s;
}

inline shop::Supply tube(const std::string& code, Length diameter, Length length, std::int64_t cents)
{
    shop::Supply s = carton(code, {diameter, diameter, length}, cents);
    s.form->kind = OuterKind::tube;
    return s;
}

inline shop::Supply padded_mailer(const std::string& code, Length length, Length width, Length wall, std::int64_t cents)
{
    shop::Supply s = supply(code, shop::SupplyKind::outer, cents, 100);
    s.form = OuterForm{};
    s.form->kind = OuterKind::padded_mailer;
    s.form->inner = {length, width, {}};
    s.form->outer = {length + mm(40), width + mm(20), wall * 2};
    s.form->wall = wall;
    s.weight = {grams(20), grams(1)};
    return s;
}

inline shop::Good block(const std::string& code, Size size, Weight weight)
{
    shop::Good g;
    g.code = {code};
    g.name = code;
    g.shape = Block{size};
    g.weight = {weight, {}};
    return g;
}

inline shop::Good print(const std::string& code, Length length, Length width, std::optional<Length> least_roll)
{
    shop::Good g = block(code, {}, grams(30));
    g.shape = Sheet{length, width, tenth_mm(3), least_roll};
    return g;
}

struct Workshop {
    shop::Cupboard cupboard;
    std::vector<shop::HeldOrder> orders;
    std::vector<postage::RateSheet> sheets;
    Wish wish;

    Workshop()
    {
        cupboard.house.address.country = "DK";
        cupboard.house.ease = {};
        wish.day = wednesday;
        wish.slip = Wish::Slip::none;
    }

    void put(const shop::Supply& s)
    {
        cupboard.on_hand[s.code] = s.on_hand;
        cupboard.supplies[s.code] = s;
    }
    void put(const shop::Good& g, int pieces = 1000)
    {
        cupboard.pieces[g.code] = pieces;
        cupboard.goods[g.code] = g;
    }
    void put(const shop::Wrapping& w) { cupboard.wrappings[w.code] = w; }

    shop::HeldOrder& order(std::int64_t id, const std::vector<shop::SetPart>& lines)
    {
        shop::HeldOrder held;
        held.id = {id};
        held.state = shop::OrderState::checked;
        held.order.key = {"harbour", std::to_string(id)};
        held.order.to.country = "DK";
        held.order.to.postcode = "5700";
        for (const shop::SetPart& part : lines) {
            shop::OrderLine line;
            line.good = part.good;
            line.count = part.count;
            line.price = euro(1000);
            held.order.lines.push_back(line);
        }
        orders.push_back(held);
        return orders.back();
    }

    DayPlan plan() const
    {
        Run run;
        return plan_day(cupboard, orders, sheets, wish, run);
    }
};

// A carrier with two services: "slow" takes small letters and parcels in up to 4 days, "fast" parcels in 1.
inline postage::RateSheet tariff()
{
    postage::RateSheet sheet;
    sheet.carrier = "Tern Post";
    sheet.services.resize(2);
    sheet.services[0].code = "slow";
    sheet.services[0].days_most = 4;
    sheet.services[1].code = "fast";
    sheet.services[1].days_most = 1;
    sheet.zones = {{"home", {{"DK", "", ""}}}};
    postage::Format letter;
    letter.name = "letter";
    letter.most_length = mm(350);
    letter.most_width = mm(250);
    letter.most_height = mm(25);
    postage::Format parcel;
    parcel.name = "parcel";
    parcel.most_length = mm(1000);
    parcel.most_width = mm(500);
    parcel.most_height = mm(500);
    sheet.formats = {letter, parcel};
    sheet.steps = {{"slow", "home", "letter", grams(500), euro(200)},
                   {"slow", "home", "parcel", grams(1000), euro(450)},
                   {"slow", "home", "parcel", grams(10'000), euro(700)},
                   {"fast", "home", "parcel", grams(10'000), euro(1200)}};
    return sheet;
}

// What every plan must be: each arrangement sound by the judge, each cost the sum of its parts.
inline void expect_sound(const Workshop& shop, const DayPlan& plan)
{
    Money postage = euro(0);
    Money packaging = euro(0);
    std::map<shop::SupplyCode, shop::Amount> used;
    for (const ParcelPlan& parcel : plan.parcels) {
        EXPECT_THAT(fitting::check(parcel.question, parcel.outer.text, parcel.cut_height, parcel.placements),
                    testing::IsEmpty())
            << parcel.outer.text;
        Money own = euro(0);
        for (const Used& u : parcel.uses) {
            own += share(shop.cupboard.supplies.at(u.supply).cost, u.amount.thousandths, 1000);
            used[u.supply] += u.amount;
        }
        EXPECT_EQ(parcel.packaging, own);
        packaging += own;
        if (parcel.chosen) postage += parcel.quotes.at(*parcel.chosen).price()->total;
    }
    EXPECT_EQ(plan.packaging, packaging);
    EXPECT_EQ(plan.postage, postage);
    for (const auto& [code, amount] : used) {
        const shop::Supply& s = shop.cupboard.supplies.at(code);
        if (s.kind == shop::SupplyKind::outer) {
            EXPECT_LE(amount, s.on_hand) << code.text;
        }
    }
}

} // namespace stow::planning
