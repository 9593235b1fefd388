#include "app/view/bench_steps.h"

#include "app/day_papers.h"
#include "app/view/text.h"
#include "app/words/format.h"
#include "core/papers/bench_card.h"
#include "core/shop/heat.h"

#include <QCoreApplication>

#include <algorithm>

namespace stow::view {

namespace {

struct Say {
    Q_DECLARE_TR_FUNCTIONS(Bench)
};

ParcelStep make_up(const planning::ParcelPlan& plan, const papers::BenchCard& card)
{
    ParcelStep step;
    step.kind = ParcelStep::Kind::make_up;
    const QString outer = text(card.outer_name);
    step.words = Say::tr("Take %1").arg(outer);
    switch (card.arrangement.form.kind) {
    case OuterKind::carton:
        step.now = Say::tr("Make up %1, tape its base").arg(outer);
        if (plan.cut_at) step.more = Say::tr("score it and cut it down to %1 inside").arg(words::length(*plan.cut_at));
        break;
    case OuterKind::gift_box: step.now = Say::tr("Make up %1").arg(outer); break;
    case OuterKind::tube: step.now = Say::tr("Take %1, close one end").arg(outer); break;
    default: step.now = Say::tr("Take %1").arg(outer); break;
    }
    return step;
}

// The good behind a step of the card: by the number of its first placement.
const planning::PackedItem* item_of(const planning::ParcelPlan& plan, const papers::BenchCard& card, int number)
{
    const std::vector<int> numbers = papers::numbers(card.arrangement.placements);
    const auto at = std::find(numbers.begin(), numbers.end(), number);
    if (at == numbers.end()) return nullptr;
    const auto& placement = card.arrangement.placements[static_cast<std::size_t>(at - numbers.begin())];
    const auto found =
        std::find_if(plan.items.begin(), plan.items.end(), [&](const auto& item) { return item.id == placement.item; });
    return found != plan.items.end() ? &*found : nullptr;
}

// Our own papers have no name of hers. What lies beneath the cushion has no number, so it is known by its name.
QString name_of(const planning::ParcelPlan& plan, const std::string& name)
{
    using Kind = planning::PackedItem::Kind;
    const auto item = std::find_if(plan.items.begin(), plan.items.end(), [&](const auto& i) { return i.name == name; });
    if (item != plan.items.end() && item->kind == Kind::slip) return Say::tr("packing slip");
    if (item != plan.items.end() && item->kind == Kind::gift_note) return Say::tr("gift note");
    return text(name);
}

QStringList words_of(const std::vector<int>& numbers)
{
    QStringList words;
    for (const int number : numbers) words += QString::number(number);
    return words;
}

QString mark_of(const std::vector<int>& numbers)
{
    const QStringList words = words_of(numbers);
    if (words.isEmpty()) return QStringLiteral("·");
    return words.size() <= 2 ? words.join(QLatin1Char('+')) : words.front() + QStringLiteral("–") + words.back();
}

ParcelStep put_in(const planning::ParcelPlan& plan, const papers::BenchCard& card, const papers::BenchCard::Step& from)
{
    ParcelStep step;
    step.kind = ParcelStep::Kind::put_in;
    const int count = from.count;
    const planning::PackedItem* item = from.numbers.empty() ? nullptr : item_of(plan, card, from.numbers.front());
    const QString name = name_of(plan, from.name);
    step.numbers = from.numbers;
    const QStringList numbers = words_of(from.numbers);
    step.words = count == 1 ? name : QStringLiteral("%1 × %2").arg(count).arg(name);
    step.now = count == 1 ? Say::tr("Put in: %1").arg(name) : Say::tr("Put in %1: %2").arg(count).arg(name);
    QStringList content;
    for (const std::string& inside : from.content) content += text(inside);
    step.more =
        joined({text(from.wrapping), item != nullptr && item->fragile ? Say::tr("fragile") : QString(),
                from.rolled ? Say::tr("rolled") : QString(), from.folded ? Say::tr("folded") : QString(),
                from.under_cushion ? Say::tr("flat, under the cushion of the floor") : QString(),
                from.personal_text.empty() ? QString() : Say::tr("“%1”").arg(text(from.personal_text)),
                content.isEmpty() ? QString() : Say::tr("in it: %1").arg(content.join(QStringLiteral(", "))),
                numbers.size() > 1 ? Say::tr("numbers %1 on the drawing").arg(numbers.join(QStringLiteral(", ")))
                                   : QString()});
    const std::vector<int> layers = papers::layers(card.arrangement.placements);
    const std::vector<int> places = papers::numbers(card.arrangement.placements);
    for (std::size_t i = 0; i < places.size(); ++i) {
        if (std::find(from.numbers.begin(), from.numbers.end(), places[i]) != from.numbers.end()) {
            step.layer = std::max(step.layer, layers[i]);
        }
    }
    step.unscannable = item != nullptr && !item->content.empty();
    if (item != nullptr && item->kind == planning::PackedItem::Kind::good) {
        step.good = item->good;
        step.pieces = count;
    }
    return step;
}

// Papers that nothing is to be checked of: several in a row go in with one hand, as one step.
bool is_paper(const ParcelStep& step)
{
    return step.kind == ParcelStep::Kind::put_in && step.good.empty() && !step.unscannable;
}

void add_paper(ParcelStep& step, const ParcelStep& paper)
{
    step.words = joined({step.words, paper.words}, QStringLiteral(", "));
    step.now = Say::tr("Put in: %1").arg(step.words);
    step.more = joined({step.more, paper.more});
    step.numbers.insert(step.numbers.end(), paper.numbers.begin(), paper.numbers.end());
    step.layer = std::max(step.layer, paper.layer);
}

} // namespace

std::vector<ParcelStep> parcel_steps(const Day& day, const book::HeldParcel& held)
{
    const planning::ParcelPlan& plan = held.plan;
    const auto card = papers::bench_card(held.parcel, plan, orders_of(day, plan.pieces), day.cupboard());
    std::vector<ParcelStep> steps{make_up(plan, card)};
    for (const auto& from : card.steps) {
        const ParcelStep step = put_in(plan, card, from);
        if (is_paper(step) && is_paper(steps.back()))
            add_paper(steps.back(), step);
        else
            steps.push_back(step);
    }
    const auto add = [&](ParcelStep::Kind kind, const QString& words, const QString& now, const QString& more) {
        ParcelStep step;
        step.kind = kind;
        step.words = words;
        step.now = now;
        step.more = more;
        steps.push_back(step);
    };
    if (plan.filler && plan.filler_volume.units > 0) {
        const QString filler = supply_name(day, plan.filler->supply);
        add(ParcelStep::Kind::fill, Say::tr("Fill: %1, %2").arg(filler, words::litres(plan.filler_volume)),
            Say::tr("Fill with %1").arg(filler),
            Say::tr("%1, until it stands just proud").arg(words::litres(plan.filler_volume)));
    }
    const bool taped = plan.tape.units > 0;
    add(ParcelStep::Kind::close, taped ? Say::tr("Close it, tape it") : Say::tr("Close it"),
        taped ? Say::tr("Close it and tape it") : Say::tr("Close it"),
        taped ? Say::tr("%1 of tape: middle and both edges").arg(words::metres(plan.tape)) : QString());
    add(ParcelStep::Kind::weigh, Say::tr("Weigh it"), Say::tr("Put it on the scale"),
        Say::tr("type what the scale says and press Enter"));
    // Two labels of one parcel must not both be stuck on: the later says which it is.
    const int print = labels_printed(day, held.parcel.number);
    const QString then = Say::tr("then scan it, or press Space");
    add(ParcelStep::Kind::label, Say::tr("Stick the label on"),
        Say::tr("Stick label %1 on").arg(text(held.parcel.number)),
        print > 1 ? joined({Say::tr("the one marked print %1; tear up the one before").arg(print), then}) : then);
    for (ParcelStep& step : steps) step.mark = mark_of(step.numbers);
    return steps;
}

QString heat_words(const Day& day, const planning::ParcelPlan& plan)
{
    for (const shop::Piece& piece : plan.pieces) {
        const shop::Good* good = day.cupboard().good(piece.good);
        if (good == nullptr || !shop::better_held_until(*good, day.today())) continue;
        return Say::tr("%1 softens above %2 °C: hold until Monday?").arg(text(good->name)).arg(*good->softens_above_c);
    }
    return {};
}

QString cautions(const Day& day, const planning::ParcelPlan& plan)
{
    QStringList said;
    const auto holds = [&](const char* what) {
        return std::find(plan.holds.begin(), plan.holds.end(), what) != plan.holds.end();
    };
    if (plan.weight.mean >= day.cupboard().house.heavy) said += Say::tr("heavy: two hands or a trolley");
    if (holds("flammable")) said += Say::tr("flammable: the carrier’s rules decide");
    if (holds("ask carrier")) said += Say::tr("restricted: ask the carrier before it goes");
    if (holds("glass")) said += Say::tr("glass: look it over");
    if (holds("liquid")) said += Say::tr("liquid: caps tight, upright");
    return said.join(QStringLiteral(" · "));
}

} // namespace stow::view
