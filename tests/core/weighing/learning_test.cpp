#include "core/weighing/learning.h"

#include <cmath>
#include <gtest/gtest.h>
#include <random>

namespace stow::weighing {
namespace {

const Expected nothing_else{Weight{}, Weight{}};

TEST(FirstBelief, DoubtsTheMeanByBatchAndSpread)
{
    const Belief b = first_belief({grams(200), grams(3)}, 20); // 2 % of 200 g is 4 g; with 3 g: 5 g
    EXPECT_DOUBLE_EQ(b.doubt_g, 5);
    EXPECT_DOUBLE_EQ(b.spread_g, 3);
    EXPECT_EQ(as_estimate(b), (shop::WeightEstimate{grams(200), tenth_g(58)})); // sqrt(25 + 9)
}

TEST(Learn, OneGoodMovesByThePartOfTheVarianceThatIsDoubt)
{
    // Normal mean with known variance (any textbook): doubt 4, spread 3, a reading 10 off: 10 * 16 / 25 = 6.4, and the
    // doubt is sqrt(16 * 9 / 25) = 2.4.
    const auto after = learn({{{200, 4, 3, 0}, 1}}, nothing_else, grams(210));
    EXPECT_DOUBLE_EQ(after[0].mean_g, 206.4);
    EXPECT_DOUBLE_EQ(after[0].doubt_g, 2.4);
    EXPECT_EQ(after[0].seen, 1);
}

TEST(Learn, GoodsShareTheResidualByTheirVariance)
{
    // Doubts 3 and 1: nine tenths and one tenth of what doubt explains; no scatter, so all of it.
    const auto after = learn({{{100, 3, 0, 0}, 1}, {{50, 1, 0, 0}, 1}}, nothing_else, grams(160));
    EXPECT_DOUBLE_EQ(after[0].mean_g, 109);
    EXPECT_DOUBLE_EQ(after[1].mean_g, 51);
}

TEST(Learn, AnUncertainRestTeachesLittle)
{
    const auto sure = learn({{{100, 3, 1, 0}, 1}}, {grams(90), tenth_g(5)}, grams(200));
    const auto unsure = learn({{{100, 3, 1, 0}, 1}}, {grams(90), grams(20)}, grams(200));
    EXPECT_GT(sure[0].mean_g, 108);
    EXPECT_LT(unsure[0].mean_g, 101);
}

TEST(Learn, NothingIsLearntOfAGoodThatIsNotThere)
{
    const Belief b{100, 3, 1, 5};
    EXPECT_EQ(learn({{b, 0}}, nothing_else, grams(50))[0], b);
}

TEST(Learn, TheSpreadHasAFloor)
{
    Belief b = first_belief({grams(500), grams(1)}, 10);
    for (int i = 0; i < 1000; ++i) b = learn({{b, 1}}, nothing_else, grams(500))[0];
    EXPECT_DOUBLE_EQ(b.spread_g, 1); // two thousandths of 500 g
}

// Parcels of mixed goods drawn with a fixed seed: the beliefs come near the truth.
TEST(Learn, FindsMeansAndSpreadsFromParcelsAlone)
{
    struct Truth {
        double mean, spread;
    };
    const std::vector<Truth> truth{{214, 3}, {146, 1.2}, {29, 0.5}};
    std::vector<Belief> beliefs{first_belief({grams(205), grams(2)}, 30), first_belief({grams(150), grams(2)}, 30),
                                first_belief({grams(28), grams(2)}, 30)};
    const Expected rest{grams(110), tenth_g(10)};
    std::mt19937 random(5);
    std::normal_distribution<double> normal;
    std::uniform_int_distribution<int> count(0, 2);
    for (int parcel = 0; parcel < 5000; ++parcel) {
        double weight = in_grams(rest.mean) + in_grams(rest.spread) * normal(random);
        std::vector<Learner> goods;
        for (std::size_t g = 0; g < truth.size(); ++g) {
            goods.push_back({beliefs[g], count(random)});
            for (int n = 0; n < goods[g].count; ++n) weight += truth[g].mean + truth[g].spread * normal(random);
        }
        beliefs = learn(goods, rest, Weight{std::llround(weight * 10)});
    }
    for (std::size_t g = 0; g < truth.size(); ++g) {
        EXPECT_NEAR(beliefs[g].mean_g, truth[g].mean, 0.5) << g;
        EXPECT_NEAR(beliefs[g].spread_g, truth[g].spread, 0.5) << g;
        EXPECT_LT(beliefs[g].doubt_g, 0.5) << g;
    }
}

} // namespace
} // namespace stow::weighing
