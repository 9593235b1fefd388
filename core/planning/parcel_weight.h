// Expected weight of a parcel: its contents before filler, and closed with its label on.
#pragma once

#include "core/planning/plan.h"
#include "core/shop/cupboard.h"

namespace stow::planning {

// Sets `contents_weight` (goods, wraps, gift boxes, inserts) and `weight` (all that, the outer, filler, tape and label)
// from the items, filler volume and tape of the plan, by weighing::expected_weight: goods share the spread of their
// batch, all board and paper the humidity.
void weigh(ParcelPlan& plan, const shop::Cupboard& cupboard);

} // namespace stow::planning
