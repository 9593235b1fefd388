// A complete search for small sets: relative positions of every pair (before or behind along each axis), kept as
// earliest and latest starts by longest paths, branching only where the earliest places overlap. Complete for general
// packings of blocks, so "none" is a proof:
//   blocks, sheets, and round goods that only lie     none is a proof of the geometry
//   upright round goods, searched as their squares    none proves nothing; see `relaxed`
//   upright round goods, relaxed                      none is a proof: every circle is its inscribed square held away
//                                                     from the walls, and as far from others as the windows ask;
//                                                     windows are halved until circles are apart
//   soft goods                                        not searched
// After Martello, Pisinger, Vigo, den Boef & Korst, "Algorithm 864", ACM TOMS 33(1) 2007 (general packings), with the
// six relations of a pair made exclusive so that no arrangement is met twice.
#pragma once

#include "core/fitting/load.h"
#include "core/fitting/quick.h"
#include "core/run/run.h"

namespace stow::fitting {

inline constexpr std::size_t most_exact_pieces = 16;

enum class Decision { found, none, stopped };

struct ExactResult {
    Decision decision = Decision::stopped;
    Arrangement arrangement;   // when found
    bool refused_some = false; // `accept` turned down an arrangement: none then speaks of the geometry no longer
};

// Needs 1 to most_exact_pieces pieces, none of them soft. Stops after `most_nodes` of them (0: no bound of its own).
ExactResult search_exactly(const Load& load, const Space& space, bool relaxed, std::uint64_t most_nodes, Run& run,
                           const Accept& accept);

} // namespace stow::fitting
