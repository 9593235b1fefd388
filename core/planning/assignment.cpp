#include "core/planning/assignment.h"

#include <algorithm>
#include <stdexcept>

namespace stow::planning {

namespace {

constexpr std::size_t none = static_cast<std::size_t>(-1);

// One order as an arc: from the thing all its ways need, or from nowhere, to what one way needs.
struct Option { // the best way that needs this limit; `none`: no other need
    std::size_t limit = none;
    Levels cost{};
    std::size_t way = 0;
};
struct Arcs {
    std::size_t from = none; // its gift box
    std::vector<Option> options;
    std::optional<Option> out; // left out; of an order with a gift box only, else it is an option without need
};

// Nothing where the order's ways make no such arcs.
std::optional<Arcs> arcs_of(const std::vector<Way>& ways)
{
    Arcs arcs;
    const auto needing = std::find_if(ways.begin(), ways.end(), [](const Way& w) { return w.needs.size() > 1; });
    if (needing != ways.end()) { // two needs: one of them must be shared by all ways but one that needs nothing
        for (const Need& need : needing->needs) {
            const bool shared = std::all_of(ways.begin(), ways.end(), [&](const Way& w) {
                return w.needs.empty() || std::any_of(w.needs.begin(), w.needs.end(),
                                                      [&](const Need& n) { return n.limit == need.limit; });
            });
            if (shared) arcs.from = need.limit;
        }
        if (arcs.from == none) return std::nullopt;
    }
    const auto keep_better = [](std::vector<Option>& options, const Option& option) {
        const auto known =
            std::find_if(options.begin(), options.end(), [&](const Option& o) { return o.limit == option.limit; });
        if (known == options.end())
            options.push_back(option);
        else if (option.cost < known->cost)
            *known = option;
    };
    for (std::size_t w = 0; w < ways.size(); ++w) {
        Option option{none, levels_of(ways[w].merit), w};
        if (arcs.from != none && ways[w].needs.empty()) {
            if (!arcs.out || option.cost < arcs.out->cost) arcs.out = option;
            continue;
        }
        std::size_t others = 0;
        for (const Need& need : ways[w].needs) {
            if (need.limit == arcs.from) continue;
            option.limit = need.limit;
            ++others;
        }
        if (others > 1) return std::nullopt;
        keep_better(arcs.options, option);
    }
    if (arcs.from != none && !arcs.out) return std::nullopt;
    return arcs;
}

// The residual network on few nodes: a node for each limit, one for "nowhere" (to need nothing), and one, `rest_`,
// where what is left of everything comes from and goes to. To reach an outer means that one piece too much is asked of
// it, to reach a gift box that one of it is free.
class Flow {
public:
    Flow(std::vector<std::int64_t> room, std::vector<Arcs> arcs)
        : nowhere_(room.size()), rest_(nowhere_ + 1), room_(std::move(room)), arcs_(std::move(arcs)),
          holders_(rest_ + 1), of_box_(rest_ + 1), at_(arcs_.size(), none), moves_(rest_ + 1), stale_(rest_ + 1, true)
    {
        is_box_.assign(rest_ + 1, false);
        for (Arcs& order : arcs_) {
            if (order.from != none) is_box_[order.from] = true;
            for (Option& option : order.options) option.limit = option.limit == none ? nowhere_ : option.limit;
        }
    }

    Ways solve()
    {
        for (std::size_t o = 0; o < arcs_.size(); ++o) place(o);
        Ways ways;
        for (std::size_t o = 0; o < arcs_.size(); ++o) ways.push_back(here(o).way);
        return ways;
    }

private:
    struct Reach {
        std::optional<Levels> cost;
        std::size_t order = none; // who moves; nobody: something is taken from, or left to, the rest
        std::size_t from = none;
    };

    const Option& option(std::size_t order, std::size_t node) const
    {
        for (const Option& o : arcs_[order].options) {
            if (o.limit == node) return o;
        }
        throw std::logic_error("an order lies where it cannot go");
    }
    const Option& here(std::size_t order) const
    {
        return at_[order] == none ? *arcs_[order].out : option(order, at_[order]);
    }
    bool has_room(std::size_t node) const { return node == nowhere_ || room_[node] > 0; }
    bool is_box(std::size_t node) const { return is_box_[node]; }

