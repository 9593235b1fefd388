// Random numbers that are the same everywhere: those of the published generators, and one for our own series.
#pragma once

#include <cstdint>
#include <random>

namespace stow::bench {

// x <- 16807 x mod (2^31 - 1); real numbers are x / (2^31 - 1). Park & Miller, Comm. ACM 31(10) 1988 ("minimal
// standard").
class MinimalStandard {
public:
    static constexpr std::int64_t modulus = 2'147'483'647;
    explicit MinimalStandard(std::int64_t seed) : x_(seed) {}
    std::int64_t next() { return x_ = x_ * 16'807 % modulus; }
    // floor(real * n): 0 to n - 1, in whole numbers.
    std::int64_t below(std::int64_t n) { return next() * n / modulus; }

private:
    std::int64_t x_;
};

// srand48 and lrand48 of POSIX: X <- (0x5DEECE66D X + 0xB) mod 2^48, a draw is X >> 17.
class Rand48 {
public:
    explicit Rand48(std::uint64_t seed) : x_((seed << 16) + 0x330E) {}
    std::int64_t next()
    {
        x_ = (0x5DEECE66DULL * x_ + 0xBULL) & 0xFFFF'FFFF'FFFFULL;
        return static_cast<std::int64_t>(x_ >> 17);
    }
    std::int64_t from_to(std::int64_t least, std::int64_t most) { return least + next() % (most - least + 1); }

private:
    std::uint64_t x_;
};

// Our own series. The engine's numbers are laid down by the standard; its distributions are not, so none is used.
class Dice {
public:
    explicit Dice(std::uint64_t seed) : engine_(seed) {}
    std::int64_t from_to(std::int64_t least, std::int64_t most)
    {
        return least + static_cast<std::int64_t>(engine_() % static_cast<std::uint64_t>(most - least + 1));
    }
    std::size_t below(std::size_t n) { return static_cast<std::size_t>(engine_() % n); }
    bool one_in(std::size_t n) { return below(n) == 0; }
    template <class List>
    const auto& one_of(const List& list)
    {
        return list[below(list.size())];
    }
    template <class List>
    void shuffle(List& list)
    {
        for (std::size_t k = list.size(); k > 1; --k) std::swap(list[k - 1], list[below(k)]);
    }

private:
    std::mt19937_64 engine_;
};

} // namespace stow::bench
