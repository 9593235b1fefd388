#include "app/view/outer_comparison.h"

#include "app/plan_day.h"
#include "app/view/parcel_looks.h"
#include "app/view/text.h"
#include "app/words/format.h"
#include "app/words/reasons.h"

#include <cmath>

namespace stow::view {

namespace {

using Planned = tl::expected<planning::ParcelPlan, planning::StuckOrder>;

const postage::Price* price_of(const planning::ParcelPlan& plan)
{
    return plan.chosen ? plan.quotes[*plan.chosen].price() : nullptr;
}

// What is paid for it in all; nothing: no service takes it, or in another currency.
std::optional<Money> in_all(const planning::ParcelPlan& plan)
{
    const postage::Price* price = price_of(plan);
    if (price == nullptr || price->total.currency != plan.packaging.currency) return std::nullopt;
    Money all = price->total + plan.packaging;
    if (plan.work.currency == all.currency) all += plan.work;
    return all;
}

int air_percent(const planning::ParcelPlan& plan)
{
    const double inside = in_litres(plan.void_volume);
    double filled = 0;
    for (const fitting::Placement& p : plan.placements) filled += in_litres(p.size.x * p.size.y * p.size.z);
    return inside + filled > 0 ? static_cast<int>(std::lround(100 * inside / (inside + filled))) : 0;
}

QString why_not(const planning::StuckOrder& stuck)
{
    return stuck.passed_over.empty() ? words::stuck(stuck) : words::reason(stuck.passed_over.front());
}

// A line of the comparison: what is said of a plan, and the measure of it of which less is better.
struct Fact {
    QString name;
    std::function<QString(const planning::ParcelPlan&)> words;
    std::function<std::optional<double>(const planning::ParcelPlan&)> measure;
};

std::vector<Fact> all_facts()
{
    using Plan = planning::ParcelPlan;
    const QString none = QStringLiteral("–");
    return {
        {OuterComparison::tr("in all"),
         [none](const Plan& p) {
             const auto all = in_all(p);
             return all ? words::money(*all) : none;
         },
         [](const Plan& p) {
             const auto all = in_all(p);
             return all ? std::optional(static_cast<double>(all->minor)) : std::nullopt;
         }},
        {OuterComparison::tr("postage"),
         [none](const Plan& p) {
             const postage::Price* price = price_of(p);
             return price != nullptr ? words::money(price->total) : none;
         },
         [](const Plan& p) {
             const postage::Price* price = price_of(p);
             return price != nullptr ? std::optional(static_cast<double>(price->total.minor)) : std::nullopt;
         }},
        {OuterComparison::tr("service"),
         [none](const Plan& p) {
             if (!p.chosen) return none;
             const postage::Quote& quote = p.quotes[*p.chosen];
             return joined({text(quote.carrier), text(quote.service_name)}, QStringLiteral(", "));
         },
         {}},
        {OuterComparison::tr("arrives by"),
         [none](const Plan& p) { return p.chosen ? words::date(p.delivered) : none; },
         [](const Plan& p) {
             return p.chosen ? std::optional(static_cast<double>(p.delivered.time_since_epoch().count()))
                             : std::nullopt;
         }},
        {OuterComparison::tr("packaging"), [](const Plan& p) { return words::money(p.packaging); },
         [](const Plan& p) { return std::optional(static_cast<double>(p.packaging.minor)); }},
        {OuterComparison::tr("weight"), [](const Plan& p) { return words::weight_and_spread(p.weight); },
         [](const Plan& p) { return std::optional(in_grams(p.weight.mean)); }},
        {OuterComparison::tr("filler"),
         [none](const Plan& p) { return p.filler ? words::litres(p.filler_volume) : none; },
         [](const Plan& p) { return p.filler ? std::optional(in_litres(p.filler_volume)) : std::nullopt; }},
        {OuterComparison::tr("empty inside"),
         [](const Plan& p) { return OuterComparison::tr("%1 %").arg(air_percent(p)); },
         [](const Plan& p) { return std::optional(static_cast<double>(air_percent(p))); }},
        {OuterComparison::tr("closed"), [](const Plan& p) { return words::size(p.closed); },
         [](const Plan& p) { return std::optional(in_litres(p.closed.x * p.closed.y * p.closed.z)); }},
    };
}

} // namespace

OuterComparison::OuterComparison(Day& day, QObject* parent) : QObject(parent), day_(day), work_(day)
{
    connect(&work_, &Work::changed, this, &OuterComparison::changed);
}

OuterComparison::~OuterComparison() = default;

QString OuterComparison::held() const
{
    return held_ ? text(held_->outer.text) : QString();
}

QString OuterComparison::other() const
{
    return other_ ? text(other_->outer.text) : QString();
}

void OuterComparison::begin(shop::ParcelId parcel)
{
    work_.cancel();
    held_.reset();
    other_.reset();
    wanted_.reset();
    input_.reset();
    const auto of_parcel = book::parcel(day_.book(), parcel);
    if (of_parcel) {
        if (auto input = gather(day_, parcel)) input_ = std::make_shared<const ParcelInput>(std::move(*input));
        held_ = Side{of_parcel->plan.outer, of_parcel->plan};
    }
    show();
}

void OuterComparison::look(const QString& outer)
{
    const shop::SupplyCode code{utf8(outer)};
    if (!input_ || code.text.empty()) return;
    if (held_ && held_->outer == code) {
        other_.reset();
        wanted_.reset();
        return show();
    }
    wanted_ = code;
    if (work_.running())
        work_.cancel(); // what it finds is of no use any more
    else
        work_out(code);
}

void OuterComparison::work_out(const shop::SupplyCode& outer)
{
    wanted_.reset();
    work_.start([this, input = input_, outer](Run& run) -> Work::Finish {
        Run bounded = run.part({std::chrono::milliseconds(2000), 200'000});
        Side side{outer, plan(*input, outer, bounded)};
        return [this, input, side = std::move(side)]() mutable {
            if (wanted_) return work_out(*wanted_);
            if (input != input_) return; // another parcel is looked at by now
            other_ = std::move(side);
            show();
        };
    });
}

void OuterComparison::hold()
{
    if (!other_ || !other_->plan) return;
    held_ = std::exchange(other_, std::nullopt);
    show();
}

void OuterComparison::show()
{
    scene_ = {};
    verdict_.clear();
    const auto drawn = [&](const Side& side, bool first) {
        OuterRowScene::Outer outer;
        outer.name = text(side.outer.text);
        if (side.plan) {
            outer.arrangement = arrangement_of(day_, *side.plan);
            outer.standing = papers::Standing::chosen;
            outer.words = first ? tr("to compare with") : tr("in the list");
        } else {
            if (const shop::Supply* supply = day_.cupboard().supply(side.outer); supply != nullptr && supply->form)
                outer.arrangement.form = *supply->form;
            outer.standing = papers::Standing::passed_over;
            outer.words = why_not(side.plan.error());
        }
        scene_.outers.push_back(std::move(outer));
    };
    if (held_) drawn(*held_, true);
    if (other_) drawn(*other_, false);

    std::vector<ComparedFact> facts;
    const planning::ParcelPlan* held = held_ && held_->plan ? &*held_->plan : nullptr;
    const planning::ParcelPlan* other = other_ && other_->plan ? &*other_->plan : nullptr;
    facts.push_back({tr("outer"), this->held(), this->other()});
    const QString unknown = other_ ? QStringLiteral("–") : QString(); // a side that is there and does not hold it
    for (const Fact& fact : all_facts()) {
        ComparedFact row{fact.name, held != nullptr ? fact.words(*held) : QString(),
                         other != nullptr ? fact.words(*other) : unknown};
        if (held != nullptr && other != nullptr && fact.measure) {
            const auto a = fact.measure(*held), b = fact.measure(*other);
            if (a && b && *a != *b) row.better = *a < *b ? 1 : 2;
        }
        facts.push_back(std::move(row));
    }
    facts_.show(std::move(facts));

    if (other_ && !other_->plan) {
        verdict_ = this->other() + QStringLiteral(": ") + why_not(other_->plan.error());
    } else if (held != nullptr && other != nullptr) {
        const auto a = in_all(*held), b = in_all(*other);
        if (!b)
            verdict_ = tr("%1 holds it, but no service takes it").arg(this->other());
        else if (a && *b > *a)
            verdict_ = tr("%1 costs %2 more in all").arg(this->other(), words::money_with_currency(*b - *a));
        else if (a && *b < *a)
            verdict_ = tr("%1 saves %2 in all").arg(this->other(), words::money_with_currency(*a - *b));
        else
            verdict_ = tr("%1 costs the same in all").arg(this->other());
    }
    scene_.sentence = verdict_;
    emit changed();
}

} // namespace stow::view
