#include "core/records/size_advice.h"

#include "core/planning/consumables.h"

#include <algorithm>
#include <map>
#include <tuple>

namespace stow::records {

namespace {

using Row = std::vector<std::optional<std::int64_t>>;

bool is_carton(const shop::Supply& supply)
{
    return supply.kind == shop::SupplyKind::outer && supply.form && supply.form->kind == OuterKind::carton;
}

Row costs_of(const std::vector<shop::Supply>& cartons, const PackedShape& shape, const shop::Cupboard& cupboard,
             Money a_litre)
{
    Row row;
    for (const shop::Supply& carton : cartons) row.push_back(cost_in(carton, shape, cupboard, a_litre));
    return row;
}

std::optional<std::int64_t> least(const Row& row, const std::vector<std::size_t>& sizes)
{
    std::optional<std::int64_t> best;
    for (const std::size_t s : sizes) {
        if (row[s] && (!best || *row[s] < *best)) best = row[s];
    }
    return best;
}

// A parcel, in hundredths of the minor unit; nothing where one does not go in.
std::optional<std::int64_t> mean_cost(const std::vector<Row>& rows, const std::vector<std::size_t>& sizes)
{
    if (rows.empty()) return std::nullopt;
    std::int64_t sum = 0;
    for (const Row& row : rows) {
        const auto best = least(row, sizes);
        if (!best) return std::nullopt;
        sum += *best;
    }
    return sum * 100 / static_cast<std::int64_t>(rows.size());
}

} // namespace

std::vector<PackedShape> shapes_of(const std::vector<ParcelFacts>& parcels)
{
    std::vector<PackedShape> shapes;
    for (const ParcelFacts& parcel : parcels) {
        const PlannedPart& plan = parcel.plan;
        if (plan.kind != OuterKind::carton || plan.reach.z <= Length{}) continue;
        // The lining was kept free before the first of them; the far side needs it too.
        const Size block{plan.reach.x + plan.lining, plan.reach.y + plan.lining, plan.reach.z + plan.lining};
        shapes.push_back({block, plan.contents.mean, parcel.packed_on});
    }
    return shapes;
}

std::optional<std::int64_t> cost_in(const shop::Supply& carton, const PackedShape& shape,
                                    const shop::Cupboard& cupboard, Money a_litre)
{
    if (!is_carton(carton)) return std::nullopt;
    const Size inner = sorted(carton.form->inner), block = sorted(shape.block);
    const Length ease = cupboard.house.ease;
    if (block.x + ease > inner.x || block.y + ease > inner.y || block.z + ease > inner.z) return std::nullopt;
    if (carton.max_load && shape.weight > *carton.max_load) return std::nullopt;
    const auto price = [&](const shop::SupplyCode& code, shop::Amount amount) {
        const shop::Supply* supply = cupboard.supply(code);
        return supply == nullptr ? 0 : share(supply->cost, amount.thousandths, 1000).minor;
    };
    std::int64_t cost = carton.cost.minor;
    const Volume room = volume(inner) - volume(block);
    if (const shop::Supply* filler = cupboard.supply(cupboard.house.filler)) {
        const Volume needed = planning::filler_for(room, cupboard.house.overfill_percent);
        cost += price(filler->code, planning::amount_of_filler(*filler, needed));
    }
    cost += price(cupboard.house.tape, {(planning::tape_for(*carton.form).units + 9) / 10});
    cost += share(a_litre, volume(carton.form->outer).units / 1'000'000, 1000).minor;
    return cost;
}

SizeAdvice advise_sizes(const std::vector<PackedShape>& history, const shop::Cupboard& cupboard, const SizeWish& wish,
                        Run& run)
{
    SizeAdvice advice;
    if (history.empty()) return advice;
    const auto [first, last] =
        std::minmax_element(history.begin(), history.end(),
                            [](const PackedShape& a, const PackedShape& b) { return a.packed_on < b.packed_on; });
    const std::chrono::days span = last->packed_on - first->packed_on + std::chrono::days(1);
    const std::chrono::days kept_back = std::min(std::chrono::days(7 * wish.weeks_kept_back), span / 4);
    const Date kept_back_from = last->packed_on - kept_back + std::chrono::days(1);
    using Key = std::tuple<Size, Weight>;
    std::map<Key, Demand> demands;
    std::vector<Row> judged;
    std::vector<Row> judged_now;
    std::vector<shop::Supply> now;
    for (const auto& [code, supply] : cupboard.supplies) {
        if (is_carton(supply)) now.push_back(supply);
    }
    for (const PackedShape& shape : history) {
        if (shape.packed_on >= kept_back_from) {
            judged.push_back(costs_of(wish.offered, shape, cupboard, wish.a_litre));
            judged_now.push_back(costs_of(now, shape, cupboard, wish.a_litre));
            continue;
        }
        ++advice.parcels;
        // Weights matter by the load of a carton only: whole hundreds of grams keep kinds few.
        const Weight weight{(shape.weight.units + 999) / 1000 * 1000};
        Demand& demand = demands[{sorted(shape.block), weight}];
        if (demand.cost.empty()) {
            demand.count = 0;
            demand.cost = costs_of(wish.offered, {shape.block, weight, {}}, cupboard, wish.a_litre);
        }
        ++demand.count;
    }
    std::vector<Demand> kinds;
    kinds.reserve(demands.size());
    for (auto& [key, demand] : demands) kinds.push_back(std::move(demand));
    advice.kinds = static_cast<int>(kinds.size());
    advice.judged = static_cast<int>(judged.size());
    if (kinds.empty()) return advice;
    const SizeChooser chooser(kinds);
    for (int k = 1; k <= wish.most; ++k) {
        advice.curve.push_back(chooser.choose(k, run));
        advice.judged_cost.push_back(mean_cost(judged, advice.curve.back().sizes));
        run.tell_progress(static_cast<double>(k) / wish.most);
    }
    std::vector<std::size_t> all(now.size());
    for (std::size_t s = 0; s < all.size(); ++s) all[s] = s;
    advice.cost_now = mean_cost(judged_now, all);
    return advice;
}

} // namespace stow::records
