// Our own tables: goods, supplies, wrappings, house rules, the house, counts.
#include "core/intake/goods_csv.h"
#include "core/intake/house_csv.h"
#include "core/intake/matches_csv.h"
#include "core/intake/packing_csv.h"
#include "core/intake/stock_csv.h"
#include "core/intake/supplies_csv.h"
#include "core/intake/table.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <sstream>

namespace stow::intake {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;
using testing::SizeIs;

Csv table(const std::string& text)
{
    std::istringstream in(text);
    return read_csv(in, "table.csv");
}

shop::Cupboard cupboard()
{
    shop::Cupboard cupboard;
    cupboard.goods[{"NIB"}];
    cupboard.wrappings[{"TISSUE"}];
    cupboard.supplies[{"CARD"}];
    cupboard.supplies[{"GIFT"}].form = OuterForm{};
    cupboard.supplies[{"BUBBLE"}].unit = shop::Unit::metre;
    return cupboard;
}

// The only problem of a table, in row 2.
template <class T>
Problem only_problem(const Taken<T>& taken)
{
    EXPECT_THAT(taken.rows, IsEmpty());
    EXPECT_THAT(taken.problems, SizeIs(1));
    Problem problem = taken.problems.empty() ? Problem{} : taken.problems[0];
    EXPECT_EQ(problem.row, 2U);
    EXPECT_TRUE(problem.stops);
    return problem;
}

// A sound good as columns and cells; some replaced, some added.
Taken<shop::Good> goods_with(std::map<std::string, std::string> changes)
{
    std::map<std::string, std::string> cells{{"code", "INK"},     {"name", "Ink"},      {"shape", "block"},
                                             {"length_mm", "60"}, {"width_mm", "50.5"}, {"height_mm", "90.41"},
                                             {"weight_g", "210"}};
    for (const auto& [column, value] : changes) cells[column] = value;
    std::vector<std::string> headings, values;
    for (const auto& [column, value] : cells) {
        headings.push_back(column);
        values.push_back(value);
    }
    return read_goods(table(csv_line(headings) + csv_line(values)), cupboard());
}

TEST(Goods, EveryColumnLandsInItsPlace)
{
    const auto taken = goods_with({{"spread_g", "2.5"},
                                   {"turns", "upright"},
                                   {"fragile", "yes"},
                                   {"top_load_g", "1500"},
                                   {"cushion_mm", "12"},
                                   {"liquid", "yes"},
                                   {"softens_above_c", "55"},
                                   {"restriction", "ask carrier"},
                                   {"wrapping", "TISSUE"},
                                   {"packaging_material", "glass"},
                                   {"packaging_g", "78"},
                                   {"shelf", "A3"},
                                   {"pieces", "14"},
                                   {"lowest", "6"},
                                   {"gtin", "4006381333931"},
                                   {"price", "11.90"},
                                   {"customs_words", "writing ink"},
                                   {"hs_code", "321590"},
                                   {"origin", "DK"}});
    EXPECT_THAT(taken.problems, IsEmpty());
    ASSERT_THAT(taken.rows, SizeIs(1));
    const shop::Good& good = taken.rows[0];
    EXPECT_EQ(good.shape, Shape(Block{{mm(60), tenth_mm(505), tenth_mm(905)}})) << "finer than 0.1 mm goes up";
    EXPECT_EQ(good.weight, (shop::WeightEstimate{grams(210), tenth_g(25)}));
    EXPECT_EQ(good.turns.rule, Turns::Rule::upright);
    EXPECT_TRUE(good.fragile);
    EXPECT_EQ(good.top_load, grams(1500));
    EXPECT_EQ(good.cushion, mm(12));
    EXPECT_TRUE(good.liquid);
    EXPECT_EQ(good.softens_above_c, 55);
    EXPECT_EQ(good.restriction, shop::Restriction::ask_carrier);
    EXPECT_EQ(good.wrapping.text, "TISSUE");
    EXPECT_EQ(good.own_packaging, (shop::MaterialShare{shop::Material::glass, grams(78)}));
    EXPECT_EQ(good.shelf, "A3");
    EXPECT_EQ(good.pieces, 14);
    EXPECT_EQ(good.lowest, 6);
    EXPECT_EQ(good.gtin, "4006381333931");
    EXPECT_EQ(to_text(*good.price), "11.90 EUR");
    EXPECT_EQ(good.hs_code, "321590");
    EXPECT_EQ(good.origin, "DK");
}

TEST(Goods, TheShapes)
{
    const auto shape = [](std::map<std::string, std::string> changes) {
        auto taken = goods_with(std::move(changes));
        EXPECT_THAT(taken.problems, IsEmpty());
        return taken.rows.empty() ? Shape{} : taken.rows[0].shape;
    };
    EXPECT_EQ(shape({{"shape", "cylinder"}, {"diameter_mm", "42"}}), Shape(Cylinder{mm(42), tenth_mm(905)}));
    EXPECT_EQ(shape({{"shape", "roll"}, {"diameter_mm", "42"}}), Shape(Roll{mm(42), mm(60)}));
    EXPECT_EQ(shape({{"shape", "sheet"}, {"thickness_mm", "0.3"}, {"least_roll_mm", "40"}}),
              Shape(Sheet{mm(60), tenth_mm(505), tenth_mm(3), mm(40)}));
    EXPECT_EQ(shape({{"shape", "soft"}, {"volume_ml", "85"}, {"least_mm", "6"}}), Shape(Soft{millilitres(85), mm(6)}));
}

TEST(Goods, ASpreadThatIsNotGivenIsAssumed)
{
    EXPECT_EQ(goods_with({}).rows.at(0).weight.spread, tenth_g(42)) << "2 % of 210 g";
    EXPECT_EQ(goods_with({{"weight_g", "10"}}).rows.at(0).weight.spread, tenth_g(5)) << "at least 0.5 g";
}

TEST(Goods, EachFaultIsNamed)
{
    const auto fault = [](const std::string& column, const std::string& value) {
        const Problem problem = only_problem(goods_with({{column, value}}));
        EXPECT_EQ(problem.column, column);
        EXPECT_EQ(problem.value, value);
        return problem.kind;
    };
    EXPECT_EQ(fault("code", ""), ProblemKind::missing_value);
    EXPECT_EQ(fault("length_mm", ""), ProblemKind::missing_value);
    EXPECT_EQ(fault("weight_g", ""), ProblemKind::missing_value);
    EXPECT_EQ(fault("weight_g", "-210"), ProblemKind::not_positive);
    EXPECT_EQ(fault("length_mm", "0"), ProblemKind::not_positive);
    EXPECT_EQ(fault("length_mm", "wide"), ProblemKind::not_a_number);
    EXPECT_EQ(fault("length_mm", "10000.1"), ProblemKind::out_of_range);
    EXPECT_EQ(fault("shape", "cube"), ProblemKind::unknown_word);
    EXPECT_EQ(fault("turns", "sideways"), ProblemKind::unknown_word);
    EXPECT_EQ(fault("fragile", "very"), ProblemKind::unknown_word);
    EXPECT_EQ(fault("restriction", "bad"), ProblemKind::unknown_word);
    EXPECT_EQ(fault("wrapping", "SILK"), ProblemKind::unknown_code);
    EXPECT_EQ(fault("gift_box", "CARD"), ProblemKind::unknown_code) << "not an outer";
    EXPECT_EQ(fault("gtin", "4006381333932"), ProblemKind::bad_check_digit);
    EXPECT_EQ(fault("currency", "EUX"), ProblemKind::unknown_currency);
    EXPECT_EQ(fault("price", "-1"), ProblemKind::not_positive);
    EXPECT_EQ(fault("hs_code", "3215"), ProblemKind::out_of_range);
    EXPECT_EQ(fault("origin", "UK"), ProblemKind::unknown_country);
    EXPECT_EQ(fault("pieces", "1.5"), ProblemKind::not_a_number);
    EXPECT_EQ(fault("parts", "0 NIB"), ProblemKind::not_a_number);
}

TEST(Goods, ASetIsMadeOfKnownGoods)
{
    const Csv csv = table("code,name,shape,weight_g,length_mm,width_mm,height_mm,parts,gift_box\n"
                          "SET,Set,,,,,,2 INK + NIB,GIFT\n"
                          "INK,Ink,block,200,5,5,9,,\n"
                          "ODD,Odd,,,,,,INK + WAX,\n"
                          "SELF,Self,,,,,,SELF,\n");
    const auto taken = read_goods(csv, cupboard());
    ASSERT_THAT(taken.rows, SizeIs(2));
    EXPECT_THAT(taken.rows[0].parts, ElementsAre(shop::SetPart{{"INK"}, 2}, shop::SetPart{{"NIB"}, 1}));
    EXPECT_EQ(taken.rows[0].gift_box.text, "GIFT");
    ASSERT_THAT(taken.problems, SizeIs(2));
    EXPECT_EQ(taken.problems[0].kind, ProblemKind::unknown_code);
    EXPECT_EQ(taken.problems[0].value, "WAX");
    EXPECT_EQ(taken.problems[1].value, "SELF");
}

TEST(Goods, TheFirstOfTwoIsKept)
{
    const auto taken = read_goods(table("code,name,shape,weight_g,length_mm,width_mm,height_mm\n"
                                        "INK,First,block,200,5,5,9\nINK,Second,block,200,5,5,9\n"),
                                  cupboard());
    ASSERT_THAT(taken.rows, SizeIs(1));
    EXPECT_EQ(taken.rows[0].name, "First");
    ASSERT_THAT(taken.problems, SizeIs(1));
    EXPECT_EQ(taken.problems[0].kind, ProblemKind::duplicate);
    EXPECT_EQ(taken.problems[0].row, 3U);
}

TEST(Goods, ColumnsMissingAndUnknown)
{
    const auto missing = read_goods(table("code,name,shape\nINK,Ink,block\n"), cupboard());
    EXPECT_THAT(missing.rows, IsEmpty());
    ASSERT_THAT(missing.problems, SizeIs(1));
    EXPECT_EQ(missing.problems[0].kind, ProblemKind::missing_column);
    EXPECT_EQ(missing.problems[0].column, "weight_g");

    const auto unknown = goods_with({{"colour", "blue"}});
    EXPECT_THAT(unknown.rows, SizeIs(1));
    ASSERT_THAT(unknown.problems, SizeIs(1));
    EXPECT_EQ(unknown.problems[0].kind, ProblemKind::unknown_member);
    EXPECT_EQ(unknown.problems[0].column, "colour");
    EXPECT_FALSE(unknown.problems[0].stops);
}

TEST(Goods, UnreadableFilesKeepTheirProblem)
{
    using namespace std::string_literals;
    for (const auto& [text, kind] :
         {std::pair{""s, ProblemKind::empty_file}, std::pair{"code\0name"s, ProblemKind::binary_file},
          std::pair{std::string(2 << 20, 'x'), ProblemKind::line_too_long}}) {
        const auto taken = read_goods(table(text), cupboard());
        EXPECT_THAT(taken.rows, IsEmpty());
        ASSERT_THAT(taken.problems, SizeIs(1));
        EXPECT_EQ(taken.problems[0].kind, kind);
    }
}

TEST(Goods, SemicolonsCommasAndCapitalsInHeadings)
{
    const auto taken = read_goods(
        table("Code;Name;Shape;Weight_g;Length_mm;Width_mm;Height_mm\nINK;Ink;block;210,5;60;50,5;9\n"), cupboard());
    ASSERT_THAT(taken.rows, SizeIs(1));
    EXPECT_EQ(taken.rows[0].weight.mean, tenth_g(2105));
}

Taken<shop::Supply> supplies(const std::string& columns, const std::string& cells)
{
    return read_supplies(table("code,name,kind,weight_g," + columns + "\nX,Thing,outer,90," + cells + "\n"), {});
}

TEST(Supplies, TheKindsOfOuters)
{
    const std::string sizes =
        "outer_kind,inner_length_mm,inner_width_mm,inner_height_mm,outer_length_mm,outer_width_mm,"
        "outer_height_mm,cut_heights_mm,wall_mm,ease_length_mm,ease_width_mm,max_load_g";
    const auto form = [&](const std::string& cells) {
        auto taken = supplies(sizes, cells);
        EXPECT_THAT(taken.problems, IsEmpty());
        return taken.rows.empty() ? OuterForm{} : *taken.rows[0].form;
    };
    const OuterForm carton = form("carton,200.09,150,100,206,156.01,112,60 80.5,,,,5000");
    EXPECT_EQ(carton.inner, (Size{mm(200), mm(150), mm(100)})) << "inner sizes go down";
    EXPECT_EQ(carton.outer, (Size{mm(206), tenth_mm(1561), mm(112)})) << "outer sizes go up";
    EXPECT_THAT(carton.cut_heights, ElementsAre(tenth_mm(805), mm(60)));
    const OuterForm padded = form("padded-mailer,210,150,,240,175,7,,3.5,4,5,1000");
    EXPECT_EQ(padded.inner, (Size{mm(210), mm(150), mm(0)}));
    EXPECT_EQ(padded.wall, tenth_mm(35));
    EXPECT_EQ(padded.ease, (std::array{mm(4), mm(5)}));
    EXPECT_EQ(form("board-mailer,310,225,20,325,240,4,,1.5,,,2000").inner.z, mm(20));
    auto tube = supplies("outer_kind,inner_diameter_mm,inner_length_mm,outer_diameter_mm,outer_length_mm",
                         "tube,60,430,65,444");
    ASSERT_THAT(tube.rows, SizeIs(1));
    EXPECT_EQ(tube.rows[0].form->inner, (Size{mm(60), mm(60), mm(430)}));
    EXPECT_EQ(tube.rows[0].form->outer, (Size{mm(65), mm(65), mm(444)}));
}

TEST(Supplies, EachFaultIsNamed)
{
    const std::string sizes =
        "outer_kind,inner_length_mm,inner_width_mm,inner_height_mm,outer_length_mm,outer_width_mm,"
        "outer_height_mm,cut_heights_mm,cost,currency,unit,material";
    const auto fault = [&](const std::string& cells) { return only_problem(supplies(sizes, cells)); };
    EXPECT_EQ(fault("crate,200,150,100,206,156,112,,,,,").kind, ProblemKind::unknown_word);
    EXPECT_EQ(fault(",200,150,100,206,156,112,,,,,").kind, ProblemKind::missing_value);
    EXPECT_EQ(fault("carton,200,150,,206,156,112,,,,,").column, "inner_height_mm");
    const Problem thin = fault("carton,200,150,100,199,156,112,,,,,");
    EXPECT_EQ(thin.kind, ProblemKind::out_of_range);
    EXPECT_EQ(thin.column, "outer_length_mm");
    EXPECT_EQ(thin.detail, "≥ 200.0 mm");
    EXPECT_EQ(fault("carton,200,150,100,206,156,112,100,,,,").kind, ProblemKind::out_of_range) << "no cut at all";
    EXPECT_EQ(fault("carton,200,150,100,206,156,112,low,,,,").kind, ProblemKind::not_a_number);
    EXPECT_EQ(fault("carton,200,150,100,206,156,112,,1.234,,,").kind, ProblemKind::not_a_number);
    EXPECT_EQ(fault("carton,200,150,100,206,156,112,,1,EURO,,").kind, ProblemKind::unknown_currency);
    EXPECT_EQ(fault("carton,200,150,100,206,156,112,,1,,dozen,").kind, ProblemKind::unknown_word);
    EXPECT_EQ(fault("carton,200,150,100,206,156,112,,1,,,straw").kind, ProblemKind::unknown_word);
}

TEST(Supplies, BoxesOfHerOwnPaperAndBoxesUsedAgain)
{
    const auto taken = read_supplies(
        table("code,name,kind,outer_kind,inner_length_mm,inner_width_mm,inner_height_mm,outer_length_mm,outer_width_mm,"
              "outer_height_mm,weight_g,made_from,takes,reused\n"
              "FOLD-S,Folded,outer,gift-box,100,70,40,101,71,41,14,SHEET-A3,0.5,\n"
              "OLD-K,From a supplier,outer,carton,200,150,100,206,156,112,120,,,yes\n"),
        {});
    EXPECT_THAT(taken.problems, IsEmpty());
    ASSERT_THAT(taken.rows, SizeIs(2));
    EXPECT_EQ(taken.rows[0].made_from.text, "SHEET-A3");
    EXPECT_EQ(taken.rows[0].takes.thousandths, 500);
    EXPECT_FALSE(taken.rows[0].reused);
    EXPECT_TRUE(taken.rows[1].made_from.empty());
    EXPECT_EQ(taken.rows[1].takes.thousandths, 1000);
    EXPECT_TRUE(taken.rows[1].reused);
}

TEST(Supplies, AmountsAreInTheirUnit)
{
    const auto taken = read_supplies(table("code,name,kind,unit,weight_g,cost,pack,on_hand,reorder_at,lead_days\n"
                                           "TAPE,Tape,tape,m,3.6,0.06,50,120.5,49.999,6\n"),
                                     *Currency::from("DKK"));
    ASSERT_THAT(taken.rows, SizeIs(1));
    EXPECT_EQ(taken.rows[0].unit, shop::Unit::metre);
    EXPECT_EQ(taken.rows[0].pack.thousandths, 50'000);
    EXPECT_EQ(taken.rows[0].on_hand.thousandths, 120'500);
    EXPECT_EQ(taken.rows[0].reorder_at.thousandths, 49'999);
    EXPECT_EQ(to_text(taken.rows[0].cost), "0.06 DKK");
    const auto card = read_supplies(table("code,name,kind,weight_g,sheet_length_mm,sheet_width_mm,sheet_thickness_mm,"
                                          "least_roll_mm\nCARD,Card,insert,4,105,74,0.4,55\n"),
                                    {});
    ASSERT_THAT(card.rows, SizeIs(1));
    EXPECT_EQ(card.rows[0].sheet, (Sheet{mm(105), mm(74), tenth_mm(4), mm(55)}));
    const auto insert = read_supplies(table("code,name,kind,weight_g\nCARD,Card,insert,4\n"), {});
    EXPECT_EQ(only_problem(insert).column, "sheet_length_mm") << "an insert must fit, so its size is needed";
}

TEST(Wrappings, UsesAreAmountsOfSupplies)
{
    const auto read = [](const std::string& uses) {
        return read_wrappings(
            table("code,name,growth_length_mm,cushion_mm,uses,weight_g\nW,Wrap,20,10," + uses + ",9\n"), cupboard());
    };
    const auto taken = read("0.35 BUBBLE + CARD");
    ASSERT_THAT(taken.rows, SizeIs(1));
    EXPECT_EQ(taken.rows[0].growth, (Size{mm(20), mm(0), mm(0)}));
    EXPECT_EQ(taken.rows[0].cushion, mm(10));
    ASSERT_THAT(taken.rows[0].uses, SizeIs(2));
    EXPECT_EQ(taken.rows[0].uses[0].amount.thousandths, 350);
    EXPECT_EQ(taken.rows[0].uses[1].supply.text, "CARD");
    EXPECT_EQ(only_problem(read("0.35 SILK")).value, "SILK");
    EXPECT_EQ(only_problem(read("some BUBBLE")).kind, ProblemKind::not_a_number);
    EXPECT_EQ(only_problem(read("CARD +")).kind, ProblemKind::not_a_number);
}

TEST(HouseRules, EachConditionNeedsWhatItNames)
{
    const auto read = [](const std::string& cells) {
        return read_house_rules(table("when,good,from,insert,count\n" + cells + "\n"), cupboard());
    };
    ASSERT_THAT(read("good,NIB,,CARD,2").rows, SizeIs(1));
    EXPECT_EQ(read("good,NIB,,CARD,2").rows[0].count, 2);
    EXPECT_EQ(to_text(*read("value from,,60,CARD,").rows.at(0).from), "60.00 EUR");
    EXPECT_EQ(only_problem(read("good,,,CARD,")).kind, ProblemKind::missing_value);
    EXPECT_EQ(only_problem(read("good,GONE,,CARD,")).kind, ProblemKind::unknown_code);
    EXPECT_EQ(only_problem(read("value from,,,CARD,")).column, "from");
    EXPECT_EQ(only_problem(read("gift,,,GONE,")).kind, ProblemKind::unknown_code);
    EXPECT_EQ(only_problem(read("on Sundays,,,CARD,")).kind, ProblemKind::unknown_word);
    EXPECT_EQ(only_problem(read("gift,,,CARD,0")).kind, ProblemKind::not_positive);
}

TEST(House, SettingsOverDefaults)
{
    const auto taken = read_house(table("setting,value\nname,Ink Shop\nstreet_2,Loft\nstreet,Quay 1\ncountry,DK\n"
                                        "currency,DKK\ntrays,8\nease_mm,1.5\nfiller,BUBBLE\nscale_step_g,0.5\n"
                                        "service_percent,98\nforget_months,24\npaper,letter\n"
                                        "margin_mm,12\nlabel_form,a4x6\nlogo,/home/ada/gull.png\nblack_only,yes\n"),
                                  cupboard());
    EXPECT_THAT(taken.problems, IsEmpty());
    ASSERT_THAT(taken.rows, SizeIs(1));
    const shop::House& house = taken.rows[0];
    EXPECT_THAT(house.address.street, ElementsAre("Quay 1", "Loft"));
    EXPECT_EQ(house.currency.code(), "DKK");
    EXPECT_EQ(house.trays, 8);
    EXPECT_EQ(house.ease, tenth_mm(15));
    EXPECT_EQ(house.filler.text, "BUBBLE");
    EXPECT_EQ(house.scale_step, tenth_g(5));
    EXPECT_EQ(house.service_percent, 98);
    EXPECT_EQ(house.forget_months, 24);
    EXPECT_TRUE(house.black_only);
    EXPECT_EQ(house.paper, shop::PaperSize::letter);
    EXPECT_EQ(house.margin, mm(12));
    EXPECT_EQ(house.label_form, shop::LabelForm::a4_of_6);
    EXPECT_EQ(house.logo, "/home/ada/gull.png");
    EXPECT_EQ(house.rattle, mm(15)) << "not in the file: the default stays";
}

TEST(House, AFaultySettingLeavesTheOthers)
{
    const auto taken = read_house(table("setting,value\ntrays,many\nmood,good\ncountry,Denmark\nfiller,GONE\n"
                                        "contact,a@b\ncontact,c@d\n"),
                                  cupboard());
    ASSERT_THAT(taken.rows, SizeIs(1));
    EXPECT_EQ(taken.rows[0].contact, "a@b");
    EXPECT_EQ(taken.rows[0].trays, 6);
    EXPECT_TRUE(taken.rows[0].address.country.empty());
    std::vector<ProblemKind> kinds;
    for (const Problem& p : taken.problems) kinds.push_back(p.kind);
    EXPECT_THAT(kinds, ElementsAre(ProblemKind::not_a_number, ProblemKind::unknown_member, ProblemKind::unknown_country,
                                   ProblemKind::unknown_code, ProblemKind::duplicate));
}

TEST(Stock, GoodsAndSuppliesByCode)
{
    shop::Cupboard known = cupboard();
    known.goods[{"CARD"}]; // both have it
    const auto taken = read_stock(table("code,counted,kind\nNIB,7,\nBUBBLE,12.5,\nCARD,3,good\nCARD,4,supply\nCARD,5,\n"
                                        "GONE,1,\nNIB,8,\nNIB,1.5,good\nBUBBLE,-1,supply\n"),
                                  known);
    ASSERT_THAT(taken.rows, SizeIs(4));
    EXPECT_EQ(std::get<shop::GoodCode>(taken.rows[0].what).text, "NIB");
    EXPECT_EQ(taken.rows[0].found, shop::pieces(7));
    EXPECT_EQ(std::get<shop::SupplyCode>(taken.rows[1].what).text, "BUBBLE");
    EXPECT_EQ(taken.rows[1].found.thousandths, 12'500);
    EXPECT_TRUE(std::holds_alternative<shop::GoodCode>(taken.rows[2].what));
    EXPECT_TRUE(std::holds_alternative<shop::SupplyCode>(taken.rows[3].what));
    std::vector<ProblemKind> kinds;
    for (const Problem& p : taken.problems) kinds.push_back(p.kind);
    EXPECT_THAT(kinds, ElementsAre(ProblemKind::missing_value, ProblemKind::unknown_code, ProblemKind::duplicate,
                                   ProblemKind::not_a_number, ProblemKind::not_positive));
}

TEST(MatchTable, NeedsKnownGoodsAndNamesEachTitleOnce)
{
    const auto taken = read_matches(table("shop,title,variant,good\nStall,Nibs,fine,NIB\nStall,Nibs,fine,NIB\n"
                                          "Stall,Ink,,GONE\n,Ink,,NIB\n"),
                                    cupboard().goods);
    ASSERT_THAT(taken.rows, SizeIs(1));
    EXPECT_EQ(taken.rows[0].called, (TitleKey{"Stall", "Nibs", "fine"}));
    std::vector<ProblemKind> kinds;
    for (const Problem& p : taken.problems) kinds.push_back(p.kind);
    EXPECT_THAT(kinds, ElementsAre(ProblemKind::duplicate, ProblemKind::unknown_code, ProblemKind::missing_value));
}

TEST(CountedCodes, AmountsAndCodes)
{
    const auto codes = counted_codes("2 INK + NIB+0,5 TAPE", ',');
    ASSERT_TRUE(codes);
    ASSERT_THAT(*codes, SizeIs(3));
    EXPECT_EQ((*codes)[0].thousandths, 2000);
    EXPECT_EQ((*codes)[1].code, "NIB");
    EXPECT_EQ((*codes)[2].thousandths, 500);
    EXPECT_THAT(*counted_codes("", '.'), IsEmpty());
    for (const char* text : {"+", "INK +", "0 INK", "-1 INK", "two INK", "2 INK extra", "INK ++ NIB"})
        EXPECT_FALSE(counted_codes(text, '.')) << text;
}

} // namespace
} // namespace stow::intake
