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
    bool soft = false; // a mailer: neither a box nor a roll
};

// One reason for each service: the first that holds, in the order date, place, content, cover, price, size, weight.
enum class NotTaken { not_valid_then, no_zone, too_big, too_small, too_heavy, not_admitted, not_covered, no_price };

struct Refused {
    NotTaken reason;
    std::optional<Length> over_by;    // too_big, too_small: by how much the nearest format is missed
    std::string what;                 // the content, the cover, or the limit missed: "length", "sum", "volume"
    std::string format;               // too_big, too_small: the nearest format
    std::optional<Weight> heavier_by; // too_heavy: past the last step of the formats that fit
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
    std::optional<Weight> step_edge; // greatest weight on the scale at which the total is still this one
    std::optional<Money> next_step;  // total just past that edge; nothing: the service takes no more
    std::optional<bool> covered;     // is the goods' value; nothing: not asked, or in another currency
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
// Rounding: a percent surcharge is taken of the base price, tax of base and surcharges together; each is rounded once
// to the nearest minor unit, halves away from zero. Per-kilogram prices count started kilograms of the charged weight.
// A percentage may name surcharges before it, which are then added to what it is taken of. A discount takes no more
// than what stands before it. Volume is length * width * height of the sides rounded as the service says, of a roll the
// part of its block that the service says; volumetric weight is volume / divisor. The sheets must have no problem that
// stops (rate_sheet.h); amounts in two currencies throw std::logic_error.
std::vector<Quote> quotes(const std::vector<RateSheet>& sheets, const ParcelFacts& parcel);

// The prices along a service's weight axis for a parcel of this size and place: the marks of the postage ruler. Weights
// are those on the scale; neighbouring marks differ in total. Empty where the service takes no parcel of this kind.
struct Mark {
    Weight up_to; // inclusive
    Money total;
};
std::vector<Mark> ruler(const RateSheet& sheet, const std::string& service, const ParcelFacts& parcel);

// The same for many parcels: names are looked up and steps sorted once. Copies what it needs of the sheets.
class Tariffs {
public:
    explicit Tariffs(const std::vector<RateSheet>& sheets);
    ~Tariffs();
    Tariffs(Tariffs&&) noexcept;
    Tariffs& operator=(Tariffs&&) noexcept;

    std::vector<Quote> quotes(const ParcelFacts& parcel) const;
    // As the free function, by the sheet valid on the day of hand-over; empty where none is.
    std::vector<Mark> ruler(const std::string& carrier, const std::string& service, const ParcelFacts& parcel) const;

private:
    const class Tariff* tariff_of(const std::string& carrier, Date day) const;

    struct Carrier;
    std::vector<Carrier> carriers_;
};

} // namespace stow::postage
