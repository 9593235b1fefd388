// What makes one way to pack a parcel better than another: one value, one order.
#pragma once

#include "core/planning/plan.h"

#include <array>
#include <compare>
#include <string>

namespace stow::planning {

struct Merit {               // the least is the best
    bool no_service = false; // no service takes it, although there are rate sheets
    bool late = false;       // none keeps the promised day
    // By preference: smallest: closed volume, cost in all, weight of packaging; cheapest: cost, volume, weight;
    // least material: weight, cost, volume.
    std::array<std::int64_t, 3> wishes{};
    std::string code; // ties
    friend auto operator<=>(const Merit&, const Merit&) = default;
};

// Packaging and postage; packaging alone where no service is chosen.
Money cost_in_all(const ParcelPlan& plan);

Merit merit_of(const ParcelPlan& plan, Volume closed, Preference preference);

} // namespace stow::planning
