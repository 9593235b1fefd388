// One carrier's table of prices, as she enters it. Plain values; `check` finds what is wrong with them.
#pragma once

#include "core/measure/date.h"
#include "core/measure/money.h"
#include "core/measure/quantity.h"

#include <optional>
#include <string>
#include <vector>

namespace stow::postage {

// Greatest and least closed sizes. A parcel's own edges are sorted, so length >= width >= height. Nothing: no limit.
struct Format {
    std::string name; // "letter", "large letter", "parcel"
    std::optional<Length> most_length, most_width, most_height;
    std::optional<Length> least_length, least_width, least_height;
    std::optional<Length> most_sum;                          // length + width + height
    std::optional<Length> most_girth;                        // length + girth, girth = 2 (width + height)
    std::optional<Length> roll_most_length, roll_most_sum;   // rolls: length, length + 2 diameters
    std::optional<Length> roll_least_length, roll_least_sum; // with any roll limit set, a roll is judged by these alone
    Length tolerance;                                        // the carrier lets every limit be missed by this much
    std::optional<std::int64_t> least_ratio, most_ratio;     // length to width, in permille: 1400 is 1.4 : 1
    friend bool operator==(const Format&, const Format&) = default;
};

struct Place {                              // a country, or the part of it whose postcodes begin so or lie in a range
    std::string country;                    // ISO 3166-1 alpha-2; "*": every country that no other place names
    std::string postcode_from, postcode_to; // empty: the whole country; equal: a prefix
    friend bool operator==(const Place&, const Place&) = default;
};

struct Zone {
    std::string name;
    std::vector<Place> places; // the longest matching postcode rule of all zones wins
    friend bool operator==(const Zone&, const Zone&) = default;
};

struct Step {                          // price up to a weight
    std::string service, zone, format; // format empty: any size
    Weight up_to;                      // inclusive
    Money price;
    friend bool operator==(const Step&, const Step&) = default;
};

struct BeyondLast { // per started kilogram past the last step
    std::string service, zone, format;
    Money per_kg;
    Weight most;
    friend bool operator==(const BeyondLast&, const BeyondLast&) = default;
};

struct VolumeStep { // price up to a closed volume; where weight has steps too, the dearer of both counts
    std::string service, zone, format;
    Volume up_to; // inclusive
    Money price;
    Weight most; // the heaviest it takes
    friend bool operator==(const VolumeStep&, const VolumeStep&) = default;
};

struct CutOff { // of one weekday, ISO 1 (Monday) to 7
    int weekday = 1;
    TimeOfDay at{};
    friend bool operator==(const CutOff&, const CutOff&) = default;
};

struct Service {
    std::string code, name;
    bool tracked = false;
    std::optional<Money> cover;        // goods up to this value, none above it; nothing: sent without cover
    int days_least = 1, days_most = 1; // of delivery, working days
    std::optional<TimeOfDay> cut_off;  // of hand-over
    std::vector<int> weekdays;         // of collection, ISO 1 (Monday) to 7; empty: all working days
    std::optional<std::int64_t> volumetric_divisor; // cm³ for one kg
    Weight volumetric_rounding = grams(500);        // charged weight is rounded up to this
    std::vector<std::string> not_sent;              // "flammable", "liquid", "glass"
    std::optional<Volume> volumetric_above;         // volumetric weight counts only for parcels larger than this
    std::optional<std::int64_t> tax_permille;       // instead of the sheet's
    std::vector<CutOff> cut_offs;                   // on these weekdays instead of `cut_off`
    Length sides_to;                                // sides are rounded to whole ones of this for volumes; zero: not
    bool sides_up = true;                           // up; else to the nearest, halves up
    bool parcel_post = false;                       // goes as a parcel, not as letter post: always a CN 23 abroad
    std::int64_t roll_permille = 1000;              // a roll counts as so much of its block: 785 is its cylinder (π/4)
    friend bool operator==(const Service&, const Service&) = default;
};

// Below zero: a discount, which takes no more than what stands before it.
struct Surcharge {
    std::string name;
    std::string service; // empty: all
    std::string zone;    // empty: all
    enum class Kind { percent, fixed, per_kg, percent_of_value } kind = Kind::fixed;
    std::int64_t permille = 0; // of the base price, or of the goods' value
    Money amount;              // for fixed and per_kg
    // On what condition; all that are set must hold.
    std::optional<Length> longer_than;
    std::optional<Weight> heavier_than;
    bool only_rolls = false;
    std::optional<Date> from, until; // inclusive
    std::string format;              // empty: all
    std::vector<std::string>
        also_of; // percent: taken of these surcharges too, named before it ("fuel on base and toll")
    std::optional<Length> wider_than; // the second longest edge
    std::optional<Length> girth_over; // length + girth
    std::optional<Volume> larger_than;
    bool only_unboxed = false;        // rolls and mailers
    std::optional<Money> value_above; // goods worth more than this
    std::vector<Place> places;        // empty: everywhere in the zone
    friend bool operator==(const Surcharge&, const Surcharge&) = default;
};

struct RateSheet {
    std::string carrier;
    Currency currency;
    std::optional<Date> valid_from, valid_until; // inclusive
    std::int64_t tax_permille = 0;               // on top of base and surcharges
    std::vector<Service> services;
    std::vector<Zone> zones;
    std::vector<Format> formats;
    std::vector<Step> steps;
    std::vector<BeyondLast> beyond;
    std::vector<Surcharge> surcharges;
    std::vector<VolumeStep> volume_steps;
    std::vector<Date> holidays; // nothing is collected or delivered
    friend bool operator==(const RateSheet&, const RateSheet&) = default;
};

enum class SheetFault {
    no_steps,         // none at all, or none in a zone, or per kilogram without a step below it
    gap_in_zones,     // postcodes of a country between those that zones name
    overlap_in_zones, // two zones claim a place equally well
    falling_price,    // a heavier or larger parcel costs less, or a price below zero
    unreachable_step, // never paid: a weight of nothing, the next step costs the same, or a roomier format does
    unknown_service,
    unknown_zone,
    unknown_format,
    dates_reversed, // of validity or season; also a range of postcodes
    expired,
    mixed_currency,
    repeated_step,     // also a service, zone or format that stands there twice
    unknown_surcharge, // named by a percentage, and not there before it
    missing_country,   // she sends there, and no zone names it
    expires_soon       // within the time asked for, and no sheet follows
};

struct SheetProblem {
    SheetFault fault;
    std::string where;  // "packet, zone EU 1, large letter, 500 g"
    bool stops = false; // the sheet cannot be used
    friend bool operator==(const SheetProblem&, const SheetProblem&) = default;
};

struct SheetContext { // what is known besides the sheet
    Date today;
    std::vector<std::string> countries{}; // she sends to; each should be in a zone
    bool followed = true;                 // another sheet of the carrier goes on where this one ends
    int soon_days = 42;
};

// In the order of the sheet's own parts.
std::vector<SheetProblem> check(const RateSheet& sheet, const SheetContext& context);
std::vector<SheetProblem> check(const RateSheet& sheet, Date today);

} // namespace stow::postage
