// The isometric view: what covers what, and where a point in space comes to lie on paper.
#pragma once

#include "core/measure/shape.h"
#include "core/papers/display_list.h"

#include <array>
#include <cmath>
#include <cstddef>
#include <cstdint>

namespace stow::papers {

struct Solid { // an axis-aligned block, 0.1 mm
    std::array<std::int64_t, 3> low{}, high{};
};

inline Solid solid_of(const Size& at, const Size& size)
{
    return {{at.x.units, at.y.units, at.z.units},
            {at.x.units + size.x.units, at.y.units + size.y.units, at.z.units + size.z.units}};
}

// Whether the outlines overlap. A block's outline is a hexagon whose sides run along the three axes, so two of them are
// apart exactly when x - y, x - z or y - z tells them apart.
inline bool cover_each_other(const Solid& a, const Solid& b)
{
    constexpr std::array<std::array<std::size_t, 2>, 3> pairs{{{0, 1}, {0, 2}, {1, 2}}};
    for (const auto& [i, j] : pairs) {
        if (a.high[i] - a.low[j] <= b.low[i] - b.high[j] || b.high[i] - b.low[j] <= a.low[i] - a.high[j]) return false;
    }
    return true;
}

inline constexpr double cos_30 = 0.86602540378443865; // sqrt(3) / 2

struct Spot { // on paper, before rounding
    double x = 0, y = 0;
};

// Space (0.1 mm) to paper (0.01 mm).
struct Isometry {
    double scale = 1; // paper units for a space unit along an axis
    Spot origin;

    Spot exact(double x, double y, double z) const
    {
        return {origin.x + (x - y) * cos_30 * scale, origin.y + ((x + y) / 2 - z) * scale};
    }
    Point operator()(double x, double y, double z) const
    {
        const Spot spot = exact(x, y, z);
        return {static_cast<int>(std::lround(spot.x)), static_cast<int>(std::lround(spot.y))};
    }
    // Whether the block's outline covers this place on paper.
    bool covers(const Solid& s, Spot at) const
    {
        const double across = (at.x - origin.x) / (cos_30 * scale); // x - y
        const double down = (at.y - origin.y) / scale;              // (x + y) / 2 - z
        const auto within = [&](double v, std::size_t i, std::size_t j) {
            return v > static_cast<double>(s.low[i] - s.high[j]) && v < static_cast<double>(s.high[i] - s.low[j]);
        };
        return within(across, 0, 1) && within(down + across / 2, 0, 2) && within(down - across / 2, 1, 2);
    }
};

} // namespace stow::papers
