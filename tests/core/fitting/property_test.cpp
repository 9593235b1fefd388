// Properties that hold for every question: what fits is sound, what fits by construction is never refused, and more
// choice never takes an answer away.
#include "make.h"

#include <gtest/gtest.h>
#include <rapidcheck.h>

namespace stow::fitting {
namespace {

Length between(std::int64_t least, std::int64_t most)
{
    return Length{*rc::gen::inRange<std::int64_t>(least, most + 1)};
}
Size any_size(std::int64_t least, std::int64_t most)
{
    return {between(least, most), between(least, most), between(least, most)};
}

Turns any_turns()
{
    using Rule = Turns::Rule;
    return {*rc::gen::element(Rule::any, Rule::any, Rule::upright, Rule::flat, Rule::fixed), {true, true, true}};
}

Shape any_shape()
{
    switch (*rc::gen::inRange(0, 6)) {
    case 0: return Cylinder{between(100, 900), between(100, 1500)};
    case 1: return Roll{between(150, 600), between(300, 2000)};
    case 2: return Sheet{between(500, 2000), between(500, 1500), between(1, 20), std::nullopt};
    case 3: return Soft{Volume{between(1'000, 400'000).units * 1000}, between(20, 200)};
    default: return Block{any_size(100, 1500)};
    }
}

Question any_question()
{
    Question q;
    const int kinds = *rc::gen::inRange(1, 5);
    for (int i = 0; i < kinds; ++i) {
        Item it = item("item" + std::to_string(i), *rc::gen::inRange(1, 4), any_shape());
        it.turns = any_turns();
        it.weight = Weight{*rc::gen::inRange<std::int64_t>(0, 5000)};
        if (*rc::gen::inRange(0, 4) == 0) it.top_load = Weight{*rc::gen::inRange<std::int64_t>(0, 5000)};
        if (*rc::gen::inRange(0, 6) == 0) it.fragile = true;
        q.items.push_back(it);
    }
    const int outers = *rc::gen::inRange(1, 6);
    for (int o = 0; o < outers; ++o) {
        Outer out;
        out.id = "outer" + std::to_string(o);
        out.form.kind = *rc::gen::elementOf(all_outer_kinds);
        out.form.inner = any_size(300, 4000);
        if (is_sleeve(out.form.kind)) out.form.inner.z = Length{};
        if (out.form.kind == OuterKind::tube) out.form.inner.y = out.form.inner.x;
        out.form.outer = {out.form.inner.x + mm(4), out.form.inner.y + mm(4), out.form.inner.z + mm(4)};
        if (out.form.kind == OuterKind::carton && *rc::gen::inRange(0, 2) == 0) {
            out.form.cut_heights = {Length{out.form.inner.z.units * 2 / 3}, Length{out.form.inner.z.units / 2}};
        }
        if (is_sleeve(out.form.kind)) out.form.ease = {between(0, 50), between(0, 50)};
        out.form.wall = between(0, 40);
        q.outers.push_back(out);
    }
    q.gap = *rc::gen::element(Length{}, Length{}, mm(5), tenth_mm(33));
    q.lining = *rc::gen::element(Length{}, Length{}, mm(8));
    q.bed = *rc::gen::element(Length{}, Length{}, mm(10));
    q.support = *rc::gen::element(Support::none, Support::partial, Support::full);
    return q;
}

constexpr std::uint64_t little = 3'000; // nodes

TEST(FittingProperty, EveryArrangementIsSoundAndEveryRefusalIsInOrder)
{
    EXPECT_TRUE(rc::check([] {
        const Question q = any_question();
        const Answer a = solve(q, little);
        if (a.verdict == Verdict::fits) {
            const auto wrong = violations(q, a);
            RC_ASSERT(wrong.empty());
        } else {
            RC_ASSERT(a.placements.empty());
            RC_ASSERT(a.refused.size() == q.outers.size());
        }
        bool all_proven = true;
        for (const Refusal& r : a.refused) {
            RC_ASSERT(r.outer != a.outer);
            RC_ASSERT((r.verdict == Verdict::cannot_fit) == (r.proof != Proof::none));
            all_proven = all_proven && r.verdict == Verdict::cannot_fit;
        }
        if (a.verdict == Verdict::cannot_fit) RC_ASSERT(all_proven);
        if (a.proven_smallest) RC_ASSERT(all_proven);
    }));
}

TEST(FittingProperty, ALargerOuterNeverTakesAnAnswerAway)
{
    EXPECT_TRUE(rc::check([] {
        Question q = any_question();
        const Answer before = solve(q, 0);
        Outer vast = carton("vast", 3000, 3000, 3000);
        q.outers.push_back(vast);
        const Answer after = solve(q, 0);
        if (before.verdict != Verdict::fits) return;
        RC_ASSERT(after.verdict == Verdict::fits);
        RC_ASSERT(after.outer == before.outer);
    }));
}

// Cuts a block in two along a random axis, at a whole unit.
void cut_up(std::vector<Size>& blocks)
{
    const auto k = static_cast<std::size_t>(*rc::gen::inRange<int>(0, static_cast<int>(blocks.size())));
    Length Size::*const axis = *rc::gen::element(&Size::x, &Size::y, &Size::z);
    if ((blocks[k].*axis).units < 60) return;
    const Length first = between(20, (blocks[k].*axis).units - 20);
    Size rest = blocks[k];
    rest.*axis = rest.*axis - first;
    blocks[k].*axis = first;
    blocks.push_back(rest);
}

TEST(FittingProperty, ABoxCutIntoPiecesIsNeverRefused)
{
    EXPECT_TRUE(rc::check([] {
        std::vector<Size> blocks{any_size(200, 2000)};
        const Size whole = blocks[0];
        const int cuts = *rc::gen::inRange(1, 9);
        for (int c = 0; c < cuts; ++c) cut_up(blocks);
        Question q;
        q.gap = *rc::gen::element(Length{}, tenth_mm(7));
        q.lining = *rc::gen::element(Length{}, mm(4));
        q.bed = *rc::gen::element(Length{}, mm(3));
        const bool turned = *rc::gen::inRange(0, 2) == 0;
        for (std::size_t i = 0; i < blocks.size(); ++i) {
            // What the gap takes comes off each piece; a piece given turned must be turned back.
            Size s = {blocks[i].x - q.gap, blocks[i].y - q.gap, blocks[i].z - q.gap};
            if (turned) s = {s.z, s.x, s.y};
            q.items.push_back(item("piece" + std::to_string(i), 1, Block{s}));
            if (!turned) q.items.back().turns = any_turns();
            if (q.items.back().turns.rule == Turns::Rule::flat) q.items.back().turns.rule = Turns::Rule::any;
        }
        q.outers = {carton("box", 0, 0, 0)};
        q.outers[0].form.inner = {whole.x - q.gap + q.lining * 2, whole.y - q.gap + q.lining * 2,
                                  whole.z - q.gap + q.lining * 2 + q.bed};
        q.outers[0].form.outer = q.outers[0].form.inner;
        const Answer a = solve(q, 20'000);
        RC_ASSERT(a.verdict != Verdict::cannot_fit);
        if (a.verdict == Verdict::fits) RC_ASSERT(violations(q, a).empty());
    }));
}

TEST(FittingProperty, RoundGoodsLaidOutByHandAreNeverRefused)
{
    // Upright jars on a triangular grid, as many as a carton drawn around them holds.
    EXPECT_TRUE(rc::check([] {
        const std::int64_t d = *rc::gen::inRange<std::int64_t>(100, 700);
        const int rows = *rc::gen::inRange(1, 4), in_row = *rc::gen::inRange(1, 4);
        const std::int64_t step = (d * 8'660'255 + 9'999'999) / 10'000'000; // sqrt(3)/2, rounded up
        const std::int64_t half = (d + 1) / 2;
        Question q;
        q.items = {item("jar", rows * in_row, Cylinder{Length{d}, Length{900}}, Turns::Rule::upright)};
        q.outers = {carton("box", 0, 0, 0)};
        q.outers[0].form.inner = {Length{in_row * d + (rows > 1 ? half : 0)}, Length{d + (rows - 1) * step},
                                  Length{900}};
        q.outers[0].form.outer = q.outers[0].form.inner;
        const Answer a = solve(q, little);
        RC_ASSERT(a.verdict != Verdict::cannot_fit);
        if (a.verdict == Verdict::fits) RC_ASSERT(violations(q, a).empty());
    }));
}

TEST(FittingProperty, AnythingThatWasLaidOutIsNeverRefused)
{
    // Jars, rolls and blocks put down at random and pushed together, in a carton drawn tightly around them.
    EXPECT_TRUE(rc::check([] {
        Question q;
        q.gap = *rc::gen::element(Length{}, tenth_mm(5));
        q.outers = {carton("box", 400, 400, 400)};
        std::vector<Placement> placed;
        const int count = *rc::gen::inRange(2, 7);
        for (int i = 0; i < count; ++i) {
            Placement p;
            p.item = "item" + std::to_string(i);
            Shape shape;
            if (*rc::gen::inRange(0, 3) != 0) {
                const Length d = between(100, 500), h = between(100, 500);
                shape = Cylinder{d, h};
                p.size = {d, d, h};
                p.axis = Axis::z;
                if (*rc::gen::inRange(0, 4) == 0) p.size = {h, d, d}, p.axis = Axis::x;
            } else {
                p.size = any_size(100, 500);
                shape = Block{p.size};
            }
            p.at = {between(0, 900), between(0, 900), between(0, 300)};
            q.items.push_back(item(p.item, 1, shape));
            placed.push_back(p);
            if (check(q, "box", {}, placed).empty()) continue;
            q.items.pop_back();
            placed.pop_back();
        }
        for (Length step : {mm(10), mm(1), tenth_mm(1)}) { // towards the corner, as far as they go
            for (bool moved = true; moved;) {
                moved = false;
                for (Placement& p : placed) {
                    for (Length Size::*axis : {&Size::x, &Size::y, &Size::z}) {
                        p.at.*axis = p.at.*axis - step;
                        if (check(q, "box", {}, placed).empty())
                            moved = true;
                        else
                            p.at.*axis += step;
                    }
                }
            }
        }
        Size tight;
        for (const Placement& p : placed) {
            tight.x = std::max(tight.x, p.at.x + p.size.x);
            tight.y = std::max(tight.y, p.at.y + p.size.y);
            tight.z = std::max(tight.z, p.at.z + p.size.z);
        }
        q.outers[0].form.inner = q.outers[0].form.outer = tight;
        RC_ASSERT(check(q, "box", {}, placed).empty());
        const Answer a = solve(q, 20'000);
        RC_ASSERT(a.verdict != Verdict::cannot_fit);
        RC_CLASSIFY(a.verdict == Verdict::fits, "found");
    }));
}

TEST(FittingProperty, TheSameQuestionHasTheSameAnswer)
{
    EXPECT_TRUE(rc::check([] {
        const Question q = any_question();
        const Answer a = solve(q, little), b = solve(q, little);
        RC_ASSERT(a.verdict == b.verdict);
        RC_ASSERT(a.outer == b.outer);
        RC_ASSERT(a.work == b.work);
        RC_ASSERT(a.placements.size() == b.placements.size());
        for (std::size_t i = 0; i < a.placements.size(); ++i) RC_ASSERT(a.placements[i].at == b.placements[i].at);
    }));
}

} // namespace
} // namespace stow::fitting
