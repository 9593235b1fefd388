// An order that no outer holds, over several parcels.
#pragma once

#include "core/planning/pack.h"

#include <variant>
#include <vector>

namespace stow::planning {

// Small sets: of all ways to share the pieces out, the one of least total cost, the cost of a share being packaging and
// postage of its best outer; `split_proven` then says that every share was decided and no outer ran out on the way. The
// parcel with the first piece carries the inserts. Large sets: one outer after the other as full as it will go, never
// called proven. Stuck: nothing_holds_it with the good that no outer holds, or no_service.
std::variant<std::vector<ParcelPlan>, StuckOrder> split(const Bench& bench, const Task& task, const Stock& stock);

} // namespace stow::planning
