// Does a closed parcel keep to a format's limits, and if not, by how much does it miss them?
#pragma once

#include "core/measure/shape.h"
#include "core/postage/rate_sheet.h"

#include <optional>
#include <string_view>

namespace stow::postage {

// A parcel as size limits see it: edges sorted, length >= width >= height; of a roll its length and diameter too.
struct Outline {
    Size edges;
    bool roll = false;
    Length roll_length, diameter;
};
Outline outline(const Size& closed, bool roll);

Length sum(const Outline& parcel);              // length + width + height
Length length_and_girth(const Outline& parcel); // length + 2 (width + height): girth goes across, not along, the length

// The limit missed by most.
struct Miss {
    std::string_view limit; // "length", "width", "height", "sum", "girth", "ratio", "roll length", "roll sum"
    Length by;
    bool too_small = false;
};
std::optional<Miss> miss(const Format& format, const Outline& parcel);

} // namespace stow::postage
