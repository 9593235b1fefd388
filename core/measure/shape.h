// Shapes of goods, the turns they may take, and the forms of outers. Lengths in 0.1 mm.
#pragma once

#include "core/measure/quantity.h"

#include <array>
#include <optional>
#include <string_view>
#include <variant>
#include <vector>

namespace stow {

struct Size { // along x, y and z; z is up
    Length x, y, z;
    friend constexpr auto operator<=>(const Size&, const Size&) = default;
};

constexpr Volume volume(const Size& s)
{
    return s.x * s.y * s.z;
}
// The three edges, longest first.
Size sorted(const Size& s);

struct Block { // as it stands: length, width, height
    Size size;
    friend auto operator<=>(const Block&, const Block&) = default;
};
struct Cylinder { // standing
    Length diameter, height;
    friend auto operator<=>(const Cylinder&, const Cylinder&) = default;
};
struct Sheet { // lying
    Length length, width, thickness;
    std::optional<Length> least_roll; // smallest diameter it may be rolled to; nothing: stiff
    friend auto operator<=>(const Sheet&, const Sheet&) = default;
};
struct Roll { // lying
    Length diameter, length;
    friend auto operator<=>(const Roll&, const Roll&) = default;
};
struct Soft { // takes any shape of its volume, but nowhere thinner than `least`
    Volume volume;
    Length least;
    friend auto operator<=>(const Soft&, const Soft&) = default;
};
using Shape = std::variant<Block, Cylinder, Sheet, Roll, Soft>;

// The block around the shape in the position its measures are given in (a roll lies along x; a soft good is a cube
// flattened to its least thickness where that is smaller).
Size bounding_size(const Shape& shape);
// Space the shape itself takes; a cylinder less than its block. Rounded down, so that it may serve in bounds.
Volume solid_volume(const Shape& shape);

// Which edges of the given size may stand vertical. `fixed` also forbids turning about the vertical.
struct Turns {
    enum class Rule { any, upright, flat, fixed, listed };
    Rule rule = Rule::any;
    std::array<bool, 3> vertical{true, true, true}; // only read for `listed`: may the 1st, 2nd, 3rd edge stand?
    friend bool operator==(const Turns&, const Turns&) = default;
};

// The distinct turned sizes that `turns` allows, in a fixed order. `flat`: an edge equal to the smallest is vertical.
std::vector<Size> turned_sizes(const Size& size, const Turns& turns);

enum class OuterKind { carton, gift_box, mailer, padded_mailer, board_mailer, tube };
inline constexpr std::array all_outer_kinds{OuterKind::carton,        OuterKind::gift_box,     OuterKind::mailer,
                                            OuterKind::padded_mailer, OuterKind::board_mailer, OuterKind::tube};
std::string_view name_of(OuterKind kind); // as files write it: "carton", "gift-box", ...
std::optional<OuterKind> outer_kind(std::string_view name);

// The form of a container. What `inner` means depends on the kind:
//   carton, gift box   length, width, height inside
//   mailer, padded     usable length to the fold of the closed flap, usable width, 0
//   board mailer       length, width, greatest thickness
//   tube               inner diameter (in x and y), length (in z)
struct OuterForm {
    OuterKind kind = OuterKind::carton;
    Size inner;
    Size outer;                      // closed, empty; for sleeves z is the empty thickness
    std::vector<Length> cut_heights; // inner heights a carton may be cut down to
    std::array<Length, 2> ease{};    // sleeves: length and width kept free
    Length wall;                     // sleeves: one wall
    friend bool operator==(const OuterForm&, const OuterForm&) = default;
};

constexpr bool is_sleeve(OuterKind k)
{
    return k == OuterKind::mailer || k == OuterKind::padded_mailer;
}

// Closed size with contents of thickness `t` (sleeves and board mailers) or at inner height `height` (cut cartons);
// both are ignored where the kind does not need them.
Size closed_size(const OuterForm& form, Length t, std::optional<Length> height = std::nullopt);
// What outers are compared by: carton L·W·H closed, tube L·D², sleeve L·W·(t + walls).
Volume closed_volume(const OuterForm& form, Length t, std::optional<Length> height = std::nullopt);

} // namespace stow
