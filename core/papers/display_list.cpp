#include "core/papers/display_list.h"

#include "core/measure/overload.h"

#include <cmath>

namespace stow::papers {

namespace {

Point moved(Point p, Point by)
{
    return {p.x + by.x, p.y + by.y};
}

void move(Mark& mark, Point by)
{
    std::visit(Overload{[&](Path& p) {
                            for (Point& point : p.points) point = moved(point, by);
                        },
                        [&](Arc& a) { a.centre = moved(a.centre, by); }, [&](TextLine& t) { t.at = moved(t.at, by); },
                        [&](Modules& m) { m.at = moved(m.at, by); }, [&](Picture& p) { p.at = moved(p.at, by); }},
               mark);
}

void widen(std::optional<Box>& box, Point p)
{
    if (!box) box = Box{p, p};
    box->least = {std::min(box->least.x, p.x), std::min(box->least.y, p.y)};
    box->most = {std::max(box->most.x, p.x), std::max(box->most.y, p.y)};
}

// Of the whole ellipse, also where only an arc of it is drawn.
void widen_by_ellipse(std::optional<Box>& box, const Arc& arc)
{
    const double turn = arc.turn / 16.0 * std::acos(-1.0) / 180.0;
    const double c = std::cos(turn), s = std::sin(turn);
    const int half_width = static_cast<int>(std::ceil(std::hypot(arc.first * c, arc.second * s)));
    const int half_height = static_cast<int>(std::ceil(std::hypot(arc.first * s, arc.second * c)));
    widen(box, {arc.centre.x - half_width, arc.centre.y - half_height});
    widen(box, {arc.centre.x + half_width, arc.centre.y + half_height});
}

} // namespace

void DisplayList::add(const DisplayList& other, Point by)
{
    for (Mark mark : other.marks) {
        move(mark, by);
        marks.push_back(std::move(mark));
    }
}

Extent extent_of(Format format)
{
    switch (format) {
    case Format::a4: return {from_mm(210), from_mm(297)};
    case Format::letter: return {21590, 27940}; // 8.5 × 11 inches
    case Format::a6: return {from_mm(105), from_mm(148)};
    case Format::label_100x150: return {from_mm(100), from_mm(150)};
    }
    return {};
}

Blank::Blank(Format format) : extent(extent_of(format)), margin(from_mm(18)) {}

std::optional<Box> bounds(const DisplayList& list)
{
    std::optional<Box> box;
    for (const Mark& mark : list.marks) {
        std::visit(Overload{[&](const Path& p) {
                                for (const Point& point : p.points) widen(box, point);
                            },
                            [&](const Arc& a) { widen_by_ellipse(box, a); },
                            [&](const TextLine& t) { widen(box, t.at); },
                            [&](const Modules& m) {
                                widen(box, m.at);
                                widen(box, {m.at.x + m.side * m.module, m.at.y + m.side * m.module});
                            },
                            [&](const Picture& p) {
                                widen(box, p.at);
                                widen(box, {p.at.x + p.frame.width, p.at.y + p.frame.height});
                            }},
                   mark);
    }
    return box;
}

} // namespace stow::papers
