#include "core/weighing/scale_report.h"

#include <gtest/gtest.h>

namespace stow::weighing {
namespace {

// The two samples are published in a public note on HID scales; the status byte, left open there, is 4 here (stable).
TEST(ScaleReport, PublishedSamples)
{
    EXPECT_EQ(read_scale_report({4, 0x02, 0x00, 0x14, 0x00}), grams(20));
    EXPECT_EQ(read_scale_report({4, 0x0B, 0xFF, 0x34, 0x19}), tenth_g(182'911)); // 645.2 oz, worked: 18,291.1 g
}

TEST(ScaleReport, UnitsAndPowers) // unit indices: usage 0x50 + n of the page; the weights worked
{
    EXPECT_EQ(read_scale_report({4, 0x03, 0xFD, 0xD2, 0x04}), grams(1234));   // 1234 * 10^-3 kg
    EXPECT_EQ(read_scale_report({4, 0x0C, 0xFE, 0x64, 0x00}), tenth_g(4536)); // 1.00 lb
    EXPECT_EQ(read_scale_report({4, 0x02, 0x02, 0x05, 0x00}), grams(500));
    EXPECT_EQ(read_scale_report({4, 0x01, 0x00, 0xFF, 0xFF}), tenth_g(655)); // 65,535 mg
    EXPECT_EQ(read_scale_report({4, 0x02, 0xFF, 0xFF, 0xFF}), tenth_g(65'535));
}

TEST(ScaleReport, UnderZeroIsNegative)
{
    EXPECT_EQ(read_scale_report({5, 0x02, 0x00, 0x07, 0x00}), grams(-7));
    EXPECT_EQ(read_scale_report({2, 0x02, 0x00, 0x00, 0x00}), Weight{});
}

TEST(ScaleReport, OnlyASettledWeightIsOne) // statuses: usage 0x70 + n of the page
{
    const std::vector<std::pair<int, ScaleFault>> faults{
        {1, ScaleFault::fault},       {3, ScaleFault::in_motion},
        {6, ScaleFault::over_limit},  {7, ScaleFault::needs_calibration},
        {8, ScaleFault::needs_zero},  {0, ScaleFault::not_a_report},
        {9, ScaleFault::not_a_report}};
    for (const auto& [status, fault] : faults) {
        const auto read = read_scale_report({static_cast<std::uint8_t>(status), 0x02, 0x00, 0x14, 0x00});
        ASSERT_FALSE(read) << status;
        EXPECT_EQ(read.error(), fault) << status;
    }
}

TEST(ScaleReport, WhatIsNoWeight)
{
    EXPECT_EQ(read_scale_report({}).error(), ScaleFault::not_a_report);
    EXPECT_EQ(read_scale_report({3, 4, 2, 0, 20, 0}).error(), ScaleFault::not_a_report); // with its id
    EXPECT_EQ(read_scale_report({4, 0x08, 0x00, 0x14, 0x00}).error(), ScaleFault::unknown_unit);
    EXPECT_EQ(read_scale_report({4, 0x03, 0x7F, 0x14, 0x00}).error(), ScaleFault::out_of_range);
    EXPECT_EQ(read_scale_report({4, 0x03, 0x80, 0x14, 0x00}), Weight{}); // 20 * 10^-128 kg
}

} // namespace
} // namespace stow::weighing
