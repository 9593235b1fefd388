#include "core/planning/pack.h"

#include "core/planning/attempt.h"
#include "core/planning/consumables.h"

#include <tuple>

namespace stow::planning {

namespace {

using fitting::Effort;
using fitting::Verdict;
using Why = PassedOver::Why;

// One outer and what has become of it so far.
struct Look {
    const shop::Supply* supply = nullptr;
    Volume closed{}; // once it holds the load, else the least it can close to
    std::optional<Why> why{};
    fitting::Refusal refusal{};
    std::optional<ParcelPlan> plan{}; // it holds the load
    Merit merit{};
    bool none_left = false;
    bool more_may_help = false; // undecided, but not for good
};

bool is_candidate(const shop::Supply& supply, const Task& task)
{
    if (!task.by_hand) return is_offered(supply);
    return supply.kind == shop::SupplyKind::outer && supply.form && supply.code == *task.by_hand;
}

bool is_usable(const ParcelPlan& plan)
{
    return (plan.quotes.empty() || plan.chosen) && plan.keeps_promise;
}

class Choice {
public:
    Choice(const Bench& bench, const Task& task, const Contents& contents, const Stock& stock, bool every_way)
        : bench_(bench), task_(task), contents_(contents), every_way_(every_way),
          destination_(destination_of(task, bench.cupboard.house.currency)), attempts_(bench, task, contents)
    {
        if (const auto before = bench.wish.before.find(task.orders.front()->id); before != bench.wish.before.end()) {
            before_ = before->second;
        }
        for (const auto& [code, supply] : bench.cupboard.supplies) {
            if (!is_candidate(supply, task)) continue;
            Look look{.supply = &supply};
            look.closed = closed_volume(*supply.form, attempts_.least_thickness(supply.form->kind));
            if (!supply.form->cut_heights.empty()) look.closed = least_cut(*supply.form);
            look.none_left = !task.by_hand && !stock.has(taken_for(supply));
            looks_.push_back(std::move(look));
        }
        sort_looks();
    }

    Packed decide()
    {
        for (Look& look : looks_) consider(look, Effort::quick, bench_.wish.work_per_question);
        if (bench_.wish.prove) prove();
        return result();
    }

private:
    // In rounds of growing work, so that one hard outer does not use up what the others need.
    void prove()
    {
        const std::uint64_t bound = bench_.wish.work_per_question;
        const std::uint64_t before = attempts_.work_done();
        for (Look& look : looks_) look.more_may_help = look.why == Why::undecided && !look.none_left;
        for (const std::uint64_t round : {std::uint64_t{1'000}, std::uint64_t{10'000}, bound}) {
            for (Look& look : looks_) {
                if (look.why != Why::undecided || !look.more_may_help || !could_win(look)) continue;
                const std::uint64_t used = attempts_.work_done() - before;
                if (bound != 0 && used >= bound) return;
                consider(look, Effort::proven, bound == 0 ? round : std::min(round, bound - used));
            }
        }
    }

    static Volume least_cut(const OuterForm& form)
    {
        return closed_volume(form, {}, *std::min_element(form.cut_heights.begin(), form.cut_heights.end()));
    }

    void sort_looks()
    {
        std::stable_sort(looks_.begin(), looks_.end(), [](const Look& a, const Look& b) {
            return std::tie(a.closed, a.supply->code) < std::tie(b.closed, b.supply->code);
        });
    }

    Costing costing() const { return {bench_.cupboard, bench_.services, bench_.wish, contents_, destination_}; }

    // What the parcel would cost in a rigid outer can be told before fitting it, and often spares the fitting.
    bool not_worth_fitting(Look& look)
    {
        if (best_ == nullptr) return false;
        if (look.none_left) return true; // none to take, and none missed
        if (every_way_) return false;
        const bool larger = look.closed > best_->closed;
        const bool ranked_by_size = bench_.wish.preference == Preference::smallest && larger && is_usable(*best_->plan);
        const OuterForm& form = *look.supply->form;
        const bool rigid = form.kind == OuterKind::carton || form.kind == OuterKind::tube;
        if (!rigid || !form.cut_heights.empty()) return false;
        ParcelPlan guess;
        guess.items = attempts_.plain_load(form.kind).items;
        cost(guess, costing(), *look.supply, {}, std::nullopt);
        if (ranked_by_size) return !is_usable(guess) || cost_in_all(guess) >= cheapest();
        if (bench_.wish.preference == Preference::smallest) return false;
        if (merit_of(guess, look.closed, bench_.wish.preference, before_) < best_->merit) return false;
        look.why = Why::dearer;
        return true;
    }

