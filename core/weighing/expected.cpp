#include "core/weighing/expected.h"

#include <cmath>

namespace stow::weighing {

namespace {

double squared(double x)
{
    return x * x;
}

// Standard normal distribution function.
double phi(double z)
{
    return 0.5 * std::erfc(-z / std::sqrt(2.0));
}

} // namespace

Expected expected_weight(const std::vector<Share>& shares, const Circumstances& circumstances)
{
    Weight mean, board;
    double variance = squared(in_grams(circumstances.scale_step)) / 12;
    for (const Share& share : shares) {
        const Weight all = share.one.mean * share.count;
        mean += all;
        if (share.board) board += all;
        variance += share.count * squared(in_grams(share.one.spread));
        variance += squared(share.batch_permille * in_grams(all) / 1000);
    }
    variance += squared(circumstances.humidity_permille * in_grams(board) / 1000);
    const double wider = circumstances.spread_permille / 1000.0;
    return {mean, Weight{std::llround(std::sqrt(variance) * wider * 10)}};
}

double probability_above(const Expected& expected, Weight edge)
{
    if (expected.spread.units <= 0) return expected.mean > edge ? 1 : 0;
    return phi(in_grams(expected.mean - edge) / in_grams(expected.spread));
}

double detection_probability(Weight spread, Weight mass, double alarm)
{
    if (spread.units <= 0) return mass.units != 0 ? 1 : 0;
    const double shift = in_grams(mass) / in_grams(spread);
    return phi(shift - alarm) + phi(-shift - alarm);
}

Weight least_detectable(Weight spread)
{
    return {(spread.units * 415 + 99) / 100};
}

bool cannot_be_sure(Weight reading, Weight scale_step, Weight edge)
{
    return reading * 2 - scale_step <= edge * 2 && edge * 2 < reading * 2 + scale_step;
}

} // namespace stow::weighing
