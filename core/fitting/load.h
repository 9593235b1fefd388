// A question made ready for the search: plain integers of 0.1 mm, every body already enlarged by the gap.
#pragma once

#include "core/fitting/answer.h"
#include "core/fitting/question.h"

#include <array>
#include <cstdint>
#include <optional>
#include <vector>

namespace stow::fitting {

using Units = std::int64_t;
using Sides = std::array<Units, 3>;

constexpr Units product(const Sides& s)
{
    return s[0] * s[1] * s[2];
}
constexpr bool within(const Sides& a, const Sides& b)
{
    return a[0] <= b[0] && a[1] <= b[1] && a[2] <= b[2];
}

struct Pose {
    Sides side;               // enlarged
    std::optional<Axis> axis; // of a round item
    bool circle = false;      // stands upright and is judged by its circle
    friend bool operator==(const Pose&, const Pose&) = default;
};

struct Kind {             // equal pieces
    std::size_t item = 0; // of the question
    std::vector<Pose> poses;
    Units volume = 0; // least enlarged volume over the poses; of the circle where upright
    std::int64_t milligrams = 0;
    std::optional<std::int64_t> top_load; // mg
    bool soft = false;
    Units soft_volume = 0, soft_least = 0; // not enlarged
};

struct Piece {
    std::size_t kind = 0;
    int copy = 1;
};

// Where the pieces go: an enlarged, lined interior, its corner at the origin.
struct Space {
    Sides side{};
    Support support = Support::none;
    Units gap = 0;
};

struct Load {
    std::vector<Kind> kinds;
    std::vector<Piece> pieces; // kind by kind
    Units gap = 0;
    Units volume = 0; // sum of the kinds' volumes
    std::int64_t tenths_g = 0;
    bool circles = false; // some pose is a circle
    bool soft = false;
};

struct Spot { // of one piece: its lower corner in the space
    Sides at{};
    Sides side{}; // enlarged
    std::uint32_t pose = 0;
};
using Arrangement = std::vector<Spot>; // one a piece, in the order of Load::pieces

enum class Room { box, sleeve, tube }; // round goods are circles in a box or tube, blocks in a sleeve

// Items with content must have been given their shape and weight (see content.h).
Load make_load(const Question& question, Room room);

// The poses of one item: distinct, and where a cube-like cylinder may stand or lie, standing.
std::vector<Pose> poses_of(const Item& item, Room room, Units gap);

} // namespace stow::fitting
