#include "core/planning/sharing_price.h"

#include "core/planning/assignment.h"

#include <algorithm>

namespace stow::planning {

namespace {

constexpr std::int64_t fine = 1'000;            // prices count in thousandths of the wish
constexpr std::int64_t dearest = 1'000'000'000; // nothing is worth more

class Pricing {
public:
    Pricing(const Sharing& sharing, const Ways& start, int most, Run& run)
        : sharing_(sharing), start_(start), most_(most), run_(run), bare_(sharing)
    {
        for (std::size_t l = 0; l < sharing.limits.size(); ++l) {
            if (sharing.limits[l].firm) continue;
            if (is_needed(l))
                open_.push_back(l);
            else
                over_before_ += std::max<std::int64_t>(-sharing.limits[l].left, 0);
        }
        price_.assign(sharing.limits.size(), 0);
        for (auto& order : bare_.orders) {
            for (Way& way : order) {
                way.needs.erase(std::remove_if(way.needs.begin(), way.needs.end(),
                                               [&](const Need& n) { return !sharing_.limits[n.limit].firm; }),
                                way.needs.end());
            }
        }
    }

    std::optional<Shared> solve()
    {
        const auto least = least_use();
        if (!least) return std::nullopt;
        keep(least->ways);
        if (all_exceeded(least->ways)) { // the least of what is over is the least of what is used
            if (best_) best_->behind = least->behind;
            return best_;
        }
        // Each price in turn, twice: with one thing short, that is exact bisection.
        for (int pass = 0; pass < (open_.size() > 1 ? 2 : 1); ++pass) {
            for (const std::size_t limit : open_) set_price(limit);
        }
        improve();
        if (best_) best_->behind = levels_of(best_->merit) - bound_;
        return best_;
    }

private:
    // The open limits taken off, what is to count of their use in the merit instead: `count` writes it from the way as
    // it was.
    template <class Count>
    std::optional<Assigned> assigned(Count&& count)
    {
        if (!run_.go_on(256)) return std::nullopt;
        for (std::size_t o = 0; o < bare_.orders.size(); ++o) {
            for (std::size_t w = 0; w < bare_.orders[o].size(); ++w) {
                count(sharing_.orders[o][w], bare_.orders[o][w].merit);
            }
        }
        return assign_all(bare_, start_, most_);
    }

    // Of ways, in the merits of the last assignment.
    Levels bound_of(const Assigned& found) const
    {
        Levels sum{};
        for (std::size_t o = 0; o < found.ways.size(); ++o) {
            sum = sum + levels_of(bare_.orders[o][found.ways[o]].merit);
        }
        return sum - found.behind;
    }

    bool is_needed(std::size_t limit) const
    {
        const auto needs_it = [&](const Way& way) {
            return std::any_of(way.needs.begin(), way.needs.end(), [&](const Need& n) { return n.limit == limit; });
        };
        return std::any_of(sharing_.orders.begin(), sharing_.orders.end(), [&](const std::vector<Way>& order) {
            return std::any_of(order.begin(), order.end(), needs_it);
        });
    }

    std::optional<Assigned> least_use()
    {
        auto found = assigned([&](const Way& way, Merit& merit) {
            merit.over = way.merit.over;
            for (const Need& n : way.needs) merit.over += sharing_.limits[n.limit].firm ? 0 : n.amount;
        });
        if (!found) return std::nullopt;
        bound_ = bound_of(*found);
        for (const std::size_t limit : open_) bound_[over_level] -= sharing_.limits[limit].left;
        bound_[over_level] = over_before_ + std::max<std::int64_t>(bound_[over_level], 0);
        // Of the wish, without a price, each order's own least.
        std::fill(bound_.begin() + wish_level, bound_.end(), 0);
        for (const auto& order : sharing_.orders) {
            const Levels least = least_levels(order);
            for (std::size_t k = wish_level; k < least.size(); ++k) bound_[k] += least[k];
        }
        return found;
    }

