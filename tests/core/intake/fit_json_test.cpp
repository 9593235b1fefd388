#include "core/intake/fit_json.h"

#include "core/fitting/check.h"
#include "core/fitting/fit.h"

#include <gmock/gmock.h>
#include <nlohmann/json.hpp>

namespace stow::intake {
namespace {

using fitting::Answer;

// The example of the contract, whole.
const char* const example = R"({"items":[
  {"id":"bottle","count":3,"shape":"block","size_mm":[60,60,90.5],"weight_g":210,"turns":"any"},
  {"id":"jar","shape":"cylinder","size_mm":[75,95],"weight_g":300,"turns":"upright","top_load_g":500,"fragile":true},
  {"id":"set","shape":"inside","packed_in":"gift box S",
   "items":[{"id":"nib","count":6,"shape":"block","size_mm":[40,10,8],"weight_g":4}]}],
 "outers":[{"id":"S","kind":"carton","inner_mm":[200,150,100],"outer_mm":[206,156,106],"tare_g":90,"max_load_g":5000},
           {"id":"M","kind":"carton","inner_mm":[250,200,150],"outer_mm":[256,206,156],"tare_g":120,"max_load_g":5000},
           {"id":"gift box S","kind":"gift-box","inner_mm":[90,60,30],"outer_mm":[94,64,34],"tare_g":40,"max_load_g":400}],
 "gap_mm":0, "lining_mm":0, "bed_mm":0, "support":"none", "time_ms":1000, "work":0})";

ProblemKind kind_of(const std::string& json)
{
    const auto read = read_fit_question(json);
    return read ? ProblemKind::empty_file : read.error().kind;
}
std::string member_of(const std::string& json)
{
    const auto read = read_fit_question(json);
    return read ? std::string{"-"} : read.error().column;
}
// One block and one carton, with other members put in.
std::string with(const std::string& item, const std::string& outer = {}, const std::string& top = {})
{
    return R"({"items":[{"id":"a","shape":"block","size_mm":[1,2,3])" + item +
           R"(}],"outers":[{"id":"o","kind":"carton","inner_mm":[10,10,10])" + outer + "}]" + top + "}";
}

TEST(FitJson, ReadsTheExample)
{
    const auto read = read_fit_question(example);
    ASSERT_TRUE(read) << read.error().column;
    const fitting::Question& q = read->question;
    ASSERT_EQ(q.items.size(), 3U);
    EXPECT_EQ(std::get<Block>(q.items[0].shape).size, (Size{mm(60), mm(60), tenth_mm(905)}));
    EXPECT_EQ(q.items[0].count, 3);
    EXPECT_EQ(q.items[1].top_load, grams(500));
    EXPECT_TRUE(q.items[1].fragile);
    EXPECT_EQ(q.items[2].packed_in, "gift box S");
    EXPECT_EQ(q.items[2].content.at(0).count, 6);
    EXPECT_EQ(q.outers[2].form.kind, OuterKind::gift_box);
    EXPECT_EQ(read->time, std::chrono::milliseconds(1000));
}

