// Everything about a parcel that follows from its outer and contents without asking how they lie: closed size, filler,
// tape, supplies, weight, postage.
#pragma once

#include "core/planning/contents.h"
#include "core/planning/services.h"
#include "core/planning/wrapped_items.h"

#include <vector>

namespace stow::planning {

struct Destination { // of one parcel
    std::string country, postcode{};
    std::optional<Money> value{}; // of its goods
    Promise promise{};
};

// Closed size as handed over: a carton, gift box or board mailer bulges by the house's measure where it can (carton and
// gift box on all sides, the others in thickness), a tube not at all.
Size bulged(const Size& closed, OuterKind kind, Length bulge);

// What a carrier must know about the contents: "flammable", "ask carrier", "liquid", "glass".
std::vector<std::string> holds(const Contents& contents);

// Fills in everything but the arrangement. `thickness` of what lies in a sleeve or board mailer; `cut_at` the true
// inner height of a carton that is cut down.
struct Costing {
    const shop::Cupboard& cupboard;
    const Services& services;
    const Wish& wish;
    const Contents& contents;
    const Destination& destination;
};
void cost(ParcelPlan& plan, const Costing& with, const shop::Supply& outer, Length thickness,
          std::optional<Length> cut_at);

} // namespace stow::planning
