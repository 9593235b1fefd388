// Numbers as people and shops write them: decimal comma or point, grouped thousands, a currency beside the amount.
#pragma once

#include "core/measure/money.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace stow::intake {

// "1.234,50" with decimal mark ',' to "1234.50": grouping by the other mark, spaces or apostrophes is taken out where
// every group has three digits, the decimal mark becomes a point. Nothing for what is not a number.
std::optional<std::string> plain_number(std::string_view text, char decimal_mark);

// A number without a fraction: "3", "3,00", "1.000".
std::optional<std::int64_t> whole_number(std::string_view text, char decimal_mark);

enum class MoneyFault { not_a_number, unknown_currency };
struct MoneyRead {
    std::optional<Money> money;
    MoneyFault fault = MoneyFault::not_a_number; // where there is no money
};
// "12,50", "12,50 €", "EUR 12.50". A currency beside the amount wins over `currency`; a bare "$" says nothing.
MoneyRead read_money(std::string_view text, const Currency& currency, char decimal_mark);

// Small letters, no accents, only letters and digits: to compare headings and words.
std::string folded(std::string_view text);

enum class YesNo { yes, no, unclear };
YesNo yes_or_no(std::string_view text); // English and German words, 1 and 0, x

} // namespace stow::intake
