#include "core/fitting/large.h"

#include "core/fitting/laying.h"

namespace stow::fitting {

namespace {

// Every outer makes its clusters anew; more than these cost more time than they save layings.
constexpr std::size_t most_clusters = 2'000;

Arrangement spots_of(const Load& load, const Yard& yard, const std::vector<Cluster>& clusters, const Laying& laying)
{
    std::vector<std::size_t> next(load.kinds.size(), load.pieces.size()); // piece of each kind
    for (std::size_t p = load.pieces.size(); p-- > 0;) next[load.pieces[p].kind] = p;
    Arrangement spots(load.pieces.size());
    for (const Laid& laid : laying.laid) {
        unfold(clusters, laid.cluster, yard, laid.at, [&](std::size_t g, std::size_t w, const Coords& at) {
            const Yard::Goods& goods = yard.goods[g];
            const std::uint32_t pose = goods.ways[w].pose;
            spots[next[goods.kind]++] = {{at[0] * yard.unit, at[1] * yard.unit, at[2] * yard.unit},
                                         load.kinds[goods.kind].poses[pose].side,
                                         pose};
        });
    }
    return spots;
}

} // namespace

std::optional<Arrangement> find_large(const Load& load, const Space& space, std::uint64_t work, Run& run,
                                      const Accept& accept)
{
    if (load.soft || load.pieces.empty()) return std::nullopt;
    const std::optional<Yard> yard = make_yard(load, space, std::nullopt);
    if (!yard || yard->pieces != static_cast<std::int64_t>(load.pieces.size())) return std::nullopt;
    const std::vector<Cluster> clusters = clusters_of(*yard, most_clusters);
    std::optional<Arrangement> found;
    Run part = run.part({std::nullopt, work});
    lay(*yard, clusters, part, [&](const Laying& laying) {
        if (laying.pieces != yard->pieces) return false;
        Arrangement spots = spots_of(load, *yard, clusters, laying);
        if (accept(spots)) found = std::move(spots);
        return found.has_value();
    });
    run.go_on(part.work_done() + clusters.size() / 8);
    return found;
}

} // namespace stow::fitting
