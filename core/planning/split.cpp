#include "core/planning/split.h"

#include "core/planning/shares.h"
#include "core/planning/split_bound.h"
#include "core/planning/split_search.h"

#include <algorithm>
#include <limits>
#include <map>
#include <numeric>

namespace stow::planning {

namespace {

constexpr std::int64_t most_shares = 256;  // looked at in the complete search
constexpr std::int64_t most_proven = 48;   // shares whose refusals are proven
constexpr std::size_t most_searched = 480; // shares priced where there are more

using Parts = std::vector<Counts>;

std::int64_t ways_to_take(const Counts& counts)
{
    std::int64_t ways = 1;
    for (const int n : counts) ways = std::min(ways * (n + 1), most_shares + 1);
    return ways;
}

// Every way to share the pieces out, by the share that the first piece left goes in, so that no two orders of the same
// shares are looked at.
class CompleteSearch {
public:
    CompleteSearch(Shares& shares, const SplitBound& bound, Run& run) : shares_(shares), bound_(bound), run_(run) {}

    std::optional<Parts> find()
    {
        const Counts all = shares_.all();
        if (!best(all, true, {std::numeric_limits<int>::max(), 0})) return std::nullopt;
        Parts parts;
        for (Counts left = all; total(left) > 0; left = left - parts.back()) {
            parts.push_back(best_.at({left, parts.empty()}).share);
        }
        return parts;
    }
    bool complete() const { return complete_; }

private:
    struct Best {
        std::optional<ShareCost> cost;
        ShareCost above{-1, 0}; // without a cost: there is none below this one
        Counts share;
    };

    // The least cost of sharing out `counts`; nothing if it cannot be done for less than `limit`.
    std::optional<ShareCost> best(const Counts& counts, bool first, ShareCost limit)
    {
        if (total(counts) == 0) return limit > ShareCost{} ? std::optional(ShareCost{}) : std::nullopt;
        const auto key = std::pair{counts, first};
        if (const auto known = best_.find(key); known != best_.end()) {
            const Best& b = known->second;
            if (b.cost) return *b.cost < limit ? b.cost : std::nullopt;
            if (limit <= b.above) return std::nullopt;
        }
        std::optional<ShareCost> least;
        Counts with;
        const auto lead = static_cast<std::size_t>(
            std::find_if(counts.begin(), counts.end(), [](int n) { return n > 0; }) - counts.begin());
        Counts share(counts.size(), 0);
        while (next(share, counts)) {
            if (share[lead] == 0) continue;
            const ShareCost room = least.value_or(limit);
            const Counts others = counts - share;
            if (ShareCost{0, bound_.least(share) + bound_.least(others)} >= room) continue;
            const std::optional<ShareCost> own = price(share, first);
            if (!own) continue;
            const auto rest = best(others, false, {room.late - own->late, room.minor - own->minor});
            if (!rest) continue;
            least = *own + *rest;
            with = share;
        }
        Best& here = best_[key];
        here.cost = least;
        here.above = limit;
        here.share = with;
        return least;
    }

    std::optional<ShareCost> price(const Counts& share, bool first)
    {
        complete_ = run_.go_on() && complete_;
        // What holds no part of it cannot hold the whole.
        const auto part_refused = [&](const Counts& r) { return within(r, share); };
        if (run_.stopped() || std::any_of(refused_.begin(), refused_.end(), part_refused)) return std::nullopt;
        const PricedShare& priced = shares_.price(share, first);
        if (!priced.fits && !first) refused_.push_back(share);
        return priced.outer ? std::optional(priced.cost) : std::nullopt;
    }

    Shares& shares_;
    const SplitBound& bound_;
    Run& run_;
    bool complete_ = true;
    std::vector<Counts> refused_;
    std::map<std::pair<Counts, bool>, Best> best_;
};

class Splitter {
public:
    Splitter(const Bench& bench, const Task& task, const Stock& stock, const SplitMemory& before, SplitMemory* learned)
        : bench_(bench), task_(task), stock_(stock), before_(before), learned_(learned),
          bound_(before.bound ? *before.bound : SplitBound(bench, task, stock))
    {
    }

