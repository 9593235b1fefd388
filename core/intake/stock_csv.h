// A count of what is on the shelves, from a table. A star marks what must be there.
//
//   code*      of a good or a supply
//   counted*   how many; supplies in their own unit
//   kind       good or supply; only needed where both have the code
#pragma once

#include "core/intake/csv.h"
#include "core/intake/taken.h"
#include "core/shop/cupboard.h"

#include <variant>

namespace stow::intake {

struct Counted {
    std::variant<shop::GoodCode, shop::SupplyCode> what;
    shop::Amount found; // of goods: whole pieces
};
Taken<Counted> read_stock(const Csv& csv, const shop::Cupboard& known);

} // namespace stow::intake
