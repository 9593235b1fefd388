// Money in minor units of one currency (ISO 4217); never floating point.
#pragma once

#include <array>
#include <compare>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace stow {

// A currency by its ISO 4217 letters, such as EUR. Default: EUR.
class Currency {
public:
    constexpr Currency() = default;
    // Nothing for a code that ISO 4217 does not list.
    static std::optional<Currency> from(std::string_view code);

    std::string code() const { return {letters_.begin(), letters_.end()}; }
    // Decimal places of the minor unit: EUR 2, JPY 0, KWD 3 (ISO 4217 table A.1).
    int places() const;

    friend constexpr auto operator<=>(const Currency&, const Currency&) = default;

private:
    std::array<char, 3> letters_{'E', 'U', 'R'};
};

struct Money {
    std::int64_t minor = 0;
    Currency currency;

    // Arithmetic and order need one currency; mixing two is a broken invariant and throws std::logic_error.
    friend Money operator+(Money a, Money b);
    friend Money operator-(Money a, Money b);
    friend Money operator*(Money a, std::int64_t n) { return {a.minor * n, a.currency}; }
    Money& operator+=(Money b) { return *this = *this + b; }
    Money& operator-=(Money b) { return *this = *this - b; }
    friend bool operator==(const Money&, const Money&) = default;
    friend std::strong_ordering operator<=>(const Money& a, const Money& b);
};

// `amount` times numerator / denominator, rounded to the nearest minor unit, halves away from zero.
Money share(Money amount, std::int64_t numerator, std::int64_t denominator);

// "12.34 EUR": for files and logs; screens use the locale.
std::string to_text(Money amount);

// "12.34" or "12,34" in the given currency; nothing if it is not a number or is finer than the minor unit.
std::optional<Money> parse_money(std::string_view text, Currency currency, char decimal_mark = '.');

} // namespace stow
