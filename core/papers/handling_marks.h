// How a parcel wants to be handled, as pictures that need no language: after ISO 780:2015 (symbols ISO 7000-0621
// fragile, -0623 this way up, -0624 keep away from sunlight, -0626 keep dry; numbers from memory), drawn by us. They
// ask; no carrier promises to heed them, so the packing must do without.
#pragma once

#include "core/papers/display_list.h"
#include "core/planning/plan.h"
#include "core/shop/cupboard.h"

#include <vector>

namespace stow::papers {

enum class HandlingMark { fragile, this_way_up, keep_from_sun, keep_dry };

// Fragile goods, liquids, goods that soften in heat, loose sheets: each asks for its own, in the order above.
std::vector<HandlingMark> handling_marks(const planning::ParcelPlan& plan, const shop::Cupboard& cupboard);

// In ink, on a square of this edge.
DisplayList draw(HandlingMark mark, int edge);

} // namespace stow::papers
