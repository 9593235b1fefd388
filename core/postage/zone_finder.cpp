#include "core/postage/zone_finder.h"

#include <algorithm>

namespace stow::postage {

namespace {

bool lies_in(std::string_view postcode, std::string_view from, std::string_view to)
{
    if (postcode.size() < std::min(from.size(), to.size())) return false;
    return postcode.substr(0, from.size()) >= from && postcode.substr(0, to.size()) <= to;
}

} // namespace

std::string plain_postcode(std::string_view postcode)
{
    std::string plain;
    plain.reserve(postcode.size());
    for (const char c : postcode) {
        if (c == ' ' || c == '-') continue;
        plain += c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c;
    }
    return plain;
}

int closeness(const Place& place)
{
    const std::string from = plain_postcode(place.postcode_from), to = plain_postcode(place.postcode_to);
    return 2 * static_cast<int>(std::min(from.size(), to.size())) + (from == to && !from.empty() ? 1 : 0);
}

void PlaceFinder::add(const Place& place, std::size_t number)
{
    if (place.country == "*") {
        if (!everywhere_) everywhere_ = number;
        return;
    }
    Country& country = countries_[place.country];
    if (place.postcode_from.empty()) {
        if (!country.whole) country.whole = number;
        return;
    }
    country.by_closeness[closeness(place)].rules.push_back(
        {plain_postcode(place.postcode_from), plain_postcode(place.postcode_to), number});
}

void PlaceFinder::ready()
{
    for (auto& [name, country] : countries_) {
        for (auto& [close, group] : country.by_closeness) {
            std::vector<Rule> sorted = group.rules;
            std::stable_sort(sorted.begin(), sorted.end(),
                             [](const Rule& a, const Rule& b) { return a.from < b.from; });
            group.apart = true;
            for (std::size_t i = 0; i < sorted.size(); ++i) {
                const bool one_length = sorted[i].from.size() == sorted[i].to.size();
                if (!one_length || (i > 0 && sorted[i].from <= sorted[i - 1].to)) group.apart = false;
            }
            if (group.apart) group.rules = std::move(sorted);
        }
    }
}

std::optional<std::size_t> PlaceFinder::find(const std::string& country, std::string_view postcode) const
{
    const auto found = countries_.find(country);
    if (found == countries_.end()) return everywhere_;
    for (const auto& [close, group] : found->second.by_closeness) {
        if (!group.apart) {
            for (const Rule& rule : group.rules) {
                if (lies_in(postcode, rule.from, rule.to)) return rule.number;
            }
            continue;
        }
        const auto past = std::upper_bound(group.rules.begin(), group.rules.end(), postcode,
                                           [](std::string_view code, const Rule& rule) { return code < rule.from; });
        if (past == group.rules.begin()) continue;
        const Rule& rule = *std::prev(past);
        if (lies_in(postcode, rule.from, rule.to)) return rule.number;
    }
    if (found->second.whole) return found->second.whole;
    return everywhere_;
}

} // namespace stow::postage
