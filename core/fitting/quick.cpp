#include "core/fitting/quick.h"

#include "core/fitting/dice.h"

#include <limits>
#include <numeric>

namespace stow::fitting {

namespace {

struct Place { // an idea of a good place: axes in order of importance, near ends or near starts
    std::array<std::size_t, 3> axes{2, 1, 0};
    enum class Mode { ends, starts, contact } mode = Mode::ends;
};

constexpr std::array<std::array<std::size_t, 3>, 6> axis_orders{
    {{2, 1, 0}, {2, 0, 1}, {0, 1, 2}, {1, 0, 2}, {0, 2, 1}, {1, 2, 0}}};

struct Put { // a piece that has its place
    Sides low, high;
    std::size_t piece;
    std::uint32_t pose;
    bool circle, lies_round;
};

class Bench {
public:
    Bench(const Load& load, const Space& space) : load_(load), space_(space)
    {
        for (const Kind& kind : load.kinds) limited_ = limited_ || kind.top_load.has_value();
        limited_ = limited_ && space.support != Support::none;
    }

    // Puts the pieces down one after the other; false when one finds no place.
    bool attempt(const std::vector<std::size_t>& order, const Place& idea, Run& run)
    {
        put_.clear();
        contacts_.clear();
        carried_.clear();
        points_.assign(1, Corner{});
        for (const std::size_t piece : order) {
            if (!put_down(piece, idea, run)) return false;
        }
        return true;
    }

    Arrangement arrangement() const
    {
        Arrangement spots(load_.pieces.size());
        for (const Put& p : put_) {
            spots[p.piece] = {p.low, {p.high[0] - p.low[0], p.high[1] - p.low[1], p.high[2] - p.low[2]}, p.pose};
        }
        return spots;
    }

private:
    struct Contact {
        std::size_t upper, lower;
        Units area;
    };
    using Score = std::array<Units, 4>;
    struct Corner { // a place to put something
        Sides at{};
        std::size_t useless_for = SIZE_MAX; // the kind that was last found not to go there
    };

    void sort_points(const Place& idea)
    {
        const auto key = [&](const Corner& c) {
            return std::array{c.at[idea.axes[0]], c.at[idea.axes[1]], c.at[idea.axes[2]]};
        };
        std::sort(points_.begin(), points_.end(), [&](const Corner& a, const Corner& b) { return key(a) < key(b); });
    }

    bool put_down(std::size_t piece, const Place& idea, Run& run)
    {
        const Kind& kind = load_.kinds[load_.pieces[piece].kind];
        std::uint64_t looks = 0;
        Score best;
        best.fill(std::numeric_limits<Units>::max());
        std::optional<Put> chosen;
        if (idea.mode == Place::Mode::starts) sort_points(idea);
        for (Corner& corner : points_) {
            if (corner.useless_for == load_.pieces[piece].kind) continue;
            const std::size_t poses = kind.soft ? 1 : kind.poses.size();
            bool of_use = false;
            for (std::uint32_t pose = 0; pose < poses; ++pose) {
                ++looks;
                const std::optional<Put> candidate = candidate_at(corner.at, piece, pose);
                if (!candidate) continue;
                of_use = true;
                const Score score = score_of(*candidate, idea);
                if (!(score < best)) continue;
                if (!rests(*candidate) || !carried_well(*candidate)) continue;
                best = score;
                chosen = candidate;
            }
            // What does not go there now will not later either: the room only shrinks.
            if (!of_use) corner.useless_for = load_.pieces[piece].kind;
            if (chosen && idea.mode == Place::Mode::starts) break; // sorted: none is better
        }
        if (!run.go_on(1 + looks * (put_.size() + 8) / 4000)) return false;
        if (!chosen) return false;
        settle(*chosen);
        return true;
    }