    std::variant<std::vector<ParcelPlan>, StuckOrder> solve()
    {
        const std::int64_t ways = ways_to_take(counts_of(task_));
        const bool prove = bench_.wish.prove && ways <= most_proven;
        Shares shares(bench_, task_, stock_, prove, before_.shares);
        auto solved = solve(shares, ways, prove);
        if (learned_ != nullptr) *learned_ = {shares.known(), bound_};
        return solved;
    }

private:
    std::variant<std::vector<ParcelPlan>, StuckOrder> solve(Shares& shares, std::int64_t ways, bool prove)
    {
        const Counts all = counts_of(task_);
        std::optional<std::vector<ParcelPlan>> found;
        if (ways <= most_shares) {
            CompleteSearch search(shares, bound_, bench_.run);
            if (const auto parts = search.find()) {
                found = shares.parcels_of(*parts, prove && search.complete() && shares.all_decided());
            }
            if (found) return told(*std::move(found));
        }
        auto filled = fill_one_after_the_other(shares, all);
        const auto* start = std::get_if<Parts>(&filled);
        if (start == nullptr) return std::get<StuckOrder>(std::move(filled));
        if (ways > most_shares) {
            found = shares.parcels_of(cheaper_split(shares, bound_, stock_, *start, most_searched, bench_.run), false);
        }
        // Where an outer runs out on the way, filling one after the other may do better after all.
        auto plain = shares.parcels_of(*start, false);
        if (!found || (plain && cost_of(*plain) < cost_of(*found))) found = std::move(plain);
        if (!found) return StuckOrder{task_.pieces.front().order, Stuck::nothing_holds_it};
        return told(*std::move(found));
    }

    static ShareCost cost_of(const std::vector<ParcelPlan>& parcels)
    {
        ShareCost sum;
        for (const ParcelPlan& p : parcels) sum = sum + ShareCost{p.keeps_promise ? 0 : 1, cost_in_all(p).minor};
        return sum;
    }

    // With what is known about ways that cost less.
    std::vector<ParcelPlan> told(std::vector<ParcelPlan> parcels) const
    {
        const ShareCost cost = cost_of(parcels);
        if (parcels.front().split_gap_permille || cost.late > 0 || cost.minor <= 0) return parcels;
        const std::int64_t over = std::max<std::int64_t>(cost.minor - bound_.least_of_all(), 0);
        for (ParcelPlan& parcel : parcels) {
            parcel.split_gap_permille = static_cast<int>((over * 1000 + cost.minor - 1) / cost.minor);
        }
        return parcels;
    }

    // One outer after the other as full as it will go.
    std::variant<Parts, StuckOrder> fill_one_after_the_other(const Shares& shares, Counts counts) const
    {
        const std::vector<std::size_t> order = largest_first();
        Parts parts;
        Stock left = stock_;
        while (total(counts) > 0) {
            Counts share(counts.size(), 0);
            Packed fullest;
            for (const std::size_t i : order) {
                // Most of this piece that still goes in: try all of them, then by halves.
                for (int step = counts[i]; step > 0; step = step == 1 ? 0 : (step + 1) / 2) {
                    while (share[i] + step <= counts[i]) {
                        Counts more = share;
                        more[i] += step;
                        Packed packed = shares.pack_share(more, parts.empty(), left, false);
                        if (!packed.plan) {
                            if (total(share) == 0 && step == 1) return stuck(i, std::move(packed));
                            break;
                        }
                        share = std::move(more);
                        fullest = std::move(packed);
                    }
                }
            }
            left.take(fullest.plan->uses);
            parts.push_back(share);
            counts = counts - share;
        }
        return parts;
    }

    StuckOrder stuck(std::size_t piece, Packed packed) const
    {
        const shop::Piece& p = task_.pieces[piece];
        StuckOrder stuck{p.order, packed.quotes.empty() ? Stuck::nothing_holds_it : Stuck::no_service, p.good};
        stuck.passed_over = std::move(packed.passed_over);
        stuck.quotes = std::move(packed.quotes);
        return stuck;
    }

    std::vector<std::size_t> largest_first() const
    {
        std::vector<std::size_t> order(task_.pieces.size());
        std::iota(order.begin(), order.end(), std::size_t{0});
        const auto size = [&](std::size_t i) {
            const shop::Good* good = bench_.cupboard.good(task_.pieces[i].good);
            return good == nullptr ? Volume{} : solid_volume(good->shape);
        };
        std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) { return size(a) > size(b); });
        return order;
    }

    const Bench& bench_;
    const Task& task_;
    const Stock& stock_;
    const SplitMemory& before_;
    SplitMemory* learned_;
    SplitBound bound_;
};

} // namespace

std::variant<std::vector<ParcelPlan>, StuckOrder> split(const Bench& bench, const Task& task, const Stock& stock,
                                                        const SplitMemory& before, SplitMemory* learned)
{
    return Splitter(bench, task, stock, before, learned).solve();
}

} // namespace stow::planning
