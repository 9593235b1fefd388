#include "app/view/find.h"

#include "app/privacy.h"
#include "app/view/guarded.h"
#include "app/view/text.h"
#include "app/words/book.h"
#include "app/words/format.h"
#include "app/words/reasons.h"
#include "core/book/erasing.h"
#include "core/book/orders.h"
#include "core/book/parcels.h"

#include <QDateTime>
#include <QLocale>

namespace stow::view {

namespace {

QString clock_time(Instant at)
{
    const auto local = QDateTime::fromSecsSinceEpoch(at.time_since_epoch().count());
    return QLocale().toString(local, QLocale::ShortFormat);
}

} // namespace

FindController::FindController(Day& day, QObject* parent) : QObject(parent), day_(day) {}

void FindController::setText(const QString& typed)
{
    text_ = typed;
    guarded(day_, [this] { search(); });
}

void FindController::search()
{
    const QString typed = text_;
    std::vector<FoundRow> rows;
    constexpr int least = 2, most = 30;
    if (typed.trimmed().size() >= least) {
        for (const book::Hit& hit : book::search(day_.book(), utf8(typed), most)) {
            const auto held = book::order(day_.book(), hit.order); // however old
            if (!held) continue;
            FoundRow row;
            row.order = held->id.value;
            row.number = view::text(held->order.key.number);
            row.buyer = view::text(held->order.to.name);
            row.place = place_of(held->order.to);
            row.contents = contents_of(day_, held->order);
            row.state = words::state(held->state);
            std::optional<shop::Parcel> parcel;
            if (hit.parcel) {
                if (const auto found = book::parcel(day_.book(), *hit.parcel)) parcel = found->parcel;
            } else if (const auto parcels = book::parcels_of(day_.book(), hit.order); !parcels.empty()) {
                parcel = parcels.front();
            }
            if (parcel) {
                row.parcel = parcel->id.value;
                row.state =
                    joined({view::text(parcel->number), words::state(parcel->state), view::text(parcel->tracking)});
                if (parcel->handed_over_on) {
                    if (const auto list = book::hand_over_list(day_.book(), *parcel->handed_over_on)) {
                        row.state +=
                            QStringLiteral(" · ") + tr("list %1, %2").arg(list->number).arg(words::date(list->day));
                    }
                }
            }
            row.gone = !held->order.to.name.empty() && book::may_be_erased(day_.book(), *held);
            rows.push_back(std::move(row));
        }
        words_ = rows.empty()
                     ? tr("Nothing found for “%1”. Part of a name, a postcode or a number is enough.").arg(typed)
                     : tr("%n found", nullptr, static_cast<int>(rows.size()));
    } else {
        words_ = tr("Type part of a name, a postcode, an order or tracking number, or scan a paper.");
    }
    found_.show(std::move(rows));
    emit changed();
}

QString FindController::history(int row) const
{
    const FoundRow* found = found_.shown(row);
    if (found == nullptr) return {};
    QStringList lines;
    for (const book::Step& step : book::history(day_.book(), {found->order})) {
        if (step.undone_by || step.kind == book::StepKind::undo) continue;
        lines += clock_time(step.at) + QStringLiteral("  ") + words::step(step);
    }
    if (const auto held = book::parcel(day_.book(), {found->parcel})) {
        for (const shop::Weighing& weighing : held->parcel.weighings)
            lines += clock_time(weighing.at) + QStringLiteral("  ") + words::weight(weighing.weight);
    }
    return lines.join(QLatin1Char('\n'));
}

void FindController::forget(int row)
{
    const FoundRow* found = found_.shown(row);
    if (found == nullptr) return;
    if (const auto erased = book::erase_buyer(day_.book(), {found->order}); !erased) {
        emit said(words::refused(erased.error()));
        return;
    }
    const auto papers = papers_kept(day_);
    // The copies follow beside the window (app/window.cpp).
    emit said(
        papers.empty()
            ? tr("Erased, from the history too; the copies beside the book follow")
            : tr("Erased, from the history too; the copies beside the book follow. %n papers may still show it: %1",
                 nullptr, static_cast<int>(papers.size()))
                  .arg(view::text(papers.front().parent_path().string())));
    day_.moved();
    setText(text_);
}

} // namespace stow::view
