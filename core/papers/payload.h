// What a code on our papers says: "SB2:L:2611-017:1:X". Version of the payload, L for a parcel's address label, P for
// another paper of a parcel, O for an order or C for a command, the number or the command's word, on a label which
// print of it this is, a check character; never anything personal. Capitals, digits and - : only, so that QR codes stay
// small (alphanumeric mode; a number with other characters is refused). The check character is that of ISO/IEC 7064,
// MOD 37-2, over the letters and digits of all that stands before it; it may be '*'.
//
// Version 1 said P for labels and other papers alike and no print: it is still read, so that what lies there still
// scans. Orders and commands are as they were in it.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <tl/expected.hpp>

namespace stow::papers {

struct Payload {
    enum class Kind {
        label,    // of a parcel
        paper,    // of a parcel, but not its label
        unmarked, // of a parcel, of version 1: its label or another paper
        order,
        command
    } kind = Kind::paper;
    std::string number;
    int print = 0; // of a label, from 1 on
    bool of_parcel() const { return kind != Kind::order && kind != Kind::command; }
    friend bool operator==(const Payload&, const Payload&) = default;
};

// Why a scanned text is not one of our codes.
enum class NotOurs {
    foreign,       // some other code: a good's, a carrier's
    newer_version, // ours, but of a later version
    damaged        // ours, but a character is missing, changed or swapped
};

inline constexpr int most_prints = 999; // of one label: the code stays small

// Nothing when the number is empty or longer than 30, or has other characters than A-Z, 0-9 and -; or where a label's
// print is not from 1 to 999.
std::optional<std::string> to_text(const Payload& payload);
tl::expected<Payload, NotOurs> parse_payload(std::string_view scanned);

// ISO/IEC 7064 MOD 37-2 check character of a text of 0-9 and A-Z; nothing for other text.
std::optional<char> check_37_2(std::string_view text);
bool holds_37_2(std::string_view text_with_check);

} // namespace stow::papers
