#include "core/papers/address.h"

#include "core/papers/countries.h"

#include <algorithm>

namespace stow::papers {

namespace {

std::string joined(const std::string& a, const std::string& between, const std::string& b)
{
    if (a.empty()) return b;
    return b.empty() ? a : a + between + b;
}

// ASCII and the letters of Latin-1 in UTF-8: enough for the town names of the countries that want capitals.
std::string in_capitals(const std::string& text)
{
    std::string capitals;
    for (std::size_t i = 0; i < text.size(); ++i) {
        char c = text[i];
        if (c >= 'a' && c <= 'z') c = static_cast<char>(c - 'a' + 'A');
        const auto previous = static_cast<unsigned char>(i > 0 ? text[i - 1] : '\0');
        const auto byte = static_cast<unsigned char>(c);
        const bool small_latin_1 = previous == 0xC3 && byte >= 0xA0 && byte != 0xB7 && byte != 0xBF && byte <= 0xBE;
        capitals += small_latin_1 ? static_cast<char>(byte - 0x20) : c;
    }
    return capitals;
}

enum class TownLine { code_town, town_code_below, town_region_code, code_below_town_above_street };

TownLine town_line(std::string_view country)
{
    if (country == "GB") return TownLine::town_code_below;
    for (const std::string_view one : {"US", "CA", "AU", "IE", "NZ", "SG"}) {
        if (country == one) return TownLine::town_region_code;
    }
    if (country == "HU") return TownLine::code_below_town_above_street;
    return TownLine::code_town;
}

} // namespace

std::string country_in_capitals(std::string_view country)
{
    const auto found = std::lower_bound(countries.begin(), countries.end(), country,
                                        [](const Country& c, std::string_view code) { return c.code < code; });
    if (found == countries.end() || found->code != country) return std::string(country);
    return std::string(found->name);
}

// Public address metadata set (N name, O company, A street, Z code, C town, S region): DE, AT, FR, most of Europe
// N/O/A/"Z C", FR with the town in capitals; GB N/O/A/C/Z; US N/O/A/"C, S Z"; CH "CH-Z C"; HU town before street.
// The US post asks for "C S Z" without a comma (its addressing rules); the comma of the data set is kept.
// IE, NZ, SG, CA and AU: common practice, no source.
std::vector<std::string> address_lines(const shop::Address& a, std::string_view from_country)
{
    std::vector<std::string> lines{a.name, a.company};
    const TownLine style = town_line(a.country);
    const std::string town = a.country == "FR" || a.country == "GB" ? in_capitals(a.town) : a.town;
    if (style == TownLine::code_below_town_above_street) lines.push_back(town);
    lines.insert(lines.end(), a.street.begin(), a.street.end());
    switch (style) {
    case TownLine::code_town: lines.push_back(joined(a.postcode, " ", joined(town, ", ", a.region))); break;
    case TownLine::town_region_code: lines.push_back(joined(joined(town, ", ", a.region), " ", a.postcode)); break;
    case TownLine::town_code_below:
        lines.push_back(joined(town, ", ", a.region));
        lines.push_back(a.postcode);
        break;
    case TownLine::code_below_town_above_street: lines.push_back(a.postcode); break;
    }
    if (a.country != from_country) lines.push_back(country_in_capitals(a.country));
    lines.erase(std::remove(lines.begin(), lines.end(), std::string()), lines.end());
    return lines;
}

} // namespace stow::papers
