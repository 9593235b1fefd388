// Exact integer amounts with a unit each. Adding a length to a weight does not compile.
#pragma once

#include <compare>
#include <cstdint>

namespace stow {

// An amount counted in whole smallest units of its kind. Sums of up to 9.2e18 units are exact.
template <class Kind>
struct Quantity {
    std::int64_t units = 0;

    friend constexpr auto operator<=>(Quantity, Quantity) = default;
    friend constexpr Quantity operator+(Quantity a, Quantity b) { return {a.units + b.units}; }
    friend constexpr Quantity operator-(Quantity a, Quantity b) { return {a.units - b.units}; }
    friend constexpr Quantity operator-(Quantity a) { return {-a.units}; }
    friend constexpr Quantity operator*(Quantity a, std::int64_t n) { return {a.units * n}; }
    friend constexpr Quantity operator*(std::int64_t n, Quantity a) { return {a.units * n}; }
    constexpr Quantity& operator+=(Quantity b)
    {
        units += b.units;
        return *this;
    }
    constexpr Quantity& operator-=(Quantity b)
    {
        units -= b.units;
        return *this;
    }
};

using Length = Quantity<struct LengthKind>; // 0.1 mm
using Weight = Quantity<struct WeightKind>; // 0.1 g
using Area = Quantity<struct AreaKind>;     // 0.01 mm²
using Volume = Quantity<struct VolumeKind>; // 0.001 mm³; a cube of 200 m still fits

constexpr Length mm(std::int64_t whole)
{
    return {whole * 10};
}
constexpr Length tenth_mm(std::int64_t tenths)
{
    return {tenths};
}
constexpr Weight grams(std::int64_t whole)
{
    return {whole * 10};
}
constexpr Weight tenth_g(std::int64_t tenths)
{
    return {tenths};
}
constexpr Volume millilitres(std::int64_t whole)
{
    return {whole * 1'000'000};
}

constexpr Area operator*(Length a, Length b)
{
    return {a.units * b.units};
}
constexpr Volume operator*(Area a, Length b)
{
    return {a.units * b.units};
}

// For showing and for statistics only; decisions stay on the integers.
constexpr double in_mm(Length l)
{
    return static_cast<double>(l.units) / 10.0;
}
constexpr double in_grams(Weight w)
{
    return static_cast<double>(w.units) / 10.0;
}
constexpr double in_litres(Volume v)
{
    return static_cast<double>(v.units) / 1e9;
}

// Weight of a volume of something that weighs `per_litre`, rounded to the nearest 0.1 g.
constexpr Weight weight_of(Volume v, Weight per_litre)
{
    const std::int64_t thousandths = v.units / 1'000'000 * per_litre.units; // ml times 0.1 g
    return {(thousandths + 500) / 1000};
}

} // namespace stow
