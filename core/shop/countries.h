// Countries by their ISO 3166-1 alpha-2 codes.
#pragma once

#include <string_view>

namespace stow::shop {

// One of the 249 codes of ISO 3166-1, in capitals.
bool is_country(std::string_view alpha2);

// A member state of the European Union (27 since 2020). Territories outside its customs area are not told apart.
bool in_european_union(std::string_view alpha2);

} // namespace stow::shop
