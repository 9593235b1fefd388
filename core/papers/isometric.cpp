#include "core/papers/drawing.h"
#include "core/papers/flat_views.h"
#include "core/papers/isometry.h"

#include <numeric>

namespace stow::papers {

namespace {

constexpr int thin = 12;

using Corner = std::array<double, 3>;

Corner corner(double x, double y, double z)
{
    return {x, y, z};
}

class Sketch {
public:
    Sketch(const Arrangement& arrangement, const View& view)
        : arrangement_(arrangement), view_(view), inner_(inner_of(arrangement)), drawn_(lifted())
    {
        list_.extent = view.extent;
        const double across = static_cast<double>((inner_.x + inner_.y).units);
        const double tall = height();
        const double upright = across / 2 + tall;
        const int margin = 2 * view.pen;
        to_paper_.scale =
            std::min((view.extent.width - margin) / (across * cos_30), (view.extent.height - margin) / upright);
        // Centred; the back corner of the floor is the origin of space.
        const double left = static_cast<double>(inner_.y.units) * cos_30 * to_paper_.scale;
        const double top = tall * to_paper_.scale;
        to_paper_.origin = {(view.extent.width - across * cos_30 * to_paper_.scale) / 2 + left,
                            (view.extent.height - upright * to_paper_.scale) / 2 + top};
    }

    DisplayList draw()
    {
        far_walls();
        const std::vector<Part> parts = painting_order(drawn_, shown());
        for (const Part& part : parts) {
            way_down(part);
            if (drawn_[part.whole].axis)
                round(part.whole);
            else
                block(part);
        }
        near_edges();
        if (view_.number_items) number(parts);
        return std::move(list_);
    }

private:
    static Size inner_of(const Arrangement& a)
    {
        Size inner = a.form.inner;
        if (a.cut_height) inner.z = *a.cut_height;
        if (a.form.kind == OuterKind::board_mailer && a.contents_thickness.units > 0) inner.z = a.contents_thickness;
        return inner;
    }

    // Where each placement is drawn. A layer's lift shows half of what lies beneath: more would make all small.
    std::vector<fitting::Placement> lifted() const
    {
        std::vector<fitting::Placement> placements = arrangement_.placements;
        const std::vector<int> layer = layers(placements);
        const double a_layer = view_.apart * static_cast<double>((inner_.x + inner_.y).units) / 4;
        for (std::size_t i = 0; i < layer.size(); ++i) {
            placements[i].at.z += Length{std::llround(a_layer * (layer[i] - 1))};
        }
        return placements;
    }
    // Of all that is drawn above the back corner of the floor, on paper, in units of space. What stands further to the
    // front comes to lie lower.
    double height() const
    {
        auto top = static_cast<double>(inner_.z.units);
        for (const fitting::Placement& p : drawn_) {
            const auto lower = static_cast<double>((p.at.x + p.at.y).units) / 2;
            top = std::max(top, static_cast<double>((p.at.z + p.size.z).units) - lower);
        }
        return top;
    }

    // From the foot of what was lifted to where it goes.
    void way_down(const Part& part)
    {
        const fitting::Placement &up = drawn_[part.whole], &down = arrangement_.placements[part.whole];
        if (up.at.z == down.at.z || part.at.z != up.at.z) return;
        const Solid from = solid_of(up.at, up.size), to = solid_of(down.at, down.size);
        const auto at = [](std::int64_t x, std::int64_t y, std::int64_t z) {
            return corner(static_cast<double>(x), static_cast<double>(y), static_cast<double>(z));
        };
        const Pen pen{Role::accent, thin, Pen::Dash::dashed};
        if (up.axis) { // a round good has no corners: from its middle
            const std::int64_t x = (from.low[0] + from.high[0]) / 2, y = (from.low[1] + from.high[1]) / 2;
            return line(at(x, y, from.low[2]), at(x, y, to.low[2]), pen);
        }
        line(at(from.low[0], from.high[1], from.low[2]), at(to.low[0], to.high[1], to.low[2]), pen);
        line(at(from.high[0], from.high[1], from.low[2]), at(to.high[0], to.high[1], to.low[2]), pen);
        line(at(from.high[0], from.low[1], from.low[2]), at(to.high[0], to.low[1], to.low[2]), pen);
    }

