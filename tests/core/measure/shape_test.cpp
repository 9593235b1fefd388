#include "core/measure/shape.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <numbers>
#include <rapidcheck/gtest.h>

namespace stow {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;
using testing::UnorderedElementsAre;

Size size(int x, int y, int z)
{
    return {mm(x), mm(y), mm(z)};
}

TEST(Quantities, AreExact)
{
    static_assert(mm(6) == tenth_mm(60));
    static_assert(grams(1) == tenth_g(10));
    static_assert(mm(100) * mm(100) * mm(100) == millilitres(1000), "a cube of 10 cm is a litre");
    EXPECT_DOUBLE_EQ(in_litres(millilitres(1500)), 1.5);
    EXPECT_DOUBLE_EQ(in_mm(tenth_mm(905)), 90.5);
    EXPECT_DOUBLE_EQ(in_grams(tenth_g(25)), 2.5);
}

TEST(WeightOf, RoundsToTheTenthOfAGram)
{
    EXPECT_EQ(weight_of(millilitres(1000), grams(30)), grams(30));
    EXPECT_EQ(weight_of(millilitres(1500), grams(5)), tenth_g(75));
    EXPECT_EQ(weight_of(millilitres(1), grams(50)), tenth_g(1)) << "0.05 g goes up";
    EXPECT_EQ(weight_of(millilitres(1), grams(49)), tenth_g(0));
}

TEST(BoundingSize, OfEachShape)
{
    EXPECT_EQ(bounding_size(Block{size(3, 2, 1)}), size(3, 2, 1));
    EXPECT_EQ(bounding_size(Cylinder{mm(40), mm(60)}), size(40, 40, 60));
    EXPECT_EQ(bounding_size(Roll{mm(50), mm(300)}), size(300, 50, 50));
    EXPECT_EQ(bounding_size(Sheet{mm(297), mm(210), tenth_mm(5), {}}), (Size{mm(297), mm(210), tenth_mm(5)}));
    EXPECT_EQ(bounding_size(Soft{millilitres(1000), mm(6)}), size(100, 100, 100));
    EXPECT_EQ(bounding_size(Soft{millilitres(1), mm(30)}), size(30, 30, 30)) << "nowhere thinner than its least";
}

TEST(SolidVolume, ACylinderIsNeverOverstated)
{
    const Volume v = solid_volume(Cylinder{mm(100), mm(100)});
    const double exact = std::numbers::pi / 4; // litres
    EXPECT_LE(in_litres(v), exact);
    EXPECT_NEAR(in_litres(v), exact, 1e-6);
    EXPECT_EQ(solid_volume(Roll{mm(100), mm(100)}), v);
    EXPECT_EQ(solid_volume(Block{size(2, 3, 4)}), Volume{24'000});
}

TEST(TurnedSizes, OfEachRule)
{
    const Size s = size(3, 2, 1);
    EXPECT_THAT(turned_sizes(s, {}), UnorderedElementsAre(size(3, 2, 1), size(2, 3, 1), size(3, 1, 2), size(1, 3, 2),
                                                          size(2, 1, 3), size(1, 2, 3)));
    EXPECT_THAT(turned_sizes(s, {Turns::Rule::upright, {}}), ElementsAre(size(3, 2, 1), size(2, 3, 1)));
    EXPECT_THAT(turned_sizes(size(1, 2, 3), {Turns::Rule::flat, {}}), ElementsAre(size(2, 3, 1), size(3, 2, 1)));
    EXPECT_THAT(turned_sizes(s, {Turns::Rule::fixed, {}}), ElementsAre(s));
    EXPECT_THAT(turned_sizes(s, {Turns::Rule::listed, {true, false, false}}),
                ElementsAre(size(2, 1, 3), size(1, 2, 3)));
    EXPECT_THAT(turned_sizes(s, {Turns::Rule::listed, {false, false, false}}), IsEmpty());
    EXPECT_THAT(turned_sizes(size(2, 2, 2), {}), ElementsAre(size(2, 2, 2))) << "a cube has one";
    EXPECT_THAT(turned_sizes(size(5, 1, 1), {Turns::Rule::flat, {}}), ElementsAre(size(5, 1, 1), size(1, 5, 1)))
        << "both small edges may stand";
}

RC_GTEST_PROP(TurnedSizes, AreDistinctAndKeepTheEdges, ())
{
    const auto edge = rc::gen::inRange(1, 5);
    const Size s = size(*edge, *edge, *edge);
    const auto turned = turned_sizes(s, {});
    for (std::size_t i = 0; i < turned.size(); ++i) {
        RC_ASSERT(sorted(turned[i]) == sorted(s));
        for (std::size_t k = 0; k < i; ++k) RC_ASSERT(turned[i] != turned[k]);
    }
    const bool two_alike = s.x == s.y || s.y == s.z || s.x == s.z, cube = s.x == s.y && s.y == s.z;
    RC_ASSERT(turned.size() == (cube ? 1U : two_alike ? 3U : 6U));
}

TEST(OuterKind, NamesBothWays)
{
    const char* names[] = {"carton", "gift-box", "mailer", "padded-mailer", "board-mailer", "tube"};
    for (std::size_t i = 0; i < all_outer_kinds.size(); ++i) {
        EXPECT_EQ(name_of(all_outer_kinds[i]), names[i]);
        EXPECT_EQ(outer_kind(names[i]), all_outer_kinds[i]);
    }
    EXPECT_FALSE(outer_kind("bag"));
}

OuterForm form(OuterKind kind, Size inner, Size outer, Length wall = {})
{
    return {kind, inner, outer, {}, {}, wall};
}

// The tie of reference practice: a 17 mm item in walls of 4 mm closes at exactly 25 mm.
TEST(ClosedSize, SleevesGrowWithTheirContents)
{
    const OuterForm padded = form(OuterKind::padded_mailer, size(210, 150, 0), size(240, 175, 8), mm(4));
    EXPECT_EQ(closed_size(padded, mm(17)), size(240, 175, 25));
    EXPECT_EQ(closed_size(padded, mm(0)), size(240, 175, 8)) << "never thinner than empty";
    EXPECT_EQ(closed_volume(padded, mm(17)), mm(240) * mm(175) * mm(25));
    const OuterForm board = form(OuterKind::board_mailer, size(310, 225, 20), size(325, 240, 4), tenth_mm(15));
    EXPECT_EQ(closed_size(board, mm(10)).z, mm(13));
}

TEST(ClosedSize, CartonsAreLoweredByWhatIsCut)
{
    const OuterForm carton = form(OuterKind::carton, size(300, 220, 150), size(306, 226, 162));
    EXPECT_EQ(closed_size(carton, mm(99)), size(306, 226, 162)) << "contents do not matter";
    EXPECT_EQ(closed_size(carton, {}, mm(90)), size(306, 226, 102)) << "the board of the flaps stays";
    EXPECT_LT(closed_volume(carton, {}, mm(90)), closed_volume(carton, {}));
}

TEST(ClosedVolume, OfATubeIsItsSquareBlock)
{
    const OuterForm tube = form(OuterKind::tube, size(60, 60, 430), size(65, 65, 444));
    EXPECT_EQ(closed_volume(tube, {}), mm(65) * mm(65) * mm(444));
}

} // namespace
} // namespace stow