TEST(FitJson, AnswersTheExampleSoundly)
{
    const auto read = read_fit_question(example);
    ASSERT_TRUE(read);
    stow::Run run({std::nullopt, 200'000});
    const Answer a = fitting::fit(read->question, run);
    ASSERT_EQ(a.verdict, fitting::Verdict::fits);
    EXPECT_TRUE(fitting::check(read->question, a.outer, a.cut_height, a.placements).empty());
    const auto json = nlohmann::json::parse(write_fit_answer(*read, a, 0.8));
    EXPECT_EQ(json["verdict"], "fits");
    EXPECT_EQ(json["time_ms"], 0.8);
    ASSERT_EQ(json["placements"].size(), 5U);
    for (const auto& p : json["placements"]) {
        if (p["item"] == "jar") {
            EXPECT_EQ(p["axis"], "z");
            EXPECT_EQ(p["size_mm"], nlohmann::json({75, 75, 95}));
        }
        if (p["item"] == "set") {
            EXPECT_EQ(p["content"].size(), 6U);
        }
    }
    EXPECT_EQ(json["refused"][0]["outer"], "gift box S");
    EXPECT_EQ(json["refused"][0]["proof"], "geometry");
}

TEST(FitJson, RoundsGoodsUpAndInnerSizesDown)
{
    const auto read =
        read_fit_question(R"({"items":[{"id":"a","shape":"block","size_mm":[10.01,10.0,0.1],"weight_g":0.11}],
      "outers":[{"id":"o","kind":"carton","inner_mm":[10.09,10.1,20],"outer_mm":[10.11,11,20.04],"max_load_g":1.19}],
      "gap_mm":0.01})");
    ASSERT_TRUE(read);
    EXPECT_EQ(std::get<Block>(read->question.items[0].shape).size, (Size{tenth_mm(101), tenth_mm(100), tenth_mm(1)}));
    EXPECT_EQ(read->question.items[0].weight, tenth_g(2));
    EXPECT_EQ(read->question.outers[0].form.inner, (Size{tenth_mm(100), tenth_mm(101), mm(20)}));
    EXPECT_EQ(read->question.outers[0].form.outer, (Size{tenth_mm(102), mm(11), tenth_mm(201)}));
    EXPECT_EQ(read->question.outers[0].max_load, tenth_g(11));
    EXPECT_EQ(read->question.gap, tenth_mm(1));
}

// 0.1 + 0.2 and the like: a decimal with one place is itself, whatever its binary neighbour is.
TEST(FitJson, EveryTenthOfAMillimetreIsExact)
{
    for (int tenths = 1; tenths <= 3000; ++tenths) {
        const std::string l = std::to_string(tenths / 10) + '.' + std::to_string(tenths % 10);
        const auto read =
            read_fit_question(R"({"items":[{"id":"a","shape":"block","size_mm":[)" + l +
                              R"(,1,1]}],"outers":[{"id":"o","kind":"carton","inner_mm":[)" + l + ",1,1]}]}");
        ASSERT_TRUE(read) << l;
        ASSERT_EQ(std::get<Block>(read->question.items[0].shape).size.x.units, tenths);
        ASSERT_EQ(read->question.outers[0].form.inner.x.units, tenths);
    }
}

TEST(FitJson, ReadsEveryKindOfOuterAndShape)
{
    const auto read = read_fit_question(R"({"items":[
      {"id":"print","shape":"sheet","size_mm":[300,200,0.4],"least_roll_mm":40,"turns":"flat"},
      {"id":"roll","shape":"roll","size_mm":[45,310]},
      {"id":"felt","shape":"soft","volume_l":0.25,"least_mm":12},
      {"id":"b","shape":"block","size_mm":[1,2,3],"turns":{"vertical":["l","h"]}}],
     "outers":[{"id":"m","kind":"mailer","inner_mm":[350,250,0],"ease_mm":[5,3],"wall_mm":0.2},
      {"id":"p","kind":"padded-mailer","inner_mm":[350,250,0],"outer_mm":[370,270,7],"wall_mm":3.5},
      {"id":"b","kind":"board-mailer","inner_mm":[350,250,20]},
      {"id":"t","kind":"tube","inner_mm":[60,330],"outer_mm":[64,340]},
      {"id":"c","kind":"carton","inner_mm":[350,250,120],"cut_heights_mm":[100,80]}],"support":"partial"})");
    ASSERT_TRUE(read) << read.error().column;
    EXPECT_EQ(std::get<Sheet>(read->question.items[0].shape).least_roll, mm(40));
    EXPECT_EQ(std::get<Roll>(read->question.items[1].shape), (Roll{mm(45), mm(310)}));
    EXPECT_EQ(std::get<Soft>(read->question.items[2].shape), (Soft{millilitres(250), mm(12)}));
    EXPECT_EQ(read->question.items[3].turns.vertical, (std::array{true, false, true}));
    EXPECT_EQ(read->question.outers[0].form.ease, (std::array{mm(5), mm(3)}));
    EXPECT_EQ(read->question.outers[3].form.inner, (Size{mm(60), mm(60), mm(330)}));
    EXPECT_EQ(read->question.outers[4].form.cut_heights.size(), 2U);
    EXPECT_EQ(read->question.support, fitting::Support::partial);
}

TEST(FitJson, NamesTheMemberThatIsWrong)
{
    EXPECT_EQ(kind_of(with("")), ProblemKind::empty_file); // sound as it is
    EXPECT_EQ(kind_of(with(R"(,"colour":"red")")), ProblemKind::unknown_member);
    EXPECT_EQ(member_of(with(R"(,"colour":"red")")), "items[0].colour");
    EXPECT_EQ(member_of(with("", "", R"(,"speed":1)")), "speed");
    EXPECT_EQ(kind_of(with(R"(,"count":0)")), ProblemKind::not_positive);
    EXPECT_EQ(kind_of(with(R"(,"count":1.5)")), ProblemKind::out_of_range);
    EXPECT_EQ(kind_of(with(R"(,"count":501)")), ProblemKind::out_of_range);
    EXPECT_EQ(kind_of(with(R"(,"weight_g":-1)")), ProblemKind::not_positive);
    EXPECT_EQ(kind_of(with(R"(,"weight_g":"10")")), ProblemKind::not_a_number);
    EXPECT_EQ(kind_of(with(R"(,"turns":"sideways")")), ProblemKind::unknown_word);
    EXPECT_EQ(kind_of(with(R"(,"turns":{"vertical":[]})")), ProblemKind::missing_value);
    EXPECT_EQ(kind_of(with(R"(,"turns":{"vertical":["l","l"]})")), ProblemKind::duplicate);
    EXPECT_EQ(kind_of(with(R"(,"bow_mm":3)")), ProblemKind::unknown_member);
    EXPECT_EQ(kind_of(with("", R"(,"ease_mm":[1,1])")), ProblemKind::unknown_member);
    EXPECT_EQ(kind_of(with("", R"(,"cut_heights_mm":[11])")), ProblemKind::out_of_range);
    EXPECT_EQ(member_of(with("", R"(,"cut_heights_mm":[9,11])")), "outers[0].cut_heights_mm[1]");
    EXPECT_EQ(kind_of(with("", "", R"(,"gap_mm":-0.1)")), ProblemKind::not_positive);
    EXPECT_EQ(kind_of(with("", "", R"(,"gap_mm":1e300)")), ProblemKind::out_of_range);
    EXPECT_EQ(kind_of(with("", "", R"(,"support":"some")")), ProblemKind::unknown_word);
    EXPECT_EQ(kind_of(with("", "", R"(,"gap_mm":1,"gap_mm":2)")), ProblemKind::duplicate);
}

