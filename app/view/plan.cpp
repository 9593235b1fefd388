#include "app/view/plan.h"

#include "app/plan_day.h"
#include "app/view/background.h"
#include "app/view/parcel_looks.h"
#include "app/view/text.h"
#include "app/words/book.h"
#include "app/words/format.h"
#include "app/words/reasons.h"
#include "app/words/sharing.h"
#include "core/book/settings.h"
#include "core/book/solved.h"
#include "core/weighing/expected.h"

#include <algorithm>
#include <set>

namespace stow::view {

namespace {

constexpr const char* remembered_preference = "plan.preference";
constexpr double worth_saying = 0.02; // chance of crossing a step edge

PlanRow row_of(const Day& day, const planning::ParcelPlan& plan, const shop::Parcel* parcel)
{
    PlanRow row;
    row.number = numbers_of(day, plan.pieces);
    if (const shop::HeldOrder* held = order_of(day, plan.pieces)) {
        row.order = held->id.value;
        row.buyer = text(held->order.to.name);
        row.place = place_of(held->order.to);
    }
    if (plan.parts > 1) row.part = PlanController::tr("parcel %1 of %2").arg(plan.part).arg(plan.parts);
    row.contents = contents_of(day, plan);
    row.outers = outer_row(day, plan);
    row.outer = text(plan.outer.text);
    row.proof = plan.proven_smallest ? PlanController::tr("proven") : QString();
    row.filler = plan.filler ? words::litres(plan.filler_volume) : QStringLiteral("–");
    row.weight = words::weight_and_spread(plan.weight);
    row.warning = plan.keeps_promise ? QString() : PlanController::tr("comes after the promised day");
    if (const auto on_hand = day.cupboard().on_hand.find(plan.outer); on_hand != day.cupboard().on_hand.end()) {
        constexpr std::int64_t few = 3;
        const std::int64_t left = on_hand->second.thousandths / 1000;
        if (left <= few && row.warning.isEmpty())
            row.warning = PlanController::tr("%1 of %2 left").arg(left).arg(row.outer);
    }
    const postage::Quote* quote = plan.chosen ? &plan.quotes[*plan.chosen] : nullptr;
    if (const postage::Price* price = quote != nullptr ? quote->price() : nullptr) {
        row.price = words::money(price->total);
        row.postage = price->total;
        row.service = joined({text(quote->carrier), text(quote->service_name)}, QStringLiteral(", "));
        if (price->step_edge) {
            const Weight edge = *price->step_edge;
            row.step_share = in_grams(plan.weight.mean) / std::max(in_grams(edge), 1.0);
            row.over = weighing::probability_above(plan.weight, edge);
            row.edge_at_risk = row.over > worth_saying;
            row.edge = PlanController::tr("%1 to the step edge").arg(words::weight(edge - plan.weight.mean));
            if (row.edge_at_risk)
                row.edge += QStringLiteral(": ") + PlanController::tr("%1 it is over").arg(odds(row.over));
        }
    } else {
        row.price = QStringLiteral("–");
        row.service = PlanController::tr("no service takes it");
    }
    QStringList cheaper;
    if (plan.saves_if_larger) {
        cheaper +=
            PlanController::tr("%1 saves %2").arg(text(plan.cheaper_outer.text), words::money(*plan.saves_if_larger));
    }
    if (plan.parts > 1 && plan.split_gap_permille) {
        const int gap = *plan.split_gap_permille;
        cheaper += gap == 0
                       ? PlanController::tr("no split is cheaper")
                       : PlanController::tr("no split saves over %1 %").arg(QLocale().toString(gap / 10.0, 'f', 1));
    }
    row.cheaper = cheaper.join(QStringLiteral(" · "));
    if (parcel != nullptr) {
        row.parcel = parcel->id.value;
        row.locked = parcel->locked;
    }
    row.sentence = joined({PlanController::tr("Order %1, %2").arg(row.number, row.buyer), row.contents,
                           row.outers.sentence, row.weight, row.price, row.edge},
                          QStringLiteral(". "));
    return row;
}

} // namespace

PlanController::PlanController(Day& day, QObject* parent)
    : QObject(parent), day_(day),
      rows_({{tr("by promised day"), {}},
             {tr("nearest step edge first"), [](const auto& a, const auto& b) { return a.over > b.over; }},
             {tr("dearest postage first"),
              [](const auto& a, const auto& b) { return a.postage.minor > b.postage.minor; }},
             {tr("by buyer"), [](const auto& a, const auto& b) { return a.buyer.localeAwareCompare(b.buyer) < 0; }}}),
      comparison_(day), work_(std::make_unique<Work>())
{
    connect(work_.get(), &Work::changed, this, &PlanController::workChanged);
}

PlanController::~PlanController() = default;

bool PlanController::working() const
{
    return work_->running();
}
double PlanController::progress() const
{
    return work_->progress();
}

planning::Preference PlanController::preferred() const
{
    const auto name = book::remembered(day_.book(), remembered_preference);
    return (name ? planning::preference(*name) : std::nullopt).value_or(planning::Preference::smallest);
}

void PlanController::refresh()
{
    preference_ = words::preference(preferred());
    std::vector<PlanRow> rows;
    std::vector<planning::ParcelPlan> plans;
    std::set<shop::OrderId> planned;
    stuck_orders_ = still_stuck(day_);
    sharing_ = last_sharing(day_);
    for (const shop::Parcel& parcel : book::parcels_in(day_.book(), shop::ParcelState::planned)) {
        const auto held = book::parcel(day_.book(), parcel.id);
        if (!held || !parcel.tray.empty()) continue;
        rows.push_back(row_of(day_, held->plan, &held->parcel));
        for (const shop::Piece& piece : parcel.pieces) planned.insert(piece.order);
        plans.push_back(held->plan);
    }
    int waiting = 0;
    for (const shop::HeldOrder& held : book::orders_to_plan(day_.book())) {
        const bool known_stuck = std::any_of(stuck_orders_.begin(), stuck_orders_.end(),
                                             [&](const auto& stuck) { return stuck.order == held.id; });
        if (!planned.contains(held.id) && !known_stuck) ++waiting;
    }
    stale_ = waiting > 0;
    show_rows(std::move(rows), plans);
    const QString in_plan = tr("%n parcels planned", nullptr, static_cast<int>(plans.size()));
    const QString to_plan = tr("%n orders to plan", nullptr, waiting);
    if (stale_ && !plans.empty())
        headline_ = in_plan + QStringLiteral(" · ") + to_plan;
    else
        headline_ = stale_ ? to_plan : !plans.empty() ? in_plan : tr("Plan");
    emit changed();
}

void PlanController::show_rows(std::vector<PlanRow> rows, const std::vector<planning::ParcelPlan>& plans)
{
    Money postage{0, day_.cupboard().house.currency}, packaging = postage, larger = postage;
    Volume filler;
    Length tape;
    for (const planning::ParcelPlan& plan : plans) {
        if (const postage::Price* price = plan.chosen ? plan.quotes[*plan.chosen].price() : nullptr) {
            if (price->total.currency == postage.currency) postage += price->total;
        }
        if (plan.packaging.currency == packaging.currency) packaging += plan.packaging;
        if (plan.saves_if_larger && plan.saves_if_larger->currency == larger.currency) larger += *plan.saves_if_larger;
        filler += plan.filler_volume;
        tape += plan.tape;
    }
    totals_ =
        plans.empty()
            ? QString()
            : joined({tr("%n parcels", nullptr, static_cast<int>(plans.size())),
                      tr("postage %1").arg(words::money(postage)), tr("packaging %1").arg(words::money(packaging)),
                      tr("filler %1").arg(words::litres(filler)), tr("tape %1").arg(words::metres(tape))});
    const planning::DaySharing shared = plans.empty() ? planning::DaySharing{} : sharing_;
    const QString cheaper =
        larger.minor > 0 ? tr("Larger outers would save %1 in all: P prefers the cheapest.").arg(words::money(larger))
                         : QString();
    savings_ = joined({words::sharing(shared), cheaper});
    std::vector<StuckRow> stuck;
    for (const planning::StuckOrder& order : stuck_orders_) {
        const shop::HeldOrder* held = day_.order(order.order);
        if (held == nullptr) continue;
        stuck.push_back({text(held->order.key.number), text(held->order.to.name), words::stuck(order), held->id.value});
    }
    stuck_.show(std::move(stuck));
    QStringList short_of;
    for (const planning::Shortage& shortage : shortages_found_) {
        const shop::Supply* supply = day_.cupboard().supply(shortage.supply);
        const shop::Unit unit = supply != nullptr ? supply->unit : shop::Unit::piece;
        short_of += tr("%1: %2 needed, %3 there")
                        .arg(supply_name(day_, shortage.supply), words::amount(shortage.needed, unit),
                             words::amount(shortage.on_hand, unit));
    }
    for (const planning::ScarceSupply& scarce : shared.scarce) {
        const shop::Supply* supply = day_.cupboard().supply(scarce.supply);
        if (supply == nullptr) continue;
        short_of.push_front(words::scarce(scarce, text(scarce.supply.text), supply->unit));
        break; // the dearest one; the command line names them all
    }
    shortages_ = short_of.join(QStringLiteral(" · "));
    rows_.show(std::move(rows));
}

void PlanController::plan()
{
    if (working()) return;
    work_words_ = tr("Finding an outer for every order");
    PlanInput input = gather(day_, preferred());
    if (input.orders.empty()) {
        emit said(tr("Nothing waits to be planned."));
        return;
    }
    const std::filesystem::path book = day_.book().path();
    work_->start([this, input = std::move(input), book](Run& run) -> Work::Finish {
        book::SolvedQuestions solved(book);
        PlanInput quick = input;
        quick.wish.prove = false;
        planning::DayPlan plan =
            planning::plan_day(input.cupboard, input.orders, input.rate_sheets, quick.wish, run, &solved);
        work_->report([this, plan] { show_first(plan); });
        const auto parcels = static_cast<double>(std::max<std::size_t>(plan.parcels.size(), 1));
        if (!run.stopped()) {
            planning::prove_day(
                plan, input.cupboard, input.orders, input.rate_sheets, input.wish, run,
                [&](std::size_t index, const auto&) {
                    work_->report_progress(static_cast<double>(index + 1) / parcels);
                },
                &solved);
        }
        return [this, input, plan = std::move(plan)] { keep(input, plan); };
    });
}

// Every order has a parcel; the proofs are still to come.
void PlanController::show_first(const planning::DayPlan& plan)
{
    std::vector<PlanRow> rows;
    for (const planning::ParcelPlan& parcel : plan.parcels) rows.push_back(row_of(day_, parcel, nullptr));
    sharing_ = plan.sharing;
    show_rows(std::move(rows), plan.parcels);
    work_words_ = tr("Proving that nothing smaller holds them");
    headline_ = tr("%n parcels", nullptr, static_cast<int>(plan.parcels.size()));
    emit changed();
    emit workChanged();
}

void PlanController::keep(const PlanInput& input, const planning::DayPlan& plan)
{
    shortages_found_ = plan.shortages;
    const auto stored = store(day_, input, plan);
    if (!stored) {
        emit said(words::refused(stored.error()));
        refresh();
        return;
    }
    emit said(plan.not_reached.empty()
                  ? tr("%n parcels planned", nullptr, static_cast<int>(plan.parcels.size()))
                  : tr("Stopped: %n orders were not reached", nullptr, static_cast<int>(plan.not_reached.size())));
}

void PlanController::cancel()
{
    work_->cancel();
}

void PlanController::nextPreference()
{
    if (working()) return;
    using P = planning::Preference;
    const P now = preferred();
    const P next = now == P::smallest ? P::cheapest : now == P::cheapest ? P::least_material : P::smallest;
    book::remember(day_.book(), remembered_preference, std::string(planning::name_of(next)));
    preference_ = words::preference(next);
    emit changed();
    if (!rows_.all().empty()) plan();
}

void PlanController::askOuters(int index)
{
    std::vector<OuterChoice> choices;
    const PlanRow* row = rows_.shown(index);
    const auto held = row != nullptr ? book::parcel(day_.book(), {row->parcel}) : std::nullopt;
    if (held) {
        for (const auto& [code, supply] : day_.cupboard().supplies) {
            if (supply.kind != shop::SupplyKind::outer || !supply.form) continue;
            if (supply.form->kind == OuterKind::gift_box) continue;
            OuterChoice choice{text(code.text), text(supply.name), inside(*supply.form), true};
            const auto& passed = held->plan.passed_over;
            const auto found =
                std::find_if(passed.begin(), passed.end(), [&, c = code](const auto& p) { return p.outer == c; });
            if (found != passed.end()) {
                choice.words = words::reason(*found);
                choice.possible = found->why != planning::PassedOver::Why::does_not_fit || found->gives.units > 0;
            }
            if (code == held->plan.outer) choice.words = tr("chosen now");
            choices.push_back(std::move(choice));
        }
        std::stable_sort(choices.begin(), choices.end(), [&](const auto& a, const auto& b) {
            const auto order = [&](const auto& c) {
                const OuterForm& form = *day_.cupboard().supply({utf8(c.code)})->form;
                const int rank = c.code == text(held->plan.outer.text) ? 0 : c.possible ? 1 : 2;
                return std::pair(rank, form.inner.x * form.inner.y * form.inner.z);
            };
            return order(a) < order(b);
        });
    }
    choices_.show(std::move(choices));
    comparison_.begin({row != nullptr ? row->parcel : 0});
}

void PlanController::useOuter(int index, const QString& code)
{
    const PlanRow* row = rows_.shown(index);
    if (row == nullptr || row->parcel == 0) return;
    const shop::ParcelId id{row->parcel};
    const QString number = row->number;
    Run run({std::chrono::milliseconds(2000), 200'000});
    const auto plan = repack(day_, id, shop::SupplyCode{utf8(code)}, run);
    if (!plan) {
        emit said(std::visit(
            [&](const auto& why) {
                if constexpr (std::is_same_v<std::decay_t<decltype(why)>, planning::StuckOrder>) {
                    const bool reason = !why.passed_over.empty();
                    return tr("%1 does not take %2: %3")
                        .arg(code, number, reason ? words::reason(why.passed_over.front()) : words::stuck(why));
                } else {
                    return words::refused(why);
                }
            },
            plan.error()));
        return;
    }
    emit said(tr("%1 goes into %2").arg(number, code));
}

void PlanController::toggleLock(int index)
{
    const PlanRow* row = rows_.shown(index);
    if (row == nullptr || row->parcel == 0) return;
    std::vector<shop::ParcelId> ids;
    for (const qlonglong parcel : rows_.marked_or(row->parcel)) ids.push_back({parcel});
    const auto done = row->locked ? book::unlock_parcels(day_.book(), ids) : book::lock_parcels(day_.book(), ids);
    if (!done) return emit said(words::refused(done.error()));
    rows_.unmark();
    day_.moved();
}

void PlanController::printAndPick()
{
    if (!working() && !rows_.all().empty()) emit readyToPick();
}

} // namespace stow::view
