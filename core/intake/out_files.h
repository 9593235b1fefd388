// Files that leave the house: addresses, weights and sizes to a carrier before posting, tracking numbers back to a shop
// after it; and tracking numbers as a carrier gives them.
#pragma once

#include "core/intake/csv.h"
#include "core/planning/plan.h"
#include "core/shop/dispatch.h"
#include "core/shop/orders.h"
#include "core/shop/parcels.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace stow::intake {

struct OutRow { // one parcel, or one order of it
    const shop::Parcel& parcel;
    const planning::ParcelPlan& plan;
    const shop::HeldOrder& order;
    std::string service_name;
    std::string contents; // in customs words, of the whole parcel
    std::optional<Money> value;
    std::optional<Date> handed_over;
};

// What stands in a field of send_fields(); weight by the last weighing, else by the plan. Numbers with the file's
// decimal mark, dates as 2026-11-25.
std::string out_field(const shop::FileColumn& column, const OutRow& row, const shop::TaxNumbers& numbers,
                      char decimal_mark);

// Heading and one line a row, as RFC 4180 writes it with the file's delimiter; UTF-8.
std::string write_out_file(const shop::OutFile& file, const std::vector<OutRow>& rows, const shop::TaxNumbers& numbers);

struct TakenTracking {
    std::map<std::string, std::string> by_parcel; // tracking number by parcel number
    std::vector<Problem> problems;                // rows left out, and S10 numbers whose check digit is wrong
};
// From a carrier's file, whatever its columns: of each row the one cell that is a parcel's number of `known` and the
// one that looks like a tracking number (8 to 40 capitals and digits, at least 6 of them digits; an S10 number before
// others).
TakenTracking read_tracking(const Csv& csv, const std::vector<std::string>& known);
// Pasted: "2611-017 RR123456785DK", one a line, in either order; or numbers alone for the parcels `in_turn`.
TakenTracking read_pasted_tracking(std::string_view text, const std::vector<std::string>& known,
                                   const std::vector<std::string>& in_turn);

} // namespace stow::intake
