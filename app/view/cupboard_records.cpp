#include "app/records.h"
#include "app/view/cupboard.h"
#include "app/view/text.h"
#include "app/words/format.h"

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

} // namespace

RecordsController::RecordsController(Day& day, QObject* parent) : QObject(parent), day_(day) {}

void RecordsController::refresh()
{
    const records::Summary s =
        records_of(day_, day_.today() - std::chrono::days(days_covered), day_.today() + std::chrono::days(1));
    std::vector<RecordRow> rows;
    covers_ = s.parcels == 0 ? QString() : tr("the last 12 months, %n parcels", nullptr, s.parcels);
    if (s.parcels == 0) {
        rows_.show({});
        emit changed();
        return;
    }
    const QString cost = tr("What parcels cost");
    rows.push_back({tr("Postage, all"), words::money_with_currency(s.postage), {}, cost});
    rows.push_back({tr("Packaging, all"), words::money_with_currency(s.packaging), {}, cost});
    rows.push_back(
        {tr("Both, a parcel"), words::money_with_currency(share(s.postage + s.packaging, 1, s.parcels)), {}, cost});
    if (const auto empty = s.empty_permille()) {
        rows.push_back({tr("Empty space in the closed parcels"),
                        QLocale().toString(*empty / 10.0, 'f', 1) + QChar(QChar::Nbsp) + QLatin1Char('%'),
                        tr("our estimate after EU 2025/40, Art. 24: all that is not goods; the official method was not "
                           "adopted when this was written"),
                        tr("How full they were")});
    }
    rows.push_back({tr("Off by, on average"), s.weighed > 0 ? words::weight(s.off_by) : QStringLiteral("–"),
                    tr("%n parcels were weighed", nullptr, s.weighed), tr("Estimate against scale")});
    for (const auto& [key, weight] : s.packaging_by_material) {
        rows.push_back({joined({material_word(key.first), text(key.second)}, QStringLiteral(", ")),
                        words::weight(weight),
                        {},
                        tr("Packaging by material and country")});
    }
    for (std::size_t i = 0; i < rows.size(); ++i) rows[i].first = i == 0 || rows[i].chapter != rows[i - 1].chapter;
    rows_.show(std::move(rows));
    emit changed();
}

} // namespace stow::view
