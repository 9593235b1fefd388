// Orders by the thousand in a workshop's book, as its busiest year would bring them in a day.
#pragma once

#include "tests/quick/workshop.h"

namespace stow::quick {

// Taken in as one file. Every seventh has no postcode and needs a look.
void take_in_many(Workshop& shop, int orders);

// All that are arrived and sound are checked, and each gets a parcel: the plan of one of a few hundred orders with the
// same goods, since what stands in the rows matters here, not how they were found.
void plan_many(Workshop& shop);

} // namespace stow::quick
