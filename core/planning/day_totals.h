// Sums of a day's plan, and what runs short.
#pragma once

#include "core/planning/planner.h"

#include <map>

namespace stow::planning {

// Sets postage, packaging, filler, tape and shortages. `missed`: how many more of an outer the day would have used.
void add_up(DayPlan& day, const shop::Cupboard& cupboard, const Wish& wish,
            const std::map<shop::SupplyCode, int>& missed);

} // namespace stow::planning
