// Which zone a place lies in: the longest postcode rule wins, then the country, then "*".
#pragma once

#include "core/postage/rate_sheet.h"

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace stow::postage {

// Postcodes are compared in capitals, without spaces and hyphens.
std::string plain_postcode(std::string_view postcode);

// How closely a place describes an address; the greater the closer, nothing: not at all. `postcode` plain. A range
// counts by the shorter of its ends; of two equally long rules a prefix is closer than a range.
std::optional<int> closeness(const Place& place, std::string_view country, std::string_view postcode);

// The first of the closest; nothing: the carrier does not go there.
std::optional<std::size_t> zone_of(const std::vector<Zone>& zones, std::string_view country, std::string_view postcode);

} // namespace stow::postage
