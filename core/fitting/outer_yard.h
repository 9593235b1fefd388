// One carton or gift box as a yard to lay a whole question's goods in, and the way back from the yard to placements.
#pragma once

#include "core/fitting/cluster.h"
#include "core/fitting/content.h"

namespace stow::fitting {

struct OuterYard {
    const Question& question; // must outlive it
    Resolved resolved;
    Load load;
    Yard yard;

    Placement placement(std::size_t goods, std::size_t way, const Coords& at, int copy) const;
};

// The interior without lining and bed, with the outer's greatest load. Nothing for other kinds of outers, for content
// that was not fitted into its own outer, and where make_yard gives none.
std::optional<OuterYard> yard_of(const Question& question, std::size_t outer_index, Support support, Run& run);

} // namespace stow::fitting
