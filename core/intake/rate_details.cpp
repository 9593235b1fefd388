#include "core/intake/rate_details.h"

#include "core/intake/numbers.h"
#include "core/intake/text_encoding.h"

namespace stow::intake {

std::vector<std::string_view> phrases(std::string_view details)
{
    std::vector<std::string_view> result;
    while (!details.empty()) {
        const auto slash = details.find('/');
        if (const auto phrase = trimmed(details.substr(0, slash)); !phrase.empty()) result.push_back(phrase);
        if (slash == std::string_view::npos) break;
        details.remove_prefix(slash + 1);
    }
    return result;
}

std::optional<std::string_view> after(std::string_view phrase, std::string_view word)
{
    if (phrase.substr(0, word.size()) != word) return std::nullopt;
    const std::string_view rest = phrase.substr(word.size());
    if (!rest.empty() && rest.front() != ' ') return std::nullopt;
    return trimmed(rest);
}

std::optional<std::int64_t> number_of(std::string_view text, int places, char decimal_mark, bool zero)
{
    const auto plain = plain_number(text, decimal_mark);
    const auto down = plain ? scaled(*plain, places, Rounding::down) : std::nullopt;
    if (!down || down != scaled(*plain, places, Rounding::up)) return std::nullopt;
    if (*down < 0 || (*down == 0 && !zero)) return std::nullopt;
    return down;
}

Ends ends_of(std::string_view text)
{
    constexpr std::string_view to = " to ";
    const auto at = text.find(to);
    if (at == std::string_view::npos) return {text, text};
    return {trimmed(text.substr(0, at)), trimmed(text.substr(at + to.size()))};
}

Span span_of(std::string_view text, char decimal_mark)
{
    const auto length = [&](std::string_view number) -> std::optional<Length> {
        const auto tenths = number_of(number, 1, decimal_mark);
        return tenths ? std::optional(Length{*tenths}) : std::nullopt;
    };
    if (const auto rest = after(text, "to")) return {std::nullopt, length(*rest)};
    if (const auto rest = after(text, "from")) return {length(*rest), std::nullopt};
    const Ends ends = ends_of(text);
    if (ends.from.data() == ends.to.data()) return {}; // a bare number says neither
    const Span span{length(ends.from), length(ends.to)};
    return span.from && span.to && *span.from <= *span.to ? span : Span{};
}

std::string short_number(std::int64_t units, int places)
{
    std::string text = unscaled(units, places);
    if (places > 0) {
        text.erase(text.find_last_not_of('0') + 1);
        if (text.back() == '.') text.pop_back();
    }
    return text;
}

} // namespace stow::intake
