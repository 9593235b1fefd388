// Measuring and wrapping text. The painter's own metrics come in through TextMeasure, so that core needs no fonts.
#pragma once

#include "core/papers/display_list.h"

#include <string>
#include <string_view>
#include <vector>

namespace stow::papers {

class TextMeasure {
public:
    virtual ~TextMeasure() = default;
    virtual int width(std::string_view utf8, const Style& style) const = 0; // advance, 0.01 mm
    virtual int line_height(const Style& style) const = 0;
};

std::vector<std::string_view> letters(std::string_view utf8); // one code point each
std::uint32_t code_point(std::string_view letter);

// Lines no wider than `width`, broken at spaces, after hyphens and slashes, and at line ends in the text; a word wider
// than the line is broken between letters. Nothing is lost but spaces at the breaks. Never empty.
std::vector<std::string> wrap(std::string_view utf8, int width, const Style& style, const TextMeasure& measure);

// One line no wider than `width`: what is too long ends in "…".
std::string shorten(std::string_view utf8, int width, const Style& style, const TextMeasure& measure);

// By the first letter with a direction (Unicode Bidirectional Algorithm, rules P2 and P3, for the Hebrew and Arabic
// blocks).
Direction direction_of(std::string_view utf8);
// Of lines that stand together, such as an address: from right to left where more lines begin so than do not. Lines
// without a letter (a house number, a postcode) do not count.
Direction direction_of(const std::vector<std::string>& lines);

} // namespace stow::papers
