#include "core/weighing/scale_feed.h"

#include <gtest/gtest.h>

namespace stow::weighing {
namespace {

// As a scale with a gram's resolution sends it: status, unit 2 (gram), power 0, count (usage page 0x8D of the HID Usage
// Tables: status 2 zero, 3 moving, 4 stable, 5 under zero, 6 over limit, 8 to be zeroed).
std::vector<std::uint8_t> report(int status, int grams_shown)
{
    return {static_cast<std::uint8_t>(status), 2, 0, static_cast<std::uint8_t>(grams_shown % 256),
            static_cast<std::uint8_t>(grams_shown / 256)};
}

TEST(ScaleFeed, TellsASettledWeightOnce)
{
    ScaleFeed feed;
    EXPECT_EQ(feed.now().state, ScaleState::absent);
    EXPECT_EQ(feed.report(report(2, 0)).state, ScaleState::zero);
    EXPECT_EQ(feed.report(report(3, 640)).state, ScaleState::moving);
    EXPECT_EQ(feed.report(report(4, 811)).state, ScaleState::moving) << "one report is not settled";
    EXPECT_EQ(feed.report(report(4, 812)).state, ScaleState::moving);
    EXPECT_EQ(feed.report(report(4, 812)).state, ScaleState::moving);
    const ScaleSays settled = feed.report(report(4, 812));
    EXPECT_EQ(settled.state, ScaleState::settled);
    EXPECT_EQ(settled.weight, grams(812));
    EXPECT_TRUE(settled.fresh);
    EXPECT_FALSE(feed.report(report(4, 812)).fresh) << "the same parcel, still there";
}

TEST(ScaleFeed, TheSameWeightAgainOnlyAfterTheScaleWasEmpty)
{
    ScaleFeed feed(2);
    const auto put_on = [&] {
        feed.report(report(4, 500));
        return feed.report(report(4, 500)).fresh;
    };
    EXPECT_TRUE(put_on());
    feed.report(report(3, 300)); // a hand on it
    EXPECT_FALSE(put_on());
    feed.report(report(2, 0));
    feed.report(report(2, 0));
    EXPECT_TRUE(put_on());
}

TEST(ScaleFeed, UnpluggingForgetsWhatWasUnderWay)
{
    ScaleFeed feed(2);
    feed.report(report(4, 500));
    EXPECT_EQ(feed.unplugged().state, ScaleState::absent);
    EXPECT_EQ(feed.report(report(4, 500)).state, ScaleState::moving);
    EXPECT_TRUE(feed.report(report(4, 500)).fresh);
}

TEST(ScaleFeed, SaysWhatIsWrong)
{
    ScaleFeed feed(1);
    EXPECT_EQ(feed.report(report(6, 0)).state, ScaleState::over_limit);
    EXPECT_EQ(feed.report(report(8, 0)).state, ScaleState::needs_zero);
    EXPECT_EQ(feed.report(report(7, 0)).state, ScaleState::needs_calibration);
    EXPECT_EQ(feed.report(report(1, 0)).state, ScaleState::faulty);
    EXPECT_EQ(feed.report({4, 8, 0, 1, 0}).state, ScaleState::unreadable); // metric tons
    EXPECT_EQ(feed.report({}).state, ScaleState::unreadable);
    EXPECT_EQ(feed.report(report(5, 3)).state, ScaleState::under_zero);
    EXPECT_EQ(feed.report(report(5, 3)).weight, grams(-3));
}

} // namespace
} // namespace stow::weighing