    std::optional<Put> candidate_at(const Sides& point, std::size_t piece, std::uint32_t pose) const
    {
        const Kind& kind = load_.kinds[load_.pieces[piece].kind];
        Put put{point, point, piece, pose, false, false};
        if (kind.soft) {
            const std::optional<Sides> side = soft_side(point, kind);
            if (!side) return std::nullopt;
            for (std::size_t a = 0; a < 3; ++a) put.high[a] = point[a] + (*side)[a];
            return put;
        }
        const Pose& p = kind.poses[pose];
        for (std::size_t a = 0; a < 3; ++a) {
            put.high[a] = point[a] + p.side[a];
            if (put.high[a] > space_.side[a]) return std::nullopt;
        }
        put.circle = p.circle;
        put.lies_round = p.axis.has_value() && *p.axis != Axis::z;
        for (const Put& other : put_) {
            if (overlap(put, other)) return std::nullopt;
        }
        return put;
    }

    static bool overlap(const Put& a, const Put& b)
    {
        return a.low[0] < b.high[0] && b.low[0] < a.high[0] && a.low[1] < b.high[1] && b.low[1] < a.high[1] &&
               a.low[2] < b.high[2] && b.low[2] < a.high[2];
    }

    // The free room from `point` on, no higher than a soft piece needs.
    std::optional<Sides> soft_side(const Sides& point, const Kind& kind) const
    {
        Sides high = space_.side;
        for (const Put& other : put_) {
            bool blocks = true;
            for (std::size_t a = 0; a < 3; ++a) blocks = blocks && point[a] < other.high[a] && other.low[a] < high[a];
            if (!blocks) continue;
            // Give up the axis on which most room remains.
            std::size_t cut = 3;
            Units most = 0;
            for (std::size_t a = 0; a < 3; ++a) {
                if (other.low[a] <= point[a]) continue;
                Units room = other.low[a] - point[a];
                for (std::size_t b = 0; b < 3; ++b) room *= b == a ? 1 : high[b] - point[b];
                if (room > most) most = room, cut = a;
            }
            if (cut == 3) return std::nullopt;
            high[cut] = other.low[cut];
        }
        Sides side;
        for (std::size_t a = 0; a < 3; ++a) {
            side[a] = high[a] - point[a] - load_.gap;
            if (side[a] < kind.soft_least || side[a] <= 0) return std::nullopt;
        }
        const Units base = side[0] * side[1];
        const Units height = std::max({(kind.soft_volume + base - 1) / base, kind.soft_least, Units{1}});
        if (height > side[2]) return std::nullopt;
        return Sides{side[0] + load_.gap, side[1] + load_.gap, height + load_.gap};
    }

    Score score_of(const Put& put, const Place& idea) const
    {
        const auto [a, b, c] = idea.axes;
        switch (idea.mode) {
        case Place::Mode::ends: return {put.high[a], put.high[b], put.high[c], put.low[a]};
        case Place::Mode::starts: return {put.low[a], put.low[b], put.low[c], put.high[a]};
        case Place::Mode::contact: return {-touched(put), put.low[a], put.low[b], put.low[c]};
        }
        return {};
    }

    // Area of the faces that touch walls or other pieces.
    Units touched(const Put& put) const
    {
        Units sum = 0;
        const auto face = [&](std::size_t a) {
            const std::size_t b = (a + 1) % 3, c = (a + 2) % 3;
            return (put.high[b] - put.low[b]) * (put.high[c] - put.low[c]);
        };
        for (std::size_t a = 0; a < 3; ++a) {
            if (put.low[a] == 0) sum += face(a);
            if (put.high[a] == space_.side[a]) sum += face(a);
        }
        for (const Put& other : put_) {
            for (std::size_t a = 0; a < 3; ++a) {
                if (put.low[a] != other.high[a] && put.high[a] != other.low[a]) continue;
                const std::size_t b = (a + 1) % 3, c = (a + 2) % 3;
                const Units u = std::min(put.high[b], other.high[b]) - std::max(put.low[b], other.low[b]);
                const Units v = std::min(put.high[c], other.high[c]) - std::max(put.low[c], other.low[c]);
                if (u > 0 && v > 0) sum += u * v;
            }
        }
        return sum;
    }

