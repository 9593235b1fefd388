#include "core/papers/label.h"

#include "core/papers/address.h"
#include "core/papers/payload.h"
#include "core/papers/qr.h"
#include "core/papers/sheet.h"

#include <algorithm>
#include <array>

namespace stow::papers {

namespace {

constexpr int least_size = from_pt(11), most_size = from_pt(17);
constexpr int usual_address_top = from_mm(50);
constexpr int country_gap = from_mm(2);
constexpr int roll_width = from_mm(62), longest_of_roll = from_mm(200);
constexpr int smallest_size = from_pt(9); // of an address that has no room otherwise
constexpr int good_size = from_pt(13);    // of an address: large enough to give no room away
constexpr int mark_gap = from_mm(2), frame_pad = from_mm(1);
constexpr int least_foot_text = from_mm(30); // words beside the marks
constexpr Style sender_style{from_pt(9), Face::regular, Role::ink};

// On those everything stands closer together.
bool is_narrow(shop::LabelForm form)
{
    return form == shop::LabelForm::roll_62 || extent_of(form).height < from_mm(120);
}

int margin_of(shop::LabelForm form)
{
    return from_mm(form == shop::LabelForm::roll_62 ? 5 : 6);
}

// Columns and rows of a sheet.
Extent grid_of(shop::LabelForm form)
{
    switch (form) {
    case shop::LabelForm::a4_of_4: return {2, 2};
    case shop::LabelForm::a4_of_6: return {2, 3};
    default: return {1, 1};
    }
}

// Height of the address at this size, wrapped.
int height_at(const Sheet& s, const LabelData& label, int size)
{
    int height = label.abroad ? country_gap : 0;
    for (std::size_t i = 0; i < label.to.size(); ++i) {
        const bool bold = i == 0 || (label.abroad && i + 1 == label.to.size());
        height += s.paragraph_height(s.width(), label.to[i], {size, bold ? Face::bold : Face::regular, Role::ink});
    }
    return height;
}

bool one_line_each(const Sheet& s, const LabelData& label, int size)
{
    return std::all_of(label.to.begin(), label.to.end(), [&](const std::string& line) {
        return s.width_of(line, {size, Face::bold, Role::ink}) <= s.width();
    });
}

// The largest size at which no line breaks; where none is, the largest at which the broken lines have room.
int address_size(const Sheet& s, const LabelData& label, int room)
{
    for (int size = most_size; size >= least_size; --size) {
        if (one_line_each(s, label, size) && height_at(s, label, size) <= room) return size;
    }
    for (int size = from_pt(14); size > least_size; --size) {
        if (height_at(s, label, size) <= room) return size;
    }
    return least_size;
}

} // namespace

LabelData label(const shop::Parcel& parcel, const shop::Address& to, const shop::House& house,
                const std::string& service, int part, int parts, int print)
{
    LabelData made;
    made.to = address_lines(to, house.address.country);
    made.abroad = to.country != house.address.country;
    made.from = address_lines(house.address, to.country);
    made.parcel = parcel.number;
    made.service = service;
    made.part = part;
    made.parts = parts;
    made.print = print;
    made.code = to_text(Payload{Payload::Kind::label, parcel.number, print}).value_or("");
    return made;
}

LabelData return_label(const shop::Parcel& parcel, const shop::Address& from, const shop::House& house, int print)
{
    LabelData made = label(parcel, from, house, {}, 1, 1, print);
    made.code = to_text(Payload{Payload::Kind::paper, parcel.number}).value_or(""); // never taken for the label
    made.to = address_lines(house.address, from.country);
    made.from = address_lines(from, house.address.country);
    made.returns = true;
    return made;
}

Extent extent_of(shop::LabelForm form)
{
    const Extent sheet = extent_of(Format::a4), grid = grid_of(form);
    switch (form) {
    case shop::LabelForm::single_100x150: return extent_of(Format::label_100x150);
    case shop::LabelForm::single_a6: return extent_of(Format::a6);
    case shop::LabelForm::roll_62: return {roll_width, longest_of_roll};
    case shop::LabelForm::a4_of_4:
    case shop::LabelForm::a4_of_6: return {sheet.width / grid.width, sheet.height / grid.height};
    }
    return {};
}

int labels_on_a_sheet(shop::LabelForm form)
{
    const Extent grid = grid_of(form);
    return grid.width * grid.height;
}

namespace {

int sender_height(const Sheet& s, const std::vector<std::string>& lines, int width)
{
    int height = s.line_height(sender_style);
    for (const std::string& line : lines) height += s.paragraph_height(width, line, sender_style);
    return height;
}

// The sender's lines: one each. Where the label is low or narrow as many together as the width takes; run on, a town
// torn from its code, only where that is lower.
std::vector<std::string> sender_lines(const Sheet& s, const LabelData& label, bool together, int width)
{
    if (!together) return label.from;
    std::vector<std::string> whole;
    std::string all;
    for (const std::string& line : label.from) {
        const std::string longer = whole.empty() ? line : whole.back() + " · " + line;
        if (!whole.empty() && s.width_of(longer, sender_style) <= width)
            whole.back() = longer;
        else
            whole.push_back(line);
        all += (all.empty() ? "" : " · ") + line;
    }
    const std::vector<std::string> run_on{all};
    return sender_height(s, run_on, width) < sender_height(s, whole, width) ? run_on : whole;
}

void set_sender(Sheet& s, const std::vector<std::string>& lines, int width)
{
    s.line(s.left(), s.y(), std::string(s.words()(Word::from)), Style{from_pt(9), Face::bold, Role::ink});
    s.block(s.left(), s.y() + s.line_height(sender_style), width, lines, [](std::size_t) { return sender_style; });
}

// The country stands a little apart. Returns the height.
int set_address(Sheet& s, const LabelData& label, int size, int top)
{
    const auto style_of = [&](std::size_t i) {
        const bool country = label.abroad && i + 1 == label.to.size();
        return Style{size, i == 0 || country ? Face::bold : Face::regular, Role::ink};
    };
    return s.block(s.left(), top, s.width(), label.to, style_of, label.abroad ? country_gap : 0);
}

struct FootPart {
    std::string text;
    Style style;
};

// Where handling marks find room: under the words of the foot, to their right, or at the right of the sender.
struct MarkRoom {
    int edge;
    enum class Place { under, beside, above } place;
};
// In the order in which they are tried.
constexpr std::array mark_rooms{
    MarkRoom{from_mm(11), MarkRoom::Place::under},  MarkRoom{from_mm(11), MarkRoom::Place::above},
    MarkRoom{from_mm(11), MarkRoom::Place::beside}, MarkRoom{from_mm(8), MarkRoom::Place::beside},
    MarkRoom{from_mm(8), MarkRoom::Place::above},   MarkRoom{from_mm(8), MarkRoom::Place::under},
    MarkRoom{from_mm(6), MarkRoom::Place::beside},  MarkRoom{from_mm(6), MarkRoom::Place::above}};

int row_of_marks(std::size_t count, int edge)
{
    return count == 0 ? 0 : static_cast<int>(count) * (edge + mark_gap) - mark_gap;
}

// What stands under the lower rule: number, part, service, handling marks, and the code to their right.
struct Foot {
    std::vector<FootPart> parts;
    std::string print;             // "print 2", in a frame beside the number
    int module = 0, edge = 0;      // of the code
    int width = 0, text_width = 0; // left of the code; of the words
    int height = 0;
    MarkRoom marks{};        // `above`: not in the foot
    int marks_top = 0;       // of those that stand under the words; from the top of the words
    bool under_code = false; // they stand under the code too, over the whole width
};

int framed_width(const Sheet& s, const Foot& foot)
{
    return foot.print.empty() ? 0 : s.width_of(foot.print, sender_style) + 2 * frame_pad;
}

// Nothing: the words have no room beside the marks. `narrow`: what stands by the number is run together.
std::optional<Foot> foot_of(const Sheet& s, const LabelData& label, bool narrow, const MarkRoom& marks)
{
    Foot foot;
    const Words& words = s.words();
    const Style strong{from_pt(11), Face::bold, Role::ink}, plain{from_pt(11), Face::regular, Role::ink};
    foot.parts.push_back({label.parcel, {from_pt(narrow ? 14 : 18), Face::bold, Role::ink}});
    if (label.print > 1) foot.print = words.with(Word::label_print, std::to_string(label.print));
    if (label.returns) foot.parts.push_back({std::string(words(Word::return_parcel)), strong});
    if (label.parts > 1) {
        foot.parts.push_back({words.with(Word::part, std::to_string(label.part), std::to_string(label.parts)), strong});
    }
    if (!label.service.empty()) foot.parts.push_back({label.service, plain});
    if (narrow && foot.parts.size() > 1) {
        std::string together;
        for (std::size_t i = 1; i < foot.parts.size(); ++i) together += (i > 1 ? " · " : "") + foot.parts[i].text;
        foot.parts.resize(1);
        foot.parts.push_back({together, sender_style});
    }
    // Six dots a module at 203 dpi: read at arm's length, and off a worn roll; five where there is little room.
    foot.module = narrow ? 63 : 75;
    const std::optional<QrCode> code = qr_code(label.code);
    foot.edge = code ? printed_edge(*code, foot.module) : 0;
    foot.width = s.width() - std::max(0, foot.edge - quiet_modules * foot.module);
    foot.marks = marks;
    const bool beside = marks.place == MarkRoom::Place::beside, under = marks.place == MarkRoom::Place::under;
    const int marks_width = beside ? row_of_marks(label.marks.size(), marks.edge) + mark_gap : 0;
    foot.text_width = foot.width - marks_width;
    const int number_width = s.width_of(foot.parts[0].text, foot.parts[0].style);
    if (beside && foot.text_width < std::max(number_width, least_foot_text)) return std::nullopt;
    for (const auto& [text, style] : foot.parts) foot.height += s.paragraph_height(foot.text_width, text, style);
    const bool own_line = number_width + frame_pad + framed_width(s, foot) > foot.text_width;
    if (!foot.print.empty() && own_line) foot.height += s.line_height(sender_style) + frame_pad;
    if (beside) foot.height = std::max(foot.height, marks.edge);
    const int code_height = foot.edge - 2 * quiet_modules * foot.module;
    if (under && !label.marks.empty()) {
        foot.under_code = row_of_marks(label.marks.size(), marks.edge) > foot.width;
        const int least_top = foot.under_code ? code_height + quiet_modules * foot.module : 0;
        foot.marks_top = std::max(foot.height + mark_gap, least_top);
        const int across =
            std::max(1, ((foot.under_code ? s.width() : foot.width) + mark_gap) / (marks.edge + mark_gap));
        const int rows = (static_cast<int>(label.marks.size()) + across - 1) / across;
        foot.height = foot.marks_top + rows * (marks.edge + mark_gap) - mark_gap;
    }
    foot.height = std::max(foot.height, code_height);
    return foot;
}

// Beside the number where there is room, else under it: she sees it, a carrier reads past it.
int set_print(Sheet& s, const Foot& foot, int number_top, int under_number)
{
    const auto& [number, style] = foot.parts[0];
    const int width = framed_width(s, foot), height = s.line_height(sender_style);
    const int beside = s.left() + s.width_of(number, style) + frame_pad;
    const bool own_line = beside + width > s.left() + foot.text_width;
    const int x = own_line ? s.left() : beside;
    const int top = own_line ? under_number : number_top + style.size - sender_style.size - frame_pad / 3;
    s.page().add(Path{{{x, top}, {x + width, top}, {x + width, top + height}, {x, top + height}},
                      true,
                      Pen{Role::ink, 25, Pen::Dash::solid},
                      std::nullopt});
    s.line(x + frame_pad, top + (height - sender_style.size * 5 / 4) / 2, foot.print, sender_style);
    return own_line ? height + frame_pad : 0;
}

// In rows from `at` on, none beyond `right`.
void set_marks(Sheet& s, const std::vector<HandlingMark>& marks, int edge, Point at, int right)
{
    int x = at.x, y = at.y;
    for (const HandlingMark mark : marks) {
        if (x > at.x && x + edge > right) {
            x = at.x;
            y += edge + mark_gap;
        }
        s.page().add(draw(mark, edge), {x, y});
        x += edge + mark_gap;
    }
}

void set_foot(Sheet& s, const LabelData& label, const std::vector<HandlingMark>& marks, const Foot& foot, int floor)
{
    s.rule(floor, Role::ink);
    const int quiet = quiet_modules * foot.module, top = floor + quiet;
    s.code({s.right() + quiet, floor}, label.code, foot.module);
    int y = top;
    for (std::size_t i = 0; i < foot.parts.size(); ++i) {
        y += s.paragraph(s.left(), y, foot.text_width, foot.parts[i].text, foot.parts[i].style);
        if (i == 0 && !foot.print.empty()) y += set_print(s, foot, top, y);
    }
    if (foot.marks.place == MarkRoom::Place::above) return;
    const int edge = foot.marks.edge;
    const bool beside = foot.marks.place == MarkRoom::Place::beside;
    set_marks(
        s, marks, edge,
        {s.left() + (beside ? foot.width - row_of_marks(marks.size(), edge) : 0), beside ? top : top + foot.marks_top},
        foot.under_code ? s.right() : s.left() + foot.width);
}

// Where everything goes on one label.
struct Setting {
    Foot foot;
    std::vector<HandlingMark> marks;
    std::vector<std::string> sender;
    int sender_width = 0, address_top = 0, for_address = 0;
    int size = 0;       // of the address; 0: it has no room
    bool tight = false; // no word "To" over it, little air
    LabelFit fit = LabelFit::all_of_it;
};

class Compositor {
public:
    Compositor(const Sheet& sheet, const LabelData& label, shop::LabelForm form)
        : s_(sheet), label_(label), roll_(form == shop::LabelForm::roll_62), narrow_(is_narrow(form))
    {
    }

