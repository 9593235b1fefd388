#include "core/planning/day_share.h"
#include "core/planning/day_totals.h"
#include "core/planning/pack.h"
#include "core/planning/planner.h"
#include "core/planning/split.h"

#include <map>
#include <tuple>

namespace stow::planning {

namespace {

struct Group { // orders that travel together, by id
    std::vector<const shop::HeldOrder*> orders;
    shop::OrderId head;
    Date promised = Date::max();
};

std::vector<Group> groups_of(const std::vector<shop::HeldOrder>& orders)
{
    std::map<shop::OrderId, Group> by_head;
    for (const shop::HeldOrder& held : orders) {
        if (held.state == shop::OrderState::called_off || held.order.called_off) continue;
        const shop::OrderId head = held.joined_to.value_or(held.id);
        Group& group = by_head[head];
        group.head = head;
        group.orders.push_back(&held);
        group.promised = std::min(group.promised, held.order.promised.value_or(Date::max()));
    }
    std::vector<Group> groups;
    for (auto& [head, group] : by_head) {
        std::sort(group.orders.begin(), group.orders.end(), [first = head](const auto* a, const auto* b) {
            return std::tuple(a->id != first, a->id) < std::tuple(b->id != first, b->id);
        });
        groups.push_back(std::move(group));
    }
    std::stable_sort(groups.begin(), groups.end(), [](const Group& a, const Group& b) {
        return std::tie(a.promised, a.head) < std::tie(b.promised, b.head);
    });
    return groups;
}

std::vector<shop::Piece> pieces_of(const shop::HeldOrder& held)
{
    std::vector<shop::Piece> pieces;
    for (std::size_t i = 0; i < held.order.lines.size(); ++i) {
        const shop::OrderLine& line = held.order.lines[i];
        if (line.count > 0) pieces.push_back({held.id, static_cast<int>(i), line.good, line.count});
    }
    return pieces;
}

// Why there is no parcel; `good` is only named where there is but one.
StuckOrder stuck_of(const Task& task, Packed packed)
{
    StuckOrder stuck{task.orders.front()->id, packed.quotes.empty() ? Stuck::nothing_holds_it : Stuck::no_service};
    if (task.pieces.size() == 1) stuck.good = task.pieces.front().good;
    stuck.passed_over = std::move(packed.passed_over);
    stuck.quotes = std::move(packed.quotes);
    return stuck;
}

class DayPlanner {
public:
    DayPlanner(const Bench& bench, const std::vector<shop::HeldOrder>& orders)
        : bench_(bench), orders_(orders), stock_(bench.cupboard, bench.wish)
    {
        day_.day = bench.wish.day;
        day_.preference = bench.wish.preference;
    }

    DayPlan plan()
    {
        const std::vector<Group> groups = groups_of(orders_);
        std::vector<Waiting> waiting;
        std::size_t done = 0;
        for (const Group& group : groups) {
            if (!bench_.run.go_on(256)) { // the run looks at its clock every 256 nodes
                for (const auto* held : group.orders) day_.not_reached.push_back(held->id);
            } else if (auto task = task_for(group)) {
                if (auto ready = made_ready(*std::move(task))) waiting.push_back(*std::move(ready));
            }
            bench_.run.tell_progress(static_cast<double>(++done) / static_cast<double>(groups.size()));
        }
        DayShare share = share_day(bench_, stock_, waiting);
        day_.sharing = std::move(share.told);
        missed_.merge(share.missed);
        keep_all(share.kept);
        sort_stuck(groups);
        day_.stopped_by = bench_.run.stopped();
        add_up(day_, bench_.cupboard, bench_.wish, missed_);
        return std::move(day_);
    }

private:
    // The pieces of a group whose goods are there, taken off the shelf.
    std::optional<Task> task_for(const Group& group)
    {
        Task task;
        for (const shop::HeldOrder* held : group.orders) {
            std::vector<shop::Piece> pieces = pieces_of(*held);
            if (auto stuck = reserve(*held, pieces)) {
                if (stuck->why == Stuck::short_of_goods) short_.push_back(held);
                day_.stuck.push_back(*std::move(stuck));
                continue;
            }
            task.orders.push_back(held);
            task.pieces.insert(task.pieces.end(), pieces.begin(), pieces.end());
        }
        if (task.pieces.empty()) return std::nullopt;
        const auto by_hand = bench_.wish.outer_by_hand.find(task.orders.front()->id);
        if (by_hand != bench_.wish.outer_by_hand.end()) task.by_hand = by_hand->second;
        return task;
    }

