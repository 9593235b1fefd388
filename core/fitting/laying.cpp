#include "core/fitting/laying.h"

#include <algorithm>
#include <cmath>

namespace stow::fitting {

namespace {

struct Cuboid {
    Coords low{}, high{};
};

bool overlap(const Cuboid& a, const Cuboid& b)
{
    return a.low[0] < b.high[0] && b.low[0] < a.high[0] && a.low[1] < b.high[1] && b.low[1] < a.high[1] &&
           a.low[2] < b.high[2] && b.low[2] < a.high[2];
}
bool holds(const Cuboid& outer, const Cuboid& inner)
{
    return outer.low[0] <= inner.low[0] && inner.high[0] <= outer.high[0] && outer.low[1] <= inner.low[1] &&
           inner.high[1] <= outer.high[1] && outer.low[2] <= inner.low[2] && inner.high[2] <= outer.high[2];
}
std::int64_t volume_of(const Cuboid& c)
{
    return std::int64_t{c.high[0] - c.low[0]} * (c.high[1] - c.low[1]) * (c.high[2] - c.low[2]);
}

struct Residual { // a largest free cuboid, overlapping others
    Cuboid free;
    std::array<bool, 3> far{}; // which of its corners is nearest to a corner of the yard
    std::int32_t distance = 0; // from there
};

struct Stand { // a partial laying
    std::vector<Residual> residuals;
    std::vector<Cuboid> taken;
    std::vector<std::uint16_t> left;   // pieces of each goods
    std::vector<std::uint16_t> usable; // ranks of the clusters that may still come, ascending
    Laying laying;
    std::int64_t milligrams = 0;
};

struct Choice {
    std::size_t cluster = 0;
    double merit = 0;
};

// What the merit weighs; found by trial on the published classes (tests/bench/RESULTS.md).
constexpr double few_pieces = 0.2;
constexpr double near_enough = 0.04; // of the yard's side: a face that near another touches it

class Layer {
public:
    Layer(const Yard& yard, const std::vector<Cluster>& clusters, Run& run,
          const std::function<bool(const Laying&)>& better)
        : yard_(yard), clusters_(clusters), run_(run), better_(better)
    {
        double most_pieces = 1;
        for (const Cluster& c : clusters) most_pieces = std::max(most_pieces, static_cast<double>(c.pieces));
        order_.resize(clusters.size());
        std::vector<std::size_t> by(clusters.size());
        std::vector<double> merit(clusters.size());
        for (std::size_t i = 0; i < clusters.size(); ++i) {
            by[i] = i;
            merit[i] = static_cast<double>(clusters[i].volume) * std::pow(clusters[i].pieces, -few_pieces);
        }
        std::stable_sort(by.begin(), by.end(), [&](std::size_t a, std::size_t b) { return merit[a] > merit[b]; });
        for (std::size_t k = 0; k < by.size(); ++k) {
            order_[k] = ranked(clusters[by[k]], static_cast<std::uint32_t>(by[k]), merit[by[k]]);
        }
        for (std::size_t a = 0; a < 3; ++a) {
            near_[a] = static_cast<Coord>(near_enough * yard.room[a]);
            fill_reach(a);
        }
    }

    void search()
    {
        Stand root;
        Residual whole;
        whole.free.high = yard_.room;
        root.residuals.push_back(whole);
        for (std::size_t k = 0; k < order_.size(); ++k) root.usable.push_back(static_cast<std::uint16_t>(k));
        for (const Yard::Goods& g : yard_.goods) root.left.push_back(static_cast<std::uint16_t>(g.count));
        sift(root, ~std::uint64_t{0});
        Stand greedy = root;
        if (judge(greedy) < 0) return;
        for (double width = 1;; width = std::max(width * 1.42, width + 1)) {
            left_out_ = false;
            if (!sweep(root, static_cast<std::size_t>(width)) || !left_out_) return;
        }
    }

private:
    struct Ranked { // a cluster as the inner loops see it
        std::uint64_t packed;
        std::uint64_t goods; // a bit for each goods of it, by number modulo 64
        double potential;    // the most its merit can be
        std::uint32_t cluster;
        std::uint32_t contents; // how many of `content` are used; more are looked up
        std::array<Cluster::Content, 4> content;
    };
    struct Touching { // what lies against one face of a residual, in the two other axes
        bool whole = false;
        std::vector<std::array<Coord, 4>> parts;
    };
    struct Successor {
        std::size_t parent;
        std::size_t cluster;
        std::int64_t promise; // volume of the greedy end
        std::int64_t volume;  // laid so far
    };

