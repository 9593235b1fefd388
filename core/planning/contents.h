// Pieces of orders to the goods that are taken from the shelf: sets expanded, equal goods counted once.
#pragma once

#include "core/planning/plan.h"
#include "core/shop/cupboard.h"

#include <tl/expected.hpp>
#include <vector>

namespace stow::planning {

struct Several { // of one good that is no set
    const shop::Good* good = nullptr;
    int count = 0;
};

struct BoxedSet { // a set that travels in a gift box of its own
    const shop::Good* set = nullptr;
    const shop::Supply* box = nullptr;
    std::vector<Several> content; // of one
    int count = 0;
};

struct Contents {                // pointers into the cupboard, which must outlive them
    std::vector<Several> loose;  // by code
    std::vector<BoxedSet> boxed; // by code
};

// A set without a gift box goes in loose; a set within a boxed set loses its own box. Stuck: unmatched_good,
// unknown_good (also a set that contains itself), missing_size.
tl::expected<Contents, StuckOrder> contents_of(const shop::Cupboard& cupboard, const std::vector<shop::Piece>& pieces);

// All goods in there, loose and boxed together, by code: what is taken from the shelf.
std::vector<Several> off_the_shelf(const Contents& contents);

} // namespace stow::planning
