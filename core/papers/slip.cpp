#include "core/papers/slip.h"

#include "core/papers/address.h"
#include "core/papers/payload.h"
#include "core/papers/sheet.h"

namespace stow::papers {

namespace {

constexpr int count_width = from_mm(14), amount_width = from_mm(28), logo_height = from_mm(16);

bool shows_prices(const Slip& slip)
{
    return slip.prices && !slip.gift;
}

std::string orders_text(const Slip& slip, const Words& words)
{
    std::string text(words(slip.order_numbers.size() == 1 ? Word::order : Word::orders));
    for (std::size_t i = 0; i < slip.order_numbers.size(); ++i) {
        text += (i == 0 ? " " : ", ") + slip.order_numbers[i];
    }
    return text + " " + std::string(words(Word::from_date)) + " " + words.date(slip.ordered);
}

void first_head(Sheet& s, const Slip& slip)
{
    const int top = s.y();
    const int edge = s.code({s.right() + quiet_edge, top - quiet_edge}, slip.code);
    if (edge > 0) {
        s.line(s.right(), top + edge - quiet_edge, slip.parcel, type::small, Align::end);
    }
    const int text_width = s.width() - edge - from_mm(6);
    if (!slip.logo.empty()) {
        s.page().add(Picture{{s.left(), s.y()}, {std::min(text_width, from_mm(60)), logo_height}, slip.logo});
        s.down(logo_height + from_mm(3));
    }
    for (std::size_t i = 0; i < slip.sender.size(); ++i) {
        s.down(s.paragraph(s.left(), s.y(), text_width, slip.sender[i], i == 0 ? type::large : type::quiet));
        if (i == 0) s.down(from_mm(1));
    }
    s.go_to(std::max(s.y(), top + edge) + from_mm(8));
    s.down(s.block(s.left(), s.y(), s.width() * 2 / 3, slip.to,
                   [](std::size_t i) { return i == 0 ? type::strong : type::body; }));
    s.down(from_mm(12));
}

// Column heads stand on every page.
void column_heads(Sheet& s, const Slip& slip)
{
    const Words& words = s.words();
    s.line(s.left(), s.y(), std::string(words(Word::count)), type::small);
    s.line(s.left() + count_width, s.y(), std::string(words(Word::item)), type::small);
    if (shows_prices(slip)) {
        s.line(s.right() - amount_width, s.y(), std::string(words(Word::price)), type::small, Align::end);
        s.line(s.right(), s.y(), std::string(words(Word::sum)), type::small, Align::end);
    }
    s.down(s.line_height(type::small) + from_mm(1));
    s.rule(s.y(), Role::second_ink);
}

void entry(Sheet& s, const Slip& slip, const Slip::Line& line, bool prices)
{
    const int width = s.width() - count_width - (shows_prices(slip) ? 2 * amount_width : 0) - from_mm(2);
    const int x = s.left() + count_width;
    const std::string personal = line.personal_text.empty() ? "" : s.words().quoted(line.personal_text);
    int height = s.paragraph_height(width, line.name, type::body);
    if (!line.variant.empty()) height += s.paragraph_height(width, line.variant, type::quiet);
    if (!personal.empty()) height += s.paragraph_height(width, personal, type::quiet);
    height += from_mm(4);
    s.need(height);
    const int top = s.y() + from_mm(2);
    s.line(s.left(), top, std::to_string(line.count), line.count > 1 ? type::strong : type::body);
    int y = top + s.paragraph(x, top, width, line.name, type::body);
    if (!line.variant.empty()) y += s.paragraph(x, y, width, line.variant, type::quiet);
    if (!personal.empty()) s.paragraph(x, y, width, personal, type::quiet);
    if (prices && line.price) {
        s.line(s.right() - amount_width, top, s.words().money(*line.price), type::body, Align::end);
        s.line(s.right(), top, s.words().money(*line.price * line.count), type::body, Align::end);
    }
    s.down(height);
    s.rule(s.y());
}

void totals(Sheet& s, const Slip& slip)
{
    std::optional<Money> goods;
    for (const Slip::Line& line : slip.lines) {
        if (!line.price) return; // a sum of some lines only would mislead
        const Money sum = *line.price * line.count;
        if (goods && goods->currency != sum.currency) return;
        goods = goods ? *goods + sum : sum;
    }
    if (!goods) return;
    const bool postage = slip.postage && slip.postage->currency == goods->currency;
    s.need(from_mm(24));
    s.down(from_mm(3));
    const auto row = [&](Word word, Money amount, const Style& style) {
        s.line(s.right() - amount_width - from_mm(6), s.y(), std::string(s.words()(word)), style, Align::end);
        s.line(s.right(), s.y(), s.words().money(amount), style, Align::end);
        s.down(s.line_height(style) + from_mm(1));
    };
    if (postage) {
        row(Word::goods_total, *goods, type::body);
        row(Word::postage, *slip.postage, type::body);
    }
    row(Word::total, postage ? *goods + *slip.postage : *goods, type::strong);
}

void gift_words(Sheet& s, const shop::Gift& gift)
{
    constexpr Style message{from_pt(14), Face::regular, Role::ink};
    const int width = s.width() * 4 / 5;
    if (!gift.message.empty()) {
        for (const std::string& line : s.wrapped(gift.message, width, message)) {
            s.need(s.line_height(message) + from_mm(1));
            s.paragraph(s.left(), s.y(), width, line, message);
            s.down(s.line_height(message) + from_mm(1));
        }
        s.down(from_mm(3));
    }
    if (!gift.giver.empty()) {
        const std::string giver = std::string(s.words()(Word::a_gift_from)) + " " + gift.giver;
        s.down(s.paragraph(s.left(), s.y(), width, giver, type::strong));
    }
    s.down(from_mm(10));
}

void closing(Sheet& s, const Slip& slip)
{
    const Words& words = s.words();
    const std::string contact = slip.contact.empty() ? "" : std::string(words(Word::questions)) + " " + slip.contact;
    s.need(from_mm(28));
    s.down(from_mm(10));
    if (slip.gift) {
        s.down(s.paragraph(s.left(), s.y(), s.width(), std::string(words(Word::exchange_number)), type::quiet));
        s.line(s.left(), s.y() + from_mm(1), slip.parcel, type::strong);
        s.down(s.line_height(type::strong) + from_mm(2));
    } else {
        s.down(s.paragraph(s.left(), s.y(), s.width(), std::string(words(Word::thank_you)), type::strong));
    }
    if (!contact.empty()) s.down(s.paragraph(s.left(), s.y(), s.width(), contact, type::quiet));
}

} // namespace

Slip slip(const shop::Parcel& parcel, const std::vector<shop::HeldOrder>& orders, const shop::Cupboard& cupboard,
          int part, int parts)
{
    Slip made;
    made.sender = address_lines(cupboard.house.address, cupboard.house.address.country);
    made.contact = cupboard.house.contact;
    made.parcel = parcel.number;
    made.part = part;
    made.parts = parts;
    made.code = to_text(Payload{Payload::Kind::paper, parcel.number}).value_or("");
    const auto as_line = [&](const shop::OrderLine& line, int count) {
        const shop::Good* good = cupboard.good(line.good);
        // The buyer's own words for it: the shop's title, our name where the shop gave none.
        const std::string name = !line.title.empty() ? line.title : good != nullptr ? good->name : line.good.text;
        return Slip::Line{count, name, line.variant, line.personal_text, line.price};
    };
    for (const shop::HeldOrder& held : orders) {
        const shop::Order& order = held.order;
        std::map<int, int> here; // order line to pieces in this parcel
        for (const shop::Piece& piece : parcel.pieces) {
            if (piece.order == held.id) here[piece.line] += piece.count;
        }
        if (here.empty()) continue;
        if (made.to.empty()) {
            made.to = address_lines(order.to, cupboard.house.address.country);
            made.ordered = order.date;
        }
        made.order_numbers.push_back(order.key.number);
        if (order.gift && !made.gift) made.gift = order.gift;
        if (parts == 1 && order.postage_paid) {
            if (!made.postage)
                made.postage = order.postage_paid;
            else if (made.postage->currency == order.postage_paid->currency)
                *made.postage += *order.postage_paid;
        }
        for (std::size_t i = 0; i < order.lines.size(); ++i) {
            const shop::OrderLine& line = order.lines[i];
            const int count = here[static_cast<int>(i)];
            if (count > 0) made.lines.push_back(as_line(line, count));
            if (count < line.count) made.apart.push_back(as_line(line, line.count - count));
        }
    }
    return made;
}

Document lay_out(const Slip& slip, const Blank& blank, const Words& words, const TextMeasure& measure)
{
    const std::string title(words(slip.gift ? Word::gift_slip : Word::packing_slip));
    const std::string which = slip.gift ? slip.parcel : orders_text(slip, words);
    bool in_table = false;
    const auto head = [&](Sheet& s, bool carried) {
        if (!carried) {
            first_head(s, slip);
            return;
        }
        s.carried_head(title + ", " + std::string(words(Word::continued)), which, from_mm(11));
        if (in_table) column_heads(s, slip);
    };
    Sheet s(blank, words, measure, head);
    s.line(s.left(), s.y(), title, type::title);
    s.down(s.line_height(type::title) + from_mm(1));
    if (!slip.gift) s.down(s.paragraph(s.left(), s.y(), s.width(), which, type::quiet));
    if (slip.parts > 1) {
        const std::string part = words.with(Word::part, std::to_string(slip.part), std::to_string(slip.parts));
        s.down(s.paragraph(s.left(), s.y(), s.width(), part, type::quiet));
    }
    s.down(from_mm(6));
    if (slip.gift) gift_words(s, *slip.gift);

    s.need(from_mm(30));
    column_heads(s, slip);
    in_table = true;
    for (const Slip::Line& line : slip.lines) entry(s, slip, line, shows_prices(slip));
    in_table = false;
    if (shows_prices(slip)) totals(s, slip);
    if (!slip.apart.empty()) {
        s.need(from_mm(30));
        s.down(from_mm(8));
        s.line(s.left(), s.y(), std::string(words(Word::follows_apart)), type::strong);
        s.down(s.line_height(type::strong) + from_mm(1));
        s.rule(s.y(), Role::second_ink);
        for (const Slip::Line& line : slip.apart) entry(s, slip, line, false);
    }
    closing(s, slip);
    return s.finish(title + " " + slip.parcel, slip.parcel, slip.reprint);
}

} // namespace stow::papers
