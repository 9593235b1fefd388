#include "core/paperbox/check.h"
#include "core/paperbox/net.h"

#include <gtest/gtest.h>

#include <random>

namespace stow::paperbox {
namespace {

Wanted wanted(Kind kind, std::int64_t x, std::int64_t y, std::int64_t z)
{
    return {kind, {mm(x), mm(y), mm(z)}};
}

Net net(const Wanted& w)
{
    const Laid laid = lay(w);
    EXPECT_TRUE(laid.net.has_value());
    return laid.net.value_or(Net{});
}

// Worked here from S = (w + d + 2h)/√2 + o, m1 = d/√2 + o/2, m2 = m1 + h√2; no printed source has the marks.
TEST(OneSquare, SheetAndMarksFollowTheFormula)
{
    struct Row {
        std::int64_t w, d, h;
        double side, first, second;
    };
    for (const Row& r : {Row{100, 70, 40, 201.8, 62.0, 118.6}, Row{80, 80, 30, 180.6, 69.1, 111.5},
                         Row{150, 60, 25, 208.8, 54.9, 90.3}}) {
        const Net n = net(wanted(Kind::one_square, r.w, r.d, r.h));
        EXPECT_NEAR(in_mm(n.length), r.side, 0.11);
        EXPECT_EQ(n.length, n.width);
        ASSERT_EQ(n.edge_marks.size(), 2U);
        EXPECT_NEAR(in_mm(n.edge_marks[0]), r.first, 0.06);
        EXPECT_NEAR(in_mm(n.edge_marks[1]), r.second, 0.06);
    }
}

// A published chart of boxes from a scored square (ellenhutson.typepad.com, July 2014), inches: from a sheet of 6 a
// cube of 1.75, of 8 one of 2.5 and a box 3.25 × 3.25 × 1.75, of 12 a cube of 4. What it leaves to overlap is 17 to 27
// mm.
TEST(OneSquare, AgreesWithAPublishedChart)
{
    struct Row {
        double sheet, w, d, h;
    };
    for (const Row& r : {Row{6, 1.75, 1.75, 1.75}, Row{8, 2.5, 2.5, 2.5}, Row{8, 3.25, 3.25, 1.75}, Row{12, 4, 4, 4}}) {
        const auto inch = [](double v) { return tenth_mm(static_cast<std::int64_t>(v * 254 + 0.5)); };
        const Length left = inch(r.sheet) - square_side({inch(r.w), inch(r.d), inch(r.h)}, {});
        EXPECT_GT(left, mm(17));
        EXPECT_LT(left, mm(28));
    }
}

// A card maker's rule for a card of 14 × 24 cm (thepinkshopblog.co.uk, August 2011) asks for a square of 29.5 cm: the
// same formula with 20 to 26 mm of overlap.
TEST(Envelope, AgreesWithACardMakersRule)
{
    const Length bare = square_side({mm(240), mm(140), {}}, {});
    EXPECT_GE(mm(295) - bare, mm(20));
    EXPECT_LE(mm(295) - bare, mm(27));
}

// Worked here for A6, a square of 150 and 7 × 5 inches, with 4 mm of clearance and 15 of overlap.
TEST(Envelope, SheetAndMarkFollowTheFormula)
{
    struct Row {
        std::int64_t w, d;
        double bare, mark;
    };
    for (const Row& r : {Row{152, 109, 184.6, 84.6}, Row{154, 154, 217.8, 116.4}, Row{182, 131, 221.3, 100.1}}) {
        Wanted w = wanted(Kind::envelope, r.w, r.d, 0);
        w.overlap = mm(15);
        const Net n = net(w);
        EXPECT_NEAR(in_mm(n.length) - 15, r.bare, 0.11);
        EXPECT_NEAR(in_mm(n.edge_marks.at(0)), r.mark, 0.06);
        EXPECT_EQ(n.trim, Length{});
    }
    Wanted dl = wanted(Kind::envelope, 214, 103, 0); // DL: the long flap must be trimmed
    dl.overlap = mm(15);
    EXPECT_NEAR(in_mm(net(dl).trim), 14.6, 0.2);
}

// Printed: a tray 4.5 × 5.75 × 1 inches from 6.5 × 7.75 (cathyscraftroom.blogspot.com, February 2010), one of
// 1 1/8 × 3 1/2 × 1 from 3 1/8 × 5 1/2 (catherinepooler.com, 27 March 2013). Lids worked here with 2.5 mm of allowance.
TEST(TrayAndLid, AgreeWithPrintedSheets)
{
    const Net tray = net({Kind::tray, {tenth_mm(1143), tenth_mm(1461), mm(25)}}); // 25.4 rounded down
    EXPECT_NEAR(in_mm(tray.length), 6.5 * 25.4, 0.9);
    EXPECT_NEAR(in_mm(tray.width), 7.75 * 25.4, 0.9);
    const Net small = net({Kind::tray, {tenth_mm(286), tenth_mm(889), tenth_mm(254)}});
    EXPECT_NEAR(in_mm(small.length), 3.125 * 25.4, 0.1);
    EXPECT_NEAR(in_mm(small.width), 5.5 * 25.4, 0.1);
    struct Row {
        std::int64_t w, d, h, depth;
        double base_x, base_y, lid_x, lid_y;
    };
    for (const Row& r : {Row{100, 70, 30, 20, 160, 130, 142.5, 112.5}, Row{120, 120, 40, 25, 200, 200, 172.5, 172.5},
                         Row{210, 150, 25, 25, 260, 200, 262.5, 202.5}}) {
        const Net base = net(wanted(Kind::tray, r.w, r.d, r.h)), lid = net(wanted(Kind::lid, r.w, r.d, r.depth));
        EXPECT_DOUBLE_EQ(in_mm(base.length), r.base_x);
        EXPECT_DOUBLE_EQ(in_mm(base.width), r.base_y);
        EXPECT_DOUBLE_EQ(in_mm(lid.length), r.lid_x);
        EXPECT_DOUBLE_EQ(in_mm(lid.width), r.lid_y);
    }
}

// Worked here from R = (W²/4 + s²)/(2s), T = 2s and the chord W − 8s²/(3W).
TEST(PillowBox, RadiusSheetAndRoomFollowTheFormula)
{
    struct Row {
        std::int64_t w, l, s;
        double radius, sheet_x, sheet_y, thickness, chord, room_w, room_t, length;
    };
    for (const Row& r : {Row{80, 110, 12, 72.7, 172, 134, 24, 75.2, 53, 12.2, 86},
                         Row{110, 150, 18, 93.0, 232, 186, 36, 102.1, 71, 18.4, 114},
                         Row{160, 220, 25, 140.5, 332, 270, 50, 149.5, 105, 25.5, 170}}) {
        const Wanted w = wanted(Kind::pillow, r.l, r.w, r.s);
        const Net n = net(w);
        const Pillow p = pillow(w.size);
        EXPECT_NEAR(in_mm(p.radius), r.radius, 0.06);
        EXPECT_DOUBLE_EQ(in_mm(n.length), r.sheet_x);
        EXPECT_DOUBLE_EQ(in_mm(n.width), r.sheet_y);
        EXPECT_DOUBLE_EQ(in_mm(p.thickness), r.thickness);
        EXPECT_NEAR(in_mm(p.chord), r.chord, 0.11);
        EXPECT_DOUBLE_EQ(in_mm(p.usable_length), r.length);
        EXPECT_NEAR(in_mm(room_in(w).y), r.room_w, 0.7);
        EXPECT_NEAR(in_mm(room_in(w).z), r.room_t, 0.1);
    }
}

// A card of 2 1/8 × 3 1/4 inches takes a sheet of 5 1/2 × 5 3/4 (nystarcards.blogspot.com, November 2014): with s = 1/2
// inch and a flap of 1/2 inch that is faces of 2 1/2, and 3 3/4 + 2s from corner to corner with 1/2 inch of clearance.
TEST(PillowBox, AgreesWithAPrintedSheet)
{
    Wanted w{Kind::pillow, {tenth_mm(1207), tenth_mm(635), tenth_mm(127)}};
    w.glue_flap = tenth_mm(127);
    const Net n = net(w);
    EXPECT_NEAR(in_mm(n.length), 5.5 * 25.4, 0.1);
    EXPECT_NEAR(in_mm(n.width), 5.75 * 25.4, 0.1);
    EXPECT_GE(pillow(w.size).usable_length, tenth_mm(826)); // 3 1/4 inches
}

// Worked here; the classic minimum is a published rule with at most 20 mm of overlap (technologyreview.com, 6 December
// 2007), the square one Santos' (dailymail.co.uk, 371510).
TEST(GiftWrap, SheetsFollowTheRules)
{
    const Size box{mm(200), mm(150), mm(80)};
    EXPECT_EQ(wrap_around(box, {}).length, mm(280));
    EXPECT_EQ(wrap_around(box, {}).width, mm(460));
    EXPECT_NEAR(in_mm(wrap_diagonal(box, {})), 360.6, 0.1);
    EXPECT_NEAR(in_mm(wrap_diagonal({mm(120), mm(120), mm(60)}, {})), 254.6, 0.1);
    EXPECT_EQ(ribbon(box, mm(80), mm(120)), mm(1620));
    EXPECT_EQ(ribbon({mm(300), mm(220), mm(50)}, mm(100), mm(150)), mm(1980));
}

TEST(Check, LidsOfSquaresAreCoveredAndJustSo)
{
    std::mt19937 random(5);
    int laid_out = 0;
    for (int i = 0; i < 200; ++i) {
        const auto up_to = [&](unsigned n) { return static_cast<std::int64_t>(random() % n) + 1; };
        Wanted w = wanted(Kind::one_square, 30 + up_to(200), 30 + up_to(200), up_to(80));
        const Laid laid = lay(w);
        if (!laid.net) continue;
        ++laid_out;
        EXPECT_TRUE(check(w, *laid.net).sound());
        // Without overlap it is just covered, and with 3 mm less it is not.
        w.overlap = {};
        EXPECT_TRUE(check(w, *lay(w).net).lid_covered);
        w.overlap = mm(-3);
        EXPECT_FALSE(check(w, *lay(w).net).lid_covered);
    }
    EXPECT_GT(laid_out, 100);
}

TEST(Check, TraysFillTheirSheetAndAMovedScoreIsSeen)
{
    const Wanted w = wanted(Kind::tray, 120, 90, 35);
    Net n = net(w);
    EXPECT_TRUE(check(w, n).sound());
    for (Mark& mark : n.marks) {
        if (mark.from.x == mm(35) && mark.stroke == Stroke::score) mark.from.x = mark.to.x = mm(33);
    }
    EXPECT_FALSE(check(w, n).sound());
    n = net(w);
    n.marks.push_back({Stroke::cut, {mm(10), mm(10)}, {mm(400), mm(10)}, {}});
    EXPECT_FALSE(check(w, n).sound());
}

TEST(Around, WhatIsMadeTakesWhatMustGoIn)
{
    std::mt19937 random(6);
    for (int i = 0; i < 200; ++i) {
        const auto up_to = [&](unsigned n) { return mm(static_cast<std::int64_t>(random() % n) + 5); };
        const Size contents{up_to(150), up_to(100), up_to(30)};
        for (const Kind kind : {Kind::one_square, Kind::tray, Kind::pillow}) {
            const auto made = around(kind, contents, mm(1));
            ASSERT_TRUE(made);
            const Size room = sorted(room_in(*made)), needed = sorted(contents);
            EXPECT_GE(room.x, needed.x + mm(2)) << name_of(kind);
            EXPECT_GE(room.y, needed.y + mm(2)) << name_of(kind);
            EXPECT_GE(room.z, needed.z + mm(2)) << name_of(kind);
            if (const Laid laid = lay(*made); laid.net) {
                EXPECT_TRUE(check(*made, *laid.net).sound());
            }
        }
    }
    EXPECT_FALSE(around(Kind::lid, {mm(10), mm(10), mm(10)}, {}));
}

TEST(Lay, RefusesWhatCannotBeMade)
{
    EXPECT_EQ(lay(wanted(Kind::one_square, 0, 10, 10)).fault, Fault::no_size);
    EXPECT_EQ(lay(wanted(Kind::envelope, 100, 100, 5)).fault, Fault::no_size);
    EXPECT_EQ(lay(wanted(Kind::one_square, 400, 40, 20)).fault, Fault::flaps_miss);
    EXPECT_EQ(lay(wanted(Kind::pillow, 100, 40, 20)).fault, Fault::too_bulged);
}

} // namespace
} // namespace stow::paperbox
