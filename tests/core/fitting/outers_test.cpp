// The other kinds of outers and goods: mailers, board mailers, cut cartons, gift boxes, soft goods, loads.
#include "make.h"

#include <gmock/gmock.h>

namespace stow::fitting {
namespace {

using ::testing::IsEmpty;

// W ≥ w + h, L ≥ l + h; worked figures for 150×200×40: 190 and 240.
TEST(Mailer, TheWorkedExampleAtItsTie)
{
    Question q = question({block("book", 1, 150, 200, 40)}, {outer("m", OuterKind::mailer, 240, 190, 0)});
    const Answer a = solve(q);
    ASSERT_EQ(a.verdict, Verdict::fits);
    EXPECT_EQ(a.contents_thickness, mm(40));
    EXPECT_THAT(violations(q, a), IsEmpty());
    q.outers[0].form.inner.y = tenth_mm(1895);
    const Answer no = solve(q);
    ASSERT_EQ(no.verdict, Verdict::cannot_fit);
    EXPECT_EQ(no.refused[0].reason, Reason::sleeve);
    EXPECT_EQ(no.refused[0].proof, Proof::geometry);
    EXPECT_EQ(no.refused[0].short_by, tenth_mm(5));
    EXPECT_EQ(no.refused[0].item, "book");
}

TEST(Mailer, SeveralThingsLieAsThinAsTheyCan)
{
    // Two of 100×70×10 side by side (10 thick) need a width of 140 + 10; on top of each other 70 + 20.
    Question q = question({block("pad", 2, 100, 70, 10)}, {outer("wide", OuterKind::mailer, 120, 150, 0)});
    EXPECT_EQ(solve(q).contents_thickness, mm(10));
    q.outers[0].form.inner.y = mm(149);
    const Answer a = solve(q);
    EXPECT_EQ(a.verdict, Verdict::fits);
    EXPECT_EQ(a.contents_thickness, mm(20));
    EXPECT_TRUE(a.proven_smallest);
    EXPECT_THAT(violations(q, a), IsEmpty());
}

TEST(Mailer, TheFilledOneIsCompared)
{
    // The mailer is flat when empty; filled with 30 mm it is larger than the carton.
    Question q = question({block("tin", 1, 100, 100, 30)},
                          {outer("mailer", OuterKind::mailer, 200, 160, 0), carton("carton", 100, 100, 30)});
    q.outers[0].form.outer = size_mm(220, 170, 0);
    EXPECT_EQ(solve(q).outer, "carton"); // 106·106·36 = 0.40 L against 220·170·30 = 1.12 L
}

TEST(BoardMailer, HasAGreatestThickness)
{
    Question q = question({block("print", 3, 200, 150, 5)}, {outer("board", OuterKind::board_mailer, 210, 160, 15)});
    const Answer a = solve(q);
    ASSERT_EQ(a.verdict, Verdict::fits);
    EXPECT_EQ(a.contents_thickness, mm(15));
    q.items[0].count = 4;
    EXPECT_EQ(solve(q).verdict, Verdict::cannot_fit);
}

TEST(CutCarton, IsCutNoLowerThanItsContents)
{
    Question q = question({block("book", 2, 200, 150, 20)}, {carton("c", 200, 150, 120)});
    q.outers[0].form.cut_heights = {mm(30), mm(40), mm(60), mm(90)};
    const Answer a = solve(q);
    ASSERT_EQ(a.verdict, Verdict::fits);
    EXPECT_EQ(a.cut_height, mm(40));
    EXPECT_TRUE(a.proven_smallest);
    EXPECT_THAT(violations(q, a), IsEmpty());
}

Item gift(std::int64_t bow)
{
    Item set = block("set", 1, 1, 1, 1);
    set.packed_in = "gift";
    set.content = {block("nib", 6, 40, 10, 8)};
    set.bow = mm(bow);
    return set;
}

TEST(GiftBox, IsPackedFirstAndThenStandsUpright)
{
    Question q = question({gift(15)}, {carton("flat", 100, 70, 30), carton("box", 100, 70, 49),
                                       outer("gift", OuterKind::gift_box, 90, 60, 30)});
    q.outers[2].tare = grams(40);
    q.outers[2].form.outer = size_mm(94, 64, 34);
    const Answer a = solve(q);
    ASSERT_EQ(a.verdict, Verdict::fits);
    EXPECT_EQ(a.outer, "box"); // 34 + 15 high, and it may not be tipped
    EXPECT_EQ(a.placements.at(0).content.size(), 6U);
    EXPECT_THAT(violations(q, a), IsEmpty());
    q.outers[1].max_load = grams(100); // 40 + 6·10
    EXPECT_EQ(solve(q).verdict, Verdict::fits);
    q.outers[1].max_load = tenth_g(999);
    const Answer heavy = solve(q);
    EXPECT_EQ(heavy.verdict, Verdict::cannot_fit);
    EXPECT_EQ(heavy.refused.back().reason, Reason::weight);
    EXPECT_EQ(heavy.refused.back().proof, Proof::rules);
}

TEST(GiftBox, TooSmallForItsContentIsRefusedEverywhere)
{
    const Question q =
        question({gift(0)}, {carton("box", 300, 300, 300), outer("gift", OuterKind::gift_box, 39, 39, 30)});
    const Answer a = solve(q);
    EXPECT_EQ(a.verdict, Verdict::cannot_fit);
    EXPECT_EQ(a.refused.at(0).item, "set");
}

TEST(GiftBox, NothingPressesTheBow)
{
    Question q = question({gift(10), block("lid", 1, 90, 60, 20, Turns::Rule::flat)},
                          {carton("narrow", 100, 70, 80), outer("gift", OuterKind::gift_box, 90, 60, 30)});
    q.outers[1].form.outer = size_mm(94, 64, 34);
    EXPECT_EQ(solve(q).verdict, Verdict::fits);
    q.support = Support::partial;
    const Answer a = solve(q); // the lid goes below
    ASSERT_EQ(a.verdict, Verdict::fits);
    for (const Placement& p : a.placements) {
        EXPECT_EQ(p.at.z == Length{}, p.item == "lid");
    }
}

TEST(SoftGoods, FillWhatIsLeftDownToTheirLeastThickness)
{
    Question q = question({block("box", 1, 100, 100, 60), item("felt", 1, Soft{millilitres(400), mm(10)})},
                          {carton("c", 100, 100, 100)});
    const Answer a = solve(q);
    ASSERT_EQ(a.verdict, Verdict::fits);
    EXPECT_THAT(violations(q, a), IsEmpty());
    q.items[1].shape = Soft{Volume{millilitres(400).units + 1}, mm(10)};
    EXPECT_EQ(solve(q).verdict, Verdict::cannot_fit); // by volume
    q.items[1].shape = Soft{millilitres(300), mm(41)};
    EXPECT_NE(solve(q).verdict, Verdict::fits);
}

TEST(TopLoad, TheFragileOneComesOnTop)
{
    Question q = question({item("glass", 1, Block{size_mm(50, 50, 30)}, Turns::Rule::upright, grams(80)),
                           item("tin", 1, Block{size_mm(50, 50, 31)}, Turns::Rule::upright, grams(300))},
                          {carton("c", 50, 50, 61)});
    q.items[0].fragile = true;
    q.support = Support::full;
    const Answer a = solve(q);
    ASSERT_EQ(a.verdict, Verdict::fits);
    EXPECT_THAT(violations(q, a), IsEmpty());
    q.items[1].fragile = true; // neither may carry the other: the geometry would do, so there is no proof
    const Answer none = solve(q);
    EXPECT_EQ(none.verdict, Verdict::undecided);
    EXPECT_EQ(none.refused.at(0).proof, Proof::none);
}

TEST(Budget, AStoppedSearchSaysSo)
{
    // Hard to decide: three kinds of blocks in a box a little larger than they are.
    Question q = question({}, {carton("c", 0, 0, 0)});
    q.items = {item("a", 3, Block{{Length{829}, Length{1229}, Length{1873}}}),
               item("b", 2, Block{{Length{840}, Length{1664}, Length{1354}}}),
               item("c", 3, Block{{Length{1683}, Length{1700}, Length{2234}}})};
    q.outers[0].form.inner = {Length{3796}, Length{3881}, Length{2484}};
    q.outers[0].form.outer = q.outers[0].form.inner;
    const Answer cut = solve(q, 500);
    EXPECT_EQ(cut.verdict, Verdict::undecided);
    EXPECT_EQ(cut.stopped_by, Stop::work);
    EXPECT_EQ(cut.refused.at(0).verdict, Verdict::undecided);
    const Answer whole = solve(q, 0);
    EXPECT_EQ(whole.verdict, Verdict::cannot_fit);
    EXPECT_EQ(whole.refused.at(0).proof, Proof::geometry);
    EXPECT_FALSE(whole.stopped_by);
}

struct Remembered : Memory {
    std::optional<Answer> known;
    int kept = 0;
    std::optional<Answer> recall(const Question&) override { return known; }
    void keep(const Question&, const Answer& a) override { known = a, ++kept; }
};

TEST(Memory, AnAnswerIsCheckedAgainBeforeItIsUsed)
{
    const Question q = question({block("cube", 2, 50, 50, 50)}, {carton("box", 100, 50, 50)});
    Remembered memory;
    stow::Run run;
    EXPECT_EQ(fit(q, run, &memory).verdict, Verdict::fits);
    EXPECT_EQ(memory.kept, 1);
    fit(q, run, &memory);
    EXPECT_EQ(memory.kept, 1); // taken from memory
    memory.known->placements[0].at.x += tenth_mm(1);
    const Answer again = fit(q, run, &memory);
    EXPECT_EQ(memory.kept, 2); // worked out anew
    EXPECT_THAT(violations(q, again), IsEmpty());
}

} // namespace
} // namespace stow::fitting
