#include "core/fitting/bins.h"

#include "core/fitting/outer_yard.h"
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
    const std::optional<OuterYard> in = yard_of(question, outer_index, Support::none, run);
    if (!in || in->load.soft || !each_goes_in(in->yard)) return best;
    const Yard& yard = in->yard;
    best.least = std::max(by_volume(yard), alone(yard));
    std::vector<std::pair<std::size_t, int>> pieces; // goods and copy, in the order of repack
    for (std::size_t g = 0; g < yard.goods.size(); ++g) {
        for (int copy = 1; copy <= yard.goods[g].count; ++copy) pieces.emplace_back(g, copy);
    }
    repack(yard, run, [&](const std::vector<RoomContent>& rooms) {
        best.outers.clear();
        for (const RoomContent& room : rooms) {
            std::vector<Placement>& placements = best.outers.emplace_back();
            for (const Stowed& s : room) {
                const auto& [g, copy] = pieces[s.piece];
                placements.push_back(in->placement(g, s.way, s.at, copy));
            }
        }
        if (better) better(best);
        return best.outers.size() <= std::max(best.least, enough);
    });
    return best;
}

} // namespace stow::fitting
