// How few outers of one kind hold a set, when one does not.
#pragma once

#include "core/fitting/answer.h"
#include "core/fitting/question.h"
#include "core/run/run.h"

#include <functional>

namespace stow::fitting {

struct Bins {
    std::vector<std::vector<Placement>> outers; // one list an outer; copies count through all of them
    std::size_t least = 0;                      // no fewer can do: by volume, and by pieces that cannot share an outer
};

// Cartons and gift boxes, rigid goods (round ones count as their blocks), within the outer's greatest load; without
// support. Empty where a piece does not go in by itself. Anytime: the fewest when the run stops or `enough` is reached;
// `better` is told at each improvement. Deterministic for a work limit.
Bins fewest_outers(const Question& question, std::size_t outer_index, Run& run, std::size_t enough = 0,
                   const std::function<void(const Bins&)>& better = {});

} // namespace stow::fitting
