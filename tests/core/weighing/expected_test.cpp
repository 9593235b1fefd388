#include "core/weighing/expected.h"

#include <cmath>
#include <gtest/gtest.h>
#include <random>

namespace stow::weighing {
namespace {

constexpr Circumstances dry_and_exact{0, Weight{}};

TEST(ExpectedWeight, PiecesDifferIndependently)
{
    // 12 pieces, each with a spread of 2 g: sqrt(12) * 2 = 6.93 g.
    const Expected e = expected_weight({{{grams(150), grams(2)}, 12, 0, false}}, dry_and_exact);
    EXPECT_EQ(e.mean, grams(1800));
    EXPECT_EQ(e.spread, tenth_g(69));
}

TEST(ExpectedWeight, ABatchIsOffTogether)
{
    // 12 notebooks of 200 g whose common mean is off by 1 % (2 g): 24 g, not 7.
    const Expected e = expected_weight({{{grams(200), Weight{}}, 12, 10, false}}, dry_and_exact);
    EXPECT_EQ(e.spread, grams(24));
}

TEST(ExpectedWeight, AllBoardTakesUpMoistureTogether)
{
    // Two cartons of 100 g at 2 %: 4 g, not sqrt(8); the glass beside them adds nothing.
    const Expected e = expected_weight({{{grams(100), Weight{}}, 1, 0, true},
                                        {{grams(100), Weight{}}, 1, 0, true},
                                        {{grams(500), Weight{}}, 1, 0, false}},
                                       {20, Weight{}});
    EXPECT_EQ(e.mean, grams(700));
    EXPECT_EQ(e.spread, grams(4));
}

TEST(ExpectedWeight, AScaleInStepsOfTenGrams)
{
    // Variance of a uniform error over one step: d²/12; d = 10 g gives 2.89 g.
    EXPECT_EQ(expected_weight({}, {0, grams(10)}).spread, tenth_g(29));
}

TEST(ExpectedWeight, AgreesWithASimulationOfItsModel)
{
    const Share bottles{{grams(210), grams(3)}, 4, 10, false};
    const Share carton{{grams(120), grams(2)}, 1, 0, true};
    const Expected e = expected_weight({bottles, carton}, {20, grams(5)});
    std::mt19937 random(7);
    std::normal_distribution<double> normal;
    const int runs = 20'000;
    double sum = 0, squares = 0;
    for (int i = 0; i < runs; ++i) {
        double weight = 4 * 210 * (1 + 0.010 * normal(random));
        for (int piece = 0; piece < 4; ++piece) weight += 3 * normal(random);
        weight += 120 * (1 + 0.020 * normal(random)) + 2 * normal(random);
        const double shown = std::round(weight / 5) * 5;
        sum += shown;
        squares += shown * shown;
    }
    const double mean = sum / runs;
    EXPECT_NEAR(mean, in_grams(e.mean), 0.4); // four standard errors
    EXPECT_NEAR(std::sqrt(squares / runs - mean * mean), in_grams(e.spread), 0.25);
}

TEST(ProbabilityAbove, IsTheNormalTail)
{
    const Expected e{grams(490), grams(10)};
    // Published normal quantiles: 0.8413 at one spread, 0.9750 at 1.96, 0.99 at 2.3263 (any table).
    EXPECT_NEAR(probability_above(e, grams(500)), 1 - 0.8413, 0.0001);
    EXPECT_NEAR(probability_above(e, tenth_g(5096)), 1 - 0.9750, 0.0001);
    EXPECT_DOUBLE_EQ(probability_above(e, grams(490)), 0.5);
    EXPECT_EQ(probability_above({grams(490), Weight{}}, grams(490)), 0); // "more than", and no doubt
    EXPECT_EQ(probability_above({grams(491), Weight{}}, grams(490)), 1);
}

// Our own table, worked by hand from the normal distribution with an alarm at 2.5 spreads and shown in whole percent:
// there is no published detection rate for small parcels.
struct Row {
    int spread, mass, percent;
};
class Detection : public testing::TestWithParam<Row> {};

TEST_P(Detection, FollowsTheTable)
{
    const Row row = GetParam();
    EXPECT_NEAR(100 * detection_probability(grams(row.spread), grams(row.mass), 2.5), row.percent, 0.51);
}

INSTANTIATE_TEST_SUITE_P(Table, Detection,
                         testing::Values(Row{3, 5, 20}, Row{3, 15, 99}, Row{3, 25, 100}, Row{3, 50, 100},
                                         Row{3, 120, 100}, Row{6, 5, 5}, Row{6, 15, 50}, Row{6, 25, 95},
                                         Row{6, 50, 100}, Row{6, 120, 100}, Row{12, 5, 2}, Row{12, 15, 11},
                                         Row{12, 25, 34}, Row{12, 50, 95}, Row{12, 120, 100}));

TEST(LeastDetectable, IsFoundNineteenTimesInTwenty)
{
    for (const int spread : {10, 20, 40, 120}) {
        const Weight least = least_detectable(grams(spread));
        EXPECT_NEAR(detection_probability(grams(spread), least), 0.95, 0.001) << spread;
    }
    EXPECT_EQ(least_detectable(grams(6)), tenth_g(249));
}

TEST(Alarm, RingsForOneRightParcelInEighty)
{
    EXPECT_NEAR(detection_probability(grams(5), Weight{}), 0.012, 0.0005); // 1.2 % false alarms
}

TEST(CannotBeSure, WithinHalfAStepOfTheEdge)
{
    EXPECT_TRUE(cannot_be_sure(grams(500), grams(2), grams(500)));
    EXPECT_TRUE(cannot_be_sure(grams(501), grams(2), grams(500)));
    EXPECT_FALSE(cannot_be_sure(grams(499), grams(2), grams(500))); // 500 itself is still inside the step
    EXPECT_FALSE(cannot_be_sure(grams(502), grams(2), grams(500)));
    EXPECT_FALSE(cannot_be_sure(grams(498), grams(2), grams(500)));
}

} // namespace
} // namespace stow::weighing