    std::optional<Ways> at_prices()
    {
        auto found = assigned([&](const Way& way, Merit& merit) {
            merit.over = way.merit.over;
            merit.wishes[0] = way.merit.wishes[0] * fine;
            for (const Need& n : way.needs) merit.wishes[0] += price_[n.limit] * n.amount;
        });
        if (!found) return std::nullopt;
        raise_bound(bound_of(*found));
        keep(found->ways);
        return std::move(found->ways);
    }

    // By what the assignment at these prices says: with `over` beyond what is there, the wish is at least
    // (its value - what is left at these prices - the dearest of them * over) / fine.
    void raise_bound(Levels at_prices)
    {
        const bool same_before = std::equal(bound_.begin(), bound_.begin() + over_level, at_prices.begin());
        at_prices[over_level] = same_before ? bound_[over_level] : over_before_;
        std::int64_t wish = at_prices[wish_level], dearest_now = 0;
        for (const std::size_t limit : open_) {
            wish -= price_[limit] * sharing_.limits[limit].left;
            dearest_now = std::max(dearest_now, price_[limit]);
        }
        wish -= dearest_now * std::max<std::int64_t>(at_prices[over_level] - over_before_, 0);
        at_prices[wish_level] = wish >= 0 ? (wish + fine - 1) / fine : -(-wish / fine);
        std::copy(bound_.begin() + wish_level + 1, bound_.end(), at_prices.begin() + wish_level + 1);
        bound_ = std::max(bound_, at_prices);
    }

    bool all_exceeded(const Ways& ways) const
    {
        const auto needed = amounts_needed(sharing_, ways);
        return std::all_of(open_.begin(), open_.end(),
                           [&](std::size_t limit) { return needed[limit] >= sharing_.limits[limit].left; });
    }

    void set_price(std::size_t limit)
    {
        std::int64_t low = 0, high = dearest;
        const auto enough_at = [&](std::int64_t price) {
            price_[limit] = price;
            const auto ways = at_prices();
            return !ways || amounts_needed(sharing_, *ways)[limit] <= sharing_.limits[limit].left;
        };
        if (enough_at(0)) return;
        // By magnitudes first, then by halves, until it is known well enough.
        high = 128;
        while (high < dearest && !enough_at(high)) {
            low = high;
            high *= 8;
        }
        while (high - low > std::max<std::int64_t>(1, high / 16) && !run_.stopped()) {
            const std::int64_t middle = low + (high - low) / 2;
            (enough_at(middle) ? high : low) = middle;
        }
        price_[limit] = high;
    }

    void keep(const Ways& ways)
    {
        const Merit merit = merit_of(sharing_, ways);
        if (!keeps_limits(sharing_, ways) || (best_ && best_->merit <= merit)) return;
        best_ = Shared{ways, merit};
    }

    // One order after the other into a better way, while there is enough of everything.
    void improve()
    {
        for (bool better = true; better && best_;) {
            better = false;
            for (std::size_t o = 0; o < sharing_.orders.size(); ++o) {
                Ways ways = best_->ways;
                for (std::size_t w = 0; w < ways[o] && w < best_->ways[o]; ++w) {
                    Ways changed = best_->ways;
                    changed[o] = w;
                    if (!keeps_limits(sharing_, changed) || !(merit_of(sharing_, changed) < best_->merit)) continue;
                    keep(changed);
                    better = true;
                    break;
                }
                if (!run_.go_on()) return;
            }
        }
    }

    const Sharing& sharing_;
    const Ways& start_;
    int most_;
    Run& run_;
    std::vector<std::size_t> open_; // limits that are not firm and that somebody needs
    std::int64_t over_before_ = 0;  // of those nobody needs
    std::vector<std::int64_t> price_;
    Sharing bare_;   // without the needs of open limits
    Levels bound_{}; // of the merit of all ways there are
    std::optional<Shared> best_;
};

} // namespace

std::optional<Shared> share_by_price(const Sharing& sharing, const Ways& start, int most, Run& run)
{
    return Pricing(sharing, start, most, run).solve();
}

} // namespace stow::planning
