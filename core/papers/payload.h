// What a code on our papers says: "SB1:P:2611-017:T". Version of the payload, P for a parcel, O for an order or C for a
// command, the number or the command's word, a check character; never anything personal. Capitals, digits and - : only,
// so that QR codes stay small (alphanumeric mode; a number with other characters is refused). The check character is
// that of ISO/IEC 7064, MOD 37-2, over the letters and digits of all that stands before it; it may be '*'.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <tl/expected.hpp>

namespace stow::papers {

struct Payload {
    enum class Kind { parcel, order, command } kind = Kind::parcel;
    std::string number;
    friend bool operator==(const Payload&, const Payload&) = default;
};

// Why a scanned text is not one of our codes.
enum class NotOurs {
    foreign,       // some other code: a good's, a carrier's
    newer_version, // ours, but of a later version
    damaged        // ours, but a character is missing, changed or swapped
};

// Nothing when the number is empty or longer than 30, or has other characters than A-Z, 0-9 and -.
std::optional<std::string> to_text(const Payload& payload);
tl::expected<Payload, NotOurs> parse_payload(std::string_view scanned);

// ISO/IEC 7064 MOD 37-2 check character of a text of 0-9 and A-Z; nothing for other text.
std::optional<char> check_37_2(std::string_view text);
bool holds_37_2(std::string_view text_with_check);

} // namespace stow::papers
