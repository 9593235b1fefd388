// Packaging and everything used up in packing.
#pragma once

#include "core/measure/money.h"
#include "core/measure/shape.h"
#include "core/shop/codes.h"
#include "core/shop/goods.h"
#include "core/shop/materials.h"

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace stow::shop {

enum class SupplyKind { outer, wrap, filler, tape, label, insert, ribbon, paper };
inline constexpr std::array all_supply_kinds{SupplyKind::outer,  SupplyKind::wrap,  SupplyKind::filler,
                                             SupplyKind::tape,   SupplyKind::label, SupplyKind::insert,
                                             SupplyKind::ribbon, SupplyKind::paper};
std::string_view name_of(SupplyKind kind);
std::optional<SupplyKind> supply_kind(std::string_view name);

// What a supply is counted in. Amounts are whole thousandths of it, so that 1.4 litres and 0.8 m are exact.
enum class Unit { piece, litre, metre, kilogram };
std::string_view name_of(Unit unit); // "piece", "litre", "m", "kg"
std::optional<Unit> unit(std::string_view name);

struct Amount { // thousandths of the supply's unit
    std::int64_t thousandths = 0;
    friend constexpr auto operator<=>(Amount, Amount) = default;
    friend constexpr Amount operator+(Amount a, Amount b) { return {a.thousandths + b.thousandths}; }
    friend constexpr Amount operator-(Amount a, Amount b) { return {a.thousandths - b.thousandths}; }
    friend constexpr Amount operator-(Amount a) { return {-a.thousandths}; }
    constexpr Amount& operator+=(Amount b)
    {
        thousandths += b.thousandths;
        return *this;
    }
};
constexpr Amount pieces(std::int64_t n)
{
    return {n * 1000};
}

struct Supply {
    SupplyCode code;
    std::string name;
    SupplyKind kind = SupplyKind::outer;
    Unit unit = Unit::piece;
    std::optional<OuterForm> form;  // of an outer
    std::optional<Weight> max_load; // of an outer
    std::optional<Sheet> sheet;     // size of an insert or a paper sheet, unfolded
    std::optional<Sheet> folded;    // smallest size an insert may be folded to
    WeightEstimate weight;          // of one unit (tare of an outer; grams a litre of filler; a metre of tape)
    Material material = Material::paper;
    Money cost;        // of one unit
    Amount pack{1000}; // bought by this many
    std::string supplier;
    int lead_days = 0;
    Amount on_hand; // when taken in; afterwards the ledger knows
    Amount reorder_at;
    int minutes = 0; // to make up one
    // An outer she makes herself: of this paper, so much of it for one. It is there as long as the paper is.
    SupplyCode made_from{};
    Amount takes{1000};
    bool reused = false; // came in with somebody else's goods: used again, not put on the market by her
};

// How one good, or several together, is wrapped.
struct Wrapping {
    WrappingCode code;
    std::string name;
    Size growth;    // added to length, width and height in all; folded ends are thicker than sides
    Length cushion; // what it gives on every side, if it is marked as cushion
    Length squeeze; // may be pressed by this much by hand
    struct Use {
        SupplyCode supply;
        Amount amount;
    };
    std::vector<Use> uses; // for one good
    WeightEstimate weight; // of the wrapping of one good
    int seconds = 0;
};

// Which insert goes into which order.
struct HouseRule {
    enum class When { every_order, gift, no_gift, abroad, good_in_order, value_from };
    When when = When::every_order;
    GoodCode good;             // for good_in_order
    std::optional<Money> from; // for value_from
    SupplyCode insert;
    int count = 1;
};
std::string_view name_of(HouseRule::When when); // "every order", "gift", "no gift", "abroad", "good", "value from"
std::optional<HouseRule::When> rule_when(std::string_view name);

} // namespace stow::shop
