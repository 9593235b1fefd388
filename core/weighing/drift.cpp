#include "core/weighing/drift.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace stow::weighing {

std::optional<Drift> drift(const std::vector<Weighed>& weighed)
{
    constexpr double wrong_parcel = 10;
    Drift found;
    double sum = 0;
    std::int64_t off = 0;
    for (auto w = weighed.rbegin(); w != weighed.rend() && found.parcels < drift_parcels; ++w) {
        const Weight difference = w->reading - w->expected.mean;
        const double in_spreads = in_grams(difference) / std::max(in_grams(w->expected.spread), 0.1);
        if (std::abs(in_spreads) > wrong_parcel) continue;
        ++found.parcels;
        sum += in_spreads;
        off += difference.units;
    }
    if (found.parcels < drift_parcels / 2) return std::nullopt;
    found.mean_off = Weight{std::llround(static_cast<double>(off) / found.parcels)};
    found.spreads = sum / std::sqrt(found.parcels);
    if (std::abs(found.spreads) < drift_spreads) return std::nullopt;
    return found;
}

int spread_permille(const std::vector<Weighed>& estimated)
{
    constexpr std::size_t newest = 200, enough = 40;
    constexpr double normal_median = 0.6745, by_chance = 1.15, most = 2;
    if (estimated.size() < enough) return 1000;
    std::vector<double> off;
    for (auto w = estimated.rbegin(); w != estimated.rend() && off.size() < newest; ++w) {
        off.push_back(std::abs(in_grams(w->reading - w->expected.mean)) / std::max(in_grams(w->expected.spread), 0.1));
    }
    const auto middle = off.begin() + static_cast<std::ptrdiff_t>(off.size() / 2);
    std::nth_element(off.begin(), middle, off.end());
    const double factor = *middle / normal_median;
    return factor <= by_chance ? 1000 : static_cast<int>(std::lround(1000 * std::min(factor, most)));
}

std::optional<Weight> step_seen(const std::vector<Weight>& readings)
{
    constexpr std::size_t enough = 10; // a step twice too large is then seen by chance once in 1,000 times
    if (readings.size() < enough) return std::nullopt;
    std::int64_t step = 0;
    for (const Weight w : readings) step = std::gcd(step, w.units);
    return step > 0 ? std::optional(Weight{step}) : std::nullopt;
}

} // namespace stow::weighing
