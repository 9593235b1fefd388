#include "core/shop/check_digits.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>
#include <string>

namespace stow::shop {
namespace {

// Worked numbers published by GS1 (gs1.org check digit calculator, gs1.se, gs1india.org).
TEST(Mod10, PublishedExamples)
{
    EXPECT_EQ(mod10_check_digit("629104150021"), 3);
    EXPECT_EQ(mod10_check_digit("730001100001"), 7);
    EXPECT_EQ(mod10_check_digit("890400021003"), 7);
}

// Well-known complete numbers, recalculated by hand; SSCC sums 101 and 140, the latter giving zero.
TEST(Mod10, EveryLength)
{
    for (const char* gtin : {"96385074", "73513537", "036000291452", "614141000036", "4006381333931", "10614141000415"})
        EXPECT_TRUE(gtin_ok(gtin)) << gtin;
    EXPECT_EQ(mod10_check_digit("37610425002123456"), 9);
    EXPECT_EQ(mod10_check_digit("00614141123456789"), 0);
}

TEST(Mod10, RefusesOtherText)
{
    for (const char* text : {"", "4006381333932", "400638133393", "40063813339310", "400638133393X", "4006381 333931"})
        EXPECT_FALSE(gtin_ok(text)) << text;
    EXPECT_EQ(mod10_check_digit(""), std::nullopt);
}

// One wrong digit is always found: weights 1 and 3 have no factor in common with 10.
RC_GTEST_PROP(Mod10, FindsEverySingleWrongDigit, ())
{
    std::string number = *rc::gen::container<std::string>(12, rc::gen::inRange('0', static_cast<char>('9' + 1)));
    number += static_cast<char>('0' + *mod10_check_digit(number));
    RC_ASSERT(gtin_ok(number));
    const auto at = *rc::gen::inRange<std::size_t>(0, number.size());
    const auto shift = *rc::gen::inRange(1, 10);
    number[at] = static_cast<char>('0' + (number[at] - '0' + shift) % 10);
    RC_ASSERT(!gtin_ok(number));
}

// The example of UPU standard S10: 47312482 sums to 200 and gives 9.
TEST(PostalItem, PublishedExample)
{
    EXPECT_EQ(s10_check_digit("47312482"), 9);
    EXPECT_TRUE(s10_ok("RR473124829GB"));
    EXPECT_TRUE(s10_ok("RR 47 312 482 9 GB"));
}

// Calculated by the rule; 10 becomes 0 and 11 becomes 5. 11112222 tells the right weights from 3 4 5 ... 10.
TEST(PostalItem, EdgesOfTheRule)
{
    EXPECT_EQ(s10_check_digit("12345678"), 5);
    EXPECT_EQ(s10_check_digit("00000001"), 4);
    EXPECT_EQ(s10_check_digit("10000000"), 3);
    EXPECT_EQ(s10_check_digit("00000008"), 0);
    EXPECT_EQ(s10_check_digit("00000012"), 0);
    EXPECT_EQ(s10_check_digit("00000000"), 5);
    EXPECT_EQ(s10_check_digit("00000015"), 5);
    EXPECT_EQ(s10_check_digit("99999999"), 5);
    EXPECT_EQ(s10_check_digit("11112222"), 9);
}

TEST(PostalItem, RefusesOtherText)
{
    for (const char* text : {"", "RR473124828GB", "rr473124829GB", "R1473124829GB", "RR473124829G", "RR4731248X9GB",
                             "RR47312482XGB", "RR4731248299GB"})
        EXPECT_FALSE(s10_ok(text)) << text;
    EXPECT_EQ(s10_check_digit("4731248"), std::nullopt);
    EXPECT_EQ(s10_check_digit("4731248a"), std::nullopt);
}

} // namespace
} // namespace stow::shop
