#include "core/fitting/outer_yard.h"

namespace stow::fitting {

Placement OuterYard::placement(std::size_t goods, std::size_t way, const Coords& at, int copy) const
{
    const Yard::Goods& g = yard.goods[goods];
    const Kind& kind = load.kinds[g.kind];
    const Pose& pose = kind.poses[g.ways[way].pose];
    const Length lining = question.lining;
    Placement p;
    p.item = question.items[kind.item].id;
    p.copy = copy;
    p.at = {lining + Length{at[0] * yard.unit}, lining + Length{at[1] * yard.unit},
            lining + question.bed + Length{at[2] * yard.unit}};
    p.size = {Length{pose.side[0] - load.gap}, Length{pose.side[1] - load.gap}, Length{pose.side[2] - load.gap}};
    p.axis = pose.axis;
    p.content = resolved.content[kind.item];
    return p;
}

std::optional<OuterYard> yard_of(const Question& question, std::size_t outer_index, Support support, Run& run)
{
    const Outer& outer = question.outers[outer_index];
    if (outer.form.kind != OuterKind::carton && outer.form.kind != OuterKind::gift_box) return std::nullopt;
    Resolved resolved = resolve_content(question, run);
    if (resolved.refusal) return std::nullopt;
    Load load = make_load(resolved.question, Room::box);
    const Size& inner = outer.form.inner;
    const Units kept = 2 * question.lining.units - load.gap;
    const Space space{
        {inner.x.units - kept, inner.y.units - kept, inner.z.units - kept - question.bed.units}, support, load.gap};
    std::optional<Yard> yard =
        make_yard(load, space, outer.max_load ? std::optional{outer.max_load->units * 100} : std::nullopt);
    if (!yard) return std::nullopt;
    return OuterYard{question, std::move(resolved), std::move(load), *std::move(yard)};
}

} // namespace stow::fitting
