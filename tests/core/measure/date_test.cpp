#include "core/measure/date.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace stow {
namespace {

// The calendar of ISO 8601: 2000 was a leap year, 1900 was not.
TEST(ParseDate, OnlyRealDays)
{
    EXPECT_EQ(to_text(*parse_date("2026-11-25")), "2026-11-25");
    EXPECT_TRUE(parse_date("2000-02-29"));
    EXPECT_FALSE(parse_date("1900-02-29"));
    for (const char* text : {"", "2026-11-31", "2026-13-01", "2026-00-10", "2026-1-01", "26-11-25", "2026/11/25",
                             "2026-11-25T", "+026-11-25", "2026-11--5"})
        EXPECT_FALSE(parse_date(text)) << text;
}

TEST(ParseDate, EpochIsDayZero)
{
    EXPECT_EQ(parse_date("1970-01-01")->time_since_epoch().count(), 0);
    EXPECT_EQ(parse_date("2001-09-09")->time_since_epoch().count(), 11574); // the day of second 1,000,000,000
}

TEST(ParseInstant, AsItIsWritten)
{
    EXPECT_EQ(parse_instant("2001-09-09T01:46:40Z")->time_since_epoch().count(), 1'000'000'000);
    EXPECT_EQ(to_text(Instant{std::chrono::seconds{1'000'000'000}}), "2001-09-09T01:46:40Z");
    for (const char* text : {"", "2001-09-09T01:46:40", "2001-09-09 01:46:40Z", "2001-09-09T24:00:00Z",
                             "2001-09-09T01:46:60Z", "2001-09-09T01:46-40Z"})
        EXPECT_FALSE(parse_instant(text)) << text;
}

TEST(ParseTimeOfDay, OneOrTwoDigitsOfTheHour)
{
    EXPECT_EQ(parse_time_of_day("9:05")->count(), 545);
    EXPECT_EQ(parse_time_of_day("0:00")->count(), 0);
    EXPECT_EQ(to_text(*parse_time_of_day("23:59")), "23:59");
    EXPECT_EQ(to_text(*parse_time_of_day("9:05")), "09:05");
    for (const char* text : {"", "24:00", "12:60", "12:5", "1205", ":05", "123:05", "-1:05"})
        EXPECT_FALSE(parse_time_of_day(text)) << text;
}

RC_GTEST_PROP(Dates, EveryInstantComesBack, ())
{
    const Instant instant{std::chrono::seconds{*rc::gen::inRange<std::int64_t>(0, 4'000'000'000)}};
    RC_ASSERT(parse_instant(to_text(instant)) == instant);
    const Date day = std::chrono::floor<std::chrono::days>(instant);
    RC_ASSERT(parse_date(to_text(day)) == day);
}

} // namespace
} // namespace stow