    // Packed as if it were alone that day; nothing where it cannot go even then.
    std::optional<Waiting> made_ready(Task task)
    {
        Waiting ready{std::move(task), {}, {}, {}, {}};
        ready.contents = contents_of(bench_.cupboard, ready.task.pieces).value();
        Packed packed = pack(bench_, ready.task, ready.contents, stock_);
        if (packed.missed) ++missed_[*packed.missed];
        if (packed.plan) {
            ready.plan = std::move(packed.plan);
            return ready;
        }
        StuckOrder stuck = stuck_of(ready.task, std::move(packed));
        if (pieces_in(ready.task) > 1 && !ready.task.by_hand) {
            auto parts = split(bench_, ready.task, stock_, {}, ready.contents.boxed.empty() ? &ready.learned : nullptr);
            if (auto* parcels = std::get_if<std::vector<ParcelPlan>>(&parts)) {
                ready.splits.push_back(std::move(*parcels));
                return ready;
            }
            stuck = std::get<StuckOrder>(std::move(parts));
        }
        leave_out(ready, std::move(stuck));
        return std::nullopt;
    }

    static int pieces_in(const Task& task)
    {
        int n = 0;
        for (const shop::Piece& piece : task.pieces) n += piece.count;
        return n;
    }

    void leave_out(const Waiting& group, StuckOrder stuck)
    {
        stock_.give_back(off_the_shelf(group.contents));
        for (const shop::HeldOrder* held : group.task.orders) { // what travels together stays together
            stuck.order = held->id;
            day_.stuck.push_back(stuck);
        }
    }

    void keep_all(std::vector<Kept>& kept)
    {
        std::vector<Kept*> left_out;
        for (Kept& one : kept) {
            for (ParcelPlan& parcel : one.parcels) keep(std::move(parcel));
            if (one.parcels.empty()) left_out.push_back(&one);
        }
        for (const Kept* one : left_out) try_split(*one->waiting);
        if (left_out.empty()) return;
        // Goods came back to the shelf: who was short of them may go now, with the outers that are left.
        const std::vector<const shop::HeldOrder*> again = std::move(short_);
        for (const shop::HeldOrder* held : again) {
            const auto of_it = [&](const StuckOrder& s) { return s.order == held->id; };
            day_.stuck.erase(std::remove_if(day_.stuck.begin(), day_.stuck.end(), of_it), day_.stuck.end());
            auto task = task_for({{held}, held->id, {}});
            auto ready = task ? made_ready(*std::move(task)) : std::nullopt;
            if (!ready) continue;
            if (!boxes_there(ready->contents)) {
                leave_out(*ready, no_box_for(*ready));
                continue;
            }
            if (ready->plan) keep(*std::move(ready->plan));
            if (!ready->splits.empty()) {
                for (ParcelPlan& parcel : ready->splits.front()) keep(std::move(parcel));
            }
        }
    }

    // Shared out it got nothing: over several of the outers that are left it may still go.
    void try_split(const Waiting& group)
    {
        if (!boxes_there(group.contents)) return leave_out(group, no_box_for(group));
        Packed packed = pack(bench_, group.task, group.contents, stock_);
        if (packed.plan) return keep(*std::move(packed.plan));
        if (pieces_in(group.task) > 1 && !group.task.by_hand) {
            auto parts = split(bench_, group.task, stock_, group.learned);
            if (auto* parcels = std::get_if<std::vector<ParcelPlan>>(&parts)) {
                for (ParcelPlan& parcel : *parcels) keep(std::move(parcel));
                return;
            }
        }
        leave_out(group, stuck_of(group.task, std::move(packed)));
    }

    bool boxes_there(const Contents& contents) const { return !missing_box(contents); }

