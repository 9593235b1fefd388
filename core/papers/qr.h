// QR codes (ISO/IEC 18004), made by libqrencode at error correction level M.
#pragma once

#include "core/papers/display_list.h"

#include <optional>
#include <string>

namespace stow::papers {

struct QrCode {
    int version = 0;        // 1 to 40
    int side = 0;           // modules along one edge: 17 + 4 * version
    std::vector<bool> dark; // row by row
};

inline constexpr int quiet_modules = 4; // kept free on every side

// The smallest code for the text; nothing when it is empty or too long for any.
std::optional<QrCode> qr_code(const std::string& text);

// Edge of the printed code with its quiet zone.
constexpr int printed_edge(const QrCode& code, int module)
{
    return (code.side + 2 * quiet_modules) * module;
}

// The code as a mark, its quiet zone beginning at `at`.
Modules modules(const QrCode& code, Point at, int module);

} // namespace stow::papers
