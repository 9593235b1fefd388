// Colours for the roles of a display list.
#pragma once

#include "core/papers/display_list.h"

#include <QColor>

#include <array>

namespace stow::painting {

struct Palette {
    static constexpr std::size_t roles = static_cast<std::size_t>(papers::Role::highlight) + 1;
    std::array<QColor, roles> colour;
    // What `half` and `shaded` faces are mixed with, in percent of it.
    QColor shadow;
    int half = 0, shaded = 0;
    bool two_tones = false; // black and white alone: what would be a tint is hatched, pictures lose their greys

    QColor of(papers::Role role) const { return colour[static_cast<std::size_t>(role)]; }
    QColor of(const papers::Fill& fill) const;
};

const Palette& light();
const Palette& dark();
const Palette& black_only(); // for thermal labels and laser printers

} // namespace stow::painting
