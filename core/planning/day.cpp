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
        std::size_t done = 0;
        for (const Group& group : groups) {
            if (bench_.run.go_on(256))
                plan_group(group); // the run looks at its clock every 256 nodes
            else
                for (const auto* held : group.orders) day_.not_reached.push_back(held->id);
            bench_.run.tell_progress(static_cast<double>(++done) / static_cast<double>(groups.size()));
        }
        day_.stopped_by = bench_.run.stopped();
        add_up(day_, bench_.cupboard, bench_.wish, missed_);
        return std::move(day_);
    }

private:
    void plan_group(const Group& group)
    {
        Task task;
        for (const shop::HeldOrder* held : group.orders) {
            std::vector<shop::Piece> pieces = pieces_of(*held);
            if (auto stuck = reserve(*held, pieces)) {
                day_.stuck.push_back(*std::move(stuck));
                continue;
            }
            task.orders.push_back(held);
            task.pieces.insert(task.pieces.end(), pieces.begin(), pieces.end());
        }
        if (task.pieces.empty()) return;
        const shop::OrderId first = task.orders.front()->id;
        const auto by_hand = bench_.wish.outer_by_hand.find(first);
        if (by_hand != bench_.wish.outer_by_hand.end()) task.by_hand = by_hand->second;

        const Contents contents = contents_of(bench_.cupboard, task.pieces).value();
        Packed packed = pack(bench_, task, contents, stock_);
        if (packed.missed) ++missed_[*packed.missed];
        if (packed.plan) return keep(*std::move(packed.plan));
        StuckOrder stuck = stuck_of(task, std::move(packed));
        if (pieces_in(task) > 1 && !task.by_hand) {
            auto parts = split(bench_, task, stock_);
            if (auto* parcels = std::get_if<std::vector<ParcelPlan>>(&parts)) {
                for (ParcelPlan& parcel : *parcels) keep(std::move(parcel));
                return;
            }
            stuck = std::get<StuckOrder>(std::move(parts));
        }
        stock_.give_back(off_the_shelf(contents));
        for (const shop::HeldOrder* held : task.orders) { // what travels together stays together
            stuck.order = held->id;
            day_.stuck.push_back(stuck);
        }
    }

    static int pieces_in(const Task& task)
    {
        int n = 0;
        for (const shop::Piece& piece : task.pieces) n += piece.count;
        return n;
    }

    void keep(ParcelPlan plan)
    {
        stock_.take(plan.uses);
        day_.parcels.push_back(std::move(plan));
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
        std::map<shop::SupplyCode, int> boxes;
        for (const BoxedSet& set : contents->boxed) {
            const int needed = boxes[set.box->code] += set.count;
            const shop::Amount left = stock_.left(set.box->code);
            if (left >= shop::pieces(needed)) continue;
            ++missed_[set.box->code];
            return StuckOrder{held.id, Stuck::no_gift_box_left, set.set->code,
                              needed - static_cast<int>(std::max<std::int64_t>(left.thousandths, 0) / 1000)};
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
};

} // namespace

DayPlan plan_day(const shop::Cupboard& cupboard, const std::vector<shop::HeldOrder>& orders,
                 const std::vector<postage::RateSheet>& sheets, const Wish& wish, Run& run, fitting::Memory* memory)
{
    const Services services(sheets);
    const Bench bench{cupboard, services, wish, run, memory};
    return DayPlanner(bench, orders).plan();
}

tl::expected<ParcelPlan, StuckOrder>
plan_parcel(const shop::Cupboard& cupboard, const std::vector<shop::HeldOrder>& orders,
            const std::vector<shop::Piece>& pieces, const std::vector<postage::RateSheet>& sheets, const Wish& wish,
            const std::optional<shop::SupplyCode>& outer, Run& run, fitting::Memory* memory)
{
    const Services services(sheets);
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
