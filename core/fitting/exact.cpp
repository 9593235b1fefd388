#include "core/fitting/exact.h"

#include "core/fitting/bounds.h"

#include <bit>
#include <cmath>
#include <numeric>

namespace stow::fitting {

namespace {

constexpr std::size_t N = most_exact_pieces;
using Coordinate = std::int32_t;
template <class T>
using PerAxis = std::array<std::array<T, N>, 3>;

// Relation bits of a pair i < j: bit a says "i before j along a", bit a + 3 "j before i along a".
using Relations = std::uint8_t;
constexpr Relations all_relations = 0b111111;
using Pieces = std::uint32_t; // a set of them
constexpr Pieces piece_bit(std::size_t piece)
{
    return Pieces{1} << piece;
}
constexpr Relations bit(std::size_t relation)
{
    return static_cast<Relations>(1U << relation);
}
constexpr bool has(std::uint8_t bits, std::size_t number)
{
    return (bits & bit(number)) != 0;
}

constexpr int most_refused = 60; // arrangements that `accept` turns down before the search gives up

struct State {
    PerAxis<Coordinate> earliest{}, latest{}, end{}; // start window and latest end
    PerAxis<Coordinate> least{}, most{};             // extents over the poses left
    PerAxis<std::int64_t> section{};                 // least cross-section across the axis
    std::array<std::uint8_t, N> poses{};
    std::array<std::array<Relations, N>, N> possible{}, holds{}; // for i < j
};

struct Extent { // a piece in one pose
    std::array<Coordinate, 3> side{};
    Coordinate margin = 0;   // kept from the walls along x and y: of the square inscribed in a circle
    Coordinate diameter = 0; // of a circle; 0: a block
};

std::int64_t whole_root(std::int64_t square) // rounded down
{
    auto root = static_cast<std::int64_t>(std::sqrt(static_cast<double>(square)));
    while (root * root > square) --root;
    while ((root + 1) * (root + 1) <= square) ++root;
    return root;
}

Coordinate halved(std::int64_t twice)
{
    return static_cast<Coordinate>(twice >= 0 ? twice / 2 : (twice - 1) / 2);
}

class Search {
public:
    Search(const Load& load, const Space& space, bool relaxed, std::uint64_t most_nodes, Run& run, const Accept& accept)
        : load_(load), run_(run), accept_(accept), relaxed_(relaxed), nodes_left_(most_nodes), n_(load.pieces.size()),
          supported_(space.support != Support::none), strict_(relaxed ? 0 : 1)
    {
        for (std::size_t a = 0; a < 3; ++a) room_[a] = static_cast<Coordinate>(space.side[a]);
        order_pieces();
        shrink_room();
        choose_mirrors();
        states_.resize(64);
    }

    ExactResult solve()
    {
        State root = first_state();
        ExactResult result;
        result.decision = Decision::none;
        if (propagate(root, piece_bit(n_) - 1)) {
            states_[0] = root;
            result.decision = descend(0);
        }
        result.arrangement = std::move(found_);
        result.refused_some = refused_some_;
        return result;
    }

private:
    // Largest first; equal kinds stay together.
    void order_pieces()
    {
        order_.resize(n_);
        std::iota(order_.begin(), order_.end(), std::size_t{0});
        const auto rank = [&](std::size_t p) {
            const std::size_t kind = load_.pieces[p].kind;
            return std::tuple{-product(load_.kinds[kind].poses.front().side), kind, p};
        };
        std::sort(order_.begin(), order_.end(), [&](std::size_t a, std::size_t b) { return rank(a) < rank(b); });
        for (std::size_t i = 0; i < n_; ++i) {
            const Kind& kind = load_.kinds[load_.pieces[order_[i]].kind];
            for (const Pose& pose : kind.poses) {
                Extent extent;
                const bool shrunk = relaxed_ && pose.circle;
                const Inscribed in = inscribed(pose.side[0]);
                for (std::size_t a = 0; a < 3; ++a) {
                    extent.side[a] = static_cast<Coordinate>(shrunk && a < 2 ? in.side : pose.side[a]);
                }
                if (shrunk) {
                    extent.margin = static_cast<Coordinate>(in.margin);
                    extent.diameter = static_cast<Coordinate>(pose.side[0]);
                }
                extents_[i].push_back(extent);
            }
        }
        for (std::size_t i = 1; i < n_; ++i) {
            const Kind& a = load_.kinds[load_.pieces[order_[i - 1]].kind];
            const Kind& b = load_.kinds[load_.pieces[order_[i]].kind];
            const bool same_load = a.milligrams == b.milligrams && a.top_load == b.top_load;
            same_as_before_[i] = a.poses == b.poses && (same_load || !supported_);
        }
    }

