// One parcel: given pieces into the best outer on hand, with the reasons why not into the others.
#pragma once

#include "core/fitting/asked.h"
#include "core/planning/costing.h"
#include "core/planning/merit.h"
#include "core/planning/planner.h"
#include "core/planning/stock.h"

#include <optional>
#include <vector>

namespace stow::planning {

struct Bench { // what all parcels of a day are packed from
    const shop::Cupboard& cupboard;
    const Services& services;
    const Wish& wish;
    Run& run;
    fitting::Memory* memory = nullptr;
    fitting::Asked* asked = nullptr;
};

struct Task { // what one parcel is to hold
    std::vector<shop::Piece> pieces;
    std::vector<const shop::HeldOrder*> orders; // packed together in it; at least one
    std::optional<shop::SupplyCode> by_hand; // this outer and no other, even if none is on hand or it must be squeezed
    bool first = true;                       // of a split order: carries inserts and gift note
};

struct PackedWay { // an outer on hand that holds the load and that a service takes
    Merit merit;
    Volume closed;
    Money cost; // packaging and postage
    std::vector<Used> uses;
};

struct Packed {
    std::optional<ParcelPlan> plan;
    std::vector<PassedOver> passed_over;    // as in the plan; without one, every outer
    std::vector<postage::Quote> quotes;     // without a plan: of the smallest parcel that no service takes
    std::optional<shop::SupplyCode> missed; // a better outer of which none is left
    bool all_decided = true;                // none of the outers passed over is left undecided
    std::vector<PackedWay> ways;            // where every way was asked for: the best first
};

// Gift boxes are candidates only by hand: nobody posts one by default.
bool is_offered(const shop::Supply& supply);

// An outer that gives less cushion at its walls than the goods need is passed over. Effort as `wish.prove` says.
// `every_way`: outers that cannot be the best are tried too, for sharing out.
Packed pack(const Bench& bench, const Task& task, const Contents& contents, const Stock& stock, bool every_way = false);

// The task of packing these pieces, with the orders they belong to in the order in which the pieces name them.
Task task_of(const std::vector<shop::HeldOrder>& orders, const std::vector<shop::Piece>& pieces,
             const std::optional<shop::SupplyCode>& by_hand);

// Where the orders of a task go, what they are worth, and what was promised.
Destination destination_of(const Task& task, Currency currency);

} // namespace stow::planning
