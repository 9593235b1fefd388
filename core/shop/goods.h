// What she sells.
#pragma once

#include "core/measure/money.h"
#include "core/measure/shape.h"
#include "core/shop/codes.h"
#include "core/shop/materials.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace stow::shop {

struct WeightEstimate { // of one piece: mean and standard deviation
    Weight mean;
    Weight spread;
    friend bool operator==(const WeightEstimate&, const WeightEstimate&) = default;
};

enum class Restriction { none, flammable, ask_carrier }; // what the carrier must be asked about
std::string_view name_of(Restriction restriction);       // "none", "flammable", "ask carrier"
std::optional<Restriction> restriction(std::string_view name);

struct SetPart { // a good and how many of it
    GoodCode good;
    int count = 1;
    friend bool operator==(const SetPart&, const SetPart&) = default;
};

struct Good {
    GoodCode code;
    std::string name;
    Shape shape; // of the largest piece, unwrapped
    WeightEstimate weight;
    Turns turns;
    bool fragile = false;
    std::optional<Weight> top_load; // what may stand on it; nothing: unlimited, or nothing at all if fragile
    Length cushion;                 // needed on all six sides
    bool liquid = false;
    std::optional<int> softens_above_c;
    Restriction restriction = Restriction::none;
    WrappingCode wrapping; // empty: none
    MaterialShare own_packaging;
    std::string shelf;
    int pieces = 0; // on hand when taken in; afterwards the ledger knows
    int lowest = 0; // make more below this
    std::string gtin;
    std::optional<Money> price;
    std::string customs_words;
    std::string hs_code;
    std::string origin;         // ISO 3166-1 alpha-2
    std::vector<SetPart> parts; // not empty: a set, packed from its parts
    SupplyCode gift_box;        // of a set; empty: parts go in loose
};

} // namespace stow::shop
