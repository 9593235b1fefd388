#include "core/fitting/load.h"

#include "core/fitting/contact.h"

namespace stow::fitting {

namespace {

Sides enlarged(const Size& size, Units gap)
{
    return {size.x.units + gap, size.y.units + gap, size.z.units + gap};
}

// How a round item, `along` long, may stand and lie. The same reading of the rules as in check.cpp, written apart.
std::vector<Pose> round_poses(Units along, Units across, bool roll, const Turns& turns, Room room, Units gap)
{
    const auto may_stand = [&](int edge) { // 0, 1, 2 of the bounding size as given
        const bool is_axis = edge == (roll ? 0 : 2);
        switch (turns.rule) {
        case Turns::Rule::any: return true;
        case Turns::Rule::upright: return is_axis;
        case Turns::Rule::flat: return is_axis ? along <= across : across <= along;
        case Turns::Rule::fixed: return edge == 2;
        case Turns::Rule::listed: return turns.vertical[static_cast<std::size_t>(edge)];
        }
        return false;
    };
    const bool stand = may_stand(roll ? 0 : 2);
    const bool lie = may_stand(1) || may_stand(roll ? 2 : 0);
    const Units a = along + gap, d = across + gap;
    std::vector<Pose> poses;
    if (stand) poses.push_back({{d, d, a}, Axis::z, room != Room::sleeve});
    if (lie && !(stand && a == d)) {
        poses.push_back({{a, d, d}, Axis::x, false});
        if (turns.rule != Turns::Rule::fixed && a != d) poses.push_back({{d, a, d}, Axis::y, false});
    }
    return poses;
}

Units least_volume(const Kind& kind)
{
    Units least = 0;
    for (const Pose& pose : kind.poses) {
        Units v = product(pose.side);
        if (pose.circle) v = solid_volume(Cylinder{{pose.side[0]}, {pose.side[2]}}).units;
        if (least == 0 || v < least) least = v;
    }
    return least;
}

} // namespace

std::vector<Pose> poses_of(const Item& item, Room room, Units gap)
{
    if (const auto* c = std::get_if<Cylinder>(&item.shape)) {
        return round_poses(c->height.units, c->diameter.units, false, item.turns, room, gap);
    }
    if (const auto* r = std::get_if<Roll>(&item.shape)) {
        return round_poses(r->length.units, r->diameter.units, true, item.turns, room, gap);
    }
    std::vector<Pose> poses;
    const auto* sheet = std::get_if<Sheet>(&item.shape);
    if (sheet != nullptr && sheet->least_roll && room == Room::tube) {
        for (const auto& [along, across] :
             {std::pair{sheet->length, sheet->width}, std::pair{sheet->width, sheet->length}}) {
            const Units d = rolled_diameter(*sheet->least_roll, across, sheet->thickness).units + gap;
            poses.push_back({{d, d, along.units + gap}, Axis::z, true});
        }
    }
    // A soft good takes any form, whatever its turns say.
    const Turns turns = std::holds_alternative<Soft>(item.shape) ? Turns{} : item.turns;
    for (const Size& size : turned_sizes(bounding_size(item.shape), turns)) {
        poses.push_back({enlarged(size, gap), std::nullopt, false});
    }
    return poses;
}

Load make_load(const Question& question, Room room)
{
    Load load;
    load.gap = question.gap.units;
    for (std::size_t i = 0; i < question.items.size(); ++i) {
        const Item& item = question.items[i];
        Kind kind;
        kind.item = i;
        kind.poses = poses_of(item, room, load.gap);
        kind.milligrams = item.weight.units * 100;
        if (item.top_load)
            kind.top_load = item.top_load->units * 100;
        else if (item.fragile)
            kind.top_load = 0;
        if (const auto* soft = std::get_if<Soft>(&item.shape)) {
            kind.soft = true;
            kind.soft_volume = soft->volume.units;
            kind.soft_least = soft->least.units;
            kind.volume = kind.soft_volume;
            load.soft = true;
        } else {
            kind.volume = least_volume(kind);
        }
        for (const Pose& pose : kind.poses) load.circles = load.circles || pose.circle;
        load.volume += kind.volume * item.count;
        load.tenths_g += item.weight.units * item.count;
        for (int copy = 1; copy <= item.count; ++copy) load.pieces.push_back({load.kinds.size(), copy});
        load.kinds.push_back(std::move(kind));
    }
    return load;
}

} // namespace stow::fitting
