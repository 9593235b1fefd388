// Supplies from a table: outers and everything used up in packing. One row a supply. A star marks what must be there.
//
//   code*, name*
//   kind*            outer, wrap, filler, tape, label, insert, ribbon or paper
//   unit             piece, litre, m or kg: what it is counted and weighed in; blank: piece
//   outer_kind       of an outer: carton, gift-box, mailer, padded-mailer, board-mailer or tube; the sizes by kind:
//     carton, gift-box         inner_length_mm, inner_width_mm, inner_height_mm and the three outer_..._mm, closed
//     mailer, padded-mailer    inner_length_mm to the fold of the closed flap, inner_width_mm; outer_height_mm is the
//                              empty thickness; ease_length_mm, ease_width_mm kept free; wall_mm of one wall
//     board-mailer             as a carton; inner_height_mm is the greatest thickness; wall_mm
//     tube                     inner_diameter_mm, inner_length_mm, outer_diameter_mm, outer_length_mm
//   cut_heights_mm   inner heights a carton may be cut down to: "120 90"
//   max_load_g       greatest load of an outer
//   sheet_length_mm, sheet_width_mm, sheet_thickness_mm      of an insert or a paper, unfolded
//   folded_length_mm, folded_width_mm, folded_thickness_mm   smallest size an insert may be folded to
//   least_roll_mm    smallest diameter an insert may be rolled to; blank: it travels flat
//   weight_g*        of one unit: tare of an outer, grams of a litre of filler, of a metre of tape
//   spread_g         blank: 2 %, at least 0.5 g
//   material         paper, plastic, glass, wood, ferrous, aluminium, composite, other; blank: paper
//   cost, currency   of one unit; currency blank: the house's
//   pack             bought by this many units; blank: 1
//   supplier, lead_days
//   on_hand, reorder_at   in its unit
//   minutes          to make up one
//   made_from, takes code of the paper an own box is made of, and sheets for one; blank: bought ready
//   reused           yes: came in with somebody else's goods and is used again; blank: no
//
// Inner sizes are rounded down to 0.1 mm, outer ones up.
#pragma once

#include "core/intake/csv.h"
#include "core/intake/taken.h"
#include "core/shop/supplies.h"

namespace stow::intake {

Taken<shop::Supply> read_supplies(const Csv& csv, const Currency& house_currency);

} // namespace stow::intake