    bool could_win(const Look& look) const
    {
        return best_ == nullptr || bench_.wish.preference != Preference::smallest || !is_usable(*best_->plan) ||
               look.closed < best_->closed;
    }

    Money cheapest() const
    {
        Money least = cost_in_all(*best_->plan);
        for (const Look& look : looks_) {
            if (look.plan && !look.none_left && is_usable(*look.plan)) least = std::min(least, cost_in_all(*look.plan));
        }
        return least;
    }

    void consider(Look& look, Effort effort, std::uint64_t work)
    {
        const OuterForm& form = *look.supply->form;
        if (!is_lined(form.kind) && attempts_.cushion().gap > cushion_in_walls(form)) {
            look.why = Why::too_little_cushion;
            look.refusal.outer = look.supply->code.text;
            look.refusal.short_by = attempts_.cushion().gap - cushion_in_walls(form);
            return;
        }
        if (not_worth_fitting(look)) return;
        Tried tried = attempts_.try_outer(*look.supply, effort, false, work);
        if (!tried.held && task_.by_hand) {
            Tried pressed = attempts_.try_outer(*look.supply, effort, true, work);
            if (pressed.held) tried = std::move(pressed);
        }
        if (!tried.held) {
            look.why = tried.refusal.verdict == Verdict::cannot_fit ? Why::does_not_fit : Why::undecided;
            look.refusal = std::move(tried.refusal);
            look.more_may_help = tried.more_may_help;
            return;
        }
        look.why.reset();
        take(look, *std::move(tried.held));
    }

    void take(Look& look, Held held)
    {
        const OuterForm& form = *look.supply->form;
        ParcelPlan plan;
        plan.pieces = task_.pieces;
        plan.items = held.load->items;
        plan.question = std::move(held.question);
        plan.cut_height = held.answer.cut_height;
        plan.placements = std::move(held.answer.placements);
        plan.squeezed = held.squeezed;
        std::optional<Length> cut_at;
        if (plan.cut_height) cut_at = *plan.cut_height + (form.inner.z - plan.question.outers.front().form.inner.z);
        cost(plan, costing(), *look.supply, held.answer.contents_thickness, cut_at);
        look.closed = closed_volume(form, plan.contents_thickness, plan.cut_at);
        look.merit = merit_of(plan, look.closed, bench_.wish.preference, before_);
        look.plan = std::move(plan);
        const bool takes_it = look.plan->quotes.empty() || look.plan->chosen;
        if (look.none_left || !takes_it) return;
        if (best_ == nullptr || look.merit < best_->merit) best_ = &look;
    }

    Why why_passed(const Look& look) const
    {
        if (look.none_left && (look.plan || look.why == Why::undecided)) return Why::none_left;
        if (!look.plan) return look.why.value();
        if (!look.plan->quotes.empty() && !look.plan->chosen) return Why::no_service;
        if (!look.plan->keeps_promise) return Why::too_late;
        return Why::dearer;
    }

    PassedOver passed_over(const Look& look) const
    {
        PassedOver passed{look.supply->code, *look.supply->form, why_passed(look), look.refusal};
        if (passed.why == Why::does_not_fit) passed.gives = attempts_.gives(look.refusal.item);
        return passed;
    }

