// Upright jars as true circles, against published packings and in company.
#include "make.h"

#include <gtest/gtest.h>

#include <cmath>

namespace stow::fitting {
namespace {

// A carton whose floor is a square of side `tenths` (0.1 mm) for `count` jars of 100 mm across.
Answer jars_on_square(int count, std::int64_t tenths, Support support)
{
    Question q;
    Item jar;
    jar.id = "jar";
    jar.count = count;
    jar.shape = Cylinder{mm(100), mm(120)};
    jar.turns.rule = Turns::Rule::upright;
    q.items = {jar};
    Outer carton;
    carton.id = "K";
    carton.form.inner = {tenth_mm(tenths), tenth_mm(tenths), mm(120)};
    carton.form.outer = {tenth_mm(tenths + 60), tenth_mm(tenths + 60), mm(126)};
    q.outers = {carton};
    q.support = support;
    stow::Run run({.time = std::nullopt, .work = 200'000});
    return fit(q, run);
}

// Greatest least distance m of n points in a unit square, so that n circles of diameter 1 need a square of 1 + 1/m.
// H. T. Croft, K. J. Falconer, R. K. Guy, "Unsolved Problems in Geometry", 1991, table D1; the values, given here from
// memory, are exact for 2 to 5, 6 (sqrt 13 / 6), 7 (4 - 2 sqrt 3), 8 ((sqrt 6 - sqrt 2) / 2) and 9 (1/2).
TEST(Rounds, EqualJarsReachTheKnownSquares)
{
    const std::vector<std::pair<int, double>> least_distance{{2, std::sqrt(2.0)},
                                                             {3, std::sqrt(6.0) - std::sqrt(2.0)},
                                                             {4, 1.0},
                                                             {5, std::sqrt(2.0) / 2},
                                                             {6, std::sqrt(13.0) / 6},
                                                             {7, 4 - 2 * std::sqrt(3.0)},
                                                             {8, (std::sqrt(6.0) - std::sqrt(2.0)) / 2},
                                                             {9, 0.5}};
    for (const auto& [count, m] : least_distance) {
        const double side = 1000 * (1 + 1 / m);
        // Three thousandths above the optimum it is found; 1 mm below it nothing may be.
        const auto roomy = static_cast<std::int64_t>(std::ceil(side * 1.003));
        EXPECT_EQ(jars_on_square(count, roomy, Support::partial).verdict, Verdict::fits) << count;
        EXPECT_NE(jars_on_square(count, static_cast<std::int64_t>(side) - 10, Support::none).verdict, Verdict::fits)
            << count;
    }
}

// Hexagonal rows: r rows of n and n - 1 or n circles of diameter 1 are 1 + (r - 1) sqrt(3)/2 deep. 18 jars in five rows
// of 4, 3, 4, 3, 4 take 400 x 446.4 mm, where squares would need five rows of 100.
TEST(Rounds, ManyJarsStandInHexagonsWhereRowsDoNotGo)
{
    Question q;
    Item jar;
    jar.id = "jar";
    jar.count = 18;
    jar.shape = Cylinder{mm(100), mm(60)};
    jar.turns.rule = Turns::Rule::upright;
    q.items = {jar};
    Outer carton;
    carton.id = "K";
    carton.form.inner = {mm(400), mm(447), mm(60)};
    carton.form.outer = {mm(406), mm(453), mm(66)};
    q.outers = {carton};
    q.support = Support::partial;
    stow::Run run({.time = std::nullopt, .work = 200'000});
    EXPECT_EQ(fit(q, run).verdict, Verdict::fits);

    // Two storeys of them, and a card that stands along a wall: the rest stays a hexagon.
    q.items[0].count = 36;
    Item card;
    card.id = "card";
    card.shape = Block{{mm(148), mm(105), mm(2)}};
    q.items.push_back(card);
    q.outers[0].form.inner = {mm(400), mm(449), mm(120)};
    stow::Run again({.time = std::nullopt, .work = 200'000});
    EXPECT_EQ(fit(q, again).verdict, Verdict::fits);
}

} // namespace
} // namespace stow::fitting
