#include "core/paperbox/net.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

namespace stow::paperbox {

namespace {

constexpr double root_two = 1.41421356237309504880;

double units(Length l)
{
    return static_cast<double>(l.units);
}
Length rounded(double tenths)
{
    return {std::llround(tenths)};
}
Length up(double tenths)
{
    return {static_cast<std::int64_t>(std::ceil(tenths - 1e-6))};
}

constexpr std::array<std::pair<Kind, std::string_view>, 5> names{{{Kind::one_square, "one-square"},
                                                                  {Kind::tray, "tray"},
                                                                  {Kind::lid, "lid"},
                                                                  {Kind::pillow, "pillow"},
                                                                  {Kind::envelope, "envelope"}}};

void line(Net& net, Stroke stroke, Spot from, Spot to, Length bulge = {})
{
    net.marks.push_back({stroke, from, to, bulge});
}

// A square turned by 45°: u along the box, v across it, from its middle; the sheet is |u| + |v| <= side/√2.
class Turned {
public:
    explicit Turned(Length side) : half_(units(side) / 2), reach_(units(side) / root_two) {}

    double reach() const { return reach_; }
    Spot at(double u, double v) const
    {
        return {rounded(half_ + (u - v) / root_two), rounded(half_ + (u + v) / root_two)};
    }
    // A score from edge to edge, where v (or u) has this value.
    void score_across(Net& net, double v) const
    {
        const double end = reach_ - std::abs(v);
        if (end > 0) line(net, Stroke::score, at(-end, v), at(end, v));
    }
    void score_along(Net& net, double u) const
    {
        const double end = reach_ - std::abs(u);
        if (end > 0) line(net, Stroke::score, at(u, -end), at(u, end));
    }

private:
    double half_, reach_;
};

Net square(const Wanted& wanted)
{
    const double w = units(wanted.size.x), d = units(wanted.size.y), h = units(wanted.size.z);
    Net net;
    net.kind = wanted.kind;
    net.length = net.width = square_side(wanted.size, wanted.overlap);
    const Turned turned(net.length);
    for (const double sign : {-1.0, 1.0}) {
        turned.score_across(net, sign * d / 2);
        turned.score_along(net, sign * w / 2);
        if (h <= 0) continue;
        turned.score_across(net, sign * (d / 2 + h));
        turned.score_along(net, sign * (w / 2 + h));
    }
    const double first = d / root_two + units(wanted.overlap) / 2;
    net.edge_marks.push_back(rounded(first));
    if (h > 0) net.edge_marks.push_back(rounded(first + h * root_two));
    // The flap over the long side may be longer than the box is wide.
    const double long_flap = turned.reach() - std::min(w, d) / 2 - h;
    net.trim = up(std::max(long_flap - std::min(w, d), 0.0));
    return net;
}

// Walls all around; the corners are slit along the long sides, and the squares glued inside.
Net tray(const Wanted& wanted)
{
    const bool lid = wanted.kind == Kind::lid;
    const Length more = lid ? wanted.allowance : Length{};
    const Length w = wanted.size.x + more, d = wanted.size.y + more, h = wanted.size.z;
    Net net;
    net.kind = wanted.kind;
    net.length = w + h * 2;
    net.width = d + h * 2;
    for (const Length y : {h, h + d}) line(net, Stroke::score, {{}, y}, {net.length, y});
    for (const Length x : {h, h + w}) {
        line(net, Stroke::score, {x, h}, {x, h + d});
        line(net, Stroke::cut, {x, {}}, {x, h});
        line(net, Stroke::cut, {x, h + d}, {x, net.width});
    }
    return net;
}

Net pillow_net(const Wanted& wanted)
{
    const Length l = wanted.size.x, w = wanted.size.y, s = wanted.size.z;
    Net net;
    net.kind = Kind::pillow;
    net.length = w * 2 + wanted.glue_flap;
    net.width = l + s * 2;
    const Length top = s, bottom = s + l;
    for (const Length x : {Length{}, w}) {
        // Outer edges bulge out, folds in; walking to the right, out at the top is to the left.
        line(net, Stroke::cut, {x, top}, {x + w, top}, s);
        line(net, Stroke::score, {x, top}, {x + w, top}, -s);
        line(net, Stroke::cut, {x, bottom}, {x + w, bottom}, -s);
        line(net, Stroke::score, {x, bottom}, {x + w, bottom}, s);
    }
    line(net, Stroke::score, {w, top}, {w, bottom});
    line(net, Stroke::score, {w * 2, top}, {w * 2, bottom});
    line(net, Stroke::cut, {{}, top}, {{}, bottom});
    // The glue flap is cut back at both ends so that it slides in.
    const Length end = net.length, back = wanted.glue_flap;
    line(net, Stroke::cut, {w * 2, top}, {end, top + back});
    line(net, Stroke::cut, {end, top + back}, {end, bottom - back});
    line(net, Stroke::cut, {end, bottom - back}, {w * 2, bottom});
    return net;
}

} // namespace

std::string_view name_of(Kind kind)
{
    for (const auto& [known, name] : names) {
        if (known == kind) return name;
    }
    return {};
}

std::optional<Kind> kind(std::string_view name)
{
    for (const auto& [value, known] : names) {
        if (known == name) return value;
    }
    return std::nullopt;
}

Length square_side(const Size& size, Length overlap)
{
    return up(units(size.x + size.y + size.z * 2) / root_two) + overlap;
}

Pillow pillow(const Size& size)
{
    const double w = units(size.y), s = units(size.z);
    return {rounded((w * w / 4 + s * s) / (2 * s)), size.z * 2, rounded(w - 8 * s * s / (3 * w)), size.x - size.z * 2};
}

Laid lay(const Wanted& wanted)
{
    const Size& size = wanted.size;
    const bool flat = wanted.kind == Kind::envelope;
    if (size.x <= Length{} || size.y <= Length{} || (size.z <= Length{}) != flat) return {std::nullopt, Fault::no_size};
    switch (wanted.kind) {
    case Kind::tray:
    case Kind::lid: return {tray(wanted), {}};
    case Kind::pillow:
        if (size.z * 4 > size.y || size.z * 3 > size.x) return {std::nullopt, Fault::too_bulged};
        return {pillow_net(wanted), {}};
    case Kind::one_square:
    case Kind::envelope: break;
    }
    Net net = square(wanted);
    // Cut off at the far edge the long flaps still meet; much longer ones would wrap down again.
    if (net.trim > std::min(size.x, size.y)) return {std::nullopt, Fault::flaps_miss};
    return {std::move(net), {}};
}

std::vector<Wanted> pieces_of(const Wanted& wanted)
{
    std::vector<Wanted> pieces{wanted};
    if (wanted.kind == Kind::tray) pieces.push_back({Kind::lid, wanted.size});
    return pieces;
}

Size room_in(const Wanted& wanted)
{
    if (wanted.kind != Kind::pillow) return wanted.size;
    // t = 2s (1 − (b/chord)²) of a block b wide: 0.51 of 2s for seven tenths.
    const Pillow p = pillow(wanted.size);
    return {p.usable_length, {p.chord.units * 7 / 10}, {p.thickness.units * 51 / 100}};
}

std::optional<Wanted> around(Kind kind, const Size& contents, Length ease)
{
    Wanted wanted{kind, {contents.x + ease * 2, contents.y + ease * 2, contents.z + ease * 2}};
    switch (kind) {
    case Kind::one_square:
    case Kind::tray: return wanted;
    case Kind::envelope:
        wanted.size = {contents.x + ease * 2 + contents.z, contents.y + ease * 2 + contents.z, {}};
        wanted.overlap = mm(15);
        return wanted;
    case Kind::lid: return std::nullopt;
    case Kind::pillow: break;
    }
    // Thickness first, then the width that leaves seven tenths of the chord for the contents.
    const Size flat = sorted(wanted.size);
    const Length s = up(units(flat.z) * 100 / 102);
    Length w = up(units(flat.y) * 10 / 7);
    while (s * 4 > w || room_in({kind, {flat.x + s * 2, w, s}}).y < flat.y) w += tenth_mm(1);
    wanted.size = {flat.x + s * 2, w, s};
    while (room_in(wanted).z < flat.z) wanted.size.z += tenth_mm(1);
    wanted.size.x = flat.x + wanted.size.z * 2;
    while (wanted.size.z * 4 > wanted.size.y || room_in(wanted).y < flat.y) wanted.size.y += tenth_mm(1);
    return wanted;
}

Length ribbon(const Size& box, Length loop, Length tail)
{
    return box.x * 2 + box.y * 2 + box.z * 4 + loop * 4 + tail * 2 + mm(40);
}

WrapSheet wrap_around(const Size& box, Length spare)
{
    const Size s = sorted(box);
    return {s.x + s.z + spare, (s.y + s.z) * 2 + spare};
}

Length wrap_diagonal(const Size& box, Length overlap)
{
    const Size s = sorted(box);
    return square_side(s, overlap);
}

} // namespace stow::paperbox
