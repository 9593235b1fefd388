#include "core/planning/shares.h"

#include "core/planning/consumables.h"

#include <algorithm>
#include <functional>
#include <numeric>

namespace stow::planning {

Counts counts_of(const Task& task)
{
    Counts counts;
    counts.reserve(task.pieces.size());
    for (const shop::Piece& piece : task.pieces) counts.push_back(piece.count);
    return counts;
}

bool within(const Counts& a, const Counts& b)
{
    return std::equal(a.begin(), a.end(), b.begin(), [](int x, int y) { return x <= y; });
}

int total(const Counts& counts)
{
    return std::accumulate(counts.begin(), counts.end(), 0);
}

Counts operator-(Counts a, const Counts& b)
{
    std::transform(a.begin(), a.end(), b.begin(), a.begin(), std::minus<>());
    return a;
}

bool next(Counts& share, const Counts& all)
{
    for (std::size_t i = share.size(); i-- > 0;) {
        if (share[i] < all[i]) {
            ++share[i];
            return true;
        }
        share[i] = 0;
    }
    return false;
}

const PricedShare& Shares::price(const Counts& share, bool first)
{
    const auto [at, added] = known_.try_emplace({share, first});
    PricedShare& priced = at->second;
    if (!added) return priced;
    if (const PricedShare* known = priced_before(at->first)) {
        priced = *known;
    } else {
        const Packed packed = pack_share(share, first, stock_, prove_);
        priced.decided = packed.all_decided;
        priced.fits = packed.plan || !packed.quotes.empty();
        if (packed.plan) {
            priced.cost = {packed.plan->keeps_promise ? 0 : 1, cost_in_all(*packed.plan).minor};
            priced.outer = packed.plan->outer;
        }
    }
    all_decided_ = all_decided_ && priced.decided;
    return priced;
}

const PricedShare* Shares::priced_before(const std::pair<Counts, bool>& share) const
{
    const auto found = before_.find(share);
    if (found == before_.end()) return nullptr;
    const auto& outer = found->second.outer;
    const shop::Supply* supply = outer ? bench_.cupboard.supply(*outer) : nullptr;
    return !outer || (supply != nullptr && stock_.has(taken_for(*supply))) ? &found->second : nullptr;
}

Packed Shares::pack_share(const Counts& share, bool first, const Stock& stock, bool prove) const
{
    Task task{{}, task_.orders, {}, first};
    for (std::size_t i = 0; i < share.size(); ++i) {
        if (share[i] == 0) continue;
        task.pieces.push_back(task_.pieces[i]);
        task.pieces.back().count = share[i];
    }
    Wish wish = bench_.wish;
    wish.prove = prove;
    const auto contents = contents_of(bench_.cupboard, task.pieces); // known to be sound
    return pack({bench_.cupboard, bench_.services, wish, bench_.run, bench_.memory}, task, contents.value(), stock);
}

std::optional<std::vector<ParcelPlan>> Shares::parcels_of(const std::vector<Counts>& shares, bool proven) const
{
    Stock left = stock_;
    std::vector<ParcelPlan> parcels;
    parcels.reserve(shares.size());
    for (const Counts& share : shares) {
        Packed packed = pack_share(share, parcels.empty(), left, bench_.wish.prove);
        if (!packed.plan) return std::nullopt;
        proven = proven && !packed.missed;
        left.take(packed.plan->uses);
        parcels.push_back(*std::move(packed.plan));
    }
    for (std::size_t i = 0; i < parcels.size(); ++i) {
        parcels[i].part = static_cast<int>(i) + 1;
        parcels[i].parts = static_cast<int>(parcels.size());
        if (proven) parcels[i].split_gap_permille = 0;
    }
    return parcels;
}

} // namespace stow::planning
