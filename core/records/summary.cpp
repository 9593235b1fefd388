#include "core/records/summary.h"

namespace stow::records {

namespace {

void add_goods(Summary& summary, const shop::GoodCode& code, std::int64_t count, const std::string& country,
               const shop::Cupboard& cupboard)
{
    const shop::Good* good = cupboard.good(code);
    if (good == nullptr) return;
    if (!good->parts.empty()) {
        for (const shop::SetPart& part : good->parts)
            add_goods(summary, part.good, part.count * count, country, cupboard);
        return;
    }
    summary.goods += volume(bounding_size(good->shape)) * count;
    const shop::MaterialShare& own = good->own_packaging;
    if (own.weight > Weight{}) summary.packaging_by_material[{own.material, country}] += own.weight * count;
}

} // namespace

std::optional<int> Summary::empty_permille() const
{
    if (closed <= Volume{}) return std::nullopt;
    // Millilitres: permille of many parcels' 0.001 mm³ would not fit.
    const std::int64_t whole = closed.units / 1'000'000;
    const std::int64_t empty = whole - goods.units / 1'000'000;
    return static_cast<int>((empty * 1000 + whole / 2) / whole);
}

Summary summarise(const std::vector<PackedParcel>& parcels, const shop::Cupboard& cupboard)
{
    Summary summary;
    summary.postage.currency = summary.packaging.currency = cupboard.house.currency;
    const auto add = [&](Money& sum, const Money& amount) {
        if (amount.currency == sum.currency)
            sum += amount;
        else
            ++summary.in_other_currency;
    };
    Weight off;
    for (const PackedParcel& parcel : parcels) {
        ++summary.parcels;
        if (parcel.postage) add(summary.postage, *parcel.postage);
        add(summary.packaging, parcel.plan.packaging);
        summary.closed += volume(parcel.plan.closed);
        for (const shop::Piece& piece : parcel.plan.pieces) {
            add_goods(summary, piece.good, piece.count, parcel.country, cupboard);
        }
        if (parcel.weighed) {
            const Weight difference = *parcel.weighed - parcel.plan.weight.mean;
            off += difference < Weight{} ? -difference : difference;
            ++summary.weighed;
        }
        for (const planning::Used& used : parcel.plan.uses) {
            const shop::Supply* supply = cupboard.supply(used.supply);
            if (supply == nullptr) continue;
            summary.packaging_by_material[{supply->material, parcel.country}] +=
                Weight{used.amount.thousandths * supply->weight.mean.units / 1000};
        }
    }
    if (summary.weighed > 0) summary.off_by = {(off.units + summary.weighed / 2) / summary.weighed};
    return summary;
}

} // namespace stow::records
