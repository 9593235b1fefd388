#include "core/shop/customs.h"

#include "core/shop/countries.h"

#include <algorithm>
#include <array>

namespace stow::shop {

namespace {

std::string plain(std::string_view text)
{
    std::string kept;
    for (const char c : text) {
        if (c == ' ' || c == '-') continue;
        kept += c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c;
    }
    return kept;
}

// How long the rule is that holds the postcode; nothing: it does not.
std::optional<std::size_t> closeness(const SpecialPlace& place, std::string_view country, std::string_view postcode)
{
    if (place.country != country) return std::nullopt;
    const std::string from = plain(place.postcode_from), to = plain(place.postcode_to);
    const std::size_t length = std::min(from.size(), to.size());
    if (postcode.size() < length) return std::nullopt;
    if (postcode.substr(0, from.size()) < from || postcode.substr(0, to.size()) > to) return std::nullopt;
    return length;
}

} // namespace

Areas areas_of(const CustomsRules& rules, std::string_view country, std::string_view postcode)
{
    const std::string code = plain(postcode);
    const bool member = in_european_union(country);
    Areas areas{member, member};
    std::optional<std::size_t> best;
    for (const SpecialPlace& place : rules.places) {
        const auto close = closeness(place, country, code);
        if (!close || (best && *close <= *best)) continue;
        best = close;
        areas = {place.in_customs_area, place.in_tax_area};
    }
    return areas;
}

Border border_between(const CustomsRules& rules, const Address& from, const Address& to)
{
    const Areas here = areas_of(rules, from.country, from.postcode), there = areas_of(rules, to.country, to.postcode);
    if (here.customs && there.customs) return here.tax && there.tax ? Border::none : Border::tax_only;
    if (here.customs != there.customs) return Border::customs;
    return from.country == to.country ? Border::none : Border::customs;
}

CustomsForm form_for(const CustomsRules& rules, Border border, bool parcel_post, std::optional<Money> value,
                     Weight gross)
{
    if (border == Border::none) return CustomsForm::none;
    if (parcel_post || gross > rules.cn22_most) return CustomsForm::cn23;
    if (!value || value->currency != rules.cn22_up_to.currency) return CustomsForm::cn23;
    const bool small = rules.limit_included ? *value <= rules.cn22_up_to : *value < rules.cn22_up_to;
    return small ? CustomsForm::cn22 : CustomsForm::cn23;
}

bool hs_code_ok(std::string_view code)
{
    std::string digits;
    for (const char c : code) {
        if (c == '.' || c == ' ') continue;
        if (c < '0' || c > '9') return false;
        digits += c;
    }
    if (digits.size() < 6 || digits.size() > 10) return false;
    const int chapter = (digits[0] - '0') * 10 + (digits[1] - '0');
    return chapter >= 1 && chapter <= 97 && chapter != 77;
}

bool vague_words(std::string_view customs_words)
{
    static constexpr std::array<std::string_view, 12> vague{"samples",     "sample",  "spare parts", "parts",
                                                            "gift",        "gifts",   "goods",       "merchandise",
                                                            "accessories", "various", "documents",   "craft"};
    std::string small;
    for (const char c : customs_words) small += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    while (!small.empty() && small.back() == ' ') small.pop_back();
    return std::find(vague.begin(), vague.end(), small) != vague.end();
}

} // namespace stow::shop
