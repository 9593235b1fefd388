#include "core/papers/qr.h"

#include <memory>
#include <qrencode.h>

namespace stow::papers {

std::optional<QrCode> qr_code(const std::string& text)
{
    // Version 0 asks for the smallest; the library picks numeric, alphanumeric or byte mode by itself.
    const std::unique_ptr<QRcode, void (*)(QRcode*)> made(
        QRcode_encodeString(text.c_str(), 0, QR_ECLEVEL_M, QR_MODE_8, 1), QRcode_free);
    if (!made) return std::nullopt;
    QrCode code;
    code.version = made->version;
    code.side = made->width;
    const auto count = static_cast<std::size_t>(code.side) * static_cast<std::size_t>(code.side);
    for (std::size_t i = 0; i < count; ++i) code.dark.push_back((made->data[i] & 1U) != 0);
    return code;
}

Modules modules(const QrCode& code, Point at, int module)
{
    return {{at.x + quiet_modules * module, at.y + quiet_modules * module}, module, code.side, code.dark};
}

} // namespace stow::papers
