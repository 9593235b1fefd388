// What is most likely wrong with a parcel that does not weigh what it should.
#pragma once

#include "app/day.h"
#include "core/planning/plan.h"

#include <QString>

namespace stow::view {

// "most likely missing: 1 ink bottle (9 in 10)"; says so when it cannot tell.
QString suspicion(const Day& day, const planning::ParcelPlan& plan, Weight closed);

} // namespace stow::view
