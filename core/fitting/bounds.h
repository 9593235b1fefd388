// Fast proofs that pieces do not go into a space. Everything here holds for the pure geometry (inside, apart, turned),
// so it holds under every rule. Integers only. Sources: Fekete & Schepers, "A general framework for bounds for
// higher-dimensional orthogonal packing problems" (dual feasible functions), with the least product over each piece's
// poses because pieces may be turned.
#pragma once

#include "core/fitting/load.h"

#include <algorithm>

namespace stow::fitting {

// A refusal proved by geometry. Its item is the kind's place in the question; the caller puts the name there.
Refusal refusal(Reason reason, const Kind* kind = nullptr, Units short_by = 0);

// Edges, turns, volume and pairs; a microsecond.
std::optional<Refusal> refuse_fast(const Load& load, const Space& space);

// Dual feasible functions; some tens of microseconds.
std::optional<Refusal> refuse_by_bounds(const Load& load, const Space& space);

// What of an upright circle's square every other body keeps clear of: the square inscribed in the circle, rounded
// inwards. `margin` is its distance from the sides of the outer square: 1/2 - 1/√8 = 0.14644661... of the diameter.
struct Inscribed {
    Units side, margin;
};
constexpr Inscribed inscribed(Units diameter)
{
    const Units margin = (diameter * 146'447 + 999'999) / 1'000'000;
    return {std::max<Units>(diameter - 2 * margin, 0), margin};
}

} // namespace stow::fitting
