// A planned parcel as the scale should find it: everything in it by name, for a stage of weighing.
#pragma once

#include "core/planning/plan.h"
#include "core/shop/cupboard.h"
#include "core/weighing/detective.h"
#include "core/weighing/lessons.h"

namespace stow::planning {

// contents: goods, wraps, gift boxes, inserts. closed: also the outer, filler and tape. labelled: also the label.
// Goods and supplies with the weights that were learnt; goods share the spread of their batch, board and paper the
// humidity.
std::vector<weighing::Thing> things_in(const ParcelPlan& plan, const shop::Cupboard& cupboard,
                                       shop::WeighingStage stage);

weighing::Circumstances circumstances(const shop::Cupboard& cupboard);

// With everything that might be there by mistake: any good, and once the parcel is closed any outer.
weighing::Scene scene_of(const ParcelPlan& plan, const shop::Cupboard& cupboard, shop::WeighingStage stage);

// What this reading can teach about goods, outer and filler.
weighing::Lesson lesson_of(const ParcelPlan& plan, const shop::Cupboard& cupboard, shop::WeighingStage stage,
                           Weight reading);

} // namespace stow::planning
