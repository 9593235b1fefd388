// The checker objects to every way in which an arrangement can be wrong, and to nothing else.
#include "make.h"

#include <gmock/gmock.h>

namespace stow::fitting {
namespace {

using ::testing::Contains;
using ::testing::ElementsAre;
using ::testing::Field;
using ::testing::IsEmpty;

auto breaks(Rule rule)
{
    return Field(&Violation::rule, rule);
}

Placement put(std::string id, int copy, Size at, Size size, std::optional<Axis> axis = std::nullopt)
{
    Placement p;
    p.item = std::move(id);
    p.copy = copy;
    p.at = at;
    p.size = size;
    p.axis = axis;
    return p;
}

std::vector<Violation> judge(const Question& q, const std::vector<Placement>& p)
{
    return check(q, q.outers[0].id, {}, p);
}

// Two 50 mm cubes that just fill the box.
struct TwoCubes : ::testing::Test {
    Question q = question({block("cube", 2, 50, 50, 50)}, {carton("box", 100, 50, 50)});
    std::vector<Placement> placed{put("cube", 1, size_mm(0, 0, 0), size_mm(50, 50, 50)),
                                  put("cube", 2, size_mm(50, 0, 0), size_mm(50, 50, 50))};
};

TEST_F(TwoCubes, AreSound)
{
    EXPECT_THAT(judge(q, placed), IsEmpty());
}

TEST_F(TwoCubes, ATenthOfAMillimetreIntoEachOtherIsSeen)
{
    placed[1].at.x = tenth_mm(499);
    const auto v = judge(q, placed);
    ASSERT_THAT(v, ElementsAre(breaks(Rule::apart)));
    EXPECT_EQ(v[0].by, tenth_mm(1));
    EXPECT_EQ(v[0].item, "cube 1");
    EXPECT_EQ(v[0].other, "cube 2");
}

TEST_F(TwoCubes, ATenthOfAMillimetreOutOfTheBoxIsSeenOnEverySide)
{
    for (Length Size::*axis : {&Size::x, &Size::y, &Size::z}) {
        for (const std::size_t which : {std::size_t{0}, std::size_t{1}}) {
            std::vector<Placement> moved = placed;
            moved[which].at.*axis += which == 0 ? tenth_mm(-1) : tenth_mm(1);
            const auto v = judge(q, moved);
            ASSERT_THAT(v, Contains(breaks(Rule::inside)));
            EXPECT_EQ(v[0].by, tenth_mm(1));
        }
    }
}

TEST_F(TwoCubes, MissingDoubledAndUnknownPiecesAreSeen)
{
    EXPECT_THAT(judge(q, {placed[0]}), ElementsAre(breaks(Rule::complete)));
    EXPECT_THAT(judge(q, {placed[0], placed[0]}), Contains(breaks(Rule::complete)));
    placed[1].item = "other";
    EXPECT_THAT(judge(q, placed), Contains(breaks(Rule::complete)));
    placed[1].item = "cube";
    placed[1].copy = 3;
    EXPECT_THAT(judge(q, placed), Contains(breaks(Rule::complete)));
}

TEST_F(TwoCubes, TheGapKeepsThemApartButNotFromTheWall)
{
    q.gap = mm(5);
    EXPECT_THAT(judge(q, placed), ElementsAre(breaks(Rule::apart)));
    q.outers[0].form.inner.x = mm(105);
    placed[1].at.x = mm(55);
    EXPECT_THAT(judge(q, placed), IsEmpty());
    placed[1].at.x = tenth_mm(549);
    EXPECT_THAT(judge(q, placed), ElementsAre(breaks(Rule::apart)));
}

TEST_F(TwoCubes, LiningAndBedAreKeptFree)
{
    q.lining = mm(3);
    EXPECT_THAT(judge(q, placed), Contains(breaks(Rule::inside)));
    q.outers[0].form.inner = size_mm(106, 56, 58);
    for (Placement& p : placed) p.at = {p.at.x + mm(3), p.at.y + mm(3), p.at.z + mm(3)};
    EXPECT_THAT(judge(q, placed), IsEmpty());
    q.bed = mm(2);
    EXPECT_THAT(judge(q, placed), Contains(breaks(Rule::inside)));
    for (Placement& p : placed) p.at.z += mm(2);
    EXPECT_THAT(judge(q, placed), IsEmpty());
}

TEST_F(TwoCubes, TheLoadOfTheOuterCounts)
{
    q.outers[0].max_load = grams(20);
    EXPECT_THAT(judge(q, placed), IsEmpty());
    q.outers[0].max_load = tenth_g(199);
    EXPECT_THAT(judge(q, placed), ElementsAre(breaks(Rule::load)));
}

TEST_F(TwoCubes, AnUnknownOuterOrCutIsSeen)
{
    EXPECT_THAT(check(q, "elsewhere", {}, placed), ElementsAre(breaks(Rule::known_outer)));
    EXPECT_THAT(check(q, "box", mm(40), placed), Contains(breaks(Rule::known_outer)));
    q.outers[0].form.inner.z = mm(80);
    q.outers[0].form.cut_heights = {mm(50)};
    EXPECT_THAT(check(q, "box", mm(50), placed), IsEmpty());
    q.outers[0].form.cut_heights = {tenth_mm(499)};
    EXPECT_THAT(check(q, "box", tenth_mm(499), placed), Contains(breaks(Rule::inside)));
}

TEST(Check, TurnsAreJudgedByTheRule)
{
    const Size stands = size_mm(30, 20, 10), tipped = size_mm(30, 10, 20), turned = size_mm(20, 30, 10);
    const auto verdict = [&](Turns::Rule rule, const Size& size) {
        const Question q = question({block("b", 1, 30, 20, 10, rule)}, {carton("box", 40, 40, 40)});
        return judge(q, {put("b", 1, {}, size)}).empty();
    };
    EXPECT_TRUE(verdict(Turns::Rule::any, tipped));
    EXPECT_TRUE(verdict(Turns::Rule::upright, turned));
    EXPECT_FALSE(verdict(Turns::Rule::upright, tipped));
    EXPECT_TRUE(verdict(Turns::Rule::flat, turned));
    EXPECT_FALSE(verdict(Turns::Rule::flat, tipped));
    EXPECT_TRUE(verdict(Turns::Rule::fixed, stands));
    EXPECT_FALSE(verdict(Turns::Rule::fixed, turned));
    EXPECT_FALSE(verdict(Turns::Rule::any, size_mm(30, 20, 11)));
}

TEST(Check, UprightRoundOnesMayNestInEachOthersSquares)
{
    // Three circles of 20 mm in a triangle; 17.4 > 20 * sqrt(3) / 2 = 17.3205, 17.3 is not.
    const Question q = question({item("jar", 3, Cylinder{mm(20), mm(30)})}, {carton("box", 40, 40, 30)});
    const auto jar = [](int copy, Length x, Length y) {
        return put("jar", copy, {x, y, {}}, size_mm(20, 20, 30), Axis::z);
    };
    std::vector<Placement> p{jar(1, {}, {}), jar(2, mm(20), {}), jar(3, mm(10), tenth_mm(174))};
    EXPECT_THAT(judge(q, p), IsEmpty());
    p[2].at.y = tenth_mm(173);
    EXPECT_THAT(judge(q, p), ElementsAre(breaks(Rule::apart), breaks(Rule::apart)));
}

TEST(Check, ABlockMayReachIntoTheCornerOfACirclesSquare)
{
    // The corner of the block at distance 10√2 from the middle when 10 mm off on both axes: 10 * 0.2929 = 2.929 mm.
    const Question q =
        question({item("jar", 1, Cylinder{mm(20), mm(30)}), block("b", 1, 10, 10, 30)}, {carton("box", 40, 40, 30)});
    std::vector<Placement> p{put("jar", 1, {}, size_mm(20, 20, 30), Axis::z),
                             put("b", 1, {tenth_mm(171), tenth_mm(171), {}}, size_mm(10, 10, 30))};
    EXPECT_THAT(judge(q, p), IsEmpty());
    p[1].at = {tenth_mm(170), tenth_mm(170), {}};
    EXPECT_THAT(judge(q, p), ElementsAre(breaks(Rule::apart)));
}

TEST(Check, ARoundItemMustSayHowItLies)
{
    const Question q = question({item("jar", 1, Cylinder{mm(20), mm(30)})}, {carton("box", 40, 40, 40)});
    EXPECT_THAT(judge(q, {put("jar", 1, {}, size_mm(20, 20, 30))}), ElementsAre(breaks(Rule::turned)));
    EXPECT_THAT(judge(q, {put("jar", 1, {}, size_mm(30, 20, 20), Axis::x)}), IsEmpty());
    EXPECT_THAT(judge(q, {put("jar", 1, {}, size_mm(30, 20, 20), Axis::y)}), ElementsAre(breaks(Rule::turned)));
}

struct Overhang : ::testing::Test {
    Question q =
        question({block("foot", 1, 40, 40, 20, Turns::Rule::fixed), block("top", 1, 40, 40, 20, Turns::Rule::fixed)},
                 {carton("box", 100, 100, 100)});
    std::vector<Violation> with_top_at(Length x)
    {
        return judge(q, {put("foot", 1, {}, size_mm(40, 40, 20)), put("top", 1, {x, {}, mm(20)}, size_mm(40, 40, 20))});
    }
};

TEST_F(Overhang, PartialSupportIsThreeQuarters)
{
    q.support = Support::partial;
    EXPECT_THAT(with_top_at(mm(10)), IsEmpty());
    EXPECT_THAT(with_top_at(tenth_mm(101)), ElementsAre(breaks(Rule::supported)));
}

TEST_F(Overhang, FullSupportIsAll)
{
    q.support = Support::full;
    EXPECT_THAT(with_top_at({}), IsEmpty());
    EXPECT_THAT(with_top_at(tenth_mm(1)), ElementsAre(breaks(Rule::supported)));
}

TEST_F(Overhang, WithoutSupportItMayHang)
{
    EXPECT_THAT(with_top_at(mm(60)), IsEmpty());
}

TEST(Check, ABridgeNeedsItsMiddleHeld)
{
    // Contact 15 + 15 of 40 mm is enough on neither count; 15 + 16 = 31 of 40 is enough, and spans the middle.
    Question q =
        question({block("foot", 2, 20, 40, 20, Turns::Rule::fixed), block("top", 1, 40, 40, 20, Turns::Rule::fixed)},
                 {carton("box", 100, 100, 100)});
    q.support = Support::partial;
    const auto bridge = [&](Length second) {
        return judge(q, {put("foot", 1, {}, size_mm(20, 40, 20)), put("foot", 2, {second, {}, {}}, size_mm(20, 40, 20)),
                         put("top", 1, {mm(5), {}, mm(20)}, size_mm(40, 40, 20))});
    };
    EXPECT_THAT(bridge(mm(30)), IsEmpty());
    EXPECT_THAT(bridge(tenth_mm(301)), ElementsAre(breaks(Rule::supported)));
}

TEST(Check, LoadsArePassedDownAndAdded)
{
    // 100 g on 50 g on a jar that carries 150 g.
    Question q = question({item("jar", 1, Block{size_mm(40, 40, 20)}, Turns::Rule::fixed, grams(30)),
                           item("mid", 1, Block{size_mm(40, 40, 21)}, Turns::Rule::fixed, grams(50)),
                           item("top", 1, Block{size_mm(40, 40, 22)}, Turns::Rule::fixed, grams(100))},
                          {carton("box", 40, 40, 63)});
    q.support = Support::full;
    const std::vector<Placement> p{put("jar", 1, {}, size_mm(40, 40, 20)),
                                   put("mid", 1, {{}, {}, mm(20)}, size_mm(40, 40, 21)),
                                   put("top", 1, {{}, {}, mm(41)}, size_mm(40, 40, 22))};
    q.items[0].top_load = grams(150);
    EXPECT_THAT(judge(q, p), IsEmpty());
    q.items[0].top_load = tenth_g(1499);
    EXPECT_THAT(judge(q, p), ElementsAre(breaks(Rule::overloaded)));
    q.items[0].top_load.reset();
    q.items[1].fragile = true;
    EXPECT_THAT(judge(q, p), ElementsAre(breaks(Rule::overloaded)));
    q.support = Support::none;
    EXPECT_THAT(judge(q, p), IsEmpty());
}

TEST(Check, AHeavyTopSharesItsWeightByContact)
{
    // 40 g lie three quarters on one foot, one quarter on the other.
    Question q = question({item("a", 1, Block{size_mm(30, 40, 20)}, Turns::Rule::fixed, grams(1)),
                           item("b", 1, Block{size_mm(10, 40, 20)}, Turns::Rule::fixed, grams(1)),
                           item("top", 1, Block{size_mm(40, 40, 20)}, Turns::Rule::fixed, grams(40))},
                          {carton("box", 40, 40, 40)});
    q.support = Support::full;
    const std::vector<Placement> p{put("a", 1, {}, size_mm(30, 40, 20)),
                                   put("b", 1, {mm(30), {}, {}}, size_mm(10, 40, 20)),
                                   put("top", 1, {{}, {}, mm(20)}, size_mm(40, 40, 20))};
    q.items[0].top_load = grams(30);
    q.items[1].top_load = grams(10);
    EXPECT_THAT(judge(q, p), IsEmpty());
    q.items[1].top_load = tenth_g(99);
    EXPECT_THAT(judge(q, p), ElementsAre(breaks(Rule::overloaded)));
}

TEST(Check, ALyingRollMustNotRoll)
{
    Question q = question({item("roll", 1, Roll{mm(40), mm(80)})}, {carton("box", 80, 43, 50)});
    q.support = Support::partial;
    EXPECT_THAT(judge(q, {put("roll", 1, {{}, mm(1), {}}, size_mm(80, 40, 40), Axis::x)}), IsEmpty());
    q.outers[0].form.inner.y = tenth_mm(431);
    EXPECT_THAT(judge(q, {put("roll", 1, {{}, mm(1), {}}, size_mm(80, 40, 40), Axis::x)}),
                ElementsAre(breaks(Rule::supported)));
    EXPECT_THAT(judge(q, {put("roll", 1, {{}, mm(1), mm(5)}, size_mm(80, 40, 40), Axis::x)}),
                ElementsAre(breaks(Rule::supported)));
}

// Flat mailer: W ≥ w + h and L ≥ l + h for a w×h section of length l (geometry of a flat tube of lay-flat width W:
// its perimeter 2W must go round 2(w + h)). Worked figures: 150×200×40 needs W ≥ 190 and L ≥ 240.
TEST(Check, TheMailerRuleAtItsTie)
{
    Question q = question({block("book", 1, 200, 150, 40)}, {outer("mailer", OuterKind::mailer, 240, 190, 0)});
    const std::vector<Placement> p{put("book", 1, {}, size_mm(200, 150, 40))};
    EXPECT_THAT(judge(q, p), IsEmpty());
    q.outers[0].form.inner.y = tenth_mm(1899);
    EXPECT_THAT(judge(q, p), ElementsAre(breaks(Rule::sleeve)));
    q.outers[0].form.inner.y = mm(190);
    q.outers[0].form.inner.x = tenth_mm(2399);
    EXPECT_THAT(judge(q, p), ElementsAre(breaks(Rule::sleeve)));
    q.outers[0].form.inner.x = mm(245);
    q.outers[0].form.ease = {mm(5), {}};
    EXPECT_THAT(judge(q, p), IsEmpty());
    q.outers[0].form.ease = {tenth_mm(51), {}};
    EXPECT_THAT(judge(q, p), ElementsAre(breaks(Rule::sleeve)));
}

// A w×h block goes through a circle when w² + h² ≤ D²: 30² + 40² = 50².
TEST(Check, ABlockInATubeByItsDiagonal)
{
    Question q = question({block("b", 1, 30, 40, 100)}, {outer("tube", OuterKind::tube, 50, 50, 100)});
    EXPECT_THAT(judge(q, {put("b", 1, {mm(10), mm(5), {}}, size_mm(30, 40, 100))}), IsEmpty());
    EXPECT_THAT(judge(q, {put("b", 1, {tenth_mm(101), mm(5), {}}, size_mm(30, 40, 100))}),
                ElementsAre(breaks(Rule::tube)));
    q.outers[0].form.inner.z = tenth_mm(999);
    EXPECT_THAT(judge(q, {put("b", 1, {mm(10), mm(5), {}}, size_mm(30, 40, 100))}), ElementsAre(breaks(Rule::inside)));
}

TEST(Check, ContentLiesWellInItsOwnBox)
{
    Item set = block("set", 1, 1, 1, 1);
    set.packed_in = "gift";
    set.content = {block("nib", 2, 40, 10, 8)};
    set.bow = mm(15);
    Question q = question({set}, {carton("box", 100, 100, 100), outer("gift", OuterKind::gift_box, 40, 20, 8)});
    Placement p = put("set", 1, {}, size_mm(46, 26, 29));
    p.content = {put("nib", 1, {}, size_mm(40, 10, 8)), put("nib", 2, {{}, mm(10), {}}, size_mm(40, 10, 8))};
    EXPECT_THAT(judge(q, {p}), IsEmpty());
    p.content[1].at.y = tenth_mm(99);
    EXPECT_THAT(judge(q, {p}), ElementsAre(breaks(Rule::apart)));
    p.content.pop_back();
    EXPECT_THAT(judge(q, {p}), ElementsAre(breaks(Rule::complete)));
}

} // namespace
} // namespace stow::fitting
