// Check digits of printed numbers: judged, never made up.
#pragma once

#include <optional>
#include <string_view>

namespace stow::shop {

// The digit that closes `data` (all digits) by the modulo-10 rule of the GS1 General Specifications, section 7.9:
// weights 3, 1, 3, 1... from the right.
std::optional<int> mod10_check_digit(std::string_view data);

// A GTIN of 8, 12, 13 or 14 digits whose last digit closes it.
bool gtin_ok(std::string_view text);

// The digit that closes the eight digits of a postal item number by UPU standard S10: weights 8 6 4 2 3 5 9 7,
// 11 minus the remainder by 11, with 10 becoming 0 and 11 becoming 5.
std::optional<int> s10_check_digit(std::string_view eight_digits);

// A whole S10 item number, two letters, eight digits, check digit, two letters; spaces are allowed as printed.
bool s10_ok(std::string_view text);

} // namespace stow::shop
