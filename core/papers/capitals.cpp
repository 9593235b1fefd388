#include "core/papers/capitals.h"

#include "core/papers/text.h"

namespace stow::papers {

namespace {

// By the Unicode charts of Latin-1, Latin Extended-A, Greek and Cyrillic.
std::uint32_t capital(std::uint32_t c)
{
    const auto within = [c](std::uint32_t first, std::uint32_t last) { return c >= first && c <= last; };
    if (within('a', 'z')) return c - 0x20;
    if (within(0xE0, 0xFE) && c != 0xF7) return c - 0x20;
    if (c == 0xFF) return 0x178;                                          // y with diaeresis
    if (c == 0x131) return 'I';                                           // dotless i
    if (within(0x100, 0x17E) && c != 0x138 && c != 0x149 && c != 0x178) { // in pairs, a capital first
        const bool small_is_even = within(0x139, 0x148) || within(0x179, 0x17E);
        return (c % 2 == 0) == small_is_even ? c - 1 : c;
    }
    if (c == 0x3AC) return 0x386; // Greek letters with an accent
    if (within(0x3AD, 0x3AF)) return c - 0x25;
    if (c == 0x3CC) return 0x38C;
    if (within(0x3CD, 0x3CE)) return c - 0x3F;
    if (c == 0x3C2) return 0x3A3; // sigma at the end of a word
    if (within(0x3B1, 0x3CB)) return c - 0x20;
    if (within(0x430, 0x44F)) return c - 0x20;
    if (within(0x450, 0x45F)) return c - 0x50;
    return c;
}

std::string utf8_of_two_bytes(std::uint32_t c)
{
    return {static_cast<char>(0xC0U | c >> 6U), static_cast<char>(0x80U | (c & 0x3FU))};
}

} // namespace

std::string in_capitals(std::string_view utf8)
{
    std::string capitals;
    for (const std::string_view letter : letters(utf8)) {
        const std::uint32_t c = code_point(letter), large = capital(c);
        if (c == 0xDF)
            capitals += "SS";
        else if (large == c)
            capitals += letter;
        else if (large < 0x80)
            capitals += static_cast<char>(large);
        else
            capitals += utf8_of_two_bytes(large);
    }
    return capitals;
}

} // namespace stow::papers
