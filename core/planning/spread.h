// Sums of weights that are known with a spread, taken as independent.
#pragma once

#include "core/shop/goods.h"

#include <cmath>

namespace stow::planning {

// Standard deviations add as squares: σ² = σa² + σb².
inline shop::WeightEstimate sum(const shop::WeightEstimate& a, const shop::WeightEstimate& b)
{
    const auto sa = static_cast<double>(a.spread.units);
    const auto sb = static_cast<double>(b.spread.units);
    return {a.mean + b.mean, {std::llround(std::sqrt(sa * sa + sb * sb))}};
}

// `n` alike: σ² = n·σ1².
inline shop::WeightEstimate times(const shop::WeightEstimate& one, int n)
{
    return {one.mean * n, {std::llround(static_cast<double>(one.spread.units) * std::sqrt(static_cast<double>(n)))}};
}

} // namespace stow::planning
