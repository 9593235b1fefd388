#include "core/papers/address.h"
#include "core/papers/countries.h"
#include "core/papers/words.h"

#include <gtest/gtest.h>

namespace stow::papers {
namespace {

const Words english(Language::english), german(Language::german);

TEST(Words, HaveATextForEveryKeyInEveryLanguage)
{
    for (int i = 0; i < static_cast<int>(Word::how_many); ++i) {
        const auto word = static_cast<Word>(i);
        EXPECT_FALSE(english(word).empty()) << i;
        EXPECT_FALSE(german(word).empty()) << i;
        const auto gaps = [](std::string_view text) {
            int count = 0;
            for (std::size_t at = text.find("{}"); at != std::string_view::npos; at = text.find("{}", at + 2)) ++count;
            return count;
        };
        for (const Language language : all_languages) {
            EXPECT_EQ(gaps(english(word)), gaps(Words(language)(word))) << english(word);
        }
    }
    EXPECT_EQ(english(Word::packing_slip), "Packing slip");
    EXPECT_EQ(german(Word::packing_slip), "Lieferschein");
    EXPECT_EQ(german.with(Word::part, "2", "3"), "Sendung 2 von 3");
}

TEST(Words, WriteDatesMoneyAndWeightsAsTheLanguageDoes)
{
    const Date day = std::chrono::sys_days(std::chrono::year(2026) / 3 / 5);
    EXPECT_EQ(english.date(day), "5 March 2026");
    EXPECT_EQ(german.date(day), "5. März 2026");
    EXPECT_EQ(english.money({123456, Currency()}), "1,234.56 EUR");
    EXPECT_EQ(german.money({123456, Currency()}), "1.234,56 EUR");
    EXPECT_EQ(german.money({-99, Currency()}), "-0,99 EUR");
    EXPECT_EQ(german.money({-123456789, Currency()}), "-1.234.567,89 EUR");
    EXPECT_EQ(english.money({1500, *Currency::from("JPY")}), "1,500 JPY");
    EXPECT_EQ(english.weight(tenth_g(8124)), "812 g");
    EXPECT_EQ(english.weight(tenth_g(9996)), "1.00 kg"); // 999.6 g is no longer "1000 g"
    EXPECT_EQ(german.weight(grams(1254)), "1,25 kg");
    EXPECT_EQ(english.weight(shop::WeightEstimate{grams(812), grams(14)}), "812 ± 28 g");
}

// Month names, decimal and grouping marks as the Unicode CLDR has them for fr, it and es (from memory).
TEST(Words, WriteToBuyersAsTheirLanguageDoes)
{
    const Date day = std::chrono::sys_days(std::chrono::year(2026) / 8 / 1);
    const Words french(Language::french), italian(Language::italian), spanish(Language::spanish);
    EXPECT_EQ(french.date(day), "1er août 2026");
    EXPECT_EQ(french.date(day + std::chrono::days(1)), "2 août 2026");
    EXPECT_EQ(italian.date(day), "1 agosto 2026");
    EXPECT_EQ(spanish.date(day), "1 de agosto de 2026");
    EXPECT_EQ(french.money({123456, Currency()}), "1\u00A0234,56 EUR");
    EXPECT_EQ(italian.money({123456, Currency()}), "1.234,56 EUR");
    EXPECT_EQ(spanish.quoted("hola"), "«hola»");
    EXPECT_EQ(french(Word::packing_slip), "Bon de livraison");
    EXPECT_EQ(italian.with(Word::part, "2", "3"), "Pacco 2 di 3");
    EXPECT_EQ(spanish(Word::bench_card), english(Word::bench_card)) << "stays in the workshop";
    EXPECT_NE(spanish(Word::gift_slip), english(Word::gift_slip));
}

TEST(Words, WriteSizes)
{
    EXPECT_EQ(english.size({mm(226), tenth_mm(1665), mm(126)}), "226 × 166.5 × 126 mm");
    EXPECT_EQ(german.flat_size({tenth_mm(2605), mm(180), {}}), "260,5 × 180 mm");
    EXPECT_EQ(english.length(tenth_mm(125)), "12.5 mm");
    EXPECT_EQ(german.length(mm(840)), "0,8 m");
    EXPECT_EQ(english.litres(millilitres(1449)), "1.4 L");
    EXPECT_EQ(german.litres(millilitres(1450)), "1,5 L");
}

TEST(Words, SpeakTheBuyersLanguage)
{
    EXPECT_EQ(language_for("AT"), Language::german);
    EXPECT_EQ(language_for("FR"), Language::french);
    EXPECT_EQ(language_for("IT"), Language::italian);
    EXPECT_EQ(language_for("MX"), Language::spanish);
    EXPECT_EQ(language_for("E "), Language::english);
    EXPECT_EQ(language_for("NO"), Language::english);
}

shop::Address address(const std::string& country, const std::string& postcode, const std::string& town,
                      const std::string& region = {})
{
    return {"Ines Halvard", "Pier Bindery", {"Quay 3"}, postcode, town, region, country};
}

using Lines = std::vector<std::string>;

// Templates of the public address metadata set: DE N/O/A/"Z C", FR town in capitals, GB code on its own line, US
// "C, S Z", HU town before the street. Sample codes: DE 26133, FR 33380, GB EC1Y 8SY, NL 1234 AB (the same set).
TEST(AddressLines, FollowTheCountryOfTheAddressee)
{
    EXPECT_EQ(address_lines(address("DE", "26133", "Ostermund"), "DE"),
              (Lines{"Ines Halvard", "Pier Bindery", "Quay 3", "26133 Ostermund"}));
    EXPECT_EQ(address_lines(address("FR", "33380", "Côte-Bleue"), "DE"),
              (Lines{"Ines Halvard", "Pier Bindery", "Quay 3", "33380 CÔTE-BLEUE", "FRANCE"}));
    EXPECT_EQ(address_lines(address("GB", "EC1Y 8SY", "Brae"), "DE"),
              (Lines{"Ines Halvard", "Pier Bindery", "Quay 3", "BRAE", "EC1Y 8SY", "UNITED KINGDOM"}));
    EXPECT_EQ(address_lines(address("US", "04530", "Bath", "ME"), "DE"),
              (Lines{"Ines Halvard", "Pier Bindery", "Quay 3", "Bath, ME 04530", "UNITED STATES"}));
    EXPECT_EQ(address_lines(address("HU", "1037", "Partfalva"), "DE"),
              (Lines{"Ines Halvard", "Pier Bindery", "Partfalva", "Quay 3", "1037", "HUNGARY"}));
    EXPECT_EQ(address_lines(address("NL", "1234 AB", "Zeehaven"), "NL").back(), "1234 AB Zeehaven");
}

TEST(AddressLines, LeaveOutWhatIsMissing)
{
    shop::Address bare;
    bare.name = "Tove Amdal";
    bare.town = "Lysvik";
    bare.country = "NO";
    EXPECT_EQ(address_lines(bare, "DE"), (Lines{"Tove Amdal", "Lysvik", "NORWAY"}));
    bare.country = "XX"; // not a country: shown as it came rather than dropped
    EXPECT_EQ(address_lines(bare, "DE").back(), "XX");
}

// ISO 3166-1 has 249 officially assigned codes (from memory); mail abroad wants capitals.
TEST(Countries, AreCompleteSortedAndInCapitals)
{
    EXPECT_EQ(countries.size(), 249U);
    for (std::size_t i = 0; i < countries.size(); ++i) {
        if (i > 0) {
            EXPECT_LT(countries[i - 1].code, countries[i].code);
        }
        for (const char c : countries[i].name) EXPECT_FALSE(c >= 'a' && c <= 'z') << countries[i].name;
    }
    EXPECT_EQ(country_in_capitals("NO"), "NORWAY");
    EXPECT_EQ(country_in_capitals("AD"), "ANDORRA");
    EXPECT_EQ(country_in_capitals("ZW"), "ZIMBABWE");
}

} // namespace
} // namespace stow::papers
