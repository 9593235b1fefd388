#include "core/planning/assignment.h"

#include <algorithm>
#include <array>

namespace stow::planning {

namespace {

// A merit as numbers that can be taken from one another.
using Cost = std::array<std::int64_t, 9>;

Cost cost_of(const Merit& m)
{
    return {m.left_out, m.no_service, m.late, m.over, m.wishes[0], m.wishes[1], m.wishes[2], m.moved, m.turn};
}

Cost operator+(Cost a, const Cost& b)
{
    for (std::size_t i = 0; i < a.size(); ++i) a[i] += b[i];
    return a;
}

Cost operator-(Cost a, const Cost& b)
{
    for (std::size_t i = 0; i < a.size(); ++i) a[i] -= b[i];
    return a;
}

// What one piece of each limit is; nothing where the question is no assignment.
std::optional<std::vector<std::int64_t>> pieces_of(const Sharing& sharing)
{
    std::vector<std::int64_t> piece(sharing.limits.size(), 0);
    for (const auto& order : sharing.orders) {
        for (const Way& way : order) {
            if (way.needs.size() > 1) return std::nullopt;
            for (const Need& need : way.needs) {
                if (!sharing.limits[need.limit].firm) return std::nullopt;
                if (piece[need.limit] != 0 && piece[need.limit] != need.amount) return std::nullopt;
                piece[need.limit] = need.amount;
            }
        }
    }
    return piece;
}

class Assignment {
public:
    Assignment(const Sharing& sharing, const std::vector<std::int64_t>& piece)
        : sharing_(sharing), nowhere_(sharing.limits.size())
    {
        for (std::size_t l = 0; l < nowhere_; ++l) {
            room_.push_back(piece[l] > 0 ? std::max<std::int64_t>(sharing.limits[l].left, 0) / piece[l] : 0);
        }
        holders_.resize(nowhere_ + 1);
        for (const auto& order : sharing.orders) options_.push_back(options_of(order));
        at_.assign(sharing.orders.size(), nowhere_);
    }

    Ways solve()
    {
        for (std::size_t o = 0; o < options_.size(); ++o) place(o);
        Ways ways;
        for (std::size_t o = 0; o < options_.size(); ++o) ways.push_back(option(o, at_[o])->way);
        return ways;
    }

private:
    struct Option { // the best way that needs this limit; `nowhere`: none
        std::size_t limit = 0;
        Cost cost{};
        std::size_t way = 0;
    };

    std::vector<Option> options_of(const std::vector<Way>& ways) const
    {
        std::vector<Option> options;
        for (std::size_t w = 0; w < ways.size(); ++w) {
            const std::size_t limit = ways[w].needs.empty() ? nowhere_ : ways[w].needs.front().limit;
            const Cost cost = cost_of(ways[w].merit);
            const auto known =
                std::find_if(options.begin(), options.end(), [&](const Option& o) { return o.limit == limit; });
            if (known == options.end())
                options.push_back({limit, cost, w});
            else if (cost < known->cost)
                *known = {limit, cost, w};
        }
        return options;
    }

    const Option* option(std::size_t order, std::size_t limit) const
    {
        for (const Option& o : options_[order]) {
            if (o.limit == limit) return &o;
        }
        return nullptr;
    }

    bool has_room(std::size_t limit) const
    {
        return limit == nowhere_ || static_cast<std::int64_t>(holders_[limit].size()) < room_[limit];
    }

    // Puts one more order in place and moves others along the cheapest chain that makes room for it.
    void place(std::size_t order)
    {
        struct Reach {
            std::optional<Cost> cost;
            std::size_t mover = 0, from = 0; // who comes here, and from which limit
        };
        const std::size_t n = nowhere_ + 1;
        std::vector<Reach> reach(n);
        for (const Option& o : options_[order]) reach[o.limit] = {o.cost, order, n};
        for (bool better = true; better;) {
            better = false;
            for (std::size_t from = 0; from < n; ++from) {
                if (!reach[from].cost || has_room(from)) continue;
                for (const std::size_t holder : holders_[from]) {
                    const Cost there = *reach[from].cost - option(holder, from)->cost;
                    for (const Option& o : options_[holder]) {
                        if (o.limit == from) continue;
                        const Cost cost = there + o.cost;
                        if (reach[o.limit].cost && *reach[o.limit].cost <= cost) continue;
                        reach[o.limit] = {cost, holder, from};
                        better = true;
                    }
                }
            }
        }
        std::size_t end = n;
        for (std::size_t l = 0; l < n; ++l) {
            if (reach[l].cost && has_room(l) && (end == n || *reach[l].cost < *reach[end].cost)) end = l;
        }
        for (std::size_t l = end; l != n; l = reach[l].from) {
            const std::size_t mover = reach[l].mover;
            if (reach[l].from != n) {
                auto& old = holders_[reach[l].from];
                old.erase(std::find(old.begin(), old.end(), mover));
            }
            holders_[l].push_back(mover);
            at_[mover] = l;
        }
    }

    const Sharing& sharing_;
    std::size_t nowhere_;
    std::vector<std::int64_t> room_;
    std::vector<std::vector<std::size_t>> holders_; // of each limit
    std::vector<std::vector<Option>> options_;
    std::vector<std::size_t> at_; // each order's limit
};

} // namespace

std::optional<Ways> assign(const Sharing& sharing)
{
    const auto piece = pieces_of(sharing);
    if (!piece) return std::nullopt;
    return Assignment(sharing, *piece).solve();
}

} // namespace stow::planning
