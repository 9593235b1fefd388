#include "core/fitting/cluster.h"

#include <algorithm>
#include <numeric>
#include <unordered_set>

namespace stow::fitting {

namespace {

constexpr Units longest = (1 << 20) - 1;
constexpr std::size_t most_kinds = 500;
constexpr std::size_t most_pairs_for_each = 2'000; // wanted; 10,000 take some 50 ms

Cluster grid_of(const Yard& yard, std::size_t goods, std::size_t way, std::array<int, 3> n)
{
    const Yard::Goods& g = yard.goods[goods];
    Cluster c;
    for (std::size_t a = 0; a < 3; ++a) {
        c.side[a] = g.ways[way].side[a] * n[a];
        c.grid[a] = static_cast<std::uint16_t>(n[a]);
    }
    c.packed = packed_sides(c.side);
    c.pieces = n[0] * n[1] * n[2];
    c.volume = g.volume * c.pieces;
    c.milligrams = g.milligrams * c.pieces;
    c.top = {0, 0, c.side[0], c.side[1]};
    if (yard.lone_tops) c.top = {0, 0, g.ways[way].side[0], g.ways[way].side[1]};
    if (yard.supported && g.ways[way].circle) c.top = {};
    c.goods = static_cast<std::uint16_t>(goods);
    c.way = static_cast<std::uint16_t>(way);
    c.content = {{c.goods, static_cast<std::uint16_t>(c.pieces)}};
    return c;
}

void add_grids(const Yard& yard, std::size_t goods, std::size_t most, std::vector<Cluster>& all)
{
    const Yard::Goods& g = yard.goods[goods];
    std::vector<Cluster> mine;
    for (std::size_t way = 0; way < g.ways.size(); ++way) {
        const Coords& side = g.ways[way].side;
        for (int x = 1; x <= g.count && x * side[0] <= yard.room[0]; ++x) {
            for (int y = 1; x * y <= g.count && y * side[1] <= yard.room[1]; ++y) {
                for (int z = 1; x * y * z <= g.count && z * side[2] <= yard.room[2]; ++z) {
                    mine.push_back(grid_of(yard, goods, way, {x, y, z}));
                }
            }
        }
    }
    // Small grids are always of use; of the large ones the most solid.
    if (mine.size() > most) {
        std::stable_sort(mine.begin(), mine.end(),
                         [](const Cluster& a, const Cluster& b) { return a.pieces < b.pieces; });
        mine.resize(most);
    }
    all.insert(all.end(), mine.begin(), mine.end());
}

std::uint64_t mixed(std::uint64_t h, std::uint64_t value)
{
    h ^= value + 0x9E37'79B9'7F4A'7C15ULL + (h << 6) + (h >> 2);
    return h * 0xFF51'AFD7'ED55'8CCDULL;
}

class Joiner {
public:
    Joiner(const Yard& yard, std::vector<Cluster>& all, std::size_t most) : yard_(yard), all_(all), most_(most) {}

    void run()
    {
        for (const Cluster& c : all_) seen_.insert(name(c));
        std::size_t fresh = 0; // every pair has a partner of the newest generation
        while (fresh < all_.size()) {
            const std::size_t end = all_.size();
            for (std::size_t i = 0; i < end; ++i) {
                for (std::size_t j = std::max(fresh, std::size_t{0}); j < end; ++j) {
                    if (all_.size() >= most_ || ++looked_ > most_ * most_pairs_for_each) return;
                    for (std::uint8_t axis = 0; axis < 3; ++axis) {
                        join(i, j, axis);
                        if (axis == 2 && yard_.supported && i != j && i < fresh) join(j, i, axis);
                    }
                }
            }
            fresh = end;
        }
    }

private:
    static std::uint64_t name(const Cluster& c)
    {
        std::uint64_t h = c.packed;
        for (const Cluster::Content& part : c.content) h = mixed(h, std::uint64_t{part.goods} << 16 | part.count);
        return h;
    }

    void join(std::size_t i, std::size_t j, std::uint8_t axis)
    {
        const Cluster& a = all_[i];
        const Cluster& b = all_[j];
        Coords side;
        for (std::size_t k = 0; k < 3; ++k) {
            side[k] = k == axis ? a.side[k] + b.side[k] : std::max(a.side[k], b.side[k]);
            if (side[k] > yard_.room[k]) return;
        }
        const std::int64_t volume = a.volume + b.volume;
        if (volume * 100 < std::int64_t{side[0]} * side[1] * side[2] * 98) return;
        Cluster c;
        if (!rests(a, b, axis, side, c.top)) return;
        if (!add_contents(a, b, c.content)) return;
        c.side = side;
        c.packed = packed_sides(side);
        if (!seen_.insert(name(c)).second) return;
        c.volume = volume;
        c.milligrams = a.milligrams + b.milligrams;
        c.pieces = a.pieces + b.pieces;
        c.first = static_cast<std::int32_t>(i);
        c.second = static_cast<std::int32_t>(j);
        c.axis = axis;
        all_.push_back(std::move(c));
    }

