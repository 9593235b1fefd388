// Lengths and weights as JSON numbers in millimetres and grams. Private to intake; include only in .cpp files.
#pragma once

#include "core/measure/quantity.h"

#include <nlohmann/json.hpp>

namespace stow::intake {

// Tenths as a decimal: whole ones as whole numbers; the division by ten is exact in the shortest text.
inline nlohmann::ordered_json tenths(std::int64_t units)
{
    if (units % 10 == 0) return units / 10;
    return static_cast<double>(units) / 10.0;
}
inline nlohmann::ordered_json mm_of(Length l)
{
    return tenths(l.units);
}
inline nlohmann::ordered_json mm_of(const Size& s)
{
    return nlohmann::ordered_json::array({mm_of(s.x), mm_of(s.y), mm_of(s.z)});
}
inline nlohmann::ordered_json grams_of(Weight w)
{
    return tenths(w.units);
}

} // namespace stow::intake
