// How a parcel leaves: its customs data, the files for carriers and shops, the message to the buyer.
#pragma once

#include "app/day.h"
#include "core/book/parcels.h"
#include "core/papers/customs.h"

#include <optional>
#include <string>

namespace stow {

struct ParcelCustoms {
    shop::Border border = shop::Border::none;
    shop::CustomsForm form = shop::CustomsForm::none;
    papers::CustomsData data;
};
// Nothing to declare: no border.
ParcelCustoms customs_of(const Day& day, const book::HeldParcel& held);

// All parcels of the carrier that are packed or labelled and not handed over yet, in the columns she set for it.
std::string send_file(const Day& day, const std::string& carrier);
// All parcels handed over today with orders of the shop, in the columns the shop asks for.
std::string shop_file(const Day& day, const std::string& shop);

// In the buyer's language; the first order's.
std::string dispatch_message(const Day& day, const book::HeldParcel& held);

} // namespace stow
