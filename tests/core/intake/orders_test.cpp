#include "core/intake/orders_csv.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>
#include <sstream>

namespace stow::intake {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;
using testing::SizeIs;

constexpr const char* headings = "Order number,Date,Send by,Name,Address 1,Address 2,Postcode,Town,Country,Item,Option,"
                                 "Code,Quantity,Price,Currency,Note,Gift,Gift message,Paid,Status\n";

Csv table(const std::string& rows, const std::string& first = headings)
{
    std::istringstream in(first + rows);
    return read_csv(in, "orders.csv");
}

Taken<shop::Order> read(const std::string& rows)
{
    const Csv csv = table(rows);
    return read_orders(csv, guess_columns(csv, "Stall"));
}

// One sound row; `count` and the rest can be spoilt.
std::string row(const std::string& number, const std::string& count = "1", const std::string& price = "4.50",
                const std::string& date = "2026-11-20", const std::string& postcode = "24103",
                const std::string& currency = "EUR", const std::string& paid = "yes")
{
    return number + "," + date + ",2026-11-27,Ada Haldern,Quay 1,," + postcode + ",Port,Germany,Ink,sea,INK," + count +
           "," + price + "," + currency + ",,no,," + paid + ",open\n";
}

void expect_one(const Taken<shop::Order>& taken, ProblemKind kind, const std::string& column, const std::string& value)
{
    ASSERT_THAT(taken.problems, SizeIs(1));
    const Problem& p = taken.problems[0];
    EXPECT_EQ(p.kind, kind);
    EXPECT_EQ(p.file, "orders.csv");
    EXPECT_EQ(p.row, 3U);
    EXPECT_EQ(p.column, column);
    EXPECT_EQ(p.value, value);
}

TEST(Orders, OneRowALine)
{
    const auto taken = read("7,2026-11-20,2026-11-27,Ada Haldern,Quay 1,Loft,24103,Port,Germany,Ink,sea,INK,2,4.50,EUR,"
                            "ring twice,yes,Enjoy!,yes,open\n"
                            "7,,,,,,,,,Wax,red,,3,6,,,,,,\n"
                            "8,2026-11-21,,Ben Quill,Mole 2,,1010,Wien,Austria,Pen,,,1,19.5,EUR,,no,,no,open\n");
    EXPECT_THAT(taken.problems, IsEmpty());
    ASSERT_THAT(taken.rows, SizeIs(2));
    const shop::Order& order = taken.rows[0];
    EXPECT_EQ(order.key, (shop::OrderKey{"Stall", "7"}));
    EXPECT_EQ(order.date, parse_date("2026-11-20"));
    EXPECT_EQ(order.promised, parse_date("2026-11-27"));
    EXPECT_THAT(order.to.street, ElementsAre("Quay 1", "Loft"));
    EXPECT_EQ(order.to.country, "DE");
    EXPECT_EQ(order.note, "ring twice");
    EXPECT_EQ(order.gift->message, "Enjoy!");
    EXPECT_TRUE(order.paid);
    ASSERT_THAT(order.lines, SizeIs(2));
    EXPECT_EQ(order.lines[0].count, 2);
    EXPECT_EQ(to_text(*order.lines[0].price), "4.50 EUR");
    EXPECT_EQ(order.lines[1].title, "Wax");
    EXPECT_EQ(order.lines[1].variant, "red");
    EXPECT_EQ(order.lines[1].count, 3);
    EXPECT_EQ(taken.rows[1].to.country, "AT");
    EXPECT_FALSE(taken.rows[1].paid);
    EXPECT_FALSE(taken.rows[1].gift);
    EXPECT_FALSE(taken.rows[1].promised);
}

TEST(Orders, ABadRowLeavesTheOthers)
{
    const auto taken = read(row("1") + row("2", "two") + row("3"));
    ASSERT_THAT(taken.rows, SizeIs(2));
    EXPECT_EQ(taken.rows[1].key.number, "3");
    expect_one(taken, ProblemKind::not_a_number, "Quantity", "two");
    EXPECT_TRUE(taken.problems[0].stops);
}

TEST(Orders, EachFaultOfARowIsNamed)
{
    expect_one(read(row("1") + row("2", "0")), ProblemKind::not_positive, "Quantity", "0");
    expect_one(read(row("1") + row("2", "-3")), ProblemKind::not_positive, "Quantity", "-3");
    expect_one(read(row("1") + row("2", "1.5")), ProblemKind::not_a_number, "Quantity", "1.5");
    expect_one(read(row("1") + row("2", "501")), ProblemKind::out_of_range, "Quantity", "501");
    expect_one(read(row("1") + row("2", "")), ProblemKind::missing_value, "Quantity", "");
    expect_one(read(row("1") + row("2", "1", "cheap")), ProblemKind::not_a_number, "Price", "cheap");
    expect_one(read(row("1") + row("2", "1", "-4")), ProblemKind::not_positive, "Price", "-4");
    expect_one(read(row("1") + row("2", "1", "4", "2026-11-31")), ProblemKind::not_a_date, "Date", "2026-11-31");
    expect_one(read(row("1") + row("2", "1", "4", "")), ProblemKind::missing_value, "Date", "");
    expect_one(read(row("1") + row("2", "1", "4", "2026-11-20", "24103", "EUX")), ProblemKind::unknown_currency,
               "Currency", "EUX");
    expect_one(read(row("1") + row("2", "1", "4", "2026-11-20", "24103", "EUR", "perhaps")), ProblemKind::unknown_word,
               "Paid", "perhaps");
    expect_one(read(row("1") + row("")), ProblemKind::missing_value, "Order number", "");
}

TEST(Orders, ABadAddressIsNamedButTaken)
{
    const auto taken = read(row("1") + row("2", "1", "4", "2026-11-20", "2410"));
    EXPECT_THAT(taken.rows, SizeIs(2));
    expect_one(taken, ProblemKind::bad_postcode, "Postcode", "2410");
    EXPECT_FALSE(taken.problems[0].stops);

    const auto abroad = read("1,2026-11-20,,Ada,Quay 1,,1,Port,Atlantis,Ink,,,1,4,EUR,,,,yes,\n");
    ASSERT_THAT(abroad.rows, SizeIs(1));
    ASSERT_THAT(abroad.problems, SizeIs(1));
    EXPECT_EQ(abroad.problems[0].kind, ProblemKind::unknown_country);
    EXPECT_EQ(abroad.rows[0].to.country, "Atlantis");
    const auto findings = shop::look_over(abroad.rows[0], *parse_date("2026-11-20"));
    EXPECT_TRUE(std::any_of(findings.begin(), findings.end(), [](const auto& f) {
        return f.problem == shop::OrderProblem::unknown_country && f.blocks;
    }));
}

TEST(Orders, HalfAnOrderIsNotTaken)
{
    const auto taken = read("1,2026-11-20,,Ada,Quay 1,,24103,Port,Germany,Ink,,,1,4,EUR,,,,yes,\n"
                            "1,,,,,,,,,Wax,,,many,4,,,,,,\n" +
                            row("2"));
    ASSERT_THAT(taken.rows, SizeIs(1));
    EXPECT_EQ(taken.rows[0].key.number, "2");
    ASSERT_THAT(taken.problems, SizeIs(2));
    EXPECT_EQ(taken.problems[0].kind, ProblemKind::order_incomplete);
    EXPECT_EQ(taken.problems[0].row, 2U);
    EXPECT_EQ(taken.problems[0].value, "1");
    EXPECT_EQ(taken.problems[1].kind, ProblemKind::not_a_number);
    EXPECT_EQ(taken.problems[1].row, 3U);
}

TEST(Orders, RowsThatDisagreeAreNamed)
{
    const auto taken = read(row("1") + "1,2026-11-20,,Ada Haldern,Quay 9,,,,,Wax,,,1,4,EUR,,,,,\n");
    EXPECT_THAT(taken.rows, IsEmpty());
    ASSERT_THAT(taken.problems, SizeIs(2));
    EXPECT_EQ(taken.problems[0].kind, ProblemKind::order_incomplete);
    EXPECT_EQ(taken.problems[1].kind, ProblemKind::conflicting_rows);
    EXPECT_EQ(taken.problems[1].column, "Address 1");
    EXPECT_EQ(taken.problems[1].value, "Quay 9");
    EXPECT_EQ(taken.problems[1].detail, "Quay 1");
}

TEST(Orders, TheSameRowTwiceIsOneLine)
{
    const auto taken = read(row("1") + row("1"));
    ASSERT_THAT(taken.rows, SizeIs(1));
    EXPECT_THAT(taken.rows[0].lines, SizeIs(1));
    expect_one(taken, ProblemKind::duplicate, "Order number", "1");
}

TEST(Orders, NotesOfAllRowsAreKept)
{
    const auto taken = read("1,2026-11-20,,Ada,Quay 1,,24103,Port,Germany,Ink,,,1,4,EUR,first,,,yes,\n"
                            "1,,,,,,,,,Wax,,,1,4,,second,,,,\n1,,,,,,,,,Pen,,,1,4,,first,,,,\n");
    ASSERT_THAT(taken.rows, SizeIs(1));
    EXPECT_EQ(taken.rows[0].note, "first\nsecond");
}

TEST(Orders, MissingColumnsAreNamedAndNothingIsRead)
{
    const Csv csv = table("1,Ink\n", "Order number,Item\n");
    const auto taken = read_orders(csv, guess_columns(csv, "Stall"));
    EXPECT_THAT(taken.rows, IsEmpty());
    std::vector<std::string> columns;
    for (const Problem& p : taken.problems) {
        EXPECT_EQ(p.kind, ProblemKind::missing_column);
        columns.push_back(p.column);
    }
    EXPECT_THAT(columns, ElementsAre("date", "name", "street", "town"));
}

TEST(Orders, AnUnreadableFileKeepsItsProblem)
{
    const Csv empty = table("", "");
    const auto taken = read_orders(empty, guess_columns(empty, "Stall"));
    EXPECT_THAT(taken.rows, IsEmpty());
    ASSERT_THAT(taken.problems, SizeIs(1));
    EXPECT_EQ(taken.problems[0].kind, ProblemKind::empty_file);
}

TEST(Orders, GermanFilesWithDecimalCommas)
{
    const Csv csv =
        table("17;03.04.2026;Jörg;Öhlen;Kai;4a;24103;Hafen;Österreich;Tinte;2;1.234,50 €;05.04.2026;offen\n",
              "Bestellnummer;Datum;Vorname;Nachname;Straße;Hausnummer;PLZ;Ort;Land;Artikel;Menge;Einzelpreis;"
              "Zahlungseingang;Status\n");
    const auto taken = read_orders(csv, guess_columns(csv, "Kontor"));
    ASSERT_THAT(taken.rows, SizeIs(1));
    const shop::Order& order = taken.rows[0];
    EXPECT_EQ(order.to.name, "Jörg Öhlen");
    EXPECT_THAT(order.to.street, ElementsAre("Kai 4a"));
    EXPECT_EQ(order.to.country, "AT");
    EXPECT_EQ(to_text(*order.lines[0].price), "1234.50 EUR");
    EXPECT_EQ(to_text(order.date), "2026-04-03");
    EXPECT_TRUE(order.paid);
    EXPECT_FALSE(order.called_off);
    ASSERT_THAT(taken.problems, SizeIs(1)) << "24103 is no Austrian postcode";
    EXPECT_EQ(taken.problems[0].kind, ProblemKind::bad_postcode);
}

TEST(Orders, OneRowTellsTheDateOrderOfTheFile)
{
    const auto date_of_first = [](const std::string& first, const std::string& second) {
        const auto taken = read(row("1", "1", "4", first) + row("2", "1", "4", second));
        return taken.rows.empty() ? std::string() : to_text(taken.rows[0].date);
    };
    EXPECT_EQ(date_of_first("03/04/2026", "25/04/2026"), "2026-04-03");
    EXPECT_EQ(date_of_first("03/04/2026", "04/25/2026"), "2026-03-04");
}

TEST(Orders, PaidAndCalledOffInWords)
{
    const auto state = [](const std::string& paid, const std::string& status) {
        const auto taken =
            read("1,2026-11-20,,Ada,Quay 1,,24103,Port,Germany,Ink,,,1,4,EUR,,,," + paid + "," + status + "\n");
        EXPECT_THAT(taken.rows, SizeIs(1)) << paid << status;
        return taken.rows.empty() ? std::pair{false, false} : std::pair{taken.rows[0].paid, taken.rows[0].called_off};
    };
    EXPECT_EQ(state("paid", "open"), (std::pair{true, false}));
    EXPECT_EQ(state("bezahlt", "storniert"), (std::pair{true, true}));
    EXPECT_EQ(state("pending", "called off"), (std::pair{false, true}));
    EXPECT_EQ(state("2026-11-21", ""), (std::pair{true, false}));
    EXPECT_EQ(state("", "Cancelled"), (std::pair{false, true}));
}

TEST(Columns, AMatchGoesThroughJsonUnchanged)
{
    ColumnMatch match = guess_columns(table(""), "Stall \"Quay\"");
    EXPECT_GT(match.headings.size(), 15U);
    match.dates = DateOrder::month_day;
    match.home = "NL";
    match.currency = *Currency::from("GBP");
    const auto back = column_match(to_text(match));
    ASSERT_TRUE(back);
    EXPECT_EQ(*back, match);
}

TEST(Columns, JsonThatIsNoMatchIsRefusedWithAReason)
{
    EXPECT_EQ(column_match("[").error(), "not a JSON object");
    EXPECT_EQ(column_match(R"({"columns": {"shoe size": "X"}})").error(), "columns: shoe size");
    EXPECT_EQ(column_match(R"({"dates": "sometimes"})").error(), "dates: sometimes");
    EXPECT_EQ(column_match(R"({"home": "Atlantis"})").error(), "home: Atlantis");
    EXPECT_EQ(column_match(R"({"currency": "EUX"})").error(), "currency: EUX");
    EXPECT_EQ(column_match(R"({"colour": "red"})").error(), "colour");
}

TEST(Columns, EveryFieldHasANameOfItsOwn)
{
    for (const OrderField field : all_order_fields) {
        EXPECT_FALSE(name_of(field).empty());
        EXPECT_EQ(order_field(name_of(field)), field);
    }
}

TEST(Columns, DeliveryWinsOverPlainAndInvoiceIsNeverTaken)
{
    const Csv csv = table("", "Order,Date,Invoice name,Name,Delivery name,Invoice street,Delivery street,Town,Item\n");
    const ColumnMatch match = guess_columns(csv, "Stall");
    EXPECT_EQ(match.headings.at(OrderField::name), "Delivery name");
    EXPECT_EQ(match.headings.at(OrderField::street), "Delivery street");
    for (const auto& [field, heading] : match.headings) EXPECT_EQ(heading.find("Invoice"), std::string::npos);
    EXPECT_THAT(missing_fields(match, csv), IsEmpty());
}

TEST(Columns, AMatchForAnotherFileIsFoundOut)
{
    const Csv csv = table("");
    ColumnMatch match = guess_columns(csv, "Stall");
    match.headings[OrderField::count] = "How many";
    EXPECT_THAT(missing_fields(match, csv), ElementsAre(OrderField::count));
    const auto taken = read_orders(csv, match);
    ASSERT_THAT(taken.problems, SizeIs(1));
    EXPECT_EQ(taken.problems[0].kind, ProblemKind::missing_column);
    EXPECT_EQ(taken.problems[0].value, "How many");
}

TEST(MatchGoods, RememberedFirstThenTheCode)
{
    shop::Order order;
    order.key.shop = "Stall";
    const auto line = [](const char* title, const char* variant, const char* code) {
        shop::OrderLine l;
        l.title = title;
        l.variant = variant;
        l.shop_code = code;
        return l;
    };
    order.lines = {line("Ink", "sea", "PEN"), line("Pen", "", "PEN"), line("Ink", "red", "X-1"),
                   line("Ink", "red", "")};
    order.lines.back().good = {"KEPT"};
    std::map<shop::GoodCode, shop::Good> goods;
    goods[{"PEN"}];
    EXPECT_EQ(match_goods(order, {{{"Stall", "Ink", "sea"}, {"INK-SEA"}}, {{"Other", "Ink", "red"}, {"NO"}}}, goods),
              1U);
    EXPECT_EQ(order.lines[0].good.text, "INK-SEA");
    EXPECT_EQ(order.lines[1].good.text, "PEN");
    EXPECT_TRUE(order.lines[2].good.empty());
    EXPECT_EQ(order.lines[3].good.text, "KEPT");
}

// Whatever stands in the cells, each row is either in an order or named by a problem, and nothing is taken twice.
RC_GTEST_PROP(Orders, NoRowIsLost, ())
{
    const auto word = rc::gen::element<std::string>("", "1", "2", "x", "2026-11-20", "-1", "Ink", "yes", "24103");
    const auto rows = *rc::gen::container<std::vector<std::vector<std::string>>>(
        rc::gen::container<std::vector<std::string>>(20, word));
    std::string text;
    for (std::size_t i = 0; i < rows.size(); ++i) {
        std::vector<std::string> cells = rows[i];
        cells[17] = "message " + std::to_string(i); // no two rows alike
        text += csv_line(cells);
    }
    const auto taken = read(text);
    std::size_t lines = 0;
    std::set<std::string> numbers;
    for (const shop::Order& order : taken.rows) {
        lines += order.lines.size();
        RC_ASSERT(numbers.insert(order.key.number).second);
    }
    std::set<std::size_t> left_out;
    for (const Problem& p : taken.problems) {
        if (p.stops) left_out.insert(p.row);
    }
    RC_ASSERT(lines + left_out.size() == rows.size());
}

} // namespace
} // namespace stow::intake
