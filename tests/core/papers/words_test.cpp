#include "core/papers/address.h"
#include "core/papers/capitals.h"
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
    EXPECT_EQ(german.with(Word::part, "2", "3"), "Paket 2 von 3");
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
              (Lines{"Ines Halvard", "Pier Bindery", "Quay 3", "BATH, ME 04530", "UNITED STATES"}));
    EXPECT_EQ(address_lines(address("HU", "1037", "Partfalva"), "DE"),
              (Lines{"Ines Halvard", "Pier Bindery", "PARTFALVA", "Quay 3", "1037", "HUNGARY"}));
    EXPECT_EQ(address_lines(address("NL", "1234 AB", "Zeehaven"), "NL").back(), "1234 AB Zeehaven");
}

TEST(AddressLines, LeaveOutWhatIsMissing)
{
    shop::Address bare;
    bare.name = "Tove Amdal";
    bare.town = "Lysvik";
    bare.country = "NO";
    EXPECT_EQ(address_lines(bare, "DE"), (Lines{"Tove Amdal", "LYSVIK", "NORWAY"}));
    bare.country = "XX"; // not a country: shown as it came rather than dropped
    EXPECT_EQ(address_lines(bare, "DE").back(), "XX");
}

// The forms of the public address metadata set (libaddressinput, region_data_constants.cc, "lfmt" where there is one,
// read in the version of 2013 that is kept with its source, and in a public copy of a later one for those marked late;
// codes are its examples), with the town in capitals.
TEST(AddressLines, FollowTheFormsOfThePublicSet)
{
    const std::vector<std::pair<shop::Address, Lines>> all{
        {address("AL", "1001", "Port"), {"1001", "PORT", "ALBANIA"}},                          // %Z%n%C (late)
        {address("CO", "111221", "Port", "Tolima"), {"PORT, Tolima, 111221", "COLOMBIA"}},     // %C, %S, %Z (late)
        {address("CR", "1000", "Port", "Limon"), {"Limon, PORT", "1000", "COSTA RICA"}},       // %S, %C%n%Z (late)
        {address("GB", "EC1Y 8SY", "Port", "Fife"), {"PORT, Fife", "EC1Y 8SY", "GB"}},         // %C%n%Z, and its region
        {address("IE", "A65 F4E2", "Port", "Co. Mayo"), {"PORT", "Co. Mayo", "A65 F4E2", ""}}, // %C%n%S%n%Z (late)
        {address("LV", "LV-1073", "Port", "Ogre"), {"Ogre", "PORT, LV-1073", "LATVIA"}},       // %S%n%C, %Z (late)
        {address("PE", "LIMA 23", "Port", "Ica"), {"PORT LIMA 23", "Ica", "PERU"}},            // %C %Z%n%S (late)
        {address("VN", "70010", "Port", "Hue"), {"PORT", "Hue 70010", "VIET NAM"}},            // %C%n%S %Z (late)
        {address("AE", "", "Port", "Sharjah"), {"PORT, Sharjah", "UNITED ARAB EMIRATES"}},     // %C, and its emirate
        {address("AR", "C1070AAM", "Port", "Chubut"), {"C1070AAM PORT", "Chubut", "ARGENTINA"}}, // %Z %C%n%S
        {address("AU", "2060", "Port", "NSW"), {"PORT NSW 2060", "AUSTRALIA"}},                  // %C %S %Z
        {address("BD", "1340", "Port"), {"PORT - 1340", "BANGLADESH"}},                          // %C - %Z
        {address("BR", "40301-110", "Port", "BA"), {"PORT-BA", "40301-110", "BRAZIL"}},          // %C-%S%n%Z
        {address("CA", "H3Z 2Y7", "Port", "QC"), {"PORT QC H3Z 2Y7", "CANADA"}},                 // %C %S %Z
        {address("CL", "8340457", "Port", "Aysen"), {"8340457 PORT", "Aysen", "CHILE"}},         // %Z %C%n%S
        {address("CN", "266033", "Port", "Fujian"), {"PORT", "Fujian, 266033", "CHINA"}},        // %C%n%S, %Z
        {address("EG", "12411", "Port", "Giza"), {"PORT", "Giza", "12411", "EGYPT"}},            // %C%n%S%n%Z
        {address("ES", "28039", "Puerto", "Madrid"), {"28039 PUERTO Madrid", "SPAIN"}},          // %Z %C %S
        {address("ID", "40115", "Port", "Bali"), {"PORT", "Bali 40115", "INDONESIA"}},           // %C%n%S %Z
        {address("IN", "110034", "Port", "Goa"), {"PORT 110034", "Goa", "INDIA"}},               // %C %Z%n%S
        {address("IT", "00144", "Porto", "RM"), {"00144 PORTO RM", "ITALY"}},                    // %Z %C %S
        {address("JP", "154-0023", "Minato", "Tokyo"), {"MINATO, Tokyo", "154-0023", "JAPAN"}},  // %C, %S%n%Z
        {address("KE", "20100", "Port"), {"PORT", "20100", "KENYA"}},                            // %C%n%Z
        {address("MX", "02860", "Puerto", "Tab."), {"02860 PUERTO, Tab.", "MEXICO"}},            // %Z %C, %S
        {address("MY", "43000", "Port", "Johor"), {"43000 PORT", "Johor", "MALAYSIA"}},          // %Z %C%n%S
        {address("NZ", "6001", "Port"), {"PORT 6001", "NEW ZEALAND"}},                           // %C %Z
        {address("PK", "44000", "Port"), {"PORT-44000", "PAKISTAN"}},                            // %C-%Z
        {address("SG", "546080", "Singapore"), {"SINGAPORE 546080", "SINGAPORE"}},               // SINGAPORE %Z
        {address("TH", "10150", "Port", "Krabi"), {"PORT", "Krabi 10150", "THAILAND"}},          // %C%n%S %Z
        {address("TR", "01960", "Liman", "Mersin"), {"01960 LIMAN/Mersin", "TÜRKIYE"}},          // %Z %C/%S
        {address("TW", "106", "Daan", "Taipei City"), {"DAAN, Taipei City 106", "TAIWAN"}},      // %C, %S %Z
        {address("UA", "15432", "Port", "Odesa"), {"PORT", "Odesa", "15432", "UKRAINE"}},        // %C%n%S%n%Z
        {address("ZA", "0083", "Port"), {"PORT", "0083", "SOUTH AFRICA"}}};                      // %C%n%Z
    for (const auto& [to, under_the_street] : all) {
        Lines expected{"Ines Halvard", "Pier Bindery", "Quay 3"};
        expected.insert(expected.end(), under_the_street.begin(), under_the_street.end());
        const Lines lines = address_lines(to, "DE");
        EXPECT_EQ(Lines(lines.begin(), lines.end() - 1), Lines(expected.begin(), expected.end() - 1)) << to.country;
        EXPECT_EQ(lines.back(), country_in_capitals(to.country));
    }
}

