// How long a parcel's handwork takes, as she has told it: making up the outer and gift boxes, cutting the carton down,
// wrapping. Not what is the same for all: picking, filling, closing.
#pragma once

#include "core/planning/plan.h"
#include "core/shop/cupboard.h"

#include <chrono>

namespace stow::planning {

std::chrono::seconds handwork(const ParcelPlan& plan, const shop::Cupboard& cupboard);

} // namespace stow::planning