    // Puts one more order in place along the cheapest chain of moves. One without a gift box must go somewhere: its
    // chain ends at the rest. One with a box is left out at first, and comes in where that is better: a circle by way
    // of its box.
    void place(std::size_t order)
    {
        const Arcs& arcs = arcs_[order];
        const bool must = arcs.from == none;
        std::vector<Reach> reach(rest_ + 1);
        for (const Option& o : arcs.options) {
            reach[o.limit] = {must ? o.cost : o.cost - arcs.out->cost, order, none};
        }
        spread(reach, !must);
        const std::size_t end = must ? rest_ : arcs.from;
        if (must || (reach[end].cost && *reach[end].cost < Levels{})) follow(reach, end);
        if (!must) {
            of_box_[arcs.from].push_back(order);
            stale_[arcs.from] = true;
        }
    }

    // Bellman-Ford. `whole`: also past the rest, which a chain that ends there need not see.
    void spread(std::vector<Reach>& reach, bool whole)
    {
        bool more = true;
        const auto look = [&](std::size_t node, const Levels& cost, std::size_t order, std::size_t from) {
            if (reach[node].cost && *reach[node].cost <= cost) return;
            reach[node] = {cost, order, from};
            more = true;
        };
        while (more) {
            more = false;
            for (std::size_t node = 0; node <= rest_; ++node) {
                if (!reach[node].cost) continue;
                const Levels so_far = *reach[node].cost;
                if (node == rest_) {
                    if (whole) from_rest(so_far, look);
                    continue;
                }
                if (is_box(node) || has_room(node)) look(rest_, so_far, none, node);
                if (!is_box(node) && !whole && has_room(node)) continue;
                for (const Move& move : moves_from(node)) look(move.to, so_far + move.cost, move.order, node);
            }
        }
    }

    // The cheapest move from a node to each other one: of the orders that hold it, or that wait for this box. Looked
    // for again only after an order came or went.
    struct Move {
        std::size_t to = none, order = none;
        Levels cost{};
    };
    const std::vector<Move>& moves_from(std::size_t node)
    {
        std::vector<Move>& moves = moves_[node];
        if (!stale_[node]) return moves;
        stale_[node] = false;
        moves.clear();
        std::vector<std::size_t> known(rest_ + 1, none);
        const auto note = [&](std::size_t to, const Levels& cost, std::size_t order) {
            if (known[to] == none) {
                known[to] = moves.size();
                moves.push_back({to, order, cost});
            } else if (Move& move = moves[known[to]]; cost < move.cost) {
                move = {to, order, cost};
            }
        };
        if (is_box(node)) {
            for (const std::size_t waiting : of_box_[node]) {
                if (at_[waiting] != none) continue;
                const Levels& out = arcs_[waiting].out->cost;
                for (const Option& o : arcs_[waiting].options) note(o.limit, o.cost - out, waiting);
            }
            return moves;
        }
        for (const std::size_t holder : holders_[node]) {
            const Levels& now = option(holder, node).cost;
            for (const Option& o : arcs_[holder].options) {
                if (o.limit != node) note(o.limit, o.cost - now, holder);
            }
            if (arcs_[holder].out) note(arcs_[holder].from, arcs_[holder].out->cost - now, holder);
        }
        return moves;
    }

    template <class Look>
    void from_rest(const Levels& so_far, Look&& look) const
    {
        for (std::size_t node = 0; node <= nowhere_; ++node) {
            if (is_box(node) ? room_[node] > 0 : !holders_[node].empty()) look(node, so_far, none, rest_);
        }
    }

