// Does the scale, or what she believes of her weights, drift? Asked of the last weighings, estimate against scale.
#pragma once

#include "core/weighing/expected.h"

#include <optional>

namespace stow::weighing {

struct Weighed {
    Expected expected; // before the scale spoke
    Weight reading;
};

struct Drift {
    int parcels = 0;    // looked at
    Weight mean_off;    // reading less estimate
    double spreads = 0; // the mean of the standardised differences, in its own standard errors
};

constexpr int drift_parcels = 20;     // looked at, at most; fewer than half of them say nothing
constexpr double drift_spreads = 3.5; // standard errors: one false warning in 2,000 looks (two-sided normal)

// Over the newest of `weighed` (oldest first): each difference in its own spreads, their sum over the root of their
// number. Nothing: no drift to be seen. Parcels whose difference is beyond ten spreads are wrong, not drifting, and are
// left out.
std::optional<Drift> drift(const std::vector<Weighed>& weighed);

// By how much the differences scatter wider than their spreads say, in permille: the median of the newest 200
// differences in spreads over that of a normal distribution (0.6745; a median, so that wrong parcels do not count).
// 1000 where it is within the 15 % that chance alone brings, or fewer than 40 are known; at most 2000. `estimated`:
// spreads as the parts say.
int spread_permille(const std::vector<Weighed>& estimated);

// The step a scale shows its weights in, as its readings tell: the greatest that divides them all. Nothing from fewer
// than ten readings.
std::optional<Weight> step_seen(const std::vector<Weight>& readings);

} // namespace stow::weighing
