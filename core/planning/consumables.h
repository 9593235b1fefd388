// What closing a parcel uses up: filler and tape.
#pragma once

#include "core/planning/plan.h"

namespace stow::planning {

// Only cartons and gift boxes are filled.
bool is_filled(OuterKind kind);

// What one of an outer takes from the rack: itself, or of the paper it is made from.
Used taken_for(const shop::Supply& outer);

// The room around the items in an inner size: inner − items at their own shapes, never below zero.
Volume room_around(const Size& inner, const std::vector<PackedItem>& items);

// Filler for a void: void × (1 + overfill), so that the flaps press on it (practice: top up, paper mats down).
Volume filler_for(Volume room, int overfill_percent);

// How much of the supply that is, rounded up to its thousandth. A filler weighs what its supply says per litre,
// whatever it is sold by; by the metre, one metre fills a litre (working figure, no source).
shop::Amount amount_of_filler(const shop::Supply& filler, Volume volume);

// Tape of a carton of outer length and width: H = 2 (L + 140) + 4 (W + 60) mm, single = 2 (L + 140) mm: centre seams
// with legs of 70, edge strips with legs of 30 (a tape maker's rule: top + bottom + 4 legs of 2.75 in, www.ipcinc.com).
Length tape_single(Length length);
Length tape_h(Length length, Length width);
// H for cartons; nothing for what closes itself: mailers, board mailers, tubes with plugs, gift boxes with lids.
Length tape_for(const OuterForm& form);

} // namespace stow::planning