    std::vector<std::size_t> shown() const
    {
        const std::vector<int> layer = layers(arrangement_.placements);
        std::vector<std::size_t> indices;
        for (std::size_t i = 0; i < layer.size(); ++i) {
            if (!view_.up_to_layer || layer[i] <= *view_.up_to_layer) indices.push_back(i);
        }
        return indices;
    }

    Arrangement::Looks looks(std::size_t i) const
    {
        return i < arrangement_.looks.size() ? arrangement_.looks[i] : Arrangement::Looks{};
    }
    bool lit_up(std::size_t i) const { return view_.lit_up(i); }
    Role tint(std::size_t i) const { return lit_up(i) ? Role::highlight : goods_tint(looks(i).tint); }
    Pen outline(std::size_t i) const
    {
        return lit_up(i) ? Pen{Role::accent, view_.pen * 3 / 2, Pen::Dash::solid}
                         : Pen{Role::ink, view_.pen, Pen::Dash::solid};
    }

    Point place(const Corner& c) const { return to_paper_(c[0], c[1], c[2]); }
    void face(std::initializer_list<Corner> corners, Fill fill)
    {
        Path path{{}, true, std::nullopt, fill};
        for (const Corner& c : corners) path.points.push_back(place(c));
        list_.add(std::move(path));
    }
    void line(const Corner& from, const Corner& to, Pen pen)
    {
        list_.add(Path{{place(from), place(to)}, false, pen, std::nullopt});
    }

    double x() const { return static_cast<double>(inner_.x.units); }
    double y() const { return static_cast<double>(inner_.y.units); }
    double z() const { return static_cast<double>(inner_.z.units); }

    void far_walls()
    {
        face({corner(0, 0, 0), corner(0, y(), 0), corner(0, y(), z()), corner(0, 0, z())}, {Role::board, Shade::half});
        face({corner(0, 0, 0), corner(x(), 0, 0), corner(x(), 0, z()), corner(0, 0, z())}, {Role::board, Shade::lit});
        face({corner(0, 0, 0), corner(x(), 0, 0), corner(x(), y(), 0), corner(0, y(), 0)},
             {Role::board, Shade::shaded});
        if (view_.filler) {
            hatch({0, 0, 0}, {0, y(), 0}, {0, 0, z()});
            hatch({0, 0, 0}, {x(), 0, 0}, {0, 0, z()});
            hatch({0, 0, 0}, {x(), 0, 0}, {0, y(), 0});
        }
        const Pen pen{Role::second_ink, view_.pen * 3 / 4, Pen::Dash::solid};
        line({0, 0, 0}, {x(), 0, 0}, pen);
        line({0, 0, 0}, {0, y(), 0}, pen);
        line({0, 0, 0}, {0, 0, z()}, pen);
        line({0, 0, z()}, {x(), 0, z()}, pen);
        line({0, 0, z()}, {0, y(), z()}, pen);
        line({x(), 0, 0}, {x(), 0, z()}, pen);
        line({0, y(), 0}, {0, y(), z()}, pen);
        const Pen near_pen{Role::ink, view_.pen * 3 / 4, Pen::Dash::dashed};
        line({x(), 0, 0}, {x(), y(), 0}, near_pen);
        line({0, y(), 0}, {x(), y(), 0}, near_pen);
    }

