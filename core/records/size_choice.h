// Which k of many sizes serve best: the k-median problem in plain numbers, with a proven bound.
#pragma once

#include "core/run/run.h"

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
// (dominance). Then Lagrangian relaxation with subgradient steps (G. Cornuejols, M. L. Fisher, G. L. Nemhauser,
// Management Science 23, 1977) for the bound, and exchange of one size for another (M. B. Teitz, P. Bart, Operations
// Research 16, 1968) for the choice. As many orders as k sizes can serve come first, then the cost. Deterministic.
class SizeChooser {
public:
    explicit SizeChooser(const std::vector<Demand>& demands);

    SizeChoice choose(int k, Run& run) const;
    std::size_t sizes_left() const { return sizes_.size(); } // after dominance
    std::size_t kinds_left() const { return count_.size(); }

private:
    double cost(std::size_t kind, std::size_t size) const { return cost_[kind * sizes_.size() + size]; }
    double value(const std::vector<std::size_t>& open) const;
    std::vector<std::size_t> exchanged(std::vector<std::size_t> open, Run& run) const;

    std::vector<std::size_t> sizes_; // as the demands number them
    std::vector<double> count_;
    std::vector<double> cost_; // of all of a kind; `unserved_` times the count where it does not go in
    std::int64_t never_ = 0;   // orders that go into no size at all
    double unserved_ = 0;      // dearer than anything
    const std::vector<Demand>& demands_;
};

} // namespace stow::records
