// Small orders as a shop has them: 1 to 12 pieces of goods with sides of 15 to 250 mm, free to be turned, and 40
// cartons. Laid down by seeds; no source, but what a one-person shop sends.
#pragma once

#include "core/fitting/question.h"

#include <cstdint>
#include <vector>

namespace stow::bench {

enum class Series {
    shop,     // the same 40 cartons for every order, 0.3 to 60 litres, each a seventh larger than the last
    near_miss // 40 cartons of the order's own, in steps of volume of under 5 %, from a tenth less than the pieces on
};

// Order number 0, 1, ... of `pieces` pieces. The cartons are named "01" to "40", smallest first.
fitting::Question order_of(Series series, int pieces, std::uint64_t number);

std::int64_t cube_root(std::int64_t v); // rounded down

} // namespace stow::bench
