// Sharing out as an integer program, for what is no assignment: amounts that differ, several scarce things at once.
#pragma once

#include "core/planning/sharing.h"

namespace stow::planning {

// Level of the merit by level, the levels before held fast. Bounded by nodes; when that ends it early the best found is
// given, not proven, with the gap of the level at which it ended. Never breaks a firm limit.
Shared share_by_program(const Sharing& sharing, Run& run);

} // namespace stow::planning
