#include "core/fitting/repack.h"

#include "core/fitting/dice.h"

#include <algorithm>
#include <limits>

namespace stow::fitting {

namespace {

struct Cuboid {
    Coords low{}, high{};
};

bool meet(const Cuboid& a, const Cuboid& b)
{
    for (std::size_t k = 0; k < 3; ++k) {
        if (a.high[k] <= b.low[k] || b.high[k] <= a.low[k]) return false;
    }
    return true;
}
bool holds(const Cuboid& outer, const Cuboid& inner)
{
    for (std::size_t k = 0; k < 3; ++k) {
        if (inner.low[k] < outer.low[k] || inner.high[k] > outer.high[k]) return false;
    }
    return true;
}

struct Piece {
    std::size_t goods = 0;
    std::int64_t share = 0; // of a room's volume, in thousandths, at least 1
    std::int64_t milligrams = 0;
};

struct Room { // packed
    RoomContent content;
    std::int64_t share = 0, milligrams = 0;
    std::int64_t worth() const { return share * share / 1000; } // full rooms and empty ones rather than half full ones
};

// How one round of packing chooses places.
struct Taste {
    enum class Best { corner, tight, small };
    Best best = Best::corner;
    std::array<std::size_t, 3> axes{0, 1, 2};
    bool first_room = false; // the first room that takes it, rather than the best place of all rooms
    bool near_walls = false; // at the corner of a space that is nearest to a corner of the room
};

class Repacker {
public:
    Repacker(const Yard& yard, Run& run, const std::function<bool(const std::vector<RoomContent>&)>& better)
        : yard_(yard), run_(run), better_(better)
    {
        const double room = volume_of({{}, yard.room});
        least_.fill(std::numeric_limits<Coord>::max());
        for (std::size_t g = 0; g < yard.goods.size(); ++g) {
            const Yard::Goods& goods = yard.goods[g];
            const auto share = static_cast<std::int64_t>(static_cast<double>(goods.volume) * 1000 / room);
            for (int k = 0; k < goods.count; ++k)
                pieces_.push_back({g, std::max<std::int64_t>(share, 1), goods.milligrams});
            for (const Yard::Way& way : goods.ways) {
                for (std::size_t a = 0; a < 3; ++a) least_[a] = std::min(least_[a], way.side[a]);
            }
        }
    }

    void search()
    {
        if (pieces_.empty() || !start()) return;
        for (;;) {
            if (tell() || rooms_.size() == 1) return;
            give_up_a_room();
            while (!loose_.empty()) {
                if (!run_.go_on(1 + pool_.size())) return;
                round();
            }
        }
    }

    // Everything into one room.
    std::optional<RoomContent> search_one(std::uint64_t rounds)
    {
        rooms_.assign(1, {});
        for (std::size_t p = 0; p < pieces_.size(); ++p) set_loose(static_cast<std::uint32_t>(p));
        for (std::uint64_t k = 0; k < rounds && !loose_.empty(); ++k) {
            if (!run_.go_on(1 + pieces_.size() / 4)) return std::nullopt;
            round();
        }
        if (!loose_.empty()) return std::nullopt;
        return rooms_[0].content;
    }

private:
    void set_loose(std::uint32_t p)
    {
        loose_.push_back(p);
        cost_ += weight_of_loose * pieces_[p].share;
    }

    static double volume_of(const Cuboid& c)
    {
        double v = 1;
        for (std::size_t a = 0; a < 3; ++a) v *= c.high[a] - c.low[a];
        return v;
    }

    bool tell()
    {
        std::vector<RoomContent> contents;
        for (const Room& room : rooms_) contents.push_back(room.content);
        return better_(contents);
    }

