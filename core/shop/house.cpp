#include "core/shop/house.h"

namespace stow::shop {

std::string_view name_of(PaperSize size)
{
    switch (size) {
    case PaperSize::a4: return "a4";
    case PaperSize::letter: return "letter";
    }
    return {};
}

std::optional<PaperSize> paper_size(std::string_view name)
{
    for (const PaperSize size : {PaperSize::a4, PaperSize::letter}) {
        if (name_of(size) == name) return size;
    }
    return std::nullopt;
}

} // namespace stow::shop