    // Light strokes across the parallelogram that `a` and `b` span from `from`, 3 mm apart, each broken in the middle.
    void hatch(const Corner& from, const Corner& a, const Corner& b)
    {
        const Spot o = to_paper_.exact(from[0], from[1], from[2]);
        const Spot pa = to_paper_.exact(a[0], a[1], a[2]), pb = to_paper_.exact(b[0], b[1], b[2]);
        const double length_a = std::hypot(pa.x - o.x, pa.y - o.y), length_b = std::hypot(pb.x - o.x, pb.y - o.y);
        if (length_a < 1 || length_b < 1) return;
        const Pen pen{Role::second_ink, thin * 2 / 3, Pen::Dash::solid};
        const auto at = [&](double u, double v) {
            return Point{
                static_cast<int>(std::lround(o.x + (pa.x - o.x) * u / length_a + (pb.x - o.x) * v / length_b)),
                static_cast<int>(std::lround(o.y + (pa.y - o.y) * u / length_a + (pb.y - o.y) * v / length_b))};
        };
        constexpr double step = 300, stroke = 130;
        bool odd = false;
        for (double u = step / 2; u + stroke < length_a; u += step) {
            for (double v = step / (odd ? 1.2 : 2.4); v + stroke < length_b; v += step) {
                list_.add(Path{{at(u, v), at(u + stroke, v + stroke)}, false, pen, std::nullopt});
            }
            odd = !odd;
        }
    }

    void near_edges()
    {
        const Pen pen{Role::ink, view_.pen, Pen::Dash::dashed};
        line({x(), 0, z()}, {x(), y(), z()}, pen);
        line({0, y(), z()}, {x(), y(), z()}, pen);
        line({x(), y(), 0}, {x(), y(), z()}, pen);
    }

    void block(const Part& part)
    {
        const fitting::Placement& whole = drawn_[part.whole];
        const Solid s = solid_of(part.at, part.size), w = solid_of(whole.at, whole.size);
        const auto low = [&](std::size_t k) { return static_cast<double>(s.low[k]); };
        const auto high = [&](std::size_t k) { return static_cast<double>(s.high[k]); };
        const double x0 = low(0), y0 = low(1), z0 = low(2), x1 = high(0), y1 = high(1), z1 = high(2);
        const Role role = tint(part.whole);
        face({corner(x0, y1, z0), corner(x1, y1, z0), corner(x1, y1, z1), corner(x0, y1, z1)}, {role, Shade::half});
        face({corner(x1, y0, z0), corner(x1, y1, z0), corner(x1, y1, z1), corner(x1, y0, z1)}, {role, Shade::shaded});
        face({corner(x0, y0, z1), corner(x1, y0, z1), corner(x1, y1, z1), corner(x0, y1, z1)}, {role, Shade::lit});
        if (s.high == w.high) second_outline(part.whole, w);

        // Edges of the whole only: a cut shows no line.
        const bool left = s.low[0] == w.low[0], right = s.high[0] == w.high[0];
        const bool back = s.low[1] == w.low[1], front = s.high[1] == w.high[1];
        const bool floor = s.low[2] == w.low[2], top = s.high[2] == w.high[2];
        const Pen pen = outline(part.whole);
        if (top && back) line({x0, y0, z1}, {x1, y0, z1}, pen);
        if (top && front) line({x0, y1, z1}, {x1, y1, z1}, pen);
        if (top && left) line({x0, y0, z1}, {x0, y1, z1}, pen);
        if (top && right) line({x1, y0, z1}, {x1, y1, z1}, pen);
        if (floor && front) line({x0, y1, z0}, {x1, y1, z0}, pen);
        if (floor && right) line({x1, y0, z0}, {x1, y1, z0}, pen);
        if (left && front) line({x0, y1, z0}, {x0, y1, z1}, pen);
        if (right && front) line({x1, y1, z0}, {x1, y1, z1}, pen);
        if (right && back) line({x1, y0, z0}, {x1, y0, z1}, pen);
    }

