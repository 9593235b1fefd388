#include "app/day_papers.h"

#include "app/dispatch.h"
#include "app/her_papers.h"
#include "app/painting/fonts.h"
#include "app/painting/paint.h"
#include "core/book/settings.h"
#include "core/papers/bench_card.h"
#include "core/papers/command_cards.h"
#include "core/papers/gift_note.h"
#include "core/papers/hand_over.h"
#include "core/papers/label.h"
#include "core/papers/pick_list.h"
#include "core/papers/slip.h"

#include <algorithm>
#include <cstdlib>

namespace stow {

namespace {

using papers::Format;
using papers::Language;
using papers::Words;

constexpr const char* remembered_label = "labels.next";

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
        append(document, papers::lay_out(sheet, blank_of(day), her_words(), measure));
    }
    return document;
}

papers::Document labels(const Day& day, PaperKind kind, const std::vector<Packet>& all, bool reprint,
                        const papers::TextMeasure& measure)
{
    const shop::House& house = day.cupboard().house;
    std::vector<papers::LabelData> made;
    for (const Packet& packet : all) {
        const planning::ParcelPlan& plan = packet.held.plan;
        const shop::Parcel& parcel = packet.held.parcel;
        made.push_back(kind == PaperKind::return_labels
                           ? papers::return_label(parcel, packet.to(), house)
                           : papers::label(parcel, packet.to(), house, service_of(packet), plan.part, plan.parts));
        if (kind == PaperKind::labels) made.back().marks = papers::handling_marks(plan, day.cupboard());
        made.back().reprint = reprint;
    }
    return papers::lay_out(made, next_label(day), her_words(), measure, house.label_form);
}

} // namespace

std::string_view name_of(PaperKind kind)
{
    switch (kind) {
    case PaperKind::pick_list: return "pick-list";
    case PaperKind::packing_slips: return "packing-slips";
    case PaperKind::bench_cards: return "bench-cards";
    case PaperKind::labels: return "labels";
    case PaperKind::return_labels: return "return-labels";
    case PaperKind::gift_notes: return "gift-notes";
    case PaperKind::customs: return "customs";
    case PaperKind::hand_over_list: return "hand-over-list";
    }
    return {};
}

bool only_some_have(PaperKind kind)
{
    return kind == PaperKind::customs || kind == PaperKind::gift_notes;
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
    std::error_code unreadable;
    const bool has_logo = std::filesystem::exists(cupboard.house.logo, unreadable);
    papers::Document document;
    switch (kind) {
    case PaperKind::pick_list: document = pick_list(day, all, reprint, measure); break;
    case PaperKind::packing_slips:
        for (const Packet& packet : all) {
            auto slip = papers::slip(packet.held.parcel, packet.orders, cupboard, packet.held.plan.part,
                                     packet.held.plan.parts);
            if (has_logo) slip.logo = cupboard.house.logo;
            slip.reprint = reprint;
            const Words words(papers::language_for(packet.to().country));
            append(document, papers::lay_out(slip, blank_of(day), words, measure));
        }
        break;
    case PaperKind::bench_cards:
        for (const Packet& packet : all) {
            auto card = papers::bench_card(packet.held.parcel, packet.held.plan, packet.orders, cupboard);
            card.reprint = reprint;
            append(document, papers::lay_out(card, blank_of(day), her_words(), measure));
        }
        break;
    case PaperKind::labels:
    case PaperKind::return_labels: document = labels(day, kind, all, reprint, measure); break;
    case PaperKind::gift_notes: // on cards of their own, in the giver's words
        for (const Packet& packet : all) {
            for (const shop::HeldOrder& held : packet.orders) {
                if (held.order.gift) append(document, papers::gift_note(*held.order.gift, measure));
            }
        }
        break;
    case PaperKind::customs: // in English, which every office reads; parcels that cross no border have none
        for (const Packet& packet : all) {
            ParcelCustoms customs = customs_of(day, packet.held);
            if (customs.border == shop::Border::none) continue;
            customs.data.reprint = reprint;
            append(document, papers::lay_out(customs.data, blank_of(day), Words(Language::english), measure));
        }
        break;
    case PaperKind::hand_over_list: return std::nullopt; // belongs to a closed list: write_hand_over_list
    }
    const bool black = kind == PaperKind::labels || kind == PaperKind::return_labels;
    const auto& palette = black ? painting::black_only() : painting::light();
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
    return write_document(folder, name, papers::lay_out(paper, blank_of(day), her_words(), measure), painting::light());
}

std::optional<std::filesystem::path> write_command_cards(const Day& day, const std::filesystem::path& folder)
{
    const painting::FontMeasure measure;
    return write_document(folder, "command-cards", papers::command_cards(blank_of(day), her_words(), measure),
                          painting::black_only());
}

int next_label(const Day& day)
{
    const int most = papers::labels_on_a_sheet(day.cupboard().house.label_form);
    const int kept = std::atoi(book::remembered(day.book(), remembered_label).value_or("1").c_str());
    return std::clamp(kept, 1, most);
}

void use_labels(Day& day, int count)
{
    const int most = papers::labels_on_a_sheet(day.cupboard().house.label_form);
    book::remember(day.book(), remembered_label, std::to_string((next_label(day) - 1 + count) % most + 1));
}

std::filesystem::path paper_folder(const Day& day)
{
    return day.book().path().parent_path() / "papers";
}

} // namespace stow
