// A rate sheet while it is being typed: words in cells, not yet all sound. Steps stand as carriers print them, one
// table a service and format, a row a weight, a column a zone. What is typed is read by the same reader as a file
// (rate_sheet_csv.h), so both know the same words.
#pragma once

#include "core/intake/problem.h"
#include "core/postage/rate_sheet.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace stow::intake {

// A row that is no step. `details` as in the file; of a service also "tax 25" (percent, its own); for surcharge, beyond
// and volume they may also say "service packet", "zone EU 1", "format box", "grams 20000", "from 2026-11-01", "until
// 2026-12-24".
struct TypedPart {
    std::string record;  // service, zone, format, surcharge, beyond, volume, holiday
    std::string name;    // its code or name
    std::string amount;  // "4.00" or "7.5 %"; of a service its title
    std::string details; // "DK / SE 62", "length to 353 / height to 25"
    friend bool operator==(const TypedPart&, const TypedPart&) = default;
};

struct TypedRow { // up to a weight
    std::string grams;
    std::vector<std::string> prices; // by zone, in the order of the zones; blank: no such step
    friend bool operator==(const TypedRow&, const TypedRow&) = default;
};

struct TypedTable {
    std::string service, format;
    std::vector<TypedRow> rows;
    friend bool operator==(const TypedTable&, const TypedTable&) = default;
};

struct TypedSheet {
    std::string carrier, currency = "EUR", tax, from, until;
    std::vector<TypedPart> parts;
    std::vector<TypedTable> tables;

    std::vector<std::string> names(std::string_view record) const; // in order, blank ones left out
    // The table of a service and format ("": any size); made when it is not there yet.
    TypedTable& table(const std::string& service, const std::string& format);
    friend bool operator==(const TypedSheet&, const TypedSheet&) = default;
};

TypedSheet typed(const postage::RateSheet& sheet, char decimal_mark = '.'); // of prices, percents and grams

struct TypedFault {
    enum class At { sheet, part, row, price } at = At::sheet;
    std::size_t part = 0;          // index of the part; of a row or price, of its table
    std::size_t row = 0, zone = 0; // in the table
    ProblemKind kind = ProblemKind::missing_value;
    std::string value{}, detail{};
};

struct ReadSheet {
    std::optional<postage::RateSheet> sheet; // of all that is sound; nothing: not even a carrier
    std::vector<TypedFault> faults;
};
// Blank rows and cells are nothing and no fault. Numbers may have a decimal comma.
ReadSheet read(const TypedSheet& sheet);

// Puts cells pasted from a spreadsheet (tabs and lines, as the clipboard gives them) into the table, the first at this
// row and column (0: weights, then the zones); rows are added as needed. Units and currency beside a number are taken
// off. Gives how many cells were put.
int paste(TypedTable& table, std::size_t zones, std::size_t row, std::size_t column, std::string_view text);

// The sheet that follows: from the day after this one ends (or a year after it began) for a year, seasons a year later,
// holidays to be entered anew.
postage::RateSheet next_year(const postage::RateSheet& sheet);

} // namespace stow::intake
