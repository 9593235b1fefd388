// The engine against a general integer program solver: the model stands in tests/bench/integer_program.h, and shares
// nothing with the engine but the question. Up to five pieces, sides up to 60.
#include "core/fitting/check.h"
#include "core/fitting/fit.h"
#include "tests/bench/dissection.h"
#include "tests/bench/extent.h"
#include "tests/bench/integer_program.h"

#include <gtest/gtest.h>

namespace stow::bench {
namespace {

using namespace fitting;

// Pieces that pass edges and volume. Even numbers: cut from a box without waste, and one piece made a little longer,
// another shorter; odd ones: drawn freely, half to nine tenths of the box.
Question small_question(Dice& dice, int number)
{
    Question q;
    Outer outer;
    outer.id = "box";
    for (;;) {
        q.items.clear();
        const auto side = [&] { return Length{dice.from_to(12, 60)}; };
        const Size box{side(), side(), side()};
        const int pieces = static_cast<int>(dice.from_to(2, 5));
        std::vector<Size> sizes;
        if (number % 2 == 0) {
            const Cutting cutting = pieces == 5 && dice.one_in(2) ? Cutting::pinwheel : Cutting::guillotine;
            for (const Cell& cell : dissect(dice, box, pieces, cutting, Length{3})) sizes.push_back(cell.size);
            sizes.front().x += Length{dice.from_to(0, 3)};
            sizes.back().y -= Length{dice.from_to(0, 2)};
        } else {
            for (int i = 0; i < pieces; ++i) {
                const auto edge = [&](Length most) { return Length{dice.from_to(1 + most.units / 5, most.units)}; };
                sizes.push_back(!sizes.empty() && dice.one_in(3) ? sizes.back()
                                                                 : Size{edge(box.x), edge(box.y), edge(box.z)});
            }
        }
        std::int64_t sum = 0;
        const Size widest = sorted(box);
        bool narrow = false;
        for (const Size& s : sizes) {
            const Size edges = sorted(s);
            narrow = narrow || edges.x > widest.x || edges.y > widest.y || edges.z > widest.z;
            sum += volume(s).units;
        }
        if (narrow || sum > volume(box).units || 2 * sum < volume(box).units) continue;
        for (std::size_t i = 0; i < sizes.size(); ++i) {
            Item item;
            item.id = "p" + std::to_string(i);
            item.shape = Block{sizes[i]};
            if (number % 3 == 0) item.turns.rule = Turns::Rule::upright;
            q.items.push_back(item);
        }
        outer.form.inner = outer.form.outer = box;
        q.outers = {outer};
        return q;
    }
}

TEST(IntegerProgram, AgreesWithTheEngine)
{
    const int wanted = cases(100, 1000);
    Dice dice(20'261'125);
    int fits = 0, none = 0, gave_up = 0, undecided = 0, searched = 0;
    for (int number = 0; number < wanted; ++number) {
        const Question q = small_question(dice, number);
        const ProgramAnswer program = solve_by_program(q, 20'000);
        stow::Run run({std::nullopt, 1'000'000});
        const Answer engine = fit(q, run);
        if (engine.verdict == Verdict::undecided) ++undecided;
        if (engine.verdict == Verdict::fits) {
            EXPECT_TRUE(check(q, "box", {}, engine.placements).empty());
        }
        switch (program.finding) {
        case Finding::fits:
            ++fits;
            ASSERT_TRUE(check(q, "box", {}, program.placements).empty()) << "case " << number;
            EXPECT_EQ(engine.verdict, Verdict::fits) << "case " << number;
            break;
        case Finding::none:
            ++none;
            EXPECT_EQ(engine.verdict, Verdict::cannot_fit) << "case " << number;
            break;
        case Finding::gave_up: ++gave_up; break;
        }
        if (engine.verdict == Verdict::cannot_fit && engine.refused[0].reason == Reason::exhausted) ++searched;
    }
    std::cout << wanted << " cases: the program finds " << fits << ", proves " << none << " impossible, gives up on "
              << gave_up << "; the engine leaves " << undecided << " undecided and proves " << searched
              << " by search alone\n";
    EXPECT_EQ(undecided, 0);
    EXPECT_GE(10 * none, 3 * wanted); // three in ten impossible, though edges and volume pass
    EXPECT_LE(20 * gave_up, wanted);  // the second opinion is one in nearly all cases
}

} // namespace
} // namespace stow::bench
