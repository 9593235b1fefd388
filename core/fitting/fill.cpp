#include "core/fitting/fill.h"

#include "core/fitting/content.h"
#include "core/fitting/laying.h"

namespace stow::fitting {

namespace {

constexpr std::size_t most_clusters = 10'000;

} // namespace

Filled fill(const Question& question, std::size_t outer_index, Run& run,
            const std::function<void(const Filled&)>& better)
{
    Filled best;
    const OuterForm& form = question.outers[outer_index].form;
    if (form.kind != OuterKind::carton && form.kind != OuterKind::gift_box) return best;
    const Resolved resolved = resolve_content(question, run);
    if (resolved.refusal) return best;
    const Load load = make_load(resolved.question, Room::box);
    const Units lining = question.lining.units, gap = load.gap;
    const Space space{{form.inner.x.units - 2 * lining + gap, form.inner.y.units - 2 * lining + gap,
                       form.inner.z.units - 2 * lining - question.bed.units + gap},
                      question.support == Support::none ? Support::none : Support::full,
                      gap};
    const std::optional<Weight> most = question.outers[outer_index].max_load;
    const std::optional<Yard> yard = make_yard(load, space, most ? std::optional{most->units * 100} : std::nullopt);
    if (!yard) return best;
    const std::vector<Cluster> clusters = clusters_of(*yard, most_clusters);
    lay(*yard, clusters, run, [&](const Laying& laying) {
        Filled filled;
        std::vector<int> copies(load.kinds.size(), 0);
        for (const Laid& laid : laying.laid) {
            unfold(clusters, laid.cluster, *yard, laid.at, [&](std::size_t g, std::size_t w, const Coords& at) {
                const Yard::Goods& goods = yard->goods[g];
                const Kind& kind = load.kinds[goods.kind];
                const Pose& pose = kind.poses[goods.ways[w].pose];
                Placement p;
                p.item = question.items[kind.item].id;
                p.copy = ++copies[goods.kind];
                p.at = {question.lining + Length{at[0] * yard->unit}, question.lining + Length{at[1] * yard->unit},
                        question.lining + question.bed + Length{at[2] * yard->unit}};
                p.size = {Length{pose.side[0] - gap}, Length{pose.side[1] - gap}, Length{pose.side[2] - gap}};
                p.axis = pose.axis;
                p.content = resolved.content[kind.item];
                filled.volume += volume(p.size);
                filled.placements.push_back(std::move(p));
            });
        }
        best = std::move(filled);
        if (better) better(best);
        return laying.pieces == yard->pieces;
    });
    return best;
}

} // namespace stow::fitting