    // Each side down to the largest sum of edges that it can hold: more room is never of use to blocks.
    void shrink_room()
    {
        if (relaxed_) return;
        for (std::size_t a = 0; a < 3; ++a) {
            std::vector<bool> reached(static_cast<std::size_t>(room_[a]) + 1, false);
            std::vector<bool> next;
            reached[0] = true;
            for (std::size_t i = 0; i < n_; ++i) {
                next = reached;
                for (const Extent& extent : extents_[i]) {
                    for (Coordinate x = extent.side[a]; x <= room_[a]; ++x) {
                        if (reached[static_cast<std::size_t>(x - extent.side[a])])
                            next[static_cast<std::size_t>(x)] = true;
                    }
                }
                reached.swap(next);
            }
            while (room_[a] > 0 && !reached[static_cast<std::size_t>(room_[a])]) --room_[a];
        }
    }

    // One piece an axis keeps its middle in the lower half. Along x it must not be one of several equal pieces, since
    // those are told apart by their starts along x.
    void choose_mirrors()
    {
        mirror_ = {n_, 0, 0};
        for (std::size_t i = n_; i-- > 0;) {
            const bool twin = same_as_before_[i] || (i + 1 < n_ && same_as_before_[i + 1]);
            if (!twin) mirror_[0] = i;
        }
        // With support, turning an arrangement upside down is no symmetry; up and down then stay apart.
        if (supported_) mirror_[2] = n_;
    }

    State first_state() const
    {
        State s;
        for (std::size_t i = 0; i < n_; ++i) {
            s.poses[i] = static_cast<std::uint8_t>((1U << extents_[i].size()) - 1);
            for (std::size_t a = 0; a < 3; ++a) {
                s.end[a][i] = room_[a];
                s.latest[a][i] = room_[a];
            }
            for (std::size_t j = i + 1; j < n_; ++j) s.possible[i][j] = all_relations;
        }
        return s;
    }

    // Drops poses that no longer fit their windows; false when none is left.
    bool filter_poses(State& s, std::size_t i, Pieces& changed) const
    {
        std::uint8_t left = 0;
        for (std::size_t p = 0; p < extents_[i].size(); ++p) {
            if (!has(s.poses[i], p)) continue;
            bool fits = true;
            for (std::size_t a = 0; a < 3; ++a) {
                const Coordinate side = extents_[i][p].side[a];
                const Coordinate margin = a < 2 ? extents_[i][p].margin : 0;
                const Coordinate start = std::max(s.earliest[a][i], margin);
                fits = fits && start + side <= std::min(s.end[a][i], room_[a] - margin);
                fits = fits && !(mirror_[a] == i && 2 * start + side > room_[a]);
            }
            if (fits) left = static_cast<std::uint8_t>(left | (1U << p));
        }
        if (left == 0) return false;
        if (left == s.poses[i] && s.least[0][i] != 0) return true;
        changed |= piece_bit(i);
        s.poses[i] = left;
        for (std::size_t a = 0; a < 3; ++a) {
            s.least[a][i] = INT32_MAX;
            s.most[a][i] = 0;
            s.section[a][i] = INT64_MAX;
        }
        for (std::size_t p = 0; p < extents_[i].size(); ++p) {
            if (!has(left, p)) continue;
            const auto& side = extents_[i][p].side;
            for (std::size_t a = 0; a < 3; ++a) {
                s.least[a][i] = std::min(s.least[a][i], side[a]);
                s.most[a][i] = std::max(s.most[a][i], side[a]);
                const std::int64_t section = static_cast<std::int64_t>(side[(a + 1) % 3]) * side[(a + 2) % 3];
                s.section[a][i] = std::min(s.section[a][i], section);
            }
        }
        if (const Extent* circle = circle_of(s, i)) {
            for (std::size_t a = 0; a < 2; ++a) {
                s.earliest[a][i] = std::max(s.earliest[a][i], circle->margin);
                s.end[a][i] = std::min(s.end[a][i], room_[a] - circle->margin);
            }
        }
        return true;
    }