    // Largest first, each into the first room that takes it.
    bool start()
    {
        std::vector<std::uint32_t> order(pieces_.size());
        for (std::size_t p = 0; p < order.size(); ++p) order[p] = static_cast<std::uint32_t>(p);
        std::stable_sort(order.begin(), order.end(),
                         [&](std::uint32_t a, std::uint32_t b) { return pieces_[a].share > pieces_[b].share; });
        Taste taste;
        taste.first_room = true;
        trial_.clear();
        for (const std::uint32_t p : order) {
            if (insert(p, taste)) continue;
            trial_.push_back({});
            trial_.back().free = {{{}, yard_.room}};
            if (!insert(p, taste)) return false;
        }
        for (Trial& t : trial_) rooms_.push_back(std::move(t.room));
        return true;
    }

    void give_up_a_room()
    {
        const auto emptiest = std::min_element(rooms_.begin(), rooms_.end(),
                                               [](const Room& a, const Room& b) { return a.share < b.share; });
        cost_ = 0;
        for (const Stowed& s : emptiest->content) set_loose(s.piece);
        rooms_.erase(emptiest);
    }

    void round()
    {
        const std::size_t taken = std::min<std::size_t>(1 + dice_.below(3), rooms_.size());
        chosen_.clear();
        while (chosen_.size() < taken) {
            const std::size_t r = dice_.below(rooms_.size());
            if (std::find(chosen_.begin(), chosen_.end(), r) == chosen_.end()) chosen_.push_back(r);
        }
        pool_ = loose_;
        const std::uint32_t keep_of_ten = std::array{0U, 0U, 3U, 6U}[dice_.below(4)];
        std::int64_t worth = 0;
        trial_.resize(taken);
        for (std::size_t t = 0; t < taken; ++t) {
            worth += rooms_[chosen_[t]].worth();
            take_apart(rooms_[chosen_[t]], trial_[t], keep_of_ten);
        }
        put_in_order();
        const Taste taste = any_taste();
        left_.clear();
        std::int64_t cost = 0;
        for (const std::uint32_t p : pool_) {
            if (insert(p, taste)) continue;
            left_.push_back(p);
            cost += weight_of_loose * pieces_[p].share;
        }
        for (const Trial& t : trial_) worth -= t.room.worth();
        const std::int64_t change = cost - cost_ + worth;
        if (!left_.empty() && change > dice_.below(grace)) return;
        loose_.swap(left_);
        cost_ = cost;
        for (std::size_t t = 0; t < taken; ++t) std::swap(rooms_[chosen_[t]], trial_[t].room);
    }

    Taste any_taste()
    {
        static constexpr std::array<std::array<std::size_t, 3>, 6> orders{
            {{0, 1, 2}, {0, 2, 1}, {1, 0, 2}, {1, 2, 0}, {2, 0, 1}, {2, 1, 0}}};
        Taste taste;
        taste.best = std::array{Taste::Best::corner, Taste::Best::tight, Taste::Best::small}[dice_.below(3)];
        taste.axes = orders[dice_.below(orders.size())];
        taste.first_room = dice_.below(2) == 0;
        taste.near_walls = dice_.below(2) == 0;
        return taste;
    }

    // Large ones first by one measure or another, each made larger or smaller by chance.
    void put_in_order()
    {
        const std::uint32_t measure = dice_.below(5);
        keys_.clear();
        for (const std::uint32_t p : pool_) {
            const Coords& side = yard_.goods[pieces_[p].goods].ways[0].side;
            const auto of_room = [&](std::size_t a) { return std::int64_t{side[a]} * 1000 / yard_.room[a]; };
            std::int64_t key = 0;
            switch (measure) {
            case 0: key = pieces_[p].share; break;
            case 1: key = std::max({of_room(0), of_room(1), of_room(2)}); break;
            case 2: key = of_room(0) + of_room(1) + of_room(2); break;
            case 3: {
                const std::size_t a = p % 3 == 0 ? 0 : 1; // two of the three faces
                key = of_room(a) * of_room(2);
                break;
            }
            default: key = 1000;
            }
            keys_.emplace_back(-key * (700 + dice_.below(600)), p);
        }
        std::sort(keys_.begin(), keys_.end());
        pool_.clear();
        for (const auto& [key, p] : keys_) pool_.push_back(p);
    }