    // Contact of the bodies themselves; three quarters of a base always hold its middle.
    Units contact_area(const Put& put, const Put& under) const
    {
        if (under.high[2] != put.low[2] || under.lies_round) return 0;
        const Units u = std::min(put.high[0], under.high[0]) - std::max(put.low[0], under.low[0]) - load_.gap;
        const Units v = std::min(put.high[1], under.high[1]) - std::max(put.low[1], under.low[1]) - load_.gap;
        if (u <= 0 || v <= 0) return 0;
        return under.circle && !put.circle ? u * v / 1000 * 784 : u * v; // 0.784: a 64-gon in its square
    }

    bool rests(const Put& put) const
    {
        if (space_.support == Support::none || put.low[2] == 0) return true;
        if (put.lies_round) return false;
        const Units base = (put.high[0] - put.low[0] - load_.gap) * (put.high[1] - put.low[1] - load_.gap);
        Units sum = 0;
        for (const Put& under : put_) sum += contact_area(put, under);
        return space_.support == Support::full ? sum >= base : 4 * sum >= 3 * base;
    }

    // Would everything below still carry its load? Parts are rounded up, so the checker agrees.
    bool carried_well(const Put& put)
    {
        if (!limited_ || put.low[2] == 0) return true;
        const std::size_t first = contacts_.size();
        note_contacts(put, put_.size());
        carried_.push_back(0);
        const bool well = hand_down(put_.size(), weight_of(put), true);
        hand_down(put_.size(), weight_of(put), false);
        contacts_.resize(first);
        carried_.pop_back();
        return well;
    }

    std::int64_t weight_of(const Put& put) const { return load_.kinds[load_.pieces[put.piece].kind].milligrams; }

    void note_contacts(const Put& put, std::size_t index)
    {
        for (std::size_t j = 0; j < put_.size(); ++j) {
            const Units area = contact_area(put, put_[j]);
            if (area > 0) contacts_.push_back({index, j, area});
        }
    }

    bool hand_down(std::size_t upper, std::int64_t mg, bool add)
    {
        Units whole = 0;
        for (const Contact& c : contacts_) whole += c.upper == upper ? c.area : 0;
        bool well = true;
        for (std::size_t k = 0; k < contacts_.size(); ++k) {
            const Contact c = contacts_[k];
            if (c.upper != upper) continue;
            const auto part = static_cast<std::int64_t>(static_cast<double>(mg) * static_cast<double>(c.area) /
                                                        static_cast<double>(whole)) +
                              1;
            carried_[c.lower] += add ? part : -part;
            const auto& limit = load_.kinds[load_.pieces[put_[c.lower].piece].kind].top_load;
            well = well && (!limit || carried_[c.lower] <= *limit + 2);
            well = hand_down(c.lower, part, add) && well;
        }
        return well;
    }

    void settle(const Put& put)
    {
        if (limited_) {
            note_contacts(put, put_.size());
            carried_.push_back(0);
            hand_down(put_.size(), weight_of(put), true);
        }
        put_.push_back(put);
        points_.erase(std::remove_if(points_.begin(), points_.end(),
                                     [&](const Corner& c) {
                                         const Sides& p = c.at;
                                         return put.low[0] <= p[0] && p[0] < put.high[0] && put.low[1] <= p[1] &&
                                                p[1] < put.high[1] && put.low[2] <= p[2] && p[2] < put.high[2];
                                     }),
                      points_.end());
        // From each far corner, slide along the two other axes until something is met.
        for (std::size_t a = 0; a < 3; ++a) {
            Sides corner = put.low;
            corner[a] = put.high[a];
            if (corner[a] >= space_.side[a]) continue;
            add_point(corner);
            for (std::size_t b = 0; b < 3; ++b) {
                if (b == a) continue;
                Sides slid = corner;
                slid[b] = 0;
                for (const Put& other : put_) {
                    const std::size_t c = 3 - a - b;
                    if (other.high[b] > corner[b] || other.high[b] <= slid[b]) continue;
                    if (other.low[a] <= corner[a] && corner[a] < other.high[a] && other.low[c] <= corner[c] &&
                        corner[c] < other.high[c]) {
                        slid[b] = other.high[b];
                    }
                }
                add_point(slid);
            }
        }
    }

