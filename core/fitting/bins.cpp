#include "core/fitting/bins.h"

#include "core/fitting/content.h"
#include "core/fitting/repack.h"

#include <algorithm>

namespace stow::fitting {

namespace {

// Pieces of which any two overlap wherever they lie: more than half the room along every axis, however turned.
std::size_t alone(const Yard& yard)
{
    std::size_t count = 0;
    for (const Yard::Goods& goods : yard.goods) {
        const bool large = std::all_of(goods.ways.begin(), goods.ways.end(), [&](const Yard::Way& way) {
            return 2 * way.side[0] > yard.room[0] && 2 * way.side[1] > yard.room[1] && 2 * way.side[2] > yard.room[2];
        });
        if (large) count += static_cast<std::size_t>(goods.count);
    }
    return count;
}

std::size_t by_volume(const Yard& yard)
{
    std::int64_t sum = 0;
    for (const Yard::Goods& goods : yard.goods) sum += goods.volume * goods.count;
    const std::int64_t room = std::int64_t{yard.room[0]} * yard.room[1] * yard.room[2];
    return static_cast<std::size_t>((sum + room - 1) / room);
}

bool each_goes_in(const Yard& yard)
{
    return std::all_of(yard.goods.begin(), yard.goods.end(), [&](const Yard::Goods& goods) {
        return (!yard.most_milligrams || goods.milligrams <= *yard.most_milligrams) &&
               std::any_of(goods.ways.begin(), goods.ways.end(), [&](const Yard::Way& way) {
                   return packed_within(packed_sides(way.side), packed_sides(yard.room));
               });
    });
}

} // namespace

Bins fewest_outers(const Question& question, std::size_t outer_index, Run& run, std::size_t enough,
                   const std::function<void(const Bins&)>& better)
{
    Bins best;
    const OuterForm& form = question.outers[outer_index].form;
    if (form.kind != OuterKind::carton && form.kind != OuterKind::gift_box) return best;
    const Resolved resolved = resolve_content(question, run);
    if (resolved.refusal) return best;
    const Load load = make_load(resolved.question, Room::box);
    const Units lining = question.lining.units, gap = load.gap;
    const Space space{{form.inner.x.units - 2 * lining + gap, form.inner.y.units - 2 * lining + gap,
                       form.inner.z.units - 2 * lining - question.bed.units + gap},
                      Support::none,
                      gap};
    const std::optional<Weight> most = question.outers[outer_index].max_load;
    const std::optional<Yard> yard = make_yard(load, space, most ? std::optional{most->units * 100} : std::nullopt);
    if (load.soft || !yard || !each_goes_in(*yard)) return best;
    best.least = std::max(by_volume(*yard), alone(*yard));
    std::vector<std::pair<std::size_t, int>> pieces; // goods and copy, in the order of repack
    for (std::size_t g = 0; g < yard->goods.size(); ++g) {
        for (int copy = 1; copy <= yard->goods[g].count; ++copy) pieces.emplace_back(g, copy);
    }
    repack(*yard, run, [&](const std::vector<RoomContent>& rooms) {
        best.outers.clear();
        for (const RoomContent& room : rooms) {
            std::vector<Placement>& placements = best.outers.emplace_back();
            for (const Stowed& s : room) {
                const auto& [g, copy] = pieces[s.piece];
                const Yard::Goods& goods = yard->goods[g];
                const Kind& kind = load.kinds[goods.kind];
                const Pose& pose = kind.poses[goods.ways[s.way].pose];
                Placement& p = placements.emplace_back();
                p.item = question.items[kind.item].id;
                p.copy = copy;
                p.at = {question.lining + Length{s.at[0] * yard->unit}, question.lining + Length{s.at[1] * yard->unit},
                        question.lining + question.bed + Length{s.at[2] * yard->unit}};
                p.size = {Length{pose.side[0] - gap}, Length{pose.side[1] - gap}, Length{pose.side[2] - gap}};
                p.axis = pose.axis;
                p.content = resolved.content[kind.item];
            }
        }
        if (better) better(best);
        return best.outers.size() <= std::max(best.least, enough);
    });
    return best;
}

} // namespace stow::fitting
