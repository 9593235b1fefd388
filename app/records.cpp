#include "app/records.h"

#include "core/book/ledger.h"
#include "core/book/orders.h"
#include "core/book/parcels.h"

#include <algorithm>
#include <set>

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

std::vector<records::ParcelFacts> parcel_facts(const Day& day, Date from, Date until)
{
    std::vector<records::ParcelFacts> all;
    std::set<shop::OrderId> paid_for; // an order's postage is told with its first parcel only
    for (book::HeldParcel& held : book::parcels_packed(day.book(), from, until)) {
        records::ParcelFacts facts;
        facts.number = held.parcel.number;
        facts.packed_on = held.packed_on;
        facts.postage = held.parcel.postage;
        for (const shop::Weighing& weighing : held.parcel.weighings) {
            facts.overridden = facts.overridden || weighing.overridden;
            if (weighing.stage != shop::WeighingStage::contents) facts.weighed = weighing.weight;
        }
        facts.came_back = held.parcel.state == shop::ParcelState::came_back;
        facts.restocked = facts.came_back && book::is_restocked(day.book(), held.parcel.id);
        facts.written_off = held.parcel.written_off;
        facts.back_why = held.parcel.back_why;
        facts.again = book::carries_again(day.book(), held.parcel.id);
        for (const shop::Piece& piece : held.parcel.pieces) {
            const auto order = book::order(day.book(), piece.order);
            if (!order) continue;
            if (facts.country.empty()) {
                facts.country = order->order.to.country;
                facts.shop = order->order.key.shop;
                facts.order = order->order.key.number;
            }
            if (!order->order.postage_paid || !paid_for.insert(piece.order).second) continue;
            if (!facts.postage_paid) facts.postage_paid = Money{0, order->order.postage_paid->currency};
            if (facts.postage_paid->currency == order->order.postage_paid->currency) {
                *facts.postage_paid += *order->order.postage_paid;
            }
        }
        facts.plan = std::move(held.plan);
        all.push_back(std::move(facts));
    }
    return all;
}

std::vector<records::ParcelAccount> parcel_accounts(const Day& day, const std::vector<records::ParcelFacts>& facts)
{
    const auto average = book::average_costs(day.book(), day.cupboard().house.currency);
    std::vector<records::ParcelAccount> accounts;
    for (const records::ParcelFacts& one : facts) accounts.push_back(account_of(one, day.cupboard(), average));
    return accounts;
}

std::vector<records::PackedShape> packed_shapes(const Day& day, Date from, Date until)
{
    std::vector<records::PackedShape> shapes;
    for (const book::HeldParcel& held : book::parcels_packed(day.book(), from, until)) {
        const planning::ParcelPlan& plan = held.plan;
        const bool carton =
            !plan.question.outers.empty() && plan.question.outers.front().form.kind == OuterKind::carton;
        if (!carton || plan.placements.empty()) continue;
        Size most{};
        for (const fitting::Placement& p : plan.placements) {
            most.x = std::max(most.x, p.at.x + p.size.x);
            most.y = std::max(most.y, p.at.y + p.size.y);
            most.z = std::max(most.z, p.at.z + p.size.z);
        }
        const Length lining = plan.question.lining; // kept free before the first of them; the far side needs it too
        shapes.push_back(
            {{most.x + lining, most.y + lining, most.z + lining}, plan.contents_weight.mean, held.packed_on});
    }
    return shapes;
}

} // namespace stow