// The same set's "fmt": from the largest to the smallest, the name last. The country stays in English.
TEST(AddressLines, WriteEastAsianScriptsFromTheLargestToTheSmallest)
{
    const auto to = [](const char* country, const char* code, const char* region, const char* town) {
        return shop::Address{"名前", "", {"通り三"}, code, town, region, country};
    };
    EXPECT_EQ(address_lines(to("JP", "154-0023", "東京都", "港区"), "DE"),
              (Lines{"〒154-0023", "東京都港区", "通り三", "名前", "JAPAN"}));
    EXPECT_EQ(address_lines(to("CN", "266033", "福建", "港市"), "DE"),
              (Lines{"266033", "福建港市", "通り三", "名前", "CHINA"}));
    EXPECT_EQ(address_lines(to("KR", "110-110", "서울", "항구"), "DE"),
              (Lines{"서울 항구", "通り三", "名前", "110-110", country_in_capitals("KR")}));
    EXPECT_EQ(address_lines(address("JP", "154-0023", "Minato", "Tokyo"), "DE").front(), "Ines Halvard");
}

// Whatever a shop's file holds, somebody meant it: every part is on the label, in every country.
TEST(AddressLines, LeaveNoPartOut)
{
    for (const Country& country : countries) {
        for (const char* town : {"QTOWN", "港市"}) {
            const shop::Address to{"QNAME", "QCOMPANY", {"QSTREET 1", "QSTREET 2"}, "12345",
                                   town,    "QREGION",  std::string(country.code)};
            std::string all;
            for (const std::string& line : address_lines(to, "??")) all += line + "\n";
            for (const char* part : {"QNAME", "QCOMPANY", "QSTREET 1", "QSTREET 2", "12345", town, "QREGION"})
                EXPECT_NE(all.find(part), std::string::npos) << part << " in " << country.code << ":\n" << all;
            EXPECT_TRUE(all.ends_with(std::string(country.name) + "\n")) << all;
        }
    }
}

TEST(AddressLines, CloseUpWhereAPartIsMissing)
{
    EXPECT_EQ(address_lines(address("US", "04530", "Bath"), "US").back(), "Bath 04530");
    EXPECT_EQ(address_lines(address("US", "", "Bath", "ME"), "US").back(), "Bath, ME");
    EXPECT_EQ(address_lines(address("BR", "", "", "BA"), "BR").back(), "BA");
    EXPECT_EQ(address_lines(address("TR", "01960", "Liman"), "TR").back(), "01960 Liman");
    EXPECT_EQ(address_lines(address("BD", "1340", ""), "BD").back(), "1340");
}

// Unicode's case pairs (its charts of Latin-1, Latin Extended-A, Greek, Cyrillic).
TEST(Capitals, AreThoseOfTheScript)
{
    EXPECT_EQ(in_capitals("Łódź, żółw ÿ"), "ŁÓDŹ, ŻÓŁW Ÿ");
    EXPECT_EQ(in_capitals("Großröhrsdorf"), "GROSSRÖHRSDORF");
    EXPECT_EQ(in_capitals("Αθήνα Πειραιάς ώ ό"), "ΑΘΉΝΑ ΠΕΙΡΑΙΆΣ Ώ Ό");
    EXPECT_EQ(in_capitals("Київ, Ёлка, ђ"), "КИЇВ, ЁЛКА, Ђ");
    EXPECT_EQ(in_capitals("Ħal Ŀ ŉ ĸ šťňľ ĉ"), "ĦAL Ŀ ŉ ĸ ŠŤŇĽ Ĉ");
    EXPECT_EQ(in_capitals("a ÷ × 7 東京"), "A ÷ × 7 東京");
    EXPECT_EQ(in_capitals(in_capitals("Çeşme ığdır")), in_capitals("Çeşme ığdır"));
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
