#include "core/intake/price_json.h"

#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace stow::intake {
namespace {

using nlohmann::json;

json question()
{
    return json::parse(R"({"rate_sheets":["rates.csv"],
        "parcel":{"closed_mm":[250,180,90.51],"weight_g":812,"country":"DE","postcode":"20095","value":"39.90 EUR",
                  "holds":["glass"],"hand_over":"2026-11-25"}})");
}

TEST(PriceQuestion, ReadsItsMembers)
{
    const auto read = read_price_question(question().dump());
    ASSERT_TRUE(read);
    EXPECT_EQ(read->rate_sheets, std::vector<std::string>{"rates.csv"});
    EXPECT_EQ(read->parcel.closed, (Size{mm(250), mm(180), tenth_mm(906)})); // rounded up
    EXPECT_EQ(read->parcel.weight, grams(812));
    EXPECT_EQ(read->parcel.value, (Money{3990, Currency{}}));
    EXPECT_EQ(read->parcel.holds, std::vector<std::string>{"glass"});
    EXPECT_FALSE(read->parcel.roll);
}

struct Wrong {
    const char* patch; // merged into the question (RFC 7396)
    const char* member;
    ProblemKind kind;
};
class WrongQuestion : public testing::TestWithParam<Wrong> {};

TEST_P(WrongQuestion, IsRefusedByName)
{
    json q = question();
    q.merge_patch(json::parse(GetParam().patch));
    const auto read = read_price_question(q.dump());
    ASSERT_FALSE(read);
    EXPECT_EQ(read.error().column, GetParam().member);
    EXPECT_EQ(read.error().kind, GetParam().kind);
}

INSTANTIATE_TEST_SUITE_P(
    Members, WrongQuestion,
    testing::Values(Wrong{R"({"rates":1})", "rates", ProblemKind::unknown_member},
                    Wrong{R"({"parcel":{"wieght_g":1}})", "parcel.wieght_g", ProblemKind::unknown_member},
                    Wrong{R"({"parcel":{"weight_g":null}})", "parcel.weight_g", ProblemKind::missing_value},
                    Wrong{R"({"parcel":{"weight_g":0}})", "parcel.weight_g", ProblemKind::not_positive},
                    Wrong{R"({"parcel":{"weight_g":-3}})", "parcel.weight_g", ProblemKind::not_positive},
                    Wrong{R"({"parcel":{"weight_g":1e300}})", "parcel.weight_g", ProblemKind::out_of_range},
                    Wrong{R"({"parcel":{"weight_g":"812"}})", "parcel.weight_g", ProblemKind::not_a_number},
                    Wrong{R"({"parcel":{"closed_mm":[250,180]}})", "parcel.closed_mm", ProblemKind::bad_json},
                    Wrong{R"({"parcel":{"closed_mm":[250,180,0]}})", "parcel.closed_mm", ProblemKind::not_positive},
                    Wrong{R"({"parcel":{"roll":true}})", "parcel.closed_mm", ProblemKind::out_of_range},
                    Wrong{R"({"parcel":{"roll":"yes"}})", "parcel.roll", ProblemKind::bad_json},
                    Wrong{R"({"parcel":{"country":"Germany"}})", "parcel.country", ProblemKind::unknown_country},
                    Wrong{R"({"parcel":{"value":"39.90 EUX"}})", "parcel.value", ProblemKind::unknown_currency},
                    Wrong{R"({"parcel":{"value":"39.90"}})", "parcel.value", ProblemKind::unknown_currency},
                    Wrong{R"({"parcel":{"value":"much EUR"}})", "parcel.value", ProblemKind::not_a_number},
                    Wrong{R"({"parcel":{"hand_over":"2026-02-30"}})", "parcel.hand_over", ProblemKind::not_a_date},
                    Wrong{R"({"parcel":{"holds":"glass"}})", "parcel.holds", ProblemKind::bad_json},
                    Wrong{R"({"rate_sheets":[]})", "rate_sheets", ProblemKind::missing_value}));

TEST(PriceQuestion, AMemberNamedTwice)
{
    const auto read = read_price_question(R"({"rate_sheets":["a"],"rate_sheets":["b"]})");
    ASSERT_FALSE(read);
    EXPECT_EQ(read.error().kind, ProblemKind::duplicate);
    EXPECT_EQ(read.error().column, "rate_sheets");
}

