// Boxes cut up without waste are put together again, whether or not they can be cut right through; their twins, one
// piece grown and another shrunk, never get an arrangement that the checker refuses. No source: dissections of our own.
#include "make.h"

#include "tests/bench/dissection.h"
#include "tests/bench/extent.h"

#include <gtest/gtest.h>

namespace stow::bench {
namespace {

using namespace fitting;

// Half of them not guillotine, five to ten pieces, half of them in whole centimetres.
Puzzle puzzle_number(Dice& dice, int k)
{
    const Cutting cutting = k % 2 == 0 ? Cutting::guillotine : Cutting::pinwheel;
    return perfect_puzzle(dice, 5 + k / 4 % 6, cutting, k / 2 % 2 == 0 ? tenth_mm(1) : mm(10));
}

Volume sum_of(const std::vector<Item>& items)
{
    Volume sum;
    for (const Item& item : items) sum += volume(bounding_size(item.shape));
    return sum;
}

TEST(Puzzle, PiecesFillTheBoxExactly)
{
    Dice dice(1);
    for (int k = 0; k < 500; ++k) {
        const Puzzle puzzle = puzzle_number(dice, k);
        ASSERT_EQ(puzzle.question.items.size(), static_cast<std::size_t>(5 + k / 4 % 6));
        EXPECT_TRUE(check(puzzle.question, "box", {}, puzzle.solution).empty());
        EXPECT_EQ(sum_of(puzzle.question.items), volume(puzzle.question.outers[0].form.inner));
        const Puzzle twin = twin_of(dice, puzzle);
        EXPECT_LE(sum_of(twin.question.items), volume(twin.question.outers[0].form.inner));
        EXPECT_FALSE(check(twin.question, "box", {}, puzzle.solution).empty());
    }
}

// True where some cut right through parts the cells, in each part again, down to single cells.
bool cuttable(const std::vector<Cell>& cells)
{
    if (cells.size() <= 1) return true;
    for (Length Size::*axis : {&Size::x, &Size::y, &Size::z}) {
        for (const Cell& candidate : cells) {
            const Length at = candidate.at.*axis;
            std::vector<Cell> before, behind;
            bool through = true;
            for (const Cell& c : cells) {
                if (c.at.*axis + c.size.*axis <= at)
                    before.push_back(c);
                else if (c.at.*axis >= at)
                    behind.push_back(c);
                else
                    through = false;
            }
            if (through && !before.empty() && !behind.empty()) return cuttable(before) && cuttable(behind);
        }
    }
    return false;
}

TEST(Puzzle, HalfCannotBeCutRightThrough)
{
    Dice dice(2);
    for (int k = 0; k < 200; ++k) {
        const Size box{mm(200), mm(250), mm(150)};
        EXPECT_TRUE(cuttable(dissect(dice, box, 5 + k % 6, Cutting::guillotine, mm(10))));
        EXPECT_FALSE(cuttable(dissect(dice, box, 5 + k % 6, Cutting::pinwheel, mm(10))));
    }
}

TEST(Puzzle, AllArePutTogetherAgain)
{
    Dice dice(20'261'125);
    const int wanted = cases(60, 600);
    int solved = 0;
    for (int k = 0; k < wanted; ++k) {
        const Puzzle puzzle = puzzle_number(dice, k);
        const Answer a = solve(puzzle.question, 20'000'000);
        EXPECT_EQ(a.verdict, Verdict::fits) << "puzzle " << k << " of " << puzzle.question.items.size() << " pieces";
        if (a.verdict != Verdict::fits) continue;
        EXPECT_TRUE(violations(puzzle.question, a).empty()) << "puzzle " << k;
        ++solved;
    }
    std::cout << solved << " of " << wanted << " puzzles put together\n";
}

TEST(Puzzle, TwinsAreRefusedOrLeftOpenOrTrulyFit)
{
    Dice dice(20'261'126);
    const int wanted = cases(60, 600);
    int refused = 0, undecided = 0, fit_all_the_same = 0;
    for (int k = 0; k < wanted; ++k) {
        const Puzzle twin = twin_of(dice, puzzle_number(dice, k));
        const Answer a = solve(twin.question, 200'000);
        switch (a.verdict) {
        case Verdict::fits:
            EXPECT_TRUE(violations(twin.question, a).empty()) << "twin " << k;
            ++fit_all_the_same;
            break;
        case Verdict::cannot_fit:
            EXPECT_EQ(a.refused.at(0).proof, Proof::geometry);
            ++refused;
            break;
        case Verdict::undecided: ++undecided; break;
        }
    }
    std::cout << wanted << " twins: " << refused << " refused, " << undecided << " undecided, " << fit_all_the_same
              << " fit all the same\n";
}

} // namespace
} // namespace stow::bench