    // The address comes first: where it would grow small or have no room, the marks do with less. More than the label
    // holds at a good size takes the air over it, then grows smaller; only then are marks left out, the first last.
    Setting best()
    {
        for (const std::size_t keep :
             {label_.marks.size(), std::min<std::size_t>(label_.marks.size(), 1), std::size_t{0}}) {
            label_.marks.resize(keep);
            for (const bool small : {false, true}) {
                for (const bool tight : {false, true}) {
                    if (best_.size == 0) try_rooms(tight, small);
                }
            }
            if (best_.size > 0) break;
            best_.fit = LabelFit::without_marks;
        }
        if (best_.size == 0) {
            best_ = setting(mark_rooms.front(), true).value_or(Setting{});
            best_.size = smallest_size;
            best_.fit = LabelFit::too_long;
        }
        return best_;
    }

private:
    void try_rooms(bool tight, bool small)
    {
        for (const MarkRoom& marks : mark_rooms) {
            if (best_.size >= good_size) return;
            auto made = setting(marks, tight);
            if (!made) continue;
            made->size = small ? small_size(made->for_address) : usual_size(made->for_address);
            made->fit = best_.fit;
            if (made->size > best_.size) best_ = std::move(*made);
        }
    }

    int usual_size(int room) const
    {
        if (height_at(s_, label_, least_size) > room) return 0;
        return roll_ ? from_pt(13) : address_size(s_, label_, room);
    }
    int small_size(int room) const
    {
        for (int size = least_size - 1; size >= smallest_size; --size) {
            if (height_at(s_, label_, size) <= room) return size;
        }
        return 0;
    }

