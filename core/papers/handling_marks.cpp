#include "core/papers/handling_marks.h"

#include "core/planning/contents.h"

#include <array>

namespace stow::papers {

namespace {

constexpr int grid = 100; // the marks are drawn on a square of so many units

class Drawing {
public:
    explicit Drawing(int edge) : edge_(edge) { list_.extent = {edge, edge}; }

    void shape(std::vector<Point> points, Role role = Role::ink)
    {
        for (Point& p : points) p = scaled(p);
        list_.add(Path{std::move(points), true, std::nullopt, Fill{role, Shade::lit}});
    }
    void line(std::vector<Point> points, int width, Role role = Role::ink)
    {
        for (Point& p : points) p = scaled(p);
        list_.add(Path{std::move(points), false, pen(width, role), std::nullopt});
    }
    // Angles in degrees, counter-clockwise from the right; the whole circle is filled.
    void disc(Point centre, int radius)
    {
        Arc arc = circle(centre, radius);
        arc.fill = Fill{Role::ink, Shade::lit};
        list_.add(arc);
    }
    void arc(Point centre, int radius, int start, int span, int width)
    {
        Arc arc = circle(centre, radius);
        arc.start = start * 16;
        arc.span = span * 16;
        arc.pen = pen(width, Role::ink);
        list_.add(arc);
    }
    DisplayList take() { return std::move(list_); }

private:
    Point scaled(Point p) const { return {p.x * edge_ / grid, p.y * edge_ / grid}; }
    Pen pen(int width, Role role) const { return {role, width * edge_ / grid, Pen::Dash::solid}; }
    Arc circle(Point centre, int radius) const
    {
        Arc arc;
        arc.centre = scaled(centre);
        arc.first = arc.second = radius * edge_ / grid;
        return arc;
    }

    int edge_;
    DisplayList list_;
};

void glass(Drawing& d)
{
    d.shape({{28, 8}, {72, 8}, {67, 40}, {54, 54}, {54, 80}, {70, 90}, {30, 90}, {46, 80}, {46, 54}, {33, 40}});
    d.line({{54, 8}, {47, 20}, {56, 28}, {48, 40}}, 4, Role::sheet); // it has a crack
}

void arrows(Drawing& d)
{
    for (const int x : {28, 72}) {
        d.shape({{x - 7, 34}, {x - 18, 34}, {x, 8}, {x + 18, 34}, {x + 7, 34}, {x + 7, 78}, {x - 7, 78}});
    }
    d.shape({{8, 84}, {92, 84}, {92, 92}, {8, 92}});
}

void sun(Drawing& d)
{
    d.disc({50, 26}, 12);
    for (const auto& [from, to] : std::vector<std::pair<Point, Point>>{{{50, 10}, {50, 2}},
                                                                       {{34, 26}, {26, 26}},
                                                                       {{66, 26}, {74, 26}},
                                                                       {{39, 15}, {33, 9}},
                                                                       {{61, 15}, {67, 9}},
                                                                       {{39, 37}, {33, 43}},
                                                                       {{61, 37}, {67, 43}}}) {
        d.line({from, to}, 5);
    }
    d.line({{6, 74}, {50, 50}, {94, 74}}, 7); // a roof
    d.line({{24, 68}, {24, 92}, {76, 92}, {76, 68}}, 6);
}

void umbrella(Drawing& d)
{
    std::vector<Point> dome; // half a circle, in steps of 15 degrees by its known cosines
    constexpr std::array<Point, 13> around{Point{0, 100}, {26, 97},  {50, 87},  {71, 71},  {87, 50},
                                           {97, 26},      {100, 0},  {97, -26}, {87, -50}, {71, -71},
                                           {50, -87},     {26, -97}, {0, -100}};
    dome.reserve(around.size());
    for (const Point& p : around) dome.push_back({50 - p.y * 40 / 100, 62 - p.x * 40 / 100});
    d.shape(std::move(dome));
    d.line({{50, 62}, {50, 86}}, 5);
    d.arc({43, 86}, 7, 180, 180, 5);                                       // the handle
    for (const int x : {14, 34, 54, 74}) d.line({{x + 6, 4}, {x, 14}}, 4); // rain
}

} // namespace

std::vector<HandlingMark> handling_marks(const planning::ParcelPlan& plan, const shop::Cupboard& cupboard)
{
    bool fragile = false, upright = false, soft_in_heat = false, sheets = false;
    const auto contents = planning::contents_of(cupboard, plan.pieces);
    if (!contents) return {};
    for (const planning::Several& s : planning::off_the_shelf(*contents)) {
        fragile = fragile || s.good->fragile;
        upright = upright || s.good->liquid;
        soft_in_heat = soft_in_heat || s.good->softens_above_c.has_value();
        sheets = sheets || std::holds_alternative<Sheet>(s.good->shape);
    }
    std::vector<HandlingMark> marks;
    if (fragile) marks.push_back(HandlingMark::fragile);
    if (upright) marks.push_back(HandlingMark::this_way_up);
    if (soft_in_heat) marks.push_back(HandlingMark::keep_from_sun);
    if (sheets) marks.push_back(HandlingMark::keep_dry);
    return marks;
}

DisplayList draw(HandlingMark mark, int edge)
{
    Drawing drawing(edge);
    switch (mark) {
    case HandlingMark::fragile: glass(drawing); break;
    case HandlingMark::this_way_up: arrows(drawing); break;
    case HandlingMark::keep_from_sun: sun(drawing); break;
    case HandlingMark::keep_dry: umbrella(drawing); break;
    }
    return drawing.take();
}

} // namespace stow::papers
