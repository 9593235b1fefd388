// A parcel's plan as the drawing items want it.
#pragma once

#include "app/day.h"
#include "app/view/scenes.h"
#include "core/planning/plan.h"

namespace stow::view {

papers::Arrangement arrangement_of(const Day& day, const planning::ParcelPlan& plan);

// The chosen outer beside the nearest ones it beat, each with the reason.
OuterRowScene outer_row(const Day& day, const planning::ParcelPlan& plan);

} // namespace stow::view
