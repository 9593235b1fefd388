#include "core/papers/sheet.h"

#include "core/papers/qr.h"

namespace stow::papers {

namespace {

constexpr int top_margin = from_mm(16);

bool is_label(const Extent& extent)
{
    return extent.width <= from_mm(110);
}

} // namespace

Sheet::Sheet(const Blank& blank, const Words& words, const TextMeasure& measure, Head head)
    : extent_(blank.extent), margin_(blank.margin), foot_(is_label(extent_) ? margin_ : std::max(from_mm(20), margin_)),
      words_(words), measure_(measure), head_(std::move(head))
{
    open_page();
}

void Sheet::open_page()
{
    const bool carried = !document_.pages.empty();
    document_.pages.push_back({extent_, {}});
    y_ = is_label(extent_) ? margin_ : std::max(top_margin, margin_);
    if (head_) head_(*this, carried);
}

void Sheet::need(int height)
{
    if (y_ + height > bottom()) open_page();
}

void Sheet::line(int x, int top, const std::string& text, const Style& style, Align align)
{
    // The baseline lies one em under the top of a line of one and a quarter.
    page().add(TextLine{{x, top + style.size}, text, style, align, direction_of(text)});
}

int Sheet::paragraph(int x, int top, int width, const std::string& text, const Style& style)
{
    const std::vector<std::string> lines = wrap(text, width, style, measure_);
    const bool from_right = direction_of(text) == Direction::right_to_left;
    int y = top;
    for (const std::string& one : lines) {
        line(from_right ? x + width : x, y, one, style, from_right ? Align::end : Align::start);
        y += line_height(style);
    }
    return y - top;
}

int Sheet::block(int x, int top, int width, const std::vector<std::string>& lines, const StyleOf& style_of, int gap)
{
    struct Set {
        std::string text;
        Style style;
        int top;
    };
    std::vector<Set> all;
    int longest = 0, y = top;
    for (std::size_t i = 0; i < lines.size(); ++i) {
        const Style style = style_of(i);
        if (i + 1 == lines.size()) y += gap;
        for (std::string& one : wrap(lines[i], width, style, measure_)) {
            longest = std::max(longest, width_of(one, style));
            all.push_back({std::move(one), style, y});
            y += line_height(style);
        }
    }
    const bool from_right = direction_of(lines) == Direction::right_to_left;
    for (const Set& set : all) {
        line(from_right ? x + longest : x, set.top, set.text, set.style, from_right ? Align::end : Align::start);
    }
    return y - top;
}

std::vector<std::string> Sheet::wrapped(const std::string& text, int width, const Style& style) const
{
    return wrap(text, width, style, measure_);
}

int Sheet::paragraph_height(int width, const std::string& text, const Style& style) const
{
    return static_cast<int>(wrapped(text, width, style).size()) * line_height(style);
}

void Sheet::rule(int y, Role role)
{
    rule(left(), right(), y, role);
}

void Sheet::rule(int from, int to, int y, Role role)
{
    page().add(Path{{{from, y}, {to, y}}, false, Pen{role, hairline_width, Pen::Dash::solid}, std::nullopt});
}

void Sheet::tick_box(Point at, int edge)
{
    page().add(Path{{at, {at.x + edge, at.y}, {at.x + edge, at.y + edge}, {at.x, at.y + edge}},
                    true,
                    Pen{Role::ink, 25, Pen::Dash::solid},
                    std::nullopt});
}

void Sheet::quantity(Point centre, int count, int size)
{
    if (count > 1) {
        Arc ring;
        ring.centre = centre;
        const int half = width_of(std::to_string(count), {size, Face::bold, Role::ink}) / 2;
        ring.first = ring.second = std::max(size * 17 / 20, half + size * 2 / 5);
        ring.pen = Pen{Role::ink, 50, Pen::Dash::solid};
        page().add(ring);
    }
    const Style style{size, count > 1 ? Face::bold : Face::regular, Role::ink};
    page().add(TextLine{
        {centre.x, centre.y + size * 36 / 100}, std::to_string(count), style, Align::centre, Direction::left_to_right});
}

int Sheet::code(Point at, const std::string& payload, int module)
{
    const std::optional<QrCode> made = qr_code(payload);
    if (!made) return 0;
    const int edge = printed_edge(*made, module);
    page().add(modules(*made, {at.x - edge, at.y}, module));
    return edge;
}

void Sheet::carried_head(const std::string& title, const std::string& which, int space)
{
    line(left(), y_, shorten(title, width(), type::strong, measure_), type::strong);
    const bool beneath = width_of(title, type::strong) + from_mm(6) + width_of(which, type::quiet) > width();
    if (beneath) down(line_height(type::strong));
    line(right(), y_, shorten(which, width(), type::quiet, measure_), type::quiet, Align::end);
    down(space);
}

Document Sheet::finish(const std::string& title, const std::string& foot, const std::optional<Reprint>& reprint)
{
    document_.title = title;
    const std::size_t count = document_.pages.size();
    const int top = extent_.height - foot_ + from_mm(6);
    for (std::size_t i = 0; i < count; ++i) {
        DisplayList& one = document_.pages[i];
        const int baseline = top + type::small.size;
        one.add(TextLine{{left(), baseline}, foot, type::small, Align::start, direction_of(foot)});
        if (reprint) { // in ink, on a line of its own: to be seen before it is used
            const Style style{type::small.size, Face::bold, Role::ink};
            one.add(TextLine{{left(), baseline + line_height(type::small)}, words_.reprinted(*reprint), style});
        }
        if (count < 2) continue;
        const std::string number = std::string(words_(Word::page)) + " " + std::to_string(i + 1) + " " +
                                   std::string(words_(Word::of)) + " " + std::to_string(count);
        one.add(TextLine{{right(), baseline}, number, type::small, Align::end, Direction::left_to_right});
    }
    return std::move(document_);
}

} // namespace stow::papers
