#include "core/planning/consumables.h"

namespace stow::planning {

namespace {

Volume solid(const std::vector<PackedItem>& items)
{
    Volume all;
    for (const PackedItem& item : items) {
        if (!item.under_cushion) all += solid_volume(item.shape) * item.count;
    }
    return all;
}

} // namespace

bool is_filled(OuterKind kind)
{
    return kind == OuterKind::carton || kind == OuterKind::gift_box;
}

Used taken_for(const shop::Supply& outer)
{
    if (outer.made_from.empty()) return {outer.code, shop::pieces(1)};
    return {outer.made_from, outer.takes};
}

Volume room_around(const Size& inner, const std::vector<PackedItem>& items)
{
    return std::max(volume(inner) - solid(items), Volume{});
}

Volume filler_for(Volume room, int overfill_percent)
{
    return {room.units / 100 * (100 + overfill_percent)};
}

shop::Amount amount_of_filler(const shop::Supply& filler, Volume volume)
{
    const std::int64_t ml = (volume.units + 999'999) / 1'000'000;
    if (filler.unit != shop::Unit::kilogram) return {ml};      // a litre or a metre each
    return {(ml * filler.weight.mean.units + 9'999) / 10'000}; // ml × 0.1 g/l: 10 000 of them are one gram
}

Length tape_single(Length length)
{
    return 2 * (length + mm(140));
}

Length tape_h(Length length, Length width)
{
    return tape_single(length) + 4 * (width + mm(60));
}

Length tape_for(const OuterForm& form)
{
    if (form.kind != OuterKind::carton) return {};
    return tape_h(std::max(form.outer.x, form.outer.y), std::min(form.outer.x, form.outer.y));
}

} // namespace stow::planning