    // Nothing: the marks have no room there. The foot takes what it needs, the address the rest.
    std::optional<Setting> setting(const MarkRoom& marks, bool tight) const
    {
        Setting made;
        const int row = row_of_marks(label_.marks.size(), marks.edge);
        const bool above = marks.place == MarkRoom::Place::above && row > 0;
        made.sender_width = s_.width() - (above ? row + 2 * mark_gap : 0);
        if (made.sender_width < least_foot_text) return std::nullopt;
        const auto foot = foot_of(s_, label_, narrow_, marks);
        if (!foot) return std::nullopt;
        made.foot = *foot;
        made.marks = label_.marks;
        made.tight = tight;
        made.sender = sender_lines(s_, label_, narrow_, made.sender_width);
        const int over = std::max(sender_height(s_, made.sender, made.sender_width), above ? marks.edge : 0);
        const int air = tight ? from_mm(4) : from_mm(narrow_ ? 10 : 12);
        made.address_top = std::max(narrow_ || tight ? 0 : usual_address_top, s_.y() + over + air);
        made.for_address = s_.bottom() - foot->height - quiet_modules * foot->module - from_mm(2) - made.address_top;
        return made;
    }

    const Sheet& s_;
    LabelData label_;
    bool roll_, narrow_;
    Setting best_;
};

} // namespace

LabelFit fit_of(const LabelData& label, const Words& words, const TextMeasure& measure, shop::LabelForm form)
{
    const Sheet s({extent_of(form), margin_of(form)}, words, measure, nullptr);
    return Compositor(s, label, form).best().fit;
}

DisplayList lay_out(const LabelData& label, const Words& words, const TextMeasure& measure, shop::LabelForm form)
{
    Sheet s({extent_of(form), margin_of(form)}, words, measure, nullptr);
    const Setting set = Compositor(s, label, form).best();
    const Foot& foot = set.foot;
    set_sender(s, set.sender, set.sender_width);
    if (foot.marks.place == MarkRoom::Place::above) {
        const int row = row_of_marks(set.marks.size(), foot.marks.edge);
        set_marks(s, set.marks, foot.marks.edge, {s.right() - row, s.y()}, s.right());
    }
    s.rule(set.address_top - from_mm(set.tight ? 2 : 8), Role::ink);
    if (!set.tight) s.line(s.left(), set.address_top - from_mm(6), std::string(words(Word::to)), sender_style);
    const int under_address = set.address_top + set_address(s, label, set.size, set.address_top);
    // A roll's label ends where the foot does.
    const bool roll = form == shop::LabelForm::roll_62;
    const int above_foot = quiet_modules * foot.module;
    const int floor = roll ? under_address + from_mm(3) : s.bottom() - foot.height - above_foot;
    set_foot(s, label, set.marks, foot, floor);
    if (roll) s.page().extent.height = floor + above_foot + foot.height + margin_of(form);
    return std::move(s.page());
}

Document lay_out(const std::vector<LabelData>& labels, int start_at, const Words& words, const TextMeasure& measure,
                 shop::LabelForm form)
{
    const Extent sheet = extent_of(Format::a4), grid = grid_of(form), one = extent_of(form);
    const int most = labels_on_a_sheet(form);
    Document document;
    int place = std::clamp(start_at, 1, most) - 1;
    for (const LabelData& label : labels) {
        if (most == 1) {
            document.pages.push_back(lay_out(label, words, measure, form));
            continue;
        }
        if (document.pages.empty() || place == most) {
            if (place == most) place = 0;
            document.pages.push_back({sheet, {}});
        }
        const Point corner{place % grid.width * one.width, place / grid.width * one.height};
        document.pages.back().add(lay_out(label, words, measure, form), corner);
        ++place;
    }
    return document;
}

} // namespace stow::papers
