// Decimal text to whole smallest units, without passing through floating point.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace stow {

enum class Rounding { up, down, nearest }; // up and down along the number line; nearest takes halves away from zero

// The value of `text` times 10^places as a whole number. `text`: optional sign, digits, at most one decimal mark,
// optional exponent (as JSON writes numbers). Nothing for anything else, or beyond ±9e17.
std::optional<std::int64_t> scaled(std::string_view text, int places, Rounding rounding, char decimal_mark = '.');

// `units` as a decimal with `places` places and a point: (1234, 2) is "12.34".
std::string unscaled(std::int64_t units, int places);

} // namespace stow
