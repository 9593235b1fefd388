// Sharing out an order that has too many shares to price them all.
#pragma once

#include "core/planning/shares.h"
#include "core/planning/split_bound.h"

namespace stow::planning {

// Starts from the shares given (the first carries the inserts) and from even splits into any smaller number of
// parcels; lets an integer program (CBC) pick the cheapest of all shares priced so far that add up to the order, no
// outer used beyond its stock; then moves and exchanges pieces between two parcels, joins two, and picks again, until
// nothing gets cheaper, the bound is reached or so many shares are priced. The bound spares prices that cannot help.
// Deterministic; bounded by the number of prices.
std::vector<Counts> cheaper_split(Shares& shares, const SplitBound& bound, const Stock& stock,
                                  const std::vector<Counts>& start, std::size_t most_priced, Run& run);

} // namespace stow::planning
