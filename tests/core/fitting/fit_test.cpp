#include "make.h"

#include <gmock/gmock.h>

namespace stow::fitting {
namespace {

using ::testing::IsEmpty;
using ::testing::SizeIs;

TEST(Fit, TakesTheSmallestOuterThatHolds)
{
    const Question q = question({block("bottle", 3, 60, 60, 90)},
                                {carton("L", 300, 300, 300), carton("S", 180, 60, 90), carton("XS", 170, 60, 90)});
    const Answer a = solve(q);
    EXPECT_EQ(a.verdict, Verdict::fits);
    EXPECT_EQ(a.outer, "S");
    EXPECT_TRUE(a.proven_smallest);
    EXPECT_THAT(violations(q, a), IsEmpty());
    ASSERT_THAT(a.refused, SizeIs(1));
    EXPECT_EQ(a.refused[0].outer, "XS");
    EXPECT_EQ(a.refused[0].proof, Proof::geometry);
}

TEST(Fit, SaysByHowMuchAnEdgeIsShort)
{
    const Answer a = solve(question({block("tall", 1, 20, 20, 101)}, {carton("S", 50, 50, 100)}));
    EXPECT_EQ(a.verdict, Verdict::cannot_fit);
    ASSERT_THAT(a.refused, SizeIs(1));
    EXPECT_EQ(a.refused[0].reason, Reason::edge);
    EXPECT_EQ(a.refused[0].short_by, mm(1));
    EXPECT_EQ(a.refused[0].item, "tall");
}

TEST(Fit, TellsTurnsFromEdges)
{
    const Answer a =
        solve(question({block("upright", 1, 20, 20, 90, Turns::Rule::upright)}, {carton("flat", 100, 100, 80)}));
    ASSERT_THAT(a.refused, SizeIs(1));
    EXPECT_EQ(a.refused[0].reason, Reason::turns);
    EXPECT_EQ(a.refused[0].short_by, mm(10));
}

} // namespace
} // namespace stow::fitting
