// Inches, ounces and pounds. Exact by the International Yard and Pound Agreement of 1959 (NIST SP 811, appendix B.8):
// 1 in = 25.4 mm, 1 lb = 453.59237 g, 1 lb = 16 oz, 1 ft = 12 in.
#pragma once

#include "core/measure/quantity.h"

namespace stow {

inline constexpr std::int64_t ounces_a_pound = 16;

constexpr double in_inches(Length l)
{
    return in_mm(l) / 25.4;
}
constexpr double in_ounces(Weight w)
{
    return in_grams(w) * static_cast<double>(ounces_a_pound) / 453.59237;
}
constexpr double in_cubic_inches(Volume v)
{
    return in_litres(v) * 1e6 / (25.4 * 25.4 * 25.4);
}

// To the next 0.1 mm upwards: a size never becomes smaller. From 0 to 1e9.
constexpr Length from_thousandth_inches(std::int64_t thousandths)
{
    return {(thousandths * 254 + 999) / 1000};
}
// To the nearest 0.1 g. From 0 to 1e9.
constexpr Weight from_thousandth_ounces(std::int64_t thousandths)
{
    // 1/1000 oz = 453.59237 / 16 / 1000 g = 45359237 / 160000000 of 0.1 g
    return {(thousandths * 45'359'237 + 80'000'000) / 160'000'000};
}

} // namespace stow
