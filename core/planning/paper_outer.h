// A box or envelope folded from paper as an outer she can pack with: it is there as long as the paper is.
#pragma once

#include "core/paperbox/net.h"
#include "core/shop/supplies.h"

#include <optional>

namespace stow::planning {

struct PaperOuter {
    shop::Supply supply;  // kind, form, weight, cost, what it takes of the paper; no code or name yet
    int from_a_sheet = 0; // of its first piece (paperbox::pieces_of)
};

// Of the box or envelope wanted; a tray comes with its lid. Nothing: it cannot be folded, a piece is larger than the
// sheet, or the supply is no sheet of paper. Pieces lie side by side along the edges of the sheet, turned by a right
// angle where more go on it; what is left over counts with them. Walls are two thicknesses of the paper, in a square
// folded box three (common practice, no source).
std::optional<PaperOuter> paper_outer(const paperbox::Wanted& wanted, const shop::Supply& paper);

} // namespace stow::planning