    bool tighten_window(State& s, std::size_t i, Pieces& changed) const
    {
        for (std::size_t a = 0; a < 3; ++a) {
            lower(s.latest[a][i], s.end[a][i] - s.least[a][i], i, changed);
            if (mirror_[a] == i) lower(s.latest[a][i], (room_[a] - s.least[a][i] + 1 - strict_) / 2, i, changed);
            lower(s.end[a][i], s.latest[a][i] + s.most[a][i], i, changed);
            if (s.earliest[a][i] > s.latest[a][i]) return false;
        }
        return true;
    }

    static void lower(Coordinate& value, Coordinate to, std::size_t piece, Pieces& changed)
    {
        if (to < value) value = to, changed |= piece_bit(piece);
    }
    static void raise(Coordinate& value, Coordinate to, std::size_t piece, Pieces& changed)
    {
        if (to > value) value = to, changed |= piece_bit(piece);
    }

    // The circle that a piece is known to stand as.
    const Extent* circle_of(const State& s, std::size_t i) const
    {
        if (!relaxed_ || !std::has_single_bit(s.poses[i])) return nullptr;
        const Extent& e = extents_[i][static_cast<std::size_t>(std::countr_zero(s.poses[i]))];
        return e.diameter != 0 ? &e : nullptr;
    }
    bool surely_block(const State& s, std::size_t i) const
    {
        for (std::size_t p = 0; p < extents_[i].size(); ++p) {
            if (has(s.poses[i], p) && extents_[i][p].diameter != 0) return false;
        }
        return true;
    }

    // Least difference of the starts when `first` lies before `second` along axis a. Circles want more than their
    // squares: what the windows do not let them be apart along the other axis they must be apart along this one
    // (Pythagoras, everything doubled, rounded so that it stays a relaxation).
    Coordinate apart(const State& s, std::size_t a, std::size_t first, std::size_t second) const
    {
        const Coordinate blocks = s.least[a][first];
        if (!relaxed_ || a == 2) return blocks;
        const Extent* c1 = circle_of(s, first);
        const Extent* c2 = circle_of(s, second);
        if (c1 == nullptr && c2 == nullptr) return blocks;
        const std::size_t b = 1 - a;
        // Twice the window of a body along the other axis, at its middle for circles and at its two sides for blocks.
        struct Reach {
            std::int64_t low, high; // the low side at its highest is `high`, the high side at its lowest is `low`
        };
        const auto reach = [&](std::size_t i, const Extent* circle) -> Reach {
            const std::int64_t low = std::int64_t{2} * s.earliest[b][i], high = std::int64_t{2} * s.latest[b][i];
            if (circle != nullptr) return {low + circle->side[b], high + circle->side[b]};
            return {low + std::int64_t{2} * s.least[b][i], high};
        };
        if ((c1 == nullptr && !surely_block(s, first)) || (c2 == nullptr && !surely_block(s, second))) return blocks;
        const Reach r1 = reach(first, c1), r2 = reach(second, c2);
        const std::int64_t off = std::max({r1.high - r2.low, r2.high - r1.low, std::int64_t{0}});
        const std::int64_t whole = (c1 != nullptr ? c1->diameter : 0) + (c2 != nullptr ? c2->diameter : 0);
        if (off >= whole) return blocks;
        std::int64_t twice = whole_root(whole * whole - off * off);
        twice += c1 != nullptr ? c1->side[a] : 2 * s.least[a][first];
        twice -= c2 != nullptr ? c2->side[a] : 0;
        return std::max(blocks, halved(twice));
    }

