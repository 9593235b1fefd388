// Numbers, dates, countries and yes or no as people write them.
#include "core/intake/country_names.h"
#include "core/intake/dates.h"
#include "core/intake/numbers.h"
#include "core/intake/text_encoding.h"
#include "core/measure/decimal.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace stow::intake {
namespace {

TEST(PlainNumber, MarksAndGroups)
{
    EXPECT_EQ(plain_number("1.234,50", ','), "1234.50");
    EXPECT_EQ(plain_number("1,234.50", '.'), "1234.50");
    EXPECT_EQ(plain_number("12 345,6", ','), "12345.6");
    EXPECT_EQ(plain_number("12\u00A0345", ','), "12345");
    EXPECT_EQ(plain_number("1'234.5", '.'), "1234.5");
    EXPECT_EQ(plain_number("-0,5", ','), "-0.5");
    EXPECT_EQ(plain_number("\u22125", '.'), "-5");
    EXPECT_EQ(plain_number(",5", ','), "0.5");
    EXPECT_EQ(plain_number("12,-", ','), "12");
    EXPECT_EQ(plain_number(" 7 ", '.'), "7");
}

TEST(PlainNumber, RefusesWhatIsNone)
{
    for (const char* text :
         {"", "-", ".", "abc", "1.2.3", "12,34,5", "1,23", "1e5", "1 2", "0x10", "5 g", "1,,000", ",100"})
        EXPECT_EQ(plain_number(text, '.'), std::nullopt) << text;
    EXPECT_EQ(plain_number("12.34", ','), std::nullopt) << "points group by threes";
}

RC_GTEST_PROP(PlainNumber, GroupedNumbersComeBack, ())
{
    const auto value = *rc::gen::inRange<std::int64_t>(-1'000'000'000'000, 1'000'000'000'000);
    const auto mark = *rc::gen::element(',', '.');
    std::string digits = unscaled(value, 2), grouped;
    const std::size_t point = digits.find('.');
    for (std::size_t i = 0; i < digits.size(); ++i) {
        const bool boundary = i < point && i > 0 && digits[i - 1] != '-' && (point - i) % 3 == 0;
        if (boundary) grouped += mark == ',' ? '.' : ',';
        grouped += digits[i] == '.' ? mark : digits[i];
    }
    const auto plain = plain_number(grouped, mark);
    RC_ASSERT(plain);
    RC_ASSERT(scaled(*plain, 2, Rounding::down) == value);
}

TEST(WholeNumber, HasNoFraction)
{
    EXPECT_EQ(whole_number("3,00", ','), 3);
    EXPECT_EQ(whole_number("1.000", ','), 1000);
    EXPECT_EQ(whole_number("1.000", '.'), 1);
    EXPECT_EQ(whole_number("3,5", ','), std::nullopt);
}

TEST(ReadMoney, WithAndWithoutCurrency)
{
    const Currency eur;
    EXPECT_EQ(to_text(*read_money("12,50", eur, ',').money), "12.50 EUR");
    EXPECT_EQ(to_text(*read_money("12,50 €", *Currency::from("CHF"), ',').money), "12.50 EUR");
    EXPECT_EQ(to_text(*read_money("GBP 3.99", eur, '.').money), "3.99 GBP");
    EXPECT_EQ(to_text(*read_money("£3.99", eur, '.').money), "3.99 GBP");
    EXPECT_EQ(to_text(*read_money("$3", *Currency::from("CAD"), '.').money), "3.00 CAD");
    EXPECT_EQ(to_text(*read_money("1,200", *Currency::from("JPY"), '.').money), "1200 JPY");
    EXPECT_EQ(read_money("12.345", eur, '.').money, std::nullopt) << "finer than a cent";
    EXPECT_EQ(read_money("5 XQQ", eur, '.').fault, MoneyFault::unknown_currency);
    EXPECT_EQ(read_money("free", eur, '.').fault, MoneyFault::not_a_number);
}

TEST(ReadDate, TheUsualForms)
{
    const auto expect = [](const char* text, const char* iso, DateOrder order = DateOrder::day_month) {
        const auto date = read_date(text, order);
        ASSERT_TRUE(date) << text;
        EXPECT_EQ(to_text(*date), iso) << text;
    };
    expect("2026-11-25", "2026-11-25");
    expect("2026-11-25T07:30:00Z", "2026-11-25");
    expect("2026-11-25 07:30", "2026-11-25");
    expect("2026/11/25", "2026-11-25");
    expect("25.11.2026", "2026-11-25");
    expect("25.11.2026 16:05", "2026-11-25");
    expect("05.11.2026", "2026-11-05", DateOrder::month_day); // dots: the day first, always
    expect("5/11/26", "2026-11-05");
    expect("11/05/2026", "2026-11-05", DateOrder::month_day);
    expect("25. Nov. 2026", "2026-11-25");
    expect("25. März 2026", "2026-03-25");
    expect("Nov 25, 2026", "2026-11-25");
    expect("Wed 25 November 2026", "2026-11-25");
    expect("29.02.2028", "2028-02-29");
}

TEST(ReadDate, RefusesOtherText)
{
    for (const char* text : {"", "soon", "2026", "11/2026", "2026-02-29", "31.04.2026", "25.13.2026", "0/0/0",
                             "12:30:15", "20261125", "1.2.3", "25 11", "2026-11-"})
        EXPECT_EQ(read_date(text, DateOrder::day_month), std::nullopt) << text;
}

RC_GTEST_PROP(ReadDate, EveryDayIsReadInEveryForm, ())
{
    const Date day = *parse_date("1990-01-01") + std::chrono::days{*rc::gen::inRange(0, 76'000)};
    const std::string iso = to_text(day);
    const std::string y = iso.substr(0, 4), m = iso.substr(5, 2), d = iso.substr(8, 2);
    RC_ASSERT(read_date(iso, DateOrder::month_day) == day);
    RC_ASSERT(read_date(d + "." + m + "." + y, DateOrder::month_day) == day);
    RC_ASSERT(read_date(d + "/" + m + "/" + y, DateOrder::day_month) == day);
    RC_ASSERT(read_date(m + "/" + d + "/" + y, DateOrder::month_day) == day);
}

TEST(TellDateOrder, OneDayPastTwelveDecides)
{
    EXPECT_EQ(tell_date_order({"03/04/2026", "13/04/2026"}, DateOrder::month_day), DateOrder::day_month);
    EXPECT_EQ(tell_date_order({"03/04/2026", "04/13/2026"}, DateOrder::day_month), DateOrder::month_day);
    EXPECT_EQ(tell_date_order({"03/04/2026"}, DateOrder::month_day), DateOrder::month_day);
    EXPECT_EQ(tell_date_order({}, DateOrder::day_month), DateOrder::day_month);
}

TEST(CountryNames, CodesAndNamesInThreeLanguages)
{
    const CountryNames names;
    for (const char* text : {"DE", "de", "DEU", "Germany", "Deutschland", "Allemagne", "GERMANY "})
        EXPECT_EQ(names.code(text), "DE") << text;
    EXPECT_EQ(names.code("Österreich"), "AT");
    EXPECT_EQ(names.code("Oesterreich"), std::nullopt);
    EXPECT_EQ(names.code("United Kingdom"), "GB");
    EXPECT_EQ(names.code("UK"), "GB");
    EXPECT_EQ(names.code("Royaume-Uni"), "GB");
    EXPECT_EQ(names.code("Côte d’Ivoire"), "CI");
    EXPECT_EQ(names.code("Czech Republic"), "CZ");
    EXPECT_EQ(names.code("The Netherlands"), "NL");
    EXPECT_EQ(names.code("U.S.A."), "US");
    EXPECT_EQ(names.code("Atlantis"), std::nullopt);
    EXPECT_EQ(names.code(""), std::nullopt);
}

TEST(YesOrNo, WordsOfBothLanguages)
{
    for (const char* text : {"yes", "Y", "TRUE", "1", "x", "Ja"}) EXPECT_EQ(yes_or_no(text), YesNo::yes) << text;
    for (const char* text : {"no", "", "0", "nein", "False"}) EXPECT_EQ(yes_or_no(text), YesNo::no) << text;
    EXPECT_EQ(yes_or_no("maybe"), YesNo::unclear);
}

// The boundaries of table 3-7 of the Unicode standard, version 15.
TEST(Utf8, WellFormedSequences)
{
    for (const char* good : {"", "a", "\xC2\x80", "\xDF\xBF", "\xE0\xA0\x80", "\xED\x9F\xBF", "\xEF\xBF\xBF",
                             "\xF0\x90\x80\x80", "\xF4\x8F\xBF\xBF"})
        EXPECT_TRUE(is_utf8(good));
    for (const char* bad : {"\x80", "\xC0\x80", "\xC1\xBF", "\xE0\x9F\xBF", "\xED\xA0\x80", "\xF0\x8F\xBF\xBF",
                            "\xF4\x90\x80\x80", "\xF5\x80\x80\x80", "\xC2", "\xE2\x82", "a\xFF"})
        EXPECT_FALSE(is_utf8(bad));
}

TEST(Folded, LettersAndDigitsOnly)
{
    EXPECT_EQ(folded("Straße / Nr. 2"), "strassenr2");
    EXPECT_EQ(folded("  Größe É "), "grossee");
}

} // namespace
} // namespace stow::intake
