#include "core/shop/orders.h"

namespace stow::shop {

namespace {

struct Shape {
    std::string_view country;
    std::string_view pattern; // # digit, @ letter, * either; - and space may be left out; | another shape
};

// Shapes of DE AT CH NL FR GB US JP PL PT SE LV IT ES as in the public address metadata; the others from memory.
constexpr Shape shapes[]{
    {"AD", "AD###"},
    {"AT", "####"},
    {"AU", "####"},
    {"BE", "####"},
    {"BG", "####"},
    {"BR", "#####-###"},
    {"CA", "@#@ #@#"},
    {"CH", "####"},
    {"CN", "######"},
    {"CY", "####"},
    {"CZ", "### ##"},
    {"DE", "#####"},
    {"DK", "####"},
    {"EE", "#####"},
    {"ES", "#####"},
    {"FI", "#####"},
    {"FR", "## ###"},
    {"GB", "@# #@@|@## #@@|@@# #@@|@@## #@@|@#@ #@@|@@#@ #@@|GIR 0AA|BFPO #|BFPO ##|BFPO ###|BFPO ####"},
    {"GR", "### ##"},
    {"HR", "#####"},
    {"HU", "####"},
    {"IE", "@## ****|D6W ****"},
    {"IN", "### ###"},
    {"IS", "###"},
    {"IT", "#####"},
    {"JP", "###-####"},
    {"KR", "#####"},
    {"LI", "####"},
    {"LT", "LT-#####|#####"},
    {"LU", "####"},
    {"LV", "LV-####|####"},
    {"MC", "980##"},
    {"MT", "@@@ ####"},
    {"MX", "#####"},
    {"NL", "#### @@"},
    {"NO", "####"},
    {"NZ", "####"},
    {"PL", "##-###"},
    {"PT", "####-###"},
    {"RO", "######"},
    {"RS", "#####"},
    {"SE", "### ##"},
    {"SG", "######"},
    {"SI", "####"},
    {"SK", "### ##"},
    {"SM", "4789#"},
    {"TR", "#####"},
    {"TW", "###|#####|######"},
    {"UA", "#####"},
    {"US", "#####|#####-####"},
    {"VA", "00120"},
    {"ZA", "####"},
};

bool is_digit(char c)
{
    return c >= '0' && c <= '9';
}
bool is_letter(char c)
{
    return c >= 'A' && c <= 'Z';
}

bool matches(std::string_view pattern, std::string_view text)
{
    std::size_t at = 0;
    for (const char p : pattern) {
        if (p == ' ' || p == '-') {
            if (at < text.size() && (text[at] == ' ' || text[at] == '-')) ++at;
            continue;
        }
        if (at == text.size()) return false;
        const char c = text[at++];
        const bool fits = p == '#'   ? is_digit(c)
                          : p == '@' ? is_letter(c)
                          : p == '*' ? is_digit(c) || is_letter(c)
                                     : c == p;
        if (!fits) return false;
    }
    return at == text.size();
}

bool matches_one_of(std::string_view patterns, std::string_view text)
{
    while (true) {
        const std::size_t bar = patterns.find('|');
        if (matches(patterns.substr(0, bar), text)) return true;
        if (bar == std::string_view::npos) return false;
        patterns.remove_prefix(bar + 1);
    }
}

// Codes of the right shape that are nonetheless never given out.
bool never_used(std::string_view country, std::string_view code)
{
    if (country == "NL") { // first digit not 0; last letters not SA, SD or SS
        const std::string_view last = code.substr(code.size() - 2);
        return code[0] == '0' || last == "SA" || last == "SD" || last == "SS";
    }
    if (country == "DE") return code.substr(0, 2) == "00";
    if (country == "ES") return code.substr(0, 2) == "00" || code.substr(0, 2) > "52"; // 52 provinces
    return false;
}

} // namespace

bool postcode_ok(const std::string& country, const std::string& postcode)
{
    std::string code;
    for (const char c : postcode) code += c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c;
    for (const Shape& shape : shapes) {
        if (shape.country != country) continue;
        if (matches_one_of(shape.pattern, code)) return !never_used(country, code);
        // As printed abroad: "CH-8001", "SE-123 45".
        const std::string prefix = country + "-";
        if (code.compare(0, prefix.size(), prefix) != 0) return false;
        code.erase(0, prefix.size());
        return matches_one_of(shape.pattern, code) && !never_used(country, code);
    }
    return true;
}

} // namespace stow::shop
