// What a parcel costs with each service, or one reason why the service cannot take it.
#pragma once

#include "core/measure/shape.h"
#include "core/postage/rate_sheet.h"

#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace stow::postage {

struct ParcelFacts {
    Size closed;       // of the outer, as it is handed over
    bool roll = false; // a tube: closed.x = closed.y = diameter, closed.z = length
    Weight weight;
    std::string country, postcode;
    std::optional<Money> value;     // of the goods, for cover
    std::vector<std::string> holds; // "flammable", "liquid", "glass"
    Date hand_over;
};

enum class NotTaken { not_valid_then, no_zone, too_big, too_small, too_heavy, not_admitted, not_covered, no_price };

struct Refused {
    NotTaken reason;
    std::optional<Length> over_by; // too_big: by how much the nearest format is missed
    std::string what;              // the format, the content, the limit missed: "length", "sum", "girth"
};

struct Part {
    enum class Kind { base, surcharge, tax } kind = Kind::base;
    std::string name;
    Money amount;
};

struct Price {
    Money total;
    std::vector<Part> parts; // they add up to the total
    std::string zone, format;
    Weight charged;                  // the greater of actual and volumetric weight, rounded as the service says
    std::optional<Weight> step_edge; // upper weight of the step paid for, actual grams
    std::optional<Money> next_step;  // total at the next step of the same format
};

struct Quote {
    std::string carrier, service, service_name;
    bool tracked = false;
    int days_most = 1;
    std::variant<Price, Refused> result;
    const Price* price() const { return std::get_if<Price>(&result); }
};

// One quote a service, in the order of the sheets. Where several sheets of a carrier exist, the one valid on the day of
// hand-over counts; the cheapest format that takes the parcel is used.
std::vector<Quote> quotes(const std::vector<RateSheet>& sheets, const ParcelFacts& parcel);

// The prices along a service's weight axis for a parcel of this size and place: the marks of the postage ruler.
struct Mark {
    Weight up_to;
    Money total;
};
std::vector<Mark> ruler(const RateSheet& sheet, const std::string& service, const ParcelFacts& parcel);

} // namespace stow::postage
