#include "app/view/plan.h"

#include "app/plan_day.h"
#include "app/view/away.h"
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

#include <QTimer>

#include <algorithm>
#include <set>

namespace stow::view {

namespace {

constexpr const char* remembered_preference = "plan.preference";
constexpr double worth_saying = 0.02; // chance of crossing a step edge
constexpr unsigned at_once = 60;      // parcels whose plans are read before the screen is shown
constexpr int in_between = 10;        // and then between two keys

QString warning_of(const Day& day, bool keeps_promise, const shop::SupplyCode& outer)
{
    if (!keeps_promise) return PlanController::tr("comes after the promised day");
    constexpr std::int64_t few = 3;
    const auto on_hand = day.cupboard().on_hand.find(outer);
    if (on_hand == day.cupboard().on_hand.end()) return QString();
    const std::int64_t left = on_hand->second.thousandths / 1000;
    return left <= few ? PlanController::tr("%1 of %2 left").arg(left).arg(text(outer.text)) : QString();
}

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
    row.warning = warning_of(day, plan.keeps_promise, plan.outer);
    const postage::Quote* quote = plan.chosen ? &plan.quotes[*plan.chosen] : nullptr;
    if (const postage::Price* price = quote != nullptr ? quote->price() : nullptr) {
        row.price = words::money_with_currency(price->total);
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
        cheaper += PlanController::tr("%1 saves %2")
                       .arg(text(plan.cheaper_outer.text), words::money_with_currency(*plan.saves_if_larger));
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
      comparison_(day), work_(std::make_unique<Work>(day))
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
    std::vector<Sums> sums;
    std::set<shop::OrderId> planned;
    stuck_orders_ = still_stuck(day_);
    sharing_ = last_sharing(day_);
    if (known_.size() > 2 * day_.parcels().size() + 100) known_.clear(); // mostly of parcels that are gone
    unread_.clear();
    for (const shop::Parcel& parcel : day_.parcels()) {
        if (parcel.state != shop::ParcelState::planned || !parcel.tray.empty()) continue;
        for (const shop::Piece& piece : parcel.pieces) planned.insert(piece.order);
        const Known* known = fresh(parcel);
        if (known == nullptr && rows.size() < at_once) known = &read(parcel);
        if (known == nullptr) {
            unread_.push_back(parcel.id);
            continue;
        }
        rows.push_back(known->row);
        rows.back().warning = warning_of(day_, known->keeps_promise, {utf8(known->row.outer)});
        sums.push_back(known->sums);
    }
    if (!unread_.empty() && !std::exchange(reading_, true)) QTimer::singleShot(0, this, &PlanController::read_more);
    const auto is_stuck = [&](shop::OrderId id) {
        return std::any_of(stuck_orders_.begin(), stuck_orders_.end(),
                           [&](const auto& stuck) { return stuck.order == id; });
    };
    const auto waiting =
        static_cast<int>(std::count_if(day_.to_plan().begin(), day_.to_plan().end(),
                                       [&](shop::OrderId id) { return !planned.contains(id) && !is_stuck(id); }));
    stale_ = waiting > 0;
    const auto parcels = static_cast<int>(rows.size() + unread_.size());
    show_rows(std::move(rows), sums);
    const QString in_plan = tr("%n parcels planned", nullptr, parcels);
    const QString to_plan = tr("%n orders to plan", nullptr, waiting);
    if (stale_ && parcels > 0)
        headline_ = in_plan + QStringLiteral(" · ") + to_plan;
    else
        headline_ = stale_ ? to_plan : parcels > 0 ? in_plan : tr("Plan");
    emit changed();
}

// What was worked out of this parcel's plan, if it still holds.
const PlanController::Known* PlanController::fresh(const shop::Parcel& parcel) const
{
    const auto known = known_.find(parcel.id.value);
    return known != known_.end() && known->second.from == from(parcel) ? &known->second : nullptr;
}

PlanController::From PlanController::from(const shop::Parcel& parcel) const
{
    From all{day_.revision(parcel.id), day_.cupboard_revision(), {}, words::measures_in_use()};
    for (const shop::Piece& piece : parcel.pieces) all.orders.push_back(day_.revision(piece.order));
    return all;
}

const PlanController::Known& PlanController::read(const shop::Parcel& parcel)
{
    Known& known = known_[parcel.id.value];
    if (const auto held = book::parcel(day_.book(), parcel.id)) {
        known.row = row_of(day_, held->plan, &held->parcel);
        known.keeps_promise = held->plan.keeps_promise;
        known.sums = sums_of(held->plan);
    }
    known.from = from(parcel);
    return known;
}

// The rest of a plan of thousands, a little at a time, so that keys are heard in between.
void PlanController::read_more()
{
    reading_ = false;
    guarded(day_, [this] {
        if (unread_.empty()) return; // a refresh came in between
        for (int n = 0; n < in_between && !unread_.empty(); ++n) {
            const shop::ParcelId id = unread_.front();
            unread_.pop_front();
            const auto& all = day_.parcels();
            const auto parcel = std::find_if(all.begin(), all.end(), [&](const auto& p) { return p.id == id; });
            if (parcel != all.end()) read(*parcel);
        }
        if (unread_.empty()) return refresh();
        reading_ = true;
        QTimer::singleShot(0, this, &PlanController::read_more);
    });
}

PlanController::Sums PlanController::sums_of(const planning::ParcelPlan& plan)
{
    Sums sums;
    if (const postage::Price* price = plan.chosen ? plan.quotes[*plan.chosen].price() : nullptr)
        sums.postage = price->total;
    sums.packaging = plan.packaging;
    sums.larger = plan.saves_if_larger;
    if (plan.filler) sums.filler = plan.filler_volume;
    sums.tape = plan.tape;
    return sums;
}

void PlanController::show_rows(std::vector<PlanRow> rows, const std::vector<Sums>& plans)
{
    Money postage{0, day_.cupboard().house.currency}, packaging = postage, larger = postage;
    Volume filler;
    Length tape;
    for (const Sums& plan : plans) {
        if (plan.postage && plan.postage->currency == postage.currency) postage += *plan.postage;
        if (plan.packaging.currency == packaging.currency) packaging += plan.packaging;
        if (plan.larger && plan.larger->currency == larger.currency) larger += *plan.larger;
        filler += plan.filler;
        tape += plan.tape;
    }
    totals_ = plans.empty()
                  ? QString()
                  : joined({tr("%n parcels", nullptr, static_cast<int>(plans.size())),
                            tr("postage %1").arg(words::money_with_currency(postage)),
                            tr("packaging %1").arg(words::money_with_currency(packaging)),
                            tr("filler %1").arg(words::litres(filler)), tr("tape %1").arg(words::metres(tape))});
    const planning::DaySharing shared = plans.empty() ? planning::DaySharing{} : sharing_;
    const QString cheaper =
        larger.minor > 0
            ? tr("Larger outers would save %1 in all: P prefers the cheapest.").arg(words::money_with_currency(larger))
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
    if (day_.to_plan().empty()) {
        emit said(tr("Nothing waits to be planned."));
        return;
    }
    work_->start([this, preference = preferred()](Run& run) -> Work::Finish {
        const std::unique_ptr<Day> beside = day_.beside();
        const PlanInput input = gather(*beside, preference);
        book::SolvedQuestions solved(beside->book().path());
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
    sharing_ = plan.sharing;
    if (plan.parcels.size() <= at_once) { // of thousands, the rows come when the plan is kept
        std::vector<PlanRow> rows;
        std::vector<Sums> sums;
        for (const planning::ParcelPlan& parcel : plan.parcels) {
            rows.push_back(row_of(day_, parcel, nullptr));
            sums.push_back(sums_of(parcel));
        }
        show_rows(std::move(rows), sums);
    }
    work_words_ = tr("Proving that nothing smaller holds them");
    headline_ = tr("%n parcels", nullptr, static_cast<int>(plan.parcels.size()));
    emit changed();
    emit workChanged();
}

void PlanController::keep(const PlanInput& input, const planning::DayPlan& plan)
{
    shortages_found_ = plan.shortages;
    const auto stored =
        away(day_, tr("Writing the plan into the book"), [&](Day& beside) { return store(beside, input, plan); });
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

bool PlanController::useOuter(int index, const QString& code)
{
    const PlanRow* row = rows_.shown(index);
    if (row == nullptr || row->parcel == 0) return false;
    const shop::ParcelId id{row->parcel};
    const QString number = row->number;
    const auto plan = away(day_, tr("Trying %1 for %2").arg(code, number), [&](Day& beside) {
        Run run({std::chrono::milliseconds(2000), 200'000});
        return repack(beside, id, shop::SupplyCode{utf8(code)}, run);
    });
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
        return false;
    }
    emit said(tr("%1 goes into %2").arg(number, code));
    return true;
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
