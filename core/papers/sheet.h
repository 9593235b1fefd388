// Setting a paper: margins, pages with a carried head, text from its top edge, hairlines, codes. One hand for all
// papers.
#pragma once

#include "core/papers/display_list.h"
#include "core/papers/reprint.h"
#include "core/papers/text.h"
#include "core/papers/words.h"

#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace stow::papers {

namespace type { // the sizes our papers are set in; nothing under 9 points
inline constexpr Style title{from_pt(20), Face::bold, Role::ink};
inline constexpr Style large{from_pt(14), Face::bold, Role::ink};
inline constexpr Style strong{from_pt(11), Face::bold, Role::ink};
inline constexpr Style body{from_pt(11), Face::regular, Role::ink};
inline constexpr Style quiet{from_pt(10), Face::regular, Role::second_ink};
inline constexpr Style small{from_pt(9), Face::regular, Role::second_ink};
} // namespace type

inline constexpr int hairline_width = 18;
inline constexpr int code_module = 60;             // 0.6 mm: nearly 5 dots at 203 dpi, 7 at 300
inline constexpr int quiet_edge = 4 * code_module; // by which a code may reach into the margin

class Sheet {
public:
    // Draws the head of a page from y() down; `carried` on all pages but the first.
    using Head = std::function<void(Sheet&, bool carried)>;
    Sheet(const Blank& blank, const Words& words, const TextMeasure& measure, Head head);

    const Words& words() const { return words_; }
    int left() const { return margin_; }
    int right() const { return extent_.width - margin_; }
    int width() const { return right() - left(); }
    int bottom() const { return extent_.height - foot_; }
    int y() const { return y_; }
    void down(int by) { y_ += by; }
    void go_to(int y) { y_ = y; }
    // Turns the page when less than `height` is left on it.
    void need(int height);
    DisplayList& page() { return document_.pages.back(); }
    std::size_t pages() const { return document_.pages.size(); }

    int line_height(const Style& style) const { return measure_.line_height(style); }
    int width_of(const std::string& text, const Style& style) const { return measure_.width(text, style); }

    // One line; x is its left, middle or right, `top` the top of the line.
    void line(int x, int top, const std::string& text, const Style& style, Align align = Align::start);
    // Wrapped to `width`, from `x`; returns its height. Text that runs from right to left starts at the right.
    int paragraph(int x, int top, int width, const std::string& text, const Style& style);
    // Lines that stand together, such as an address: all from one side, the one most of them run from; those from the
    // right begin where the longest line ends. `style_of` says how the line at a place looks; `gap` stands above the
    // last. Returns the height.
    using StyleOf = std::function<Style(std::size_t line)>;
    int block(int x, int top, int width, const std::vector<std::string>& lines, const StyleOf& style_of, int gap = 0);
    std::vector<std::string> wrapped(const std::string& text, int width, const Style& style) const;
    int paragraph_height(int width, const std::string& text, const Style& style) const;

    void rule(int y, Role role = Role::hairline);
    void rule(int from, int to, int y, Role role = Role::hairline);
    void tick_box(Point at, int edge);
    // A number above one in a bold ring, centred; a plain one otherwise.
    void quantity(Point centre, int count, int size);
    // The code with its quiet zone, its upper right corner at `at`; returns its edge.
    int code(Point at, const std::string& payload, int module = code_module);

    // The head of a page that carries on: what it is, and at the right which one, beneath where both have no room.
    void carried_head(const std::string& title, const std::string& which, int space);

    // Closes the document: `foot` on the left of each page, page numbers on the right where there are several.
    Document finish(const std::string& title, const std::string& foot, const std::optional<Reprint>& reprint = {});

private:
    void open_page();

    Extent extent_;
    int margin_;
    int foot_;
    const Words& words_;
    const TextMeasure& measure_;
    Head head_;
    Document document_;
    int y_ = 0;
};

} // namespace stow::papers
