// What a parcel should weigh, and how sure that is. Weights in 0.1 g; spreads are standard deviations.
#pragma once

#include "core/shop/goods.h"

#include <vector>

namespace stow::weighing {

// Some pieces of one batch: each differs by itself, and the whole batch is off together by an unknown share of its
// weight.
struct Share {
    shop::WeightEstimate one;
    int count = 1;
    int batch_permille = 0; // standard deviation of the common part, in permille of the mean
    bool board = false;     // board and paper take up moisture together
};

struct Circumstances {
    int humidity_permille = 20; // standard deviation of all board and paper together, in permille of its weight
    Weight scale_step = grams(1);
    int spread_permille = 1000; // all spreads are wider by this than the parts say: drift.h finds it from the record
};

using Expected = shop::WeightEstimate;

// Mean: sum of count * one.mean. Variance: sum of count * one.spread² (pieces differ independently), plus for each
// share (batch * count * mean)² (an unknown mean is common to its pieces), plus (humidity * weight of all board)², plus
// d²/12 for a scale that shows whole steps d (a rounding error spread evenly over one step). The spread is rounded to
// 0.1 g.
Expected expected_weight(const std::vector<Share>& shares, const Circumstances& circumstances);

// The probability that a parcel so estimated really weighs more than `edge` (normal distribution).
double probability_above(const Expected& expected, Weight edge);

// A reading this many spreads from the mean rings the alarm: 1.2 % of right parcels do (two-sided normal).
constexpr double alarm_spreads = 2.505;

// The probability that a thing of this mass, missing or too many, rings the alarm.
double detection_probability(Weight spread, Weight mass, double alarm = alarm_spreads);

// The least mass found 95 % of the time: 4.15 spreads (2.505 for the alarm, 1.645 for 95 %), rounded up to 0.1 g.
Weight least_detectable(Weight spread);

// A reading in steps of `scale_step` may come from half a step less or more: does the edge lie in between? Then nobody
// can say which of the two prices is right.
bool cannot_be_sure(Weight reading, Weight scale_step, Weight edge);

} // namespace stow::weighing
