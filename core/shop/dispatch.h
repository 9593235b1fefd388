// How her parcels leave the house on paper and in files: settings she keeps once and changes when a carrier, a shop or
// a customs office changes its mind.
#pragma once

#include "core/measure/money.h"
#include "core/measure/quantity.h"
#include "core/shop/codes.h"

#include <optional>
#include <string>
#include <vector>

namespace stow::shop {

// A part of a country that lies outside (or inside, against its country) a customs or tax area.
struct SpecialPlace {
    std::string country, postcode_from, postcode_to; // as in rate sheets: both empty is the whole country
    std::string name;
    bool in_customs_area = false, in_tax_area = false; // of the European Union
    friend bool operator==(const SpecialPlace&, const SpecialPlace&) = default;
};

struct CustomsRules {
    std::vector<SpecialPlace> places;
    // Letter post up to this value and weight takes a CN 22, above it a CN 23; parcels always take a CN 23. Posts
    // differ in the amount (300 SDR, rounded by each) and on which side of it the amount itself falls.
    Money cn22_up_to{35000, {}};
    bool limit_included = true;
    Weight cn22_most = grams(2000);
    friend bool operator==(const CustomsRules&, const CustomsRules&) = default;
};

// Numbers that a foreign office asks of the sender. Shown only where asked, never on slips, never in words of a step.
struct TaxNumbers {
    std::string vat, eori, import_scheme;
    friend bool operator==(const TaxNumbers&, const TaxNumbers&) = default;
};

struct FileColumn { // of a file that goes out: its heading, and what stands in it
    std::string heading;
    std::string field; // one of send_fields(), or "text" for the same words in every row
    std::string words{};
    friend bool operator==(const FileColumn&, const FileColumn&) = default;
};

struct OutFile {    // to a carrier before posting, or back to a shop after it
    std::string to; // carrier or shop
    std::vector<FileColumn> columns;
    char delimiter = ',';
    char decimal_mark = '.';
    friend bool operator==(const OutFile&, const OutFile&) = default;
};

struct DispatchText {     // a message to the buyer
    std::string language; // ISO 639-1: "en", "de"
    std::string text;     // with {name}, {order}, {number}, {carrier}, {service}, {arrives}, {workshop}
    friend bool operator==(const DispatchText&, const DispatchText&) = default;
};

struct Stamp { // a supply that pays postage
    SupplyCode supply;
    Money face;
    friend bool operator==(const Stamp&, const Stamp&) = default;
};

struct Dispatch {
    CustomsRules customs;
    TaxNumbers tax_numbers;
    std::vector<OutFile> send_files, shop_files;
    std::vector<DispatchText> texts;
    std::vector<Stamp> stamps;
    friend bool operator==(const Dispatch&, const Dispatch&) = default;
};

// What she starts with: the places we know of, from memory, for her to correct; texts in English and German; a plain
// set of columns for every carrier and shop that has none of its own.
Dispatch first_dispatch();
const std::vector<FileColumn>& plain_send_columns();
const std::vector<FileColumn>& plain_shop_columns();

// What may stand in a column: "parcel", "name", "weight g"...
const std::vector<std::string>& send_fields();

} // namespace stow::shop
