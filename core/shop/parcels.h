// Parcels: which pieces of which orders travel together, and how far they have come.
#pragma once

#include "core/measure/date.h"
#include "core/measure/money.h"
#include "core/measure/quantity.h"
#include "core/shop/codes.h"
#include "core/shop/goods.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace stow::shop {

enum class ParcelState { planned, picked, packed, labelled, handed_over, came_back };
std::string_view name_of(ParcelState state);
std::optional<ParcelState> parcel_state(std::string_view name);

struct Piece { // some of one order line
    OrderId order;
    int line = 0; // index into the order's lines
    GoodCode good;
    int count = 1;
    friend auto operator<=>(const Piece&, const Piece&) = default;
};

enum class WeighingStage { contents, closed, labelled };
std::string_view name_of(WeighingStage stage);
std::optional<WeighingStage> weighing_stage(std::string_view name);

struct Weighing {
    WeighingStage stage = WeighingStage::closed;
    Weight weight;
    bool overridden = false; // she said it is right although it did not look so
    Instant at;
    std::string why{};                        // of overruling
    std::optional<WeightEstimate> expected{}; // before the scale spoke
};

struct Parcel {
    ParcelId id;
    std::string number; // "2611-017": year, month, running number
    ParcelState state = ParcelState::planned;
    std::vector<Piece> pieces;
    bool locked = false;      // the plan is kept: locked by hand, bench card printed, or picked
    int order_version = 1;    // sum of its orders' versions when planned; a later one stops it at its next scan
    std::string tray;         // A, B, C... in a round of picking
    int steps_done = 0;       // at the bench
    std::int64_t scanned = 0; // bit n: the goods of step n were scanned, not only ticked
    std::vector<Weighing> weighings;
    std::string carrier, service;
    std::optional<Money> postage;
    std::string tracking;
    std::optional<ListId> handed_over_on;
    std::string back_why;     // where it came back
    bool written_off = false; // what it held is not sold again
    bool sent_again = false;  // its orders are owed what it held once more
};

} // namespace stow::shop
