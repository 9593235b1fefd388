// What stands on a paper or in a drawing, as plain marks in painting order. Lengths in 0.01 mm, x to the right, y down,
// from the upper left corner. Colours are roles; a palette of the painter gives them their colour.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace stow::papers {

constexpr int from_mm(int whole)
{
    return whole * 100;
}
// Typographic points (1/72 inch) to the nearest 0.01 mm: 9 pt is 3.18 mm.
constexpr int from_pt(int points)
{
    return (points * 2540 + 36) / 72;
}

struct Point {
    int x = 0, y = 0;
    friend bool operator==(const Point&, const Point&) = default;
};

struct Extent {
    int width = 0, height = 0;
    friend bool operator==(const Extent&, const Extent&) = default;
};

// `goods_a` ... `goods_f` tint the goods in turn; `board` is the outer.
enum class Role {
    paper,
    sheet,
    ink,
    second_ink,
    hairline,
    accent,
    ochre,
    brick,
    board,
    goods_a,
    goods_b,
    goods_c,
    goods_d,
    goods_e,
    goods_f,
    highlight // the thing to look at
};
inline constexpr int goods_tints = 6;
constexpr Role goods_tint(int n)
{
    return static_cast<Role>(static_cast<int>(Role::goods_a) + n % goods_tints);
}

enum class Shade { lit, half, shaded }; // how the light falls: top, left and right faces

struct Pen {
    Role role = Role::ink;
    int width = 20;
    enum class Dash { solid, dashed, dotted } dash = Dash::solid;
    friend bool operator==(const Pen&, const Pen&) = default;
};

struct Fill {
    Role role = Role::sheet;
    Shade shade = Shade::lit;
    friend bool operator==(const Fill&, const Fill&) = default;
};

struct Path { // a line, polyline or polygon
    std::vector<Point> points;
    bool closed = false;
    std::optional<Pen> pen;
    std::optional<Fill> fill;
};

// An arc of an ellipse. Angles in 1/16 degree of the ellipse's own parameter, counter-clockwise as seen, from its first
// half axis, which is turned counter-clockwise by `turn` out of the x direction.
inline constexpr int full_circle = 360 * 16;
struct Arc {
    Point centre;
    int first = 0, second = 0; // half axes
    int turn = 0;
    int start = 0, span = full_circle;
    std::optional<Pen> pen;
    std::optional<Fill> fill; // of the whole ellipse only
};

enum class Face { regular, bold };
enum class Align { start, centre, end };
enum class Direction { left_to_right, right_to_left };

struct Style {
    int size = from_pt(10); // of the em
    Face face = Face::regular;
    Role role = Role::ink;
};

// One line of text, already wrapped. `at` lies on the baseline: at the line's left, middle or right, as `align` says.
struct TextLine {
    Point at;
    std::string text; // UTF-8
    Style style;
    Align align = Align::start; // start is left here: direction has been taken into account
    Direction direction = Direction::left_to_right;
};

struct Modules { // a QR code; its quiet zone is not part of it
    Point at;
    int module = 50;        // edge of one
    int side = 0;           // modules along one edge
    std::vector<bool> dark; // row by row
};

struct Picture { // a file, as large as it goes into the frame, at its upper left
    Point at;
    Extent frame;
    std::string file;
};

using Mark = std::variant<Path, Arc, TextLine, Modules, Picture>;

struct DisplayList {
    Extent extent;
    std::vector<Mark> marks;

    void add(Mark mark) { marks.push_back(std::move(mark)); }
    // Adds all marks of `other`, moved by `by`.
    void add(const DisplayList& other, Point by);
};

struct Document {
    std::string title;
    std::vector<DisplayList> pages;
};

enum class Format { a4, letter, a6, label_100x150 };
Extent extent_of(Format format);

// An empty sheet, and what is kept free at its left and right.
struct Blank {
    Extent extent;
    int margin;
    Blank(Format format);
    Blank(Extent sheet, int free) : extent(sheet), margin(free) {}
};

// The smallest rectangle around all points, arcs and codes; texts count with their anchor only.
struct Box {
    Point least, most;
};
std::optional<Box> bounds(const DisplayList& list);

} // namespace stow::papers
