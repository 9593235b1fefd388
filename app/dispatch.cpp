#include "app/dispatch.h"

#include "core/book/cupboard.h"
#include "core/intake/out_files.h"
#include "core/papers/dispatch_message.h"

#include <algorithm>

namespace stow {

namespace {

std::vector<shop::HeldOrder> orders_in(const Day& day, const std::vector<shop::Piece>& pieces)
{
    std::vector<shop::HeldOrder> all;
    for (const shop::Piece& piece : pieces) {
        const bool known = std::any_of(all.begin(), all.end(), [&](const auto& o) { return o.id == piece.order; });
        const shop::HeldOrder* held = day.order(piece.order);
        if (held != nullptr && !known) all.push_back(*held);
    }
    return all;
}

const postage::Service* service_of(const Day& day, const shop::Parcel& parcel)
{
    const postage::Service* found = nullptr;
    for (const postage::RateSheet& sheet : day.rate_sheets()) {
        if (sheet.carrier != parcel.carrier) continue;
        for (const postage::Service& service : sheet.services) {
            if (service.code == parcel.service && found == nullptr) found = &service;
        }
    }
    return found;
}

std::optional<Money> value_of(const papers::CustomsData& data)
{
    std::optional<Money> sum;
    for (const auto& line : data.lines) {
        if (!line.value || (sum && sum->currency != line.value->currency)) return std::nullopt;
        sum = sum ? *sum + *line.value : *line.value;
    }
    return sum;
}

std::string contents_of(const papers::CustomsData& data)
{
    std::string words;
    for (const auto& line : data.lines) {
        if (!line.description.empty()) words += (words.empty() ? "" : ", ") + line.description;
    }
    return words;
}

const shop::OutFile* file_for(const std::vector<shop::OutFile>& files, const std::string& to)
{
    const auto found = std::find_if(files.begin(), files.end(), [&](const auto& f) { return f.to == to; });
    return found == files.end() ? nullptr : &*found;
}

std::string out_file(const Day& day, const shop::OutFile& file, const std::vector<book::HeldParcel>& parcels,
                     const std::string& of_shop)
{
    const shop::Dispatch settings = book::dispatch(day.book());
    const auto lists = book::hand_over_lists(day.book());
    std::vector<std::vector<shop::HeldOrder>> orders;
    for (const book::HeldParcel& held : parcels) orders.push_back(orders_in(day, held.parcel.pieces));
    std::vector<intake::OutRow> rows;
    for (std::size_t i = 0; i < parcels.size(); ++i) {
        const book::HeldParcel& held = parcels[i];
        const postage::Service* service = service_of(day, held.parcel);
        const papers::CustomsData data =
            papers::customs_data(held.parcel, orders[i], day.cupboard(), std::nullopt, day.today());
        std::optional<Date> gone;
        for (const book::HandOverList& list : lists) {
            if (held.parcel.handed_over_on && list.id == *held.parcel.handed_over_on) gone = list.day;
        }
        for (const shop::HeldOrder& order : orders[i]) {
            if (!of_shop.empty() && order.order.key.shop != of_shop) continue;
            rows.push_back({held.parcel, held.plan, order,
                            service != nullptr && !service->name.empty() ? service->name : held.parcel.service,
                            contents_of(data), value_of(data), gone});
            if (of_shop.empty()) break; // one row a parcel to a carrier, one an order to a shop
        }
    }
    return intake::write_out_file(file, rows, settings.tax_numbers);
}

} // namespace

ParcelCustoms customs_of(const Day& day, const book::HeldParcel& held)
{
    ParcelCustoms customs;
    const std::vector<shop::HeldOrder> orders = orders_in(day, held.parcel.pieces);
    if (orders.empty()) return customs;
    const shop::Dispatch settings = book::dispatch(day.book());
    customs.border = shop::border_between(settings.customs, day.cupboard().house.address, orders.front().order.to);
    if (customs.border == shop::Border::none) return customs;
    const auto& weighings = held.parcel.weighings;
    const auto closed = std::find_if(weighings.rbegin(), weighings.rend(),
                                     [](const shop::Weighing& w) { return w.stage != shop::WeighingStage::contents; });
    const Weight gross = closed == weighings.rend() ? held.plan.weight.mean : closed->weight;
    customs.data = papers::customs_data(held.parcel, orders, day.cupboard(), gross, day.today());
    const postage::Service* service = service_of(day, held.parcel);
    customs.form = shop::form_for(settings.customs, customs.border, service != nullptr && service->parcel_post,
                                  value_of(customs.data), gross);
    customs.data.form = customs.form;
    // Asked of the sender by the CN 23 only; never on slips.
    if (customs.form == shop::CustomsForm::cn23) {
        const shop::TaxNumbers& numbers = settings.tax_numbers;
        for (const auto& [name, number] : {std::pair{"VAT", &numbers.vat}, std::pair{"EORI", &numbers.eori},
                                           std::pair{"IOSS", &numbers.import_scheme}}) {
            if (!number->empty()) customs.data.numbers.emplace_back(name, *number);
        }
    }
    customs.data.gift_shown =
        std::any_of(orders.begin(), orders.end(), [](const auto& o) { return o.order.gift.has_value(); });
    return customs;
}

std::string send_file(const Day& day, const std::string& carrier)
{
    std::vector<book::HeldParcel> going;
    for (const shop::Parcel& parcel : book::parcels(day.book())) {
        const bool ready = parcel.state == shop::ParcelState::packed || parcel.state == shop::ParcelState::labelled;
        if (!ready || parcel.carrier != carrier) continue;
        if (auto held = book::parcel(day.book(), parcel.id)) going.push_back(std::move(*held));
    }
    const shop::Dispatch settings = book::dispatch(day.book());
    const shop::OutFile* own = file_for(settings.send_files, carrier);
    return out_file(day, own != nullptr ? *own : shop::OutFile{carrier, shop::plain_send_columns()}, going, {});
}

std::string shop_file(const Day& day, const std::string& shop)
{
    std::vector<book::HeldParcel> gone;
    for (const book::HandOverList& list : book::hand_over_lists(day.book())) {
        if (list.day != day.today()) continue;
        for (const shop::ParcelId id : list.parcels) {
            if (auto held = book::parcel(day.book(), id)) gone.push_back(std::move(*held));
        }
    }
    const shop::Dispatch settings = book::dispatch(day.book());
    const shop::OutFile* own = file_for(settings.shop_files, shop);
    return out_file(day, own != nullptr ? *own : shop::OutFile{shop, shop::plain_shop_columns()}, gone, shop);
}

std::string dispatch_message(const Day& day, const book::HeldParcel& held)
{
    const std::vector<shop::HeldOrder> orders = orders_in(day, held.parcel.pieces);
    if (orders.empty()) return {};
    const shop::Order& order = orders.front().order;
    const postage::Service* service = service_of(day, held.parcel);
    papers::MessageFacts facts;
    facts.name = order.to.name;
    for (const shop::HeldOrder& one : orders) facts.order += (facts.order.empty() ? "" : ", ") + one.order.key.number;
    facts.number = held.parcel.tracking;
    facts.carrier = held.parcel.carrier;
    facts.service = service != nullptr ? service->name : held.parcel.service;
    facts.workshop = day.cupboard().house.address.name;
    if (held.plan.delivered != Date{}) facts.arrives = held.plan.delivered;
    return papers::dispatch_message(book::dispatch(day.book()).texts, papers::language_for(order.to.country), facts);
}

} // namespace stow
