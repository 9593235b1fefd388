// A share of an order: how many of each of its pieces travel in one parcel, and what that parcel would cost.
#pragma once

#include "core/planning/pack.h"

#include <cstdint>
#include <map>
#include <optional>
#include <utility>
#include <vector>

namespace stow::planning {

using Counts = std::vector<int>; // by piece of the task

Counts counts_of(const Task& task);

bool within(const Counts& a, const Counts& b);
int total(const Counts& counts);
Counts operator-(Counts a, const Counts& b);
// The next share of `all` in counting order; false after the last.
bool next(Counts& share, const Counts& all);

struct ShareCost { // the least is the best; a late share costs more than any price
    int late = 0;
    std::int64_t minor = 0; // packaging and postage
    friend auto operator<=>(const ShareCost&, const ShareCost&) = default;
    friend ShareCost operator+(ShareCost a, ShareCost b) { return {a.late + b.late, a.minor + b.minor}; }
};

struct PricedShare {
    ShareCost cost{};
    std::optional<shop::SupplyCode> outer{}; // nothing: no outer takes it
    bool fits = false;                       // into some outer, on hand or not, whether a service takes it or not
    bool decided = true;                     // no larger outer was taken for want of an answer
};
using PricedShares = std::map<std::pair<Counts, bool>, PricedShare>;

// Shares of one task priced by packing them, each once. `first`: the parcel that carries the inserts.
class Shares {
public:
    // `prove`: refusals are proven as far as the work given for a question allows.
    // `before`: the same task's, priced when nothing was there less than now; what its outers still are there for
    // stands.
    Shares(const Bench& bench, const Task& task, const Stock& stock, bool prove, const PricedShares& before)
        : bench_(bench), task_(task), stock_(stock), prove_(prove), before_(before)
    {
    }

    Counts all() const { return counts_of(task_); }
    const PricedShare& price(const Counts& share, bool first);
    std::size_t priced() const { return known_.size(); }
    bool all_decided() const { return all_decided_; } // of the shares priced
    const PricedShares& known() const { return known_; }

    // From this stock.
    Packed pack_share(const Counts& share, bool first, const Stock& stock, bool prove) const;
    // The shares as parcels, each with what the ones before have left; nothing if an outer runs out and no other does.
    // `proven` stands as long as none of them has to make do with another outer.
    std::optional<std::vector<ParcelPlan>> parcels_of(const std::vector<Counts>& shares, bool proven) const;

private:
    const PricedShare* priced_before(const std::pair<Counts, bool>& share) const;

    const Bench& bench_;
    const Task& task_;
    const Stock& stock_;
    bool prove_;
    const PricedShares& before_;
    bool all_decided_ = true;
    PricedShares known_;
};

} // namespace stow::planning
