#include "core/papers/payload.h"

#include <algorithm>

namespace stow::papers {

namespace {

constexpr std::string_view alphabet = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ*"; // the last only as a check character
constexpr std::string_view family = "SB";
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

// What kind it is, by version and letter.
std::optional<Payload::Kind> kind_of(char version, char letter)
{
    if (version == '2' && letter == 'L') return Payload::Kind::label;
    if (version == '2' && letter == 'P') return Payload::Kind::paper;
    if (version == '1' && letter == 'P') return Payload::Kind::unmarked;
    if (version == '1' && letter == 'O') return Payload::Kind::order;
    if (version == '1' && letter == 'C') return Payload::Kind::command;
    return std::nullopt;
}

// "12" to 12; nothing for any other text, a leading zero too.
std::optional<int> print_of(std::string_view digits)
{
    if (digits.empty() || digits.size() > 3 || digits[0] == '0') return std::nullopt;
    int print = 0;
    for (const char c : digits) {
        if (c < '0' || c > '9') return std::nullopt;
        print = print * 10 + (c - '0');
    }
    return print;
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
    const bool label = payload.kind == Payload::Kind::label;
    if (!sound_number(payload.number)) return std::nullopt;
    if (label && (payload.print < 1 || payload.print > most_prints)) return std::nullopt;
    std::string text;
    switch (payload.kind) {
    case Payload::Kind::label: text = "SB2:L:"; break;
    case Payload::Kind::paper: text = "SB2:P:"; break;
    case Payload::Kind::unmarked: text = "SB1:P:"; break;
    case Payload::Kind::order: text = "SB1:O:"; break;
    case Payload::Kind::command: text = "SB1:C:"; break;
    }
    text += payload.number;
    if (label) text += ":" + std::to_string(payload.print);
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
    if (number_of_version != "1" && number_of_version != "2") return tl::unexpected(NotOurs::newer_version);

    // ":P:2611-017" or ":L:2611-017:1"
    const std::string_view rest = text.substr(colon, last - 1 - colon);
    if (rest.size() < 4 || rest[2] != ':') return tl::unexpected(NotOurs::damaged);
    const auto kind = kind_of(number_of_version[0], rest[1]);
    if (!kind) return tl::unexpected(NotOurs::damaged);
    Payload payload;
    payload.kind = *kind;
    std::string_view number = rest.substr(3);
    if (payload.kind == Payload::Kind::label) {
        const std::size_t between = number.find(':');
        if (between == std::string_view::npos) return tl::unexpected(NotOurs::damaged);
        const auto print = print_of(number.substr(between + 1));
        if (!print) return tl::unexpected(NotOurs::damaged);
        payload.print = *print;
        number = number.substr(0, between);
    }
    payload.number = std::string(number);
    if (!sound_number(payload.number)) return tl::unexpected(NotOurs::damaged);
    return payload;
}

} // namespace stow::papers
