#include "app/view/hand_over.h"

#include "app/day_papers.h"
#include "app/her_papers.h"
#include "app/paper_keys.h"
#include "app/view/bench_scale.h"
#include "app/view/collections.h"
#include "app/view/text.h"
#include "app/words/book.h"
#include "app/words/format.h"
#include "app/words/reasons.h"
#include "core/book/touched.h"

#include <algorithm>
#include <array>

namespace stow::view {

namespace {

constexpr qsizetype most_named = 12;

// Parcels of this carrier that are not labelled yet and promised so that waiting a day breaks the promise, with another
// service that would still keep it.
QString broken_promises(const Day& day, const std::vector<shop::Parcel>& behind)
{
    QStringList said;
    for (const shop::Parcel& parcel : behind) {
        const shop::HeldOrder* order = order_of(day, parcel.pieces);
        if (order == nullptr || !order->order.promised) continue;
        const Date a_day_later = book::planned_arrival(day.book(), parcel.id) + std::chrono::days(1);
        if (a_day_later <= *order->order.promised) continue;
        QString words = HandOverController::tr("%1 was promised for %2")
                            .arg(text(parcel.number), words::date(*order->order.promised));
        const auto held = book::parcel(day.book(), parcel.id);
        for (const postage::Quote& quote : held ? held->plan.quotes : std::vector<postage::Quote>{}) {
            if (quote.carrier == parcel.carrier || quote.price() == nullptr) continue;
            if (day.today() + std::chrono::days(quote.days_most) > *order->order.promised) continue;
            words += HandOverController::tr(", %1 %2 keeps it").arg(text(quote.carrier), text(quote.service_name));
            break;
        }
        said += words;
        if (said.size() == most_named) break; // a line holds no more; the parcels stand in the plan
    }
    return said.join(QStringLiteral("; "));
}

// As its rate sheet calls it; its code where the sheet is gone.
QString service_name(const Day& day, const shop::Parcel& parcel)
{
    for (const postage::RateSheet& sheet : day.rate_sheets()) {
        if (sheet.carrier != parcel.carrier) continue;
        for (const postage::Service& service : sheet.services) {
            if (service.code == parcel.service && !service.name.empty()) return text(service.name);
        }
    }
    return text(parcel.service);
}

} // namespace

HandOverController::HandOverController(Day& day, QObject* parent)
    : QObject(parent), day_(day), dispatch_(day),
      parcels_(
          {{tr("as labelled"), {}},
           {tr("by carrier"), [](const auto& a, const auto& b) { return a.service.localeAwareCompare(b.service) < 0; }},
           {tr("by buyer"), [](const auto& a, const auto& b) { return a.buyer.localeAwareCompare(b.buyer) < 0; }},
           {tr("without a tracking number first"),
            [](const auto& a, const auto& b) { return a.tracking.isEmpty() > b.tracking.isEmpty(); }}})
{
    connect(&dispatch_, &DispatchController::said, this, &HandOverController::said);
}

void HandOverController::refresh()
{
    const auto lists = book::hand_over_lists(day_.book(), day_.today());
    std::vector<LabelledRow> rows;
    std::map<std::string, int> labelled;
    std::map<std::string, std::vector<shop::Parcel>> behind;
    int handed = 0;
    for (const shop::Parcel& parcel : day_.parcels()) {
        const bool is_labelled = parcel.state == shop::ParcelState::labelled;
        const auto list = std::find_if(lists.begin(), lists.end(), [&](const auto& l) {
            return parcel.handed_over_on && l.id == *parcel.handed_over_on;
        });
        const bool today = list != lists.end() && list->day == day_.today();
        if (is_labelled) ++labelled[parcel.carrier];
        if (parcel.state < shop::ParcelState::labelled) behind[parcel.carrier].push_back(parcel);
        if (!is_labelled && !today) continue;
        handed += today ? 1 : 0;
        LabelledRow row;
        row.parcel = parcel.id.value;
        row.number = text(parcel.number);
        if (const auto* held = order_of(day_, parcel.pieces)) {
            row.buyer = text(held->order.to.name);
            row.place = place_of(held->order.to);
        }
        row.carrier = text(parcel.carrier);
        row.service = joined({row.carrier, service_name(day_, parcel)}, QStringLiteral(", "));
        if (!parcel.weighings.empty()) row.weight = words::weight(parcel.weighings.back().weight);
        if (parcel.postage) row.postage = words::money(*parcel.postage);
        row.tracking = text(parcel.tracking);
        row.list = today
                       ? joined({tr("list %1").arg(list->number),
                                 parcel.state == shop::ParcelState::came_back ? words::state(parcel.state) : QString()})
                       : tr("waits");
        rows.push_back(std::move(row));
    }
    std::stable_sort(rows.begin(), rows.end(),
                     [](const auto& a, const auto& b) { return (a.list == tr("waits")) > (b.list == tr("waits")); });

    std::vector<CarrierRow> carriers;
    auto all = collections(day_);
    for (const auto& [carrier, count] : labelled) { // labelled for a carrier whose sheet is gone
        if (std::none_of(all.begin(), all.end(), [&, c = carrier](const auto& known) { return known.carrier == c; })) {
            all.push_back({carrier, std::nullopt});
        }
    }
    for (const Collection& collection : all) {
        CarrierRow row;
        row.carrier = text(collection.carrier);
        row.labelled = labelled[collection.carrier];
        const auto& waiting = behind[collection.carrier];
        row.behind = static_cast<int>(waiting.size());
        const auto last = std::find_if(lists.begin(), lists.end(), [&](const auto& l) {
            return l.carrier == collection.carrier && l.day == day_.today();
        });
        if (row.labelled == 0 && row.behind == 0 && last == lists.end()) continue;
        if (collection.at) {
            row.collection = tr("collects %1").arg(text(to_text(*collection.at)));
            row.left = minutes_left(day_.time(), *collection.at);
        }
        if (row.behind > 0) {
            const QString promises = broken_promises(day_, waiting);
            row.behind_words = tr("%n not labelled yet and would stay", nullptr, row.behind);
            if (!promises.isEmpty()) row.behind_words += QStringLiteral(": ") + promises;
        }
        if (last != lists.end()) {
            row.closed = tr("list %1 closed with %2")
                             .arg(last->number)
                             .arg(tr("%n parcels", nullptr, static_cast<int>(last->parcels.size())));
        }
        carriers.push_back(std::move(row));
    }
    int ready = 0;
    for (const auto& [carrier, count] : labelled) ready += count;
    headline_ = ready > 0 ? tr("%n parcels ready to go", nullptr, ready) : tr("Hand-over");
    summary_ = handed > 0 ? tr("%n handed over today", nullptr, handed) : QString();
    carriers_.show(std::move(carriers));
    parcels_.show(std::move(rows));
    dispatch_.refresh();
    emit changed();
}

void HandOverController::courierIsHere(int index)
{
    const CarrierRow* row = carriers_.shown(index);
    if (row == nullptr) return;
    const QString carrier = row->carrier;
    const auto list = book::hand_over(day_.book(), utf8(carrier));
    if (!list) {
        emit said(words::refused(list.error()));
        return;
    }
    const auto file = print_hand_over_list(day_, *list, paper_folder(day_));
    if (file) emit written(text(paper_key::hand_over_list), text(file->string()));
    const QString closed = tr("List %1 for %2: %n parcels", nullptr, static_cast<int>(list->parcels.size()))
                               .arg(list->number)
                               .arg(carrier);
    emit said(file ? closed + QStringLiteral(" · ") + text(file->string())
                   : closed + QStringLiteral(" · ") +
                         tr("the list could not be written into %1").arg(text(paper_folder(day_).string())));
    day_.moved();
}

void HandOverController::print_again(const book::HandOverList& list)
{
    const auto file = print_hand_over_list(day_, list, paper_folder(day_));
    if (file) emit written(text(paper_key::hand_over_list), text(file->string()));
    emit said(file ? tr("List %1 for %2, marked as a reprint: %3")
                         .arg(list.number)
                         .arg(text(list.carrier), text(file->string()))
                   : tr("the list could not be written into %1").arg(text(paper_folder(day_).string())));
}

std::vector<DraftPaper> HandOverController::drafts()
{
    std::vector<DraftPaper> drafts;
    const auto add = [&](const book::HandOverList& list, const QString& words, std::function<void()> print) {
        drafts.push_back({tr("List %1 for %2").arg(list.number).arg(text(list.carrier)), hand_over_paper(day_, list),
                          &palette_of(day_), words, std::move(print)});
    };
    int index = 0;
    for (const CarrierRow& row : carriers_.all()) {
        const int courier = index++;
        const book::HandOverList next = book::next_hand_over(day_.book(), utf8(row.carrier));
        if (!next.parcels.empty())
            add(next, tr("Close the list and print"), [this, courier] { courierIsHere(courier); });
    }
    for (const book::HandOverList& list : book::hand_over_lists(day_.book(), day_.today())) {
        add(list, tr("Print again"), [this, list] { print_again(list); });
    }
    return drafts;
}

QString HandOverController::setTracking(int index, const QString& number)
{
    const LabelledRow* row = parcels_.shown(index);
    if (row == nullptr) return {};
    dispatch_.look(row->parcel);
    return dispatch_.setTracking(number);
}

bool HandOverController::mayComeBack(int index)
{
    const LabelledRow* row = parcels_.shown(index);
    const auto held = row != nullptr ? book::parcel(day_.book(), {row->parcel}) : std::nullopt;
    if (!held) return false;
    const shop::ParcelState state = held->parcel.state;
    if (state == shop::ParcelState::handed_over || state == shop::ParcelState::came_back) return true;
    emit said(tr("Parcel %1 has not left yet: it cannot have come back.").arg(text(held->parcel.number)));
    return false;
}

void HandOverController::cameBack(int index, const QString& why, int goods, bool again)
{
    const LabelledRow* row = parcels_.shown(index);
    if (row == nullptr) return;
    const QString number = row->number;
    using Goods = book::GoodsBack;
    constexpr std::array choices{Goods::undecided, Goods::on_the_shelf, Goods::written_off};
    const auto chosen = choices.at(static_cast<std::size_t>(std::clamp(goods, 0, 2)));
    const auto done = book::mark_came_back(day_.book(), {row->parcel}, {utf8(why), chosen, again});
    const QString noted =
        again ? tr("Parcel %1 came back; its order is to be planned anew") : tr("Parcel %1 came back");
    emit said(done ? noted.arg(number) : words::refused(done.error()));
    if (done) day_.moved();
}

} // namespace stow::view
