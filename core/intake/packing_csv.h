// Wrappings and house rules from tables. A star marks what must be there.
//
// Wrappings, one a row:
//   code*, name*
//   growth_length_mm, growth_width_mm, growth_height_mm   added to each size of the good in all
//   cushion_mm       what it gives on every side; blank: it is no cushion
//   squeeze_mm       may be pressed by this much by hand
//   uses             for one good: "0.6 BUBBLE + 2 TISSUE", amounts in each supply's own unit
//   weight_g*, spread_g    of the wrapping of one good
//   seconds          to wrap one
//
// House rules, one a row: which insert goes into which order.
//   when*            every order, gift, no gift, abroad, good or value from
//   good             for "good": the code of the good that brings the insert
//   from, currency   for "value from": the goods' value
//   insert*, count   code of a supply, and how many; blank: 1
#pragma once

#include "core/intake/csv.h"
#include "core/intake/taken.h"
#include "core/shop/cupboard.h"

namespace stow::intake {

// Both check their codes against `known`.
Taken<shop::Wrapping> read_wrappings(const Csv& csv, const shop::Cupboard& known);
Taken<shop::HouseRule> read_house_rules(const Csv& csv, const shop::Cupboard& known);

} // namespace stow::intake
