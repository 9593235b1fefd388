// Goods that soften wait out a warm weekend at home rather than in a depot or a van. Common practice, no source: the
// months (May to September, the warm half of the year in northern Europe) and the weekdays are our judgement, for her
// to overrule.
#pragma once

#include "core/measure/date.h"
#include "core/shop/goods.h"

#include <optional>

namespace stow::shop {

// The Monday until which it had better wait; nothing: it may go.
std::optional<Date> better_held_until(const Good& good, Date today);

} // namespace stow::shop
