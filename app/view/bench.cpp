#include "app/view/bench.h"

#include "app/day_papers.h"
#include "app/paper_keys.h"
#include "app/paper_troubles.h"
#include "app/plan_day.h"
#include "app/scale_check.h"
#include "app/view/away.h"
#include "app/view/bench_scale.h"
#include "app/view/collections.h"
#include "app/view/paper_ways.h"
#include "app/view/parcel_looks.h"
#include "app/view/text.h"
#include "app/words/book.h"
#include "app/words/format.h"
#include "app/words/measures.h"
#include "app/words/reasons.h"
#include "core/book/ledger.h"
#include "core/book/orders.h"
#include "core/book/settings.h"
#include "core/papers/drawing.h"
#include "core/planning/scene.h"
#include "core/shop/check_digits.h"
#include "core/shop/heat.h"

#include <algorithm>

namespace stow::view {

namespace {

constexpr const char* remembered_parcel = "bench.parcel";

bool at_the_bench(const shop::Parcel& parcel)
{
    return parcel.state == shop::ParcelState::picked || parcel.state == shop::ParcelState::packed;
}

// Sooner courier first, then by tray and number.
std::vector<shop::Parcel> queue(const Day& day)
{
    std::vector<shop::Parcel> all;
    for (const shop::Parcel& parcel : day.parcels()) {
        if (at_the_bench(parcel)) all.push_back(parcel);
    }
    std::map<std::string, TimeOfDay> comes;
    for (const Collection& c : collections(day)) {
        if (c.at && *c.at >= day.time()) comes[c.carrier] = *c.at;
    }
    const auto when = [&](const shop::Parcel& parcel) {
        const auto found = comes.find(parcel.carrier);
        return found != comes.end() ? found->second : TimeOfDay(24 * 60);
    };
    // What stops (its order changed or was called off) waits behind all that can go.
    std::vector<std::tuple<bool, TimeOfDay, std::string, std::string, std::size_t>> order;
    for (std::size_t i = 0; i < all.size(); ++i) {
        const shop::Parcel& p = all[i];
        order.emplace_back(book::parcel_standing(day.book(), p).stops(), when(p), p.tray, p.number, i);
    }
    std::sort(order.begin(), order.end());
    std::vector<shop::Parcel> sorted;
    for (const auto& entry : order) sorted.push_back(all[std::get<4>(entry)]);
    return sorted;
}

} // namespace

BenchController::BenchController(Day& day, QObject* parent) : QObject(parent), day_(day)
{
    if (const auto kept = book::remembered(day_.book(), remembered_parcel)) id_ = text(*kept).toLongLong();
}

void BenchController::refresh()
{
    const auto all = queue(day_);
    waiting_ = static_cast<int>(all.size());
    can_hand_over_ = all.empty() && !day_.parcels_in(shop::ParcelState::labelled).empty();
    const bool still = std::any_of(all.begin(), all.end(), [&](const auto& p) { return p.id.value == id_; });
    if (!still) {
        id_ = all.empty() ? 0 : all.front().id.value;
        scanned_ = scanned_print_ = 0;
    }
    show();
}

void BenchController::open(qlonglong parcel)
{
    const auto held = book::parcel(day_.book(), {parcel});
    if (held && !at_the_bench(held->parcel)) {
        emit said(tr("Parcel %1 is %2.").arg(text(held->parcel.number), words::state(held->parcel.state)));
        return;
    }
    id_ = parcel;
    scanned_ = scanned_print_ = 0;
    copying_ = false;
    book::remember(day_.book(), remembered_parcel, std::to_string(id_));
    refresh();
}

void BenchController::show()
{
    held_ = id_ != 0 ? book::parcel(day_.book(), {id_}) : std::nullopt;
    if (!held_) {
        scene_ = {};
        plan_steps_.clear();
        steps_.show({});
        emit changed();
        return;
    }
    const shop::Parcel& parcel = held_->parcel;
    const planning::ParcelPlan& plan = held_->plan;
    const shop::HeldOrder* order = order_of(day_, plan.pieces);
    parcel_ = tr("Parcel %1").arg(text(parcel.number));
    whose_ = joined({parcel.tray.empty() ? QString() : tr("tray %1").arg(text(parcel.tray)),
                     order != nullptr
                         ? joined({text(order->order.to.name), text(order->order.to.town)}, QStringLiteral(", "))
                         : QString(),
                     order != nullptr ? text(order->order.to.country) : QString(),
                     plan.parts > 1 ? tr("parcel %1 of %2").arg(plan.part).arg(plan.parts) : QString()});
    count_ = waiting_ > 1 ? tr("%n more wait", nullptr, waiting_ - 1) : tr("the last one");

    const papers::Arrangement arrangement = arrangement_of(day_, plan);
    outer_ = joined({kind_name(arrangement.form.kind), text(plan.outer.text)}, QStringLiteral(" "));
    proof_ = plan.proven_smallest ? tr("smallest that holds it, proven") : tr("smallest found");
    outer_size_ = plan.cut_at ? tr("%1, cut to %2").arg(inside(arrangement.form), words::length(*plan.cut_at))
                              : inside(arrangement.form);
    QStringList uses;
    if (plan.filler && plan.filler_volume.units > 0) {
        const shop::Supply* filler = day_.cupboard().supply(plan.filler->supply);
        const QString grams =
            filler != nullptr && filler->unit == shop::Unit::litre
                ? QStringLiteral(" (%1)").arg(words::weight(weight_of(plan.filler_volume, filler->weight.mean)))
                : QString();
        uses +=
            tr("Filler: %1 %2").arg(supply_name(day_, plan.filler->supply), words::litres(plan.filler_volume)) + grams;
    } else {
        uses += tr("No filler");
    }
    for (const planning::Used& used : plan.uses) {
        const shop::Supply* supply = day_.cupboard().supply(used.supply);
        if (supply == nullptr || supply->kind != shop::SupplyKind::wrap) continue;
        uses += text(supply->name) + QStringLiteral(": ") + words::amount(used.amount, supply->unit);
    }
    if (plan.tape.units > 0) uses += tr("tape %1").arg(words::metres(plan.tape));
    filler_ = joined(uses);
    caution_ = cautions(day_, plan);
    const book::Standing standing = book::parcel_standing(day_.book(), parcel);
    order_changed_ = !standing.changed.empty() && standing.called_off.empty() && standing.aside.empty();
    note_ = order_changed_                                   ? tr("The order changed since it was planned")
            : standing.stops()                               ? tr("Called off or set aside: it does not go")
            : order != nullptr && !order->order.note.empty() ? tr("Note: %1").arg(text(order->order.note))
                                                             : QString();
    address_ =
        copying_ && order != nullptr ? address_of(order->order.to, day_.cupboard().house.address.country) : QString();

    plan_steps_ = parcel_steps(day_, *held_);
    const int last = static_cast<int>(plan_steps_.size()) - 1;
    current_step_ = std::clamp(parcel.steps_done, 0, last);
    std::vector<BenchStep> rows;
    for (int i = 0; i <= last; ++i) {
        const ParcelStep& step = plan_steps_[static_cast<std::size_t>(i)];
        rows.push_back({step.mark, step.words, i < current_step_, i == current_step_});
    }
    steps_.show(std::move(rows));
    const ParcelStep& now = plan_steps_[static_cast<std::size_t>(current_step_)];
    do_now_ = held_together(now.now);
    do_now_more_ = now.pieces > 1 && scanned_ > 0 ? tr("%1 of %2 scanned").arg(scanned_).arg(now.pieces) : now.more;
    done_words_ = now.kind == ParcelStep::Kind::label ? tr("Stuck on") : tr("Done");
    weighing_ = now.kind == ParcelStep::Kind::weigh;
    highlight_ = QList<int>(now.numbers.begin(), now.numbers.end());

    const std::vector<int> layers = papers::layers(arrangement.placements);
    layers_ = layers.empty() ? 1 : *std::max_element(layers.begin(), layers.end());
    layer_ = now.layer > 0 ? std::min(now.layer, layers_) : layers_;
    scene_.arrangement = std::make_shared<const papers::Arrangement>(arrangement);
    scene_.sentence = tr("Drawing of %1 with %2").arg(outer_, contents_of(day_, plan));
    wait_ = heat_words(day_, plan);
    showScale();
    if (weighing_ && reading_at(shown_stage_)) { // what came of it is said where it is read from afar
        do_now_ = verdict_kind_ == 1 ? tr("%1: right").arg(reading_words_) : tr("It does not weigh right");
        do_now_more_ = verdict_kind_ == 1 ? tr("then its label") : joined({verdict_, tr("weigh it again after")});
    }
    emit changed();
    emit layerChanged();
}

void BenchController::showScale()
{
    if (!held_) return;
    shown_stage_ = stage_now();
    // With the label still to come the closed parcel is what was weighed.
    if (shown_stage_ == shop::WeighingStage::labelled && !reading_at(shown_stage_)) {
        shown_stage_ = shop::WeighingStage::closed;
    }
    const ScaleWords said = scale_words(day_, *held_, shown_stage_, reading_at(shown_stage_));
    reading_words_ = said.reading;
    verdict_ = said.verdict;
    verdict_more_ = said.more;
    verdict_kind_ = said.kind;
    service_ = said.service;
    edge_ = said.edge;
    edge_at_risk_ = said.edge_at_risk;
    ruler_ = said.ruler;
    saving_ = said.saving;
    emit scaleChanged();
}

// Contents are weighed when all is in and before the filler; closed at its own step; labelled when the label is on.
shop::WeighingStage BenchController::stage_now() const
{
    const ParcelStep* step = now();
    if (step == nullptr) return shop::WeighingStage::closed;
    const bool fills = std::any_of(plan_steps_.begin(), plan_steps_.end(),
                                   [](const ParcelStep& s) { return s.kind == ParcelStep::Kind::fill; });
    switch (step->kind) {
    case ParcelStep::Kind::fill: return shop::WeighingStage::contents;
    case ParcelStep::Kind::close: return fills ? shop::WeighingStage::closed : shop::WeighingStage::contents;
    case ParcelStep::Kind::label: return shop::WeighingStage::labelled;
    case ParcelStep::Kind::make_up:
    case ParcelStep::Kind::put_in:
    case ParcelStep::Kind::weigh: break;
    }
    return shop::WeighingStage::closed;
}

std::optional<Weight> BenchController::reading_at(shop::WeighingStage stage) const
{
    const auto& all = held_->parcel.weighings;
    const auto last = std::find_if(all.rbegin(), all.rend(), [&](const auto& w) { return w.stage == stage; });
    return last == all.rend() ? std::nullopt : std::optional(last->weight);
}

QStringList BenchController::excuses() const
{
    if (ruler_.reading && *ruler_.reading < ruler_.expected)
        return {tr("counted once more, nothing is missing"), tr("less filler than planned"), tr("the paper is dry")};
    return {tr("counted once more, nothing is too much"), tr("more filler than planned"),
            tr("a note or a gift was added"), tr("the paper is damp")};
}

bool BenchController::all_scanned() const
{
    for (std::size_t i = 0; i < plan_steps_.size(); ++i) {
        const ParcelStep& step = plan_steps_[i];
        if (step.kind != ParcelStep::Kind::put_in) continue;
        if (step.unscannable || (!step.good.empty() && (i >= 62 || (held_->parcel.scanned >> i & 1) == 0)))
            return false;
    }
    return true;
}

// The scale on the cable: what it shows is always seen, a settled weight is taken once, where the step asks for one.
void BenchController::scaleSays(const weighing::ScaleSays& said)
{
    using State = weighing::ScaleState;
    on_scale_ = said;
    scale_stops_ = false;
    const auto stops = [&](const QString& words) {
        scale_ = words;
        scale_stops_ = true;
    };
    switch (said.state) {
    case State::absent: scale_.clear(); break;
    case State::zero: scale_ = tr("scale ready"); break;
    case State::moving: scale_ = tr("scale: settling"); break;
    case State::settled: scale_ = tr("scale: %1").arg(words::weight(said.weight)); break;
    case State::under_zero: stops(tr("scale below zero: take all off and zero it")); break;
    case State::over_limit: stops(tr("too heavy for the scale")); break;
    case State::needs_zero: stops(tr("zero the scale")); break;
    case State::needs_calibration: stops(tr("the scale asks to be calibrated")); break;
    case State::faulty: stops(tr("the scale reports a fault")); break;
    case State::unreadable: stops(tr("the scale speaks in a unit that is not understood")); break;
    }
    emit liveChanged();
    const ParcelStep* step = now();
    if (!said.fresh || step == nullptr) return;
    if (stands_closed(said.weight)) { // the scale says what keys would have said
        while (now()->kind != ParcelStep::Kind::weigh) {
            const int before = current_step_;
            advance();
            if (current_step_ == before) return;
        }
        step = now();
    }
    const bool asked = step->kind == ParcelStep::Kind::weigh || step->kind == ParcelStep::Kind::label ||
                       stage_now() == shop::WeighingStage::contents;
    if (!asked) return;
    const bool weighing_step = step->kind == ParcelStep::Kind::weigh;
    if (!take(said.weight)) return;
    if (weighing_step && verdict_kind_ == 1) done(); // right: on to the label, hands free
}

// All is in, and it weighs what it does when it is filled and closed.
bool BenchController::stands_closed(Weight weight) const
{
    using Verdict = weighing::Finding::Verdict;
    const auto is_right = [&](shop::WeighingStage stage) {
        return check_scale(day_, *held_, stage, weight).finding.verdict == Verdict::right;
    };
    const ParcelStep::Kind kind = now()->kind;
    const bool fills = kind == ParcelStep::Kind::fill;
    if (!fills && kind != ParcelStep::Kind::close) return false;
    return is_right(shop::WeighingStage::closed) && !(fills && is_right(shop::WeighingStage::contents));
}

bool BenchController::keep(Weight weight, bool overridden, const std::string& why)
{
    const shop::WeighingStage stage = stage_now();
    const ScaleCheck check = check_scale(day_, *held_, stage, weight);
    book::Reading reading{stage, weight, overridden, why, check.by_parts, std::nullopt};
    const bool right_weight = check.finding.verdict == weighing::Finding::Verdict::right;
    if (right_weight && !overridden && stage != shop::WeighingStage::contents && all_scanned()) {
        reading.lesson = planning::lesson_of(held_->plan, day_.cupboard(), stage, weight);
    }
    if (!settle(book::weigh(day_.book(), {id_}, reading))) return false;
    day_.moved();
    return true;
}

// Empty: its service takes that weight, or it was planned without prices.
QString BenchController::taken_by_none(Weight weight) const
{
    const std::string& carrier = held_->parcel.carrier;
    if (carrier.empty() || quote_at(day_, *held_, weight)) return {};
    return tr("%1 does not take it at this weight. Take something out, or weigh it again.").arg(text(carrier));
}

bool BenchController::overrule(const std::string& why)
{
    const auto seen = reading_at(shown_stage_);
    if (!seen || verdict_kind_ < 2) return true;
    if (const QString refused = taken_by_none(*seen); !refused.isEmpty()) {
        emit wrong(tr("It cannot go like this"), refused);
        return false;
    }
    return keep(*seen, true, why);
}

bool BenchController::take(Weight weight)
{
    if (!keep(weight, false, {})) return false;
    if (verdict_kind_ == 1)
        emit right();
    else if (verdict_kind_ == 3)
        emit wrong(tr("Look into it"), joined({verdict_, verdict_more_}));
    return true;
}

void BenchController::setLayer(int layer)
{
    const int within = std::clamp(layer, 1, std::max(1, layers_));
    if (within == layer_) return;
    layer_ = within;
    emit layerChanged();
}

bool BenchController::comesApart() const
{
    if (layers_ < 2 || !scene_.arrangement) return false;
    const OuterKind kind = scene_.arrangement->form.kind;
    return !is_sleeve(kind) && kind != OuterKind::tube; // those are drawn flat
}

QString BenchController::layerWords() const
{
    return tr("Layer %1 of %2").arg(layer_).arg(layers_);
}

const ParcelStep* BenchController::now() const
{
    return held_ && !plan_steps_.empty() ? &plan_steps_[static_cast<std::size_t>(current_step_)] : nullptr;
}

bool BenchController::settle(const book::Done& done)
{
    if (done) return true;
    if (done.error().why == book::Why::parcel_stops)
        emit wrong(tr("Stop"), words::refused(done.error()));
    else
        emit said(words::refused(done.error()));
    return false;
}

// Steps ---------------------------------------------------------------------------------------------------------------

void BenchController::done()
{
    const ParcelStep* step = now();
    if (step == nullptr) return;
    if (step->kind == ParcelStep::Kind::label) return stuckOn();
    if (step->kind == ParcelStep::Kind::weigh) {
        if (!reading_at(shop::WeighingStage::closed)) {
            emit said(tr("Type what the scale says (W), or press Y to go on without weighing."));
            return;
        }
        if (verdict_kind_ >= 2) {
            emit wrong(tr("Look into it"), joined({verdict_, verdict_more_}));
            return;
        }
        if (!pack()) return;
    }
    advance();
}

void BenchController::advance(bool scanned)
{
    scanned_ = 0;
    if (settle(book::bench_tick(day_.book(), {id_}, current_step_ + 1, scanned))) day_.moved();
}

void BenchController::back()
{
    scanned_ = 0;
    if (held_ && current_step_ > 0 && settle(book::bench_tick(day_.book(), {id_}, current_step_ - 1))) day_.moved();
}

// Closed and weighed: what it used up leaves the rack, and the price of what it really weighs is kept.
bool BenchController::pack()
{
    if (held_->parcel.state == shop::ParcelState::packed) return true;
    if (const auto quote =
            quote_at(day_, *held_, reading_at(shop::WeighingStage::closed).value_or(held_->plan.weight.mean))) {
        if (!settle(book::choose_service(day_.book(), {id_}, quote->carrier, quote->service, quote->price()->total)))
            return false;
    }
    if (!settle(book::mark_packed(day_.book(), {id_}))) return false;
    // Sheets of labels came out with the round; a label of its own comes now, when the parcel is right.
    if (labels_at_the_bench(day_) && !print_label())
        emit said(tr("The label could not be written into %1").arg(text(paper_folder(day_).string())));
    return true;
}

// In a folder of its own: what the round wrote stays as it is.
std::optional<std::filesystem::path> BenchController::print_label()
{
    const auto folder = paper_folder(day_) / held_->parcel.number;
    const auto file = print_paper(day_, PaperKind::labels, {{id_}}, folder);
    if (!file) return file;
    emit written(text(paper_key::labels), text(file->string()));
    if (!typed_way(day_, text(paper_key::labels)).isEmpty()) use_labels(day_, 1);
    stop_at_troubles();
    return file;
}

void BenchController::stop_at_troubles()
{
    if (const QString trouble = words_of(paper_troubles(day_, {{id_}})); !trouble.isEmpty())
        emit wrong(tr("Something is wrong on paper"), trouble);
}

bool BenchController::typesWeight() const
{
    constexpr int stop = 3;
    return weighing_ && scale_.isEmpty() && (reading_words_.isEmpty() || verdict_kind_ == stop);
}

QString BenchController::weightUnit() const
{
    return words::unit_of_weight();
}

QString BenchController::weigh(const QString& typed)
{
    if (!held_) return {};
    const bool bare =
        !typed.isEmpty() && std::none_of(typed.begin(), typed.end(), [](QChar c) { return c.isLetter(); });
    const auto weight = typed_weight(bare ? typed + words::unit_of_weight() : typed);
    if (!weight) return tr("“%1” is not a weight in %2").arg(typed, words::unit_of_weight());
    (void)take(*weight);
    return {};
}

void BenchController::itIsRight(const QString& why)
{
    const ParcelStep* step = now();
    if (step == nullptr) return;
    const bool weighing_step = step->kind == ParcelStep::Kind::weigh;
    if (!overrule(utf8(why))) return;
    if (!weighing_step)
        emit said(tr("Kept. Closed it is weighed once more."));
    else if (pack())
        advance();
}

void BenchController::stuckOn()
{
    const ParcelStep* step = now();
    if (step == nullptr) return;
    if (step->kind != ParcelStep::Kind::label) {
        emit wrong(tr("Not yet"), tr("First: %1").arg(step->now));
        return;
    }
    const QString number = text(held_->parcel.number);
    // The label and its pouch can tip a step: what was weighed last says what it costs, unless it is paid for already.
    if (const auto weight = reading_at(shop::WeighingStage::labelled);
        weight && book::postage_bought(day_.book(), {id_}).empty()) {
        const auto quote = quote_at(day_, *held_, *weight);
        if (quote && quote->price()->total != held_->parcel.postage &&
            !settle(book::choose_service(day_.book(), {id_}, quote->carrier, quote->service, quote->price()->total))) {
            return;
        }
    }
    if (!settle(book::mark_labelled(day_.book(), {id_}, {scanned_print_, labels_printed(day_, held_->parcel.number)})))
        return;
    copying_ = false;
    id_ = 0;
    emit right();
    emit said(tr("Parcel %1 is labelled").arg(number));
    day_.moved();
    book::remember(day_.book(), remembered_parcel, std::to_string(id_));
}

void BenchController::labelMissing()
{
    if (!held_) return;
    copying_ = !copying_;
    show();
}

void BenchController::changesSeen()
{
    if (!held_ || !order_changed_) return;
    if (const auto accepted = book::accept_changes(day_.book(), {id_}); !accepted) {
        emit said(words::refused(accepted.error()));
        return;
    }
    day_.moved();
}

void BenchController::holdUntilMonday()
{
    if (!held_ || wait_.isEmpty()) return;
    const shop::HeldOrder* order = order_of(day_, held_->plan.pieces);
    if (order == nullptr) return;
    std::optional<Date> monday;
    for (const shop::Piece& piece : held_->plan.pieces) {
        const shop::Good* good = day_.cupboard().good(piece.good);
        if (good != nullptr && !monday) monday = shop::better_held_until(*good, day_.today());
    }
    if (!monday) return;
    const std::string reason = tr("held in the heat until Monday").toStdString();
    if (!settle(book::set_aside(day_.book(), order->id, reason, *monday))) return;
    emit said(tr("Held until %1").arg(words::date(*monday)));
    day_.moved();
    later();
}

void BenchController::printAgain()
{
    if (!held_) return;
    scanned_print_ = 0; // what was scanned is to be torn up
    const auto file = print_label();
    const std::string number = held_->parcel.number;
    const int print = labels_printed(day_, number);
    show(); // the step says which label is to be stuck on
    if (!file)
        emit said(tr("The label could not be written into %1").arg(text(paper_folder(day_).string())));
    else if (print > 1)
        emit said(tr("Print %1 of label %2: tear up the one before").arg(print).arg(text(number)));
    else
        emit said(tr("Label %1 lies in %2").arg(text(number), text(file->string())));
}

void BenchController::print_one(PaperKind kind)
{
    if (!held_) return;
    const QString paper = text(name_of(kind));
    const auto file = print_paper(day_, kind, {{id_}}, paper_folder(day_) / held_->parcel.number);
    if (file) {
        emit written(paper, text(file->string()));
        stop_at_troubles();
    }
    emit said(file ? tr("%1: %2").arg(name_of_paper(paper), text(file->string()))
                   : tr("The paper could not be written into %1").arg(text(paper_folder(day_).string())));
}

std::vector<DraftPaper> BenchController::drafts()
{
    std::vector<DraftPaper> drafts;
    if (!held_) return drafts;
    const QString trouble = words_of(paper_troubles(day_, {{id_}}));
    for (const PaperKind kind : {PaperKind::labels, PaperKind::packing_slips, PaperKind::bench_cards,
                                 PaperKind::gift_notes, PaperKind::customs, PaperKind::return_labels}) {
        const auto print = [this, kind] { kind == PaperKind::labels ? printAgain() : print_one(kind); };
        drafts.push_back({name_of_paper(text(name_of(kind))), paper_of(day_, kind, {{id_}}), &palette_of(day_, kind),
                          tr("Print"), print, trouble});
    }
    return drafts;
}

void BenchController::later()
{
    const auto all = queue(day_);
    const auto here = std::find_if(all.begin(), all.end(), [&](const auto& p) { return p.id.value == id_; });
    if (here == all.end() || all.size() < 2) return;
    const auto next = std::next(here) == all.end() ? all.begin() : std::next(here);
    open(next->id.value);
}

// What goes wrong -----------------------------------------------------------------------------------------------------

void BenchController::boxGone()
{
    if (!held_ || held_->parcel.state != shop::ParcelState::picked) return;
    const shop::SupplyCode gone = held_->plan.outer;
    if (!settle(book::count(day_.book(), gone, shop::Amount{}, tr("gone at the bench").toStdString()))) return;
    day_.moved();
    const auto plan = away(day_, tr("Finding another outer for parcel %1").arg(text(held_->parcel.number)),
                           [id = shop::ParcelId{id_}](Day& beside) {
                               Run run({std::chrono::milliseconds(2000), 200'000});
                               return repack(beside, id, std::nullopt, run);
                           });
    if (!plan) {
        const auto* stuck = std::get_if<planning::StuckOrder>(&plan.error());
        emit wrong(tr("No other outer"),
                   stuck != nullptr ? words::stuck(*stuck) : words::refused(std::get<book::Refused>(plan.error())));
        return;
    }
    scanned_ = 0;
    emit said(tr("%1 is counted as gone. Take %2").arg(supply_name(day_, gone), supply_name(day_, plan->outer)));
}

QString BenchController::addSomething(const QString& code, int count)
{
    if (!held_) return {};
    const shop::GoodCode good{utf8(code)};
    if (day_.cupboard().good(good) == nullptr) return tr("there is no good with the code %1").arg(code);
    if (count <= 0) return tr("how many must be above zero");
    const shop::HeldOrder* held = order_of(day_, held_->plan.pieces);
    if (held == nullptr || held_->parcel.state != shop::ParcelState::picked) return tr("this parcel is closed already");

    shop::Order order = held->order;
    shop::OrderLine line;
    line.good = good;
    line.title = day_.cupboard().good(good)->name;
    line.count = count;
    order.lines.push_back(line);
    const shop::OrderId order_id = held->id;
    const auto line_index = static_cast<int>(order.lines.size()) - 1;
    if (const auto edited = book::edit_order(day_.book(), order_id, order); !edited)
        return words::refused(edited.error());
    day_.moved();

    std::vector<shop::Piece> pieces = held_->plan.pieces;
    pieces.push_back({order_id, line_index, good, count});
    auto plan = away(day_, tr("Finding an outer for all of it"), [&pieces](Day& beside) {
        const PlanInput input = gather(beside, planning::Preference::smallest);
        Run run({std::chrono::milliseconds(2000), 400'000});
        return planning::plan_parcel(beside.cupboard(), orders_of(beside, pieces), pieces, beside.rate_sheets(),
                                     input.wish, std::nullopt, run);
    });
    if (!plan) {
        undo_last();
        return tr("it cannot go in: %1").arg(words::stuck(plan.error()));
    }
    plan->part = held_->plan.part;
    plan->parts = held_->plan.parts;
    const auto replanned = book::replan(day_.book(), {id_}, *plan);
    const auto accepted = replanned ? book::accept_changes(day_.book(), {id_}) : replanned;
    if (!accepted) {
        undo_last();
        return words::refused(accepted.error());
    }
    scanned_ = 0;
    day_.moved();
    emit said(tr("%1 × %2 added: now %3").arg(count).arg(good_name(day_, good), supply_name(day_, plan->outer)));
    return {};
}

void BenchController::undo_last()
{
    if (const auto last = book::last_undoable(day_.book())) {
        if (book::undo(day_.book(), last->id)) day_.moved();
    }
}

// At the step where the label goes on. `same`: the code is of the parcel on the scale.
void BenchController::scan_label(const papers::Payload& code, bool same)
{
    using Kind = papers::Payload::Kind;
    const QString here = text(held_->parcel.number);
    const int last = labels_printed(day_, held_->parcel.number);
    scanned_print_ = same && code.kind == Kind::label ? code.print : 0; // known too when she then presses Space
    if (!same)
        emit wrong(tr("Wrong label"), tr("This label is of %1. On the scale stands %2.").arg(text(code.number), here));
    else if (code.kind == Kind::paper)
        emit wrong(tr("Not the label"), tr("This code is of another paper of %1. Scan its address label.").arg(here));
    else if (code.kind == Kind::label && code.print < last)
        emit wrong(tr("An older label"), tr("This is print %1 of label %2. Print %3 was made later: stick that one on "
                                            "and destroy this one. If only this one exists, press Space.")
                                             .arg(code.print)
                                             .arg(here)
                                             .arg(last));
    else
        stuckOn();
}

bool BenchController::scan(const QString& code)
{
    const ParcelStep* step = now();
    if (step == nullptr) return false;
    if (const auto ours = papers::parse_payload(utf8(code))) {
        const bool same = ours->of_parcel() && ours->number == held_->parcel.number;
        if (step->kind != ParcelStep::Kind::label) return same;
        scan_label(*ours, same);
        return true;
    }
    const auto is_scanned = [&](const shop::GoodCode& good) {
        const shop::Good* known = day_.cupboard().good(good);
        return !good.empty() &&
               (good.text == utf8(code) || (known != nullptr && !known->gtin.empty() && known->gtin == utf8(code)));
    };
    if (step->kind == ParcelStep::Kind::put_in && is_scanned(step->good)) {
        emit right();
        if (++scanned_ >= step->pieces)
            advance(true);
        else
            show();
        return true;
    }
    for (std::size_t i = 0; i < plan_steps_.size(); ++i) {
        if (!is_scanned(plan_steps_[i].good)) continue;
        const bool before = static_cast<int>(i) < current_step_;
        emit wrong(before ? tr("That is in already") : tr("Not yet"), tr("Now: %1").arg(step->now));
        return false;
    }
    const std::string plain = utf8(QString(code).remove(QLatin1Char(' ')).toUpper());
    const bool digits = std::all_of(plain.begin(), plain.end(), [](char c) { return c >= '0' && c <= '9'; });
    if (step->kind == ParcelStep::Kind::label && plain.size() >= 8) {
        // The carrier's own label: its number and this parcel belong together from now on.
        const bool s10 = plain.size() == 13 && !digits;
        if (s10 && !shop::s10_ok(plain)) {
            emit wrong(tr("Scan it again"), tr("The check digit of %1 is wrong.").arg(code));
            return true;
        }
        if (!settle(book::set_tracking(day_.book(), {id_}, plain))) return true;
        emit right();
        emit said(tr("Parcel %1 travels as %2").arg(text(held_->parcel.number), code));
        day_.moved();
        return true;
    }
    if (digits && plain.size() >= 8 && plain.size() <= 14 && !shop::gtin_ok(plain)) {
        emit wrong(tr("Scan it again"), tr("The check digit of %1 is wrong.").arg(code));
        return false;
    }
    emit wrong(tr("Not in this parcel"), tr("%1 is not ordered here.").arg(code));
    return false;
}

} // namespace stow::view