    // From the end back to the beginning.
    void follow(const std::vector<Reach>& reach, std::size_t end)
    {
        const auto count = [&](std::size_t node, std::int64_t by) {
            if (node != nowhere_) room_[node] += by;
        };
        for (std::size_t node = end; node != none; node = reach[node].from) {
            const auto& [cost, mover, from] = reach[node];
            if (mover == none) {
                const std::size_t other = node == rest_ ? from : node;
                count(other, (node == rest_) == is_box(other) ? 1 : -1);
                continue;
            }
            if (arcs_[mover].from != none) stale_[arcs_[mover].from] = true;
            stale_[node] = true;
            if (at_[mover] != none) {
                stale_[at_[mover]] = true;
                auto& old = holders_[at_[mover]];
                old.erase(std::find(old.begin(), old.end(), mover));
            }
            at_[mover] = is_box(node) && node == arcs_[mover].from ? none : node;
            if (at_[mover] != none) holders_[node].push_back(mover);
        }
    }

    std::size_t nowhere_, rest_;
    std::vector<std::int64_t> room_;
    std::vector<Arcs> arcs_;
    std::vector<std::vector<std::size_t>> holders_; // of each node
    std::vector<std::vector<std::size_t>> of_box_;  // orders looked at so far that come from it
    std::vector<bool> is_box_;
    std::vector<std::size_t> at_;          // each order's node; `none`: left out
    std::vector<std::vector<Move>> moves_; // from each node
    std::vector<bool> stale_;              // they are to be looked for again
};

struct Split { // orders that make arcs, and the others
    std::vector<std::size_t> simple, complex;
    std::vector<Arcs> arcs; // of the simple ones
};

constexpr std::int64_t piece = 1000;

bool in_pieces(const std::vector<Way>& ways)
{
    return std::all_of(ways.begin(), ways.end(), [](const Way& way) {
        return std::all_of(way.needs.begin(), way.needs.end(), [](const Need& n) { return n.amount == piece; });
    });
}

// An order that needs a gift box and nothing else that is scarce: the box is where it comes from, not where it goes.
// False: it may go to somebody's box or elsewhere, which is no arc.
bool comes_from_box(Arcs& arcs, const std::vector<bool>& is_box)
{
    const auto boxed = std::find_if(arcs.options.begin(), arcs.options.end(),
                                    [&](const Option& o) { return o.limit != none && is_box[o.limit]; });
    if (arcs.from != none || boxed == arcs.options.end()) return true;
    if (arcs.options.size() != 2) return false;
    const Option& other = arcs.options[boxed == arcs.options.begin() ? 1 : 0];
    if (other.limit != none) return false;
    arcs = {boxed->limit, {{none, boxed->cost, boxed->way}}, other};
    return true;
}

std::optional<Split> split_up(const Sharing& sharing)
{
    std::vector<std::optional<Arcs>> all;
    std::vector<bool> is_box(sharing.limits.size(), false);
    for (const auto& order : sharing.orders) {
        for (const Way& way : order) {
            for (const Need& need : way.needs) {
                if (!sharing.limits[need.limit].firm) return std::nullopt;
            }
        }
        all.push_back(in_pieces(order) ? arcs_of(order) : std::nullopt);
        if (all.back() && all.back()->from != none) is_box[all.back()->from] = true;
    }
    Split split;
    for (std::size_t o = 0; o < all.size(); ++o) {
        const bool box_outside = all[o] && all[o]->from != none &&
                                 std::any_of(all[o]->options.begin(), all[o]->options.end(), [&](const Option& option) {
                                     return option.limit != none && is_box[option.limit];
                                 });
        if (all[o] && !box_outside && comes_from_box(*all[o], is_box)) {
            split.simple.push_back(o);
            split.arcs.push_back(*std::move(all[o]));
        } else {
            split.complex.push_back(o);
        }
    }
    return split;
}

class Search {
public:
    Search(const Sharing& sharing, const Split& split, Ways start, int most)
        : sharing_(sharing), split_(split), left_(most), ways_(std::move(start))
    {
        for (const Limit& limit : sharing.limits) room_.push_back(std::max<std::int64_t>(limit.left, 0));
    }

    Assigned solve()
    {
        const Levels root = bound_of(flow(), 0, {});
        for (const std::size_t order : split_.complex) take(sharing_.orders[order][ways_[order]], -1);
        assign_others();
        change_one_by_one();
        for (const std::size_t order : split_.complex) take(sharing_.orders[order][ways_[order]], 1);
        if (root < *best_) try_all(0, {});
        return {best_ways_, stopped_ ? *best_ - root : Levels{}};
    }

private:
    void take(const Way& way, std::int64_t sign)
    {
        for (const Need& n : way.needs) room_[n.limit] += sign * n.amount;
    }
    bool has_room() const
    {
        return std::all_of(room_.begin(), room_.end(), [](std::int64_t room) { return room >= 0; });
    }

