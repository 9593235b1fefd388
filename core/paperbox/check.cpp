#include "core/paperbox/check.h"

#include <boost/geometry/algorithms/area.hpp>
#include <boost/geometry/algorithms/correct.hpp>
#include <boost/geometry/algorithms/difference.hpp>
#include <boost/geometry/algorithms/intersection.hpp>
#include <boost/geometry/algorithms/union.hpp>
#include <boost/geometry/geometries/box.hpp>
#include <boost/geometry/geometries/multi_polygon.hpp>
#include <boost/geometry/geometries/point_xy.hpp>
#include <boost/geometry/geometries/polygon.hpp>
#include <boost/geometry/strategies/strategies.hpp>

#include <cmath>

namespace stow::paperbox {

namespace {

namespace bg = boost::geometry;
using Point = bg::model::d2::point_xy<double>;
using Polygon = bg::model::polygon<Point>;
using Area = bg::model::multi_polygon<Polygon>;

Polygon polygon(const std::vector<Point>& points)
{
    Polygon made;
    made.outer().assign(points.begin(), points.end());
    bg::correct(made);
    return made;
}

Polygon rectangle(double x0, double y0, double x1, double y1)
{
    return polygon({{x0, y0}, {x1, y0}, {x1, y1}, {x0, y1}});
}

// The lid of a box from a turned square, u along it and v across: what is left of it after four flaps are folded in. A
// flap is what lies beyond the wall's top, within the sheet; folded it lies mirrored, first up the wall, then over.
double bare_share(const Wanted& wanted, const Net& net)
{
    const double w = in_mm(wanted.size.x), d = in_mm(wanted.size.y), h = in_mm(wanted.size.z);
    const double reach = in_mm(net.length) / std::sqrt(2.0);
    const Polygon lid = rectangle(-w / 2, -d / 2, w / 2, d / 2);
    Area bare{lid};
    const auto fold_in = [&](double along, double across, bool over_width) {
        // Beyond the score: a triangle, cut at both ends by the sheet's edges; folded, its tip points over the lid.
        const double depth = reach - across / 2 - h, half = std::min(reach - across / 2 - h, along / 2);
        for (const double sign : {-1.0, 1.0}) {
            const double edge = sign * across / 2;
            std::vector<Point> flap;
            for (const auto& [a, out] : {std::pair{-half, depth - half}, {half, depth - half}}) {
                (void)out;
                flap.push_back(over_width ? Point{edge, a} : Point{a, edge});
            }
            // At `half` from the middle the flap is depth − half deep.
            flap.push_back(over_width ? Point{edge - sign * (depth - half), half}
                                      : Point{half, edge - sign * (depth - half)});
            flap.push_back(over_width ? Point{edge - sign * depth, 0} : Point{0, edge - sign * depth});
            flap.push_back(over_width ? Point{edge - sign * (depth - half), -half}
                                      : Point{-half, edge - sign * (depth - half)});
            Area left;
            bg::difference(bare, polygon(flap), left);
            bare = std::move(left);
        }
    };
    fold_in(w, d, false);
    fold_in(d, w, true);
    return bg::area(bare) / bg::area(lid);
}

bool leaves_sheet(const Net& net)
{
    const auto outside = [&](const Spot& s) {
        return s.x < Length{} || s.y < Length{} || s.x > net.length || s.y > net.width;
    };
    for (const Mark& mark : net.marks) {
        if (outside(mark.from) || outside(mark.to)) return true;
        if (mark.bulge == Length{}) continue;
        // The arcs of a pillow run along x: the middle lies `bulge` to the left, which is up.
        if (outside({mark.from.x, mark.from.y - mark.bulge})) return true;
    }
    return false;
}

// Base, four walls and four corner squares of a tray, from its own scores.
bool fills_the_sheet(const Net& net)
{
    Length h = net.length, inner = net.length;
    for (const Mark& mark : net.marks) {
        if (mark.stroke == Stroke::score && mark.from.y == mark.to.y) h = std::min(h, mark.from.y);
        if (mark.stroke == Stroke::score && mark.from.x == mark.to.x) inner = std::min(inner, mark.from.x);
    }
    if (h != inner) return false;
    const double a = in_mm(h), x = in_mm(net.length), y = in_mm(net.width);
    const std::vector<Polygon> parts{rectangle(a, a, x - a, y - a), rectangle(a, 0, x - a, a),
                                     rectangle(a, y - a, x - a, y), rectangle(0, a, a, y - a),
                                     rectangle(x - a, a, x, y - a)};
    double sum = 0;
    for (std::size_t i = 0; i < parts.size(); ++i) {
        sum += bg::area(parts[i]);
        for (std::size_t j = 0; j < i; ++j) {
            Area common;
            bg::intersection(parts[i], parts[j], common);
            if (bg::area(common) > 1e-6) return false;
        }
    }
    return std::abs(sum + 4 * a * a - x * y) < 1e-6;
}

} // namespace

Findings check(const Wanted& wanted, const Net& net)
{
    Findings found;
    found.on_the_sheet = !leaves_sheet(net);
    if (net.kind == Kind::one_square || net.kind == Kind::envelope) {
        found.bare_permille = bare_share(wanted, net) * 1000;
        found.lid_covered = found.bare_permille < 1;
    }
    if (net.kind == Kind::tray || net.kind == Kind::lid) found.walls_apart = fills_the_sheet(net);
    return found;
}

} // namespace stow::paperbox
