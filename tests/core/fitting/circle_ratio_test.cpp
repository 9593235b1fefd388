// The two ratios of equal circles in a circle that have no short closed form, from their equations: 10 circles after
// OEIS A281115 (degree 24), 12 from the equation of the arrangement with three-fold symmetry (proved best by Fodor,
// Geom. Dedicata 79 2000). The others stand in tube_test.cpp.
#include "core/fitting/tube.h"

#include <array>
#include <cmath>
#include <gtest/gtest.h>

namespace stow::fitting {
namespace {

double ratio(std::size_t n)
{
    return static_cast<double>(least_ratio(n)) / 1e9;
}

template <class Function>
double root_between(double low, double high, const Function& f)
{
    for (int k = 0; k < 200; ++k) {
        const double middle = (low + high) / 2;
        ((f(middle) > 0) == (f(low) > 0) ? low : high) = middle;
    }
    return low;
}

TEST(CircleRatio, TenFromTheRootOfItsPolynomial)
{
    const auto polynomial = [](double d) {
        constexpr std::array<double, 13> factors{1,       -32,    463,     -3998,  22899,   -91428, 260179,
                                                 -529874, 763206, -754052, 481476, -176440, 27556};
        double value = 0;
        for (const double f : factors) value = value * d * d + f;
        return value;
    };
    const double d = root_between(0.70, 0.72, polynomial);
    EXPECT_NEAR(d, 0.710978235561, 1e-9);
    EXPECT_NEAR(ratio(10), 1 + 2 / d, 2e-9);
}

TEST(CircleRatio, TwelveFromItsThreefoldArrangement)
{
    const auto equation = [](double r) {
        const double t = std::sqrt(3.0);
        return r * r - 8.0 / 3 - 2 / t * r + 4 / t / r - 4 / r * std::sqrt(r * r - 1);
    };
    EXPECT_NEAR(ratio(12), 1 + root_between(2.9, 3.2, equation), 2e-9);
}

// Density n / ratio², as tabulated (Graham, Lubachevsky, Nurmela & Östergård 1998).
TEST(CircleRatio, DensitiesAreThePublishedOnes)
{
    constexpr std::array densities{1.0,    0.5,    0.6462, 0.6863, 0.6852, 0.6667,
                                   0.7778, 0.7325, 0.6894, 0.6878, 0.7145, 0.7390};
    for (std::size_t n = 1; n <= densities.size(); ++n) {
        EXPECT_NEAR(static_cast<double>(n) / (ratio(n) * ratio(n)), densities[n - 1], 0.00011) << n;
    }
}

} // namespace
} // namespace stow::fitting
