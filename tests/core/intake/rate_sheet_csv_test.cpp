#include "core/intake/rate_sheet_csv.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>
#include <sstream>

namespace stow::intake {
namespace {

using namespace postage;
using testing::ElementsAre;
using testing::IsEmpty;

const std::string heading = "record,name,service,zone,format,grams,price,percent,from,until,details\n";

TakenRates take(const std::string& rows)
{
    std::istringstream in(heading + rows);
    return read_rate_sheet(in, "test.csv");
}

const std::string small_sheet =
    "sheet,Gull & Anchor,,,,,,25,2026-01-01,2026-12-31,currency EUR\n"
    "service,Packet,pk,,,,,,,,tracked / cover 50 / days 2 to 4 / cut-off 16:30 / collected Mon "
    "Thu / divisor 5000 / rounding 500 / not sent flammable\n"
    "zone,,,home,,,,,,,DK / DE 20 to 29\n"
    "format,,,,packet,,,,,,length 140 to 600 / sum to 900 / tolerance 2\n"
    "step,,pk,home,packet,250,4.20,,,,\n"
    "beyond,,pk,home,packet,5000,1.10,,,,\n"
    "surcharge,fuel,pk,,,,,8.5,,,\n"
    "surcharge,winter,,home,,,0.40,,2026-11-15,2026-12-31,per kg / longer than 500\n";

TEST(RateSheetCsv, ReadsEveryKindOfRow)
{
    const TakenRates taken = take(small_sheet);
    ASSERT_THAT(taken.problems, IsEmpty());
    ASSERT_TRUE(taken.sheet);
    const RateSheet& s = *taken.sheet;
    EXPECT_EQ(s.carrier, "Gull & Anchor");
    EXPECT_EQ(s.tax_permille, 250);
    EXPECT_EQ(s.valid_until, parse_date("2026-12-31"));
    ASSERT_EQ(s.services.size(), 1U);
    EXPECT_TRUE(s.services[0].tracked);
    EXPECT_EQ(s.services[0].cover, (Money{5000, Currency{}}));
    EXPECT_EQ(s.services[0].days_least, 2);
    EXPECT_EQ(s.services[0].days_most, 4);
    EXPECT_EQ(s.services[0].cut_off, parse_time_of_day("16:30"));
    EXPECT_THAT(s.services[0].weekdays, ElementsAre(1, 4));
    EXPECT_EQ(s.services[0].volumetric_divisor, 5000);
    EXPECT_THAT(s.services[0].not_sent, ElementsAre("flammable"));
    EXPECT_THAT(s.zones, ElementsAre(Zone{"home", {{"DK", "", ""}, {"DE", "20", "29"}}}));
    EXPECT_EQ(s.formats[0].least_length, mm(140));
    EXPECT_EQ(s.formats[0].most_length, mm(600));
    EXPECT_EQ(s.formats[0].most_sum, mm(900));
    EXPECT_EQ(s.formats[0].tolerance, mm(2));
    EXPECT_THAT(s.steps, ElementsAre(Step{"pk", "home", "packet", grams(250), {420, Currency{}}}));
    EXPECT_THAT(s.beyond, ElementsAre(BeyondLast{"pk", "home", "packet", {110, Currency{}}, grams(5000)}));
    ASSERT_EQ(s.surcharges.size(), 2U);
    EXPECT_EQ(s.surcharges[0].permille, 85);
    EXPECT_EQ(s.surcharges[1].kind, Surcharge::Kind::per_kg);
    EXPECT_EQ(s.surcharges[1].longer_than, mm(500));
}

TEST(RateSheetCsv, RowsMayStandInAnyOrder)
{
    std::istringstream lines(small_sheet);
    std::string turned;
    for (std::string line; std::getline(lines, line);) {
        const bool surcharge = line.rfind("surcharge", 0) == 0; // these keep their order among themselves
        turned = surcharge ? turned + line + "\n" : line + "\n" + turned;
    }
    EXPECT_EQ(take(turned).sheet, take(small_sheet).sheet);
}

TEST(RateSheetCsv, SemicolonsAndDecimalCommas)
{
    std::istringstream in("record;name;service;zone;format;grams;price;percent;from;until;details\n"
                          "sheet;Gull;;;;;;19,5;;;currency EUR\n"
                          "service;Packet;pk;;;;;;;;cover 12,50\n"
                          "zone;;;home;;;;;;;DK\n"
                          "step;;pk;home;;250,5;4,20;;;;\n");
    const TakenRates taken = read_rate_sheet(in, "test.csv");
    ASSERT_THAT(taken.problems, IsEmpty());
    ASSERT_TRUE(taken.sheet);
    EXPECT_EQ(taken.sheet->tax_permille, 195);
    EXPECT_EQ(taken.sheet->services[0].cover, (Money{1250, Currency{}}));
    EXPECT_THAT(taken.sheet->steps, ElementsAre(Step{"pk", "home", "", tenth_g(2505), {420, Currency{}}}));
}

struct Wrong {
    std::string row, column;
    ProblemKind kind;
};
class WrongRow : public testing::TestWithParam<Wrong> {};

TEST_P(WrongRow, IsNamedByPlaceAndLeftOut)
{
    const TakenRates taken = take(small_sheet + GetParam().row + "\n");
    ASSERT_EQ(taken.problems.size(), 1U);
    const Problem& p = taken.problems.front();
    EXPECT_EQ(p.kind, GetParam().kind);
    EXPECT_EQ(p.column, GetParam().column);
    EXPECT_EQ(p.row, 10U);
    EXPECT_TRUE(p.stops);
    EXPECT_EQ(taken.sheet, take(small_sheet).sheet);
}

INSTANTIATE_TEST_SUITE_P(
    Kinds, WrongRow,
    testing::Values(Wrong{"stepp,,pk,home,packet,500,5.00,,,,", "record", ProblemKind::unknown_word},
                    Wrong{"step,,xx,home,packet,500,5.00,,,,", "service", ProblemKind::unknown_code},
                    Wrong{"step,,pk,away,packet,500,5.00,,,,", "zone", ProblemKind::unknown_code},
                    Wrong{"step,,pk,home,letter,500,5.00,,,,", "format", ProblemKind::unknown_code},
                    Wrong{"step,,pk,home,packet,,5.00,,,,", "grams", ProblemKind::missing_value},
                    Wrong{"step,,pk,home,packet,0,5.00,,,,", "grams", ProblemKind::not_positive},
                    Wrong{"step,,pk,home,packet,many,5.00,,,,", "grams", ProblemKind::not_a_number},
                    Wrong{"step,,pk,home,packet,20000000,5.00,,,,", "grams", ProblemKind::out_of_range},
                    Wrong{"step,,pk,home,packet,500,,,,,", "price", ProblemKind::missing_value},
                    Wrong{"step,,pk,home,packet,500,5.00 SEK,,,,", "price", ProblemKind::unknown_currency},
                    Wrong{"step,,pk,home,packet,500,-1,,,,", "price", ProblemKind::not_positive},
                    Wrong{"step,,pk,home,packet,250,4.20,,,,", "grams", ProblemKind::duplicate},
                    Wrong{"service,Packet,pk,,,,,,,,", "service", ProblemKind::duplicate},
                    Wrong{"service,Other,ot,,,,,,,,tracking", "details", ProblemKind::unknown_word},
                    Wrong{"service,Other,ot,,,,,,,,days 4 to 2", "details", ProblemKind::unknown_word},
                    Wrong{"service,Other,ot,,,,,,,,cut-off 25:00", "details", ProblemKind::unknown_word},
                    Wrong{"service,Other,ot,,,,,,,,collected Someday", "details", ProblemKind::unknown_word},
                    Wrong{"format,,,,box,,,,,,length 600", "details", ProblemKind::unknown_word},
                    Wrong{"format,,,,box,,,,,,length 600 to 140", "details", ProblemKind::unknown_word},
                    Wrong{"zone,,,away,,,,,,,Denmark", "details", ProblemKind::unknown_country},
                    Wrong{"surcharge,fuel,,,,,1.00,5,,,", "price", ProblemKind::conflicting_rows},
                    Wrong{"surcharge,peak,,,,,1.00,,soon,,", "from", ProblemKind::not_a_date},
                    Wrong{"surcharge,fuel,,,,,,8.55,,,", "percent", ProblemKind::not_a_number},
                    Wrong{"surcharge,fuel,,,,,,2000,,,", "percent", ProblemKind::out_of_range},
                    Wrong{"surcharge,fuel,,,,,99999999999,,,,", "price", ProblemKind::out_of_range},
                    Wrong{"sheet,Another,,,,,,,,,", "record", ProblemKind::duplicate}));

TEST(RateSheetCsv, ACurrencyThatDoesNotExist)
{
    const TakenRates taken = take("sheet,Gull,,,,,,,,,currency EUX\n");
    EXPECT_FALSE(taken.sheet);
    ASSERT_EQ(taken.problems.size(), 1U);
    EXPECT_EQ(taken.problems[0].kind, ProblemKind::unknown_currency);
}

TEST(RateSheetCsv, WithoutASheetRowThereIsNoSheet)
{
    const TakenRates taken = take("zone,,,home,,,,,,,DK\n");
    EXPECT_FALSE(taken.sheet);
    ASSERT_EQ(taken.problems.size(), 1U);
    EXPECT_EQ(taken.problems[0].kind, ProblemKind::missing_value);
    EXPECT_EQ(taken.problems[0].detail, "sheet");
}

TEST(RateSheetCsv, AFileThatIsNotThere)
{
    const TakenRates taken = read_rate_sheet_file("/nowhere/at/all.csv");
    EXPECT_FALSE(taken.sheet);
    ASSERT_EQ(taken.problems.size(), 1U);
    EXPECT_EQ(taken.problems[0].kind, ProblemKind::unreadable_file);
}

// Any sheet ---------------------------------------------------------------------------------------------------------

std::int64_t pick(std::int64_t from, std::int64_t to)
{
    return *rc::gen::inRange<std::int64_t>(from, to + 1);
}

bool coin()
{
    return *rc::gen::arbitrary<bool>();
}

std::string any_name(const std::string& stem, std::size_t number)
{
    return stem + *rc::gen::element<std::string>("", ", large", " \"A\"", "; b", " æøå", " 5 - 10") +
           std::to_string(number);
}

template <class Value, class Make>
std::optional<Value> maybe(Make make)
{
    return coin() ? std::optional<Value>(make()) : std::nullopt;
}

Length any_length()
{
    return tenth_mm(pick(1, 30'000));
}

Format any_format(std::size_t number)
{
    Format f;
    f.name = any_name("format", number);
    const auto both = [](std::optional<Length>& least, std::optional<Length>& most) {
        least = maybe<Length>(any_length);
        most = maybe<Length>(any_length);
        if (least && most && *most < *least) std::swap(least, most);
    };
    both(f.least_length, f.most_length);
    both(f.least_width, f.most_width);
    both(f.least_height, f.most_height);
    both(f.roll_least_length, f.roll_most_length);
    both(f.roll_least_sum, f.roll_most_sum);
    f.most_sum = maybe<Length>(any_length);
    f.most_girth = maybe<Length>(any_length);
    f.tolerance = tenth_mm(pick(0, 30));
    f.least_ratio = maybe<std::int64_t>([] { return pick(1, 2000); });
    f.most_ratio = maybe<std::int64_t>([] { return pick(2000, 4000); });
    return f;
}

std::optional<Date> any_date()
{
    return maybe<Date>([] { return *parse_date("2026-01-01") + std::chrono::days(pick(0, 700)); });
}

RateSheet any_sheet()
{
    RateSheet sheet;
    sheet.carrier = any_name("carrier", 0);
    sheet.currency = *Currency::from(*rc::gen::element<std::string>("EUR", "DKK", "JPY", "KWD"));
    sheet.valid_from = any_date();
    sheet.valid_until = any_date();
    sheet.tax_permille = pick(0, 300);
    const auto price = [&] { return Money{pick(0, 100'000), sheet.currency}; };
    const auto weight = [] { return tenth_g(pick(1, 300'000)); };
    const auto count = [](std::int64_t most) { return static_cast<std::size_t>(pick(1, most)); };
    for (std::size_t n = count(3); n > 0; --n) {
        Service s;
        s.code = any_name("service", n);
        s.name = any_name("name", n);
        s.tracked = coin();
        s.cover = maybe<Money>([&] { return Money{pick(1, 1'000'000), sheet.currency}; });
        s.days_least = static_cast<int>(pick(0, 5));
        s.days_most = s.days_least + static_cast<int>(pick(0, 9));
        s.cut_off = maybe<TimeOfDay>([] { return TimeOfDay(pick(0, 1439)); });
        for (int day = 1; day <= 7; ++day) {
            if (coin()) s.weekdays.push_back(day);
        }
        s.volumetric_divisor = maybe<std::int64_t>([] { return pick(1, 9999); });
        s.volumetric_rounding = weight();
        s.volumetric_above = maybe<Volume>([] { return Volume{pick(1, 100'000'000'000)}; });
        s.tax_permille = maybe<std::int64_t>([] { return pick(0, 300); });
        if (coin()) s.not_sent = {"liquid", "glass"};
        if (coin()) s.cut_offs = {{6, TimeOfDay(pick(0, 1439))}};
        if (coin()) s.sides_to = any_length();
        s.sides_up = s.sides_to == Length{} || coin();
        s.parcel_post = coin();
        s.roll_permille = pick(1, 1000);
        sheet.services.push_back(s);
        sheet.zones.push_back({any_name("zone", n), {{"DK", "", ""}, {"DE", "20", "29"}, {"SE", "621", "621"}}});
        sheet.formats.push_back(any_format(n));
    }
    const auto service = [&] { return (*rc::gen::elementOf(sheet.services)).code; };
    const auto zone = [&] { return (*rc::gen::elementOf(sheet.zones)).name; };
    const auto format = [&] { return coin() ? (*rc::gen::elementOf(sheet.formats)).name : std::string{}; };
    for (std::int64_t n = 0; n < pick(0, 6); ++n) { // weights apart, so that none stands twice
        sheet.steps.push_back({service(), zone(), format(), grams(100 * (n + 1)) + tenth_g(pick(0, 9)), price()});
    }
    for (std::size_t n = count(3); n > 0; --n) sheet.beyond.push_back({service(), zone(), format(), price(), weight()});
    for (std::size_t n = count(3); n > 0; --n) {
        Surcharge s;
        s.name = any_name("surcharge", n);
        if (coin()) s.service = service();
        if (coin()) s.zone = zone();
        if (coin()) s.format = format();
        s.kind = *rc::gen::element(Surcharge::Kind::percent, Surcharge::Kind::fixed, Surcharge::Kind::per_kg,
                                   Surcharge::Kind::percent_of_value);
        s.amount.currency = sheet.currency;
        const std::int64_t sign = coin() ? -1 : 1; // a discount
        if (s.kind == Surcharge::Kind::percent || s.kind == Surcharge::Kind::percent_of_value)
            s.permille = sign * pick(0, 500);
        else
            s.amount = price() * sign;
        if (s.kind == Surcharge::Kind::percent && coin()) s.also_of = {"fuel", "toll 2"};
        s.wider_than = maybe<Length>(any_length);
        s.girth_over = maybe<Length>(any_length);
        s.larger_than = maybe<Volume>([] { return Volume{pick(1, 100'000'000'000)}; });
        s.value_above = maybe<Money>([&] { return price(); });
        s.only_unboxed = coin();
        if (coin()) s.places = {{"DK", "37", "37"}, {"SE", "620", "629"}, {"NO", "", ""}};
        s.longer_than = maybe<Length>(any_length);
        s.heavier_than = maybe<Weight>(weight);
        s.only_rolls = coin();
        s.from = any_date();
        s.until = any_date();
        sheet.surcharges.push_back(s);
    }
    for (std::size_t n = count(3); n > 0; --n) {
        sheet.volume_steps.push_back(
            {service(), zone(), format(), Volume{pick(1, 100'000'000'000)}, price(), weight()});
    }
    if (const auto day = any_date()) sheet.holidays = {*day, *day + std::chrono::days(1)};
    return sheet;
}

RC_GTEST_PROP(RateSheetCsv, WhatIsWrittenReadsBackTheSame, ())
{
    const RateSheet sheet = any_sheet();
    std::istringstream in(write_rate_sheet(sheet));
    const TakenRates taken = read_rate_sheet(in, "test.csv");
    RC_LOG() << write_rate_sheet(sheet);
    RC_ASSERT(taken.problems.empty());
    RC_ASSERT(taken.sheet.has_value());
    const bool same = *taken.sheet == sheet;
    RC_ASSERT(same);
}

} // namespace
} // namespace stow::intake
