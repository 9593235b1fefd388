// Boxes and envelopes made by hand from a sheet of paper or card: what sheet each takes, where to cut and where to
// score. Lengths are of the finished piece, inside: card of 220 to 300 g/m² is thin enough to leave out, but for the
// lid, which is wider by an allowance. Formulas: the workshop's practice, each with its source beside its check in
// tests/core/paperbox.
#pragma once

#include "core/measure/shape.h"

#include <array>
#include <optional>
#include <string_view>
#include <vector>

namespace stow::paperbox {

enum class Kind {
    one_square, // a gift box from one square, turned by 45° and scored; four flaps meet over its lid
    tray,       // the lower half of tray and lid
    lid,        // its upper half
    pillow,     // two bulging faces, ends folded in along arcs
    envelope    // from one square, turned by 45°
};
inline constexpr std::array all_kinds{Kind::one_square, Kind::tray, Kind::lid, Kind::pillow, Kind::envelope};
std::string_view name_of(Kind kind); // "one-square", "tray", "lid", "pillow", "envelope"
std::optional<Kind> kind(std::string_view name);

struct Wanted {
    Kind kind = Kind::one_square;
    // one square, tray: length, width, height inside. lid: of the tray beneath it, height being the depth of the lid.
    // pillow: length from corner to corner, width of a face, and by how much its edges bulge (half the thickness).
    // envelope: length and width inside; height 0.
    Size size;
    Length overlap = mm(25);         // one square, envelope: strip of adjacent flaps to glue on
    Length allowance = tenth_mm(25); // lid: wider than its tray by this much, for card
    Length glue_flap = mm(12);       // pillow
};

struct Spot { // on the sheet, from its upper left corner
    Length x, y;
    friend bool operator==(const Spot&, const Spot&) = default;
};
enum class Stroke { cut, score };
struct Mark { // a straight line, or an arc from `from` to `to` that bulges by `bulge` to its left as one walks it
    Stroke stroke = Stroke::score;
    Spot from, to;
    Length bulge;
    friend bool operator==(const Mark&, const Mark&) = default;
};

struct Net {
    Kind kind = Kind::one_square;
    Length length, width;    // of the sheet it is cut from
    std::vector<Mark> marks; // the outline too, where it is not the sheet's own edge
    // Marks along each edge of a square sheet, from the corner at the flap over the width: m1, and m2 of a box.
    std::vector<Length> edge_marks;
    Length trim; // one square, envelope: by so much the flap over the long side is too long: cut it off
};

enum class Fault {
    no_size,    // a length that is not above zero
    flaps_miss, // the flaps of a square do not reach each other at any trim
    too_bulged  // of a pillow: more than a quarter of its width, or the ends meet
};

// What it takes. Sheet sizes are rounded up to 0.1 mm.
struct Laid {
    std::optional<Net> net;
    Fault fault = Fault::no_size; // without a net
};
Laid lay(const Wanted& wanted);

// What is cut for it: of a tray, its lid too.
std::vector<Wanted> pieces_of(const Wanted& wanted);

// Side of the square for a box: (w + d + 2h)/√2 + overlap; for an envelope h = 0.
Length square_side(const Size& size, Length overlap);
// Radius of a pillow's arcs, (W²/4 + s²)/(2s), its thickness 2s, and the width across its corners, W − 8s²/(3W).
struct Pillow {
    Length radius, thickness, chord, usable_length;
};
Pillow pillow(const Size& size);

// The largest block that goes in: of a pillow one as wide as seven tenths of its chord.
Size room_in(const Wanted& wanted);
// The smallest of its kind that takes a block of this size, `ease` on each side. Nothing for a lid.
std::optional<Wanted> around(Kind kind, const Size& contents, Length ease);

// A cross tie: 2w + 2d + 4h and a bow of four loops, two tails and 40 mm of knot.
Length ribbon(const Size& box, Length loop, Length tail);
// Gift wrap, a >= b >= c: around the girth, ends folded, at least (a + c) by 2(b + c); `spare` is added to both.
struct WrapSheet {
    Length length, width;
};
WrapSheet wrap_around(const Size& box, Length spare);
// Turned by 45°: the side of a square, (w + d + 2h)/√2 + overlap, with the smallest side as h.
Length wrap_diagonal(const Size& box, Length overlap);

} // namespace stow::paperbox
