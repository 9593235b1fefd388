// Inches and ounces against the table of NIST SP 811, appendix B.8: 1 in = 2.54 E-02 m exactly, 1 lb (avoirdupois) =
// 4.535 923 7 E-01 kg exactly, 1 oz = 2.834 952 E-02 kg.
#include "core/measure/inch_ounce.h"

#include <cmath>
#include <gtest/gtest.h>
#include <rapidcheck.h>

namespace stow {
namespace {

TEST(InchOunce, AgreesWithTheTable)
{
    EXPECT_DOUBLE_EQ(in_inches(mm(254)), 10.0);
    EXPECT_NEAR(in_ounces(grams(1000)), 1000 / 28.34952, 1e-5);
    EXPECT_EQ(from_thousandth_inches(1000), tenth_mm(254));
    EXPECT_EQ(from_thousandth_ounces(16'000), tenth_g(4536)); // 453.59 g
    EXPECT_EQ(from_thousandth_ounces(1000), tenth_g(283));
    EXPECT_NEAR(in_cubic_inches(millilitres(1000)), 1000 / 16.38706, 1e-4); // 1 in³ = 1.638 706 E-05 m³
}

TEST(InchOunce, NeverMakesASizeSmaller)
{
    EXPECT_EQ(from_thousandth_inches(1), tenth_mm(1)); // 0.0254 mm
    EXPECT_EQ(from_thousandth_inches(0), Length{});
    EXPECT_TRUE(rc::check([] {
        const std::int64_t thousandths = *rc::gen::inRange(0, 1'000'000);
        const double exact = static_cast<double>(thousandths) * 0.0254;
        const double got = in_mm(from_thousandth_inches(thousandths));
        RC_ASSERT(got >= exact - 1e-9);
        RC_ASSERT(got < exact + 0.1);
    }));
}

TEST(InchOunce, IsWithinHalfATenthOfAGram)
{
    EXPECT_TRUE(rc::check([] {
        const std::int64_t thousandths = *rc::gen::inRange(0, 1'000'000'000);
        const double exact = static_cast<double>(thousandths) / 1000 * 453.59237 / 16;
        RC_ASSERT(std::abs(in_grams(from_thousandth_ounces(thousandths)) - exact) <= 0.05 + 1e-6);
    }));
}

} // namespace
} // namespace stow
