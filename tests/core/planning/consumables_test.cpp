#include "core/planning/consumables.h"

#include "workshop.h"

namespace stow::planning {
namespace {

// Tape of three boxes by the rules L + 2 × 70 a seam and W + 2 × 30 an edge strip: tape maker's rule "top + bottom + 11
// in" (ipcinc.com), worked out by hand to the centimetre: 0.68 / 1.52, 0.88 / 1.92, 1.08 / 2.52 m.
TEST(Tape, WorkedExamples)
{
    EXPECT_EQ(tape_single(mm(200)), mm(680));
    EXPECT_EQ(tape_h(mm(200), mm(150)), mm(1520));
    EXPECT_EQ(tape_single(mm(300)), mm(880));
    EXPECT_EQ(tape_h(mm(300), mm(200)), mm(1920));
    EXPECT_EQ(tape_single(mm(400)), mm(1080));
    EXPECT_EQ(tape_h(mm(400), mm(300)), mm(2520));
}

// Movers get 20 to 30 boxes out of a 66 m roll with H (thevanmanco.co.uk); 400 × 300 is the smallest moving size.
TEST(Tape, ARollLastsAsLongAsMoversSay)
{
    const std::int64_t boxes = mm(66'000).units / tape_h(mm(400), mm(300)).units;
    EXPECT_GE(boxes, 20);
    EXPECT_LE(boxes, 30);
}

TEST(Tape, OnlyCartonsAreTaped)
{
    OuterForm form;
    form.outer = {mm(150), mm(200), mm(90)}; // the longer side counts as length, however it is entered
    for (const OuterKind kind : all_outer_kinds) {
        form.kind = kind;
        EXPECT_EQ(tape_for(form), kind == OuterKind::carton ? mm(1520) : Length{}) << name_of(kind);
    }
}

struct FilledBox {
    Size item, box;
    double litres;   // as worked out by hand, to 0.1
    int least, most; // grams at 20 and 30 g per litre (working figure of hand-crumpled kraft, no source)
};

TEST(Filler, WorkedExamples)
{
    for (const FilledBox& e : {FilledBox{{mm(60), mm(60), mm(180)}, {mm(110), mm(110), mm(230)}, 2.1, 43, 64},
                               FilledBox{{mm(100), mm(70), mm(40)}, {mm(150), mm(120), mm(90)}, 1.3, 27, 40},
                               FilledBox{{mm(220), mm(160), mm(90)}, {mm(270), mm(210), mm(140)}, 4.8, 95, 143}}) {
        PackedItem item;
        item.shape = Block{e.item};
        const Volume room = room_around(e.box, {item});
        EXPECT_NEAR(in_litres(room), e.litres, 0.05);
        EXPECT_NEAR(in_grams(weight_of(room, grams(20))), e.least, 0.6);
        EXPECT_NEAR(in_grams(weight_of(room, grams(30))), e.most, 0.6);
        EXPECT_EQ(filler_for(room, 0), room);
        EXPECT_NEAR(in_litres(filler_for(room, 7)), in_litres(room) * 1.07, 1e-6);
    }
}

TEST(Filler, AmountInTheUnitItIsSoldBy)
{
    shop::Supply kraft = supply("KRAFT", shop::SupplyKind::filler, 0, 0);
    kraft.weight.mean = grams(25); // a litre
    kraft.unit = shop::Unit::litre;
    EXPECT_EQ(amount_of_filler(kraft, millilitres(1500)), shop::Amount{1500});
    EXPECT_EQ(amount_of_filler(kraft, Volume{1'500'000'001}), shop::Amount{1501}); // rounds up
    kraft.unit = shop::Unit::kilogram;
    EXPECT_EQ(amount_of_filler(kraft, millilitres(1500)), shop::Amount{38}); // 37.5 g
}

TEST(Filler, ItemsLargerThanTheRoomLeaveNone)
{
    PackedItem item;
    item.shape = Block{{mm(100), mm(100), mm(100)}};
    EXPECT_EQ(room_around({mm(90), mm(90), mm(90)}, {item}), Volume{});
}

} // namespace
} // namespace stow::planning
