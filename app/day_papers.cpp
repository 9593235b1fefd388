#include "app/day_papers.h"

#include "app/dispatch.h"
#include "app/her_papers.h"
#include "app/painting/fonts.h"
#include "app/painting/paint.h"
#include "core/papers/bench_card.h"
#include "core/papers/hand_over.h"
#include "core/papers/label.h"
#include "core/papers/pick_list.h"
#include "core/papers/slip.h"

#include <algorithm>

namespace stow {

namespace {

using papers::Format;
using papers::Language;
using papers::Words;

// A parcel with what its papers need.
struct Packet {
    book::HeldParcel held;
    std::vector<shop::HeldOrder> orders;
    const shop::Address& to() const { return orders.front().order.to; }
};

std::vector<Packet> packets(const Day& day, const std::vector<shop::ParcelId>& ids)
{
    std::vector<Packet> result;
    for (const shop::ParcelId id : ids) {
        auto held = book::parcel(day.book(), id);
        if (!held) continue;
        Packet packet{std::move(*held), {}};
        for (const shop::Piece& piece : packet.held.parcel.pieces) {
            const bool known = std::any_of(packet.orders.begin(), packet.orders.end(),
                                           [&](const shop::HeldOrder& o) { return o.id == piece.order; });
            const shop::HeldOrder* order = day.order(piece.order);
            if (order != nullptr && !known) packet.orders.push_back(*order);
        }
        if (!packet.orders.empty()) result.push_back(std::move(packet));
    }
    return result;
}

std::string service_of(const Packet& packet)
{
    const planning::ParcelPlan& plan = packet.held.plan;
    if (!plan.chosen) return {};
    const postage::Quote& quote = plan.quotes[*plan.chosen];
    return quote.carrier + ", " + quote.service_name;
}

void append(papers::Document& document, papers::Document pages)
{
    document.pages.insert(document.pages.end(), std::make_move_iterator(pages.pages.begin()),
                          std::make_move_iterator(pages.pages.end()));
}

papers::Document pick_list(const Day& day, const std::vector<Packet>& all, bool reprint,
                           const papers::TextMeasure& measure)
{
    // She owns so many trays: one sheet a round.
    const auto trays = static_cast<std::size_t>(std::max(1, day.cupboard().house.trays));
    papers::Document document;
    int round = 0;
    for (std::size_t from = 0; from < all.size(); from += trays) {
        std::vector<shop::Parcel> parcels;
        std::vector<shop::HeldOrder> orders;
        for (std::size_t i = from; i < std::min(all.size(), from + trays); ++i) {
            shop::Parcel parcel = all[i].held.parcel;
            if (parcel.tray.empty()) parcel.tray = std::string(1, static_cast<char>('A' + (i - from)));
            parcels.push_back(std::move(parcel));
            orders.insert(orders.end(), all[i].orders.begin(), all[i].orders.end());
        }
        ++round;
        const int known_round = all[from].held.round;
        auto sheet =
            papers::pick_sheet(day.today(), known_round > 0 ? known_round : round, parcels, orders, day.cupboard());
        sheet.reprint = reprint;
        append(document, papers::lay_out(sheet, format_of(day), her_words(), measure));
    }
    return document;
}

} // namespace

std::string_view name_of(PaperKind kind)
{
    switch (kind) {
    case PaperKind::pick_list: return "pick-list";
    case PaperKind::packing_slips: return "packing-slips";
    case PaperKind::bench_cards: return "bench-cards";
    case PaperKind::labels: return "labels";
    case PaperKind::customs: return "customs";
    case PaperKind::hand_over_list: return "hand-over-list";
    }
    return {};
}

std::optional<PaperKind> paper_kind(std::string_view name)
{
    const auto found = std::find_if(all_paper_kinds.begin(), all_paper_kinds.end(),
                                    [&](PaperKind kind) { return name_of(kind) == name; });
    return found == all_paper_kinds.end() ? std::nullopt : std::optional(*found);
}

std::optional<std::filesystem::path> write_paper(const Day& day, PaperKind kind, const std::vector<shop::ParcelId>& ids,
                                                 const std::filesystem::path& folder, bool reprint)
{
    const painting::FontMeasure measure;
    const std::vector<Packet> all = packets(day, ids);
    const shop::Cupboard& cupboard = day.cupboard();
    papers::Document document;
    switch (kind) {
    case PaperKind::pick_list: document = pick_list(day, all, reprint, measure); break;
    case PaperKind::packing_slips:
        for (const Packet& packet : all) {
            auto slip = papers::slip(packet.held.parcel, packet.orders, cupboard, packet.held.plan.part,
                                     packet.held.plan.parts);
            slip.reprint = reprint;
            const Words words(papers::language_for(packet.to().country));
            append(document, papers::lay_out(slip, format_of(day), words, measure));
        }
        break;
    case PaperKind::bench_cards:
        for (const Packet& packet : all) {
            auto card = papers::bench_card(packet.held.parcel, packet.held.plan, packet.orders, cupboard);
            card.reprint = reprint;
            append(document, papers::lay_out(card, format_of(day), her_words(), measure));
        }
        break;
    case PaperKind::labels:
        for (const Packet& packet : all) {
            auto label = papers::label(packet.held.parcel, packet.to(), cupboard.house, service_of(packet),
                                       packet.held.plan.part, packet.held.plan.parts);
            label.reprint = reprint;
            document.pages.push_back(papers::lay_out(label, her_words(), measure));
        }
        break;
    case PaperKind::customs: // in English, which every office reads; parcels that cross no border have none
        for (const Packet& packet : all) {
            ParcelCustoms customs = customs_of(day, packet.held);
            if (customs.border == shop::Border::none) continue;
            customs.data.reprint = reprint;
            append(document, papers::lay_out(customs.data, format_of(day), Words(Language::english), measure));
        }
        break;
    case PaperKind::hand_over_list: return std::nullopt; // belongs to a closed list: write_hand_over_list
    }
    const auto& palette = kind == PaperKind::labels ? painting::black_only() : painting::light();
    return write_document(folder, std::string(name_of(kind)), document, palette);
}

std::optional<std::filesystem::path> write_hand_over_list(const Day& day, const book::HandOverList& list,
                                                          const std::filesystem::path& folder, bool reprint)
{
    std::vector<shop::Parcel> parcels;
    for (const shop::ParcelId id : list.parcels) {
        if (const auto held = book::parcel(day.book(), id)) parcels.push_back(held->parcel);
    }
    auto paper = papers::hand_over_list(list.carrier, std::to_string(list.number), list.day, day.time(), parcels,
                                        day.orders(), day.cupboard().house);
    paper.reprint = reprint;
    const painting::FontMeasure measure;
    std::string name =
        std::string(name_of(PaperKind::hand_over_list)) + "-" + list.carrier + "-" + std::to_string(list.number);
    std::replace_if(
        name.begin(), name.end(), [](char c) { return c == ' ' || c == '/'; }, '-');
    return write_document(folder, name, papers::lay_out(paper, format_of(day), her_words(), measure),
                          painting::light());
}

std::filesystem::path paper_folder(const Day& day)
{
    return day.book().path().parent_path() / "papers";
}

} // namespace stow
