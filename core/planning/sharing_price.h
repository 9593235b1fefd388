// Sharing out when filler or tape runs short and there are many orders: what is short gets a price.
#pragma once

#include "core/planning/sharing.h"

namespace stow::planning {

// Lagrangian relaxation of the limits that are not firm (M. L. Fisher, Management Science 27, 1981): at a price for the
// thousandth the orders are assigned as if nothing but outers were scarce; the least price at which all is enough gives
// the ways, every price a bound, and their difference the gap of the wish. Exact where more than there is must be used
// whatever is chosen. Nothing where the firm limits are no flow, or not everything is enough at any price. `start`,
// `most` as in assign_all, at each price.
std::optional<Shared> share_by_price(const Sharing& sharing, const Ways& start, int most, Run& run);

} // namespace stow::planning
