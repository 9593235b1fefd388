// Size and weight limits as postal bodies publish them, put in as rate sheets. Each check names where the value stands;
// "worked" marks a case worked by hand from the published rule. Check values for the engine, not advice.
#include "sheets.h"

namespace stow::postage {
namespace {

Size size_mm(std::int64_t a, std::int64_t b, std::int64_t c)
{
    return {mm(a), mm(b), mm(c)};
}

// Letter post of the Universal Postal Union, as Cyprus Post and Croatian Post print it: sum of sides 900 mm, greatest
// 600 mm; rolls length + 2 diameters 1040 mm, greatest 900 mm; least face 90 x 140 mm; rolls at least 170 and 100 mm;
// 2 mm tolerance (Cyprus; Croatian Post prints the same in cm without it).
Format letter_post()
{
    Format f;
    f.name = "letter post";
    f.most_length = mm(600);
    f.most_sum = mm(900);
    f.least_length = mm(140);
    f.least_width = mm(90);
    f.roll_most_length = mm(900);
    f.roll_most_sum = mm(1040);
    f.roll_least_length = mm(100);
    f.roll_least_sum = mm(170);
    return f;
}

TEST(LetterPost, SumOfSides)
{
    const RateSheet sheet = one_format_sheet(letter_post(), grams(2000));
    EXPECT_TRUE(takes(sheet, parcel_of(size_mm(600, 200, 100)))); // worked: 900
    const Refused r = refusal_of(sheet, parcel_of(size_mm(600, 200, 101)));
    EXPECT_EQ(r.what, "sum");
    EXPECT_EQ(r.over_by, mm(1));
    EXPECT_EQ(refusal_of(sheet, parcel_of(size_mm(601, 100, 100))).what, "length");
}

TEST(LetterPost, ToleranceOfTwoMillimetres)
{
    Format f = letter_post();
    f.tolerance = mm(2);
    const RateSheet sheet = one_format_sheet(f, grams(2000));
    EXPECT_TRUE(takes(sheet, parcel_of(size_mm(600, 200, 101))));
    EXPECT_TRUE(takes(sheet, parcel_of(size_mm(600, 200, 102))));
    EXPECT_FALSE(takes(sheet, parcel_of(size_mm(600, 200, 103))));
    EXPECT_TRUE(takes(sheet, parcel_of(size_mm(139, 90, 1)))); // worked: a card by tolerance only
}

TEST(LetterPost, LeastFace)
{
    const RateSheet sheet = one_format_sheet(letter_post(), grams(2000));
    EXPECT_TRUE(takes(sheet, parcel_of(size_mm(140, 90, 1))));
    const Refused r = refusal_of(sheet, parcel_of(size_mm(139, 90, 1)));
    EXPECT_EQ(r.reason, NotTaken::too_small);
    EXPECT_EQ(r.over_by, mm(1));
}

TEST(LetterPost, Rolls)
{
    const RateSheet sheet = one_format_sheet(letter_post(), grams(2000));
    EXPECT_TRUE(takes(sheet, roll_of(mm(70), mm(900))));  // worked: 900 + 140 = 1040
    EXPECT_TRUE(takes(sheet, roll_of(mm(100), mm(840)))); // worked: 840 + 200 = 1040
    EXPECT_TRUE(takes(sheet, roll_of(mm(35), mm(100))));  // worked: 100 + 70 = 170
    EXPECT_EQ(refusal_of(sheet, roll_of(mm(71), mm(900))).what, "roll sum");
    EXPECT_EQ(refusal_of(sheet, roll_of(mm(71), mm(900))).over_by, mm(2));
    EXPECT_EQ(refusal_of(sheet, roll_of(mm(60), mm(901))).what, "roll length");
    EXPECT_EQ(refusal_of(sheet, roll_of(mm(34), mm(100))).reason, NotTaken::too_small);
}

TEST(LetterPost, SmallPacketUpToTwoKilograms) // Japan Post's table; Belarus Post, packet
{
    const RateSheet sheet = one_format_sheet(letter_post(), grams(2000));
    EXPECT_TRUE(takes(sheet, parcel_of(size_mm(200, 150, 100), grams(2000))));
    EXPECT_EQ(refusal_of(sheet, parcel_of(size_mm(200, 150, 100), tenth_g(20001))).reason, NotTaken::too_heavy);
}

// Postal parcels: no side above 1500 mm, length + girth (a + 2b + 2c) at most 3000 mm (Macau Post, ParcelSizeLimit;
// Belgian Post guide, January 2025, section 4: also 30 kg and at least 145 x 112 mm).
Format postal_parcel()
{
    Format f;
    f.name = "parcel";
    f.most_length = mm(1500);
    f.most_girth = mm(3000);
    return f;
}

TEST(PostalParcel, LengthAndGirth)
{
    const RateSheet sheet = one_format_sheet(postal_parcel());
    EXPECT_TRUE(takes(sheet, parcel_of(size_mm(1500, 400, 350)))); // worked: 1500 + 1500
    EXPECT_TRUE(takes(sheet, parcel_of(size_mm(1000, 500, 500)))); // worked: 1000 + 2000
    const Refused r = refusal_of(sheet, parcel_of(size_mm(500, 501, 1000)));
    EXPECT_EQ(r.what, "girth");
    EXPECT_EQ(r.over_by, mm(2)); // worked: 3002
    EXPECT_EQ(refusal_of(sheet, parcel_of(size_mm(1501, 100, 100))).what, "length");
}

TEST(PostalParcel, GirthInInches)
{
    // 30 x 25 x 25 in: 30 + 100 = 130 in, the greatest of retail ground parcels (US Postal Service, DMM 100; worked).
    Format f;
    f.name = "ground";
    f.most_girth = tenth_mm(33'020); // 130 in
    const RateSheet sheet = one_format_sheet(f);
    EXPECT_TRUE(takes(sheet, parcel_of({tenth_mm(7620), tenth_mm(6350), tenth_mm(6350)})));
    EXPECT_FALSE(takes(sheet, parcel_of({tenth_mm(7620), tenth_mm(6350), tenth_mm(6351)})));
}

TEST(PostalParcel, TheContestProblemPostOffice)
{
    // ACM Live Archive 4889, "Post Office": letter 125-290 x 90-155 x 0.25-7 mm; packet up to 380 x 300 x 50 mm; parcel
    // length + girth up to 2100 mm. No upper limits but these, and no least sizes but the letter's are put in here.
    RateSheet sheet = one_format_sheet(Format{});
    Format letter, packet, parcel;
    letter.name = "letter";
    letter.least_length = mm(125);
    letter.most_length = mm(290);
    letter.least_width = mm(90);
    letter.most_width = mm(155);
    letter.least_height = tenth_mm(3); // 0.25 mm, finer than we measure
    letter.most_height = mm(7);
    packet.name = "packet";
    packet.most_length = mm(380);
    packet.most_width = mm(300);
    packet.most_height = mm(50);
    parcel.name = "parcel";
    parcel.most_girth = mm(2100);
    sheet.formats = {letter, packet, parcel};
    sheet.steps = {{"parcel", "home", "letter", grams(500), euro(1)},
                   {"parcel", "home", "packet", grams(500), euro(2)},
                   {"parcel", "home", "parcel", grams(500), euro(3)}};
    const auto format = [&](std::int64_t a, std::int64_t b, std::int64_t c) {
        return price_of(sheet, parcel_of(size_mm(a, b, c))).format;
    };
    EXPECT_EQ(format(290, 155, 7), "letter");
    EXPECT_EQ(format(7, 155, 290), "letter");
    EXPECT_EQ(format(291, 155, 7), "packet");
    EXPECT_EQ(format(290, 155, 8), "packet");
    EXPECT_EQ(format(124, 90, 5), "packet");
    EXPECT_EQ(format(380, 300, 50), "packet");
    EXPECT_EQ(format(381, 300, 50), "parcel");
    EXPECT_EQ(format(700, 400, 300), "parcel"); // 700 + 1400
    EXPECT_FALSE(takes(sheet, parcel_of(size_mm(700, 400, 301))));
}

// A post of the United Kingdom: letter 240 x 165 x 5 mm to 100 g, large letter 353 x 250 x 25 to 750 g, small parcel
// 450 x 350 x 160 to 2 kg (tube 450 x 80), medium 610 x 460 x 460 to 20 kg (tube length + 2 diameters 1040, length 900)
// (mail parcel sizes at publishthispost.com; hub-packaging.com 2025). Prices are only ranks.
RateSheet british()
{
    RateSheet sheet = one_format_sheet(Format{});
    Format small = format_mm("small parcel", 450, 350, 160), medium = format_mm("medium parcel", 610, 460, 460);
    small.roll_most_length = mm(450);
    small.roll_most_sum = mm(450 + 2 * 80);
    medium.roll_most_length = mm(900);
    medium.roll_most_sum = mm(1040);
    sheet.formats = {format_mm("letter", 240, 165, 5), format_mm("large letter", 353, 250, 25), small, medium};
    sheet.steps = {{"parcel", "home", "letter", grams(100), euro(1)},
                   {"parcel", "home", "large letter", grams(750), euro(2)},
                   {"parcel", "home", "small parcel", grams(2000), euro(3)},
                   {"parcel", "home", "medium parcel", grams(20'000), euro(4)}};
    return sheet;
}

TEST(BritishFormats, EachAtItsLimit)
{
    const auto format = [](const ParcelFacts& p) { return price_of(british(), p).format; };
    EXPECT_EQ(format(parcel_of(size_mm(240, 165, 5), grams(100))), "letter");
    EXPECT_EQ(format(parcel_of(size_mm(240, 165, 5), grams(101))), "large letter");
    EXPECT_EQ(format(parcel_of(size_mm(240, 165, 6), grams(100))), "large letter");
    EXPECT_EQ(format(parcel_of(size_mm(353, 250, 25), grams(750))), "large letter");
    EXPECT_EQ(format(parcel_of(size_mm(353, 250, 26), grams(750))), "small parcel");
    EXPECT_EQ(format(parcel_of(size_mm(353, 250, 25), grams(751))), "small parcel");
    EXPECT_EQ(format(parcel_of(size_mm(450, 350, 160), grams(2000))), "small parcel");
    EXPECT_EQ(format(parcel_of(size_mm(450, 350, 161), grams(2000))), "medium parcel");
    EXPECT_EQ(format(parcel_of(size_mm(610, 460, 460), grams(20'000))), "medium parcel");
    EXPECT_EQ(format(roll_of(mm(80), mm(450))), "small parcel");
    EXPECT_EQ(format(roll_of(mm(80), mm(451))), "medium parcel");
    EXPECT_EQ(format(roll_of(mm(70), mm(900))), "medium parcel");
    EXPECT_FALSE(takes(british(), parcel_of(size_mm(611, 460, 460))));
    EXPECT_FALSE(takes(british(), roll_of(mm(71), mm(900))));
}

// German letters: standard 140-235 x 90-125 x 5 mm, 20 g; compact 100-235 x 70-125 x 10, 50 g; large 100-353 x 70-250 x
// 20, 500 g (zeit-heute.de, 12 February 2025); greatest 50 mm thick (from memory), 1000 g (frojeostern.com).
RateSheet german()
{
    RateSheet sheet = one_format_sheet(Format{});
    Format standard = format_mm("standard", 235, 125, 5), compact = format_mm("compact", 235, 125, 10);
    Format large = format_mm("large", 353, 250, 20), greatest = format_mm("greatest", 353, 250, 50);
    standard.least_length = mm(140);
    standard.least_width = mm(90);
    for (Format* f : {&compact, &large, &greatest}) {
        f->least_length = mm(100);
        f->least_width = mm(70);
    }
    sheet.formats = {standard, compact, large, greatest};
    sheet.steps = {{"parcel", "home", "standard", grams(20), euro(1)},
                   {"parcel", "home", "compact", grams(50), euro(2)},
                   {"parcel", "home", "large", grams(500), euro(3)},
                   {"parcel", "home", "greatest", grams(1000), euro(4)}};
    return sheet;
}

TEST(GermanLetters, EachAtItsLimit)
{
    const auto format = [](std::int64_t a, std::int64_t b, std::int64_t c, std::int64_t g) {
        return price_of(german(), parcel_of(size_mm(a, b, c), grams(g))).format;
    };
    EXPECT_EQ(format(235, 125, 5, 20), "standard");
    EXPECT_EQ(format(139, 90, 5, 20), "compact"); // shorter than a standard letter may be
    EXPECT_EQ(format(235, 125, 5, 21), "compact");
    EXPECT_EQ(format(235, 125, 10, 50), "compact");
    EXPECT_EQ(format(236, 125, 10, 50), "large");
    EXPECT_EQ(format(353, 250, 20, 500), "large");
    EXPECT_EQ(format(353, 250, 21, 500), "greatest");
    EXPECT_EQ(format(353, 250, 50, 1000), "greatest");
    EXPECT_EQ(refusal_of(german(), parcel_of(size_mm(99, 70, 5), grams(10))).reason, NotTaken::too_small);
    EXPECT_EQ(refusal_of(german(), parcel_of(size_mm(353, 250, 51), grams(500))).over_by, mm(1));
}

TEST(BelgianParcel, FromTwoKilogramsOrLargerThanThreeFifty) // Belgian Post guide, January 2025, page 13
{
    RateSheet sheet = one_format_sheet(format_mm("letter", 350, 230, 30), grams(2000));
    sheet.formats.push_back(postal_parcel());
    sheet.steps.push_back({"parcel", "home", "parcel", grams(30'000), euro(900)});
    EXPECT_EQ(price_of(sheet, parcel_of(size_mm(350, 230, 30), grams(2000))).format, "letter");
    EXPECT_EQ(price_of(sheet, parcel_of(size_mm(350, 230, 31), grams(2000))).format, "parcel");
    EXPECT_EQ(price_of(sheet, parcel_of(size_mm(350, 230, 30), grams(2001))).format, "parcel");
    EXPECT_EQ(refusal_of(sheet, parcel_of(size_mm(350, 230, 30), grams(30'001))).heavier_by, grams(1));
}

TEST(CanadianSmallPacket, SidesAndSum) // Canada Post, restrictions: 140-600 x 90-600, sum 900 mm, 2 kg
{
    Format f = format_mm("small packet", 600, 600, 600);
    f.least_length = mm(140);
    f.least_width = mm(90);
    f.most_sum = mm(900);
    const RateSheet sheet = one_format_sheet(f, grams(2000));
    EXPECT_TRUE(takes(sheet, parcel_of(size_mm(300, 300, 300))));
    EXPECT_FALSE(takes(sheet, parcel_of(size_mm(301, 300, 300))));
    EXPECT_FALSE(takes(sheet, parcel_of(size_mm(140, 89, 50))));
}

} // namespace
} // namespace stow::postage