    // The wrap as a second line inside the top face; a ribbon round a gift box.
    void second_outline(std::size_t i, const Solid& w)
    {
        const auto low = [&](std::size_t k) { return static_cast<double>(w.low[k]); };
        const auto high = [&](std::size_t k) { return static_cast<double>(w.high[k]); };
        const double in = static_cast<double>(looks(i).wrap.units), top = high(2);
        if (in > 0 && high(0) - low(0) > 3 * in && high(1) - low(1) > 3 * in) {
            Path inner{{}, true, Pen{Role::second_ink, thin, Pen::Dash::solid}, std::nullopt};
            for (const Corner& c : {corner(low(0) + in, low(1) + in, top), corner(high(0) - in, low(1) + in, top),
                                    corner(high(0) - in, high(1) - in, top), corner(low(0) + in, high(1) - in, top)}) {
                inner.points.push_back(place(c));
            }
            list_.add(std::move(inner));
        }
        if (looks(i).ribbon) {
            const double mx = (low(0) + high(0)) / 2, my = (low(1) + high(1)) / 2;
            const Pen pen{Role::accent, view_.pen * 2, Pen::Dash::solid};
            list_.add(Path{{place({mx, low(1), top}), place({mx, high(1), top}), place({mx, high(1), low(2)})},
                           false,
                           pen,
                           std::nullopt});
            list_.add(Path{{place({low(0), my, top}), place({high(0), my, top}), place({high(0), my, low(2)})},
                           false,
                           pen,
                           std::nullopt});
        }
    }

    // A circle in a face of the isometric cube is an ellipse with half axes r·√(3/2) and r·√(1/2), the short one along
    // the projected normal of the face.
    struct Cap {
        double near_x = 0, near_y = 0, far_x = 0, far_y = 0; // centres on paper
        double radius = 0;                                   // on paper, along an axis
        int turn = 0;                                        // of the long half axis, degrees
        bool far_is_up = false;                              // the far side lies towards the second half axis
    };
    Cap cap_of(const fitting::Placement& p) const
    {
        const auto mid = [](Length at, Length size) {
            return static_cast<double>(at.units) + static_cast<double>(size.units) / 2;
        };
        const auto low = [](Length at) { return static_cast<double>(at.units); };
        const auto high = [](Length at, Length size) { return static_cast<double>((at + size).units); };
        const double cx = mid(p.at.x, p.size.x), cy = mid(p.at.y, p.size.y), cz = mid(p.at.z, p.size.z);
        Cap cap;
        Spot near_spot, far_spot;
        Length diameter;
        switch (*p.axis) {
        case fitting::Axis::z:
            near_spot = to_paper_.exact(cx, cy, high(p.at.z, p.size.z));
            far_spot = to_paper_.exact(cx, cy, low(p.at.z));
            diameter = std::min(p.size.x, p.size.y);
            break;
        case fitting::Axis::x:
            near_spot = to_paper_.exact(high(p.at.x, p.size.x), cy, cz);
            far_spot = to_paper_.exact(low(p.at.x), cy, cz);
            diameter = std::min(p.size.y, p.size.z);
            cap.turn = 60;
            cap.far_is_up = true;
            break;
        case fitting::Axis::y:
            near_spot = to_paper_.exact(cx, high(p.at.y, p.size.y), cz);
            far_spot = to_paper_.exact(cx, low(p.at.y), cz);
            diameter = std::min(p.size.x, p.size.z);
            cap.turn = -60;
            cap.far_is_up = true;
            break;
        }
        cap.near_x = near_spot.x;
        cap.near_y = near_spot.y;
        cap.far_x = far_spot.x;
        cap.far_y = far_spot.y;
        cap.radius = static_cast<double>(diameter.units) / 2 * to_paper_.scale;
        return cap;
    }

