#include "core/papers/hand_over.h"

#include "core/papers/address.h"
#include "core/papers/sheet.h"

namespace stow::papers {

namespace {

constexpr int running_width = from_mm(10), parcel_width = from_mm(25), weight_width = from_mm(20),
              tracking_width = from_mm(46);

struct Columns {
    int running, parcel, to, to_width, tracking, weight;
};

Columns columns(const Sheet& s)
{
    Columns c{};
    c.running = s.left();
    c.parcel = c.running + running_width;
    c.to = c.parcel + parcel_width;
    c.weight = s.right();
    c.tracking = s.right() - weight_width - tracking_width;
    c.to_width = c.tracking - c.to - from_mm(3);
    return c;
}

void column_heads(Sheet& s)
{
    const Columns c = columns(s);
    const Words& words = s.words();
    s.line(c.parcel, s.y(), std::string(words(Word::parcel)), type::small);
    s.line(c.to, s.y(), std::string(words(Word::to)), type::small);
    s.line(c.tracking, s.y(), std::string(words(Word::tracking)), type::small);
    s.line(c.weight, s.y(), std::string(words(Word::weigh)), type::small, Align::end);
    s.down(s.line_height(type::small) + from_mm(1));
    s.rule(s.y(), Role::second_ink);
}

void entry(Sheet& s, const HandOverList::Line& line, int running)
{
    const Columns c = columns(s);
    const std::string second = line.place + (line.service.empty() ? "" : " · " + line.service);
    const std::string tracking = line.tracking.empty() ? std::string(s.words()(Word::untracked)) : line.tracking;
    const Style& tracking_style = line.tracking.empty() ? type::quiet : type::body;
    const int height = std::max(s.paragraph_height(c.to_width, line.name, type::body) +
                                    s.paragraph_height(c.to_width, second, type::small),
                                s.paragraph_height(tracking_width - from_mm(2), tracking, tracking_style)) +
                       from_mm(3);
    s.need(height);
    const int top = s.y() + from_mm(3) / 2;
    s.line(c.running, top, std::to_string(running), type::quiet);
    s.line(c.parcel, top, line.parcel, type::strong);
    if (line.label_print > 1) {
        const std::string which = s.words().with(Word::label_print, std::to_string(line.label_print));
        s.line(c.parcel, top + s.line_height(type::strong), which, type::small);
    }
    const int y = top + s.paragraph(c.to, top, c.to_width, line.name, type::body);
    s.paragraph(c.to, y, c.to_width, second, type::small);
    s.paragraph(c.tracking, top, tracking_width - from_mm(2), tracking, tracking_style);
    if (line.weight) s.line(c.weight, top, s.words().weight(*line.weight), type::body, Align::end);
    s.down(height);
    s.rule(s.y());
}

void signatures(Sheet& s, const HandOverList& list)
{
    const Words& words = s.words();
    const int gap = from_mm(10), half = (s.width() - gap) / 2;
    const int line_y = s.y() + from_mm(20);
    int x = s.left();
    for (const Word word : {Word::handed_over_by, Word::taken_by}) {
        std::string who(words(word));
        if (word == Word::handed_over_by && !list.sender.empty()) who += " " + list.sender.front();
        if (word == Word::taken_by) who += " " + list.carrier;
        s.rule(x, x + half, line_y, Role::ink);
        const int used = s.paragraph(x, line_y + from_mm(1), half, who, type::quiet);
        s.line(x, line_y + from_mm(1) + used, std::string(words(Word::name_time_signature)), type::small);
        x += half + gap;
    }
}

} // namespace

HandOverList hand_over_list(const std::string& carrier, const std::string& number, Date date,
                            std::optional<TimeOfDay> time, const std::vector<shop::Parcel>& parcels,
                            const std::vector<shop::HeldOrder>& orders, const shop::House& house)
{
    HandOverList list;
    list.carrier = carrier;
    list.number = number;
    list.date = date;
    list.time = time;
    list.sender = address_lines(house.address, house.address.country);
    for (const shop::Parcel& parcel : parcels) {
        HandOverList::Line line;
        line.parcel = parcel.number;
        line.service = parcel.service;
        line.tracking = parcel.tracking;
        if (!parcel.weighings.empty()) line.weight = parcel.weighings.back().weight;
        const auto of_parcel = [&](const shop::HeldOrder& held) {
            return !parcel.pieces.empty() && held.id == parcel.pieces.front().order;
        };
        const auto found = std::find_if(orders.begin(), orders.end(), of_parcel);
        if (found != orders.end()) {
            const shop::Address& to = found->order.to;
            line.name = to.name;
            line.place = to.postcode + (to.postcode.empty() ? "" : " ") + to.town + " · " + to.country;
        }
        list.lines.push_back(std::move(line));
    }
    return list;
}

Document lay_out(const HandOverList& list, const Blank& blank, const Words& words, const TextMeasure& measure)
{
    const std::string title(words(Word::hand_over_list));
    const std::string when = words.date(list.date) + (list.time ? ", " + stow::to_text(*list.time) : "");
    const std::string which = std::string(words(Word::number)) + " " + list.number + " · " + when;
    bool in_table = false;
    const auto head = [&](Sheet& s, bool carried) {
        if (carried) {
            s.carried_head(title + " " + list.carrier + ", " + std::string(words(Word::continued)), which, from_mm(11));
            if (in_table) column_heads(s);
            return;
        }
        s.line(s.left(), s.y(), title, type::title);
        s.down(s.line_height(type::title) + from_mm(1));
        s.line(s.left(), s.y(), list.carrier, type::large);
        s.down(s.line_height(type::large));
        s.line(s.left(), s.y(), which, type::quiet);
        s.down(s.line_height(type::quiet) + from_mm(5));
        for (std::size_t i = 0; i < list.sender.size(); ++i) {
            s.down(s.paragraph(s.left(), s.y(), s.width(), list.sender[i], i == 0 ? type::body : type::quiet));
        }
        s.down(from_mm(8));
    };
    Sheet s(blank, words, measure, head);
    column_heads(s);
    in_table = true;
    int running = 1;
    for (const HandOverList::Line& line : list.lines) entry(s, line, running++);
    in_table = false;

    s.need(from_mm(46)); // the sum and the signatures stay together
    s.down(from_mm(4));
    const std::string count = list.lines.size() == 1
                                  ? std::string(words(Word::one_together))
                                  : words.with(Word::all_together, std::to_string(list.lines.size()));
    s.line(s.left(), s.y(), count, type::large);
    Weight sum;
    bool all_weighed = !list.lines.empty();
    for (const HandOverList::Line& line : list.lines) {
        all_weighed = all_weighed && line.weight;
        if (line.weight) sum += *line.weight;
    }
    if (all_weighed) s.line(s.right(), s.y(), words.weight(sum), type::strong, Align::end);
    s.down(s.line_height(type::large));
    signatures(s, list);
    return s.finish(title + " " + list.number, title + " · " + list.carrier + " · " + which, list.reprint);
}

} // namespace stow::papers
