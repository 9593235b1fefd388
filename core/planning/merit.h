// What makes one way to pack better than another, of a parcel as of a whole day: one value, one order.
#pragma once

#include "core/planning/plan.h"

#include <array>
#include <compare>
#include <string>

namespace stow::planning {

struct Merit {                   // the least is the best; of a day: the sum over its parcels
    std::int64_t left_out = 0;   // orders that do not go although something would hold them
    std::int64_t no_service = 0; // parcels that no service takes, although there are rate sheets
    std::int64_t late = 0;       // parcels whose promised day no service keeps
    std::int64_t over = 0;       // thousandths of filler and tape beyond what is on hand; of a day only
    // By preference: smallest: closed volume, cost in all, weight of packaging; cheapest: cost, volume, weight;
    // least material: weight, cost, volume. Volume in whole millilitres, so that sums stay small and a smaller
    // difference counts as none.
    std::array<std::int64_t, 3> wishes{};
    std::int64_t moved = 0; // from the outer of the plan before
    std::int64_t turn = 0;  // of a day only: who comes first has the first choice
    std::string code{};     // ties of one parcel
    friend auto operator<=>(const Merit&, const Merit&) = default;
};
Merit operator+(const Merit& a, const Merit& b); // without a code

// A merit, or how far two are apart, as numbers in the order in which they count; without a code.
using Levels = std::array<std::int64_t, 9>;
inline constexpr std::size_t over_level = 3, wish_level = 4;
Levels levels_of(const Merit& merit);
Levels operator+(Levels a, const Levels& b);
Levels operator-(Levels a, const Levels& b);

// Packaging, postage and work; without postage where no service is chosen.
Money cost_in_all(const ParcelPlan& plan);

// `before`: the outer of the plan before; empty: none.
Merit merit_of(const ParcelPlan& plan, Volume closed, Preference preference, const shop::SupplyCode& before);

} // namespace stow::planning
