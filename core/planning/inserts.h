// Papers that go in with the goods: what the house rules ask for, the packing slip and the gift note.
#pragma once

#include "core/planning/contents.h"
#include "core/planning/planner.h"

#include <vector>

namespace stow::planning {

// The papers of one parcel of these orders, at their unfolded size (`folded` false) or their least. The slip is A4 or
// A5 (ISO 216) office paper of 80 g/m² and 0.1 mm, an A4 slip never travels flatter than folded once. `first`: the
// parcel that carries the inserts and the note of a split order; a slip lies in every one.
std::vector<PackedItem> inserts_for(const shop::Cupboard& cupboard, const std::vector<const shop::HeldOrder*>& orders,
                                    const Contents& contents, Wish::Slip slip, bool first, bool folded);

// Lays the inserts beneath the cushion of the floor: firm and flat, so they lift the floor by their thickness instead
// of taking a cushion of their own. Returns that thickness.
Length lay_under_cushion(std::vector<PackedItem>& inserts);

} // namespace stow::planning
