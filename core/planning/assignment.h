// Sharing out pieces: each way needs at most one of one scarce thing. Exact, in whole numbers.
#pragma once

#include "core/planning/sharing.h"

namespace stow::planning {

// The ways of least merit by successive shortest augmenting paths (Bellman-Ford over the limits; R. K. Ahuja,
// T. L. Magnanti, J. B. Orlin, Network Flows, 1993, section 9.7). Merits are compared whole, level by level: they add
// up and keep their order, which is all that shortest paths ask. Nothing where a way needs more than one piece, a limit
// is not firm, or amounts of one limit differ.
std::optional<Ways> assign(const Sharing& sharing);

} // namespace stow::planning
