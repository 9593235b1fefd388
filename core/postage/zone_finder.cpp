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

std::optional<int> closeness(const Place& place, std::string_view country, std::string_view postcode)
{
    if (place.country == "*") return 0;
    if (place.country != country) return std::nullopt;
    if (place.postcode_from.empty()) return 1;
    const std::string from = plain_postcode(place.postcode_from);
    const std::string to = plain_postcode(place.postcode_to);
    if (!lies_in(postcode, from, to)) return std::nullopt;
    return 2 * static_cast<int>(std::min(from.size(), to.size())) + (from == to ? 1 : 0);
}

std::optional<std::size_t> zone_of(const std::vector<Zone>& zones, std::string_view country, std::string_view postcode)
{
    const std::string plain = plain_postcode(postcode);
    std::optional<std::size_t> found;
    int best = -1;
    for (std::size_t z = 0; z < zones.size(); ++z) {
        for (const Place& place : zones[z].places) {
            const auto close = closeness(place, country, plain);
            if (!close || *close <= best) continue;
            best = *close;
            found = z;
        }
    }
    return found;
}

} // namespace stow::postage