    void round(std::size_t i)
    {
        const fitting::Placement& p = drawn_[i];
        const Cap cap = cap_of(p);
        const double turn = cap.turn * std::acos(-1.0) / 180;
        const double first = cap.radius * std::sqrt(1.5), second = cap.radius * std::sqrt(0.5);
        const auto on_ellipse = [&](double cx, double cy, double angle) {
            const double u = first * std::cos(angle), v = second * std::sin(angle);
            return Point{static_cast<int>(std::lround(cx + u * std::cos(turn) - v * std::sin(turn))),
                         static_cast<int>(std::lround(cy - u * std::sin(turn) - v * std::cos(turn)))};
        };
        const double pi = std::acos(-1.0), from = cap.far_is_up ? 0 : pi;
        const bool upright = *p.axis == fitting::Axis::z;
        Path body{{}, true, std::nullopt, Fill{tint(i), upright ? Shade::half : Shade::lit}};
        body.points.push_back(on_ellipse(cap.near_x, cap.near_y, from));
        constexpr int steps = 48;
        for (int k = 0; k <= steps; ++k) body.points.push_back(on_ellipse(cap.far_x, cap.far_y, from + pi * k / steps));
        body.points.push_back(on_ellipse(cap.near_x, cap.near_y, from + pi));
        list_.add(std::move(body));

        const Pen pen = outline(i);
        const Point near_centre{static_cast<int>(std::lround(cap.near_x)), static_cast<int>(std::lround(cap.near_y))};
        const Point far_centre{static_cast<int>(std::lround(cap.far_x)), static_cast<int>(std::lround(cap.far_y))};
        Arc arc;
        arc.first = static_cast<int>(std::lround(first));
        arc.second = static_cast<int>(std::lround(second));
        arc.turn = cap.turn * 16;
        arc.centre = far_centre;
        arc.start = cap.far_is_up ? 0 : full_circle / 2;
        arc.span = full_circle / 2;
        arc.pen = pen;
        list_.add(arc);
        for (const double side : {from, from + pi}) {
            list_.add(Path{{on_ellipse(cap.near_x, cap.near_y, side), on_ellipse(cap.far_x, cap.far_y, side)},
                           false,
                           pen,
                           std::nullopt});
        }
        arc.centre = near_centre;
        arc.start = 0;
        arc.span = full_circle;
        arc.fill = Fill{tint(i), upright ? Shade::lit : Shade::half};
        list_.add(arc);
        const double in = static_cast<double>(looks(i).wrap.units) * to_paper_.scale;
        if (in > 0 && cap.radius > 3 * in) {
            arc.first = static_cast<int>(std::lround((cap.radius - in) * std::sqrt(1.5)));
            arc.second = static_cast<int>(std::lround((cap.radius - in) * std::sqrt(0.5)));
            arc.pen = Pen{Role::second_ink, thin, Pen::Dash::solid};
            arc.fill.reset();
            list_.add(arc);
        }
    }

    // Where a number may stand on an item, best first.
    std::vector<Spot> places_for_number(const fitting::Placement& p) const
    {
        std::vector<Spot> spots;
        if (p.axis) { // along its axis, from the near end
            const Cap cap = cap_of(p);
            for (int k = 0; k <= 8; ++k) {
                spots.push_back(
                    {cap.near_x + (cap.far_x - cap.near_x) * k / 8.0, cap.near_y + (cap.far_y - cap.near_y) * k / 8.0});
            }
            return spots;
        }
        const Solid s = solid_of(p.at, p.size);
        const auto along = [&](std::size_t k, int eighths) {
            return static_cast<double>(s.low[k]) + static_cast<double>(s.high[k] - s.low[k]) * eighths / 8.0;
        };
        std::vector<std::array<int, 2>> grid;
        for (int u = 1; u < 8; ++u) {
            for (int v = 1; v < 8; ++v) grid.push_back({u, v});
        }
        const auto from_middle = [](const std::array<int, 2>& g) {
            return (g[0] - 4) * (g[0] - 4) + (g[1] - 4) * (g[1] - 4);
        };
        std::stable_sort(grid.begin(), grid.end(),
                         [&](const auto& a, const auto& b) { return from_middle(a) < from_middle(b); });
        for (const auto& [u, v] : grid) spots.push_back(to_paper_.exact(along(0, u), along(1, v), along(2, 8)));
        for (const auto& [u, v] : grid) spots.push_back(to_paper_.exact(along(0, u), along(1, 8), along(2, v)));
        for (const auto& [u, v] : grid) spots.push_back(to_paper_.exact(along(0, 8), along(1, u), along(2, v)));
        return spots;
    }

