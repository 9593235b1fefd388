#include "core/planning/handwork.h"

namespace stow::planning {

using std::chrono::minutes;
using std::chrono::seconds;

namespace {

seconds of_items(const std::vector<PackedItem>& items, const shop::Cupboard& cupboard)
{
    seconds time{};
    for (const PackedItem& item : items) {
        const shop::Wrapping* wrapping = cupboard.wrapping(item.wrapping);
        const shop::Supply* box = item.kind == PackedItem::Kind::gift_box ? cupboard.supply(item.supply) : nullptr;
        if (wrapping != nullptr) time += seconds(wrapping->seconds) * item.count;
        if (box != nullptr) time += minutes(box->minutes) * item.count;
        time += of_items(item.content, cupboard) * item.count;
    }
    return time;
}

} // namespace

seconds handwork(const ParcelPlan& plan, const shop::Cupboard& cupboard)
{
    seconds time = of_items(plan.items, cupboard);
    if (const shop::Supply* outer = cupboard.supply(plan.outer)) time += minutes(outer->minutes);
    if (plan.cut_at) time += minutes(cupboard.house.cut_minutes);
    return time;
}

} // namespace stow::planning
