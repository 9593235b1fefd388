#include "core/measure/decimal.h"

#include <charconv>
#include <fmt/format.h>

namespace stow {

namespace {

constexpr std::int64_t limit = 900'000'000'000'000'000;

bool is_digit(char c)
{
    return c >= '0' && c <= '9';
}

struct Digits {
    bool negative = false;
    std::string digits; // all digits, the mark removed
    int after_mark = 0; // how many of them stand after the mark
};

std::optional<Digits> read(std::string_view text, char decimal_mark)
{
    Digits result;
    std::size_t i = 0;
    if (i < text.size() && (text[i] == '-' || text[i] == '+')) result.negative = text[i++] == '-';
    bool mark_seen = false;
    for (; i < text.size() && text[i] != 'e' && text[i] != 'E'; ++i) {
        if (is_digit(text[i])) {
            result.digits += text[i];
            if (mark_seen) ++result.after_mark;
        } else if (text[i] == decimal_mark && !mark_seen) {
            mark_seen = true;
        } else {
            return std::nullopt;
        }
    }
    if (result.digits.empty()) return std::nullopt;
    if (i < text.size()) {
        ++i;
        if (i < text.size() && text[i] == '+') ++i;
        int exponent = 0;
        const auto end = text.data() + text.size();
        const auto parsed = std::from_chars(text.data() + i, end, exponent);
        if (parsed.ec != std::errc{} || parsed.ptr != end || exponent > 400 || exponent < -400) return std::nullopt;
        result.after_mark -= exponent;
    }
    return result;
}

} // namespace

std::optional<std::int64_t> scaled(std::string_view text, int places, Rounding rounding, char decimal_mark)
{
    const auto number = read(text, decimal_mark);
    if (!number) return std::nullopt;
    const auto count = static_cast<std::int64_t>(number->digits.size());
    const std::int64_t kept = count - number->after_mark + places; // digits that end before the rounding place
    std::int64_t value = 0;
    bool rest = false;
    for (std::int64_t i = 0; i < kept || i < count; ++i) {
        const int digit = i < count ? number->digits[static_cast<std::size_t>(i)] - '0' : 0;
        if (i < kept) {
            value = value * 10 + digit;
            if (value > limit) return std::nullopt;
            if (value == 0 && i >= count) break; // trailing zeros of nothing
        } else {
            rest = rest || digit != 0;
        }
    }
    const bool half_or_more = kept >= 0 && kept < count && number->digits[static_cast<std::size_t>(kept)] >= '5';
    switch (rounding) {
    case Rounding::up: value += rest && !number->negative; break;
    case Rounding::down: value += rest && number->negative; break;
    case Rounding::nearest: value += half_or_more; break;
    }
    return number->negative ? -value : value;
}

std::string unscaled(std::int64_t units, int places)
{
    std::string text = fmt::format("{:0{}}", units < 0 ? -units : units, places + 1);
    if (places > 0) text.insert(text.size() - static_cast<std::size_t>(places), 1, '.');
    return units < 0 ? "-" + text : text;
}

} // namespace stow
