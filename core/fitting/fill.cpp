#include "core/fitting/fill.h"

#include "core/fitting/laying.h"
#include "core/fitting/outer_yard.h"

namespace stow::fitting {

namespace {

constexpr std::size_t most_clusters = 10'000;

} // namespace

Filled fill(const Question& question, std::size_t outer_index, Run& run,
            const std::function<void(const Filled&)>& better)
{
    Filled best;
    const Support support = question.support == Support::none ? Support::none : Support::full;
    const std::optional<OuterYard> in = yard_of(question, outer_index, support, run);
    if (!in) return best;
    const std::vector<Cluster> clusters = clusters_of(in->yard, most_clusters);
    lay(in->yard, clusters, run, [&](const Laying& laying) {
        Filled filled;
        std::vector<int> copies(in->yard.goods.size(), 0);
        for (const Laid& laid : laying.laid) {
            unfold(clusters, laid.cluster, in->yard, laid.at, [&](std::size_t g, std::size_t w, const Coords& at) {
                Placement p = in->placement(g, w, at, ++copies[g]);
                filled.volume += volume(p.size);
                filled.placements.push_back(std::move(p));
            });
        }
        best = std::move(filled);
        if (better) better(best);
        return laying.pieces == in->yard.pieces;
    });
    return best;
}

} // namespace stow::fitting
