#include "core/papers/text.h"
#include "tests/core/papers/fixed_measure.h"

#include <gtest/gtest.h>
#include <rapidcheck.h>

namespace stow::papers {
namespace {

constexpr Style ten{1000, Face::regular, Role::ink}; // 550 a letter

std::vector<std::string> wrap_at(const std::string& text, int letters)
{
    return wrap(text, letters * 550, ten, FixedMeasure());
}

using Lines = std::vector<std::string>;

TEST(Directions, OfLinesThatStandTogetherAreThoseOfMostOfThem)
{
    using D = Direction;
    EXPECT_EQ(direction_of(Lines{"נועה ברק", "רחוב הנמל 12", "31000", "ISRAEL"}), D::right_to_left);
    EXPECT_EQ(direction_of(Lines{"נועה ברק", "Quay 12", "31000 HAIFA", "ISRAEL"}), D::left_to_right);
    EXPECT_EQ(direction_of(Lines{"مريم", "31000"}), D::right_to_left);
    EXPECT_EQ(direction_of(Lines{"12", "31000"}), D::left_to_right);
    EXPECT_EQ(direction_of(Lines{}), D::left_to_right);
}

TEST(Wrap, BreaksAtSpacesAndKeepsLinesOfTheText)
{
    EXPECT_EQ(wrap_at("ink and paper", 7), (Lines{"ink and", "paper"}));
    EXPECT_EQ(wrap_at("Dear Tove,\n\nwrite soon", 20), (Lines{"Dear Tove,", "", "write soon"}));
    EXPECT_EQ(wrap_at("Dear Tove,\r\nwrite", 20), (Lines{"Dear Tove,", "write"}));
    EXPECT_EQ(wrap_at("", 5), (Lines{""}));
}

TEST(Wrap, BreaksAfterHyphensAndSlashes)
{
    EXPECT_EQ(wrap_at("Thorvaldsdottir-Wintersberger", 17), (Lines{"Thorvaldsdottir-", "Wintersberger"}));
    EXPECT_EQ(wrap_at("red/black", 5), (Lines{"red/", "black"}));
}

TEST(Wrap, BeginsNoLineWithADot)
{
    EXPECT_EQ(wrap_at("0150 Skerhavn · NO · packet", 14), (Lines{"0150", "Skerhavn ·", "NO · packet"}));
    EXPECT_EQ(wrap_at("ink · pen", 9), (Lines{"ink · pen"}));
    EXPECT_EQ(wrap_at("ink · pen", 6), (Lines{"ink ·", "pen"}));
}

TEST(Wrap, BreaksAWordThatIsTooLongBetweenLetters)
{
    EXPECT_EQ(wrap_at("Großherzogin", 5), (Lines{"Großh", "erzog", "in"}));
    EXPECT_EQ(wrap_at("an Elisabethstrasse", 10), (Lines{"an", "Elisabeths", "trasse"}));
}

std::string without_blanks(const std::string& text)
{
    std::string kept;
    for (const char c : text) {
        if (c != ' ' && c != '\n') kept += c;
    }
    return kept;
}

TEST(Wrap, LosesNothingAndKeepsToTheWidth)
{
    EXPECT_TRUE(rc::check([] {
        const auto text = *rc::gen::container<std::string>(rc::gen::elementOf(std::string("ab -/\nxyz  ")));
        const auto letters = *rc::gen::inRange(1, 12);
        std::string joined;
        for (const std::string& line : wrap_at(text, letters)) {
            RC_ASSERT(line.size() <= static_cast<std::size_t>(letters));
            joined += line;
        }
        RC_ASSERT(without_blanks(joined) == without_blanks(text));
    }));
}

TEST(Wrap, ReadsNoFurtherThanDamagedTextGoes)
{
    const std::string cut_off = "ink \xE2\x82"; // a letter of three bytes without its last
    std::string joined;
    for (const std::string& line : wrap_at(cut_off, 2)) joined += line;
    EXPECT_EQ(joined, "ink\xE2\x82");
}

TEST(Shorten, EndsInAnEllipsis)
{
    const FixedMeasure measure;
    EXPECT_EQ(shorten("harbour", 7 * 550, ten, measure), "harbour");
    EXPECT_EQ(shorten("harbours", 7 * 550, ten, measure), "harbou…");
    EXPECT_EQ(shorten("Größe", 3 * 550, ten, measure), "Gr…");
}

TEST(DirectionOf, IsThatOfTheFirstLetterThatHasOne)
{
    EXPECT_EQ(direction_of("12 Pier"), Direction::left_to_right);
    EXPECT_EQ(direction_of("12 שלום"), Direction::right_to_left);
    EXPECT_EQ(direction_of("سلام 4"), Direction::right_to_left);
    EXPECT_EQ(direction_of("Ω שלום"), Direction::left_to_right);
    EXPECT_EQ(direction_of("17"), Direction::left_to_right);
}

} // namespace
} // namespace stow::papers
