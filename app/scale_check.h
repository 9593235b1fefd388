// The scale has spoken: is the parcel right, and if not, what is most likely missing, extra or swapped?
#pragma once

#include "app/day.h"
#include "core/book/parcels.h"
#include "core/weighing/detective.h"

#include <QString>

namespace stow {

// What the parcel should weigh at this stage: contents before filler; closed; labelled.
weighing::Finding check_scale(const Day& day, const book::HeldParcel& parcel, shop::WeighingStage stage,
                              Weight reading);

// "as expected", "one nib tin is missing", "cannot tell: 12 g too heavy".
QString words_of(const Day& day, const weighing::Finding& finding);

} // namespace stow
