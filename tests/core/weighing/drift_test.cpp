#include "core/weighing/drift.h"

#include <gtest/gtest.h>
#include <random>

namespace stow::weighing {
namespace {

std::vector<Weighed> drawn(int parcels, double off_g, unsigned seed)
{
    std::mt19937 random(seed);
    std::normal_distribution<double> normal(off_g, 4);
    std::vector<Weighed> all;
    for (int i = 0; i < parcels; ++i) {
        all.push_back({{grams(500 + i), grams(4)}, grams(500 + i) + Weight{std::llround(normal(random) * 10)}});
    }
    return all;
}

TEST(Drift, AFewParcelsSayNothing)
{
    EXPECT_FALSE(drift({}));
    EXPECT_FALSE(drift(drawn(9, 20, 1)));
}

TEST(Drift, AScaleThatShowsFiveGramsTooMuchIsSeen)
{
    const auto found = drift(drawn(40, 5, 2)); // 5 g of 4 g spread over 20 parcels: 5.6 standard errors
    ASSERT_TRUE(found);
    EXPECT_EQ(found->parcels, 20);
    EXPECT_NEAR(in_grams(found->mean_off), 5, 2);
    EXPECT_GT(found->spreads, drift_spreads);
}

TEST(Drift, SoundScalesAreSeldomBlamed)
{
    int warned = 0;
    for (unsigned seed = 0; seed < 1000; ++seed) warned += drift(drawn(20, 0, seed)).has_value();
    EXPECT_LE(warned, 3); // one in 2,000 by the normal distribution
}

TEST(Drift, OneWrongParcelIsNoDrift)
{
    std::vector<Weighed> all(20, {{grams(500), grams(2)}, grams(500)});
    all[7].reading = grams(290);
    EXPECT_FALSE(drift(all));
}

TEST(Scatter, IsSeenWhereSpreadsAreTooNarrow)
{
    std::vector<Weighed> all = drawn(200, 0, 5); // 4 g of spread, and 4 g said
    EXPECT_EQ(spread_permille(all), 1000);
    for (Weighed& w : all) w.expected.spread = tenth_g(25);
    EXPECT_NEAR(spread_permille(all), 1600, 250);
    for (Weighed& w : all) w.expected.spread = tenth_g(5);
    EXPECT_EQ(spread_permille(all), 2000);
    EXPECT_EQ(spread_permille({all.begin(), all.begin() + 39}), 1000);
}

TEST(StepSeen, IsWhatAllReadingsAreMultiplesOf)
{
    std::vector<Weight> readings;
    for (int i = 0; i < 9; ++i) readings.push_back(grams(315 + 5 * i));
    EXPECT_EQ(step_seen(readings), std::nullopt) << "too few";
    readings.push_back(grams(1000));
    EXPECT_EQ(step_seen(readings), grams(5));
    readings.push_back(tenth_g(1));
    EXPECT_EQ(step_seen(readings), tenth_g(1));
}

} // namespace
} // namespace stow::weighing
