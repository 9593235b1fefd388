// Sharing out as an integer program, for what is no assignment: amounts that differ, several scarce things at once.
#pragma once

#include "core/planning/sharing.h"

namespace stow::planning {

// Level of the merit by level, the levels before held fast. Bounded by nodes; when that ends it early the best found is
// given, not proven, with what it may be behind from the level on at which it ended. Never breaks a firm limit.
Shared share_by_program(const Sharing& sharing, Run& run);

// The same for many orders, with fewer nodes and only as far as the first wish; `behind` says nothing of the levels
// after it. Never worse than `start`, which keeps the limits.
Shared share_by_wish(const Sharing& sharing, const Ways& start, Run& run);

// How far these ways are behind at most, by the linear relaxation, level by level as far as it says that no ways are
// better.
Levels behind_at_most(const Sharing& sharing, const Shared& found, Run& run);

} // namespace stow::planning
