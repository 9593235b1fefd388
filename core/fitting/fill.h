// Fills one outer as full as it goes with a selection of the pieces, when not all of them need to go in. Used by
// splitting over parcels; the same search lays large sets in fit.h.
#pragma once

#include "core/fitting/answer.h"
#include "core/fitting/question.h"
#include "core/run/run.h"

#include <functional>

namespace stow::fitting {

struct Filled {
    std::vector<Placement> placements; // copies count from 1 among the pieces chosen
    Volume volume;                     // of the bodies inside, each as its block
};

// Cartons and gift boxes, rigid goods (soft ones are left out; round ones count as their blocks). Keeps the outer's
// greatest load; with partial support asked for, bases rest wholly. Anytime: the fullest when the run stops, and
// `better` is told at each improvement. Deterministic for a work limit.
Filled fill(const Question& question, std::size_t outer_index, Run& run,
            const std::function<void(const Filled&)>& better = {});

} // namespace stow::fitting