    // The relations of i < j that the windows still allow, and what follows from those that hold or cannot.
    bool filter_pair(State& s, std::size_t i, std::size_t j, Pieces& changed) const
    {
        Relations possible = s.possible[i][j];
        for (std::size_t a = 0; a < 3; ++a) {
            if (s.earliest[a][i] + apart(s, a, i, j) > s.latest[a][j]) possible = without(possible, a);
            if (s.earliest[a][j] + apart(s, a, j, i) > s.latest[a][i]) possible = without(possible, a + 3);
        }
        if (possible == 0 || (s.holds[i][j] & ~possible) != 0) return false;
        if (std::has_single_bit(possible)) s.holds[i][j] = possible;
        s.possible[i][j] = possible;
        for (std::size_t a = 0; a < 3; ++a) {
            follow(s, has(possible, a), has(s.holds[i][j], a), a, i, j, changed);
            follow(s, has(possible, a + 3), has(s.holds[i][j], a + 3), a, j, i, changed);
        }
        return true;
    }
    static Relations without(Relations r, std::size_t relation) { return static_cast<Relations>(r & ~bit(relation)); }

    // "first before second along a" holds, or it cannot: then second starts before first ends.
    void follow(State& s, bool possible, bool holds, std::size_t a, std::size_t first, std::size_t second,
                Pieces& changed) const
    {
        if (holds) {
            const Coordinate distance = apart(s, a, first, second);
            raise(s.earliest[a][second], s.earliest[a][first] + distance, second, changed);
            lower(s.latest[a][first], s.latest[a][second] - distance, first, changed);
            lower(s.end[a][first], s.latest[a][second], first, changed);
        } else if (!possible) {
            lower(s.latest[a][second], s.end[a][first] - strict_, second, changed);
            raise(s.earliest[a][first], s.earliest[a][second] + strict_ - s.most[a][first], first, changed);
        }
    }

    // Pieces that must all cover one coordinate need room side by side there.
    bool sections_fit(const State& s) const
    {
        for (std::size_t a = 0; a < 3; ++a) {
            const std::int64_t area = static_cast<std::int64_t>(room_[(a + 1) % 3]) * room_[(a + 2) % 3];
            for (std::size_t i = 0; i < n_; ++i) {
                const Coordinate at = s.latest[a][i];
                if (at >= s.earliest[a][i] + s.least[a][i]) continue;
                std::int64_t sum = 0;
                for (std::size_t j = 0; j < n_; ++j) {
                    if (s.latest[a][j] <= at && at < s.earliest[a][j] + s.least[a][j]) sum += s.section[a][j];
                }
                if (sum > area) return false;
            }
        }
        return true;
    }

    // Pieces that pairwise can only be apart along one axis must queue on it. Pieces that pairwise cannot be apart
    // along an axis all cover one coordinate of it (Helly), so their sections lie side by side there.
    bool cliques_fit(const State& s) const
    {
        for (std::size_t a = 0; a < 3; ++a) {
            const auto along = static_cast<Relations>(0b001001U << a);
            std::array<Pieces, N> queue{}, abreast{};
            for (std::size_t i = 0; i < n_; ++i) {
                for (std::size_t j = i + 1; j < n_; ++j) {
                    const Relations possible = s.possible[i][j];
                    if ((possible & ~along) == 0) queue[i] |= piece_bit(j), queue[j] |= piece_bit(i);
                    if ((possible & along) == 0) abreast[i] |= piece_bit(j), abreast[j] |= piece_bit(i);
                }
            }
            const std::int64_t area = static_cast<std::int64_t>(room_[(a + 1) % 3]) * room_[(a + 2) % 3];
            for (std::size_t i = 0; i < n_; ++i) {
                if (queue[i] != 0 && greedy_clique(queue, i, s.least[a]) > room_[a]) return false;
                if (abreast[i] != 0 && greedy_clique(abreast, i, s.section[a]) > area) return false;
            }
        }
        return true;
    }