    struct MissingBox {
        const BoxedSet* set = nullptr;
        int missing = 0;
    };
    std::optional<MissingBox> missing_box(const Contents& contents) const
    {
        std::map<shop::SupplyCode, int> boxes;
        for (const BoxedSet& set : contents.boxed) {
            const int needed = boxes[set.box->code] += set.count;
            const shop::Amount left = stock_.left(set.box->code);
            if (left >= shop::pieces(needed)) continue;
            return MissingBox{&set, needed - static_cast<int>(std::max<std::int64_t>(left.thousandths, 0) / 1000)};
        }
        return std::nullopt;
    }

    StuckOrder no_box_for(const Waiting& group) const
    {
        const MissingBox missing = missing_box(group.contents).value();
        return {{}, Stuck::no_gift_box_left, missing.set->set->code, missing.missing};
    }

    void keep(ParcelPlan plan)
    {
        stock_.take(plan.uses);
        day_.parcels.push_back(std::move(plan));
    }

    // In the turn of the orders, whenever it was found out.
    void sort_stuck(const std::vector<Group>& groups)
    {
        std::map<shop::OrderId, std::size_t> turn;
        for (const Group& group : groups) {
            for (const shop::HeldOrder* held : group.orders) turn.emplace(held->id, turn.size());
        }
        std::stable_sort(day_.stuck.begin(), day_.stuck.end(),
                         [&](const StuckOrder& a, const StuckOrder& b) { return turn.at(a.order) < turn.at(b.order); });
    }

    // Takes the order's goods off the shelf, or says why it cannot go.
    std::optional<StuckOrder> reserve(const shop::HeldOrder& held, const std::vector<shop::Piece>& pieces)
    {
        if (pieces.empty()) return StuckOrder{held.id, Stuck::unmatched_good};
        if (held.state == shop::OrderState::set_aside) return StuckOrder{held.id, Stuck::set_aside};
        if (!held.order.paid) return StuckOrder{held.id, Stuck::unpaid};
        const auto contents = contents_of(bench_.cupboard, pieces);
        if (!contents) {
            StuckOrder stuck = contents.error();
            stuck.order = held.id;
            return stuck;
        }
        if (const auto missing = missing_box(*contents)) { // not even one order after the other
            missed_[missing->set->box->code] += missing->missing;
            return StuckOrder{held.id, Stuck::no_gift_box_left, missing->set->set->code, missing->missing};
        }
        if (const auto missing = stock_.take_goods(off_the_shelf(*contents))) {
            return StuckOrder{held.id, Stuck::short_of_goods, missing->good, missing->missing};
        }
        return std::nullopt;
    }

    const Bench& bench_;
    const std::vector<shop::HeldOrder>& orders_;
    Stock stock_;
    DayPlan day_;
    std::map<shop::SupplyCode, int> missed_;
    std::vector<const shop::HeldOrder*> short_; // of goods
};

} // namespace

DayPlan plan_day(const shop::Cupboard& cupboard, const std::vector<shop::HeldOrder>& orders,
                 const std::vector<postage::RateSheet>& sheets, const Wish& wish, Run& run, fitting::Memory* memory)
{
    const Services services(sheets, wish.day, wish.ready_at);
    fitting::Asked asked;
    const Bench bench{cupboard, services, wish, run, memory, &asked};
    return DayPlanner(bench, orders).plan();
}

tl::expected<ParcelPlan, StuckOrder>
plan_parcel(const shop::Cupboard& cupboard, const std::vector<shop::HeldOrder>& orders,
            const std::vector<shop::Piece>& pieces, const std::vector<postage::RateSheet>& sheets, const Wish& wish,
            const std::optional<shop::SupplyCode>& outer, Run& run, fitting::Memory* memory)
{
    const Services services(sheets, wish.day, wish.ready_at);
    const Bench bench{cupboard, services, wish, run, memory};
    Task task = task_of(orders, pieces, outer);
    task.first = wish.first_part;
    if (task.orders.empty()) return tl::unexpected(StuckOrder{{}, Stuck::nothing_holds_it});
    const auto contents = contents_of(cupboard, pieces);
    if (!contents) return tl::unexpected(contents.error());
    Packed packed = pack(bench, task, *contents, Stock(cupboard, wish));
    if (packed.plan) return *std::move(packed.plan);
    return tl::unexpected(stuck_of(task, std::move(packed)));
}

} // namespace stow::planning
