// Boxes cut up without waste, so that the pieces are known to go in with no room to spare; and their twins, one piece
// grown and another shrunk, of which nobody knows but hardly any goes in.
#pragma once

#include "core/fitting/answer.h"
#include "core/fitting/question.h"
#include "tests/bench/random.h"

#include <vector>

namespace stow::bench {

// `guillotine`: cut right through, again and again. `pinwheel`: at least one block is cut into five around a middle
// piece, which no cut right through can do; the rest right through.
enum class Cutting { guillotine, pinwheel };

struct Cell {
    Size at, size;
};

// Exactly `pieces` cells of sides of at least `least`. The box must be large enough; throws std::logic_error if it
// never works out. A pinwheel needs five pieces.
std::vector<Cell> dissect(Dice& dice, const Size& box, int pieces, Cutting cutting, Length least);

struct Puzzle { // items "a", "b", ... of one piece each and one carton "box"
    fitting::Question question;
    std::vector<fitting::Placement> solution; // empty for a twin
};

// Sides of the box 100 to 300 mm, of the pieces at least 20 mm; pieces given turned, free to be turned, in any order.
// All are multiples of the grain: with 0.1 mm few sums of sides come out even, with 10 mm many do.
Puzzle perfect_puzzle(Dice& dice, int pieces, Cutting cutting, Length grain);

// The same pieces, one grown along one edge by up to a tenth of it, another shrunk so that all together are no more
// than the box.
Puzzle twin_of(Dice& dice, const Puzzle& puzzle);

} // namespace stow::bench
