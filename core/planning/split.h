// An order that no outer holds, over several parcels.
#pragma once

#include "core/planning/shares.h"
#include "core/planning/split_bound.h"

#include <variant>
#include <vector>

namespace stow::planning {

struct SplitMemory { // of one task, from when nothing was there less than now
    PricedShares shares;
    std::optional<SplitBound> bound;
};

// The way to share the pieces out that costs least, the cost of a share being packaging and postage of its best outer.
// Few shares: every way is looked at, shares that the lower bound (split_bound.h) rules out are not packed;
// it is proven where every share was decided and no outer ran out on the way. Many shares: a search among some of them
// (split_search.h). `split_gap_permille` says how much cheaper another way could be by the bound, 0 where proven;
// nothing where a parcel comes late. The parcel with the first piece carries the inserts. Stuck: nothing_holds_it with
// the good that no outer holds, or no_service.
std::variant<std::vector<ParcelPlan>, StuckOrder> split(const Bench& bench, const Task& task, const Stock& stock,
                                                        const SplitMemory& before = {}, SplitMemory* learned = nullptr);

} // namespace stow::planning
