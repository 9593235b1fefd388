#include "core/weighing/lessons.h"

#include <gtest/gtest.h>

namespace stow::weighing {
namespace {

shop::Cupboard shelf()
{
    shop::Cupboard cupboard;
    shop::Good ink;
    ink.code = {"INK"};
    ink.weight = {grams(200), grams(3)};
    cupboard.goods[ink.code] = ink;
    shop::Supply filler;
    filler.code = {"SHRED"};
    filler.weight = {grams(30), grams(5)};
    cupboard.supplies[filler.code] = filler;
    return cupboard;
}

// One parcel of `count` bottles and half a litre of filler; all else known to a tenth.
Lesson lesson(int count, Weight reading)
{
    Lesson l;
    l.things = {{"INK", false, count, 1000, {grams(200), grams(3)}}, {"SHRED", true, 1, 500, {grams(30), grams(5)}}};
    l.rest = {grams(100), tenth_g(3)};
    l.reading = reading;
    return l;
}

TEST(Lessons, WithoutAnyWeightsAreAsEntered)
{
    shop::Cupboard cupboard = shelf();
    teach(cupboard, {});
    EXPECT_EQ(cupboard.weight_of(cupboard.goods.at({"INK"})).one, (shop::WeightEstimate{grams(200), grams(3)}));
    EXPECT_EQ(cupboard.weight_of(cupboard.goods.at({"INK"})).batch_permille, 10); // the house's 1 %
}

TEST(Lessons, ManyParcelsBringTheWeightsNearTheTruth)
{
    // Truth: bottles of 206 g, filler of 40 g a litre.
    shop::Cupboard cupboard = shelf();
    std::vector<Lesson> lessons;
    for (int i = 0; i < 60; ++i) {
        const int count = 1 + i % 3;
        lessons.push_back(lesson(count, grams(100 + 20 + 206 * count)));
    }
    teach(cupboard, lessons);
    const shop::LearntWeight ink = cupboard.weight_of(cupboard.goods.at({"INK"}));
    EXPECT_NEAR(in_grams(ink.one.mean), 206, 0.6);
    EXPECT_EQ(ink.seen, 120);
    EXPECT_LT(ink.batch_permille, 10) << "what was doubtful is known";
    EXPECT_NEAR(in_grams(cupboard.weight_of(cupboard.supplies.at({"SHRED"})).one.mean), 40, 3);
}

TEST(Lessons, TakingTheLastOneBackTakesBackWhatItTaught)
{
    shop::Cupboard before = shelf(), after = shelf();
    std::vector<Lesson> lessons(10, lesson(2, grams(540)));
    teach(before, lessons);
    lessons.push_back(lesson(2, grams(580)));
    teach(after, lessons);
    EXPECT_NE(before.learnt_goods, after.learnt_goods);
    lessons.pop_back();
    teach(after, lessons);
    EXPECT_EQ(before.learnt_goods, after.learnt_goods);
    EXPECT_EQ(before.learnt_supplies, after.learnt_supplies);
}

TEST(Lessons, AnEstimateEnteredAnewBeginsAnew)
{
    shop::Cupboard cupboard = shelf();
    const std::vector<Lesson> lessons(10, lesson(2, grams(540)));
    cupboard.goods.at({"INK"}).weight.mean = grams(190); // a new bottle
    teach(cupboard, lessons);
    EXPECT_EQ(cupboard.weight_of(cupboard.goods.at({"INK"})).one.mean, grams(190));
    EXPECT_TRUE(cupboard.learnt_supplies.contains({"SHRED"})) << "of the filler it still teaches";
}

} // namespace
} // namespace stow::weighing