    // Weight of a clique around `first`; the larger pieces come first in the order of the search.
    template <class Weight>
    std::int64_t greedy_clique(const std::array<Pieces, N>& adjacent, std::size_t first,
                               const std::array<Weight, N>& weight) const
    {
        std::int64_t sum = weight[first];
        Pieces candidates = adjacent[first];
        while (candidates != 0) {
            const auto next = static_cast<std::size_t>(std::countr_zero(candidates));
            sum += weight[next];
            candidates &= adjacent[next];
        }
        return sum;
    }

    // Everything that follows from the pieces whose windows or poses changed.
    bool propagate(State& s, Pieces changed) const
    {
        while (changed != 0) {
            Pieces next = 0;
            for (std::size_t i = 0; i < n_; ++i) {
                if ((changed & piece_bit(i)) == 0) continue;
                if (!filter_poses(s, i, next) || !tighten_window(s, i, next)) return false;
                if (i > 0 && same_as_before_[i]) keep_order(s, i - 1, i, next);
                if (i + 1 < n_ && same_as_before_[i + 1]) keep_order(s, i, i + 1, next);
            }
            changed |= next;
            next = 0;
            for (std::size_t i = 0; i < n_; ++i) {
                const bool all = (changed & piece_bit(i)) != 0;
                for (std::size_t j = i + 1; j < n_; ++j) {
                    if (!all && (changed & piece_bit(j)) == 0) continue;
                    if (!filter_pair(s, i, j, next)) return false;
                }
            }
            changed = next;
        }
        return sections_fit(s) && cliques_fit(s);
    }
    // Equal pieces are told apart by their starts along x.
    static void keep_order(State& s, std::size_t i, std::size_t j, Pieces& changed)
    {
        raise(s.earliest[0][j], s.earliest[0][i], j, changed);
        lower(s.latest[0][i], s.latest[0][j], i, changed);
    }

    static bool overlap(const State& s, std::size_t i, std::size_t j)
    {
        for (std::size_t a = 0; a < 3; ++a) {
            if (s.earliest[a][i] + s.least[a][i] <= s.earliest[a][j]) return false;
            if (s.earliest[a][j] + s.least[a][j] <= s.earliest[a][i]) return false;
        }
        return true;
    }

    struct Branch {
        std::size_t i = N, j = N; // a pair, or the poses of i when j is N
        int weight = 1 << 30;
        std::size_t axis = 3; // below 3: halve the window of i along it
    };

    // Where to branch: among pairs that overlap at their earliest places and pieces not yet turned.
    Branch choose(const State& s) const
    {
        Branch best;
        for (std::size_t i = 0; i < n_; ++i) {
            const int ways = std::popcount(s.poses[i]);
            const int level = static_cast<int>(i);
            if (ways > 1 && key(level, ways) < best.weight) best = {i, N, key(level, ways), 3};
            for (std::size_t j = i + 1; j < n_; ++j) {
                if (s.holds[i][j] != 0 || !overlap(s, i, j)) continue;
                const int relations = std::popcount(s.possible[i][j]);
                const int k = key(static_cast<int>(j), relations);
                if (k < best.weight) best = {i, j, k, 3};
            }
        }
        return best;
    }
    // The larger pieces are settled among themselves before the next one is looked at: four to ten times fewer nodes
    // than
    // taking the fewest ways anywhere.
    static int key(int level, int ways) { return level * 8 + ways; }

