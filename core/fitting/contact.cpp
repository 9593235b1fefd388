#include "core/fitting/contact.h"

#include <cmath>

namespace stow::fitting {

namespace {

constexpr double grace = 1e-6;

using Point = std::array<double, 2>;
using Polygon = std::vector<Point>;

// The part of a convex polygon where a·x + b·y ≤ c.
Polygon cut(const Polygon& polygon, double a, double b, double c)
{
    Polygon kept;
    const auto side = [&](const Point& p) { return a * p[0] + b * p[1] - c; };
    for (std::size_t i = 0; i < polygon.size(); ++i) {
        const Point& p = polygon[i];
        const Point& q = polygon[(i + 1) % polygon.size()];
        const double sp = side(p), sq = side(q);
        if (sp <= 0) kept.push_back(p);
        if ((sp < 0 && sq > 0) || (sp > 0 && sq < 0)) {
            const double t = sp / (sp - sq);
            kept.push_back({p[0] + t * (q[0] - p[0]), p[1] + t * (q[1] - p[1])});
        }
    }
    return kept;
}

} // namespace

Contact::Contact(const Base& base)
    : base_(base), exact_(!base.round), base_area_((base.x1 - base.x0) * (base.y1 - base.y0)),
      base_real_(area(outline(base)))
{
}

Contact::Polygon Contact::outline(const Base& base)
{
    const auto x0 = static_cast<double>(base.x0), y0 = static_cast<double>(base.y0);
    const auto x1 = static_cast<double>(base.x1), y1 = static_cast<double>(base.y1);
    if (!base.round) return {{x0, y0}, {x1, y0}, {x1, y1}, {x0, y1}};
    Polygon polygon;
    const double r = (x1 - x0) / 2, pi = std::acos(-1.0);
    for (int k = 0; k < 64; ++k) {
        const double angle = pi * k / 32;
        polygon.push_back({(x0 + x1) / 2 + r * std::cos(angle), (y0 + y1) / 2 + r * std::sin(angle)});
    }
    return polygon;
}

double Contact::area(const Polygon& polygon)
{
    double twice = 0;
    for (std::size_t i = 0; i < polygon.size(); ++i) {
        const Point& p = polygon[i];
        const Point& q = polygon[(i + 1) % polygon.size()];
        twice += p[0] * q[1] - p[1] * q[0];
    }
    return twice / 2;
}

std::int64_t Contact::add(const Base& top)
{
    const std::int64_t x0 = std::max(base_.x0, top.x0), x1 = std::min(base_.x1, top.x1);
    const std::int64_t y0 = std::max(base_.y0, top.y0), y1 = std::min(base_.y1, top.y1);
    if (x0 >= x1 || y0 >= y1) return 0;
    if (!base_.round && !top.round) {
        const std::int64_t shared = (x1 - x0) * (y1 - y0);
        sum_ += shared;
        sum_real_ += static_cast<double>(shared);
        return shared;
    }
    exact_ = false;
    Polygon shared = outline(base_);
    const Polygon other = outline(top);
    for (std::size_t i = 0; i < other.size() && !shared.empty(); ++i) {
        const Point& p = other[i];
        const Point& q = other[(i + 1) % other.size()];
        const double a = q[1] - p[1], b = p[0] - q[0];
        shared = cut(shared, a, b, a * p[0] + b * p[1]);
    }
    const double common = area(shared);
    if (!(common > 0)) return 0;
    sum_real_ += common;
    return std::llround(common);
}

// Three quarters are enough for the middle too: a base is the same about its middle, so a line through the middle that
// had all of the contact on one side would leave it no more than half of the base.
bool Contact::partial() const
{
    return exact_ ? 4 * sum_ >= 3 * base_area_ : 4 * sum_real_ >= 3 * base_real_ * (1 - grace);
}

bool Contact::full() const
{
    return exact_ ? sum_ == base_area_ : sum_real_ >= base_real_ * (1 - grace);
}

Length rolled_diameter(Length least, Length across, Length thickness)
{
    const auto d = static_cast<double>(least.units);
    const double ring = d * d + 4 / std::acos(-1.0) * static_cast<double>((across * thickness).units);
    return Length{static_cast<std::int64_t>(std::ceil(std::sqrt(ring)))} + thickness * 2;
}

} // namespace stow::fitting
