#include "core/papers/flat_views.h"

#include <cmath>
#include <numeric>

namespace stow::papers {

namespace {

constexpr int hair = 12;

Fill tint_of(const Arrangement& a, std::size_t i, bool lit_up)
{
    const int tint = i < a.looks.size() ? a.looks[i].tint : 0;
    return {lit_up ? Role::highlight : goods_tint(tint), Shade::lit};
}

Path rectangle(Point at, Extent size, std::optional<Pen> pen, std::optional<Fill> fill)
{
    return {{at, {at.x + size.width, at.y}, {at.x + size.width, at.y + size.height}, {at.x, at.y + size.height}},
            true,
            pen,
            fill};
}

Path line(Point from, Point to, Pen pen)
{
    return {{from, to}, false, pen, std::nullopt};
}

Arc circle(Point centre, int radius, std::optional<Pen> pen, std::optional<Fill> fill)
{
    Arc arc;
    arc.centre = centre;
    arc.first = arc.second = radius;
    arc.pen = pen;
    arc.fill = fill;
    return arc;
}

// Two of the three sides of space, as they lie in a flat view: which runs across, which down, which towards the viewer.
struct Facing {
    fitting::Axis across, down, depth;
    bool down_grows_upwards = false; // z stands on the floor
};

Length along(const Size& size, fitting::Axis axis)
{
    switch (axis) {
    case fitting::Axis::x: return size.x;
    case fitting::Axis::y: return size.y;
    case fitting::Axis::z: return size.z;
    }
    return {};
}

struct Flat { // one flat view of the contents of an outer
    const Arrangement& arrangement;
    Facing facing;
    Scale scale;
    Point corner;               // of the view's rectangle on paper
    Extent size;                // of that rectangle
    const View* view = nullptr; // for layers, highlight and numbers; nothing: plain

    std::vector<std::size_t> shown_far_to_near() const
    {
        std::vector<std::size_t> order(arrangement.placements.size());
        std::iota(order.begin(), order.end(), std::size_t{0});
        if (view != nullptr && view->up_to_layer) {
            const std::vector<int> layer = layers(arrangement.placements);
            order.erase(std::remove_if(order.begin(), order.end(),
                                       [&](std::size_t i) { return layer[i] > *view->up_to_layer; }),
                        order.end());
        }
        std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
            const auto near_side = [&](std::size_t i) {
                const fitting::Placement& p = arrangement.placements[i];
                return along(p.at, facing.depth) + along(p.size, facing.depth);
            };
            return near_side(a) < near_side(b);
        });
        return order;
    }

    Point at(std::size_t i) const
    {
        const fitting::Placement& p = arrangement.placements[i];
        const int right = scale(along(p.at, facing.across));
        if (!facing.down_grows_upwards) return {corner.x + right, corner.y + scale(along(p.at, facing.down))};
        const Length top = along(p.at, facing.down) + along(p.size, facing.down);
        return {corner.x + right, corner.y + size.height - scale(top)};
    }
    Extent extent(std::size_t i) const
    {
        const fitting::Placement& p = arrangement.placements[i];
        return {scale(along(p.size, facing.across)), scale(along(p.size, facing.down))};
    }

    void draw(DisplayList& list, int pen_width) const
    {
        for (const std::size_t i : shown_far_to_near()) {
            const bool lit_up = view != nullptr && view->lit_up(i);
            const Pen pen{lit_up ? Role::accent : Role::ink, lit_up ? pen_width * 3 / 2 : pen_width, Pen::Dash::solid};
            const Extent e = extent(i);
            const Point p = at(i);
            if (arrangement.placements[i].axis == facing.depth) {
                const int radius = std::min(e.width, e.height) / 2;
                list.add(circle({p.x + e.width / 2, p.y + e.height / 2}, radius, pen, tint_of(arrangement, i, lit_up)));
            } else {
                list.add(rectangle(p, e, pen, tint_of(arrangement, i, lit_up)));
            }
        }
    }