    void add_point(const Sides& p)
    {
        for (const Corner& corner : points_) {
            if (corner.at == p) return;
        }
        for (const Put& other : put_) {
            if (other.low[0] <= p[0] && p[0] < other.high[0] && other.low[1] <= p[1] && p[1] < other.high[1] &&
                other.low[2] <= p[2] && p[2] < other.high[2]) {
                return;
            }
        }
        points_.push_back({p, SIZE_MAX});
    }

    const Load& load_;
    const Space& space_;
    bool limited_ = false;
    std::vector<Put> put_;
    std::vector<Corner> points_;
    std::vector<Contact> contacts_;
    std::vector<std::int64_t> carried_;
};

// Pieces in the order they are put down. What may carry little comes late, soft goods last of all.
std::vector<std::vector<std::size_t>> orders_of(const Load& load, const Space& space)
{
    const auto longest = [](const Kind& k) {
        return std::max({k.poses[0].side[0], k.poses[0].side[1], k.poses[0].side[2]});
    };
    const auto shortest = [](const Kind& k) {
        return std::min({k.poses[0].side[0], k.poses[0].side[1], k.poses[0].side[2]});
    };
    const auto volume = [](const Kind& k) { return product(k.poses[0].side); };
    const std::array<std::function<Units(const Kind&)>, 4> keys{
        volume, longest, [&](const Kind& k) { return volume(k) / std::max<Units>(shortest(k), 1); }, shortest};
    std::vector<std::vector<std::size_t>> orders;
    for (const auto& key : keys) {
        std::vector<std::size_t> order(load.pieces.size());
        std::iota(order.begin(), order.end(), std::size_t{0});
        const auto rank = [&](std::size_t p) {
            const Kind& kind = load.kinds[load.pieces[p].kind];
            const bool late = space.support != Support::none && kind.top_load.has_value();
            const std::int64_t strength = late ? -*kind.top_load : 0;
            return std::tuple{kind.soft, late, strength, -key(kind), load.pieces[p].kind, p};
        };
        std::sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) { return rank(a) < rank(b); });
        if (std::find(orders.begin(), orders.end(), order) == orders.end()) orders.push_back(std::move(order));
    }
    return orders;
}

} // namespace

std::optional<Arrangement> find_quick(const Load& load, const Space& space, int tries, Run& run, const Accept& accept)
{
    const std::vector<std::vector<std::size_t>> orders = orders_of(load, space);
    Bench bench(load, space);
    Dice dice;
    std::vector<std::size_t> shuffled;
    using Mode = Place::Mode;
    // By starts is by far the cheapest for many pieces.
    const bool many = load.pieces.size() > 60;
    const std::array modes = many ? std::array{Mode::starts, Mode::ends, Mode::contact}
                                  : std::array{Mode::ends, Mode::contact, Mode::starts};
    const std::size_t planned = orders.size() * axis_orders.size() * modes.size();
    for (int t = 0; t < tries; ++t) {
        // All axis orders of the first order of pieces come first, then the next; afterwards shuffled ones.
        const auto k = static_cast<std::size_t>(t);
        const std::vector<std::size_t>* order = &orders[k / axis_orders.size() % orders.size()];
        Place idea{axis_orders[k % axis_orders.size()], modes[k / (axis_orders.size() * orders.size()) % modes.size()]};
        if (k >= planned) {
            shuffled = orders[k % orders.size()];
            for (std::size_t s = 0; s < shuffled.size() && shuffled.size() > 1; s += 2) {
                const std::size_t a = dice.below(shuffled.size() - 1);
                std::swap(shuffled[a], shuffled[a + 1]);
            }
            order = &shuffled;
            idea = {axis_orders[dice.below(6)], modes[dice.below(3)]};
        }
        if (bench.attempt(*order, idea, run)) {
            Arrangement found = bench.arrangement();
            if (accept(found)) return found;
        }
        if (run.stopped()) return std::nullopt;
    }
    return std::nullopt;
}

} // namespace stow::fitting
