#include "core/shop/heat.h"

#include <gtest/gtest.h>

namespace stow::shop {
namespace {

Good wax()
{
    Good good;
    good.softens_above_c = 45;
    return good;
}

TEST(Heat, HoldsWhatSoftensFromThursdayToMonday)
{
    const auto monday = parse_date("2026-07-13");
    for (const char* day : {"2026-07-09", "2026-07-10", "2026-07-11", "2026-07-12"}) {
        EXPECT_EQ(better_held_until(wax(), *parse_date(day)), monday) << day;
    }
    for (const char* day : {"2026-07-06", "2026-07-07", "2026-07-08", "2026-07-13"}) {
        EXPECT_FALSE(better_held_until(wax(), *parse_date(day))) << day;
    }
}

TEST(Heat, IsOfTheWarmMonthsAndOfGoodsThatSoften)
{
    EXPECT_TRUE(better_held_until(wax(), *parse_date("2026-05-01")));  // a Friday
    EXPECT_TRUE(better_held_until(wax(), *parse_date("2026-09-25")));  // a Friday
    EXPECT_FALSE(better_held_until(wax(), *parse_date("2026-04-30"))); // a Thursday
    EXPECT_FALSE(better_held_until(wax(), *parse_date("2026-10-02"))); // a Friday
    EXPECT_FALSE(better_held_until(Good{}, *parse_date("2026-07-10")));
}

} // namespace
} // namespace stow::shop
