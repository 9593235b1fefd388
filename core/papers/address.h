// Addresses as the country of the addressee writes them.
#pragma once

#include "core/shop/orders.h"

#include <string>
#include <string_view>
#include <vector>

namespace stow::papers {

// English short name in capitals, as stands on the last line of mail abroad; the code itself where we do not know it.
std::string country_in_capitals(std::string_view country);

// Lines from name to town in the addressee country's own order, nothing of the address left out. Mail to a country
// other than `from` has the town in capitals and the country last, in English and in capitals, as the Universal Postal
// Union's regulations want places and countries written (from memory; the United States' post says the same of the
// country: Publication 28, appendix A3).
std::vector<std::string> address_lines(const shop::Address& address, std::string_view from_country);

} // namespace stow::papers
