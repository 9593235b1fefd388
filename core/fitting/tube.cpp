#include "core/fitting/tube.h"

#include "core/fitting/bounds.h"
#include "core/fitting/candidate.h"

#include <cmath>

namespace stow::fitting {

namespace {

// Enclosing circle over circle, in 1e-9, rounded down. Proofs: 2 to 4 trivial; 5 and 6 Graham 1968; 7 trivial; 8 to 10
// Pirl 1969; 11 Melissen 1994; 12 Fodor 2000; 13 Fodor 2003. Table: OEIS A281115 and Graham, Lubachevsky, Nurmela &
// Östergård, "Dense packings of congruent circles in a circle", Discrete Math. 181 1998.
constexpr std::array<std::int64_t, 14> ratios{0,
                                              1'000'000'000,
                                              2'000'000'000,
                                              2'154'700'538,
                                              2'414'213'562,
                                              2'701'301'616,
                                              3'000'000'000,
                                              3'000'000'000,
                                              3'304'764'870,
                                              3'613'125'929,
                                              3'813'025'631,
                                              3'923'804'400,
                                              4'029'601'929,
                                              4'236'067'977};

struct Point {
    double x = 0, y = 0; // in circle radii, from the middle
};

// Middles found by numerical optimisation for this program; they reach the ratios above to 1e-8.
constexpr std::array<Point, 10> middles_of_10{{{-0.70724522, -2.72266733},
                                               {-2.33780697, -1.56453564},
                                               {2.62144623, -1.02035919},
                                               {-0.51955474, -0.73149375},
                                               {0.63857685, 0.89906787},
                                               {-1.82683987, 2.13910479},
                                               {-2.78663039, 0.38445321},
                                               {0.05640002, 2.81246018},
                                               {1.28082186, -2.50451763},
                                               {2.63695562, 0.97958067}}};
constexpr std::array<Point, 11> middles_of_11{{{2.90261164, -0.35139413},
                                               {-0.05486499, 1.01394330},
                                               {-1.51525431, -0.35253502},
                                               {1.99765773, -2.13494632},
                                               {0.85008889, 2.79749550},
                                               {-1.14698956, 2.68943249},
                                               {-2.60737886, 1.32295414},
                                               {0.15797748, -2.91953340},
                                               {-1.75562212, -2.33803831},
                                               {0.39834529, -0.93403012},
                                               {2.44940131, 1.59657928}}};
constexpr std::array<Point, 12> middles_of_12{{{1.79658476, -2.43942023},
                                               {2.67933401, 1.41409233},
                                               {-0.68474916, 0.92975905},
                                               {-0.77991620, 2.92749357},
                                               {2.92524187, -0.78831965},
                                               {-2.14532586, -2.13917387},
                                               {-2.56430694, 1.61332507},
                                               {-0.11502692, -3.02741749},
                                               {-0.46282041, -1.05788972},
                                               {-3.01089228, -0.33617782},
                                               {1.21430737, 2.77559772},
                                               {1.14756954, 0.12813060}}};
constexpr std::array<Point, 13> middles_of_13{{{-0.96529254, -0.77205853},
                                               {-3.23259831, -0.14981357},
                                               {-1.14140900, 3.02808875},
                                               {-2.70328519, 1.77887188},
                                               {2.52716875, 2.02127536},
                                               {0.85644662, 3.12067864},
                                               {3.23259831, 0.14981360},
                                               {-0.43597953, 1.15662696},
                                               {1.23474268, 0.05722381},
                                               {-2.52716877, -2.02127534},
                                               {-0.85644665, -3.12067863},
                                               {0.70542958, -1.87146183},
                                               {2.70328520, -1.77887186}}};

std::vector<Point> ring(std::size_t count, double radius, double from = 0)
{
    std::vector<Point> points;
    for (std::size_t k = 0; k < count; ++k) {
        const double angle = from + 2 * std::acos(-1.0) * static_cast<double>(k) / static_cast<double>(count);
        points.push_back({radius * std::cos(angle), radius * std::sin(angle)});
    }
    return points;
}

// Middles of `count` unit circles in the smallest circle: plain rings, or rings around one.
std::vector<Point> pattern(std::size_t count)
{
    const double pi = std::acos(-1.0);
    if (count == 1) return {{}};
    if (count <= 6) return ring(count, 1 / std::sin(pi / static_cast<double>(count)));
    if (count <= 9) {
        std::vector<Point> points = ring(count - 1, std::max(2.0, 1 / std::sin(pi / static_cast<double>(count - 1))));
        points.emplace_back();
        return points;
    }
    const auto all = [](const auto& middles) { return std::vector<Point>(middles.begin(), middles.end()); };
    switch (count) {
    case 10: return all(middles_of_10);
    case 11: return all(middles_of_11);
    case 12: return all(middles_of_12);
    case 13: return all(middles_of_13);
    default: return {};
    }
}

Units real(Units side, const Load& load)
{
    return side - load.gap;
}

// By how much a pose misses the section (rounded up) and the length.
std::pair<Units, Units> misses(const Pose& pose, const Load& load, const Tube& tube)
{
    const Units x = real(pose.side[0], load), y = real(pose.side[1], load), z = real(pose.side[2], load);
    Units across = x;
    if (!pose.circle) {
        across = static_cast<Units>(std::sqrt(static_cast<double>(x * x + y * y)));
        while (across * across < x * x + y * y) ++across;
        while (across > 0 && (across - 1) * (across - 1) >= x * x + y * y) --across;
    }
    return {across - tube.diameter, z - tube.length};
}

bool fits_alone(const Pose& pose, const Load& load, const Tube& tube)
{
    const auto [across, along] = misses(pose, load, tube);
    return across <= 0 && along <= 0;
}

std::optional<Refusal> refuse_single(const Load& load, const Tube& tube)
{
    for (const Kind& kind : load.kinds) {
        if (kind.soft) continue;
        Units least = INT64_MAX;
        Reason reason = Reason::tube_section;
        for (const Pose& pose : kind.poses) {
            const auto [across, along] = misses(pose, load, tube);
            const Units worse = std::max(across, along);
            if (worse >= least) continue;
            least = worse;
            reason = across > 0 ? Reason::tube_section : Reason::edge;
        }
        if (least > 0) return refusal(reason, &kind, least);
    }
    return std::nullopt;
}

// The body of the pieces against a cylinder taken a little too large (π below 3.1416).
bool too_much(const Load& load, const Tube& tube)
{
    double sum = 0;
    for (const Piece& piece : load.pieces) {
        const Kind& kind = load.kinds[piece.kind];
        double least = kind.soft ? static_cast<double>(kind.soft_volume) : -1;
        for (std::size_t p = 0; !kind.soft && p < kind.poses.size(); ++p) {
            const Pose& pose = kind.poses[p];
            const Size s{{real(pose.side[0], load)}, {real(pose.side[1], load)}, {real(pose.side[2], load)}};
            const Volume v = pose.circle ? solid_volume(Cylinder{s.x, s.z}) : volume(s);
            if (least < 0 || static_cast<double>(v.units) < least) least = static_cast<double>(v.units);
        }
        sum += least;
    }
    const auto d = static_cast<double>(tube.diameter + load.gap), l = static_cast<double>(tube.length + load.gap);
    return sum > 0.7854 * d * d * l * (1 + 1e-12);
}

// Could the two lie in the tube in some way? Only round ones along it are judged side by side.
bool pair_possible(const Kind& a, const Kind& b, const Load& load, const Tube& tube)
{
    for (const Pose& p : a.poses) {
        if (!fits_alone(p, load, tube)) continue;
        for (const Pose& q : b.poses) {
            if (!fits_alone(q, load, tube)) continue;
            if (p.side[2] + q.side[2] <= tube.length + load.gap) return true;
            if (!p.circle || !q.circle || p.side[0] + q.side[0] <= tube.diameter + load.gap) return true;
        }
    }
    return false;
}

// All pieces can only lie along the tube and are at least `diameter` wide and `length` long (enlarged): at most
// ratio-many side by side, in as many layers as go one behind the other. (Cut the tube by `layers` sections less than a
// length apart: every piece is met by one.)
std::optional<Refusal> refuse_rolls(const Load& load, const Tube& tube)
{
    Units diameter = INT64_MAX, length = INT64_MAX;
    for (const Kind& kind : load.kinds) {
        if (kind.soft) return std::nullopt;
        for (const Pose& pose : kind.poses) {
            if (!fits_alone(pose, load, tube)) continue;
            if (!pose.circle) return std::nullopt;
            diameter = std::min(diameter, pose.side[0]);
            length = std::min(length, pose.side[2]);
        }
    }
    if (load.pieces.empty() || diameter <= 0 || length <= 0) return std::nullopt;
    const Units layers = (tube.length + load.gap) / length;
    const std::size_t in_one = (load.pieces.size() + static_cast<std::size_t>(layers) - 1) /
                               static_cast<std::size_t>(std::max<Units>(layers, 1));
    if ((tube.diameter + load.gap) * 1'000'000'000 < least_ratio(in_one) * diameter) {
        return refusal(Reason::tube_section);
    }
    return std::nullopt;
}

// Whole 0.1 mm places of `count` circles of diameter d in a circle of diameter D, both enlarged; empty when rounding
// leaves none.
std::vector<std::array<Units, 2>> circles_in(std::size_t count, Units d, Units D)
{
    const std::vector<Point> middles = pattern(count);
    if (middles.empty()) return {};
    double farthest = 0;
    for (const Point& p : middles) farthest = std::max(farthest, std::hypot(p.x, p.y));
    const double tight = static_cast<double>(d) / 2;
    const double loose = farthest > 0 ? static_cast<double>(D - d) / 2 / farthest : tight;
    if (D < d || loose < tight * (1 - 1e-9)) return {};
    constexpr int turns = 360;
    for (int turn = 0; turn < turns; ++turn) {
        const double scale = turn % 2 == 0 ? (tight + loose) / 2 : tight;
        const double angle = std::acos(-1.0) * turn / turns;
        std::vector<std::array<Units, 2>> at;
        for (const Point& p : middles) {
            const double x = p.x * std::cos(angle) - p.y * std::sin(angle);
            const double y = p.x * std::sin(angle) + p.y * std::cos(angle);
            at.push_back({std::llround(x * scale + static_cast<double>(D - d) / 2),
                          std::llround(y * scale + static_cast<double>(D - d) / 2)});
        }
        bool good = true;
        for (std::size_t i = 0; i < at.size(); ++i) {
            const Units x = 2 * at[i][0] + d - D, y = 2 * at[i][1] + d - D;
            good = good && x * x + y * y <= (D - d) * (D - d);
            for (std::size_t j = 0; j < i; ++j) {
                const Units dx = at[i][0] - at[j][0], dy = at[i][1] - at[j][1];
                good = good && dx * dx + dy * dy >= d * d;
            }
        }
        if (good) return at;
    }
    return {};
}

// Round pieces along the tube in columns side by side, each as wide as the widest piece; longest first into the
// column with most room.
std::optional<Arrangement> columns(const Load& load, const Tube& tube, Run& run)
{
    Units widest = 0;
    struct Long {
        std::size_t piece;
        std::uint32_t pose;
        Sides side;
    };
    std::vector<Long> pieces;
    for (std::size_t i = 0; i < load.pieces.size(); ++i) {
        const Kind& kind = load.kinds[load.pieces[i].kind];
        std::optional<std::uint32_t> chosen;
        for (std::uint32_t p = 0; p < kind.poses.size() && !kind.soft; ++p) {
            const Pose& pose = kind.poses[p];
            if (pose.circle && fits_alone(pose, load, tube) &&
                (!chosen || pose.side[0] < kind.poses[*chosen].side[0])) {
                chosen = p;
            }
        }
        if (!chosen) return std::nullopt;
        pieces.push_back({i, *chosen, kind.poses[*chosen].side});
        widest = std::max(widest, kind.poses[*chosen].side[0]);
    }
    std::stable_sort(pieces.begin(), pieces.end(), [](const Long& a, const Long& b) { return a.side[2] > b.side[2]; });
    for (std::size_t count = 1; count <= std::min<std::size_t>(ratios.size() - 1, pieces.size()); ++count) {
        if (!run.go_on(4)) return std::nullopt;
        if ((tube.diameter + load.gap) * 1'000'000'000 < least_ratio(count) * widest) break;
        const auto at = circles_in(count, widest, tube.diameter + load.gap);
        if (at.empty()) continue;
        std::vector<Units> filled(count, 0);
        Arrangement spots(load.pieces.size());
        bool good = true;
        for (const Long& l : pieces) {
            const auto column =
                static_cast<std::size_t>(std::min_element(filled.begin(), filled.end()) - filled.begin());
            const Units inset = (widest - l.side[0]) / 2;
            spots[l.piece] = {{at[column][0] + inset, at[column][1] + inset, filled[column]}, l.side, l.pose};
            filled[column] += l.side[2];
            good = good && filled[column] <= tube.length + load.gap;
        }
        if (good) return spots;
    }
    return std::nullopt;
}

// A bundle of blocks in a rectangle inscribed in the section.
std::optional<Arrangement> bundle(const Load& load, const Tube& tube, int tries, Run& run, const Accept& accept)
{
    Load flat = load; // widths that can occur: sums of edges along x
    for (Kind& kind : flat.kinds) {
        for (Pose& pose : kind.poses) std::swap(pose.side[0], pose.side[2]);
    }
    const std::vector<Units> widths = thicknesses(flat, tube.diameter);
    const std::size_t step = std::max<std::size_t>(1, widths.size() / 40);
    const auto odd = [](Units side, Units whole) { return (whole - side) / 2; }; // where it begins
    for (std::size_t k = 0; k < widths.size(); k += step) {
        const Units a = widths[k];
        const Units x = tube.diameter - 2 * odd(a, tube.diameter); // the farther side from the middle, doubled
        auto b = static_cast<Units>(
            std::sqrt(static_cast<double>(std::max<Units>(tube.diameter * tube.diameter - x * x, 0))));
        const auto outside = [&](Units side) {
            const Units y = tube.diameter - 2 * odd(side, tube.diameter);
            return x * x + y * y > tube.diameter * tube.diameter;
        };
        while (b > 0 && outside(b)) --b;
        if (b <= 0) continue;
        const Space space{{a + load.gap, b + load.gap, tube.length + load.gap}, Support::none, load.gap};
        const Units shift_x = odd(a, tube.diameter), shift_y = odd(b, tube.diameter);
        const auto shifted = [&](Arrangement spots) {
            for (Spot& spot : spots) spot.at[0] += shift_x, spot.at[1] += shift_y;
            return spots;
        };
        const auto found =
            find_quick(load, space, tries, run, [&](const Arrangement& s) { return accept(shifted(s)); });
        if (found) return shifted(*found);
        if (run.stopped()) break;
    }
    return std::nullopt;
}

} // namespace

std::int64_t least_ratio(std::size_t count)
{
    return count < ratios.size() ? ratios[count] : ratios.back(); // more circles never need less
}

std::optional<Refusal> refuse_tube(const Load& load, const Tube& tube)
{
    if (auto r = refuse_single(load, tube)) return r;
    if (too_much(load, tube)) return refusal(Reason::volume);
    for (std::size_t i = 0; i < load.pieces.size(); ++i) {
        const Kind& a = load.kinds[load.pieces[i].kind];
        for (std::size_t j = i + 1; j < load.pieces.size() && load.pieces.size() <= 40; ++j) {
            const Kind& b = load.kinds[load.pieces[j].kind];
            if (!a.soft && !b.soft && !pair_possible(a, b, load, tube)) return refusal(Reason::tube_section, &b);
        }
    }
    return refuse_rolls(load, tube);
}

std::optional<Arrangement> find_in_tube(const Load& load, const Tube& tube, int tries, Run& run, const Accept& accept)
{
    if (auto found = columns(load, tube, run)) {
        if (accept(*found)) return found;
    }
    return bundle(load, tube, tries, run, accept);
}

} // namespace stow::fitting