    // After `accept` turned an arrangement down: any pair not yet decided.
    Branch choose_any_pair(const State& s) const
    {
        for (std::size_t j = 1; j < n_; ++j) {
            for (std::size_t i = 0; i < j; ++i) {
                if (s.holds[i][j] == 0) return {i, j, 0, 3};
            }
        }
        return {};
    }

    Arrangement arrangement_of(const State& s) const
    {
        Arrangement spots(n_);
        for (std::size_t i = 0; i < n_; ++i) {
            const auto pose = static_cast<std::uint32_t>(std::countr_zero(s.poses[i]));
            Spot& spot = spots[order_[i]];
            spot.pose = pose;
            const Extent& extent = extents_[i][pose];
            for (std::size_t a = 0; a < 3; ++a) {
                spot.at[a] = s.earliest[a][i] - (a < 2 ? extent.margin : 0);
                spot.side[a] = extent.diameter != 0 && a < 2 ? extent.diameter : extent.side[a];
            }
        }
        return spots;
    }

    Decision descend(std::size_t depth)
    {
        if (!run_.go_on() || --nodes_left_ == 0) return Decision::stopped;
        if (states_.size() < depth + 2) states_.resize(2 * states_.size());
        Branch branch = choose(states_[depth]);
        if (branch.i == N && relaxed_) branch = choose_circles(states_[depth]);
        if (branch.i == N) {
            found_ = arrangement_of(states_[depth]);
            if (accept_(found_)) return Decision::found;
            // No proof can come of it any more; look on for a while only, since a look costs as much as many nodes.
            refused_some_ = true;
            if (++refused_ == most_refused || !run_.go_on(20)) return Decision::stopped;
            branch = choose_any_pair(states_[depth]);
            if (branch.i == N) return Decision::none;
        }
        if (branch.axis != 3) return branch_window(depth, branch.i, branch.axis);
        return branch.j == N ? branch_poses(depth, branch.i) : branch_pair(depth, branch.i, branch.j);
    }

    // Squares are apart but some circle overlaps: take up that pair, or halve the widest window of the two.
    Branch choose_circles(const State& s) const
    {
        for (std::size_t j = 1; j < n_; ++j) {
            for (std::size_t i = 0; i < j; ++i) {
                if (!round_overlap(s, i, j)) continue;
                if (s.holds[i][j] == 0) return {i, j, 0, 3};
                Branch widest;
                Coordinate width = 1; // no narrower: the arrangement is then judged as it is
                for (const std::size_t p : {i, j}) {
                    for (std::size_t a = 0; a < 2; ++a) {
                        const Coordinate w = s.latest[a][p] - s.earliest[a][p];
                        if (w > width) width = w, widest = {p, N, 0, a};
                    }
                }
                return widest;
            }
        }
        return {};
    }

    // Do the bodies themselves overlap at their earliest places?
    bool round_overlap(const State& s, std::size_t i, std::size_t j) const
    {
        const Extent* c1 = circle_of(s, i);
        const Extent* c2 = circle_of(s, j);
        if (c1 == nullptr && c2 == nullptr) return false;
        if (s.earliest[2][i] + s.least[2][i] <= s.earliest[2][j]) return false;
        if (s.earliest[2][j] + s.least[2][j] <= s.earliest[2][i]) return false;
        std::array<std::int64_t, 2> off{}; // doubled
        for (std::size_t a = 0; a < 2; ++a) {
            const std::int64_t low1 = std::int64_t{2} * s.earliest[a][i], low2 = std::int64_t{2} * s.earliest[a][j];
            const auto low = [&](std::int64_t at, const Extent* c) { return c != nullptr ? at + c->side[a] : at; };
            const auto high = [&](std::int64_t at, const Extent* c, std::size_t p) {
                return c != nullptr ? at + c->side[a] : at + std::int64_t{2} * s.least[a][p];
            };
            off[a] = std::max({low(low2, c2) - high(low1, c1, i), low(low1, c1) - high(low2, c2, j), std::int64_t{0}});
        }
        const std::int64_t whole = (c1 != nullptr ? c1->diameter : 0) + (c2 != nullptr ? c2->diameter : 0);
        return off[0] * off[0] + off[1] * off[1] < whole * whole;
    }

