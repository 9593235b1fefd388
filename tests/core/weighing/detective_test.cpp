#include "core/weighing/detective.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <numeric>
#include <random>

namespace stow::weighing {
namespace {

using Kind = Explanation::Kind;
using Verdict = Finding::Verdict;
using testing::Contains;
using testing::ElementsAre;

Thing thing(const char* id, Thing::Kind kind, int count, std::int64_t g, std::int64_t tenths_spread)
{
    return {id, kind, {{grams(g), tenth_g(tenths_spread)}, count, 0, false}};
}

// Two bottles, a notebook, nibs, a card, in a taped carton: 2 * 210 + 145 + 28 + 14 + 95 + 3 = 705 g; spread 2.7 g.
Scene parcel()
{
    Scene scene;
    scene.things = {thing("bottle", Thing::Kind::good, 2, 210, 15),   thing("notebook", Thing::Kind::good, 1, 145, 10),
                    thing("nibs", Thing::Kind::good, 1, 28, 3),       thing("card", Thing::Kind::insert, 1, 14, 2),
                    thing("carton S", Thing::Kind::outer, 1, 95, 10), thing("tape", Thing::Kind::other, 1, 3, 5)};
    scene.goods = {{"bottle", {grams(210), tenth_g(15)}},
                   {"notebook", {grams(145), tenth_g(10)}},
                   {"nibs", {grams(28), tenth_g(3)}},
                   {"wax", {grams(62), tenth_g(8)}}};
    scene.outers = {{"carton S", {grams(95), tenth_g(10)}}, {"carton M", {grams(151), tenth_g(10)}}};
    scene.circumstances = {0, grams(1)};
    return scene;
}

const Weight right_weight = grams(705);

TEST(Detective, ARightParcelIsRight)
{
    const Finding f = investigate(parcel(), right_weight);
    EXPECT_EQ(f.expected.mean, right_weight);
    EXPECT_EQ(f.off, Weight{});
    EXPECT_EQ(f.verdict, Verdict::right);
    EXPECT_EQ(f.explanations.front().kind, Kind::right);
    EXPECT_GT(f.explanations.front().probability, 0.99);
}

struct Case {
    const char* what;
    std::int64_t off;
    Kind kind;
    const char* thing;
    const char* instead;
    int count;
};
class Wrong : public testing::TestWithParam<Case> {};

TEST_P(Wrong, IsNamed)
{
    const Case& c = GetParam();
    for (const std::int64_t scatter : {-1, 0, 1}) {
        const Finding f = investigate(parcel(), right_weight + grams(c.off + scatter));
        ASSERT_EQ(f.verdict, Verdict::named) << c.what;
        EXPECT_EQ(f.explanations.front().kind, c.kind) << c.what;
        EXPECT_EQ(f.explanations.front().thing, c.thing) << c.what;
        EXPECT_EQ(f.explanations.front().instead, c.instead) << c.what;
        EXPECT_EQ(f.explanations.front().count, c.count) << c.what;
    }
}

INSTANTIATE_TEST_SUITE_P(Parcels, Wrong,
                         testing::Values(Case{"a bottle missing", -210, Kind::missing, "bottle", "", 1},
                                         Case{"both bottles missing", -420, Kind::missing, "bottle", "", 2},
                                         Case{"a bottle too many", 210, Kind::extra, "bottle", "", 1},
                                         Case{"wax for the notebook", 62 - 145, Kind::swapped, "notebook", "wax", 1},
                                         Case{"nibs missing", -28, Kind::missing, "nibs", "", 1},
                                         Case{"the card missing", -14, Kind::insert_missing, "card", "", 1},
                                         Case{"the larger carton", 151 - 95, Kind::wrong_outer, "carton S", "carton M",
                                              1}));

TEST(Detective, TwoGoodsOfOneWeightCannotBeToldApart)
{
    Scene scene = parcel();
    scene.things.push_back(thing("lavender", Thing::Kind::good, 1, 80, 10));
    scene.things.push_back(thing("rose", Thing::Kind::good, 1, 80, 10));
    const Finding f = investigate(scene, right_weight + grams(80)); // one of the two
    EXPECT_EQ(f.verdict, Verdict::cannot_tell);
    std::vector<std::string> best{f.explanations[0].thing, f.explanations[1].thing};
    EXPECT_THAT(best, testing::UnorderedElementsAre("lavender", "rose"));
    EXPECT_NEAR(f.explanations[0].probability, f.explanations[1].probability, 1e-12);
}

TEST(Detective, ASwapOfEqualWeightIsNeverSeen)
{
    Scene scene = parcel();
    scene.goods.push_back({"bottle, other ink", {grams(210), tenth_g(15)}});
    const Finding f = investigate(scene, right_weight);
    EXPECT_EQ(f.verdict, Verdict::right);
    EXPECT_THAT(f.explanations, Contains(testing::Field(&Explanation::instead, "bottle, other ink")));
}

TEST(Detective, SaysWhatItCouldNotSee)
{
    Scene scene = parcel();
    EXPECT_TRUE(investigate(scene, right_weight).unseen.empty());
    scene.things.push_back(thing("filler", Thing::Kind::other, 1, 60, 60)); // 6 g of scatter: 25 g are needed
    const Finding f = investigate(scene, right_weight + grams(60 - 14));
    EXPECT_EQ(f.verdict, Verdict::right); // the card is missing
    EXPECT_THAT(f.unseen, ElementsAre("card"));
}

TEST(Detective, WhatNothingExplainsIsNotForcedOntoTheNearest)
{
    const Finding f = investigate(parcel(), right_weight + grams(333));
    EXPECT_EQ(f.verdict, Verdict::cannot_tell);
    EXPECT_EQ(f.explanations.front().kind, Kind::something_else);
}

TEST(Detective, ProbabilitiesAddUpToOne)
{
    for (std::int64_t g = 0; g <= 1500; g += 7) {
        const Finding f = investigate(parcel(), grams(g));
        const double sum = std::accumulate(f.explanations.begin(), f.explanations.end(), 0.0,
                                           [](double s, const Explanation& e) { return s + e.probability; });
        ASSERT_NEAR(sum, 1, 1e-9) << g;
        ASSERT_TRUE(std::is_sorted(f.explanations.begin(), f.explanations.end(),
                                   [](const auto& a, const auto& b) { return a.probability > b.probability; }));
    }
}

TEST(Detective, AnEmptyParcelOnAnEmptyScale)
{
    EXPECT_EQ(investigate({}, Weight{}).verdict, Verdict::right);
    EXPECT_EQ(investigate({}, grams(100)).verdict, Verdict::cannot_tell);
}

// Parcels drawn from the model with a fixed seed; bounds are four standard errors of the count.
TEST(Detective, RingsForOneRightParcelInEightyAndFindsWhatItPromises)
{
    Scene scene = parcel();
    scene.things.push_back(thing("filler", Thing::Kind::other, 1, 60, 55));
    const Expected right = investigate(scene, Weight{}).expected;
    const Weight least = least_detectable(right.spread);
    std::mt19937 random(11);
    std::normal_distribution<double> scatter(0, in_grams(right.spread));
    const int runs = 4000;
    int rung_right = 0, rung_missing = 0;
    for (int i = 0; i < runs; ++i) {
        const Weight reading = right.mean + Weight{std::llround(scatter(random) * 10)};
        rung_right += investigate(scene, reading).verdict != Verdict::right;
        rung_missing += investigate(scene, reading - least).verdict != Verdict::right;
    }
    EXPECT_NEAR(rung_right / double(runs), 0.012, 0.007);
    EXPECT_NEAR(rung_missing / double(runs), 0.95, 0.014);
}

} // namespace
} // namespace stow::weighing
