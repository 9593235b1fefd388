#include "core/shop/customs.h"

#include <gtest/gtest.h>

namespace stow::shop {
namespace {

Address at(const char* country, const char* postcode = "")
{
    Address a;
    a.country = country;
    a.postcode = postcode;
    return a;
}

const CustomsRules rules = first_dispatch().customs;
const Address home = at("DK", "5700");

TEST(Border, InsideTheUnionThereIsNone)
{
    EXPECT_EQ(border_between(rules, home, at("DE", "20095")), Border::none);
    EXPECT_EQ(border_between(rules, home, at("DK", "1050")), Border::none);
}

TEST(Border, OutsideThereIsOne)
{
    EXPECT_EQ(border_between(rules, home, at("NO", "0150")), Border::customs);
    EXPECT_EQ(border_between(rules, at("NO", "0150"), at("NO", "5003")), Border::none);
    EXPECT_EQ(border_between(rules, at("CH"), at("NO")), Border::customs);
}

// Special places from memory; they are hers to edit. Checked here is that the list is followed.
TEST(Border, PartsOfACountryByTheirPostcode)
{
    EXPECT_EQ(border_between(rules, home, at("ES", "28001")), Border::none);
    EXPECT_EQ(border_between(rules, home, at("ES", "35001")), Border::tax_only);
    EXPECT_EQ(border_between(rules, home, at("ES", "51001")), Border::customs);
    EXPECT_EQ(border_between(rules, home, at("DE", "27498")), Border::customs);
    EXPECT_EQ(border_between(rules, home, at("GB", "BT1 5GS")), Border::none);
    EXPECT_EQ(border_between(rules, home, at("GB", "M2 5BQ")), Border::customs);
    CustomsRules edited = rules;
    edited.places = {{"ES", "35100", "35199", "a free port", false, false},
                     {"ES", "35", "35", "the islands", true, true}};
    EXPECT_EQ(border_between(edited, home, at("ES", "35150")), Border::customs) << "the longer rule wins";
    EXPECT_EQ(border_between(edited, home, at("ES", "35200")), Border::none);
}

// Form text in print (India Post): over 300 SDR a CN 23; Eswatini Post prints at or above. So the tie is a setting.
TEST(Form, ByValueWeightAndKindOfPost)
{
    CustomsRules r = rules;
    r.cn22_up_to = {30000, {}};
    const auto form = [&](std::int64_t cents, Weight gross, bool parcel = false) {
        return form_for(r, Border::customs, parcel, Money{cents, {}}, gross);
    };
    EXPECT_EQ(form(30000, grams(500)), CustomsForm::cn22);
    EXPECT_EQ(form(30001, grams(500)), CustomsForm::cn23);
    r.limit_included = false;
    EXPECT_EQ(form(30000, grams(500)), CustomsForm::cn23);
    EXPECT_EQ(form(100, grams(2000)), CustomsForm::cn22);
    EXPECT_EQ(form(100, grams(2001)), CustomsForm::cn23) << "letter post ends at 2 kg";
    EXPECT_EQ(form(100, grams(500), true), CustomsForm::cn23) << "parcels always";
    EXPECT_EQ(form_for(r, Border::none, true, Money{100, {}}, grams(500)), CustomsForm::none);
    EXPECT_EQ(form_for(r, Border::customs, false, std::nullopt, grams(500)), CustomsForm::cn23);
    EXPECT_EQ(form_for(r, Border::tax_only, false, Money{100, {}}, grams(500)), CustomsForm::cn22);
}

TEST(HsCode, HasItsShape) // chapters 01 to 97, 77 reserved (from memory)
{
    for (const char* good : {"321590", "3215.90", "3215 90 70", "970110"}) EXPECT_TRUE(hs_code_ok(good)) << good;
    for (const char* bad : {"", "32159", "32159A", "005590", "770110", "980110", "32159070123"}) {
        EXPECT_FALSE(hs_code_ok(bad)) << bad;
    }
}

TEST(CustomsWords, SomeAreTooVague)
{
    EXPECT_TRUE(vague_words("Samples"));
    EXPECT_TRUE(vague_words("spare parts "));
    EXPECT_FALSE(vague_words("men's cotton shirts"));
}

} // namespace
} // namespace stow::shop