    // The others assigned around the complex ones as they are; true when that is the best so far.
    bool assign_others()
    {
        --left_;
        const Ways simple = flow();
        Levels sum{};
        for (std::size_t i = 0; i < simple.size(); ++i) ways_[split_.simple[i]] = simple[i];
        for (std::size_t o = 0; o < ways_.size(); ++o) sum = sum + levels_of(sharing_.orders[o][ways_[o]].merit);
        if (best_ && *best_ <= sum) return false;
        best_ = sum;
        best_ways_ = ways_;
        return true;
    }

    void change_one_by_one()
    {
        for (bool better = true; better;) {
            better = false;
            for (const std::size_t order : split_.complex) {
                const std::size_t before = ways_[order];
                for (std::size_t w = 0; w < before && left_ > 0; ++w) {
                    take(sharing_.orders[order][ways_[order]], 1);
                    ways_[order] = w;
                    take(sharing_.orders[order][w], -1);
                    if (has_room() && assign_others()) {
                        better = true;
                        break;
                    }
                    take(sharing_.orders[order][w], 1);
                    ways_[order] = before;
                    take(sharing_.orders[order][before], -1);
                }
            }
        }
    }

    void try_all(std::size_t c, const Levels& sum)
    {
        if (left_-- <= 0) {
            stopped_ = true;
            return;
        }
        const Ways simple = flow();
        const Levels bound = bound_of(simple, c, sum);
        if (*best_ <= bound) return;
        if (c == split_.complex.size()) {
            best_ = bound;
            best_ways_ = ways_;
            for (std::size_t i = 0; i < simple.size(); ++i) best_ways_[split_.simple[i]] = simple[i];
            return;
        }
        const std::size_t order = split_.complex[c];
        for (std::size_t w = 0; w < sharing_.orders[order].size(); ++w) {
            ways_[order] = w;
            take(sharing_.orders[order][w], -1);
            if (has_room()) try_all(c + 1, sum + levels_of(sharing_.orders[order][w].merit));
            take(sharing_.orders[order][w], 1);
        }
    }

    Ways flow() const
    {
        std::vector<std::int64_t> pieces;
        for (const std::int64_t room : room_) pieces.push_back(room / piece);
        return Flow(std::move(pieces), split_.arcs).solve();
    }

    // Of the others assigned, the complex ones from `c` on as if nothing were scarce, and `sum` of those before.
    Levels bound_of(const Ways& simple, std::size_t c, Levels sum) const
    {
        for (std::size_t i = 0; i < simple.size(); ++i) {
            sum = sum + levels_of(sharing_.orders[split_.simple[i]][simple[i]].merit);
        }
        for (std::size_t k = c; k < split_.complex.size(); ++k) sum = sum + least(split_.complex[k]);
        return sum;
    }

    Levels least(std::size_t order) const
    {
        Levels best = levels_of(sharing_.orders[order].front().merit);
        for (const Way& way : sharing_.orders[order]) best = std::min(best, levels_of(way.merit));
        return best;
    }

    const Sharing& sharing_;
    const Split& split_;
    int left_;
    bool stopped_ = false;
    std::vector<std::int64_t> room_;
    Ways ways_, best_ways_;
    std::optional<Levels> best_;
};

} // namespace

std::optional<Ways> assign(const Sharing& sharing)
{
    const auto split = split_up(sharing);
    if (!split || !split->complex.empty()) return std::nullopt;
    return Search(sharing, *split, Ways(sharing.orders.size(), 0), 1).solve().ways;
}

std::optional<Assigned> assign_all(const Sharing& sharing, const Ways& start, int most)
{
    const auto split = split_up(sharing);
    if (!split) return std::nullopt;
    return Search(sharing, *split, start, most).solve();
}

} // namespace stow::planning
