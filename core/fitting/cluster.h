// Clusters: a few pieces put together that lie as one nearly solid block, the stones a large load is laid with.
// Equal pieces make grids; two clusters whose sides agree are joined. After Fanslau & Bortfeldt, "A tree search
// algorithm for solving the container loading problem", INFORMS J. Comput. 22(2) 2010 (blocks of at least 98 % fill).
#pragma once

#include "core/fitting/load.h"

#include <array>
#include <cstdint>
#include <optional>
#include <vector>

namespace stow::fitting {

using Coord = std::int32_t; // in steps of Yard::unit
using Coords = std::array<Coord, 3>;

// What a load of rigid pieces and a space become for laying: lengths divided by what they have in common.
struct Yard {
    struct Way { // one pose of a kind
        Coords side;
        std::uint32_t pose;
        bool circle; // nothing rests wholly on it but its like
    };
    struct Goods {
        std::size_t kind = 0; // of the load
        int count = 0;
        std::vector<Way> ways;
        std::int64_t volume = 0; // of the enlarged piece, in cubes of `unit`
        std::int64_t milligrams = 0;
    };
    Units unit = 1; // 0.1 mm
    Coords room{};
    std::vector<Goods> goods;
    std::int64_t pieces = 0; // of all goods
    bool supported = false;  // every base must wholly rest
    bool lone_tops = false;  // there is a gap between neighbours, and no base may lie across it
    std::optional<std::int64_t> most_milligrams;
};

// Nothing when a length does not fit into 20 bits or there are more than 500 kinds. Soft goods are left out.
std::optional<Yard> make_yard(const Load& load, const Space& space, std::optional<std::int64_t> most_milligrams);

struct Cluster {
    Coords side{};
    std::uint64_t packed = 0; // the sides in three fields of 21 bits, to compare at once
    std::int64_t volume = 0;  // of its pieces
    std::int64_t milligrams = 0;
    int pieces = 0;
    std::array<Coord, 4> top{}; // x0, y0, x1, y1 of the flat part at full height

    // A grid of one kind, or two clusters joined: `second` behind, beside or on `first`.
    std::int32_t first = -1, second = -1;
    std::uint8_t axis = 0;
    std::uint16_t goods = 0, way = 0;
    std::array<std::uint16_t, 3> grid{};

    struct Content {
        std::uint16_t goods, count;
        friend bool operator==(const Content&, const Content&) = default;
    };
    std::vector<Content> content; // by goods, ascending
};

// The same three fields with a guard bit each: b fits into r when no guard is borrowed from.
constexpr std::uint64_t guards = (1ULL << 20) | (1ULL << 41) | (1ULL << 62);
constexpr std::uint64_t packed_sides(const Coords& s)
{
    return static_cast<std::uint64_t>(s[0]) | static_cast<std::uint64_t>(s[1]) << 21 |
           static_cast<std::uint64_t>(s[2]) << 42;
}
constexpr bool packed_within(std::uint64_t small, std::uint64_t large)
{
    return (((large | guards) - small) & guards) == guards;
}

// All grids, then joined ones until there are `most`.
std::vector<Cluster> clusters_of(const Yard& yard, std::size_t most);

// Tells where each single piece of a cluster at `at` lies: goods, way, lower corner.
template <class Tell>
void unfold(const std::vector<Cluster>& all, std::size_t index, const Yard& yard, const Coords& at, const Tell& tell)
{
    const Cluster& c = all[index];
    if (c.first >= 0) {
        unfold(all, static_cast<std::size_t>(c.first), yard, at, tell);
        const Cluster& first = all[static_cast<std::size_t>(c.first)];
        Coords beyond = at;
        beyond[c.axis] += first.side[c.axis];
        if (c.axis == 2) beyond[0] += first.top[0], beyond[1] += first.top[1];
        unfold(all, static_cast<std::size_t>(c.second), yard, beyond, tell);
        return;
    }
    const Coords& side = yard.goods[c.goods].ways[c.way].side;
    for (int x = 0; x < c.grid[0]; ++x) {
        for (int y = 0; y < c.grid[1]; ++y) {
            for (int z = 0; z < c.grid[2]; ++z) {
                tell(c.goods, c.way, Coords{at[0] + x * side[0], at[1] + y * side[1], at[2] + z * side[2]});
            }
        }
    }
}

} // namespace stow::fitting
