// Tubes: rolls side by side by the densest known packings of equal circles, blocks by the diagonal of their section,
// bundles in a rectangle inscribed in the section.
// A refusal is a proof for a single piece, for two pieces that must lie side by side, by volume, and for round goods of
// one diameter that can only lie along the tube (ratios proved up to 13 circles; sources beside the table in tube.cpp).
// Everything else that is not found stays undecided.
#pragma once

#include "core/fitting/load.h"
#include "core/fitting/quick.h"
#include "core/run/run.h"

namespace stow::fitting {

struct Tube { // inside
    Units diameter = 0, length = 0;
};

std::optional<Refusal> refuse_tube(const Load& load, const Tube& tube);

// Spots from the corner of the square around the section; `side` enlarged as everywhere.
std::optional<Arrangement> find_in_tube(const Load& load, const Tube& tube, int tries, Run& run, const Accept& accept);

// A lower bound, in 1e-9, of the tube diameter over circle diameter that `count` equal circles need.
std::int64_t least_ratio(std::size_t count);

} // namespace stow::fitting
