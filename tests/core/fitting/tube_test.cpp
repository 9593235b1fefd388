// Rolls and blocks in tubes. Ratios of the enclosing circle to n equal circles: OEIS A281115 (n = 10), Graham,
// Lubachevsky, Nurmela & Östergård, "Dense packings of congruent circles in a circle", Discrete Math. 181 1998,
// 139-154; closed forms from elementary geometry.
#include "make.h"

#include "core/fitting/tube.h"

#include <cmath>
#include <gtest/gtest.h>

namespace stow::fitting {
namespace {

double pi()
{
    return std::acos(-1.0);
}

TEST(Tube, RatiosAreThePublishedOnes)
{
    const auto ratio = [](std::size_t n) { return static_cast<double>(least_ratio(n)) / 1e9; };
    const double ulp = 2e-9;
    EXPECT_NEAR(ratio(1), 1, ulp);
    EXPECT_NEAR(ratio(2), 2, ulp);
    EXPECT_NEAR(ratio(3), 1 + 2 / std::sqrt(3.0), ulp);
    EXPECT_NEAR(ratio(4), 1 + std::sqrt(2.0), ulp);
    EXPECT_NEAR(ratio(5), 1 + std::sqrt(2 * (1 + 1 / std::sqrt(5.0))), ulp);
    EXPECT_NEAR(ratio(6), 3, ulp);
    EXPECT_NEAR(ratio(7), 3, ulp);
    EXPECT_NEAR(ratio(8), 1 + 1 / std::sin(pi() / 7), ulp);
    EXPECT_NEAR(ratio(9), 1 + std::sqrt(2 * (2 + std::sqrt(2.0))), ulp);
    EXPECT_NEAR(ratio(10), 3.813025631, ulp);
    EXPECT_NEAR(ratio(11), 1 + 1 / std::sin(pi() / 9), ulp);
    EXPECT_NEAR(ratio(12), 4.029601930, ulp);
    EXPECT_NEAR(ratio(13), 2 + std::sqrt(5.0), ulp);
}

Question rolls(int count, Length diameter, Length tube)
{
    Question q = question({item("roll", count, Roll{diameter, mm(500)})}, {outer("tube", OuterKind::tube, 1, 1, 510)});
    q.outers[0].form.inner.x = q.outers[0].form.inner.y = tube;
    q.outers[0].form.outer = {tube + mm(4), tube + mm(4), mm(514)};
    return q;
}

// The tube just as wide as the ratio asks, and 0.2 mm for whole tenths: they go in. A tenth less than the ratio: proof.
TEST(Tube, EqualRollsGoInByTheRatioAndNotBelow)
{
    for (int n = 1; n <= 13; ++n) {
        const Length d = mm(40);
        const double exact = static_cast<double>(least_ratio(static_cast<std::size_t>(n))) / 1e9 * 400;
        const Length enough{static_cast<std::int64_t>(std::ceil(exact)) + 2};
        const Length little{static_cast<std::int64_t>(std::ceil(exact)) - 1};
        const Question wide = rolls(n, d, enough);
        const Answer yes = solve(wide);
        EXPECT_EQ(yes.verdict, Verdict::fits) << n << " rolls";
        EXPECT_TRUE(violations(wide, yes).empty()) << n << " rolls";
        const Answer no = solve(rolls(n, d, little));
        EXPECT_EQ(no.verdict, Verdict::cannot_fit) << n << " rolls";
        EXPECT_EQ(no.refused.at(0).reason, Reason::tube_section) << n << " rolls";
        EXPECT_EQ(no.refused.at(0).proof, Proof::geometry) << n << " rolls";
    }
}

TEST(Tube, ShortRollsLieOneBehindTheOther)
{
    // Six rolls of 160 mm in a tube of 500 mm: three layers of two.
    Question q = rolls(6, mm(30), mm(60));
    q.items[0].shape = Roll{mm(30), mm(160)};
    q.outers[0].form.inner.z = mm(500);
    EXPECT_EQ(solve(q).verdict, Verdict::fits);
    q.outers[0].form.inner.z = tenth_mm(4799);
    EXPECT_EQ(solve(q).verdict, Verdict::cannot_fit);
}

TEST(Tube, ARectangleByItsDiagonal)
{
    Question q = question({block("b", 1, 30, 40, 100)}, {outer("tube", OuterKind::tube, 50, 50, 100)});
    EXPECT_EQ(solve(q).verdict, Verdict::fits);
    q.outers[0].form.inner.x = q.outers[0].form.inner.y = tenth_mm(499);
    const Answer a = solve(q);
    EXPECT_EQ(a.verdict, Verdict::cannot_fit);
    EXPECT_EQ(a.refused.at(0).reason, Reason::tube_section);
    EXPECT_EQ(a.refused.at(0).short_by, tenth_mm(1));
}

TEST(Tube, TooShortIsAnEdge)
{
    const Answer a =
        solve(question({item("roll", 1, Roll{mm(40), mm(515)})}, {outer("t", OuterKind::tube, 60, 60, 510)}));
    EXPECT_EQ(a.refused.at(0).reason, Reason::edge);
    EXPECT_EQ(a.refused.at(0).short_by, mm(5));
}

TEST(Tube, ABundleOfBlocksInTheInscribedRectangle)
{
    // Two of 20×40 side by side make 40×40, diagonal 56.57.
    const Question q = question({block("b", 2, 20, 40, 90)}, {outer("tube", OuterKind::tube, 57, 57, 100)});
    const Answer a = solve(q);
    EXPECT_EQ(a.verdict, Verdict::fits);
    EXPECT_TRUE(violations(q, a).empty());
}

TEST(Tube, ARollableSheetGoesRolledAndNoTighterThanItMay)
{
    // 300×200×0.5 round 40 mm: ring area 200·0.5 or 300·0.5 mm²; D = sqrt(40² + 4·100/π) = 41.56, and a layer each
    // side.
    const Item print = item("print", 1, Sheet{mm(300), mm(200), tenth_mm(5), mm(40)});
    const Question q = question({print}, {outer("tube", OuterKind::tube, 43, 43, 310)});
    const Answer a = solve(q);
    ASSERT_EQ(a.verdict, Verdict::fits);
    EXPECT_TRUE(violations(q, a).empty());
    EXPECT_EQ(a.placements.at(0).axis, Axis::z);
    const Question tight = question({print}, {outer("tube", OuterKind::tube, 41, 41, 310)});
    EXPECT_EQ(solve(tight).verdict, Verdict::cannot_fit);
    Question stiff = q;
    stiff.items[0].shape = Sheet{mm(300), mm(200), tenth_mm(5), std::nullopt};
    EXPECT_EQ(solve(stiff).verdict, Verdict::cannot_fit);
}

} // namespace
} // namespace stow::fitting
