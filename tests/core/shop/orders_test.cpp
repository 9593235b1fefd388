#include "core/shop/countries.h"
#include "core/shop/orders.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace stow::shop {
namespace {

using testing::IsEmpty;
using testing::SizeIs;

// Samples and patterns of the public address metadata (GB, JP, FR, DE, NL; rules for NL letters); AT, CH, PL, PT, SE,
// LV by its patterns, the code itself made up.
TEST(Postcode, PublishedSamples)
{
    for (const char* gb : {"EC1Y 8SY", "GIR 0AA", "M2 5BQ", "W1A 4ZZ", "BFPO 61", "ec1y8sy"})
        EXPECT_TRUE(postcode_ok("GB", gb)) << gb;
    EXPECT_TRUE(postcode_ok("JP", "154-0023"));
    EXPECT_TRUE(postcode_ok("JP", "1540023"));
    EXPECT_TRUE(postcode_ok("FR", "33380"));
    EXPECT_TRUE(postcode_ok("DE", "26133"));
    EXPECT_TRUE(postcode_ok("NL", "1234 AB"));
    EXPECT_TRUE(postcode_ok("CH", "CH-8000"));
    EXPECT_TRUE(postcode_ok("SE", "SE-123 45"));
    EXPECT_TRUE(postcode_ok("LV", "LV-1001"));
    EXPECT_TRUE(postcode_ok("US", "12345-6789"));
    EXPECT_TRUE(postcode_ok("PT", "1000-205"));
    EXPECT_TRUE(postcode_ok("PL", "00-950"));
    EXPECT_TRUE(postcode_ok("IE", "D6W XY00"));
}

TEST(Postcode, WrongShapes)
{
    EXPECT_FALSE(postcode_ok("DE", "2613"));
    EXPECT_FALSE(postcode_ok("DE", "261333"));
    EXPECT_FALSE(postcode_ok("DE", "00133"));
    EXPECT_FALSE(postcode_ok("DE", ""));
    EXPECT_FALSE(postcode_ok("DE", "2613O")) << "letter O for zero";
    EXPECT_FALSE(postcode_ok("NL", "0234 AB"));
    EXPECT_FALSE(postcode_ok("NL", "1234 SA"));
    EXPECT_FALSE(postcode_ok("NL", "1234 SS"));
    EXPECT_FALSE(postcode_ok("GB", "EC1Y 8S"));
    EXPECT_FALSE(postcode_ok("ES", "53001"));
    EXPECT_FALSE(postcode_ok("AT", "DE-1010"));
    EXPECT_FALSE(postcode_ok("US", "12345-67"));
}

TEST(Postcode, CountriesWithoutAKnownShapeTakeAnything)
{
    EXPECT_TRUE(postcode_ok("HK", ""));
    EXPECT_TRUE(postcode_ok("AE", "anything"));
}

TEST(Countries, KnowsTheCodesOfTheStandard)
{
    for (const char* code : {"AD", "DE", "GB", "GL", "ZW", "CH"}) EXPECT_TRUE(is_country(code)) << code;
    for (const char* code : {"", "D", "DEU", "XX", "UK", "de", "E ", "D "}) EXPECT_FALSE(is_country(code)) << code;
    int countries = 0, members = 0;
    for (char a = 'A'; a <= 'Z'; ++a) {
        for (char b = 'A'; b <= 'Z'; ++b) {
            const std::string code{a, b};
            countries += is_country(code);
            members += in_european_union(code);
            EXPECT_TRUE(is_country(code) || !in_european_union(code)) << code;
        }
    }
    EXPECT_EQ(countries, 249) << "entries of ISO 3166-1";
    EXPECT_EQ(members, 27);
    EXPECT_FALSE(in_european_union("GB"));
    EXPECT_FALSE(in_european_union("CH"));
    EXPECT_FALSE(in_european_union("NO"));
}

Order good_order()
{
    Order order;
    order.key = {"Harbour", "1001"};
    order.to = {"Jörg Öhlen", "", {"Kaistraße 4", "2. Stock"}, "24103", "Südhafen", "", "DE"};
    OrderLine line;
    line.title = "Ink";
    line.good = {"INK-SEA-30"};
    order.lines = {line};
    return order;
}

TEST(JoiningKey, OverlooksCaseSpacesAndPunctuation)
{
    const Address a = good_order().to;
    const Address b{"JÖRG  ÖHLEN", "Firma", {"kaistraße 4,", "2 STOCK"}, "241 03", "SÜDHAFEN", "Land", "de"};
    EXPECT_EQ(joining_key(a), joining_key(b));
    const Address dashes{"Jörg–Öhlen", "", {"Kaistraße\u00A04 2. Stock"}, "24103", "Südhafen", "", "DE"};
    EXPECT_EQ(joining_key(a), joining_key(dashes));
    EXPECT_EQ(joining_key({"ŁUKASZ ŽIŽEK", "", {}, "", "ΑΘΗΝΑ МОСКВА", "", ""}),
              joining_key({"łukasz žižek", "", {}, "", "αθηνα москва", "", ""}));
}

TEST(JoiningKey, TellsOtherBuyersApart)
{
    const Address a = good_order().to;
    const auto with = [&](auto change) {
        Address b = a;
        change(b);
        return joining_key(b);
    };
    EXPECT_NE(joining_key(a), with([](Address& b) { b.name = "Jorg Ohlen"; }));
    EXPECT_NE(joining_key(a), with([](Address& b) { b.street = {"Kaistraße 42", "Stock"}; }));
    EXPECT_NE(joining_key(a), with([](Address& b) { b.postcode = "24130"; }));
    EXPECT_NE(joining_key(a), with([](Address& b) { b.town = "Nordhafen"; }));
    EXPECT_NE(joining_key(a), with([](Address& b) { b.country = "DK"; }));
    // A number must not slip from one field into the next.
    EXPECT_NE(joining_key({"A", "", {"B 1"}, "2", "C", "", "DE"}), joining_key({"A", "", {"B"}, "12", "C", "", "DE"}));
}

RC_GTEST_PROP(JoiningKey, UpperAndLowerCaseJoin, (const std::string& ascii))
{
    std::string upper = ascii, lower = ascii;
    for (char& c : upper) c = c >= 'a' && c <= 'z' ? static_cast<char>(c - 32) : c;
    for (char& c : lower) c = c >= 'A' && c <= 'Z' ? static_cast<char>(c + 32) : c;
    Address a, b;
    a.name = upper;
    b.name = lower;
    RC_ASSERT(joining_key(a) == joining_key(b));
}

constexpr Date today{std::chrono::year{2026} / 11 / 25};

TEST(LookOver, ASoundOrderIsLeftAlone)
{
    EXPECT_THAT(look_over(good_order(), today), IsEmpty());
}

TEST(LookOver, EachProblemAlone)
{
    const auto only = [](auto change) {
        Order order = good_order();
        change(order);
        const auto findings = look_over(order, today);
        EXPECT_THAT(findings, SizeIs(1));
        return findings.empty() ? OrderFinding{OrderProblem::changed, false, 0} : findings[0];
    };
    const auto expect = [](OrderFinding finding, OrderProblem problem, bool blocks) {
        EXPECT_EQ(finding.problem, problem);
        EXPECT_EQ(finding.blocks, blocks);
    };
    expect(only([](Order& o) { o.paid = false; }), OrderProblem::unpaid, true);
    expect(only([](Order& o) { o.to.postcode = "2410"; }), OrderProblem::bad_postcode, true);
    expect(only([](Order& o) { o.to.country = "XX"; }), OrderProblem::unknown_country, true);
    expect(only([](Order& o) { o.to.street = {" "}; }), OrderProblem::missing_street, true);
    expect(only([](Order& o) { o.to.town.clear(); }), OrderProblem::missing_street, true);
    expect(only([](Order& o) { o.to.name.clear(); }), OrderProblem::missing_street, true);
    expect(only([](Order& o) { o.promised = today - std::chrono::days{1}; }), OrderProblem::promised_passed, false);
    expect(only([](Order& o) { o.note = "ring twice"; }), OrderProblem::note_to_read, false);
    const auto unmatched = only([](Order& o) {
        o.lines.push_back(o.lines[0]);
        o.lines[1].good = {};
    });
    expect(unmatched, OrderProblem::unmatched_good, true);
    EXPECT_EQ(unmatched.line, 1U);
}

TEST(LookOver, PromisedTodayIsInTime)
{
    Order order = good_order();
    order.promised = today;
    EXPECT_THAT(look_over(order, today), IsEmpty());
}

} // namespace
} // namespace stow::shop
