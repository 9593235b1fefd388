// Which k of many sizes serve best: the k-median problem in plain numbers, with a proven bound.
#pragma once

#include "core/records/size_bound.h"

#include <cstdint>
#include <optional>
#include <vector>

namespace stow::records {

struct Demand { // one kind of order
    std::int64_t count = 1;
    std::vector<std::optional<std::int64_t>> cost; // of one in each size; nothing: it does not go in
};

struct SizeChoice {
    std::vector<std::size_t> sizes; // chosen, in order
    std::int64_t served = 0;        // orders; the others go into none of the sizes chosen
    std::int64_t not_served = 0;
    std::int64_t cost = 0; // of those served
    double bound = 0;      // no choice of k that serves as many costs less
    double gap() const;    // (cost − bound) / cost
};

// Kinds that cost the same everywhere are one, and a size that another one holds for all at no more cost is left out
// (dominance). Then exchange of one size for another (M. B. Teitz, P. Bart, Operations Research 16, 1968) for the
// choice, and SizeBound for the proof. As many orders as k sizes can serve come first, then the cost. Deterministic.
class SizeChooser {
public:
    explicit SizeChooser(const std::vector<Demand>& demands);

    SizeChoice choose(int k, Run& run) const;
    std::size_t sizes_left() const { return sizes_.size(); } // after dominance
    std::size_t kinds_left() const { return costs_.kinds; }

private:
    std::vector<std::size_t> exchanged(std::vector<std::size_t> open, Run& run) const;
    std::vector<std::size_t> greedy(std::size_t k) const;

    std::vector<std::size_t> sizes_; // as the demands number them
    SizeCosts costs_;                // `unserved_` times the count where a kind does not go in
    std::int64_t never_ = 0;         // orders that go into no size at all
    double unserved_ = 0;            // dearer than anything
    const std::vector<Demand>& demands_;
};

} // namespace stow::records
