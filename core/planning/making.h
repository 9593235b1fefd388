// What to make: goods that planned and waiting orders need beyond what is there, and shelves below their least.
#pragma once

#include "core/shop/cupboard.h"
#include "core/shop/orders.h"

#include <vector>

namespace stow::planning {

struct ToMake {
    shop::GoodCode good;
    int on_hand = 0;
    int reserved = 0;                    // by parcels planned or picked
    int waiting = 0;                     // for orders that are in no parcel yet
    int make = 0;                        // so many more: for all of these, and the least on the shelf
    std::optional<Date> first_promise{}; // of a waiting order that needs it
};

// `reserved`: single goods (the book's pieces_reserved); `waiting`: orders with the pieces that are in no parcel. By
// code.
std::vector<ToMake> making_list(const shop::Cupboard& cupboard, const std::map<shop::GoodCode, int>& reserved,
                                const std::vector<shop::HeldOrder>& waiting);

} // namespace stow::planning
