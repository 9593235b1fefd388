#include "app/view/cupboard.h"
#include "app/view/text.h"
#include "app/words/format.h"
#include "core/book/parcels.h"

#include <cmath>

namespace stow::view {

namespace {

constexpr int days_covered = 365;

QString material_word(shop::Material material)
{
    using M = shop::Material;
    using R = RecordsController;
    switch (material) {
    case M::paper: return R::tr("paper and board");
    case M::plastic: return R::tr("plastic");
    case M::glass: return R::tr("glass");
    case M::wood: return R::tr("wood");
    case M::ferrous: return R::tr("steel");
    case M::aluminium: return R::tr("aluminium");
    case M::composite: return R::tr("composite");
    case M::other: return R::tr("other");
    }
    return {};
}

// A ratio in percent, whole.
QString percent(double part, double whole)
{
    return whole <= 0 ? QStringLiteral("–") : QStringLiteral("%1 %").arg(std::lround(100 * part / whole));
}

} // namespace

RecordsController::RecordsController(Day& day, QObject* parent) : QObject(parent), day_(day) {}

void RecordsController::refresh()
{
    const Date from = day_.today() - std::chrono::days(days_covered);
    const auto packed = book::parcels_packed(day_.book(), from, day_.today() + std::chrono::days(1));
    const shop::Cupboard& cupboard = day_.cupboard();
    std::vector<RecordRow> rows;
    covers_ =
        packed.empty() ? QString() : tr("the last 12 months, %n parcels", nullptr, static_cast<int>(packed.size()));
    if (packed.empty()) {
        rows_.show({});
        emit changed();
        return;
    }
    const auto parcels = static_cast<std::int64_t>(packed.size());

    Money postage{0, cupboard.house.currency}, packaging = postage;
    double air = 0, closed = 0, off = 0;
    int weighed = 0;
    std::map<std::pair<shop::Material, std::string>, std::int64_t> by_material; // 0.1 g
    for (const book::HeldParcel& held : packed) {
        if (held.parcel.postage && held.parcel.postage->currency == postage.currency) postage += *held.parcel.postage;
        if (held.plan.packaging.currency == packaging.currency) packaging += held.plan.packaging;
        air += in_litres(held.plan.void_volume);
        closed += in_litres(volume(held.plan.closed));
        if (!held.parcel.weighings.empty()) {
            off += std::abs(in_grams(held.parcel.weighings.back().weight - held.plan.weight.mean));
            ++weighed;
        }
        const shop::HeldOrder* order = order_of(day_, held.plan.pieces);
        const std::string country = order != nullptr ? order->order.to.country : std::string();
        for (const planning::Used& used : held.plan.uses) {
            const shop::Supply* supply = cupboard.supply(used.supply);
            if (supply == nullptr) continue;
            by_material[{supply->material, country}] += used.amount.thousandths * supply->weight.mean.units / 1000;
        }
    }
    const QString cost = tr("What parcels cost");
    rows.push_back({tr("Postage, all"), words::money_with_currency(postage), {}, cost});
    rows.push_back({tr("Packaging, all"), words::money_with_currency(packaging), {}, cost});
    rows.push_back(
        {tr("Both, a parcel"), words::money_with_currency(share(postage + packaging, 1, parcels)), {}, cost});
    const QString fill = tr("How full they were");
    rows.push_back({tr("Air in the closed parcels"), percent(air, closed),
                    tr("our estimate; the official method is not this one"), fill});
    const QString scale = tr("Estimate against scale");
    rows.push_back({tr("Off by, on average"),
                    weighed > 0 ? words::weight(tenth_g(std::lround(10 * off / weighed))) : QStringLiteral("–"),
                    tr("%n parcels were weighed", nullptr, weighed), scale});
    const QString materials = tr("Packaging by material and country");
    for (const auto& [key, tenths] : by_material) {
        rows.push_back({joined({material_word(key.first), text(key.second)}, QStringLiteral(", ")),
                        words::weight(tenth_g(tenths)),
                        {},
                        materials});
    }
    for (std::size_t i = 0; i < rows.size(); ++i) rows[i].first = i == 0 || rows[i].chapter != rows[i - 1].chapter;
    rows_.show(std::move(rows));
    emit changed();
}

} // namespace stow::view