    // A number stands on what can be seen of its thing, near the middle; beside it where the thing is too small.
    void number(DisplayList& list) const
    {
        const std::vector<int> count = numbers(arrangement.placements);
        const std::vector<int> layer = layers(arrangement.placements);
        const std::vector<std::size_t> order = shown_far_to_near();
        const int radius = view->number_size * 17 / 20;
        std::vector<Point> taken;
        for (std::size_t k = 0; k < order.size(); ++k) {
            if (view->number_layer && layer[order[k]] != *view->number_layer) continue;
            const Point centre = place_for_number(order, k, radius, taken);
            taken.push_back(centre);
            list.add(number_disc(centre, count[order[k]], view->number_size, view->lit_up(order[k])), {0, 0});
        }
    }

    Point place_for_number(const std::vector<std::size_t>& order, std::size_t k, int radius,
                           const std::vector<Point>& taken) const
    {
        const std::size_t i = order[k];
        const Extent e = extent(i);
        const Point middle{at(i).x + e.width / 2, at(i).y + e.height / 2};
        if (std::min(e.width, e.height) < 2 * radius && !crowded(taken, {middle.x, at(i).y - radius - 40}, radius)) {
            return {middle.x, at(i).y - radius - 40};
        }
        const auto hidden = [&](Point p) {
            for (std::size_t nearer = k + 1; nearer < order.size(); ++nearer) {
                const Point c = at(order[nearer]);
                const Extent size_of = extent(order[nearer]);
                if (p.x + radius > c.x && p.x - radius < c.x + size_of.width && p.y + radius > c.y &&
                    p.y - radius < c.y + size_of.height) {
                    return true;
                }
            }
            return false;
        };
        std::vector<Point> places;
        for (int u = 0; u <= 8; ++u) {
            for (int v = 0; v <= 8; ++v) {
                places.push_back({at(i).x + radius + (e.width - 2 * radius) * u / 8,
                                  at(i).y + radius + (e.height - 2 * radius) * v / 8});
            }
        }
        std::stable_sort(places.begin(), places.end(), [&](Point a, Point b) {
            return std::hypot(a.x - middle.x, a.y - middle.y) < std::hypot(b.x - middle.x, b.y - middle.y);
        });
        for (const Point p : places) {
            if (!hidden(p) && !crowded(taken, p, radius)) return p;
        }
        Point beside = middle; // wholly hidden: next to the numbers that lie over it
        while (crowded(taken, beside, radius)) beside.x += 2 * radius;
        return beside;
    }

    static bool crowded(const std::vector<Point>& taken, Point p, int radius)
    {
        return std::any_of(taken.begin(), taken.end(),
                           [&](Point t) { return std::hypot(t.x - p.x, t.y - p.y) < 2.1 * radius; });
    }
};

// The largest scale at which `real` fits `paper`, both sides counted.
Scale scale_into(Length across, Length down, Extent paper)
{
    const Scale by_width{paper.width, std::max<std::int64_t>(1, across.units)};
    const Scale by_height{paper.height, std::max<std::int64_t>(1, down.units)};
    const bool width_decides = by_width.numerator * by_height.denominator < by_height.numerator * by_width.denominator;
    return width_decides ? by_width : by_height;
}

Arrangement centred_in_sleeve(Arrangement a)
{
    if (a.placements.empty()) return a;
    Length left = a.placements[0].at.x, right = left, top = a.placements[0].at.y, bottom = top;
    for (const fitting::Placement& p : a.placements) {
        left = std::min(left, p.at.x);
        right = std::max(right, p.at.x + p.size.x);
        top = std::min(top, p.at.y);
        bottom = std::max(bottom, p.at.y + p.size.y);
    }
    for (fitting::Placement& p : a.placements) {
        p.at.x += Length{(a.form.inner.x.units - (right - left).units) / 2} - left;
        p.at.y += Length{(a.form.inner.y.units - (bottom - top).units) / 2} - top;
    }
    return a;
}

} // namespace

int Scale::operator()(Length real) const
{
    return static_cast<int>((real.units * numerator + denominator / 2) / denominator);
}

Scale common_scale(const std::vector<Size>& closed, Extent extent, int between)
{
    Length wide, high;
    for (const Size& size : closed) {
        wide += std::max(size.x, size.y);
        high = std::max(high, size.z);
    }
    const int gaps = between * std::max(0, static_cast<int>(closed.size()) - 1);
    return scale_into(wide, high, {std::max(1, extent.width - gaps), extent.height});
}

