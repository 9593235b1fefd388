// Do blocks go into a box? Asked of a general integer program solver (CBC), which shares nothing with the engine.
// Model: Chen, Lee & Shen, "An analytical model for the container loading problem", EJOR 80(1) 1995, 68-76, with one
// binary a turned size and one a pair and side on which they lie apart; added: what lies before (behind) a piece along
// an axis has no more volume than there is room before (behind) it. Such a model alone is known to be weak on volume
// (Allen, Burke & Mareček, arXiv 1412.2526).
#pragma once

#include "core/fitting/answer.h"
#include "core/fitting/question.h"

#include <vector>

namespace stow::bench {

enum class Finding { fits, none, gave_up };

struct ProgramAnswer {
    Finding finding = Finding::gave_up;
    std::vector<fitting::Placement> placements; // whole numbers, from the relations that the program chose
};

// Blocks only; the first outer; no gap, lining, bed or support. Gives up after `most_nodes` of branching.
ProgramAnswer solve_by_program(const fitting::Question& question, int most_nodes);

} // namespace stow::bench
