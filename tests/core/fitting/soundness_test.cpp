// What fits by construction is never refused: the arrangement came first, the outer was drawn around it, and the
// checker agreed (tests/bench/by_construction.h).
#include "make.h"

#include "tests/bench/by_construction.h"
#include "tests/bench/extent.h"

#include <gtest/gtest.h>

namespace stow::bench {
namespace {

using namespace fitting;

// Closed volume of an outer with that in it.
Volume closed(const Question& q, const std::string& outer, std::optional<Length> cut, const std::vector<Placement>& in)
{
    Length low = in.front().at.z, high = low;
    for (const Placement& p : in) {
        low = std::min(low, p.at.z);
        high = std::max(high, p.at.z + p.size.z);
    }
    for (const Outer& o : q.outers) {
        if (o.id != outer) continue;
        const bool lined = o.form.kind == OuterKind::board_mailer;
        return closed_volume(o.form, high - low + (lined ? q.lining * 2 + q.bed : Length{}), cut);
    }
    return {};
}

TEST(Soundness, WhatFitsByConstructionIsNeverRefused)
{
    const int wanted = cases(3'300, 110'000);
    int asked = 0;
    for (const Scene scene : all_scenes) {
        Dice dice(20'261'125 + static_cast<std::uint64_t>(scene));
        int of_scene = 0, found = 0, discarded = 0;
        while (of_scene < wanted / static_cast<int>(all_scenes.size())) {
            const std::optional<Constructed> made = construct(dice, scene);
            if (!made) {
                ++discarded;
                ASSERT_LT(discarded, of_scene / 20 + 20) << name_of(scene) << ": the constructions are wrong";
                continue;
            }
            ++of_scene;
            const Answer a = solve(made->question, 4'000);
            EXPECT_NE(a.verdict, Verdict::cannot_fit) << name_of(scene) << ' ' << of_scene;
            // Where something else was found, a refusal only says that the outer cannot close smaller than that.
            for (const Refusal& r : a.refused) {
                EXPECT_FALSE(a.verdict != Verdict::fits && r.outer == made->outer && r.verdict == Verdict::cannot_fit)
                    << name_of(scene) << ' ' << of_scene << ", support " << static_cast<int>(made->question.support)
                    << ", reason " << static_cast<int>(r.reason);
            }
            if (a.proven_smallest) {
                EXPECT_LE(closed(made->question, a.outer, a.cut_height, a.placements),
                          closed(made->question, made->outer, made->cut_height, made->placements))
                    << name_of(scene) << ' ' << of_scene;
            }
            if (a.verdict != Verdict::fits) continue;
            EXPECT_TRUE(violations(made->question, a).empty()) << name_of(scene) << ' ' << of_scene;
            ++found;
        }
        std::cout << name_of(scene) << ": " << of_scene << " questions, " << found << " found, " << discarded
                  << " constructions discarded\n";
        asked += of_scene;
    }
    std::cout << asked << " questions that fit by construction\n";
    EXPECT_GE(asked, wanted);
}

} // namespace
} // namespace stow::bench
