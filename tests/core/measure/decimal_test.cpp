#include "core/measure/decimal.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace stow {
namespace {

TEST(Scaled, RoundsAsAsked)
{
    EXPECT_EQ(scaled("12.34", 2, Rounding::nearest), 1234);
    EXPECT_EQ(scaled("12.341", 2, Rounding::up), 1235);
    EXPECT_EQ(scaled("12.349", 2, Rounding::down), 1234);
    EXPECT_EQ(scaled("12.345", 2, Rounding::nearest), 1235);
    EXPECT_EQ(scaled("-12.345", 2, Rounding::nearest), -1235) << "halves away from zero";
    EXPECT_EQ(scaled("-12.341", 2, Rounding::up), -1234) << "up the number line";
    EXPECT_EQ(scaled("-12.341", 2, Rounding::down), -1235);
    EXPECT_EQ(scaled("0.05", 1, Rounding::nearest), 1);
    EXPECT_EQ(scaled("0.04", 1, Rounding::nearest), 0);
    EXPECT_EQ(scaled("0.004", 1, Rounding::nearest), 0);
    EXPECT_EQ(scaled("0.009", 1, Rounding::up), 1);
    EXPECT_EQ(scaled("7", 3, Rounding::down), 7000);
}

// Numbers as RFC 8259 section 6 writes them.
TEST(Scaled, Exponents)
{
    EXPECT_EQ(scaled("1.5e3", 0, Rounding::down), 1500);
    EXPECT_EQ(scaled("1.5E+3", 1, Rounding::down), 15000);
    EXPECT_EQ(scaled("15e-1", 1, Rounding::down), 15);
    EXPECT_EQ(scaled("1e-400", 0, Rounding::up), 1);
    EXPECT_EQ(scaled("1e-400", 0, Rounding::nearest), 0);
    EXPECT_EQ(scaled("0e400", 0, Rounding::down), 0);
}

TEST(Scaled, MarksAndSigns)
{
    EXPECT_EQ(scaled("12,5", 1, Rounding::down, ','), 125);
    EXPECT_EQ(scaled("12.5", 1, Rounding::down, ','), std::nullopt);
    EXPECT_EQ(scaled("+3", 0, Rounding::down), 3);
    EXPECT_EQ(scaled(".5", 1, Rounding::down), 5);
    EXPECT_EQ(scaled("5.", 1, Rounding::down), 50);
}

TEST(Scaled, RefusesOtherTextAndTooMuch)
{
    for (const char* text :
         {"", "-", ".", "e5", "1e", "1e+", "1.2.3", "--1", "1 ", " 1", "1,000", "nan", "0x1", "1e401"})
        EXPECT_EQ(scaled(text, 0, Rounding::down), std::nullopt) << text;
    EXPECT_EQ(scaled("900000000000000000", 0, Rounding::down), 900'000'000'000'000'000);
    EXPECT_EQ(scaled("900000000000000001", 0, Rounding::down), std::nullopt);
    EXPECT_EQ(scaled("1e30", 0, Rounding::down), std::nullopt);
    EXPECT_EQ(scaled(std::string(1000, '9'), 0, Rounding::down), std::nullopt);
}

TEST(Unscaled, KeepsItsPlaces)
{
    EXPECT_EQ(unscaled(1234, 2), "12.34");
    EXPECT_EQ(unscaled(5, 2), "0.05");
    EXPECT_EQ(unscaled(-5, 2), "-0.05");
    EXPECT_EQ(unscaled(7, 0), "7");
    EXPECT_EQ(unscaled(0, 3), "0.000");
}

RC_GTEST_PROP(Decimal, WhatIsWrittenIsReadBack, ())
{
    const auto value = *rc::gen::inRange<std::int64_t>(-900'000'000'000'000'000, 900'000'000'000'000'000);
    const auto places = *rc::gen::inRange(0, 6);
    RC_ASSERT(scaled(unscaled(value, places), places, Rounding::nearest) == value);
}

RC_GTEST_PROP(Decimal, RoundingBracketsTheValue, ())
{
    const auto fine = *rc::gen::inRange<std::int64_t>(-1'000'000'000, 1'000'000'000); // in 0.001
    const std::string text = unscaled(fine, 3);
    const auto down = *scaled(text, 1, Rounding::down), up = *scaled(text, 1, Rounding::up),
               nearest = *scaled(text, 1, Rounding::nearest);
    RC_ASSERT(down * 100 <= fine && fine <= up * 100);
    RC_ASSERT(up - down == (fine % 100 != 0 ? 1 : 0));
    RC_ASSERT(std::abs(nearest * 100 - fine) <= 50);
}

} // namespace
} // namespace stow
