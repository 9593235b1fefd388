// Rate sheets as tables of text, one file a sheet of a carrier. Our own format:
//
//   record, name, service, zone, format, grams, price, percent, from, until, details
//
// `record` says what the row is; cells a record does not use stay blank. Amounts are in the sheet's currency, sizes in
// mm, percent with one decimal at most, dates as 2026-11-25. Details stand in one cell, set apart by " / ".
//
//   sheet      name: the carrier; percent: tax; from, until: validity; details: currency EUR
//   service    service: its code; name; percent: its own tax; details: tracked / parcel post / cover 100 / days 2 to 4
//   /
//              cut-off 16:30 / cut-off Sat 12:00 / collected Mon Tue / divisor 5000 / rounding 500 (g) / above 28.3
//              (litres) / sides up to 10 (mm; or: sides nearest 10) / rolls count 78.5 (percent of their block) /
//              not sent flammable, liquid
//   zone       zone; details: places, such as DK / DE 20 to 29 (postcodes that begin so) / SE 62 / * (all other
//              countries)
//   format     format; details: length 140 to 600 / width from 90 / height to 300 / sum to 900 / girth to 3000 /
//              ratio from 1.4 (length to width) / roll length 100 to 900 / roll sum 170 to 1040 / tolerance 2
//   step       service, zone, format (blank: any size); grams: up to this weight; price
//   beyond     service, zone, format; grams: the most it takes; price: of each started kilogram past the last step
//   volume     service, zone, format; grams: the most it weighs; price; details: litres 20 (up to this closed volume)
//   surcharge  name; service, zone, format (blank: all); price or percent, below zero a discount; from, until: season;
//              details: per kg / of value (percent) / with toll, fuel (percent of these too) / longer than 1000 (mm) /
//              wider than 600 / girth over 2000 / larger than 100 (litres) / heavier than 10000 (g) / value above 50 /
//              rolls / not boxed / in DK 3700 to 3799, SE 62 (only there)
//   holiday    from, until: days on which nothing is collected or delivered
//
// Rows may stand in any order; a zone may take several.
#pragma once

#include "core/intake/problem.h"
#include "core/postage/rate_sheet.h"

#include <iosfwd>
#include <optional>
#include <string>
#include <vector>

namespace stow::intake {

struct TakenRates {
    std::optional<postage::RateSheet> sheet; // nothing: no row says whose sheet this is, or the file could not be read
    std::vector<Problem> problems;           // in the order of the file; rows with one that stops are left out
};

// What the rows mean together (gaps, falling prices) is for postage::check to say.
TakenRates read_rate_sheet(std::istream& in, std::string name);
TakenRates read_rate_sheet_file(const std::string& path);

// Reads back as the same value. Percent surcharges have no amount, others no percent.
std::string write_rate_sheet(const postage::RateSheet& sheet);

} // namespace stow::intake