    // Every length that pieces in a row can reach along an axis, as the largest not above each length.
    void fill_reach(std::size_t axis)
    {
        const auto length = static_cast<std::size_t>(yard_.room[axis]);
        std::vector<bool> reached(length + 1, false);
        reached[0] = true;
        for (const Yard::Goods& g : yard_.goods) {
            std::vector<Coord> sides;
            for (const Yard::Way& way : g.ways) sides.push_back(way.side[axis]);
            std::sort(sides.begin(), sides.end());
            sides.erase(std::unique(sides.begin(), sides.end()), sides.end());
            for (const Coord side : sides) {
                std::vector<int> used(length + 1, 0); // of this side, at most the count
                for (std::size_t x = static_cast<std::size_t>(side); x <= length; ++x) {
                    const std::size_t before = x - static_cast<std::size_t>(side);
                    if (reached[x] || !reached[before] || used[before] >= g.count) continue;
                    reached[x] = true;
                    used[x] = used[before] + 1;
                }
            }
        }
        reach_[axis].assign(length + 1, 0);
        for (std::size_t x = 1; x <= length; ++x)
            reach_[axis][x] = reached[x] ? static_cast<Coord>(x) : reach_[axis][x - 1];
    }

    // One pass of the beam; false when the run has stopped.
    bool sweep(const Stand& root, std::size_t width)
    {
        std::vector<Stand> stands{root}, next;
        std::vector<Successor> successors;
        std::vector<Choice> choices;
        while (!stands.empty()) {
            successors.clear();
            for (std::size_t s = 0; s < stands.size(); ++s) {
                const std::size_t where = choose_residual(stands[s]);
                if (where == none) continue;
                choose_clusters(stands[s], stands[s].residuals[where], width, choices);
                left_out_ = left_out_ || choices.size() == width;
                for (const Choice& choice : choices) {
                    scratch_ = stands[s];
                    put(scratch_, scratch_.residuals[where], choice.cluster);
                    const std::int64_t volume = scratch_.laying.volume;
                    const std::int64_t promise = judge(scratch_);
                    if (promise < 0) return false;
                    successors.push_back({s, choice.cluster, promise, volume});
                }
            }
            std::stable_sort(successors.begin(), successors.end(),
                             [](const Successor& a, const Successor& b) { return a.promise > b.promise; });
            next.clear();
            left_out_ = left_out_ || successors.size() > width;
            for (std::size_t k = 0; k < successors.size() && next.size() < width; ++k) {
                const Successor& s = successors[k];
                // The same laying reached in another order promises the same.
                const bool again =
                    std::any_of(successors.begin(), successors.begin() + static_cast<std::ptrdiff_t>(k),
                                [&](const Successor& o) { return o.promise == s.promise && o.volume == s.volume; });
                if (again) continue;
                Stand child = stands[s.parent];
                const std::size_t where = choose_residual(child);
                put(child, child.residuals[where], s.cluster);
                next.push_back(std::move(child));
            }
            stands.swap(next);
        }
        return true;
    }

    // Lays on greedily to the end and tells of an improvement. Negative when the run has stopped.
    std::int64_t judge(Stand& stand)
    {
        std::uint64_t steps = 1;
        for (;;) {
            const std::size_t where = choose_residual(stand);
            if (where == none) break;
            const Choice choice = best_cluster(stand, stand.residuals[where]);
            put(stand, stand.residuals[where], choice.cluster);
            ++steps;
        }
        if (!run_.go_on(steps)) return -1;
        if (stand.laying.volume > best_ || stand.laying.pieces == yard_.pieces) {
            best_ = stand.laying.volume;
            if (better_(stand.laying)) return -1;
        }
        return stand.laying.volume;
    }

    static constexpr std::size_t none = SIZE_MAX;