    Decision branch_window(std::size_t depth, std::size_t i, std::size_t a)
    {
        const Coordinate middle =
            states_[depth].earliest[a][i] + (states_[depth].latest[a][i] - states_[depth].earliest[a][i]) / 2;
        for (const bool lower_half : {true, false}) {
            State& child = states_[depth + 1];
            child = states_[depth];
            if (lower_half)
                child.latest[a][i] = middle;
            else
                child.earliest[a][i] = middle;
            if (!propagate(child, piece_bit(i))) continue;
            const Decision decision = descend(depth + 1);
            if (decision != Decision::none) return decision;
        }
        return Decision::none;
    }

    Decision branch_poses(std::size_t depth, std::size_t i)
    {
        const std::uint8_t poses = states_[depth].poses[i];
        for (std::size_t p = 0; p < extents_[i].size(); ++p) {
            if (!has(poses, p)) continue;
            State& child = states_[depth + 1];
            child = states_[depth];
            child.poses[i] = static_cast<std::uint8_t>(1U << p);
            child.least[0][i] = 0; // to have the extents worked out anew
            if (!propagate(child, piece_bit(i))) continue;
            const Decision decision = descend(depth + 1);
            if (decision != Decision::none) return decision;
        }
        return Decision::none;
    }

    // One child a relation; those tried before it are taken as false, so no arrangement is met twice.
    Decision branch_pair(std::size_t depth, std::size_t i, std::size_t j)
    {
        std::array<std::pair<Coordinate, std::size_t>, 6> ways;
        std::size_t count = 0;
        {
            const State& s = states_[depth];
            for (std::size_t r = 0; r < 6; ++r) {
                if (!has(s.possible[i][j], r)) continue;
                const std::size_t a = r % 3, first = r < 3 ? i : j, second = r < 3 ? j : i;
                const Coordinate slack = s.latest[a][second] - s.earliest[a][first] - s.least[a][first];
                // The way with most room to spare first.
                std::size_t k = count++;
                for (; k > 0 && ways[k - 1].first > -slack; --k) ways[k] = ways[k - 1];
                ways[k] = {-slack, r};
            }
        }
        Relations tried = 0;
        for (std::size_t k = 0; k < count; ++k) {
            const Relations relation = bit(ways[k].second);
            State& child = states_[depth + 1];
            child = states_[depth];
            child.possible[i][j] = static_cast<Relations>(child.possible[i][j] & ~tried);
            child.holds[i][j] = relation;
            tried = static_cast<Relations>(tried | relation);
            if (!propagate(child, piece_bit(i) | piece_bit(j))) continue;
            const Decision decision = descend(depth + 1);
            if (decision != Decision::none) return decision;
        }
        return Decision::none;
    }

    const Load& load_;
    Run& run_;
    const Accept& accept_;
    bool relaxed_;
    std::uint64_t nodes_left_; // 0 at first: wraps round, no bound
    std::size_t n_;
    bool supported_;
    Coordinate strict_; // starts are whole numbers: "before" means at least 1; not so for circles
    std::array<Coordinate, 3> room_{};
    std::vector<std::size_t> order_; // position in the search to piece
    std::array<std::vector<Extent>, N> extents_;
    std::array<bool, N> same_as_before_{};
    std::array<std::size_t, 3> mirror_{};
    std::vector<State> states_;
    Arrangement found_;
    bool refused_some_ = false;
    int refused_ = 0;
};

} // namespace

ExactResult search_exactly(const Load& load, const Space& space, bool relaxed, std::uint64_t most_nodes, Run& run,
                           const Accept& accept)
{
    return Search(load, space, relaxed, most_nodes, run, accept).solve();
}

} // namespace stow::fitting
