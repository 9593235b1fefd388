#include "app/view/day_line.h"

#include "app/view/collections.h"
#include "app/view/desk.h"
#include "app/view/text.h"
#include "core/book/orders.h"
#include "core/book/parcels.h"

#include <algorithm>
#include <iterator>
#include <set>
#include <vector>

namespace stow::view {

DayLine::DayLine(Day& day, QObject* parent) : QObject(parent), day_(day) {}

void DayLine::refresh()
{
    using shop::ParcelState;
    using Orders = std::vector<shop::OrderId>; // an order may be at several steps, by its parcels
    Orders arrivals, plan, pick, bench, hand_over, gone;
    std::set<std::string> waiting_for; // carriers that parcels still wait for
    for (const shop::HeldOrder& held : day_.orders()) {
        if (held.state == shop::OrderState::arrived) arrivals.push_back(held.id);
    }
    std::set<shop::OrderId> planned;
    std::set<shop::ListId> today;
    for (const book::HandOverList& list : book::hand_over_lists(day_.book(), day_.today())) today.insert(list.id);
    for (const shop::Parcel& parcel : day_.parcels()) {
        Orders* step = nullptr;
        switch (parcel.state) {
        case ParcelState::planned: step = &pick; break;
        case ParcelState::picked:
        case ParcelState::packed: step = &bench; break;
        case ParcelState::labelled: step = &hand_over; break;
        case ParcelState::handed_over:
            if (parcel.handed_over_on && today.contains(*parcel.handed_over_on)) step = &gone;
            break;
        case ParcelState::came_back: break;
        }
        if (step == nullptr) continue;
        if (step != &gone && !waiting_for.contains(parcel.carrier)) waiting_for.insert(parcel.carrier);
        for (const shop::Piece& piece : parcel.pieces) {
            step->push_back(piece.order);
            if (step == &pick) planned.insert(piece.order);
        }
    }
    std::set_difference(day_.to_plan().begin(), day_.to_plan().end(), planned.begin(), planned.end(),
                        std::back_inserter(plan));

    const auto count = [](Orders& orders) { // each once
        std::sort(orders.begin(), orders.end());
        orders.erase(std::unique(orders.begin(), orders.end()), orders.end());
        return static_cast<int>(orders.size());
    };
    using Place = Desk::Place;
    const auto step = [&](const QString& name, const char* key, Orders& orders, Place place) {
        return DayStep{name, QString::fromLatin1(key), count(orders), static_cast<int>(place)};
    };
    std::vector<DayStep> steps{step(tr("Arrivals"), "F1", arrivals, Place::Arrivals),
                               step(tr("Plan"), "F2", plan, Place::Plan), step(tr("Pick"), "F3", pick, Place::Pick),
                               step(tr("Bench"), "F4", bench, Place::Bench),
                               step(tr("Hand-over"), "F5", hand_over, Place::HandOver)};
    if (steps_.all().empty())
        steps_.show(std::move(steps));
    else // in place: after every step of hers five tabs would be made anew
        for (std::size_t i = 0; i < steps.size(); ++i) steps_.change(i, std::move(steps[i]));
    Orders all;
    for (const auto* part : {&arrivals, &plan, &pick, &bench, &hand_over, &gone})
        all.insert(all.end(), part->begin(), part->end());
    const int on_their_way = count(gone), of_all = count(all);
    progress_ = all.empty() ? tr("no orders today") : tr("%1 of %2 on their way").arg(on_their_way).arg(of_all);
    emptied_ = all.empty() ? 0.0 : static_cast<double>(gone.size()) / static_cast<double>(all.size());

    collection_.clear();
    left_.clear();
    pressing_ = false;
    std::optional<Collection> next;
    for (const Collection& c : collections(day_)) {
        if (!c.at || *c.at < day_.time()) continue;
        const bool wanted = waiting_for.empty() || waiting_for.contains(c.carrier);
        if (wanted && (!next || *c.at < *next->at)) next = c;
    }
    if (next) {
        collection_ = tr("%1 collects %2").arg(text(next->carrier), text(to_text(*next->at)));
        left_ = minutes_left(day_.time(), *next->at);
        pressing_ = *next->at - day_.time() < std::chrono::minutes(60);
    }
    emit changed();
}

} // namespace stow::view
