#include "core/papers/need_list.h"

#include "core/papers/sheet.h"

namespace stow::papers {

namespace {

constexpr int box_edge = from_mm(6), amount_width = from_mm(30);

struct Columns {
    int name, name_width, on_hand, wanted, box;
};

Columns columns(const Sheet& s)
{
    Columns c{};
    c.name = s.left();
    c.box = s.right() - box_edge;
    c.wanted = c.box - from_mm(5);
    c.on_hand = c.wanted - amount_width;
    c.name_width = c.on_hand - amount_width - c.name;
    return c;
}

void column_heads(Sheet& s, NeedList::Kind kind)
{
    const Columns c = columns(s);
    s.line(c.on_hand, s.y(), std::string(s.words()(Word::on_hand)), type::small, Align::end);
    const Word wanted = kind == NeedList::Kind::reorder ? Word::to_order : Word::to_make;
    s.line(c.wanted, s.y(), std::string(s.words()(wanted)), type::small, Align::end);
    s.down(s.line_height(type::small) + from_mm(1));
    s.rule(s.y(), Role::second_ink);
}

void entry(Sheet& s, const NeedList::Line& line)
{
    const Columns c = columns(s);
    std::string second = line.code;
    if (!line.detail.empty()) second += (second.empty() ? "" : " · ") + line.detail;
    int height = s.paragraph_height(c.name_width, line.name, type::strong);
    if (!second.empty()) height += s.paragraph_height(c.name_width, second, type::quiet);
    height = std::max(height + from_mm(4), from_mm(9));
    s.need(height);
    const int top = s.y() + from_mm(2);
    const int used = s.paragraph(c.name, top, c.name_width, line.name, type::strong);
    if (!second.empty()) s.paragraph(c.name, top + used, c.name_width, second, type::quiet);
    s.line(c.on_hand, top, line.on_hand, type::quiet, Align::end);
    s.line(c.wanted, top, line.wanted, type::strong, Align::end);
    s.tick_box({c.box, s.y() + from_mm(3) / 2}, box_edge);
    s.down(height);
    s.rule(s.y());
}

} // namespace

Document lay_out(const NeedList& list, const Blank& blank, const Words& words, const TextMeasure& measure)
{
    const std::string title(words(list.kind == NeedList::Kind::reorder ? Word::reorder_list : Word::making_list));
    const std::string day = words.date(list.day);
    bool in_table = false;
    const auto head = [&](Sheet& s, bool carried) {
        if (carried) {
            s.carried_head(title + ", " + std::string(words(Word::continued)), day, from_mm(9));
        } else {
            s.line(s.left(), s.y(), title, type::title);
            s.down(s.line_height(type::title));
            s.line(s.left(), s.y(), day, type::quiet);
            s.down(s.line_height(type::quiet) + from_mm(5));
        }
        if (in_table) column_heads(s, list.kind);
    };
    Sheet s(blank, words, measure, head);
    for (const NeedList::Group& group : list.groups) {
        in_table = false;
        s.need(from_mm(34)); // a heading never stands alone at the foot
        std::string heading = group.heading;
        if (heading.empty() && list.groups.size() > 1) heading = words(Word::no_supplier); // set apart from the others
        if (!heading.empty()) s.down(s.paragraph(s.left(), s.y(), s.width(), heading, type::large));
        column_heads(s, list.kind);
        in_table = true;
        for (const NeedList::Line& line : group.lines) entry(s, line);
        s.down(from_mm(7));
    }
    return s.finish(title, title + " · " + day, list.reprint);
}

} // namespace stow::papers
