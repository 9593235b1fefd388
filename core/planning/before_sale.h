// Before anything is sold: what would it cost to send these goods there?
#pragma once

#include "core/planning/planner.h"

namespace stow::planning {

struct Offer { // some pieces of one good, as if somebody in that country had ordered them
    shop::GoodCode good;
    int count = 1;
    std::string country, postcode{};
};

// The parcel it would make, with every service's price; or why it cannot go. Shelf and rack count as full.
tl::expected<ParcelPlan, StuckOrder> before_sale(const shop::Cupboard& cupboard, const Offer& offer,
                                                 const std::vector<postage::RateSheet>& sheets, const Wish& wish,
                                                 Run& run);

struct Charge { // of one row and column of the table
    shop::GoodCode good;
    std::string country;
    std::optional<Money> postage; // of the cheapest service; nothing: cannot go
    std::string carrier, service;
    shop::WeightEstimate weight;
    double risk = 0;                // that the parcel weighs more than the step's edge
    std::optional<Money> next_step; // what it costs then
    // What to charge so that the parcels that cross the edge are paid by all: postage + risk * (next step - postage).
    std::optional<Money> to_charge;
};

// Every good for every destination (country and postcode), goods by code, destinations as given; sets too. Stops early
// with what it has when the run does.
struct SendTo {
    std::string country, postcode;
};
std::vector<Charge> charges(const shop::Cupboard& cupboard, const std::vector<SendTo>& destinations,
                            const std::vector<postage::RateSheet>& sheets, const Wish& wish, Run& run);

} // namespace stow::planning
