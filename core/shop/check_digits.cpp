#include "core/shop/check_digits.h"

#include <array>
#include <string>

namespace stow::shop {

namespace {

bool all_digits(std::string_view text)
{
    return !text.empty() && text.find_first_not_of("0123456789") == std::string_view::npos;
}

bool capital(char c)
{
    return c >= 'A' && c <= 'Z';
}

} // namespace

std::optional<int> mod10_check_digit(std::string_view data)
{
    if (!all_digits(data)) return std::nullopt;
    int sum = 0, weight = 3;
    for (std::size_t i = data.size(); i-- > 0;) {
        sum += weight * (data[i] - '0');
        weight = 4 - weight;
        sum %= 10; // stays small however long the number
    }
    return (10 - sum) % 10;
}

bool gtin_ok(std::string_view text)
{
    if (text.size() != 8 && text.size() != 12 && text.size() != 13 && text.size() != 14) return false;
    return all_digits(text) && mod10_check_digit(text.substr(0, text.size() - 1)) == text.back() - '0';
}

std::optional<int> s10_check_digit(std::string_view eight_digits)
{
    constexpr std::array<int, 8> weights{8, 6, 4, 2, 3, 5, 9, 7};
    if (eight_digits.size() != weights.size() || !all_digits(eight_digits)) return std::nullopt;
    int sum = 0;
    for (std::size_t i = 0; i < weights.size(); ++i) sum += weights[i] * (eight_digits[i] - '0');
    const int check = 11 - sum % 11;
    return check == 10 ? 0 : check == 11 ? 5 : check;
}

bool s10_ok(std::string_view text)
{
    std::string packed;
    for (const char c : text) {
        if (c != ' ') packed += c;
    }
    if (packed.size() != 13 || !capital(packed[0]) || !capital(packed[1]) || !capital(packed[11]) ||
        !capital(packed[12]))
        return false;
    return s10_check_digit(std::string_view(packed).substr(2, 8)) == packed[10] - '0' && packed[10] >= '0' &&
           packed[10] <= '9';
}

} // namespace stow::shop
