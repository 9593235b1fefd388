#include "app/view/bench_scale.h"

#include "app/scale_check.h"
#include "app/view/text.h"
#include "app/words/format.h"
#include "core/postage/saving.h"
#include "core/weighing/expected.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace stow::view {

namespace {

struct Say {
    Q_DECLARE_TR_FUNCTIONS(Bench)
};

constexpr double worth_saying = 0.02; // chance of crossing a step edge

// The service of the parcel, as chosen for it or else as planned.
std::pair<std::string, std::string> service_of(const book::HeldParcel& held)
{
    if (!held.parcel.service.empty()) return {held.parcel.carrier, held.parcel.service};
    if (!held.plan.chosen) return {};
    const postage::Quote& quote = held.plan.quotes[*held.plan.chosen];
    return {quote.carrier, quote.service};
}

const postage::RateSheet* sheet_of(const Day& day, const std::string& carrier)
{
    for (const postage::RateSheet& sheet : day.rate_sheets()) {
        const bool valid = (!sheet.valid_from || *sheet.valid_from <= day.today()) &&
                           (!sheet.valid_until || day.today() <= *sheet.valid_until);
        if (valid && sheet.carrier == carrier) return &sheet;
    }
    return nullptr;
}

} // namespace

postage::ParcelFacts facts_of(const Day& day, const planning::ParcelPlan& plan, Weight weight)
{
    postage::ParcelFacts facts;
    facts.closed = plan.closed;
    if (const shop::Supply* supply = day.cupboard().supply(plan.outer); supply != nullptr && supply->form) {
        facts.roll = supply->form->kind == OuterKind::tube;
        facts.soft = supply->form->kind == OuterKind::mailer || supply->form->kind == OuterKind::padded_mailer;
    }
    facts.weight = weight;
    facts.holds = plan.holds;
    facts.hand_over = std::max(day.today(), plan.hand_over);
    if (const shop::HeldOrder* held = order_of(day, plan.pieces)) {
        facts.country = held->order.to.country;
        facts.postcode = held->order.to.postcode;
    }
    std::optional<Money> value;
    for (const shop::Piece& piece : plan.pieces) {
        const shop::HeldOrder* held = day.order(piece.order);
        if (held == nullptr || piece.line < 0 || piece.line >= static_cast<int>(held->order.lines.size())) continue;
        const auto& price = held->order.lines[static_cast<std::size_t>(piece.line)].price;
        if (!price || (value && value->currency != price->currency)) continue;
        value = value ? *value + *price * piece.count : *price * piece.count;
    }
    facts.value = value;
    return facts;
}

std::optional<postage::Quote> quote_at(const Day& day, const book::HeldParcel& held, Weight weight)
{
    const auto [carrier, service] = service_of(held);
    for (const postage::Quote& quote : postage::quotes(day.rate_sheets(), facts_of(day, held.plan, weight))) {
        if (quote.carrier == carrier && quote.service == service && quote.price() != nullptr) return quote;
    }
    return std::nullopt;
}

QString saving_words(const Day& day, const postage::ParcelFacts& facts, const postage::Quote& now)
{
    const postage::Tariffs tariffs(day.rate_sheets());
    const auto found = postage::savings(tariffs, facts, now);
    if (found.empty()) return {};
    // The one that asks least: grams first where both are small, then the fewest millimetres.
    const auto least = std::min_element(found.begin(), found.end(), [](const auto& a, const auto& b) {
        return std::pair(a.less, a.lighter) < std::pair(b.less, b.lighter);
    });
    const QString as = least->format.empty() || least->format == now.price()->format
                           ? Say::tr("costs %1").arg(words::money_with_currency(least->total))
                           : Say::tr("goes as %1").arg(text(least->format));
    const auto say = [&](const QString& less) {
        return Say::tr("%1 %2: saves %3").arg(less, as, words::money_with_currency(least->saves));
    };
    switch (least->by) {
    case postage::Saving::By::length: return say(Say::tr("%1 shorter").arg(words::length(least->less)));
    case postage::Saving::By::width: return say(Say::tr("%1 narrower").arg(words::length(least->less)));
    case postage::Saving::By::height: return say(Say::tr("%1 thinner").arg(words::length(least->less)));
    case postage::Saving::By::weight: return say(Say::tr("%1 lighter").arg(words::weight(least->lighter)));
    }
    return {};
}

