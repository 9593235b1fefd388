// Goods' weights that learn from weighings. Only weighings whose pieces were all scanned, and that nobody overrode, may
// be learnt from; undoing a weighing is putting the beliefs from before it back.
//
// A reading tells the sum of everything in the parcel. What it differs from the expectation by is shared out over the
// goods: each mean moves by its own part of the variance (the Kalman gain of one measurement), each spread towards the
// squared deviation that is likely to be its own (one step of expectation-maximisation). Correlation between goods is
// left out: they meet in ever different parcels.
#pragma once

#include "core/weighing/expected.h"

#include <vector>

namespace stow::weighing {

// What is known of one piece of a good. Grams in floating point: steps are finer than 0.1 g, and nothing is decided
// here.
struct Belief {
    double mean_g = 0;
    double doubt_g = 0;  // standard deviation of what the mean may be off by
    double spread_g = 0; // standard deviation of pieces about the mean
    int seen = 0;        // pieces learnt from
    friend bool operator==(const Belief&, const Belief&) = default;
};

// From an estimate entered by hand: its mean may be off by `batch_permille` and by as much as a piece differs.
Belief first_belief(const shop::WeightEstimate& estimate, int batch_permille);
// For planning: the doubt counts as spread, so that risks are not understated while little is known.
shop::WeightEstimate as_estimate(const Belief& belief);

struct Learner { // some pieces of a good in the parcel weighed
    Belief belief;
    int count = 1;
    double amount = 1; // of one each: 1.4 litres of filler are one of 1.4
};

// `rest`: all else in the parcel and the scale's own step. Beliefs after the reading, in the same order.
std::vector<Belief> learn(const std::vector<Learner>& goods, const Expected& rest, Weight reading);

// No good is held to be more even than this: 0.1 g, or two thousandths of its weight.
double least_spread_g(double mean_g);

} // namespace stow::weighing
