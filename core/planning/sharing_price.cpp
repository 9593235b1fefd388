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
        : sharing_(sharing), start_(start), most_(most), run_(run)
    {
        for (std::size_t l = 0; l < sharing.limits.size(); ++l) {
            if (!sharing.limits[l].firm) open_.push_back(l);
        }
        price_.assign(sharing.limits.size(), 0);
    }

    std::optional<Shared> solve()
    {
        auto least = least_use();
        if (!least) return std::nullopt;
        keep(*least);
        if (all_exceeded(*least)) return shared(true);
        // Each price in turn, twice: with one thing short, that is exact bisection.
        for (int pass = 0; pass < (open_.size() > 1 ? 2 : 1); ++pass) {
            for (const std::size_t limit : open_) set_price(limit);
        }
        improve();
        return shared(false);
    }

private:
    // The open limits taken off, their use in the merit instead.
    template <class Count>
    std::optional<Ways> assigned(Count&& count)
    {
        if (!run_.go_on(256)) return std::nullopt;
        Sharing bare = sharing_;
        for (auto& order : bare.orders) {
            for (Way& way : order) {
                count(way);
                way.needs.erase(std::remove_if(way.needs.begin(), way.needs.end(),
                                               [&](const Need& n) { return !sharing_.limits[n.limit].firm; }),
                                way.needs.end());
            }
        }
        auto found = assign_all(bare, start_, most_);
        if (!found) return std::nullopt;
        flows_proven_ = flows_proven_ && found->proven;
        return std::move(found->ways);
    }

    std::optional<Ways> least_use()
    {
        return assigned([&](Way& way) {
            for (const Need& n : way.needs) way.merit.over += sharing_.limits[n.limit].firm ? 0 : n.amount;
        });
    }

    std::optional<Ways> at_prices()
    {
        auto ways = assigned([&](Way& way) {
            way.merit.wishes[0] *= fine;
            for (const Need& n : way.needs) way.merit.wishes[0] += price_[n.limit] * n.amount;
        });
        if (!ways) return ways;
        std::int64_t bound = 0;
        for (std::size_t o = 0; o < ways->size(); ++o) {
            const Way& way = sharing_.orders[o][(*ways)[o]];
            bound += way.merit.wishes[0] * fine;
            for (const Need& n : way.needs) bound += price_[n.limit] * n.amount;
        }
        for (const std::size_t limit : open_) bound -= price_[limit] * sharing_.limits[limit].left;
        if (flows_proven_) bound_ = std::max(bound_.value_or(bound), bound);
        keep(*ways);
        return ways;
    }

    std::int64_t used(const Ways& ways, std::size_t limit) const
    {
        std::int64_t sum = 0;
        for (std::size_t o = 0; o < ways.size(); ++o) {
            for (const Need& n : sharing_.orders[o][ways[o]].needs) sum += n.limit == limit ? n.amount : 0;
        }
        return sum;
    }

    bool all_exceeded(const Ways& ways) const
    {
        return std::all_of(open_.begin(), open_.end(),
                           [&](std::size_t limit) { return used(ways, limit) >= sharing_.limits[limit].left; });
    }

    void set_price(std::size_t limit)
    {
        std::int64_t low = 0, high = dearest;
        const auto enough_at = [&](std::int64_t price) {
            price_[limit] = price;
            const auto ways = at_prices();
            return !ways || used(*ways, limit) <= sharing_.limits[limit].left;
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
        best_ = Shared{ways, merit, false, {}, {}, {}};
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

    std::optional<Shared> shared(bool exact)
    {
        if (!best_) return std::nullopt;
        Shared answer = *best_;
        answer.proven = exact && flows_proven_ && !run_.stopped();
        const std::int64_t wish = answer.merit.wishes[0];
        if (!answer.proven && bound_ && answer.merit.over == 0 && wish > 0) {
            const std::int64_t gap = std::max<std::int64_t>(wish * fine - *bound_, 0);
            answer.gap_permille = static_cast<int>((gap + wish - 1) / wish); // fine is a thousand
        }
        return answer;
    }

    const Sharing& sharing_;
    const Ways& start_;
    int most_;
    Run& run_;
    std::vector<std::size_t> open_; // limits that are not firm
    std::vector<std::int64_t> price_;
    bool flows_proven_ = true;
    std::optional<std::int64_t> bound_; // thousandths of the wish
    std::optional<Shared> best_;
};

} // namespace

std::optional<Shared> share_by_price(const Sharing& sharing, const Ways& start, int most, Run& run)
{
    return Pricing(sharing, start, most, run).solve();
}

} // namespace stow::planning
