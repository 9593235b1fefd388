// The data report of a USB scale (USB-IF HID Point of Sale Usage Tables 1.02, page 0x8D) to a weight.
//
// Five bytes, the report id taken off before: status, unit, power of ten (signed), weight low byte, weight high byte.
// The tables allow other orders by descriptor; this is the common one. Status and unit are indices into the arrays of
// the page: status n is usage 0x70 + n, unit n is usage 0x50 + n.
#pragma once

#include "core/measure/quantity.h"

#include <cstdint>
#include <tl/expected.hpp>
#include <vector>

namespace stow::weighing {

enum class ScaleFault {
    not_a_report, // not five bytes, or a status the page does not have
    fault,        // the scale says that it is broken
    in_motion,
    over_limit,
    needs_calibration,
    needs_zero,
    unknown_unit, // counts, tons and taels among them
    out_of_range
};

// A settled weight, rounded to 0.1 g; negative under zero.
tl::expected<Weight, ScaleFault> read_scale_report(const std::vector<std::uint8_t>& bytes);

} // namespace stow::weighing
