// How the workshop works, from a table of two columns, `setting` and `value`. Settings that are not there keep their
// defaults (core/shop/house.h):
//
//   name, company, street, street_2, postcode, town, region, country   the sender; country a code
//   contact          on labels and lists
//   currency         ISO 4217
//   trays            picking trays she owns
//   ease_mm          for hands, in every outer
//   lining_mm        least kept free along the walls
//   rattle_mm        narrower slack cannot be filled by hand
//   overfill_percent
//   bulge_mm         a closed parcel grows by this
//   heavy_g          lifting caution from here
//   filler, tape, label    codes of supplies used unless something else is said
//   batch_percent, humidity_percent    common spreads
//   scale_step_g     resolution of the scale
//   cut_minutes      to cut a carton down to a lower height
//   hour_cost        what an hour of her time counts for when ways to pack are compared; 0: it does not
//   forget_months    buyers' names and addresses are erased so long after the order; 0: kept
//   paper            a4 or letter
//   margin_mm        left and right on sheets, 8 to 40
//   label_form       100x150, a6, 62 (a roll), a4x4 or a4x6 (several on a sheet)
//   logo             a picture file, for slips
//   black_only       yes: papers without colours and tints
//   service_percent  chance of not running out of a supply while an order of it is on its way
#pragma once

#include "core/intake/csv.h"
#include "core/intake/taken.h"
#include "core/shop/cupboard.h"

namespace stow::intake {

// One row at most: `known.house` with the settings of the file. Codes are checked against the supplies of `known`
// where it has any.
Taken<shop::House> read_house(const Csv& csv, const shop::Cupboard& known);

} // namespace stow::intake