TEST(PriceQuestion, WhatIsNoJson)
{
    EXPECT_EQ(read_price_question("").error().kind, ProblemKind::empty_file);
    for (const char* text : {"{", "[]", "42", "{\"parcel\":NaN}", "\xff\xfe"}) {
        const auto read = read_price_question(text);
        ASSERT_FALSE(read) << text;
        EXPECT_EQ(read.error().kind, ProblemKind::bad_json) << text;
    }
}

class PriceFile : public testing::Test {
protected:
    PriceFile() { std::filesystem::create_directories(folder_); }
    ~PriceFile() override { std::filesystem::remove_all(folder_); }
    std::string file(const std::string& name, const std::string& text) const
    {
        std::ofstream(folder_ / name) << text;
        return (folder_ / name).string();
    }

private:
    std::filesystem::path folder_ =
        std::filesystem::path(testing::TempDir()) /
        ("stow_price_" +
         std::to_string(std::hash<std::string>{}(testing::UnitTest::GetInstance()->current_test_info()->name())));
};

const std::string rates = "record,name,service,zone,format,grams,price,percent,from,until,details\n"
                          "sheet,Gull,,,,,,25,,,currency EUR\n"
                          "service,Letter,let,,,,,,,,\n"
                          "service,Packet,pk,,,,,,,,tracked / cover 50 / days 2 to 4\n"
                          "zone,,,near,,,,,,,DE\n"
                          "format,,,,flat,,,,,,length to 240 / height to 20\n"
                          "format,,,,box,,,,,,sum to 900\n"
                          "step,,let,near,flat,500,1.00,,,,\n"
                          "step,,pk,near,box,1000,4.00,,,,\n"
                          "step,,pk,near,box,2000,6.00,,,,\n"
                          "surcharge,fuel,pk,,,,,10,,,\n";

TEST_F(PriceFile, AnswersWithPartsOrAReasonForEachService)
{
    file("rates.csv", rates);
    const auto answer = answer_price_file(file("question.json", question().dump()));
    ASSERT_TRUE(answer);
    EXPECT_TRUE(answer->problems.empty());
    EXPECT_EQ(json::parse(answer->json), json::parse(R"({"services":[
        {"carrier":"Gull","service":"let","name":"Letter","tracked":false,"days_most":1,
         "reason":"too_big","what":"height","format":"flat","over_by_mm":70.6},
        {"carrier":"Gull","service":"pk","name":"Packet","tracked":true,"days_most":4,"total":"5.50 EUR",
         "parts":[{"kind":"base","name":"box","amount":"4.00 EUR"},{"kind":"surcharge","name":"fuel","amount":"0.40 EUR"},
                  {"kind":"tax","name":"tax","amount":"1.10 EUR"}],
         "zone":"near","format":"box","charged_g":812,"step_edge_g":1000,"next_step":"8.25 EUR","covered":true}]})"));
}

TEST_F(PriceFile, RowsLeftOutAreToldBesideTheAnswer)
{
    file("rates.csv", rates + "step,,pk,far,box,5000,9.00,,,,\n");
    const auto answer = answer_price_file(file("question.json", question().dump()));
    ASSERT_TRUE(answer);
    ASSERT_EQ(answer->problems.size(), 1U);
    EXPECT_EQ(answer->problems[0].row, 12U);
}

TEST_F(PriceFile, AnAmbiguousSheetIsRefused)
{
    file("rates.csv", rates + "zone,,,far,,,,,,,DE\nstep,,pk,far,box,1000,9.00,,,,\n");
    const auto answer = answer_price_file(file("question.json", question().dump()));
    ASSERT_FALSE(answer);
    EXPECT_EQ(answer.error().front().value, "zones near and far, DE");
}

TEST_F(PriceFile, FilesThatAreNotThere)
{
    ASSERT_FALSE(answer_price_file("/nowhere/at/all.json"));
    const auto answer = answer_price_file(file("question.json", question().dump()));
    ASSERT_FALSE(answer);
    EXPECT_EQ(answer.error().front().kind, ProblemKind::unreadable_file);
}

} // namespace
} // namespace stow::intake