    // May b stand so, and what of the top is flat then?
    bool rests(const Cluster& a, const Cluster& b, std::uint8_t axis, const Coords& side,
               std::array<Coord, 4>& top) const
    {
        if (axis == 2) {
            const Coord x = a.top[0], y = a.top[1];
            top = {x + b.top[0], y + b.top[1], x + b.top[2], y + b.top[3]};
            if (!yard_.supported) return x + b.side[0] <= side[0] && y + b.side[1] <= side[1];
            return b.side[0] <= a.top[2] - x && b.side[1] <= a.top[3] - y;
        }
        std::array<Coord, 4> moved = b.top;
        moved[axis] += a.side[axis];
        moved[axis + 2U] += a.side[axis];
        const std::size_t across = 1U - axis;
        if (a.side[2] == b.side[2]) {
            const bool level = !yard_.lone_tops && a.top[axis + 2U] == moved[axis] && a.top[across] == moved[across] &&
                               a.top[across + 2U] == moved[across + 2U];
            const auto area = [](const std::array<Coord, 4>& r) { return std::int64_t{r[2] - r[0]} * (r[3] - r[1]); };
            top = area(a.top) >= area(moved) ? a.top : moved;
            if (level) {
                top = a.top;
                top[axis + 2U] = moved[axis + 2U];
            }
        } else {
            top = a.side[2] > b.side[2] ? a.top : moved;
        }
        return true;
    }

    bool add_contents(const Cluster& a, const Cluster& b, std::vector<Cluster::Content>& sum) const
    {
        auto p = a.content.begin();
        auto q = b.content.begin();
        while (p != a.content.end() || q != b.content.end()) {
            Cluster::Content part{};
            if (q == b.content.end() || (p != a.content.end() && p->goods < q->goods)) {
                part = *p++;
            } else if (p == a.content.end() || q->goods < p->goods) {
                part = *q++;
            } else {
                part = {p->goods, static_cast<std::uint16_t>(p->count + q->count)};
                ++p, ++q;
            }
            if (part.count > yard_.goods[part.goods].count) return false;
            sum.push_back(part);
        }
        return true;
    }

    const Yard& yard_;
    std::vector<Cluster>& all_;
    std::size_t most_;
    std::unordered_set<std::uint64_t> seen_; // asked only whether it holds a name: its order never shows
    std::size_t looked_ = 0;
};

} // namespace

std::optional<Yard> make_yard(const Load& load, const Space& space, std::optional<std::int64_t> most_milligrams)
{
    Units unit = 0;
    for (const Kind& kind : load.kinds) {
        for (const Pose& pose : kind.poses) {
            for (const Units side : pose.side) unit = std::gcd(unit, side);
        }
    }
    Yard yard;
    yard.unit = std::max<Units>(unit, 1);
    yard.supported = space.support != Support::none;
    yard.lone_tops = space.support == Support::full && load.gap > 0;
    yard.most_milligrams = most_milligrams;
    for (std::size_t a = 0; a < 3; ++a) {
        const Units side = space.side[a] / yard.unit;
        if (side <= 0 || side > longest) return std::nullopt;
        yard.room[a] = static_cast<Coord>(side);
    }
    std::vector<int> counts(load.kinds.size(), 0);
    for (const Piece& piece : load.pieces) ++counts[piece.kind];
    for (std::size_t k = 0; k < load.kinds.size(); ++k) {
        const Kind& kind = load.kinds[k];
        if (kind.soft || counts[k] == 0) continue;
        Yard::Goods goods;
        goods.kind = k;
        goods.count = std::min(counts[k], 60'000);
        goods.milligrams = kind.milligrams;
        for (std::uint32_t p = 0; p < kind.poses.size(); ++p) {
            Coords side;
            for (std::size_t a = 0; a < 3; ++a)
                side[a] = static_cast<Coord>(std::min(kind.poses[p].side[a] / yard.unit, longest));
            const bool lies_round = kind.poses[p].axis && *kind.poses[p].axis != Axis::z;
            if (yard.supported && lies_round) continue; // it may not carry or be carried
            if (side[0] <= yard.room[0] && side[1] <= yard.room[1] && side[2] <= yard.room[2]) {
                goods.ways.push_back({side, p, kind.poses[p].circle});
            }
        }
        if (goods.ways.empty()) continue;
        const Coords& side = goods.ways.front().side;
        goods.volume = std::int64_t{side[0]} * side[1] * side[2];
        yard.pieces += goods.count;
        yard.goods.push_back(std::move(goods));
    }
    if (yard.goods.size() > most_kinds) return std::nullopt;
    return yard;
}

std::vector<Cluster> clusters_of(const Yard& yard, std::size_t most)
{
    std::vector<Cluster> all;
    const std::size_t share = yard.goods.empty() ? most : std::max<std::size_t>(most / 2 / yard.goods.size(), 64);
    for (std::size_t g = 0; g < yard.goods.size(); ++g) add_grids(yard, g, share, all);
    Joiner(yard, all, std::max(most, all.size())).run();
    return all;
}

} // namespace stow::fitting
