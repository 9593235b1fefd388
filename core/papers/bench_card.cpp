#include "core/papers/bench_card.h"

#include "core/papers/flat_views.h"
#include "core/papers/payload.h"
#include "core/papers/sheet.h"

#include <array>
#include <numeric>

namespace stow::papers {

namespace {

constexpr Style value_style{from_pt(12), Face::bold, Role::ink};

std::string outer_words(const Words& words, OuterKind kind)
{
    switch (kind) {
    case OuterKind::carton: return std::string(words(Word::carton));
    case OuterKind::gift_box: return std::string(words(Word::gift_box));
    case OuterKind::mailer: return std::string(words(Word::mailer));
    case OuterKind::padded_mailer: return std::string(words(Word::padded_mailer));
    case OuterKind::board_mailer: return std::string(words(Word::board_mailer));
    case OuterKind::tube: return std::string(words(Word::tube));
    }
    return {};
}

// A short bar before what must not be overlooked.
void beside_bar(Sheet& s, const std::string& text, const Style& style, Role role)
{
    constexpr int indent = from_mm(4);
    const int height = s.paragraph(s.left() + indent, s.y(), s.width() - indent, text, style);
    s.page().add(Path{{{s.left() + 50, s.y() + 60}, {s.left() + 50, s.y() + height - 60}},
                      false,
                      Pen{role, 100, Pen::Dash::solid},
                      std::nullopt});
    s.down(height + from_mm(2));
}

void head_of_card(Sheet& s, const BenchCard& card)
{
    constexpr Style number{from_pt(28), Face::bold, Role::ink};
    const Words& words = s.words();
    const int top = s.y();
    const int edge = s.code({s.right() + quiet_edge, top - quiet_edge}, card.code);
    const int tray_space = card.tray.empty() ? 0 : from_mm(24);
    if (!card.tray.empty()) {
        const Point centre{s.right() + quiet_edge - edge - from_mm(13), top + from_mm(9)};
        Arc ring;
        ring.centre = centre;
        ring.first = ring.second = from_mm(9);
        ring.pen = Pen{Role::ink, 60, Pen::Dash::solid};
        s.page().add(ring);
        constexpr int size = from_pt(28);
        s.page().add(TextLine{
            {centre.x, centre.y + size * 36 / 100}, card.tray, number, Align::centre, Direction::left_to_right});
        s.line(centre.x, top + from_mm(19), std::string(words(Word::tray)), type::small, Align::centre);
    }
    const int text_width = s.width() - edge - tray_space;
    s.line(s.left(), top - from_mm(2), card.parcel, number);
    s.go_to(top + s.line_height(number) - from_mm(2));
    std::string orders;
    for (const std::string& order : card.order_numbers) orders += (orders.empty() ? "" : ", ") + order;
    s.down(s.paragraph(s.left(), s.y(), text_width, card.buyer, type::strong));
    const Word word = card.order_numbers.size() == 1 ? Word::order : Word::orders;
    const std::string where =
        card.town + " · " + card.country + (orders.empty() ? "" : " · " + std::string(words(word)) + " " + orders);
    s.down(s.paragraph(s.left(), s.y(), text_width, where, type::quiet));
    s.go_to(std::max(s.y(), top + edge - quiet_edge) + from_mm(5));
}

// As high as usual, or so many percent of it.
void drawings(Sheet& s, const BenchCard& card, int percent)
{
    const Words& words = s.words();
    const std::vector<int> layer = layers(card.arrangement.placements);
    const int count = layer.empty() ? 1 : *std::max_element(layer.begin(), layer.end());
    const bool by_layer =
        count > 1 && !is_sleeve(card.arrangement.form.kind) && card.arrangement.form.kind != OuterKind::tube;
    if (!by_layer) {
        View view;
        const bool tube = card.arrangement.form.kind == OuterKind::tube;
        view.extent = {tube ? s.width() : s.width() * 4 / 5, from_mm(tube ? 45 : 84) * percent / 100};
        view.filler = !card.filler.empty();
        s.need(view.extent.height);
        s.page().add(draw(card.arrangement, view), {s.left() + (s.width() - view.extent.width) / 2, s.y()});
        s.down(view.extent.height + from_mm(5));
        return;
    }
    const int columns = std::min(count, 3), gap = from_mm(6);
    View view;
    view.extent.width = (s.width() - gap * (columns - 1)) / columns;
    view.extent.height = from_mm(columns == 2 ? 74 : 54) * percent / 100;
    view.filler = !card.filler.empty();
    view.number_size = from_pt(9);
    for (int from = 1; from <= count; from += columns) {
        s.need(view.extent.height + from_mm(6));
        for (int one = from; one < from + columns && one <= count; ++one) {
            const int x = s.left() + (one - from) * (view.extent.width + gap);
            view.up_to_layer = view.number_layer = one;
            const std::string caption = std::string(words(Word::layer)) + " " + std::to_string(one);
            s.page().add(draw(card.arrangement, view), {x, s.y()});
            s.line(x + view.extent.width / 2, s.y() + view.extent.height + from_mm(1), caption, type::small,
                   Align::centre);
        }
        s.down(view.extent.height + from_mm(9));
    }
}

std::string second_line(const Words& words, const BenchCard::Step& step)
{
    std::string text;
    const auto also = [&](const std::string& part) {
        if (!part.empty()) text += (text.empty() ? "" : " · ") + part;
    };
    if (!step.personal_text.empty()) also(words.quoted(step.personal_text));
    also(step.wrapping);
    if (step.rolled) also(std::string(words(Word::rolled)));
    if (step.folded) also(std::string(words(Word::folded)));
    if (step.under_cushion) also(std::string(words(Word::under_cushion)));
    return text;
}

void steps(Sheet& s, const BenchCard& card)
{
    constexpr int box_edge = from_mm(6), disc_size = from_pt(10), disc_step = disc_size * 2;
    const Style name{from_pt(12), Face::bold, Role::ink};
    s.rule(s.y());
    for (const BenchCard::Step& step : card.steps) {
        const int discs = std::min(4, static_cast<int>(step.numbers.size()));
        const int disc_rows = discs == 0 ? 0 : (static_cast<int>(step.numbers.size()) + 3) / 4;
        const int x = s.left() + std::max(1, discs) * disc_step + from_mm(2);
        const int width = s.right() - box_edge - from_mm(3) - x;
        const std::string called = step.own_paper ? std::string(s.words()(*step.own_paper)) : step.name;
        const std::string what = step.count > 1 ? std::to_string(step.count) + " × " + called : called;
        const std::string second = second_line(s.words(), step);
        int height = s.paragraph_height(width, what, name);
        if (!second.empty()) height += s.paragraph_height(width, second, type::quiet);
        for (const std::string& inside : step.content) height += s.paragraph_height(width, inside, type::quiet);
        height = std::max({height + from_mm(3), disc_rows * disc_step + from_mm(2), from_mm(9)});
        s.need(height);
        const int top = s.y() + from_mm(3) / 2;
        for (std::size_t i = 0; i < step.numbers.size(); ++i) {
            const int column = static_cast<int>(i % 4), row = static_cast<int>(i / 4);
            const Point centre{s.left() + disc_size + column * disc_step, top + name.size * 2 / 3 + row * disc_step};
            s.page().add(number_disc(centre, step.numbers[i], disc_size, false), {0, 0});
        }
        int y = top + s.paragraph(x, top, width, what, name);
        if (!second.empty()) y += s.paragraph(x, y, width, second, type::quiet);
        for (const std::string& inside : step.content) y += s.paragraph(x, y, width, inside, type::quiet);
        s.tick_box({s.right() - box_edge, s.y() + (std::min(height, from_mm(11)) - box_edge) / 2}, box_edge);
        s.down(height);
        s.rule(s.y());
    }
    s.down(from_mm(5));
}

void facts(Sheet& s, const BenchCard& card)
{
    const Words& words = s.words();
    struct Fact {
        Word name;
        std::string value;
    };
    std::vector<Fact> all;
    all.push_back({Word::filler, card.filler.empty() ? std::string(words(Word::filler_none))
                                                     : words.litres(card.filler_volume) + " " + card.filler});
    if (card.tape.units > 0) all.push_back({Word::tape, words.length(card.tape)});
    all.push_back({Word::weigh, words.weight(card.weight)});
    all.push_back({Word::closed_size, words.size(card.closed)});
    std::string service = card.service.empty() ? std::string(words(Word::no_service)) : card.service;
    if (card.postage && !card.service.empty()) service += "\n" + words.money(*card.postage);
    all.push_back({Word::service, service});

    const std::size_t columns = 3;
    const int gap = from_mm(6), width = (s.width() - gap * 2) / 3;
    const auto x_of = [&](std::size_t i) { return s.left() + static_cast<int>(i % columns) * (width + gap); };
    const auto width_of = [&](std::size_t i) { return i + 1 == all.size() ? s.right() - x_of(i) : width; };
    std::vector<int> heights((all.size() + columns - 1) / columns, 0); // of the rows
    for (std::size_t i = 0; i < all.size(); ++i) {
        const int height = s.line_height(type::small) + s.paragraph_height(width_of(i), all[i].value, value_style);
        heights[i / columns] = std::max(heights[i / columns], height + from_mm(3));
    }
    s.need(std::accumulate(heights.begin(), heights.end(), 0)); // all on one page
    for (std::size_t i = 0; i < all.size(); ++i) {
        s.line(x_of(i), s.y(), std::string(words(all[i].name)), type::small);
        s.paragraph(x_of(i), s.y() + s.line_height(type::small), width_of(i), all[i].value, value_style);
        if (i % columns + 1 == columns || i + 1 == all.size()) s.down(heights[i / columns]);
    }
}

// Read before anything is put in. A triangle stands before each: colour alone would not do.
void cautions(Sheet& s, const BenchCard& card)
{
    const std::array<std::pair<bool, Word>, 4> all{{{card.heavy, Word::caution_heavy},
                                                    {card.flammable, Word::caution_flammable},
                                                    {card.glass, Word::caution_glass},
                                                    {card.liquid, Word::caution_liquid}}};
    for (const auto& [applies, word] : all) {
        if (!applies) continue;
        const int side = type::strong.size, x = s.left(), y = s.y() + side / 8;
        s.page().add(Path{{{x + side / 2, y}, {x + side, y + side}, {x, y + side}},
                          true,
                          Pen{Role::brick, 30, Pen::Dash::solid},
                          std::nullopt});
        s.line(x + side + from_mm(2), s.y(), std::string(s.words()(word)), type::strong);
        s.down(s.line_height(type::strong) + from_mm(1));
    }
}

std::string content_line(const planning::PackedItem& item)
{
    return (item.count > 1 ? std::to_string(item.count) + " × " : "") + item.name;
}

bool holds(const planning::ParcelPlan& plan, std::string_view what)
{
    return std::find(plan.holds.begin(), plan.holds.end(), what) != plan.holds.end();
}

// All personal texts the orders of this parcel give for a good.
std::string personal_texts(const planning::PackedItem& item, const planning::ParcelPlan& plan,
                           const std::vector<shop::HeldOrder>& orders)
{
    std::string texts;
    for (const shop::Piece& piece : plan.pieces) {
        if (item.good.empty() || piece.good != item.good) continue;
        for (const shop::HeldOrder& held : orders) {
            const auto index = static_cast<std::size_t>(piece.line);
            if (held.id != piece.order || piece.line < 0 || index >= held.order.lines.size()) continue;
            const std::string& text = held.order.lines[index].personal_text;
            if (!text.empty()) texts += (texts.empty() ? "" : ", ") + text;
        }
    }
    return texts;
}

BenchCard::Step step_of(const planning::PackedItem& item, const planning::ParcelPlan& plan,
                        const std::vector<shop::HeldOrder>& orders, const shop::Cupboard& cupboard)
{
    BenchCard::Step step;
    step.name = item.name;
    if (item.kind == planning::PackedItem::Kind::slip) step.own_paper = Word::insert_slip;
    if (item.kind == planning::PackedItem::Kind::gift_note) step.own_paper = Word::gift_note;
    if (const shop::Wrapping* wrapping = cupboard.wrapping(item.wrapping)) step.wrapping = wrapping->name;
    step.personal_text = personal_texts(item, plan, orders);
    step.folded = item.folded;
    step.rolled = item.rolled;
    step.under_cushion = item.under_cushion;
    for (const planning::PackedItem& inside : item.content) step.content.push_back(content_line(inside));
    return step;
}

std::vector<BenchCard::Step> steps_of(const planning::ParcelPlan& plan, const std::vector<shop::HeldOrder>& orders,
                                      const shop::Cupboard& cupboard)
{
    std::vector<BenchCard::Step> made;
    for (const planning::PackedItem& item : plan.items) {
        if (!item.under_cushion) continue; // first of all, under the lowest layer
        made.push_back(step_of(item, plan, orders, cupboard));
        made.back().count = item.count;
    }
    const std::vector<int> layer = layers(plan.placements);
    std::optional<std::size_t> before;
    int number = 0;
    for (const std::size_t i : putting_in_order(plan.placements)) {
        ++number;
        const fitting::Placement& placed = plan.placements[i];
        const bool goes_on = before && plan.placements[*before].item == placed.item && layer[*before] == layer[i];
        before = i;
        if (goes_on) {
            ++made.back().count;
            made.back().numbers.push_back(number);
            continue;
        }
        const auto item = std::find_if(plan.items.begin(), plan.items.end(),
                                       [&](const planning::PackedItem& p) { return p.id == placed.item; });
        if (item != plan.items.end()) {
            made.push_back(step_of(*item, plan, orders, cupboard));
        } else {
            made.emplace_back();
            made.back().name = placed.item;
        }
        made.back().numbers = {number};
    }
    return made;
}

Arrangement arrangement_of(const planning::ParcelPlan& plan, const shop::Cupboard& cupboard)
{
    Arrangement a;
    if (const shop::Supply* outer = cupboard.supply(plan.outer); outer != nullptr && outer->form)
        a.form = *outer->form;
    else if (!plan.question.outers.empty())
        a.form = plan.question.outers.front().form;
    a.cut_height = plan.cut_at ? plan.cut_at : plan.cut_height;
    a.contents_thickness = plan.contents_thickness;
    a.placements = plan.placements;
    a.looks = looks_by_item(plan.placements);
    for (std::size_t i = 0; i < a.placements.size(); ++i) {
        for (const planning::PackedItem& item : plan.items) {
            if (item.id != a.placements[i].item) continue;
            a.looks[i].ribbon = item.kind == planning::PackedItem::Kind::gift_box;
            if (const shop::Wrapping* w = cupboard.wrapping(item.wrapping)) {
                a.looks[i].wrap = Length{std::min({w->growth.x, w->growth.y, w->growth.z}).units / 2};
            }
        }
    }
    return a;
}

} // namespace

BenchCard bench_card(const shop::Parcel& parcel, const planning::ParcelPlan& plan,
                     const std::vector<shop::HeldOrder>& orders, const shop::Cupboard& cupboard)
{
    BenchCard card;
    card.parcel = parcel.number;
    card.tray = parcel.tray;
    for (const shop::HeldOrder& held : orders) {
        const auto in_parcel = [&](const shop::Piece& piece) { return piece.order == held.id; };
        if (std::none_of(plan.pieces.begin(), plan.pieces.end(), in_parcel)) continue;
        if (card.order_numbers.empty()) {
            card.buyer = held.order.to.name;
            card.town = held.order.to.town;
            card.country = held.order.to.country;
        }
        card.order_numbers.push_back(held.order.key.number);
        card.gift = card.gift || held.order.gift.has_value();
        if (!held.order.note.empty()) card.note += (card.note.empty() ? "" : "\n") + held.order.note;
    }
    const shop::Supply* outer = cupboard.supply(plan.outer);
    card.outer_name = outer != nullptr && !outer->name.empty() ? outer->name : plan.outer.text;
    card.proven_smallest = plan.proven_smallest;
    card.arrangement = arrangement_of(plan, cupboard);
    card.steps = steps_of(plan, orders, cupboard);
    if (plan.filler) {
        const shop::Supply* filler = cupboard.supply(plan.filler->supply);
        card.filler = filler != nullptr && !filler->name.empty() ? filler->name : plan.filler->supply.text;
        card.filler_volume = plan.filler_volume;
    }
    card.tape = plan.tape;
    card.weight = plan.weight;
    card.closed = plan.closed;
    if (plan.chosen && *plan.chosen < plan.quotes.size()) {
        const postage::Quote& quote = plan.quotes[*plan.chosen];
        card.service = quote.carrier + ", " + (quote.service_name.empty() ? quote.service : quote.service_name);
        if (quote.price() != nullptr) card.postage = quote.price()->total;
    }
    card.heavy = plan.weight.mean >= cupboard.house.heavy;
    card.glass = holds(plan, "glass");
    card.flammable = holds(plan, "flammable");
    card.liquid = holds(plan, "liquid");
    card.code = to_text(Payload{Payload::Kind::paper, parcel.number}).value_or("");
    return card;
}

namespace {

Document laid_out(const BenchCard& card, const Blank& blank, const Words& words, const TextMeasure& measure,
                  int drawing_percent)
{
    const auto head = [&](Sheet& s, bool carried) {
        if (!carried) {
            head_of_card(s, card);
            return;
        }
        s.carried_head(card.parcel + ", " + std::string(words(Word::continued)), card.buyer, from_mm(10));
    };
    Sheet s(blank, words, measure, head);
    if (card.gift) beside_bar(s, std::string(words(Word::gift_no_prices)), type::strong, Role::accent);
    if (!card.note.empty()) {
        const std::string note = std::string(words(Word::note_from_buyer)) + ": " + words.quoted(card.note);
        beside_bar(s, note, type::body, Role::ochre);
    }
    cautions(s, card);
    s.down(from_mm(1));
    const OuterForm& form = card.arrangement.form;
    s.rule(s.y());
    s.down(from_mm(4));
    s.line(s.left(), s.y(), card.outer_name, type::large);
    if (card.proven_smallest)
        s.line(s.right(), s.y() + 80, std::string(words(Word::smallest_proven)), type::quiet, Align::end);
    s.down(s.line_height(type::large));
    std::string inside = outer_words(words, form.kind) + " · " + words.size(form.inner);
    if (is_sleeve(form.kind)) inside = outer_words(words, form.kind) + " · " + words.flat_size(form.inner);
    if (card.arrangement.cut_height)
        inside += " · " + words.with(Word::cut_down, words.length(*card.arrangement.cut_height));
    s.down(s.paragraph(s.left(), s.y(), s.width(), inside, type::quiet) + from_mm(4));
    drawings(s, card, drawing_percent);
    steps(s, card);
    facts(s, card);
    return s.finish(std::string(words(Word::bench_card)) + " " + card.parcel,
                    std::string(words(Word::bench_card)) + " · " + card.parcel, card.reprint);
}

} // namespace

// Smaller drawings where they save a page.
Document lay_out(const BenchCard& card, const Blank& blank, const Words& words, const TextMeasure& measure)
{
    Document best = laid_out(card, blank, words, measure, 100);
    for (const int percent : {85, 70, 60}) {
        if (best.pages.size() == 1) break;
        Document smaller = laid_out(card, blank, words, measure, percent);
        if (smaller.pages.size() < best.pages.size()) best = std::move(smaller);
    }
    return best;
}

} // namespace stow::papers
