#include "core/measure/shape.h"

#include "core/measure/overload.h"

#include <algorithm>
#include <cmath>

namespace stow {

namespace {

// Volume of a cylinder, π taken as 3.14159 so that it never exceeds the true value.
Volume cylinder_volume(Length d, Length h)
{
    const std::int64_t block = (d * d * h).units;
    return {block / 400'000 * 314'159 + block % 400'000 * 314'159 / 400'000};
}

Length cube_side(Volume v)
{
    auto side = static_cast<std::int64_t>(std::cbrt(static_cast<double>(v.units)));
    while (side * side * side < v.units) ++side;
    return {side};
}

} // namespace

Size sorted(const Size& s)
{
    std::array<Length, 3> edges{s.x, s.y, s.z};
    std::sort(edges.rbegin(), edges.rend());
    return {edges[0], edges[1], edges[2]};
}

Size bounding_size(const Shape& shape)
{
    return std::visit(Overload{[](const Block& b) { return b.size; },
                               [](const Cylinder& c) {
                                   return Size{c.diameter, c.diameter, c.height};
                               },
                               [](const Sheet& s) {
                                   return Size{s.length, s.width, s.thickness};
                               },
                               [](const Roll& r) {
                                   return Size{r.length, r.diameter, r.diameter};
                               },
                               [](const Soft& s) {
                                   const Length side = std::max(cube_side(s.volume), s.least);
                                   return Size{side, side, side};
                               }},
                      shape);
}

Volume solid_volume(const Shape& shape)
{
    return std::visit(Overload{[](const Block& b) { return volume(b.size); },
                               [](const Cylinder& c) { return cylinder_volume(c.diameter, c.height); },
                               [](const Sheet& s) { return s.length * s.width * s.thickness; },
                               [](const Roll& r) { return cylinder_volume(r.diameter, r.length); },
                               [](const Soft& s) { return s.volume; }},
                      shape);
}

std::vector<Size> turned_sizes(const Size& size, const Turns& turns)
{
    if (turns.rule == Turns::Rule::fixed) return {size};
    const std::array<Length, 3> edge{size.x, size.y, size.z};
    const Length least = std::min({size.x, size.y, size.z});
    const auto may_stand = [&](std::size_t i) {
        switch (turns.rule) {
        case Turns::Rule::any: return true;
        case Turns::Rule::upright: return i == 2;
        case Turns::Rule::flat: return edge[i] == least;
        case Turns::Rule::listed: return turns.vertical[i];
        case Turns::Rule::fixed: break;
        }
        return false;
    };
    std::vector<Size> sizes;
    for (std::size_t up = 3; up-- > 0;) {
        if (!may_stand(up)) continue;
        const Length a = edge[up == 0 ? 1 : 0];
        const Length b = edge[up == 2 ? 1 : 2];
        for (const Size& turned : {Size{a, b, edge[up]}, Size{b, a, edge[up]}}) {
            if (std::find(sizes.begin(), sizes.end(), turned) == sizes.end()) sizes.push_back(turned);
        }
    }
    return sizes;
}

std::string_view name_of(OuterKind kind)
{
    switch (kind) {
    case OuterKind::carton: return "carton";
    case OuterKind::gift_box: return "gift-box";
    case OuterKind::mailer: return "mailer";
    case OuterKind::padded_mailer: return "padded-mailer";
    case OuterKind::board_mailer: return "board-mailer";
    case OuterKind::tube: return "tube";
    }
    return {};
}

std::optional<OuterKind> outer_kind(std::string_view name)
{
    for (const OuterKind kind : all_outer_kinds) {
        if (name_of(kind) == name) return kind;
    }
    return std::nullopt;
}

Size closed_size(const OuterForm& form, Length t, std::optional<Length> height)
{
    Size size = form.outer;
    if (is_sleeve(form.kind)) size.z = std::max(form.outer.z, t + form.wall * 2);
    if (form.kind == OuterKind::board_mailer) size.z = std::max(form.outer.z, t + form.wall * 2);
    if (height) size.z = form.outer.z - (form.inner.z - *height);
    return size;
}

Volume closed_volume(const OuterForm& form, Length t, std::optional<Length> height)
{
    return volume(closed_size(form, t, height));
}

} // namespace stow
