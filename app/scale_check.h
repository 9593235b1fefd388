// The scale has spoken: is the parcel right, and if not, what is most likely missing, extra or swapped?
#pragma once

#include "app/day.h"
#include "core/book/parcels.h"
#include "core/weighing/detective.h"

#include <QString>

namespace stow {

struct ScaleCheck {
    weighing::Finding finding;
    weighing::Expected by_parts; // without what the record says of the scatter: what the record itself is kept in
    Weight scale_step;           // the house's, or what the readings show
};

// What the parcel should weigh at this stage: contents before filler; closed; labelled.
ScaleCheck check_scale(const Day& day, const book::HeldParcel& parcel, shop::WeighingStage stage, Weight reading);

// "as expected", "one nib tin is missing", "cannot tell: 12 g too heavy".
QString words_of(const Day& day, const weighing::Finding& finding);

// "the last 20 parcels were 6 g heavier than reckoned"; empty: no drift.
QString drift_words(const Day& day);

} // namespace stow
