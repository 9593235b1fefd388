// Reading tables of text. Rules checked: RFC 4180 section 2 and its erratum 5714.
#include "core/intake/csv.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>
#include <sstream>
#include <streambuf>

namespace stow::intake {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;
using testing::SizeIs;
using namespace std::string_literals;

Csv read(const std::string& bytes, CsvLimits limits = {})
{
    std::istringstream in(bytes);
    return read_csv(in, "table.csv", limits);
}

void expect_refused(const Csv& csv, ProblemKind kind, std::size_t row)
{
    EXPECT_THAT(csv.headings, IsEmpty());
    EXPECT_THAT(csv.rows, IsEmpty());
    ASSERT_THAT(csv.problems, SizeIs(1));
    EXPECT_EQ(csv.problems[0].kind, kind);
    EXPECT_EQ(csv.problems[0].row, row);
    EXPECT_EQ(csv.problems[0].file, "table.csv");
}

// The examples of RFC 4180 section 2, items 1, 2, 5, 6 and 7.
TEST(Csv, ReadsTheExamplesOfTheStandard)
{
    for (const std::string last : {"\r\n", ""}) {
        const Csv csv = read("field_name,field_name2,field_name3\r\naaa,bbb,ccc\r\nzzz,yyy,xxx" + last);
        EXPECT_THAT(csv.headings, ElementsAre("field_name", "field_name2", "field_name3"));
        ASSERT_THAT(csv.rows, SizeIs(2));
        EXPECT_THAT(csv.rows[0].cells, ElementsAre("aaa", "bbb", "ccc"));
        EXPECT_THAT(csv.rows[1].cells, ElementsAre("zzz", "yyy", "xxx"));
        EXPECT_THAT(csv.problems, IsEmpty());
    }
    const Csv quoted = read("a,b,c\r\n\"aaa\",\"b \r\nbb\",\"ccc\"\r\nzzz,yyy,xxx\r\n\"aaa\",\"b\"\"bb\",\"ccc\"\r\n");
    ASSERT_THAT(quoted.rows, SizeIs(3));
    EXPECT_THAT(quoted.rows[0].cells, ElementsAre("aaa", "b \r\nbb", "ccc"));
    EXPECT_THAT(quoted.rows[2].cells, ElementsAre("aaa", "b\"bb", "ccc"));
    EXPECT_EQ(quoted.rows[1].line, 4U) << "the row before runs over two lines";
}

TEST(Csv, WritesWhatTheStandardQuotes)
{
    EXPECT_EQ(csv_line({"aaa", "b\r\nbb", "c,c", "d\"d", "e"}), "aaa,\"b\r\nbb\",\"c,c\",\"d\"\"d\",e\r\n");
    EXPECT_EQ(csv_line({"a\rb"}), "\"a\rb\"\r\n") << "a lone CR too";
    EXPECT_EQ(csv_line({"", ""}), ",\r\n");
}

RC_GTEST_PROP(Csv, WhatIsWrittenIsReadBack, ())
{
    const auto letter =
        rc::gen::weightedOneOf<char>({{6, rc::gen::inRange('a', 'f')}, {4, rc::gen::elementOf(",;\t| \"\r\n1."s)}});
    const auto cell = rc::gen::container<std::string>(letter);
    const auto width = *rc::gen::inRange<std::size_t>(2, 6);
    const auto rows = *rc::gen::nonEmpty(rc::gen::container<std::vector<std::vector<std::string>>>(
        rc::gen::container<std::vector<std::string>>(width, cell)));
    // Rows of nothing but blanks are skipped by design, so each row begins with a mark.
    std::string file = "sep=,\r\n";
    std::vector<std::string> headings;
    for (std::size_t i = 0; i < width; ++i) headings.push_back("h" + std::to_string(i));
    file += csv_line(headings);
    std::vector<std::vector<std::string>> wanted = rows;
    for (auto& row : wanted) {
        row[0] = "x" + row[0];
        file += csv_line(row);
    }
    const Csv csv = read(file);
    RC_ASSERT(csv.headings == headings);
    RC_ASSERT(csv.problems.empty());
    RC_ASSERT(csv.rows.size() == wanted.size());
    for (std::size_t i = 0; i < wanted.size(); ++i) RC_ASSERT(csv.rows[i].cells == wanted[i]);
}

TEST(Csv, FindsTheDelimiter)
{
    for (const char delimiter : {',', ';', '\t', '|'}) {
        std::string text = "number_name_note\n1_Anna_one, two; three\n2_Ben_\n";
        std::replace(text.begin(), text.end(), '_', delimiter);
        if (delimiter == ',' || delimiter == ';') text = "number_name_note\n1_Anna_\"one, two; three\"\n2_Ben_\n";
        std::replace(text.begin(), text.end(), '_', delimiter);
        const Csv csv = read(text);
        EXPECT_EQ(csv.delimiter, delimiter);
        ASSERT_THAT(csv.rows, SizeIs(2));
        EXPECT_EQ(csv.rows[0].cells[2], "one, two; three");
    }
    EXPECT_EQ(read("Preis, brutto;Menge;Ort\n12,50;3;Kiel\n8,00;1;Lübeck\n").delimiter, ';');
    EXPECT_THAT(read("sep=|\na|b,c|d\n").headings, ElementsAre("a", "b,c", "d"));
}

TEST(Csv, TellsTheDecimalMark)
{
    EXPECT_EQ(read("a;b\n12,50;x\n").decimal_mark, ',');
    EXPECT_EQ(read("a;b\n12.50;x\n").decimal_mark, '.');
    EXPECT_EQ(read("a,b\n\"12,50\",x\n").decimal_mark, ',');
    EXPECT_EQ(read("a,b\n12.50,24.12.2026\n").decimal_mark, '.');
    EXPECT_EQ(read("a;b\n1.234,50;x\n").decimal_mark, ',');
    EXPECT_EQ(read("a,b\n\"1,234.50\",x\n").decimal_mark, '.');
    EXPECT_EQ(read("a;b\n1.234;x\n").decimal_mark, ',') << "1.234 may be grouped; semicolons go with decimal commas";
    EXPECT_EQ(read("a,b\n24.12.2026,x\n").decimal_mark, '.');
}

TEST(Csv, ReadsTheEncodings)
{
    const std::string utf8 = "Name;Ort\nJörg Müßig;Süderhöft\n";
    const auto expect_read = [](const Csv& csv, const char* encoding) {
        EXPECT_EQ(csv.encoding, encoding);
        EXPECT_THAT(csv.headings, ElementsAre("Name", "Ort"));
        ASSERT_THAT(csv.rows, SizeIs(1)) << encoding;
        EXPECT_THAT(csv.rows[0].cells, ElementsAre("Jörg Müßig", "Süderhöft")) << encoding;
    };
    expect_read(read(utf8), "UTF-8");
    expect_read(read("\xEF\xBB\xBF" + utf8), "UTF-8");
    expect_read(read("Name;Ort\nJ\xF6rg M\xFC\xDFig;S\xFC"
                     "derh\xF6"
                     "ft\n"),
                "windows-1252");
    const std::u16string wide = u"Name;Ort\nJörg Müßig;Süderhöft\n";
    for (const bool mark : {true, false}) {
        std::string little = mark ? "\xFF\xFE" : "", big = mark ? "\xFE\xFF" : "";
        for (const char16_t c : wide) {
            const char low = static_cast<char>(c & 0xFF), high = static_cast<char>(c >> 8);
            little += low;
            little += high;
            big += high;
            big += low;
        }
        expect_read(read(little), "UTF-16LE");
        expect_read(read(big), "UTF-16BE");
    }
}

TEST(Csv, KeepsWindows1252SignsThatLatin1LacksAndCyrillic)
{
    const Csv euro = read("Ware;Preis\nTinte \x84Nebel\x93;12,50 \x80\n");
    ASSERT_THAT(euro.rows, SizeIs(1));
    EXPECT_THAT(euro.rows[0].cells, ElementsAre("Tinte „Nebel“", "12,50 €"));
    // windows-1251: enough text that the guess is sure.
    const Csv cyrillic = read("a;b\n\xCF\xEE\xE6\xE0\xEB\xF3\xE9\xF1\xF2\xE0, \xEF\xEE\xEB\xEE\xE6\xE8\xF2\xE5 "
                              "\xEE\xF2\xEA\xF0\xFB\xF2\xEA\xF3 \xE2 \xEA\xEE\xF0\xEE\xE1\xEA\xF3;1\n");
    ASSERT_THAT(cyrillic.rows, SizeIs(1));
    EXPECT_EQ(cyrillic.rows[0].cells[0], "Пожалуйста, положите открытку в коробку");
}

TEST(Csv, RefusesWhatIsNotATable)
{
    expect_refused(read(""), ProblemKind::empty_file, 0);
    expect_refused(read("\r\n\r\n  \r\n"), ProblemKind::empty_file, 0);
    expect_refused(read("a,b\n1,\0\0\x7F\n"s), ProblemKind::binary_file, 2);
    expect_refused(read("\xEF\xBB\xBF"
                        "a,b\n\xFF,1\n"),
                   ProblemKind::unreadable_text, 0);
    const Csv absent = read_csv_file("/nonexistent/orders.csv");
    ASSERT_THAT(absent.problems, SizeIs(1));
    EXPECT_EQ(absent.problems[0].kind, ProblemKind::unreadable_file);
    EXPECT_EQ(absent.problems[0].file, "orders.csv") << "without its folders";
    const Csv folder = read_csv_file("/tmp");
    ASSERT_THAT(folder.problems, SizeIs(1));
    EXPECT_EQ(folder.problems[0].kind, ProblemKind::unreadable_file);
}

TEST(Csv, RefusesTooManyRows)
{
    CsvLimits limits;
    limits.rows = 2;
    EXPECT_THAT(read("a,b\n1,2\n3,4\n", limits).rows, SizeIs(2));
    expect_refused(read("a,b\n1,2\n3,4\n5,6\n", limits), ProblemKind::too_many_rows, 0);
    limits.file_bytes = 8;
    expect_refused(read("a,b\n1,2\n3,4\n", limits), ProblemKind::file_too_large, 0);
}

TEST(Csv, RefusesTooManyColumns)
{
    CsvLimits limits;
    limits.columns = 2;
    EXPECT_THAT(read("a,b\n1,2\n", limits).rows, SizeIs(1));
    expect_refused(read("a,b,c\n1,2,3\n", limits), ProblemKind::too_many_columns, 0);
}

TEST(Csv, LeavesOutARowWithTooLongAText)
{
    CsvLimits limits;
    limits.cell_bytes = 4;
    const Csv csv = read("a,b\n1,2345\n1,23456\n3,4\n", limits);
    EXPECT_THAT(csv.rows, SizeIs(2));
    ASSERT_THAT(csv.problems, SizeIs(1));
    EXPECT_EQ(csv.problems[0].kind, ProblemKind::text_too_long);
    EXPECT_EQ(csv.problems[0].row, 3U);
    EXPECT_EQ(csv.problems[0].column, "b");
}

TEST(Csv, SaysALimitInWords)
{
    EXPECT_EQ(size_in_words(8 << 20), "8 MiB");
    EXPECT_EQ(size_in_words(1000), "1000 B");
}

TEST(Csv, HoldsTheLineLimitExactly)
{
    CsvLimits limits;
    limits.line_bytes = 10;
    EXPECT_THAT(read("a,b\n12345678,0\n", limits).rows, SizeIs(1));
    expect_refused(read("a,b\n123456789,0\n", limits), ProblemKind::line_too_long, 2);
    // A quote left open must not gather the rest of the file into one cell.
    expect_refused(read("a,b\n\"1,2\n3,4\n5,6\n7,8\n", limits), ProblemKind::line_too_long, 2);
}

// A pipe that would give 1 GiB without a line end, and counts what is asked of it.
class EndlessLine : public std::streambuf {
public:
    std::size_t given() const { return given_; }

protected:
    int_type underflow() override
    {
        if (given_ >= std::size_t{1} << 30) return traits_type::eof();
        given_ += block_.size();
        setg(block_.data(), block_.data(), block_.data() + block_.size());
        return traits_type::to_int_type(block_[0]);
    }

private:
    std::string block_ = std::string(4096, 'x');
    std::size_t given_ = 0;
};

TEST(Csv, RefusesAnEndlessLineAfterTheLimit)
{
    EndlessLine buffer;
    std::istream in(&buffer);
    expect_refused(read_csv(in, "table.csv"), ProblemKind::line_too_long, 1);
    EXPECT_LE(buffer.given(), (std::size_t{1} << 20) + 128 * 1024) << "little more than the limit was taken in";
}

TEST(Csv, UnevenRowsAreNamedAndTheOthersKept)
{
    const Csv csv = read("a,b,c\n1,2,3\n4,5\n6,7,8,9\n10,11,12,,\n,,\n13,14,15\n");
    ASSERT_THAT(csv.rows, SizeIs(3));
    EXPECT_THAT(csv.rows[1].cells, ElementsAre("10", "11", "12")) << "empty cells past the end are dropped";
    EXPECT_EQ(csv.rows[2].line, 7U);
    ASSERT_THAT(csv.problems, SizeIs(2));
    EXPECT_EQ(csv.problems[0].kind, ProblemKind::uneven_row);
    EXPECT_EQ(csv.problems[0].row, 3U);
    EXPECT_EQ(csv.problems[0].value, "2");
    EXPECT_EQ(csv.problems[0].detail, "3");
    EXPECT_EQ(csv.problems[1].row, 4U);
}

TEST(Csv, AQuoteLeftOpenLosesOnlyItsRow)
{
    const Csv csv = read("a,b\n1,2\n\"3,4\n5,6\n");
    EXPECT_THAT(csv.rows, SizeIs(1));
    ASSERT_THAT(csv.problems, SizeIs(1));
    EXPECT_EQ(csv.problems[0].kind, ProblemKind::uneven_row);
    EXPECT_EQ(csv.problems[0].row, 3U);
}

TEST(Csv, SpacesAndRepeatedHeadings)
{
    const Csv csv = read("a , b,a\n  x  ,\" y \",z\n");
    EXPECT_THAT(csv.headings, ElementsAre("a", "b", "a"));
    ASSERT_THAT(csv.rows, SizeIs(1));
    EXPECT_THAT(csv.rows[0].cells, ElementsAre("x", " y ", "z"));
    ASSERT_THAT(csv.problems, SizeIs(1));
    EXPECT_EQ(csv.problems[0].kind, ProblemKind::duplicate);
    EXPECT_FALSE(csv.problems[0].stops);
}

} // namespace
} // namespace stow::intake
