#include "core/intake/country_names.h"

#include "core/intake/numbers.h"
#include "core/shop/countries.h"

#include <unicode/locid.h>
#include <unicode/unistr.h>

namespace stow::intake {

namespace {

struct Everyday {
    std::string_view name; // folded
    std::string_view code;
};
// Names in use that the locale data does not give.
constexpr Everyday everyday[]{
    {"uk", "GB"},
    {"greatbritain", "GB"},
    {"grossbritannien", "GB"},
    {"grandebretagne", "GB"},
    {"england", "GB"},
    {"scotland", "GB"},
    {"wales", "GB"},
    {"northernireland", "GB"},
    {"unitedstatesofamerica", "US"},
    {"theunitedstates", "US"},
    {"usa", "US"},
    {"vereinigtestaatenvonamerika", "US"},
    {"holland", "NL"},
    {"thenetherlands", "NL"},
    {"czechrepublic", "CZ"},
    {"tschechischerepublik", "CZ"},
    {"slovakrepublic", "SK"},
    {"irland", "IE"},
    {"republicofireland", "IE"},
    {"korea", "KR"},
    {"republicofkorea", "KR"},
    {"hongkong", "HK"},
    {"turkey", "TR"},
    {"macedonia", "MK"},
    {"brd", "DE"},
};

} // namespace

CountryNames::CountryNames()
{
    for (char a = 'A'; a <= 'Z'; ++a) {
        for (char b = 'A'; b <= 'Z'; ++b) {
            const std::string code{a, b};
            if (!shop::is_country(code)) continue;
            const icu::Locale place("", code.c_str());
            by_name_.emplace(folded(code), code);
            by_name_.emplace(folded(place.getISO3Country()), code);
            for (const icu::Locale& language :
                 {icu::Locale::getEnglish(), icu::Locale::getGerman(), icu::Locale::getFrench()}) {
                icu::UnicodeString name;
                std::string text;
                place.getDisplayCountry(language, name).toUTF8String(text);
                by_name_.emplace(folded(text), code);
            }
        }
    }
    for (const Everyday& known : everyday) by_name_.emplace(known.name, known.code);
}

std::optional<std::string> CountryNames::code(std::string_view text) const
{
    const auto found = by_name_.find(folded(text));
    if (found == by_name_.end()) return std::nullopt;
    return found->second;
}

} // namespace stow::intake
