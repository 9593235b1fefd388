// Chance that is the same everywhere: Lehmer's generator, modulus 2^31 - 1, multiplier 48271 (S. K. Park, K. W. Miller,
// P. K. Stockmeyer, "Another test for randomness", Commun. ACM 36(7) 1993).
#pragma once

#include <cstddef>
#include <cstdint>

namespace stow::fitting {

struct Dice {
    std::uint64_t state = 20'261'125;
    std::uint32_t below(std::size_t n)
    {
        state = state * 48'271 % 2'147'483'647;
        return static_cast<std::uint32_t>(state % n);
    }
};

} // namespace stow::fitting