    Packed result()
    {
        Packed packed;
        const Look* best = best_;
        std::vector<const Look*> by_size;
        for (const Look& look : looks_) by_size.push_back(&look);
        std::stable_sort(by_size.begin(), by_size.end(), [](const Look* a, const Look* b) {
            return std::tie(a->closed, a->supply->code) < std::tie(b->closed, b->supply->code);
        });
        for (const Look* look : by_size) {
            if (look == best) continue;
            const bool smaller = best == nullptr || look->closed <= best->closed;
            const bool looked_at = look->plan || look->why;
            if (smaller && looked_at) packed.passed_over.push_back(passed_over(*look));
            if (smaller && look->why == Why::undecided && !look->none_left) packed.all_decided = false;
            const bool better = look->none_left && look->plan && (best == nullptr || look->merit < best->merit);
            if (better && !packed.missed) packed.missed = look->supply->code;
            if (best == nullptr && look->plan && packed.quotes.empty()) packed.quotes = look->plan->quotes;
        }
        for (const Look* look : by_size) {
            if (!every_way_ || !look->plan || look->none_left) continue;
            if (!look->plan->quotes.empty() && !look->plan->chosen) continue;
            packed.ways.push_back({look->merit, look->closed, cost_in_all(*look->plan), look->plan->uses});
        }
        std::stable_sort(packed.ways.begin(), packed.ways.end(),
                         [](const PackedWay& a, const PackedWay& b) { return a.merit < b.merit; });
        if (best != nullptr) packed.plan = finished(*best, packed);
        return packed;
    }

    ParcelPlan finished(const Look& best, const Packed& packed) const
    {
        ParcelPlan plan = *best.plan;
        plan.passed_over = packed.passed_over;
        plan.proven_smallest =
            !task_.by_hand &&
            std::all_of(packed.passed_over.begin(), packed.passed_over.end(), [](const PassedOver& p) {
                return p.why == Why::does_not_fit || p.why == Why::too_little_cushion || p.why == Why::none_left;
            });
        if (bench_.wish.preference != Preference::smallest || !is_usable(plan)) return plan;
        const Money own = cost_in_all(plan);
        for (const Look& look : looks_) {
            if (&look == &best || !look.plan || look.none_left || !is_usable(*look.plan)) continue;
            const Money saved = own - cost_in_all(*look.plan);
            if (saved.minor <= 0 || (plan.saves_if_larger && saved <= *plan.saves_if_larger)) continue;
            plan.saves_if_larger = saved;
            plan.cheaper_outer = look.supply->code;
        }
        return plan;
    }

    const Bench& bench_;
    const Task& task_;
    const Contents& contents_;
    bool every_way_;
    shop::SupplyCode before_; // its outer in the plan before
    Destination destination_;
    Attempts attempts_;
    std::vector<Look> looks_;
    Look* best_ = nullptr;
};

} // namespace

bool is_offered(const shop::Supply& supply)
{
    return supply.kind == shop::SupplyKind::outer && supply.form && supply.form->kind != OuterKind::gift_box;
}

Packed pack(const Bench& bench, const Task& task, const Contents& contents, const Stock& stock, bool every_way)
{
    return Choice(bench, task, contents, stock, every_way).decide();
}

Task task_of(const std::vector<shop::HeldOrder>& orders, const std::vector<shop::Piece>& pieces,
             const std::optional<shop::SupplyCode>& by_hand)
{
    Task task{pieces, {}, by_hand};
    for (const shop::Piece& piece : pieces) {
        const auto held =
            std::find_if(orders.begin(), orders.end(), [&](const shop::HeldOrder& o) { return o.id == piece.order; });
        const bool seen = std::any_of(task.orders.begin(), task.orders.end(),
                                      [&](const shop::HeldOrder* o) { return o->id == piece.order; });
        if (held != orders.end() && !seen) task.orders.push_back(&*held);
    }
    return task;
}

Destination destination_of(const Task& task, Currency currency)
{
    const shop::Address& to = task.orders.front()->order.to;
    Destination destination{to.country, to.postcode, Money{0, currency}, {}};
    Promise& promise = destination.promise;
    for (const shop::HeldOrder* held : task.orders) {
        const shop::Order& order = held->order;
        if (order.promised && (!promise.promised || *order.promised < *promise.promised)) {
            promise.promised = order.promised;
        }
        if (promise.service_wanted.empty()) promise.service_wanted = order.service_wanted;
        for (const shop::Piece& piece : task.pieces) {
            const auto line = static_cast<std::size_t>(piece.line);
            if (piece.order != held->id || line >= order.lines.size()) continue;
            const std::optional<Money>& price = order.lines[line].price;
            if (price && price->currency == currency) *destination.value += *price * piece.count;
        }
    }
    return destination;
}

} // namespace stow::planning