DisplayList draw_sleeve(const Arrangement& given, const View& view)
{
    const Arrangement a = centred_in_sleeve(given);
    const Length flap{a.form.inner.y.units / 4};
    const Length thickness = a.contents_thickness + a.form.wall * 2;
    const int gap = 400, margin = view.pen;
    const Extent room{view.extent.width - 2 * margin, view.extent.height - gap - 2 * margin};
    const Scale scale = scale_into(a.form.inner.x + flap, a.form.inner.y + thickness, room);
    const Extent bag{scale(a.form.inner.x), scale(a.form.inner.y)};
    const int depth = std::max(scale(thickness), 2 * view.pen);
    DisplayList list;
    list.extent = view.extent;
    const Point at{(view.extent.width - bag.width - scale(flap)) / 2,
                   (view.extent.height - bag.height - gap - depth) / 2};

    const Pen pen{Role::ink, view.pen, Pen::Dash::solid};
    const int slant = scale(flap) / 3, right = at.x + bag.width;
    const std::vector<Point> flap_outline{{right, at.y},
                                          {right + scale(flap), at.y + slant},
                                          {right + scale(flap), at.y + bag.height - slant},
                                          {right, at.y + bag.height}};
    list.add(Path{flap_outline, true, std::nullopt, Fill{Role::board, Shade::half}});
    list.add(Path{flap_outline, false, pen, std::nullopt});
    list.add(rectangle(at, bag, std::nullopt, Fill{Role::board, Shade::lit}));
    list.add(
        Path{{{right, at.y}, at, {at.x, at.y + bag.height}, {right, at.y + bag.height}}, false, pen, std::nullopt});
    list.add(line({right, at.y}, {right, at.y + bag.height}, {Role::ink, view.pen, Pen::Dash::dashed}));
    const Flat above{a, {fitting::Axis::x, fitting::Axis::y, fitting::Axis::z}, scale, at, bag, &view};
    above.draw(list, view.pen);
    if (view.number_items) above.number(list);

    // Closed, from its edge: as thick as the contents in the middle, thin at both ends.
    const int middle = at.y + bag.height + gap + depth / 2, taper = bag.width / 10;
    list.add(Path{{{at.x, middle},
                   {at.x + taper, middle - depth / 2},
                   {right - taper, middle - depth / 2},
                   {right, middle},
                   {right - taper, middle + depth / 2},
                   {at.x + taper, middle + depth / 2}},
                  true,
                  pen,
                  Fill{Role::board, Shade::lit}});
    return list;
}

DisplayList draw_tube(const Arrangement& a, const View& view)
{
    const Length diameter = a.form.inner.x, length = a.form.inner.z;
    const int gap = 900, margin = 2 * view.pen;
    // The section is drawn at the same scale, so that both can be measured.
    const Extent room{view.extent.width - gap - margin, view.extent.height - margin};
    const Scale scale = scale_into(length + diameter + diameter, diameter, room);
    const Extent pipe{scale(length), scale(diameter)};
    const int cap = pipe.height / 6; // half width of the ends, seen a little from the side
    DisplayList list;
    list.extent = view.extent;
    const Point at{(view.extent.width - pipe.width - gap - pipe.height) / 2, (view.extent.height - pipe.height) / 2};
    const Pen pen{Role::ink, view.pen, Pen::Dash::solid}, dashed{Role::ink, view.pen, Pen::Dash::dashed};

    list.add(rectangle(at, pipe, std::nullopt, Fill{Role::board, Shade::lit}));
    const int axis_y = at.y + pipe.height / 2;
    Arc end;
    end.first = cap;
    end.second = pipe.height / 2;
    end.centre = {at.x, axis_y};
    end.pen = pen;
    end.fill = Fill{Role::board, Shade::half};
    list.add(end);
    const Flat side{a, {fitting::Axis::z, fitting::Axis::y, fitting::Axis::x}, scale, at, pipe, &view};
    side.draw(list, view.pen);
    list.add(line(at, {at.x + pipe.width, at.y}, dashed));
    list.add(line({at.x, at.y + pipe.height}, {at.x + pipe.width, at.y + pipe.height}, dashed));
    end.centre.x = at.x + pipe.width;
    end.fill.reset();
    end.pen = dashed;
    list.add(end);
    const Point corner{at.x + pipe.width + gap, at.y};
    list.add(circle({corner.x + pipe.height / 2, axis_y}, pipe.height / 2, pen, Fill{Role::board, Shade::lit}));
    const Flat section{
        a, {fitting::Axis::x, fitting::Axis::y, fitting::Axis::z}, scale, corner, {pipe.height, pipe.height}, &view};
    section.draw(list, view.pen);
    if (!view.number_items) return list;
    // The section tells the things apart best; on small tubes their numbers only have room on the side view.
    const bool roomy = std::all_of(a.placements.begin(), a.placements.end(), [&](const fitting::Placement& p) {
        return scale(std::min(p.size.x, p.size.y)) > 2 * view.number_size;
    });
    (roomy ? section : side).number(list);
    return list;
}

