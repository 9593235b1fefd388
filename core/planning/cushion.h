// How much cushion the parcel needs beyond what the wraps give.
#pragma once

#include "core/planning/contents.h"

namespace stow::planning {

struct Cushion {
    Length gap;    // between any two items: the largest need that a good's own wrap leaves open
    Length lining; // along the walls: the larger of the gap and what the house keeps free
};

Cushion cushion_of(const shop::Cupboard& cupboard, const Contents& contents);

// What the outer's own walls give: those of a padded mailer count; cartons, gift boxes and board mailers are lined
// inside as much as is needed. Nothing for the others.
Length cushion_in_walls(const OuterForm& form);
bool is_lined(OuterKind kind);

} // namespace stow::planning
