#include "core/papers/template.h"

#include "core/papers/sheet.h"

#include <cmath>

namespace stow::papers {

namespace {

constexpr int edge = from_mm(10); // no printer prints beyond
constexpr int foot = from_mm(26); // ruler and name
constexpr int page_overlap = from_mm(10);
constexpr Pen cut_pen{Role::ink, 25, Pen::Dash::solid};
constexpr Pen score_pen{Role::ink, 25, Pen::Dash::dashed};
constexpr Pen sheet_pen{Role::second_ink, 15, Pen::Dash::solid};

int hundredths(Length l)
{
    return static_cast<int>(l.units) * 10;
}

// An arc as a polyline: chords no longer than a millimetre or so.
std::vector<Point> points_of(const paperbox::Mark& mark)
{
    const Point a{hundredths(mark.from.x), hundredths(mark.from.y)}, b{hundredths(mark.to.x), hundredths(mark.to.y)};
    if (mark.bulge == Length{}) return {a, b};
    const double dx = b.x - a.x, dy = b.y - a.y, chord = std::hypot(dx, dy), s = hundredths(mark.bulge);
    const double radius = (chord * chord / 4 + s * s) / (2 * std::abs(s)), side = s > 0 ? 1 : -1;
    // To the left of the way from a to b, y pointing down: (dy, −dx).
    const double nx = dy / chord, ny = -dx / chord;
    const int steps = static_cast<int>(chord / 100) + 4;
    std::vector<Point> points;
    for (int i = 0; i <= steps; ++i) {
        const double along = chord * i / steps - chord / 2;
        const double out = std::sqrt(radius * radius - along * along) - (radius - std::abs(s));
        const double t = (along + chord / 2) / chord;
        points.push_back({static_cast<int>(std::lround(a.x + dx * t + nx * out * side)),
                          static_cast<int>(std::lround(a.y + dy * t + ny * out * side))});
    }
    return points;
}

using Line = std::pair<std::vector<Point>, Pen>;

std::vector<Line> lines_of(const paperbox::Net& net)
{
    const int x = hundredths(net.length), y = hundredths(net.width);
    std::vector<Line> lines{{{{0, 0}, {x, 0}, {x, y}, {0, y}, {0, 0}}, sheet_pen}};
    for (const paperbox::Mark& mark : net.marks) {
        lines.emplace_back(points_of(mark), mark.stroke == paperbox::Stroke::cut ? cut_pen : score_pen);
    }
    return lines;
}

void ruler(DisplayList& page, int left, int bottom)
{
    page.add(Path{{{left, bottom}, {left + from_mm(100), bottom}}, false, cut_pen, {}});
    for (int mark = 0; mark <= 10; ++mark) {
        const int x = left + from_mm(10 * mark);
        page.add(Path{{{x, bottom}, {x, bottom - (mark % 5 == 0 ? from_mm(4) : from_mm(2))}}, false, cut_pen, {}});
    }
    page.add(TextLine{{left + from_mm(102), bottom}, "100 mm", type::small});
}

// The part of a line within the window; nothing where it lies outside.
bool clipped(double& x0, double& y0, double& x1, double& y1, double w, double h)
{
    double from = 0, to = 1;
    const double dx = x1 - x0, dy = y1 - y0;
    const auto side = [&](double p, double q) {
        if (p == 0) return q >= 0;
        const double r = q / p;
        if (p < 0)
            from = std::max(from, r);
        else
            to = std::min(to, r);
        return from <= to;
    };
    if (!side(-dx, x0) || !side(dx, w - x0) || !side(-dy, y0) || !side(dy, h - y0)) return false;
    x1 = x0 + to * dx;
    y1 = y0 + to * dy;
    x0 += from * dx;
    y0 += from * dy;
    return true;
}

} // namespace

Document lay_out(const BoxTemplate& box, Format format, const Words& words, const TextMeasure&)
{
    const Extent extent = extent_of(format);
    const int width = extent.width - 2 * edge, height = extent.height - edge - foot;
    const int whole_x = hundredths(box.net.length), whole_y = hundredths(box.net.width);
    const auto pages_for = [](int whole, int window) {
        return whole <= window ? 1 : 1 + (whole - window + window - page_overlap - 1) / (window - page_overlap);
    };
    const int columns = pages_for(whole_x, width), rows = pages_for(whole_y, height);
    Document document;
    document.title = box.name;
    const std::vector<Line> lines = lines_of(box.net);
    for (int row = 0; row < rows; ++row) {
        for (int column = 0; column < columns; ++column) {
            const int left = column * (width - page_overlap), top = row * (height - page_overlap);
            DisplayList page{extent, {}};
            for (const auto& [points, pen] : lines) {
                for (std::size_t i = 1; i < points.size(); ++i) {
                    double x0 = points[i - 1].x - left, y0 = points[i - 1].y - top;
                    double x1 = points[i].x - left, y1 = points[i].y - top;
                    if (!clipped(x0, y0, x1, y1, width, height)) continue;
                    const auto at = [](double v) { return edge + static_cast<int>(std::lround(v)); };
                    page.add(Path{{{at(x0), at(y0)}, {at(x1), at(y1)}}, false, pen, {}});
                }
            }
            for (const int x : {page_overlap / 2, width - page_overlap / 2}) { // the same spot on the next page
                if (columns == 1 || (x < width / 2 ? column == 0 : column + 1 == columns)) continue;
                for (const int y : {height / 4, height * 3 / 4}) {
                    const Point c{edge + x, edge + y};
                    page.add(Path{{{c.x - 300, c.y}, {c.x + 300, c.y}}, false, sheet_pen, {}});
                    page.add(Path{{{c.x, c.y - 300}, {c.x, c.y + 300}}, false, sheet_pen, {}});
                }
            }
            const int bottom = extent.height - edge;
            ruler(page, edge, bottom);
            page.add(TextLine{{edge, bottom - from_mm(7)}, box.name + " · " + box.instruction, type::small});
            if (rows * columns > 1) {
                const std::string number = std::string(words(Word::page)) + " " +
                                           std::to_string(row * columns + column + 1) + " " +
                                           std::string(words(Word::of)) + " " + std::to_string(rows * columns);
                page.add(TextLine{{extent.width - edge, bottom}, number, type::small, Align::end});
            }
            document.pages.push_back(std::move(page));
        }
    }
    return document;
}

DisplayList draw(const paperbox::Net& net, Extent extent)
{
    DisplayList list{extent, {}};
    const double wide = hundredths(net.length), high = hundredths(net.width);
    const double scale = std::min((extent.width - 100) / wide, (extent.height - 100) / high);
    const double left = (extent.width - wide * scale) / 2, top = (extent.height - high * scale) / 2;
    for (const auto& [points, pen] : lines_of(net)) {
        Path path{{}, false, Pen{pen.role, 30, pen.dash}, {}};
        for (const Point& p : points) {
            path.points.push_back(
                {static_cast<int>(std::lround(left + p.x * scale)), static_cast<int>(std::lround(top + p.y * scale))});
        }
        list.add(std::move(path));
    }
    return list;
}

} // namespace stow::papers
