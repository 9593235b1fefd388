#include "core/papers/customs.h"

#include "core/papers/address.h"
#include "core/papers/sheet.h"

#include <tuple>

namespace stow::papers {

namespace {

constexpr int weight_width = from_mm(20), value_width = from_mm(30), tariff_width = from_mm(24),
              origin_width = from_mm(18);

std::string_view category_of(const Words& words, CustomsData::Category category)
{
    switch (category) {
    case CustomsData::Category::sold_goods: return words(Word::sold_goods);
    case CustomsData::Category::gift: return words(Word::gift_category);
    case CustomsData::Category::documents: return words(Word::documents);
    case CustomsData::Category::sample: return words(Word::sample);
    case CustomsData::Category::returned: return words(Word::returned);
    }
    return {};
}

struct Columns {
    int what, what_width, weight, value, tariff, origin;
};

Columns columns(const Sheet& s)
{
    Columns c{};
    c.what = s.left();
    c.origin = s.right() - origin_width;
    c.tariff = c.origin - tariff_width;
    c.value = c.tariff - from_mm(5); // right edges of numbers
    c.weight = c.value - value_width;
    c.what_width = c.weight - weight_width - c.what;
    return c;
}

void column_heads(Sheet& s)
{
    const Columns c = columns(s);
    const Words& words = s.words();
    const std::string what(words(Word::description));
    const int width = c.weight - s.width_of(std::string(words(Word::net_weight)), type::small) - from_mm(3) - c.what;
    s.down(s.paragraph_height(width, what, type::small) -
           s.line_height(type::small)); // the others beside its last line
    s.paragraph(c.what, s.y() + s.line_height(type::small) - s.paragraph_height(width, what, type::small), width, what,
                type::small);
    s.line(c.weight, s.y(), std::string(words(Word::net_weight)), type::small, Align::end);
    s.line(c.value, s.y(), std::string(words(Word::value)), type::small, Align::end);
    s.line(c.tariff, s.y(), std::string(words(Word::tariff_number)), type::small);
    s.line(c.origin, s.y(), std::string(words(Word::origin)), type::small);
    s.down(s.line_height(type::small) + from_mm(1));
    s.rule(s.y(), Role::second_ink);
}

void entry(Sheet& s, const CustomsData::Line& line)
{
    const Columns c = columns(s);
    constexpr Style lacking{from_pt(10), Face::bold, Role::brick};
    const std::string missing(s.words()(Word::missing));
    const std::string what =
        std::to_string(line.count) + " × " + (line.description.empty() ? missing : line.description);
    const Style& what_style = line.description.empty() ? lacking : type::body;
    const int height = s.paragraph_height(c.what_width, what, what_style) + from_mm(4);
    s.need(height);
    const int top = s.y() + from_mm(2);
    s.paragraph(c.what, top, c.what_width, what, what_style);
    s.line(c.weight, top, s.words().weight(line.weight), type::body, Align::end);
    s.line(c.value, top, line.value ? s.words().money(*line.value) : missing, line.value ? type::body : lacking,
           Align::end);
    const auto code = [&](int x, const std::string& text) {
        s.line(x, top, text.empty() ? missing : text, text.empty() ? lacking : type::body);
    };
    code(c.tariff, line.tariff_number);
    code(c.origin, line.origin);
    s.down(height);
    s.rule(s.y());
}

void totals(Sheet& s, const CustomsData& data)
{
    const Columns c = columns(s);
    Weight net;
    std::optional<Money> value;
    bool all_valued = true;
    for (const CustomsData::Line& line : data.lines) {
        net += line.weight;
        all_valued = all_valued && line.value && (!value || value->currency == line.value->currency);
        if (all_valued) value = value ? *value + *line.value : *line.value;
    }
    s.down(from_mm(2));
    s.line(c.what, s.y(), std::string(s.words()(Word::total)), type::strong);
    s.line(c.weight, s.y(), s.words().weight(net), type::strong, Align::end);
    if (all_valued && value) s.line(c.value, s.y(), s.words().money(*value), type::strong, Align::end);
    s.down(s.line_height(type::strong));
    if (!data.gross) return;
    s.line(c.what, s.y(), std::string(s.words()(Word::gross_weight)), type::strong);
    s.line(c.weight, s.y(), s.words().weight(*data.gross), type::strong, Align::end);
    s.down(s.line_height(type::strong));
}

void two_addresses(Sheet& s, const CustomsData& data)
{
    const int half = s.width() / 2 - from_mm(4), top = s.y();
    int low = top;
    int x = s.left();
    for (const auto& [word, lines] : {std::pair(Word::from, &data.from), std::pair(Word::to, &data.to)}) {
        int y = top;
        s.line(x, y, std::string(s.words()(word)), type::small);
        y += s.line_height(type::small);
        y += s.block(x, y, half, *lines, [](std::size_t) { return type::body; });
        if (word == Word::from && !data.contact.empty()) y += s.paragraph(x, y, half, data.contact, type::quiet);
        low = std::max(low, y);
        x += s.width() / 2 + from_mm(4);
    }
    s.go_to(low + from_mm(8));
}

constexpr int deepest_set = 8; // sets within sets; deeper ones are a ring

// A set weighs what its parts do.
Weight net_weight(const shop::Cupboard& cupboard, const shop::Good& good, int depth)
{
    if (good.parts.empty() || depth >= deepest_set) return cupboard.weight_of(good).one.mean;
    Weight sum;
    for (const shop::SetPart& part : good.parts) {
        const shop::Good* of_it = cupboard.good(part.good);
        if (of_it != nullptr) sum += net_weight(cupboard, *of_it, depth + 1) * part.count;
    }
    return sum;
}

} // namespace

CustomsData customs_data(const shop::Parcel& parcel, const std::vector<shop::HeldOrder>& orders,
                         const shop::Cupboard& cupboard, std::optional<Weight> gross, Date date)
{
    CustomsData data;
    data.contact = cupboard.house.contact;
    data.parcel = parcel.number;
    data.gross = gross;
    data.date = date;
    const std::function<void(const shop::GoodCode&, int, std::optional<Money>, const std::string&, int)> declare =
        [&](const shop::GoodCode& code, int count, std::optional<Money> value, const std::string& title, int depth) {
            const shop::Good* good = cupboard.good(code);
            CustomsData::Line line;
            line.count = count;
            line.value = value;
            if (good == nullptr) {
                line.description = title;
                data.lines.push_back(std::move(line));
                return;
            }
            if (!good->parts.empty() && good->customs_words.empty() && depth < deepest_set) {
                std::int64_t all = 0, before = 0;
                const auto weight_of = [&](const shop::SetPart& part) {
                    const shop::Good* p = cupboard.good(part.good);
                    return p == nullptr ? 0 : (net_weight(cupboard, *p, depth + 1) * part.count).units;
                };
                for (const shop::SetPart& part : good->parts) all += weight_of(part);
                for (const shop::SetPart& part : good->parts) {
                    std::optional<Money> part_value;
                    if (value && all > 0) { // differences of rounded sums, so that the shares add up
                        const std::int64_t after = before + weight_of(part);
                        part_value = share(*value, after, all) - share(*value, before, all);
                        before = after;
                    }
                    declare(part.good, part.count * count, part_value, {}, depth + 1);
                }
                return;
            }
            line.description = good->customs_words;
            line.weight = net_weight(cupboard, *good, depth) * count;
            line.tariff_number = good->hs_code;
            line.origin = good->origin;
            data.lines.push_back(std::move(line));
        };
    for (const shop::Piece& piece : parcel.pieces) {
        const auto held =
            std::find_if(orders.begin(), orders.end(), [&](const auto& o) { return o.id == piece.order; });
        std::optional<Money> value;
        std::string title;
        if (held != orders.end()) {
            const shop::Order& order = held->order;
            if (data.to.empty()) {
                data.to = address_lines(order.to, cupboard.house.address.country);
                data.from = address_lines(cupboard.house.address, order.to.country);
            }
            const auto index = static_cast<std::size_t>(piece.line);
            if (piece.line >= 0 && index < order.lines.size()) {
                title = order.lines[index].title;
                if (order.lines[index].price) value = *order.lines[index].price * piece.count;
            }
        }
        declare(piece.good, piece.count, value, title, 0);
    }
    return data;
}

std::vector<CustomsFault> faults(const CustomsData& data)
{
    std::vector<CustomsFault> found;
    Weight net;
    std::optional<Money> first;
    bool mixed = false;
    for (const CustomsData::Line& line : data.lines) {
        const auto lacks = [&](CustomsLack lack) { found.push_back({lack, line.description}); };
        if (line.description.empty())
            lacks(CustomsLack::description);
        else if (shop::vague_words(line.description))
            lacks(CustomsLack::vague);
        if (!shop::hs_code_ok(line.tariff_number)) lacks(CustomsLack::tariff_number);
        if (line.origin.empty()) lacks(CustomsLack::origin);
        if (!line.value) lacks(CustomsLack::value);
        if (line.value && first && first->currency != line.value->currency) mixed = true;
        if (line.value && !first) first = line.value;
        net += line.weight;
    }
    if (mixed) found.push_back({CustomsLack::two_currencies, {}});
    if (data.gross && net > *data.gross) found.push_back({CustomsLack::heavier_than_parcel, {}});
    return found;
}

Document lay_out(const CustomsData& data, const Blank& blank, const Words& words, const TextMeasure& measure)
{
    const std::string title(words(Word::customs_data));
    bool in_table = false;
    const auto head = [&](Sheet& s, bool carried) {
        if (carried) {
            s.carried_head(title + ", " + std::string(words(Word::continued)), data.parcel, from_mm(11));
            if (in_table) column_heads(s);
            return;
        }
        s.line(s.left(), s.y(), title, type::title);
        s.line(s.right(), s.y() + 150, data.parcel, type::large, Align::end);
        s.down(s.line_height(type::title) + from_mm(1));
        s.down(s.paragraph(s.left(), s.y(), s.width(), std::string(words(Word::customs_note)), type::quiet) +
               from_mm(6));
        two_addresses(s, data);
    };
    Sheet s(blank, words, measure, head);
    const std::string category =
        std::string(words(Word::category)) + ": " + std::string(category_of(words, data.category));
    s.line(s.left(), s.y(), category, type::strong);
    if (data.form != shop::CustomsForm::none) {
        s.line(s.right(), s.y(), data.form == shop::CustomsForm::cn22 ? "CN 22" : "CN 23", type::strong, Align::end);
    }
    s.down(s.line_height(type::strong) + from_mm(2));
    for (const auto& [name, number] : data.numbers) {
        s.line(s.left(), s.y(), std::string(name).append(": ").append(number), type::body);
        s.down(s.line_height(type::body));
    }
    s.down(from_mm(3));
    column_heads(s);
    in_table = true;
    for (const CustomsData::Line& line : data.lines) entry(s, line);
    in_table = false;
    s.need(from_mm(40));
    totals(s, data);
    const int line_y = s.y() + from_mm(20);
    s.line(s.left(), line_y - s.line_height(type::body), words.date(data.date), type::body);
    s.rule(s.left(), s.left() + s.width() / 2, line_y, Role::ink);
    s.line(s.left(), line_y + from_mm(1), std::string(words(Word::date_signature)), type::small);
    return s.finish(title + " " + data.parcel, title + " · " + data.parcel);
}

} // namespace stow::papers
