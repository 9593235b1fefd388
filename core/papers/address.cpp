#include "core/papers/address.h"

#include "core/papers/capitals.h"
#include "core/papers/countries.h"
#include "core/papers/text.h"

#include <algorithm>
#include <array>

namespace stow::papers {

namespace {

// How an address is made up: n name, o company, a the street, c town, s region, z postcode, | a new line. What stands
// between two of them stays away where one is missing. Where there is no street in it, name, company and street come
// first. By the public address metadata set (libaddressinput's region data, its forms in Latin letters), which gives
// Great Britain no place for a region; the name stands before the company everywhere (common practice, no source).
struct Form {
    std::string_view country, lines;
};
constexpr std::string_view usual = "z c, s";
// clang-format off: a list to be read at a glance
constexpr std::array forms{
    Form{"AE", "c, s"},  Form{"AF", "c|z"},    Form{"AI", "c|z"},     Form{"AL", "z|c"},    Form{"AM", "z|c|s"},
    Form{"AR", "z c|s"}, Form{"AS", "c s z"},  Form{"AU", "c s z"},   Form{"BB", "c, s z"}, Form{"BD", "c - z"},
    Form{"BH", "c z"},   Form{"BM", "c z"},    Form{"BN", "c z"},     Form{"BR", "c-s|z"},  Form{"BS", "c, s"},
    Form{"BT", "c z"},   Form{"BY", "z, c|s"}, Form{"CA", "c s z"},   Form{"CC", "c s z"},  Form{"CK", "c z"},
    Form{"CL", "z c|s"}, Form{"CN", "c|s, z"}, Form{"CO", "c, s, z"}, Form{"CR", "s, c|z"}, Form{"CU", "c s|z"},
    Form{"CV", "z c|s"}, Form{"CX", "c s z"},  Form{"EC", "z|c"},     Form{"EG", "c|s|z"},  Form{"ES", "z c s"},
    Form{"FK", "c|z"},   Form{"FM", "c s z"},  Form{"GB", "c|z"},     Form{"GG", "c|z"},    Form{"GS", "c|z"},
    Form{"GU", "c z"},   Form{"HK", "c, s"},   Form{"HM", "c s z"},   Form{"HN", "c, s|z"}, Form{"HU", "n|o|c|a|z"},
    Form{"ID", "c|s z"}, Form{"IE", "c|s|z"},  Form{"IL", "c z"},     Form{"IM", "c|z"},    Form{"IN", "c z|s"},
    Form{"IO", "c|z"},   Form{"IQ", "c, s|z"}, Form{"IT", "z c s"},   Form{"JE", "c|z"},    Form{"JM", "c|s"},
    Form{"JO", "c z"},   Form{"JP", "c, s|z"}, Form{"KE", "c|z"},     Form{"KH", "c z"},    Form{"KI", "s|c"},
    Form{"KN", "c, s"},  Form{"KR", "c|s|z"},  Form{"KY", "c, s"},    Form{"LB", "c z"},    Form{"LK", "c|z"},
    Form{"LS", "c z"},   Form{"LV", "s|c, z"}, Form{"MH", "c s z"},   Form{"MM", "c, z"},   Form{"MN", "c|s z"},
    Form{"MP", "c s z"}, Form{"MT", "c z"},    Form{"MU", "z|c"},     Form{"MV", "c z"},    Form{"MX", "z c, s"},
    Form{"MY", "z c|s"}, Form{"NA", "c|z"},    Form{"NF", "c s z"},   Form{"NG", "c z|s"},  Form{"NI", "z|c, s"},
    Form{"NP", "c z"},   Form{"NZ", "c z"},    Form{"OM", "z|c"},     Form{"PA", "c|s"},    Form{"PE", "c z|s"},
    Form{"PF", "z c s"}, Form{"PG", "c z s"},  Form{"PH", "c|z s"},   Form{"PK", "c-z"},    Form{"PN", "c|z"},
    Form{"PR", "c s z"}, Form{"PW", "c s z"},  Form{"RU", "c|s|z"},   Form{"SA", "c z"},    Form{"SC", "c|s"},
    Form{"SD", "c|z"},   Form{"SG", "c z"},    Form{"SH", "c|z"},     Form{"SO", "c, s z"}, Form{"SR", "c|s"},
    Form{"SV", "z-c|s"}, Form{"SZ", "c|z"},    Form{"TC", "c|z"},     Form{"TH", "c|s z"},  Form{"TR", "z c/s"},
    Form{"TV", "c|s"},   Form{"TW", "c, s z"}, Form{"UA", "c|s|z"},   Form{"UM", "c s z"},  Form{"US", "c, s z"},
    Form{"UY", "z c s"}, Form{"UZ", "z c|s"},  Form{"VC", "c z"},     Form{"VE", "c z, s"}, Form{"VG", "c|z"},
    Form{"VI", "c s z"}, Form{"VN", "c|s z"},  Form{"ZA", "c|z"}};
// Written in the country's own script, from the largest to the smallest (the same set).
constexpr std::array own_script_forms{Form{"CN", "z|sc|a|o|n"},  Form{"HK", "sc|a|o|n"}, Form{"JP", "〒z|sc|a|o|n"},
                                      Form{"KR", "s c|a|o|n|z"}, Form{"MO", "sc|a|o|n"}, Form{"TW", "z|sc|a|o|n"}};
// clang-format on

template <std::size_t N>
const Form* find_form(const std::array<Form, N>& all, std::string_view country)
{
    const auto found = std::find_if(all.begin(), all.end(), [&](const Form& f) { return f.country == country; });
    return found == all.end() ? nullptr : &*found;
}

// Chinese, Japanese and Korean writing.
bool east_asian(std::string_view text)
{
    const auto all = letters(text);
    return std::any_of(all.begin(), all.end(), [](std::string_view letter) {
        const std::uint32_t c = code_point(letter);
        return (c >= 0x3040 && c <= 0x30FF) || (c >= 0x3400 && c <= 0x9FFF) || (c >= 0xAC00 && c <= 0xD7A3);
    });
}

std::string form_of(const shop::Address& address)
{
    const Form* form = east_asian(address.town) ? find_form(own_script_forms, address.country) : nullptr;
    if (form == nullptr) form = find_form(forms, address.country);
    const std::string lines(form == nullptr ? usual : form->lines);
    return lines.find('a') == std::string::npos ? "n|o|a|" + lines : lines;
}

// One line of a form, filled in.
std::string filled(std::string_view form, const shop::Address& a, const std::string& town)
{
    std::string line, between;
    bool begun = false; // some part came before, be it an empty one
    for (const char c : form) {
        const std::string* part = nullptr;
        switch (c) {
        case 'n': part = &a.name; break;
        case 'o': part = &a.company; break;
        case 'c': part = &town; break;
        case 's': part = &a.region; break;
        case 'z': part = &a.postcode; break;
        default: between += c; continue;
        }
        if (!part->empty()) line += (line.empty() && begun ? std::string() : between) + *part;
        begun = true;
        between.clear();
    }
    return line;
}

} // namespace

std::string country_in_capitals(std::string_view country)
{
    const auto found = std::lower_bound(countries.begin(), countries.end(), country,
                                        [](const Country& c, std::string_view code) { return c.code < code; });
    if (found == countries.end() || found->code != country) return std::string(country);
    return std::string(found->name);
}

std::vector<std::string> address_lines(const shop::Address& a, std::string_view from_country)
{
    const std::string form = form_of(a);
    const bool abroad = a.country != from_country;
    const bool capitals = abroad || a.country == "FR" || a.country == "GB";
    std::string town = capitals ? in_capitals(a.town) : a.town;
    // What the form has no place for goes with the town.
    if (form.find('s') == std::string::npos && !a.region.empty()) town += (town.empty() ? "" : ", ") + a.region;
    if (form.find('z') == std::string::npos && !a.postcode.empty()) town += (town.empty() ? "" : " ") + a.postcode;
    std::vector<std::string> lines;
    for (std::string_view rest = form;;) {
        const std::string_view one = rest.substr(0, rest.find('|'));
        if (one == "a")
            lines.insert(lines.end(), a.street.begin(), a.street.end());
        else
            lines.push_back(filled(one, a, town));
        if (one.size() == rest.size()) break;
        rest.remove_prefix(one.size() + 1);
    }
    if (abroad) lines.push_back(country_in_capitals(a.country));
    lines.erase(std::remove(lines.begin(), lines.end(), std::string()), lines.end());
    return lines;
}

} // namespace stow::papers
