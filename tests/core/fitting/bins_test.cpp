// How few outers hold a set. Problems: Martello, Pisinger & Vigo 2000 (tests/bench/bin_problems.h) and their bound L2;
// by hand where the fewest are plain to see.
#include "make.h"

#include "core/fitting/bins.h"
#include "core/fitting/repack.h"
#include "tests/bench/bin_problems.h"
#include "tests/bench/dissection.h"

#include <gtest/gtest.h>
#include <map>
#include <set>

namespace stow::fitting {
namespace {

Bins fewest(const Question& q, std::uint64_t work = 20'000)
{
    Run run({std::nullopt, work});
    return fewest_outers(q, 0, run);
}

// Every piece exactly once, and each outer sound as a question of its own.
void expect_sound(const Question& q, const Bins& bins)
{
    std::set<std::pair<std::string, int>> seen;
    for (std::vector<Placement> placements : bins.outers) {
        Question one = q;
        one.support = Support::none;
        std::map<std::string, int> counts;
        for (Placement& p : placements) {
            EXPECT_TRUE(seen.emplace(p.item, p.copy).second) << p.item << ' ' << p.copy;
            p.copy = ++counts[p.item];
        }
        for (Item& i : one.items) i.count = counts[i.id];
        EXPECT_TRUE(check(one, q.outers[0].id, {}, placements).empty());
    }
    int pieces = 0;
    for (const Item& i : q.items) pieces += i.count;
    EXPECT_EQ(seen.size(), static_cast<std::size_t>(pieces));
}

TEST(Bins, NineHalfCubesNeedTwo)
{
    const Question q = question({block("cube", 9, 50, 50, 50)}, {carton("box", 100, 100, 100)});
    const Bins bins = fewest(q);
    EXPECT_EQ(bins.outers.size(), 2U);
    EXPECT_EQ(bins.least, 2U);
    expect_sound(q, bins);
}

TEST(Bins, WhatIsMoreThanHalfEveryWayStandsAlone)
{
    const Question q =
        question({block("large", 4, 51, 60, 70), block("small", 3, 20, 20, 20)}, {carton("box", 100, 100, 100)});
    const Bins bins = fewest(q);
    EXPECT_EQ(bins.outers.size(), 4U);
    EXPECT_EQ(bins.least, 4U);
    expect_sound(q, bins);
}

TEST(Bins, TheGreatestLoadIsKept)
{
    Question q = question({item("heavy", 5, Block{size_mm(10, 10, 10)}, Turns::Rule::any, grams(400))},
                          {carton("box", 100, 100, 100)});
    q.outers[0].max_load = grams(1000);
    const Bins bins = fewest(q);
    EXPECT_EQ(bins.outers.size(), 3U);
    expect_sound(q, bins);
}

TEST(Bins, LiningBedAndGapTakeTheirRoom)
{
    Question q = question({block("cube", 8, 46, 46, 45)}, {carton("box", 100, 100, 100)});
    q.gap = mm(2), q.lining = mm(3), q.bed = mm(2); // two cubes and a gap: 94 by 94 by 92
    Bins bins = fewest(q);
    EXPECT_EQ(bins.outers.size(), 1U);
    expect_sound(q, bins);
    q.bed = mm(3);
    bins = fewest(q);
    EXPECT_EQ(bins.outers.size(), 2U);
    expect_sound(q, bins);
}

TEST(Bins, NoneWhereAPieceDoesNotGoIn)
{
    EXPECT_TRUE(fewest(question({block("long", 1, 101, 10, 10)}, {carton("box", 100, 100, 100)})).outers.empty());
}

// Three boxes cut up without waste, some slack given back: three are enough again.
TEST(Bins, ThreeCutUpBoxesNeedThree)
{
    bench::Dice dice(3);
    for (int k = 0; k < 5; ++k) {
        Question q = question({}, {carton("box", 100, 120, 80)});
        for (int b = 0; b < 3; ++b) {
            for (const bench::Cell& cell :
                 bench::dissect(dice, size_mm(98, 118, 78), 5, bench::Cutting::guillotine, mm(10))) {
                q.items.push_back(item("p" + std::to_string(q.items.size()), 1, Block{cell.size}));
            }
        }
        const Bins bins = fewest(q, 200'000);
        EXPECT_EQ(bins.outers.size(), 3U) << "set " << k;
        expect_sound(q, bins);
    }
}

TEST(Bins, PublishedProblemsLieJustAboveTheBound)
{
    for (const int mpv_class : {1, 4, 5, 8}) {
        const bench::BinProblem p = bench::martello_pisinger_vigo(mpv_class, 50, 1);
        const Question q = bench::question_of(p);
        const Bins bins = fewest(q);
        expect_sound(q, bins);
        EXPECT_GE(static_cast<std::int64_t>(bins.outers.size()), bench::bound_l2(p)) << "class " << mpv_class;
        EXPECT_LE(static_cast<std::int64_t>(bins.outers.size()), bench::bound_l2(p) + 2) << "class " << mpv_class;
        EXPECT_LE(static_cast<std::int64_t>(bins.least), bench::bound_l2(p)) << "class " << mpv_class;
    }
}

// Boxes cut into eight, 2 % of each side given back: put together again by taking one room apart and packing it anew.
TEST(Bins, OneRoomIsPackedAgainUntilAllIsIn)
{
    bench::Dice dice(4);
    for (int k = 0; k < 10; ++k) {
        const Size box = size_mm(200, 250, 150);
        Question q = question({}, {carton("box", 204, 255, 153)});
        for (const bench::Cell& cell : bench::dissect(dice, box, 8, bench::Cutting::pinwheel, mm(20))) {
            q.items.push_back(item("p" + std::to_string(q.items.size()), 1, Block{cell.size}));
        }
        const Load load = make_load(q, Room::box);
        const Space space{{2040, 2550, 1530}, Support::none, 0};
        stow::Run run;
        const auto found = find_repacked(load, space, 100'000, run, [&](const Arrangement& spots) {
            std::vector<Placement> placements;
            for (std::size_t p = 0; p < spots.size(); ++p) {
                Placement& placed = placements.emplace_back();
                placed.item = q.items[load.kinds[load.pieces[p].kind].item].id;
                placed.at = {Length{spots[p].at[0]}, Length{spots[p].at[1]}, Length{spots[p].at[2]}};
                placed.size = {Length{spots[p].side[0]}, Length{spots[p].side[1]}, Length{spots[p].side[2]}};
            }
            return check(q, "box", {}, placements).empty();
        });
        EXPECT_TRUE(found.has_value()) << "box " << k;
    }
}

TEST(Bins, TheSameWorkGivesTheSameBins)
{
    const Question q = bench::question_of(bench::martello_pisinger_vigo(8, 50, 2));
    const Bins a = fewest(q), b = fewest(q);
    ASSERT_EQ(a.outers.size(), b.outers.size());
    for (std::size_t k = 0; k < a.outers.size(); ++k) {
        ASSERT_EQ(a.outers[k].size(), b.outers[k].size());
        for (std::size_t i = 0; i < a.outers[k].size(); ++i) EXPECT_EQ(a.outers[k][i].at, b.outers[k][i].at);
    }
}

} // namespace
} // namespace stow::fitting
