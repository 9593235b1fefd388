#include "core/planning/day_totals.h"

#include "core/planning/stock.h"

namespace stow::planning {

void add_up(DayPlan& day, const shop::Cupboard& cupboard, const Wish& wish,
            const std::map<shop::SupplyCode, int>& missed)
{
    day.postage = day.packaging = Money{0, cupboard.house.currency};
    day.filler = {};
    day.tape = {};
    std::map<shop::SupplyCode, shop::Amount> needed;
    for (const ParcelPlan& parcel : day.parcels) {
        if (parcel.chosen) day.postage += parcel.quotes[*parcel.chosen].price()->total;
        day.packaging += parcel.packaging;
        day.filler += parcel.filler_volume;
        day.tape += parcel.tape;
        for (const Used& used : parcel.uses) needed[used.supply] += used.amount;
    }
    for (const auto& [code, n] : missed) needed[code] += shop::pieces(n);
    const Stock there(cupboard, wish);
    day.shortages.clear();
    for (const auto& [code, amount] : needed) {
        const shop::Amount left = there.left(code);
        if (amount > left) day.shortages.push_back({code, amount, left});
    }
}

} // namespace stow::planning