    // The residual nearest to a corner, the larger of two; those that hold nothing any more are dropped.
    std::size_t choose_residual(Stand& stand) const
    {
        for (;;) {
            std::size_t best = none;
            for (std::size_t r = 0; r < stand.residuals.size(); ++r) {
                if (best == none || nearer(stand.residuals[r], stand.residuals[best])) best = r;
            }
            if (best == none || of_use(stand, stand.residuals[best].free)) return best;
            stand.residuals[best] = stand.residuals.back();
            stand.residuals.pop_back();
        }
    }
    static bool nearer(const Residual& a, const Residual& b)
    {
        if (a.distance != b.distance) return a.distance < b.distance;
        const std::int64_t va = volume_of(a.free), vb = volume_of(b.free);
        if (va != vb) return va > vb;
        return std::tie(a.free.low, a.free.high) < std::tie(b.free.low, b.free.high);
    }

    bool of_use(const Stand& stand, const Cuboid& free) const
    {
        const std::uint64_t room =
            packed_sides({free.high[0] - free.low[0], free.high[1] - free.low[1], free.high[2] - free.low[2]});
        for (std::size_t g = 0; g < yard_.goods.size(); ++g) {
            if (stand.left[g] == 0 || too_heavy(stand, yard_.goods[g].milligrams)) continue;
            for (const Yard::Way& way : yard_.goods[g].ways) {
                if (packed_within(packed_sides(way.side), room)) return true;
            }
        }
        return false;
    }
    bool too_heavy(const Stand& stand, std::int64_t milligrams) const
    {
        return yard_.most_milligrams && stand.milligrams + milligrams > *yard_.most_milligrams;
    }

    static Ranked ranked(const Cluster& c, std::uint32_t index, double potential)
    {
        Ranked r{c.packed, 0, potential, index, static_cast<std::uint32_t>(c.content.size()), {}};
        for (std::size_t k = 0; k < c.content.size(); ++k) {
            r.goods |= 1ULL << (c.content[k].goods % 64U);
            if (k < r.content.size()) r.content[k] = c.content[k];
        }
        return r;
    }

    bool there(const Stand& stand, const Ranked& r) const
    {
        const std::size_t inlined = std::min<std::size_t>(r.contents, r.content.size());
        for (std::size_t k = 0; k < inlined; ++k) {
            if (r.content[k].count > stand.left[r.content[k].goods]) return false;
        }
        const std::vector<Cluster::Content>& all = clusters_[r.cluster].content;
        for (std::size_t k = inlined; k < all.size(); ++k) {
            if (all[k].count > stand.left[all[k].goods]) return false;
        }
        return !yard_.most_milligrams || !too_heavy(stand, clusters_[r.cluster].milligrams);
    }

    // Drops the clusters that cannot come any more: of goods `used`, too large for every residual, too heavy.
    void sift(Stand& stand, std::uint64_t used) const
    {
        Coords widest{};
        for (const Residual& r : stand.residuals) {
            for (std::size_t a = 0; a < 3; ++a) widest[a] = std::max(widest[a], r.free.high[a] - r.free.low[a]);
        }
        const std::uint64_t room = packed_sides(widest);
        std::size_t kept = 0;
        for (const std::uint16_t rank : stand.usable) {
            const Ranked& r = order_[rank];
            if (!packed_within(r.packed, room)) continue;
            if (((r.goods & used) != 0 || yard_.most_milligrams) && !there(stand, r)) continue;
            stand.usable[kept++] = rank;
        }
        stand.usable.resize(kept);
    }

    // From here on the usable ones can lie in a residual of this volume.
    std::vector<std::uint16_t>::const_iterator first_usable(const Stand& stand, std::int64_t volume) const
    {
        return std::partition_point(stand.usable.begin(), stand.usable.end(), [&](std::uint16_t rank) {
            return order_[rank].potential > static_cast<double>(volume);
        });
    }

    Choice best_cluster(const Stand& stand, const Residual& r)
    {
        look_around(stand, r);
        Choice best;
        best.merit = -1;
        const std::uint64_t room = packed_sides(room_);
        for (auto k = first_usable(stand, volume_of(r.free)); k != stand.usable.end(); ++k) {
            const Ranked& ranked = order_[*k];
            if (ranked.potential <= best.merit) break;
            if (!packed_within(ranked.packed, room)) continue;
            const double merit = merit_of(clusters_[ranked.cluster].side, r, ranked.potential, best.merit);
            if (merit > best.merit) best = {ranked.cluster, merit};
        }
        return best;
    }