DisplayList side_view(const Arrangement& given, const Scale& scale, Standing standing, std::optional<Size> stayed_out)
{
    const bool tube = given.form.kind == OuterKind::tube;
    const Arrangement a = is_sleeve(given.form.kind) ? centred_in_sleeve(given) : given;
    const Size closed = closed_size(a.form, a.contents_thickness, a.cut_height);
    // The long side faces the viewer; a tube lies.
    Facing facing{fitting::Axis::x, fitting::Axis::z, fitting::Axis::y, true};
    if (closed.y > closed.x) facing = {fitting::Axis::y, fitting::Axis::z, fitting::Axis::x, true};
    if (tube) facing = {fitting::Axis::z, fitting::Axis::y, fitting::Axis::x, true};
    const Extent body{std::max(1, scale(along(closed, facing.across))), std::max(1, scale(along(closed, facing.down)))};
    DisplayList list;
    list.extent = body;

    const bool passed_over = standing == Standing::passed_over;
    const Pen pen = standing == Standing::chosen
                        ? Pen{Role::accent, 40, Pen::Dash::solid}
                        : Pen{Role::second_ink, 20, passed_over ? Pen::Dash::dashed : Pen::Dash::solid};
    const Fill fill{passed_over ? Role::sheet : Role::board, Shade::lit};
    list.add(rectangle({0, 0}, body, std::nullopt, fill));
    // Contents count from the inner corner: half the difference of outer and inner away, on the floor's thickness.
    const Size inner = a.form.inner;
    Length side = Length{(along(closed, facing.across) - along(inner, facing.across)).units / 2};
    Length floor = a.form.wall;
    if (!is_sleeve(a.form.kind) && a.form.kind != OuterKind::board_mailer) {
        floor = Length{(along(a.form.outer, facing.down) - along(inner, facing.down)).units / 2};
    }
    side = std::max(side, Length{});
    const Flat view{a, facing, scale, {scale(side), 0}, {body.width, body.height - scale(std::max(floor, Length{}))}};
    view.draw(list, hair);
    list.add(rectangle({0, 0}, body, pen, std::nullopt));
    if (passed_over) {
        const int arm = std::max(60, std::min(body.width, body.height) / 8);
        const Point c{body.width / 2, body.height / 2};
        const Pen cross{Role::brick, 30, Pen::Dash::solid};
        list.add(line({c.x - arm, c.y - arm}, {c.x + arm, c.y + arm}, cross));
        list.add(line({c.x - arm, c.y + arm}, {c.x + arm, c.y - arm}, cross));
        if (stayed_out) {
            const Extent out{scale(std::max(stayed_out->x, stayed_out->y)), scale(stayed_out->z)};
            const int beside = body.width + 150;
            list.add(rectangle({beside, body.height - out.height}, out, Pen{Role::brick, 20, Pen::Dash::solid},
                               Fill{Role::sheet, Shade::lit}));
            list.extent = {beside + out.width, std::max(body.height, out.height)};
            if (out.height > body.height) {
                DisplayList lowered;
                lowered.extent = list.extent;
                lowered.add(list, {0, out.height - body.height});
                return lowered;
            }
        }
    }
    return list;
}

} // namespace stow::papers
