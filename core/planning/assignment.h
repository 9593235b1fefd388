// Sharing out pieces as a flow: each way needs at most one piece of one thing that differs from way to way (an outer),
// and each order at most one of a thing that all its ways need alike (its gift box). Exact, in whole numbers.
#pragma once

#include "core/planning/sharing.h"

namespace stow::planning {

// The ways of least merit by successive shortest augmenting paths (Bellman-Ford over the limits; R. K. Ahuja,
// T. L. Magnanti, J. B. Orlin, Network Flows, 1993, section 9.7). Merits are compared whole, level by level: they add
// up and keep their order, which is all that shortest paths ask. Nothing where the question is no such flow.
std::optional<Ways> assign(const Sharing& sharing);

// The same with some orders that fit into no flow (two gift boxes, several parcels). They begin with their ways of
// `start`, the others assigned; then they change their ways one after the other while that helps; then all their ways
// are tried, with a bound. Looks at no more than `most` assignments; when that ends it early the answer is not proven.
// Nothing where limits are not firm.
struct Assigned {
    Ways ways;
    Levels behind{}; // no ways keep the limits whose merits add up to less than these by more; all 0: proven
};
std::optional<Assigned> assign_all(const Sharing& sharing, const Ways& start, int most);

} // namespace stow::planning