    struct Trial { // a room being packed
        Room room;
        std::vector<Cuboid> free; // maximal spaces
    };

    void take_apart(const Room& room, Trial& trial, std::uint32_t keep_of_ten)
    {
        trial.room.content.clear();
        trial.room.share = trial.room.milligrams = 0;
        trial.free.assign(1, {{}, yard_.room});
        for (const Stowed& s : room.content) {
            if (keep_of_ten == 0 || dice_.below(10) >= keep_of_ten) {
                pool_.push_back(s.piece);
            } else {
                put(trial, s);
            }
        }
    }

    Cuboid cuboid_of(const Stowed& s) const
    {
        const Coords& side = yard_.goods[pieces_[s.piece].goods].ways[s.way].side;
        return {s.at, {s.at[0] + side[0], s.at[1] + side[1], s.at[2] + side[2]}};
    }

    void put(Trial& trial, const Stowed& s)
    {
        const Piece& piece = pieces_[s.piece];
        trial.room.content.push_back(s);
        trial.room.share += piece.share;
        trial.room.milligrams += piece.milligrams;
        const Cuboid body = cuboid_of(s);
        cut_.clear();
        std::size_t kept = 0;
        for (const Cuboid& space : trial.free) {
            if (!meet(space, body)) {
                trial.free[kept++] = space;
                continue;
            }
            for (std::size_t a = 0; a < 3; ++a) {
                if (body.low[a] - space.low[a] >= least_[a]) {
                    cut_.push_back(space);
                    cut_.back().high[a] = body.low[a];
                }
                if (space.high[a] - body.high[a] >= least_[a]) {
                    cut_.push_back(space);
                    cut_.back().low[a] = body.high[a];
                }
            }
        }
        trial.free.resize(kept);
        // What another space holds is not maximal; of equal ones the first stays.
        for (std::size_t c = 0; c < cut_.size(); ++c) {
            bool inside = false;
            for (std::size_t k = 0; k < kept && !inside; ++k) inside = holds(trial.free[k], cut_[c]);
            for (std::size_t o = 0; o < cut_.size() && !inside; ++o) {
                inside = o != c && holds(cut_[o], cut_[c]) && (o < c || !holds(cut_[c], cut_[o]));
            }
            if (!inside) trial.free.push_back(cut_[c]);
        }
    }

    bool insert(std::uint32_t p, const Taste& taste)
    {
        const Piece& piece = pieces_[p];
        const std::vector<Yard::Way>& ways = yard_.goods[piece.goods].ways;
        std::int64_t best_score = std::numeric_limits<std::int64_t>::max();
        std::size_t best_trial = trial_.size();
        Stowed best;
        for (std::size_t t = 0; t < trial_.size(); ++t) {
            const Trial& trial = trial_[t];
            if (yard_.most_milligrams && trial.room.milligrams + piece.milligrams > *yard_.most_milligrams) continue;
            if (trial.room.share + piece.share > 1000 + static_cast<std::int64_t>(trial.room.content.size())) continue;
            for (const Cuboid& space : trial.free) {
                for (std::size_t w = 0; w < ways.size(); ++w) {
                    const Coords& side = ways[w].side;
                    const Coords slack{space.high[0] - space.low[0] - side[0], space.high[1] - space.low[1] - side[1],
                                       space.high[2] - space.low[2] - side[2]};
                    if (slack[0] < 0 || slack[1] < 0 || slack[2] < 0) continue;
                    Coords at = space.low;
                    if (taste.near_walls) {
                        for (std::size_t a = 0; a < 3; ++a) {
                            if (yard_.room[a] - space.high[a] < space.low[a]) at[a] += slack[a];
                        }
                    }
                    const std::int64_t score = score_of(taste, space, slack, at);
                    if (score >= best_score) continue;
                    best_score = score;
                    best_trial = t;
                    best = {p, static_cast<std::uint32_t>(w), at};
                }
            }
            if (taste.first_room && best_trial != trial_.size()) break;
        }
        if (best_trial == trial_.size()) return false;
        put(trial_[best_trial], best);
        return true;
    }

