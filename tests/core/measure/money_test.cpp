#include "core/measure/money.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>
#include <stdexcept>

namespace stow {
namespace {

Currency currency(const char* code)
{
    return Currency::from(code).value();
}

// Minor units as ISO 4217 table A.1 lists them; KWD, OMR, JOD and TND from memory.
TEST(Currency, PublishedExponents)
{
    for (const char* code : {"EUR", "USD", "GBP", "CHF"}) EXPECT_EQ(currency(code).places(), 2) << code;
    for (const char* code : {"JPY", "KRW", "CLP", "DJF", "BIF"}) EXPECT_EQ(currency(code).places(), 0) << code;
    for (const char* code : {"BHD", "KWD", "OMR", "JOD", "TND"}) EXPECT_EQ(currency(code).places(), 3) << code;
}

TEST(Currency, UnknownCodesAreRefused)
{
    for (const char* code : {"", "EU", "EURO", "eur", "XQQ", "DEM"}) EXPECT_FALSE(Currency::from(code)) << code;
    EXPECT_EQ(Currency{}.code(), "EUR");
}

TEST(Money, AddsInOneCurrencyOnly)
{
    const Money a{250, {}}, b{199, {}};
    EXPECT_EQ((a + b).minor, 449);
    EXPECT_EQ((a - b).minor, 51);
    EXPECT_EQ((b * 3).minor, 597);
    EXPECT_LT(b, a);
    const Money foreign{1, currency("USD")};
    EXPECT_THROW(a + foreign, std::logic_error);
    EXPECT_THROW(a - foreign, std::logic_error);
    EXPECT_THROW(static_cast<void>(a < foreign), std::logic_error);
    EXPECT_FALSE(a == foreign);
}

TEST(Money, TextBothWays)
{
    EXPECT_EQ(to_text(Money{1234, {}}), "12.34 EUR");
    EXPECT_EQ(to_text(Money{-5, {}}), "-0.05 EUR");
    EXPECT_EQ(to_text(Money{1200, currency("JPY")}), "1200 JPY");
    EXPECT_EQ(to_text(Money{1500, currency("KWD")}), "1.500 KWD");
    EXPECT_EQ(parse_money("12,34", {}, ',')->minor, 1234);
    EXPECT_EQ(parse_money("12.3", {})->minor, 1230);
    EXPECT_EQ(parse_money("12.3400", {})->minor, 1234);
    EXPECT_EQ(parse_money("12.345", {}), std::nullopt) << "finer than a cent";
    EXPECT_EQ(parse_money("12.5", currency("JPY")), std::nullopt);
    EXPECT_EQ(parse_money("twelve", {}), std::nullopt);
}

// Fuel surcharges and taxes are such shares; halves go away from zero.
TEST(Share, RoundsToTheMinorUnit)
{
    EXPECT_EQ(share({1000, {}}, 19, 100).minor, 190);
    EXPECT_EQ(share({50, {}}, 1, 100).minor, 1);
    EXPECT_EQ(share({49, {}}, 1, 100).minor, 0);
    EXPECT_EQ(share({-50, {}}, 1, 100).minor, -1);
    EXPECT_EQ(share({-49, {}}, 1, 100).minor, 0);
    EXPECT_EQ(share({333, {}}, 1, 3).minor, 111);
}

RC_GTEST_PROP(Share, IsWithinHalfAUnit, ())
{
    const auto minor = *rc::gen::inRange<std::int64_t>(-100'000'000, 100'000'000);
    const auto n = *rc::gen::inRange<std::int64_t>(0, 2000), d = *rc::gen::inRange<std::int64_t>(1, 2000);
    const std::int64_t error = share({minor, {}}, n, d).minor * d - minor * n;
    RC_ASSERT(2 * std::abs(error) <= d);
}

RC_GTEST_PROP(Money, ParsesWhatItWrites, (std::int32_t minor))
{
    for (const char* code : {"EUR", "JPY", "BHD"}) {
        const Money money{minor, currency(code)};
        const std::string text = to_text(money);
        RC_ASSERT(parse_money(text.substr(0, text.find(' ')), money.currency) == money);
    }
}

} // namespace
} // namespace stow
