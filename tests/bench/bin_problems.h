// Bin packing problems of Martello, Pisinger & Vigo, "The three-dimensional bin packing problem", Oper. Res. 48(2)
// 2000, 256-267: 8 classes × 50, 100, 150, 200 items × 10 problems; equal cubic bins, items not turned, fewest bins
// wanted. The rules of generation were taken from the authors' description and give the same 320 problems as a public
// copy of them (github.com/Oscar-Oliveira/OR-Datasets, commit f71609a).
#pragma once

#include "core/fitting/question.h"

#include <array>
#include <cstdint>
#include <vector>

namespace stow::bench {

struct BinProblem {
    std::int64_t bin = 0;                           // side of the cube
    std::vector<std::array<std::int64_t, 3>> items; // along x, y, z
};

// Class 1 to 8, problem 1 to 10 of that many items.
BinProblem martello_pisinger_vigo(int mpv_class, int items, int problem);

// Lower bounds of the number of bins: by volume, and L2 of the paper.
std::int64_t continuous_bound(const BinProblem& problem);
std::int64_t bound_l2(const BinProblem& problem);

// Item "1", "2", ...; all fixed; one carton "bin". A unit is a unit of length.
fitting::Question question_of(const BinProblem& problem);

} // namespace stow::bench
