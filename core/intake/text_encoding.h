// Bytes of a file to UTF-8: by byte order mark, else strict UTF-8, else ICU's guess with a leaning to windows-1252.
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace stow::intake {

struct Decoded {
    std::string encoding; // IANA name
    std::string text;     // UTF-8 without byte order mark
};

// Nothing when no encoding fits without a damaged character.
std::optional<Decoded> decode(std::string_view bytes);

// Well-formed by Unicode 15, table 3-7: no overlong forms, no surrogates, nothing past U+10FFFF.
bool is_utf8(std::string_view bytes);

// "UTF-16LE" or "UTF-16BE" when a byte order mark or the pattern of zero bytes says so.
std::optional<std::string> utf16_kind(std::string_view bytes);

// Without the spaces, tabs and line ends around it.
std::string_view trimmed(std::string_view text);

} // namespace stow::intake
