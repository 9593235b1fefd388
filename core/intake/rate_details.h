// The details cell of a rate sheet's row: phrases set apart by slashes, each a word and what follows it. Private to
// intake.
#pragma once

#include "core/measure/decimal.h"
#include "core/measure/quantity.h"

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace stow::intake {

constexpr std::array<std::string_view, 7> weekday_names{"Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"};

std::vector<std::string_view> phrases(std::string_view details);

// What follows `word` in the phrase, trimmed; nothing if the phrase does not begin with it.
std::optional<std::string_view> after(std::string_view phrase, std::string_view word);

// Whole units of a number at 10^-places, which must be above zero unless `zero`; never rounded: a finer number is none.
std::optional<std::int64_t> number_of(std::string_view text, int places, char decimal_mark, bool zero = false);

// "140 to 600", "to 600", "from 140". Both sides nothing: not so written.
struct Span {
    std::optional<Length> from, to;
};
Span span_of(std::string_view text, char decimal_mark);

// The two sides of " to "; the same text twice where there is none.
struct Ends {
    std::string_view from, to;
};
Ends ends_of(std::string_view text);

// Without needless zeros: (5000, 1) is "500", (5005, 1) is "500.5".
std::string short_number(std::int64_t units, int places);

} // namespace stow::intake