    // The `width` best, best first.
    void choose_clusters(const Stand& stand, const Residual& r, std::size_t width, std::vector<Choice>& choices)
    {
        look_around(stand, r);
        choices.clear();
        const auto better = [](const Choice& a, const Choice& b) {
            return a.merit != b.merit ? a.merit > b.merit : a.cluster < b.cluster;
        };
        const std::uint64_t room = packed_sides(room_);
        for (auto k = first_usable(stand, volume_of(r.free)); k != stand.usable.end(); ++k) {
            const double least = choices.size() < width ? -1 : choices.front().merit; // a heap: the worst in front
            const Ranked& ranked = order_[*k];
            if (ranked.potential <= least) break;
            if (!packed_within(ranked.packed, room)) continue;
            const Choice choice{ranked.cluster, merit_of(clusters_[ranked.cluster].side, r, ranked.potential, least)};
            if (choices.size() == width) {
                if (!better(choice, choices.front())) continue;
                std::pop_heap(choices.begin(), choices.end(), better);
                choices.pop_back();
            }
            choices.push_back(choice);
            std::push_heap(choices.begin(), choices.end(), better);
        }
        std::sort(choices.begin(), choices.end(), better);
    }

    // What lies against the six faces of a residual.
    void look_around(const Stand& stand, const Residual& r)
    {
        for (std::size_t a = 0; a < 3; ++a) {
            room_[a] = r.free.high[a] - r.free.low[a];
            const std::size_t b = (a + 1) % 3, c = (a + 2) % 3;
            for (const bool far : {false, true}) {
                Touching& touching = around_[2 * a + (far ? 1U : 0U)];
                touching.parts.clear();
                const Coord plane = far ? r.free.high[a] : r.free.low[a];
                touching.whole = far ? plane + near_[a] >= yard_.room[a] : plane <= near_[a];
                if (touching.whole) continue;
                for (const Cuboid& t : stand.taken) {
                    const Coord off = far ? t.low[a] - plane : plane - t.high[a];
                    if (off < 0 || off > near_[a]) continue;
                    const std::array<Coord, 4> part{std::max(t.low[b], r.free.low[b]) - r.free.low[b],
                                                    std::min(t.high[b], r.free.high[b]) - r.free.low[b],
                                                    std::max(t.low[c], r.free.low[c]) - r.free.low[c],
                                                    std::min(t.high[c], r.free.high[c]) - r.free.low[c]};
                    if (part[0] < part[1] && part[2] < part[3]) touching.parts.push_back(part);
                }
            }
        }
    }

    double merit_of(const Coords& side, const Residual& r, double potential, double least) const
    {
        // What cannot be used any more behind, beside and above it.
        double used = 1, whole = 1;
        for (std::size_t a = 0; a < 3; ++a) {
            used *= side[a] + reach_[a][static_cast<std::size_t>(room_[a] - side[a])];
            whole *= room_[a];
        }
        double merit = potential * used / whole;
        if (merit <= least) return merit;
        // Share of its surface that touches something.
        std::int64_t touched = 0, surface = 0;
        for (std::size_t a = 0; a < 3; ++a) {
            const std::size_t b = (a + 1) % 3, c = (a + 2) % 3;
            const std::int64_t face = std::int64_t{side[b]} * side[c];
            surface += 2 * face;
            const bool reaches = room_[a] - side[a] <= near_[a];
            for (const bool far : {false, true}) {
                if (far != r.far[a] && !reaches) continue;
                const Touching& touching = around_[2 * a + (far ? 1U : 0U)];
                if (touching.whole) {
                    touched += face;
                    continue;
                }
                const Coord b0 = r.far[b] ? room_[b] - side[b] : 0, b1 = b0 + side[b];
                const Coord c0 = r.far[c] ? room_[c] - side[c] : 0, c1 = c0 + side[c];
                for (const std::array<Coord, 4>& part : touching.parts) {
                    const Coord u = std::min(part[1], b1) - std::max(part[0], b0);
                    const Coord v = std::min(part[3], c1) - std::max(part[2], c0);
                    if (u > 0 && v > 0) touched += std::int64_t{u} * v;
                }
            }
        }
        const double contact = static_cast<double>(touched) / static_cast<double>(surface);
        merit *= yard_.supported ? contact * contact : contact * contact * contact;
        return merit;
    }

