// Finds an arrangement fast where one is easy to find: extreme points (Crainic, Perboli & Tadei, "Extreme point-based
// heuristics for three-dimensional bin packing", INFORMS J. Comput. 20(3) 2008) with several orders of pieces and
// several ideas of a good place. A failure proves nothing.
#pragma once

#include "core/fitting/load.h"
#include "core/run/run.h"

#include <functional>

namespace stow::fitting {

// The last word on an arrangement; the search goes on when it is refused.
using Accept = std::function<bool(const Arrangement&)>;

std::optional<Arrangement> find_quick(const Load& load, const Space& space, int tries, Run& run, const Accept& accept);

} // namespace stow::fitting
