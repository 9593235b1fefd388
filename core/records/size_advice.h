// Which sizes to buy: from what was packed and a list of cartons a supplier offers.
#pragma once

#include "core/records/account.h"
#include "core/records/size_choice.h"
#include "core/shop/cupboard.h"

#include <vector>

namespace stow::records {

struct PackedShape { // the block that the contents of one parcel were packed as, cushion included, and their weight
    Size block;
    Weight weight;
    Date packed_on;
};

// Of those packed into cartons.
std::vector<PackedShape> shapes_of(const std::vector<ParcelFacts>& parcels);

struct SizeWish {
    std::vector<shop::Supply> offered; // cartons; others are left out
    Money a_litre;                     // what a litre of closed parcel costs in postage, as she reckons it
    int most = 12;                     // sizes
    int weeks_kept_back = 8;           // the last ones of the history, to judge by; at most a quarter
};

struct SizeAdvice {
    int parcels = 0, kinds = 0;    // looked at, and different blocks among them
    int judged = 0;                // parcels of the weeks kept back
    std::vector<SizeChoice> curve; // for 1, 2, 3... sizes; sizes index `offered`
    // The weeks kept back, a parcel, in hundredths of the minor unit: with the sizes of each point of the curve, and
    // with the cartons she has now. Nothing where one of these parcels goes into none of them.
    std::vector<std::optional<std::int64_t>> judged_cost;
    std::optional<std::int64_t> cost_now;
};

// What a parcel costs in a carton: the carton, filler for the room around the block, tape, and its litres. Nothing: the
// block does not go in, in no turn, or is too heavy.
std::optional<std::int64_t> cost_in(const shop::Supply& carton, const PackedShape& shape,
                                    const shop::Cupboard& cupboard, Money a_litre);

SizeAdvice advise_sizes(const std::vector<PackedShape>& history, const shop::Cupboard& cupboard, const SizeWish& wish,
                        Run& run);

} // namespace stow::records