    void put(Stand& stand, const Residual r, std::size_t index)
    {
        const Cluster& cluster = clusters_[index];
        Cuboid body;
        const Coords& side = cluster.side;
        for (std::size_t a = 0; a < 3; ++a) {
            body.low[a] = r.far[a] ? r.free.high[a] - side[a] : r.free.low[a];
            body.high[a] = body.low[a] + side[a];
        }
        for (const Cluster::Content& part : cluster.content) {
            stand.left[part.goods] = static_cast<std::uint16_t>(stand.left[part.goods] - part.count);
        }
        std::uint64_t used = 0;
        for (const Cluster::Content& part : cluster.content) used |= 1ULL << (part.goods % 64U);
        stand.milligrams += cluster.milligrams;
        stand.laying.laid.push_back({index, body.low});
        stand.laying.volume += cluster.volume;
        stand.laying.pieces += cluster.pieces;
        stand.taken.push_back(body);
        cut(stand, body, cluster);
        sift(stand, used);
    }

    // Takes `body` out of the residuals.
    void cut(Stand& stand, const Cuboid& body, const Cluster& cluster)
    {
        parts_.clear();
        std::size_t kept = 0;
        for (std::size_t k = 0; k < stand.residuals.size(); ++k) {
            const Cuboid free = stand.residuals[k].free;
            if (!overlap(free, body)) {
                if (kept != k) stand.residuals[kept] = stand.residuals[k];
                ++kept;
                continue;
            }
            for (std::size_t a = 0; a < 3; ++a) {
                if (free.low[a] < body.low[a]) {
                    parts_.push_back(free);
                    parts_.back().high[a] = body.low[a];
                }
                if (body.high[a] < free.high[a]) {
                    Cuboid part = free;
                    part.low[a] = body.high[a];
                    if (a == 2 && yard_.supported && !onto_top(part, body, cluster)) continue;
                    parts_.push_back(part);
                }
            }
        }
        stand.residuals.resize(kept);
        for (std::size_t k = 0; k < parts_.size(); ++k) {
            const Cuboid& part = parts_[k];
            if (!of_use(stand, part)) continue;
            const auto covers = [&](const Residual& other) { return holds(other.free, part); };
            if (std::any_of(stand.residuals.begin(), stand.residuals.begin() + static_cast<std::ptrdiff_t>(kept),
                            covers))
                continue;
            bool inside = false;
            for (std::size_t o = 0; o < parts_.size() && !inside; ++o) {
                if (o == k || !holds(parts_[o], part)) continue;
                inside = !holds(part, parts_[o]) || o < k; // of two equal ones the first stays
            }
            if (!inside) stand.residuals.push_back(residual(part));
        }
    }

    // With support, what lies above rests on the flat part of the top only.
    static bool onto_top(Cuboid& part, const Cuboid& body, const Cluster& cluster)
    {
        for (std::size_t a = 0; a < 2; ++a) {
            part.low[a] = std::max(part.low[a], body.low[a] + cluster.top[a]);
            part.high[a] = std::min(part.high[a], body.low[a] + cluster.top[a + 2]);
            if (part.low[a] >= part.high[a]) return false;
        }
        return true;
    }

    Residual residual(const Cuboid& free) const
    {
        Residual r;
        r.free = free;
        for (std::size_t a = 0; a < 3; ++a) {
            const Coord near = free.low[a], far = yard_.room[a] - free.high[a];
            r.far[a] = far < near && !(a == 2 && yard_.supported);
            r.distance += r.far[a] ? far : near;
        }
        return r;
    }

    const Yard& yard_;
    const std::vector<Cluster>& clusters_;
    Run& run_;
    const std::function<bool(const Laying&)>& better_;
    std::vector<Ranked> order_; // most promising first
    std::array<std::vector<Coord>, 3> reach_;
    Coords near_{};
    std::int64_t best_ = -1;
    bool left_out_ = false; // the last sweep did not look at every branch

    Coords room_{}; // of the residual last looked at
    std::array<Touching, 6> around_;
    std::vector<Cuboid> parts_;
    Stand scratch_;
};

} // namespace

void lay(const Yard& yard, const std::vector<Cluster>& clusters, Run& run,
         const std::function<bool(const Laying&)>& better)
{
    Layer(yard, clusters, run, better).search();
}

} // namespace stow::fitting
