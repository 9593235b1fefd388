#include "core/supplies/forecast.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>

namespace stow::supplies {
namespace {

// R. J. Hyndman, G. Athanasopoulos, Forecasting: Principles and Practice, 2nd ed., section 13.2 ("Time series of
// counts", otexts.com/fpp2/counts.html): monthly sales of one lubricant, their example of the method with a smoothing of
// 0.1. The sales are as published; the book's figures (size 2.750, interval 2.793, forecast 0.985) are from memory and
// agree with a working by hand.
TEST(Croston, AgreesWithATextbook)
{
    const auto state = croston({0, 2, 0, 1, 0, 11, 0, 0, 0, 0, 2, 0, 6, 3, 0, 0, 0, 0,
                                0, 7, 0, 0, 0, 0, 0, 0, 0, 3, 1, 0, 0, 1, 0, 1, 0, 0},
                               0.1);
    ASSERT_TRUE(state);
    EXPECT_NEAR(state->size, 2.750, 0.0005);
    EXPECT_NEAR(state->interval, 2.793, 0.0005);
    EXPECT_NEAR(state->rate(false), 0.985, 0.0005);
}

// Worked by hand from the formulas of Croston, 1972: sizes 10, 20, 15 after intervals of 3, 3 and 4 weeks, smoothed by
// 0.1: size 10, 11, 11.4; interval 3, 3, 3.1.
TEST(Croston, SmoothsSizeAndIntervalApart)
{
    const auto state = croston({0, 0, 10, 0, 0, 20, 0, 0, 0, 15}, 0.1);
    ASSERT_TRUE(state);
    EXPECT_NEAR(state->size, 11.4, 1e-12);
    EXPECT_NEAR(state->interval, 3.1, 1e-12);
    EXPECT_NEAR(state->rate(false), 11.4 / 3.1, 1e-12);
    EXPECT_NEAR(state->rate(), 0.9 * 11.4 / 3.1, 1e-12); // (1 − 0.2/2), Syntetos and Boylan, 2005
    EXPECT_FALSE(croston({0, 5, 0}, 0.1));
}

// Their bound of 1.32 between smooth and intermittent.
TEST(Intermittent, IsToldByTheMeanInterval)
{
    EXPECT_FALSE(is_intermittent({5, 4, 6, 5, 0, 4, 5}));
    EXPECT_TRUE(is_intermittent({5, 0, 6, 0, 0, 4, 0}));
    EXPECT_FALSE(is_intermittent({0, 0}));
}

TEST(Forecast, CarriesASteadyUseOn)
{
    const auto told = forecast(Weeks(40, 7'000), 6);
    ASSERT_TRUE(told);
    EXPECT_EQ(told->method, Method::steady);
    EXPECT_NEAR(told->ahead.front(), 7'000, 1e-6);
    EXPECT_NEAR(told->spread, 0, 1e-6);
    EXPECT_NEAR(told->error.value(), 0, 1e-6);
    EXPECT_FALSE(forecast(Weeks(40, 0), 6));
    EXPECT_FALSE(forecast({}, 6));
}

// Two years with a December of five times the use: in late November last year's weeks tell what comes.
TEST(Forecast, SeesTheSeasonByLastYearsWeeks)
{
    Weeks weeks;
    for (int w = 0; w < 52 * 2 - 5; ++w) weeks.push_back(w % 52 >= 47 ? 50'000 : 10'000);
    const auto told = expected(Method::seasonal, weeks, 5);
    ASSERT_TRUE(told);
    EXPECT_GT(told->at(2), 35'000); // the third week lies in the middle of it
    EXPECT_FALSE(expected(Method::seasonal, Weeks(50, 10'000), 5));
}

struct Series {
    Method drawn = Method::steady; // how the use was made up
    Weeks weeks;
};

Series drawn_series(std::mt19937& random, Method method)
{
    Series series{method, {}};
    std::poisson_distribution<int> busy(30), rare(6);
    for (int w = 0; w < 130; ++w) {
        const double season = 1 + 0.8 * std::sin(w * 2 * 3.14159265 / 52);
        switch (method) {
        case Method::steady: series.weeks.push_back(busy(random) * 1000); break;
        case Method::intermittent: series.weeks.push_back(random() % 4 == 0 ? rare(random) * 1000 + 1000 : 0); break;
        case Method::seasonal: series.weeks.push_back(static_cast<std::int64_t>(busy(random) * season * 1000)); break;
        }
    }
    return series;
}

// On weeks that played no part in the choice the forecasts beat "as last week", and each kind of use finds its method
// more often than not.
TEST(Forecast, BeatsLastWeekOnWeeksItHasNotSeen)
{
    std::mt19937 random(8);
    for (const Method method : all_methods) {
        SCOPED_TRACE(name_of(method));
        double own = 0, last_week = 0;
        int found = 0;
        for (int i = 0; i < 40; ++i) {
            const auto told = forecast(drawn_series(random, method).weeks, 6);
            ASSERT_TRUE(told && told->error);
            EXPECT_EQ(told->judged, 8);
            own += *told->error;
            last_week += *told->error_as_last_week;
            found += told->method == method ? 1 : 0;
        }
        EXPECT_LT(own, last_week * 0.95);
        if (method != Method::steady) {
            EXPECT_GT(found, 20);
        }
        RecordProperty(std::string(name_of(method)), std::to_string(own / last_week));
    }
}

// W. J. Stevenson, Operations Management, 14th ed., p. 528, example 8: lead time demand 50, its spread 5, risk 3 %:
// here a lead time of one week.
TEST(ReorderPoint, AgreesWithStevensonsExampleByTheWeek)
{
    Forecast told;
    told.ahead = {50};
    told.spread = 5;
    const Point point = reorder_point(told, 7, 0.97);
    EXPECT_NEAR(point.expected, 50, 1e-9);
    EXPECT_NEAR(point.reorder_at(), 59.40, 0.005);
    EXPECT_NEAR(reorder_point(told, 14, 0.97).safety, 9.404 * std::sqrt(2.0), 0.01);
    EXPECT_NEAR(reorder_point(told, 10, 0.5).expected, 50 * 10 / 7.0, 1e-9);
}

TEST(Cover, FollowsTheWeeksToCome)
{
    Forecast told;
    told.ahead = {7'000, 14'000, 7'000};
    EXPECT_EQ(days_of_cover(7'000, told), 7);
    EXPECT_EQ(days_of_cover(10'500, told), 8);
    EXPECT_EQ(days_of_cover(0, told), 0);
    EXPECT_EQ(days_of_cover(100'000, told), std::nullopt);
}

} // namespace
} // namespace stow::supplies
