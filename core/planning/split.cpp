#include "core/planning/split.h"

#include <map>
#include <numeric>

namespace stow::planning {

namespace {

// How many of each piece of the task a share takes.
using Counts = std::vector<int>;

constexpr std::int64_t most_shares = 256; // shares priced in the complete search
constexpr std::int64_t most_proven = 48;  // shares whose refusals are proven

struct Cost { // the least is the best; a late share costs more than any price
    int late = 0;
    std::int64_t minor = 0;
    friend auto operator<=>(const Cost&, const Cost&) = default;
    friend Cost operator+(Cost a, Cost b) { return {a.late + b.late, a.minor + b.minor}; }
};

bool within(const Counts& a, const Counts& b)
{
    return std::equal(a.begin(), a.end(), b.begin(), [](int x, int y) { return x <= y; });
}

int total(const Counts& counts)
{
    return std::accumulate(counts.begin(), counts.end(), 0);
}

Counts minus(Counts a, const Counts& b)
{
    std::transform(a.begin(), a.end(), b.begin(), a.begin(), std::minus<>());
    return a;
}

std::size_t first_piece(const Counts& counts)
{
    return static_cast<std::size_t>(std::find_if(counts.begin(), counts.end(), [](int n) { return n > 0; }) -
                                    counts.begin());
}

// The next share in counting order; false after the last.
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

class Splitter {
public:
    Splitter(const Bench& bench, const Task& task, const Stock& stock) : bench_(bench), task_(task), stock_(stock)
    {
        for (const shop::Piece& piece : task.pieces) all_.push_back(piece.count);
    }

    std::variant<std::vector<ParcelPlan>, StuckOrder> solve()
    {
        std::int64_t shares = 1;
        for (const int n : all_) shares = std::min(shares * (n + 1), most_shares + 1);
        if (shares <= most_shares) {
            prove_ = bench_.wish.prove && shares <= most_proven;
            price_all();
            if (best(all_, true)) {
                if (auto parcels = parcels_of(best_parts(), prove_ && all_decided_)) return *std::move(parcels);
            }
        }
        return fill_one_after_the_other();
    }

private:
    Task task_of(const Counts& share, bool first) const
    {
        Task task{{}, task_.orders, {}, first};
        for (std::size_t i = 0; i < share.size(); ++i) {
            if (share[i] == 0) continue;
            task.pieces.push_back(task_.pieces[i]);
            task.pieces.back().count = share[i];
        }
        return task;
    }

    Packed pack_share(const Counts& share, bool first, const Stock& stock, bool prove) const
    {
        Wish wish = bench_.wish;
        wish.prove = prove;
        const Task task = task_of(share, first);
        const auto contents = contents_of(bench_.cupboard, task.pieces); // known to be sound
        return pack({bench_.cupboard, bench_.services, wish, bench_.run, bench_.memory}, task, contents.value(), stock);
    }

    // Every share, small ones first: what holds no part of it cannot hold the whole.
    void price_all()
    {
        std::vector<Counts> shares;
        Counts share(all_.size(), 0);
        while (next(share, all_)) shares.push_back(share);
        std::stable_sort(shares.begin(), shares.end(),
                         [](const Counts& a, const Counts& b) { return total(a) < total(b); });
        std::vector<Counts> refused;
        for (const Counts& s : shares) {
            if (!bench_.run.go_on()) all_decided_ = false;
            const auto part_refused = [&](const Counts& r) { return within(r, s); };
            if (bench_.run.stopped() || std::any_of(refused.begin(), refused.end(), part_refused)) continue;
            bool held = price(s, false);
            if (s[0] > 0) held = price(s, true) || held;
            if (!held) refused.push_back(s);
        }
    }

    bool price(const Counts& share, bool first)
    {
        const Packed packed = pack_share(share, first, stock_, prove_);
        all_decided_ = all_decided_ && packed.all_decided;
        if (!packed.plan) return false;
        costs_[{share, first}] = {packed.plan->keeps_promise ? 0 : 1, cost_in_all(*packed.plan).minor};
        return true;
    }

    // The least cost of sharing out `counts`; nothing if it cannot be done. The share with the first piece comes first,
    // so that no two orders of the same shares are looked at.
    std::optional<Cost> best(const Counts& counts, bool first)
    {
        if (total(counts) == 0) return Cost{};
        const auto key = std::pair{counts, first};
        if (const auto known = best_.find(key); known != best_.end()) return known->second.cost;
        Best& here = best_[key];
        const std::size_t lead = first_piece(counts);
        Counts share(counts.size(), 0);
        std::optional<Cost> least;
        Counts with;
        while (next(share, counts)) {
            if (share[lead] == 0) continue;
            const auto own = costs_.find({share, first});
            if (own == costs_.end()) continue;
            const auto rest = best(minus(counts, share), false);
            if (!rest || (least && *least <= own->second + *rest)) continue;
            least = own->second + *rest;
            with = share;
        }
        here.cost = least;
        here.share = with;
        return least;
    }

    std::vector<Counts> best_parts() const
    {
        std::vector<Counts> parts;
        Counts left = all_;
        while (total(left) > 0) {
            parts.push_back(best_.at({left, parts.empty()}).share);
            left = minus(left, parts.back());
        }
        return parts;
    }

    // The shares as parcels, each with what the ones before have left; nothing if an outer runs out and no other does.
    std::optional<std::vector<ParcelPlan>> parcels_of(const std::vector<Counts>& shares, bool proven) const
    {
        Stock left = stock_;
        std::vector<ParcelPlan> parcels;
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
            parcels[i].split_proven = proven;
        }
        return parcels;
    }

    std::variant<std::vector<ParcelPlan>, StuckOrder> fill_one_after_the_other() const
    {
        const std::vector<std::size_t> order = largest_first();
        std::vector<Counts> shares;
        Stock left = stock_;
        Counts counts = all_;
        while (total(counts) > 0) {
            Counts share(counts.size(), 0);
            Packed fullest;
            for (const std::size_t i : order) {
                // Most of this piece that still goes in: try all of them, then by halves.
                for (int step = counts[i]; step > 0; step = step == 1 ? 0 : (step + 1) / 2) {
                    while (share[i] + step <= counts[i]) {
                        Counts more = share;
                        more[i] += step;
                        Packed packed = pack_share(more, shares.empty(), left, false);
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
            shares.push_back(share);
            counts = minus(counts, share);
        }
        auto parcels = parcels_of(shares, false);
        if (!parcels) return StuckOrder{task_.pieces.front().order, Stuck::nothing_holds_it};
        return *std::move(parcels);
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
        std::vector<std::size_t> order(all_.size());
        std::iota(order.begin(), order.end(), std::size_t{0});
        const auto size = [&](std::size_t i) {
            const shop::Good* good = bench_.cupboard.good(task_.pieces[i].good);
            return good == nullptr ? Volume{} : solid_volume(good->shape);
        };
        std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) { return size(a) > size(b); });
        return order;
    }

    struct Best {
        std::optional<Cost> cost;
        Counts share;
    };

    const Bench& bench_;
    const Task& task_;
    const Stock& stock_;
    Counts all_;
    bool prove_ = false;
    bool all_decided_ = true;
    std::map<std::pair<Counts, bool>, Cost> costs_;
    std::map<std::pair<Counts, bool>, Best> best_;
};

} // namespace

std::variant<std::vector<ParcelPlan>, StuckOrder> split(const Bench& bench, const Task& task, const Stock& stock)
{
    return Splitter(bench, task, stock).solve();
}

} // namespace stow::planning
