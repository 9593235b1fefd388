#include "core/papers/pick_list.h"

#include "core/papers/sheet.h"

#include <tuple>

namespace stow::papers {

namespace {

constexpr int box_edge = from_mm(7);
constexpr int chip_width = from_mm(27); // tick box, tray letter, quantity
constexpr int chip_height = from_mm(10);
constexpr int shelf_width = from_mm(24);
constexpr int deepest_set = 8; // sets within sets; deeper ones are a ring and stand as they are

bool is_digit(char c)
{
    return c >= '0' && c <= '9';
}

int pieces_of(const PickSheet::Line& line)
{
    int pieces = 0;
    for (const PickSheet::Into& into : line.into) pieces += into.count;
    return pieces;
}

// The letter large, then whose order it is; a note is read before the walk begins.
int tray_entry(Sheet& s, int x, int top, int width, const PickSheet::Tray& tray, bool name_orders = false)
{
    constexpr int indent = from_mm(10);
    s.line(x, top, tray.letter, type::large);
    int y = top;
    y += s.paragraph(x + indent, y, width - indent, tray.buyer, type::body);
    std::string second = tray.parcel;
    if (name_orders && !tray.orders.empty()) {
        const Word word = tray.orders.size() == 1 ? Word::order : Word::orders;
        second += " · " + std::string(s.words()(word));
        for (const std::string& number : tray.orders) second += (&number == &tray.orders.front() ? " " : ", ") + number;
    }
    if (tray.gift) second += " · " + std::string(s.words()(Word::gift));
    s.line(x + indent, y, second, type::small);
    y += s.line_height(type::small);
    if (!tray.note.empty()) {
        const int height = s.paragraph(x + indent, y + 60, width - indent, s.words().quoted(tray.note), type::small);
        s.page().add(Path{{{x + indent - 150, y + 110}, {x + indent - 150, y + height}},
                          false,
                          Pen{Role::ochre, 80, Pen::Dash::solid},
                          std::nullopt});
        y += height + 60;
    }
    return y - top;
}

int tray_height(const Sheet& s, int width, const PickSheet::Tray& tray)
{
    constexpr int indent = from_mm(10);
    int height = s.paragraph_height(width - indent, tray.buyer, type::body) + s.line_height(type::small);
    if (!tray.note.empty()) height += 60 + s.paragraph_height(width - indent, s.words().quoted(tray.note), type::small);
    return height;
}

void trays(Sheet& s, const PickSheet& sheet)
{
    constexpr std::size_t columns = 3;
    const int width = s.width() / static_cast<int>(columns);
    for (std::size_t from = 0; from < sheet.trays.size(); from += columns) {
        const std::size_t to = std::min(from + columns, sheet.trays.size());
        int height = 0;
        for (std::size_t i = from; i < to; ++i) height = std::max(height, tray_height(s, width - 300, sheet.trays[i]));
        s.need(height);
        for (std::size_t i = from; i < to; ++i) {
            tray_entry(s, s.left() + width * static_cast<int>(i - from), s.y(), width - 300, sheet.trays[i]);
        }
        s.down(height + from_mm(4));
    }
}

// What one tray gets: a box to tick, the tray's letter, how many.
void chip(Sheet& s, int x, int top, const PickSheet::Into& into)
{
    s.tick_box({x, top + (chip_height - box_edge) / 2}, box_edge);
    s.line(x + box_edge + from_mm(2), top + (chip_height - s.line_height(type::large)) / 2, into.tray, type::large);
    s.quantity({x + box_edge + from_mm(12), top + chip_height / 2}, into.count, from_pt(13));
}

void entry(Sheet& s, const PickSheet::Line& line, bool name_shelf)
{
    constexpr Style name{from_pt(12), Face::bold, Role::ink}, variant{from_pt(12), Face::regular, Role::ink};
    const int across = std::clamp(static_cast<int>(line.into.size()), 1, 3);
    const int chips_width = chip_width * across;
    const int text_width = s.width() - shelf_width - chips_width - from_mm(4);
    const int rows = (static_cast<int>(line.into.size()) + across - 1) / across;

    const std::string personal = line.personal_text.empty() ? "" : s.words().quoted(line.personal_text);
    int text_height = s.paragraph_height(text_width, line.name, name);
    if (!line.variant.empty()) text_height += s.paragraph_height(text_width, line.variant, variant);
    if (!personal.empty()) text_height += 60 + s.paragraph_height(text_width, personal, name);
    if (line.into.size() > 1) text_height += s.line_height(type::small);
    const int height = std::max({text_height + from_mm(2), rows * chip_height, from_mm(11)}) + from_mm(2);

    const std::size_t pages = s.pages();
    s.need(height);
    if (name_shelf || s.pages() != pages) {
        s.rule(s.y());
        const std::string shelf = line.shelf.empty() ? std::string(s.words()(Word::no_shelf)) : line.shelf;
        const Style style = line.shelf.empty() ? type::quiet : Style{from_pt(16), Face::bold, Role::ink};
        s.paragraph(s.left(), s.y() + from_mm(2), shelf_width - 200, shelf, style);
    } else {
        s.rule(s.left() + shelf_width, s.right(), s.y());
    }
    const int top = s.y() + from_mm(2), x = s.left() + shelf_width;
    int y = top;
    y += s.paragraph(x, y, text_width, line.name, name);
    if (!line.variant.empty()) y += s.paragraph(x, y, text_width, line.variant, variant);
    if (!personal.empty()) {
        const int used = s.paragraph(x, y + 60, text_width, personal, name);
        s.page().add(Path{{{x - 200, y + 130}, {x - 200, y + 60 + used - 60}},
                          false,
                          Pen{Role::ochre, 100, Pen::Dash::solid},
                          std::nullopt});
        y += used + 60;
    }
    if (line.into.size() > 1) {
        s.line(x, y, std::to_string(pieces_of(line)) + " " + std::string(s.words()(Word::pieces)), type::small);
    }
    for (std::size_t i = 0; i < line.into.size(); ++i) {
        const int column = static_cast<int>(i) % across, row = static_cast<int>(i) / across;
        chip(s, s.right() - chips_width + column * chip_width, s.y() + from_mm(1) + row * chip_height, line.into[i]);
    }
    s.down(height);
}

} // namespace

bool shelf_before(const std::string& a, const std::string& b)
{
    if (a.empty() != b.empty()) return b.empty();
    std::size_t i = 0, j = 0;
    while (i < a.size() && j < b.size()) {
        if (is_digit(a[i]) && is_digit(b[j])) {
            // Numbers compare without leading zeros: the longer is the greater.
            while (i < a.size() && a[i] == '0') ++i;
            while (j < b.size() && b[j] == '0') ++j;
            std::size_t end_a = i, end_b = j;
            while (end_a < a.size() && is_digit(a[end_a])) ++end_a;
            while (end_b < b.size() && is_digit(b[end_b])) ++end_b;
            if (end_a - i != end_b - j) return end_a - i < end_b - j;
            const int order = a.compare(i, end_a - i, b, j, end_b - j);
            if (order != 0) return order < 0;
            i = end_a;
            j = end_b;
        } else if (a[i] != b[j]) {
            return a[i] < b[j];
        } else {
            ++i;
            ++j;
        }
    }
    if ((i == a.size()) != (j == b.size())) return i == a.size();
    return a < b; // 07 and 7 are one place, but an order must be strict
}

PickSheet pick_sheet(Date day, int round, const std::vector<shop::Parcel>& parcels,
                     const std::vector<shop::HeldOrder>& orders, const shop::Cupboard& cupboard)
{
    PickSheet sheet;
    sheet.day = day;
    sheet.round = round;
    const auto order_of = [&](shop::OrderId id) -> const shop::Order* {
        const auto found = std::find_if(orders.begin(), orders.end(), [&](const auto& o) { return o.id == id; });
        return found == orders.end() ? nullptr : &found->order;
    };
    // Keyed so that iteration is the walk: shelf, then good, then variant and personal text.
    const auto walk = [](const PickSheet::Line& a, const PickSheet::Line& b) {
        if (a.shelf != b.shelf) return shelf_before(a.shelf, b.shelf);
        return std::tie(a.code, a.variant, a.personal_text) < std::tie(b.code, b.variant, b.personal_text);
    };
    std::map<PickSheet::Line, std::map<std::string, int>, decltype(walk)> lines(walk);
    // `ordered` gives the words where the good is not known, and the personal text.
    const std::function<void(const shop::GoodCode&, int, const std::string&, const shop::OrderLine&, int)> pick =
        [&](const shop::GoodCode& code, int count, const std::string& tray, const shop::OrderLine& ordered, int depth) {
            const shop::Good* good = cupboard.good(code);
            if (good != nullptr && !good->parts.empty() && depth < deepest_set) {
                for (const shop::SetPart& part : good->parts) {
                    pick(part.good, part.count * count, tray, ordered, depth + 1);
                }
                return;
            }
            PickSheet::Line line;
            line.code = code.text;
            line.personal_text = ordered.personal_text;
            if (good != nullptr) {
                line.name = good->name;
                line.shelf = good->shelf;
            } else {
                line.name = ordered.title.empty() ? code.text : ordered.title;
                line.variant = ordered.variant;
            }
            lines[line][tray] += count;
        };
    for (const shop::Parcel& parcel : parcels) {
        PickSheet::Tray tray{parcel.tray, parcel.number, {}, false, {}, {}};
        for (const shop::Piece& piece : parcel.pieces) {
            const shop::Order* order = order_of(piece.order);
            shop::OrderLine ordered;
            if (order != nullptr) {
                if (tray.buyer.empty()) tray.buyer = order->to.name;
                const std::string& number = order->key.number;
                if (std::find(tray.orders.begin(), tray.orders.end(), number) == tray.orders.end())
                    tray.orders.push_back(number);
                tray.gift = tray.gift || order->gift.has_value();
                if (!order->note.empty() && tray.note.find(order->note) == std::string::npos) {
                    tray.note += (tray.note.empty() ? "" : "\n") + order->note;
                }
                const auto index = static_cast<std::size_t>(piece.line);
                if (piece.line >= 0 && index < order->lines.size()) {
                    ordered = order->lines[index];
                }
            }
            pick(piece.good, piece.count, parcel.tray, ordered, 0);
        }
        sheet.trays.push_back(std::move(tray));
    }
    for (const auto& [line, into] : lines) {
        sheet.lines.push_back(line);
        for (const auto& [tray, count] : into) sheet.lines.back().into.push_back({tray, count});
    }
    return sheet;
}

namespace {

// "Round 3 · 25 November 2026 · 6 trays · 31 pieces"
std::string what_is_picked(const PickSheet& sheet, const Words& words)
{
    int pieces = 0;
    for (const PickSheet::Line& line : sheet.lines) pieces += pieces_of(line);
    return std::string(words(Word::round)) + " " + std::to_string(sheet.round) + " · " + words.date(sheet.day) + " · " +
           std::to_string(sheet.trays.size()) + " " + std::string(words(Word::trays)) + " · " + std::to_string(pieces) +
           " " + std::string(words(Word::pieces));
}

// `tray`: carried on with its pieces where a page ends within it; empty: none.
Sheet::Head head_of(const std::string& title, const std::string& what, const std::string& tray)
{
    return [&title, &what, &tray](Sheet& s, bool carried) {
        if (carried) {
            s.carried_head(title + ", " + std::string(s.words()(Word::continued)), what, from_mm(9));
            if (tray.empty()) return;
            s.line(s.left(), s.y(), tray, type::large);
            s.down(s.line_height(type::large) + from_mm(2));
            return;
        }
        s.line(s.left(), s.y(), title, type::title);
        s.down(s.line_height(type::title));
        s.line(s.left(), s.y(), what, type::quiet);
        s.down(s.line_height(type::quiet) + from_mm(5));
    };
}

constexpr Style good_name{from_pt(12), Face::bold, Role::ink}, good_variant{from_pt(12), Face::regular, Role::ink};
constexpr int tick_width = from_mm(11), quantity_width = from_mm(13);

// A box to tick, how many, what, and at the right where it lies.
int tray_line_height(const Sheet& s, const PickSheet::Line& line, int width)
{
    int height = s.paragraph_height(width, line.name, good_name);
    if (!line.variant.empty()) height += s.paragraph_height(width, line.variant, good_variant);
    if (!line.personal_text.empty())
        height += s.paragraph_height(width, s.words().quoted(line.personal_text), good_name);
    return std::max(height, box_edge) + from_mm(3);
}

void tray_line(Sheet& s, const PickSheet::Line& line, int count)
{
    const int x = s.left() + tick_width + quantity_width, width = s.right() - shelf_width - from_mm(2) - x;
    const int height = tray_line_height(s, line, width);
    s.need(height);
    s.rule(s.left(), s.right(), s.y());
    const int top = s.y() + from_mm(3) / 2;
    s.tick_box({s.left(), top}, box_edge);
    s.quantity({s.left() + tick_width + from_mm(5), top + box_edge / 2}, count, from_pt(13));
    int y = top;
    y += s.paragraph(x, y, width, line.name, good_name);
    if (!line.variant.empty()) y += s.paragraph(x, y, width, line.variant, good_variant);
    if (!line.personal_text.empty()) s.paragraph(x, y, width, s.words().quoted(line.personal_text), good_name);
    const std::string shelf = line.shelf.empty() ? std::string(s.words()(Word::no_shelf)) : line.shelf;
    s.paragraph(s.right() - shelf_width, top, shelf_width, shelf, line.shelf.empty() ? type::quiet : type::strong);
    s.down(height);
}

} // namespace

Document lay_out(const PickSheet& sheet, const Blank& blank, const Words& words, const TextMeasure& measure)
{
    const std::string title(words(Word::pick_list)), what = what_is_picked(sheet, words), no_tray;
    Sheet s(blank, words, measure, head_of(title, what, no_tray));
    trays(s, sheet);
    s.down(from_mm(3));
    const std::string* shelf = nullptr;
    for (const PickSheet::Line& line : sheet.lines) {
        entry(s, line, shelf == nullptr || *shelf != line.shelf);
        shelf = &line.shelf;
    }
    if (!sheet.lines.empty()) s.rule(s.y());
    return s.finish(title, what, sheet.reprint);
}

Document lay_out_by_order(const PickSheet& sheet, const Blank& blank, const Words& words, const TextMeasure& measure)
{
    const std::string title(words(Word::pick_list_by_order)), what = what_is_picked(sheet, words);
    std::string carried_tray;
    Sheet s(blank, words, measure, head_of(title, what, carried_tray));
    const int first_line = s.width() - shelf_width - from_mm(2) - tick_width - quantity_width;
    for (const PickSheet::Tray& tray : sheet.trays) {
        std::vector<std::pair<const PickSheet::Line*, int>> lines;
        for (const PickSheet::Line& line : sheet.lines) {
            for (const PickSheet::Into& into : line.into) {
                if (into.tray == tray.letter) lines.emplace_back(&line, into.count);
            }
        }
        if (lines.empty()) continue;
        carried_tray.clear();
        // The head of a tray stands with its first good at least.
        s.need(tray_height(s, s.width(), tray) + from_mm(3) + tray_line_height(s, *lines.front().first, first_line));
        s.rule(s.y(), Role::ink);
        s.down(from_mm(3));
        s.down(tray_entry(s, s.left(), s.y(), s.width(), tray, true) + from_mm(2));
        carried_tray = tray.letter + " · " + tray.parcel + ", " + std::string(words(Word::continued));
        for (const auto& [line, count] : lines) tray_line(s, *line, count);
        carried_tray.clear();
        s.down(from_mm(6));
    }
    return s.finish(title, what, sheet.reprint);
}

} // namespace stow::papers
