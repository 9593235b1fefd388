// One postage question as JSON, and its answer: what `stowbench price` reads and prints.
//
//   {"rate_sheets":["skua.csv"],
//    "parcel":{"closed_mm":[250,180,90.5],"roll":false,"weight_g":812,"country":"DE","postcode":"20095",
//              "value":"39.90 EUR","holds":["glass"],"hand_over":"2026-11-25"}}
//
// Needed: rate_sheets, closed_mm, weight_g, country, hand_over. A roll is [diameter, diameter, length]; "soft" says a
// mailer. Sizes round up
// to 0.1 mm, weight to 0.1 g. Unknown or repeated members, and sizes and weights that are not above zero, are refused
// by name.
//
//   {"services":[{"carrier":"..","service":"..","name":"..","tracked":true,"days_most":4,"total":"12.34 EUR",
//                 "parts":[{"kind":"base","name":"packet","amount":"9.87 EUR"}],"zone":"EU 1","format":"packet",
//                 "charged_g":812,"step_edge_g":1000,"next_step":"17.80 EUR","covered":true},
//                {"carrier":"..", ..., "reason":"too_big","what":"length","format":"letter","over_by_mm":10}]}
//
// A service has either a total or a reason. `next_step` is missing where the service takes no more, `covered` where the
// value was not given or is in another currency.
#pragma once

#include "core/intake/problem.h"
#include "core/postage/quote.h"

#include <string>
#include <string_view>
#include <tl/expected.hpp>
#include <vector>

namespace stow::intake {

struct PriceQuestion {
    std::vector<std::string> rate_sheets; // paths, as written
    postage::ParcelFacts parcel;
};

// Only the text is read, no file. The problem names the member in `column` ("parcel.weight_g").
tl::expected<PriceQuestion, Problem> read_price_question(std::string_view json);
std::string write_price_answer(const std::vector<postage::Quote>& quotes);

struct PriceAnswer {
    std::string json;
    std::vector<Problem> problems; // rows of the rate sheets that were left out
};

// The whole command: question file, rate sheets (paths from the question's folder, else the current one), quotes.
// Refused with the problems: an unsound question, a sheet that cannot be read or has a fault that stops
// (postage::check; the fault's place in `value`).
tl::expected<PriceAnswer, std::vector<Problem>> answer_price_file(const std::string& path);

// As the answer writes them: "too_big", "surcharge".
std::string_view name_of(postage::NotTaken reason);
std::string_view name_of(postage::Part::Kind kind);

} // namespace stow::intake
