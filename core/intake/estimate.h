// Mean and spread of a weight from the columns weight_g and spread_g. Private to the readers of tables.
#pragma once

#include "core/intake/table.h"
#include "core/shop/goods.h"

namespace stow::intake {

// A blank spread: 2 % of the mean, at least 0.5 g (common sense for handmade things, no source).
inline shop::WeightEstimate estimate(Row& row)
{
    const Weight mean = row.weight("weight_g", spread_range).value_or(Weight{});
    const Weight assumed = std::max(tenth_g(5), Weight{(mean.units + 25) / 50});
    return {mean, row.weight("spread_g", spread_range).value_or(mean.units == 0 ? Weight{} : assumed)};
}

} // namespace stow::intake
