// Addresses as the country of the addressee writes them.
#pragma once

#include "core/shop/orders.h"

#include <string>
#include <string_view>
#include <vector>

namespace stow::papers {

// English short name in capitals, as stands on the last line of mail abroad; the code itself where we do not know it.
std::string country_in_capitals(std::string_view country);

// Lines from name to town in the addressee country's own order; the country last, in capitals, if it is not `from`.
// Line templates: the public address metadata set, country by country in address.cpp.
std::vector<std::string> address_lines(const shop::Address& address, std::string_view from_country);

} // namespace stow::papers