    void number(const std::vector<Part>& parts)
    {
        const std::vector<int> count = numbers(arrangement_.placements), layer = layers(arrangement_.placements);
        const int radius = view_.number_size * 17 / 20, rim = radius + 10;
        std::vector<Spot> taken;
        std::vector<std::size_t> done;
        for (std::size_t k = 0; k < parts.size(); ++k) {
            const std::size_t i = parts[k].whole;
            if (std::find(done.begin(), done.end(), i) != done.end()) continue;
            done.push_back(i);
            if (view_.number_layer && layer[i] != *view_.number_layer) continue;
            const auto seen = [&](Spot at) {
                for (std::size_t later = k + 1; later < parts.size(); ++later) {
                    if (parts[later].whole == i) continue;
                    if (to_paper_.covers(solid_of(parts[later].at, parts[later].size), at)) return false;
                }
                return true;
            };
            const auto free = [&](Spot at) {
                const bool on_paper =
                    at.x >= rim && at.y >= rim && at.x + rim <= list_.extent.width && at.y + rim <= list_.extent.height;
                return on_paper && std::none_of(taken.begin(), taken.end(), [&](Spot t) {
                           return std::hypot(t.x - at.x, t.y - at.y) < 2.2 * radius;
                       });
            };
            const auto all_seen = [&](Spot at) {
                for (int step = 0; step < 8; ++step) {
                    const double angle = std::acos(-1.0) * step / 4;
                    if (!seen({at.x + radius * std::cos(angle), at.y + radius * std::sin(angle)})) return false;
                }
                return seen(at);
            };
            const std::vector<Spot> spots = places_for_number(drawn_[i]);
            auto best = std::find_if(spots.begin(), spots.end(), [&](Spot at) { return free(at) && all_seen(at); });
            if (best == spots.end()) {
                best = std::find_if(spots.begin(), spots.end(), [&](Spot at) { return free(at) && seen(at); });
            }
            if (best == spots.end()) continue; // hidden: a drawing of its layer shows it
            taken.push_back(*best);
            list_.add(number_disc({static_cast<int>(std::lround(best->x)), static_cast<int>(std::lround(best->y))},
                                  count[i], view_.number_size, lit_up(i)),
                      {0, 0});
        }
    }

    const Arrangement& arrangement_;
    const View& view_;
    Size inner_;
    std::vector<fitting::Placement> drawn_;
    Isometry to_paper_;
    DisplayList list_;
};

} // namespace

DisplayList number_disc(Point centre, int number, int size, bool lit_up)
{
    DisplayList list;
    Arc disc;
    disc.centre = centre;
    disc.first = disc.second = size * 17 / 20;
    disc.pen = Pen{lit_up ? Role::accent : Role::ink, 15, Pen::Dash::solid};
    disc.fill = Fill{lit_up ? Role::accent : Role::sheet, Shade::lit};
    list.add(disc);
    TextLine text;
    text.at = {centre.x, centre.y + size * 36 / 100}; // digits are about 0.72 em high
    text.text = std::to_string(number);
    text.style = {size, Face::bold, lit_up ? Role::sheet : Role::ink};
    text.align = Align::centre;
    list.add(text);
    return list;
}

DisplayList draw(const Arrangement& arrangement, const View& view)
{
    if (is_sleeve(arrangement.form.kind)) return draw_sleeve(arrangement, view);
    if (arrangement.form.kind == OuterKind::tube) return draw_tube(arrangement, view);
    return Sketch(arrangement, view).draw();
}

} // namespace stow::papers
