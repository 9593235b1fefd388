// Goods from a table. One row a good; the heading names the column, in any order. A star marks what must be there.
//
//   code*            as she writes it: INK-SEA-30
//   name*
//   shape*           block, cylinder, sheet, roll or soft; not needed for a set, which is packed from its parts
//   length_mm, width_mm, height_mm     of a block, as it stands; a sheet lies: length_mm, width_mm, thickness_mm
//   diameter_mm      of a cylinder, with height_mm, standing; of a roll, with length_mm, lying
//   least_roll_mm    smallest diameter a sheet may be rolled to; blank: stiff
//   volume_ml, least_mm                of a soft good: its volume and its least thickness
//   weight_g*        mean of one piece; not needed for a set
//   spread_g         standard deviation; blank: 2 % of the mean, at least 0.5 g (an assumption until weighings teach)
//   turns            any, upright or flat; blank: any
//   fragile          yes or no
//   top_load_g       what may stand on it; blank: anything, or nothing on a fragile good
//   cushion_mm       needed on all six sides
//   liquid           yes or no
//   softens_above_c  wax and the like, in whole degrees Celsius
//   restriction      none, flammable or ask carrier
//   wrapping         code of a wrapping
//   packaging_material, packaging_g    its own packaging: paper, plastic, glass, wood, ferrous, aluminium, composite,
//   other shelf            place on the shelves; the pick list is sorted by it pieces, lowest   on hand; make more
//   below gtin             8, 12, 13 or 14 digits with a right check digit price, currency  of one piece; currency
//   blank: the house's customs_words, hs_code, origin     hs_code of 6 to 10 digits; origin a country code parts of a
//   set: "2 INK-SEA-30 + NIB-TIN" gift_box         of a set: code of an outer; blank: parts go in loose
//
// Sizes are of the largest piece and are rounded up to 0.1 mm.
#pragma once

#include "core/intake/csv.h"
#include "core/intake/taken.h"
#include "core/shop/cupboard.h"

namespace stow::intake {

// `known` holds the wrappings, supplies and goods that a row may refer to besides those of this file.
Taken<shop::Good> read_goods(const Csv& csv, const shop::Cupboard& known);

} // namespace stow::intake
