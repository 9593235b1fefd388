#include "core/weighing/learning.h"

#include <algorithm>
#include <cmath>

namespace stow::weighing {

namespace {

// The spread entered by hand is worth this many pieces seen; what is known of it never more than that many, so that it
// follows a change in the making.
constexpr double spread_worth = 8;
constexpr double spread_memory = 150;

double squared(double x)
{
    return x * x;
}

} // namespace

double least_spread_g(double mean_g)
{
    return std::max(0.1, 0.002 * mean_g);
}

Belief first_belief(const shop::WeightEstimate& estimate, int batch_permille)
{
    const double mean = in_grams(estimate.mean);
    const double spread = std::max(in_grams(estimate.spread), least_spread_g(mean));
    return {mean, std::sqrt(squared(batch_permille * mean / 1000) + squared(spread)), spread, 0};
}

shop::WeightEstimate as_estimate(const Belief& b)
{
    const double spread = std::sqrt(squared(b.spread_g) + squared(b.doubt_g));
    return {Weight{std::llround(b.mean_g * 10)}, Weight{std::llround(spread * 10)}};
}

std::vector<Belief> learn(const std::vector<Learner>& goods, const Expected& rest, Weight reading)
{
    double off = in_grams(reading - rest.mean);
    double variance = squared(in_grams(rest.spread));
    for (const Learner& g : goods) {
        off -= g.count * g.amount * g.belief.mean_g;
        variance += squared(g.count * g.amount * g.belief.doubt_g) + g.count * squared(g.amount * g.belief.spread_g);
    }
    std::vector<Belief> beliefs;
    for (const Learner& g : goods) {
        Belief b = g.belief;
        if (g.count > 0 && g.amount > 0 && variance > 0) {
            const double units = g.count * g.amount;
            const double gain = units * squared(b.doubt_g) / variance;
            b.mean_g += gain * off;
            b.doubt_g = std::sqrt(std::max(0.0, squared(b.doubt_g) * (1 - gain * units)));

            // The pieces' own deviation, given the reading: expected value and remaining variance of their sum.
            const double own = g.count * squared(g.amount * b.spread_g);
            const double square = (squared(own / variance * off) + own - squared(own) / variance) / squared(g.amount);
            const double known = std::min(spread_worth + g.belief.seen, spread_memory);
            // n pieces, each with an n-th of the square.
            const double spread_squared = (known * squared(b.spread_g) + square) / (known + g.count);
            b.spread_g = std::max(std::sqrt(spread_squared), least_spread_g(b.mean_g));
            b.seen += g.count;
        }
        beliefs.push_back(b);
    }
    return beliefs;
}

} // namespace stow::weighing
