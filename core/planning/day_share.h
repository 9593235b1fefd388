// The whole day's choice: which order gets which outer, when there are not enough of them for all.
#pragma once

#include "core/planning/split.h"

#include <map>
#include <optional>
#include <vector>

namespace stow::planning {

struct Waiting { // orders that travel together, their goods taken off the shelf
    Task task;
    Contents contents;
    std::optional<ParcelPlan> plan;              // their best parcel, were they alone that day
    std::vector<std::vector<ParcelPlan>> splits; // or, without one, over several
    SplitMemory learned;                         // by splitting; nothing of sets, whose gift boxes may run out
};

struct Kept {
    const Waiting* waiting = nullptr;
    std::vector<ParcelPlan> parcels; // empty: left out
};

struct DayShare {
    std::vector<Kept> kept; // one each, in the same order
    DaySharing told;
    std::map<shop::SupplyCode, int> missed; // how many more of an outer the day would have used
};

// Limits are the outers and gift boxes on hand, and, as far as they can be kept, filler and tape; everything else that
// runs short is only told. `waiting` by turn: who comes first has the first choice between equals.
DayShare share_day(const Bench& bench, const Stock& stock, const std::vector<Waiting>& waiting);

} // namespace stow::planning
