// What a body stands on: area of contact and whether its middle lies over it. Used by the checker only.
#pragma once

#include "core/measure/quantity.h"

#include <array>
#include <cstdint>
#include <vector>

namespace stow::fitting {

struct Base { // in 0.1 mm, seen from above
    std::int64_t x0 = 0, y0 = 0, x1 = 0, y1 = 0;
    bool round = false; // the 64-gon inscribed in its circle
};

// Adds up where `base` touches the tops below it. Two rectangles are compared in exact integers; where a round base or
// top takes part, in floating point.
class Contact {
public:
    explicit Contact(const Base& base);

    // The area shared with `top` in 0.01 mm², rounded; tops at one height do not overlap.
    std::int64_t add(const Base& top);
    bool partial() const; // at least three quarters of the base, so that its middle is in the hull of the contact
    bool full() const;

private:
    using Point = std::array<double, 2>;
    using Polygon = std::vector<Point>;
    static Polygon outline(const Base& base);
    static double area(const Polygon& polygon);

    Base base_;
    bool exact_ = true;
    std::int64_t base_area_ = 0, sum_ = 0; // of rectangles
    double base_real_ = 0, sum_real_ = 0;
};

// Outer diameter of a sheet wound on itself: the section of the sheet is a ring around `least`, and the loose end lies
// on top; never less than one layer all round. Rounded up. From the area of a ring, π/4 (D² − d²) = across × thickness.
Length rolled_diameter(Length least, Length across, Length thickness);

} // namespace stow::fitting