    // The smaller the better; each measure below 2^20.
    std::int64_t score_of(const Taste& taste, const Cuboid& space, const Coords& slack, const Coords& at) const
    {
        const auto joined = [](std::int64_t a, std::int64_t b, std::int64_t c) { return (a << 40) | (b << 20) | c; };
        switch (taste.best) {
        case Taste::Best::corner: {
            Coords off = at;
            if (taste.near_walls) {
                for (std::size_t a = 0; a < 3; ++a) off[a] = std::min(space.low[a], yard_.room[a] - space.high[a]);
            }
            return joined(off[taste.axes[0]], off[taste.axes[1]], off[taste.axes[2]]);
        }
        case Taste::Best::tight: {
            Coords s = slack;
            std::sort(s.begin(), s.end());
            return joined(s[0], s[1], s[2]);
        }
        case Taste::Best::small: {
            std::int64_t v = 1;
            for (std::size_t a = 0; a < 3; ++a) v *= space.high[a] - space.low[a];
            return v;
        }
        }
        return 0;
    }

    static constexpr std::int64_t weight_of_loose = 3;
    static constexpr std::uint32_t grace = 60;

    const Yard& yard_;
    Run& run_;
    const std::function<bool(const std::vector<RoomContent>&)>& better_;
    std::vector<Piece> pieces_;
    Coords least_{}; // no piece is smaller along an axis
    std::vector<Room> rooms_;
    std::vector<std::uint32_t> loose_; // pieces without a room
    std::int64_t cost_ = 0;            // of the loose pieces
    Dice dice_;
    // One round's.
    std::vector<std::size_t> chosen_;
    std::vector<Trial> trial_;
    std::vector<std::uint32_t> pool_, left_;
    std::vector<std::pair<std::int64_t, std::uint32_t>> keys_;
    std::vector<Cuboid> cut_;
};

} // namespace

void repack(const Yard& yard, Run& run, const std::function<bool(const std::vector<RoomContent>&)>& better)
{
    Repacker(yard, run, better).search();
}

std::optional<RoomContent> repack_one(const Yard& yard, std::uint64_t rounds, Run& run)
{
    return Repacker(yard, run, {}).search_one(rounds);
}

std::optional<Arrangement> find_repacked(const Load& load, const Space& space, std::uint64_t rounds, Run& run,
                                         const Accept& accept)
{
    const std::optional<Yard> yard = make_yard(load, space, std::nullopt);
    if (load.soft || !yard) return std::nullopt;
    const std::optional<RoomContent> content = repack_one(*yard, rounds, run);
    if (!content) return std::nullopt;
    std::vector<std::size_t> first_of_kind(load.kinds.size(), load.pieces.size());
    for (std::size_t p = load.pieces.size(); p-- > 0;) first_of_kind[load.pieces[p].kind] = p;
    std::vector<std::size_t> piece_of; // of the load, by the count of the yard
    std::vector<std::size_t> goods_of;
    for (std::size_t g = 0; g < yard->goods.size(); ++g) {
        for (int copy = 0; copy < yard->goods[g].count; ++copy) {
            piece_of.push_back(first_of_kind[yard->goods[g].kind] + static_cast<std::size_t>(copy));
            goods_of.push_back(g);
        }
    }
    if (piece_of.size() != load.pieces.size()) return std::nullopt;
    Arrangement arrangement(load.pieces.size());
    for (const Stowed& s : *content) {
        const Yard::Goods& goods = yard->goods[goods_of[s.piece]];
        Spot& spot = arrangement[piece_of[s.piece]];
        spot.pose = goods.ways[s.way].pose;
        spot.side = load.kinds[goods.kind].poses[spot.pose].side;
        for (std::size_t a = 0; a < 3; ++a) spot.at[a] = s.at[a] * yard->unit;
    }
    if (!accept(arrangement)) return std::nullopt;
    return arrangement;
}

} // namespace stow::fitting
