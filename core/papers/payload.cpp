#include "core/papers/payload.h"

#include <algorithm>

namespace stow::papers {

namespace {

constexpr std::string_view alphabet = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ*"; // the last only as a check character
constexpr std::string_view family = "SB";
constexpr std::string_view version = "1";
constexpr std::size_t longest_number = 30;

bool letter_or_digit(char c)
{
    return (c >= '0' && c <= '9') || (c >= 'A' && c <= 'Z');
}

std::string letters_and_digits(std::string_view text)
{
    std::string kept;
    std::copy_if(text.begin(), text.end(), std::back_inserter(kept), letter_or_digit);
    return kept;
}

bool sound_number(std::string_view number)
{
    return !number.empty() && number.size() <= longest_number &&
           std::all_of(number.begin(), number.end(), [](char c) { return letter_or_digit(c) || c == '-'; });
}

// ISO/IEC 7064, pure system: with radix 2 and modulus 37, each character is added and the sum doubled.
std::size_t doubled_sum(std::string_view text)
{
    std::size_t sum = 0;
    for (const char c : text) sum = (sum + alphabet.find(c)) * 2 % 37;
    return sum;
}

std::string_view trimmed(std::string_view text)
{
    constexpr std::string_view blank = " \t\r\n";
    const std::size_t first = text.find_first_not_of(blank);
    if (first == std::string_view::npos) return {};
    return text.substr(first, text.find_last_not_of(blank) - first + 1);
}

} // namespace

std::optional<char> check_37_2(std::string_view text)
{
    if (!std::all_of(text.begin(), text.end(), letter_or_digit)) return std::nullopt;
    return alphabet[(37 + 1 - doubled_sum(text)) % 37];
}

bool holds_37_2(std::string_view text_with_check)
{
    if (text_with_check.empty()) return false;
    const auto check = check_37_2(text_with_check.substr(0, text_with_check.size() - 1));
    return check && *check == text_with_check.back();
}

std::optional<std::string> to_text(const Payload& payload)
{
    if (!sound_number(payload.number)) return std::nullopt;
    std::string text = std::string(family) + std::string(version);
    switch (payload.kind) {
    case Payload::Kind::parcel: text += ":P:"; break;
    case Payload::Kind::order: text += ":O:"; break;
    case Payload::Kind::command: text += ":C:"; break;
    }
    text += payload.number;
    const std::string kept = letters_and_digits(text);
    return text + ":" + *check_37_2(kept);
}

tl::expected<Payload, NotOurs> parse_payload(std::string_view scanned)
{
    const std::string_view text = trimmed(scanned);
    if (text.size() < 4 || text.substr(0, family.size()) != family) return tl::unexpected(NotOurs::foreign);
    const std::size_t colon = text.find(':');
    if (colon == std::string_view::npos) return tl::unexpected(NotOurs::foreign);
    const std::string_view number_of_version = text.substr(family.size(), colon - family.size());
    const auto digit = [](char c) { return c >= '0' && c <= '9'; };
    if (number_of_version.empty() || !std::all_of(number_of_version.begin(), number_of_version.end(), digit)) {
        return tl::unexpected(NotOurs::foreign);
    }
    // The check covers the version too, so a misread version is told from a newer one.
    const std::size_t last = text.size() - 1;
    const bool sound = text[last - 1] == ':' && holds_37_2(letters_and_digits(text.substr(0, last - 1)) + text[last]);
    if (!sound) return tl::unexpected(NotOurs::damaged);
    if (number_of_version != version) return tl::unexpected(NotOurs::newer_version);

    Payload payload;
    const std::string_view kind = text.substr(colon, 3);
    if (kind == ":P:")
        payload.kind = Payload::Kind::parcel;
    else if (kind == ":O:")
        payload.kind = Payload::Kind::order;
    else if (kind == ":C:")
        payload.kind = Payload::Kind::command;
    else
        return tl::unexpected(NotOurs::damaged);
    if (last - 1 <= colon + 3) return tl::unexpected(NotOurs::damaged);
    payload.number = std::string(text.substr(colon + 3, last - 1 - (colon + 3)));
    if (!sound_number(payload.number)) return tl::unexpected(NotOurs::damaged);
    return payload;
}

} // namespace stow::papers
