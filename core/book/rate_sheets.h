// Rate sheets in the book; one carrier may have several with different validity.
#pragma once

#include "core/book/cupboard.h"
#include "core/postage/rate_sheet.h"

namespace stow::book {

// A sheet of the same carrier and the same first day replaces the one before.
Taken take_in_rate_sheets(Book& book, const std::vector<postage::RateSheet>& sheets, const std::string& file);
Done put_rate_sheet(Book& book, const postage::RateSheet& sheet); // edited in the grid
Done remove_rate_sheet(Book& book, const std::string& carrier, std::optional<Date> valid_from);
std::vector<postage::RateSheet> rate_sheets(const Book& book); // by carrier, then first day

} // namespace stow::book
