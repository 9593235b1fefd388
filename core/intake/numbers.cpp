#include "core/intake/numbers.h"

#include "core/intake/text_encoding.h"
#include "core/measure/decimal.h"

#include <algorithm>
#include <array>
#include <unicode/normalizer2.h>
#include <unicode/uchar.h>
#include <unicode/unistr.h>
#include <vector>

namespace stow::intake {

namespace {

bool is_digit(char c)
{
    return c >= '0' && c <= '9';
}

bool is_letter(char c)
{
    return (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z');
}

void replace_all(std::string& text, std::string_view from, std::string_view to)
{
    for (std::size_t at = text.find(from); at != std::string::npos; at = text.find(from, at + to.size()))
        text.replace(at, from.size(), to);
}

// Digits in groups of three behind a first one of one to three, all parted by `group`.
std::optional<std::string> without_groups(std::string_view whole, char group)
{
    std::string digits;
    std::size_t since = 0;
    bool grouped = false;
    for (const char c : whole) {
        if (c == group) {
            if (grouped ? since != 3 : since == 0 || since > 3) return std::nullopt;
            grouped = true;
            since = 0;
        } else if (is_digit(c)) {
            digits += c;
            ++since;
        } else {
            return std::nullopt;
        }
    }
    if (grouped && since != 3) return std::nullopt;
    return digits;
}

} // namespace

std::optional<std::string> plain_number(std::string_view text, char decimal_mark)
{
    std::string number(trimmed(text));
    // No-break, narrow and thin spaces, and both apostrophes, group like a plain space.
    for (const std::string_view space : {"\u00A0", "\u202F", "\u2009", "\u2019", "'"}) replace_all(number, space, " ");
    replace_all(number, "\u2212", "-");
    std::string result;
    std::string_view rest = number;
    if (!rest.empty() && (rest[0] == '-' || rest[0] == '+')) {
        if (rest[0] == '-') result = "-";
        rest.remove_prefix(1);
    }
    const auto mark = rest.find(decimal_mark);
    const std::string_view whole = rest.substr(0, mark);
    std::string_view after = mark == std::string_view::npos ? std::string_view{} : rest.substr(mark + 1);
    if (after == "-" || after == "--") after = {}; // "12,-" on price tags
    if (!std::all_of(after.begin(), after.end(), is_digit)) return std::nullopt;
    std::optional<std::string> digits;
    for (const char group : {decimal_mark == ',' ? '.' : ',', ' '}) {
        if (!digits) digits = without_groups(whole, group);
    }
    if (!digits || (digits->empty() && after.empty())) return std::nullopt;
    result += digits->empty() ? "0" : *digits;
    if (!after.empty()) result += '.' + std::string(after);
    return result;
}

std::optional<std::int64_t> whole_number(std::string_view text, char decimal_mark)
{
    const auto plain = plain_number(text, decimal_mark);
    if (!plain) return std::nullopt;
    const auto down = scaled(*plain, 0, Rounding::down);
    if (!down || down != scaled(*plain, 0, Rounding::up)) return std::nullopt;
    return down;
}

MoneyRead read_money(std::string_view text, const Currency& currency, char decimal_mark)
{
    std::string amount(trimmed(text));
    std::string letters;
    for (const auto& [sign, code] : {std::pair{"€", "EUR"}, std::pair{"£", "GBP"}, std::pair{"$", ""}}) {
        if (amount.find(sign) == std::string::npos) continue;
        letters = code;
        replace_all(amount, sign, "");
    }
    const auto first = std::find_if(amount.begin(), amount.end(), is_letter);
    const auto last = std::find_if_not(first, amount.end(), is_letter);
    if (first != last) {
        letters = std::string(first, last);
        amount.erase(first, last);
    }
    MoneyRead read;
    Currency used = currency;
    if (!letters.empty()) {
        std::transform(letters.begin(), letters.end(), letters.begin(),
                       [](char c) { return c >= 'a' && c <= 'z' ? static_cast<char>(c - 32) : c; });
        const auto known = Currency::from(letters);
        if (!known) {
            read.fault = letters.size() == 3 ? MoneyFault::unknown_currency : MoneyFault::not_a_number;
            return read;
        }
        used = *known;
    }
    if (const auto number = plain_number(amount, decimal_mark)) read.money = parse_money(*number, used);
    return read;
}

std::string folded(std::string_view text)
{
    UErrorCode error = U_ZERO_ERROR;
    const icu::Normalizer2* decompose = icu::Normalizer2::getNFKDInstance(error);
    icu::UnicodeString wide =
        icu::UnicodeString::fromUTF8(icu::StringPiece(text.data(), static_cast<std::int32_t>(text.size())));
    wide.foldCase(); // ß to ss
    if (U_SUCCESS(error)) wide = decompose->normalize(wide, error);
    icu::UnicodeString kept;
    for (std::int32_t i = 0; i < wide.length(); i = wide.moveIndex32(i, 1)) {
        const UChar32 c = wide.char32At(i);
        if (u_isalnum(c)) kept.append(c);
    }
    std::string result;
    kept.toUTF8String(result);
    return result;
}

YesNo yes_or_no(std::string_view text)
{
    const std::string word = folded(text);
    constexpr std::array<std::string_view, 7> yes{"yes", "y", "true", "1", "x", "ja", "wahr"};
    constexpr std::array<std::string_view, 7> no{"no", "n", "false", "0", "", "nein", "falsch"};
    if (std::find(yes.begin(), yes.end(), word) != yes.end()) return YesNo::yes;
    if (std::find(no.begin(), no.end(), word) != no.end()) return YesNo::no;
    return YesNo::unclear;
}

} // namespace stow::intake
