// What really goes into the outer: goods at their wrapped size, sets in their gift boxes, sheets flat or rolled.
#pragma once

#include "core/fitting/question.h"
#include "core/planning/contents.h"

#include <vector>

namespace stow::planning {

// How the parcel's sheets travel in one attempt at packing it, and how hard its wraps are pressed.
struct Manner {
    enum class Sheets { flat, rolled_short, rolled_long } sheets = Sheets::flat; // rolled to their shorter, longer edge
    bool folded = false;                                                         // inserts at their least size
    bool squeezed = false;                                                       // wraps pressed as far as they give
    friend bool operator==(const Manner&, const Manner&) = default;
};

// A good's shape once it is wrapped: growth is added on each axis, a round one grows by the larger of its two.
Shape wrapped(const Shape& shape, const Size& growth);

// The roll that several sheets make when rolled together about the wider of their least diameters, taken as the core:
// outer diameter² = core² + 4/π · Σ length · thickness, the area of the spiral's section, and one layer of the thickest
// on both sides for the loose end, as in fitting (contact.h). Rounded up.
struct Rolled {
    Sheet sheet;
    int count = 1;
};
Roll rolled_together(const std::vector<Rolled>& sheets, bool along_longer_edge);

// One good, `count` times, as an item. `id` names it in the arrangement.
PackedItem packed_good(const shop::Cupboard& cupboard, const Several& several, std::string id, bool squeezed);

// Everything that goes into one parcel in one manner: for people in `items`, for the engine in `fitted`.
struct Load {
    std::vector<PackedItem> items;
    std::vector<fitting::Item> fitted;
    std::vector<fitting::Outer> boxes; // the gift boxes that `fitted` names
};

// `inserts` as inserts.h makes them. Sheets that may be rolled, inserts among them, make one roll in a rolled manner.
Load load_of(const shop::Cupboard& cupboard, const Contents& contents, const std::vector<PackedItem>& inserts,
             Manner manner);

// True if any good in there may be rolled.
bool can_be_rolled(const Contents& contents);

// The inner size with the ease for hands taken off: all three sides of a carton or gift box, diameter and length of a
// tube, length and width of a board mailer. Mailers and padded mailers have an ease of their own in their rule.
OuterForm eased(const OuterForm& form, Length ease);

} // namespace stow::planning