TEST(FitJson, RefusesSizesThatAreNone)
{
    const auto size = [](const std::string& s) {
        return R"({"items":[{"id":"a","shape":"block","size_mm":)" + s +
               R"(}],"outers":[{"id":"o","kind":"carton","inner_mm":[10,10,10]}]})";
    };
    EXPECT_EQ(kind_of(size("[1,2,3]")), ProblemKind::empty_file);
    EXPECT_EQ(kind_of(size("[1,2,0]")), ProblemKind::not_positive);
    EXPECT_EQ(member_of(size("[1,2,0]")), "items[0].size_mm[2]");
    EXPECT_EQ(kind_of(size("[1,-2,3]")), ProblemKind::not_positive);
    EXPECT_EQ(kind_of(size("[1,2]")), ProblemKind::out_of_range);
    EXPECT_EQ(kind_of(size("[1,2,3,4]")), ProblemKind::out_of_range);
    EXPECT_EQ(kind_of(size("[1,2,null]")), ProblemKind::not_a_number);
    EXPECT_EQ(kind_of(size("[1,2,NaN]")), ProblemKind::bad_json);
    EXPECT_EQ(kind_of(size("[1,2,1e999]")), ProblemKind::bad_json);
    EXPECT_EQ(kind_of(size("7")), ProblemKind::bad_json);
}

TEST(FitJson, RefusesDoubleIdsUnknownOutersAndTooMuch)
{
    EXPECT_EQ(
        member_of(
            R"({"items":[{"id":"a","shape":"roll","size_mm":[1,2]},{"id":"a","shape":"roll","size_mm":[1,2]}],"outers":[]})"),
        "items[1].id");
    EXPECT_EQ(kind_of(R"({"items":[{"id":"a","shape":"inside","packed_in":"x","items":[]}],"outers":[]})"),
              ProblemKind::unknown_code);
    EXPECT_EQ(kind_of(R"({"items":[{"id":"a","count":251,"shape":"roll","size_mm":[1,2]},
      {"id":"b","count":250,"shape":"roll","size_mm":[1,2]}],"outers":[]})"),
              ProblemKind::out_of_range);
    EXPECT_EQ(kind_of("{"), ProblemKind::bad_json);
    EXPECT_EQ(kind_of("[]"), ProblemKind::bad_json);
    EXPECT_EQ(kind_of("{}"), ProblemKind::missing_value);
    EXPECT_EQ(kind_of(std::string((8U << 20U) + 1, ' ')), ProblemKind::file_too_large);
    EXPECT_EQ(kind_of(""), ProblemKind::empty_file);
    std::string deep = R"({"id":"n","shape":"roll","size_mm":[1,2]})";
    for (int i = 0; i < 12; ++i) deep = R"({"id":"n","shape":"inside","packed_in":"o","items":[)" + deep + "]}";
    EXPECT_EQ(kind_of(R"({"items":[)" + deep + R"(],"outers":[{"id":"o","kind":"carton","inner_mm":[1,1,1]}]})"),
              ProblemKind::out_of_range);
}

TEST(FitJson, WritesTenthsOfAMillimetreExactly)
{
    FitRequest request;
    Answer a;
    a.verdict = fitting::Verdict::fits;
    a.outer = "o";
    for (int tenths = 0; tenths < 3000; ++tenths) {
        fitting::Placement p;
        p.item = "a";
        p.at = {Length{tenths}, {}, {}};
        a.placements = {p};
        const std::string text = write_fit_answer(request, a, 1);
        std::string expected = "\"at_mm\":[" + std::to_string(tenths / 10);
        if (tenths % 10 != 0) expected += '.' + std::to_string(tenths % 10);
        ASSERT_THAT(text, ::testing::HasSubstr(expected + ",0,0]"));
    }
}

} // namespace
} // namespace stow::intake