ScaleWords scale_words(const Day& day, const book::HeldParcel& held, shop::WeighingStage stage,
                       std::optional<Weight> reading)
{
    ScaleWords said;
    const bool contents = stage == shop::WeighingStage::contents;
    const shop::WeightEstimate& expected = contents ? held.plan.contents_weight : held.plan.weight;
    said.ruler.expected = in_grams(expected.mean);
    said.ruler.sigma = in_grams(expected.spread);
    const QString seen_from =
        Say::tr("a thing missing is seen from %1 on").arg(words::weight(weighing::least_detectable(expected.spread)));
    if (!reading) {
        said.verdict = Say::tr("expected %1").arg(words::weight_and_spread(expected));
        said.more = drift_words(day);
        if (said.more.isEmpty()) said.more = seen_from;
    } else {
        said.reading = words::weight(*reading);
        said.ruler.reading = in_grams(*reading);
        const ScaleCheck check = check_scale(day, held, stage, *reading);
        const weighing::Finding& finding = check.finding;
        said.verdict = words_of(day, finding);
        said.more = Say::tr("expected %1").arg(words::weight_and_spread(finding.expected));
        if (finding.verdict == weighing::Finding::Verdict::right) {
            said.kind = 1;
            said.more += QStringLiteral(" · ") + seen_from;
        } else {
            constexpr double beyond_doubt = 4;
            const double sigmas = std::abs(in_grams(finding.off)) / std::max(in_grams(finding.expected.spread), 0.1);
            said.kind = sigmas > beyond_doubt ? 3 : 2;
            said.ruler.stop = said.kind == 3;
        }
    }

    if (contents) { // no postage is paid for contents alone
        said.service = Say::tr("contents, before filler");
        said.ruler.sentence = said.reading.isEmpty() ? said.verdict : Say::tr("%1, %2").arg(said.reading, said.verdict);
        return said;
    }
    const auto [carrier, service] = service_of(held);
    const Weight weight = reading.value_or(expected.mean);
    const auto quote = quote_at(day, held, weight);
    const postage::RateSheet* sheet = sheet_of(day, carrier);
    if (sheet != nullptr) {
        for (const postage::Mark& mark : postage::ruler(*sheet, service, facts_of(day, held.plan, weight))) {
            said.ruler.steps.push_back({in_grams(mark.up_to), words::money(mark.total)});
        }
    }
    if (!quote) {
        said.service = carrier.empty() ? Say::tr("no service takes it")
                                       : Say::tr("%1 does not take it at this weight").arg(text(carrier));
        said.ruler.sentence = said.service;
        return said;
    }
    const postage::Price& price = *quote->price();
    said.saving = saving_words(day, facts_of(day, held.plan, weight), *quote);
    said.service =
        joined({joined({text(quote->carrier), text(quote->service_name),
                        price.zone.empty() ? QString() : Say::tr("zone %1").arg(text(price.zone))},
                       QStringLiteral(", ")),
                words::money_with_currency(price.total), Say::tr("closed %1").arg(words::size(held.plan.closed))});
    if (price.step_edge) {
        const Weight edge = *price.step_edge;
        // Once weighed, only the scale's own resolution is left in doubt.
        const shop::WeightEstimate now{weight, reading ? day.cupboard().house.scale_step : expected.spread};
        const double over = weighing::probability_above(now, edge);
        said.edge_at_risk = over > worth_saying;
        said.edge = Say::tr("%1 below the step edge").arg(words::weight(edge - weight));
        if (reading && price.next_step && weighing::cannot_be_sure(weight, day.cupboard().house.scale_step, edge)) {
            said.edge = Say::tr("on the step edge, cannot be sure: %1 or %2")
                            .arg(words::money_with_currency(price.total), words::money_with_currency(*price.next_step));
        }
        if (said.edge_at_risk && price.next_step && !reading) {
            said.edge += QStringLiteral(": ") +
                         Say::tr("%1 it costs %2").arg(odds(over), words::money_with_currency(*price.next_step));
        }
        for (std::size_t i = 0; i < said.ruler.steps.size(); ++i) {
            if (said.edge_at_risk && std::abs(said.ruler.steps[i].up_to - in_grams(edge)) < 0.05)
                said.ruler.at_risk = i;
        }
    }
    said.ruler.sentence =
        joined({said.reading.isEmpty() ? said.verdict : Say::tr("%1, %2").arg(said.reading, said.verdict), said.service,
                said.edge},
               QStringLiteral(". "));
    return said;
}

} // namespace stow::view
