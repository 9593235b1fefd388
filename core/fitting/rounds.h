// Jars and bottles standing upright, as true circles: columns of them on the floor, each put where it touches two
// others or walls, by the hole degree (Huang, Li, Akeb & Li, "Greedy algorithms for packing unequal circles into a
// rectangular container", J. Oper. Res. Soc. 56, 2005) or lowest and leftmost, in several orders; so rows, hexagons and
// zigzags come of themselves; or pushed apart from places drawn at random. What is not round goes beside or above them
// by the quick search. A failure proves nothing.
#pragma once

#include "core/fitting/quick.h"

namespace stow::fitting {

// Whether there is anything for it to do: at least two pieces that may stand as circles.
bool has_rounds(const Load& load);

std::optional<Arrangement> find_rounds(const Load& load, const Space& space, int tries, Run& run, const Accept& accept);

} // namespace stow::fitting
