#include "app/records.h"

#include "core/book/parcels.h"

namespace stow {

records::Summary records_of(const Day& day, Date from, Date until)
{
    std::vector<records::PackedParcel> packed;
    for (book::HeldParcel& held : book::parcels_packed(day.book(), from, until)) {
        records::PackedParcel parcel;
        parcel.postage = held.parcel.postage;
        if (!held.parcel.weighings.empty()) parcel.weighed = held.parcel.weighings.back().weight;
        const shop::HeldOrder* order = held.plan.pieces.empty() ? nullptr : day.order(held.plan.pieces.front().order);
        if (order != nullptr) parcel.country = order->order.to.country;
        parcel.plan = std::move(held.plan);
        packed.push_back(std::move(parcel));
    }
    return records::summarise(packed, day.cupboard());
}

} // namespace stow
