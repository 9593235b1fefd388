#include "core/planning/day_totals.h"
#include "core/planning/pack.h"
#include "core/planning/planner.h"

namespace stow::planning {

namespace {

bool chosen_by_hand(const ParcelPlan& parcel, const Wish& wish)
{
    return !parcel.pieces.empty() && wish.outer_by_hand.contains(parcel.pieces.front().order);
}

} // namespace

std::optional<Stop> prove_day(DayPlan& plan, const shop::Cupboard& cupboard, const std::vector<shop::HeldOrder>& orders,
                              const std::vector<postage::RateSheet>& sheets, const Wish& wish, Run& run,
                              const OnParcel& on_parcel, fitting::Memory* memory)
{
    Wish proving = wish;
    proving.prove = true;
    const Services services(sheets, wish.day, wish.ready_at);
    const Bench bench{cupboard, services, proving, run, memory};
    std::map<shop::SupplyCode, int> missed; // what fell short before still does, as far as it is not freed here
    const Stock there(cupboard, wish);
    std::map<shop::SupplyCode, shop::Amount> planned;
    for (const ParcelPlan& parcel : plan.parcels) {
        for (const Used& used : parcel.uses) planned[used.supply] += used.amount;
    }
    for (const Shortage& s : plan.shortages) {
        const auto over = (s.needed - std::max(planned[s.supply], shop::Amount{})).thousandths / 1000;
        if (over > 0) missed[s.supply] = static_cast<int>(over);
    }
    Stock left = there;
    for (const ParcelPlan& parcel : plan.parcels) left.take(parcel.uses);

    for (std::size_t i = 0; i < plan.parcels.size(); ++i) {
        ParcelPlan& parcel = plan.parcels[i];
        run.tell_progress(static_cast<double>(i) / static_cast<double>(plan.parcels.size()));
        if (parcel.proven_smallest || chosen_by_hand(parcel, wish)) continue;
        if (!run.go_on(256)) break; // the run looks at its clock every 256 nodes
        Task task = task_of(orders, parcel.pieces, std::nullopt);
        const auto contents = contents_of(cupboard, parcel.pieces);
        if (task.orders.empty() || !contents) continue; // the orders have changed since
        task.first = parcel.part == 1;
        left.give_back(parcel.uses);
        Packed packed = pack(bench, task, *contents, left);
        if (packed.plan && run.go_on(256)) {
            packed.plan->part = parcel.part;
            packed.plan->parts = parcel.parts;
            if (packed.plan->outer == parcel.outer) packed.plan->split_gap_permille = parcel.split_gap_permille;
            parcel = *std::move(packed.plan);
            if (on_parcel) on_parcel(i, parcel);
        }
        left.take(parcel.uses);
    }
    add_up(plan, cupboard, wish, missed);
    return run.stopped();
}

} // namespace stow::planning
