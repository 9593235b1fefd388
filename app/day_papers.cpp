#include "app/day_papers.h"

#include "app/dispatch.h"
#include "app/her_papers.h"
#include "app/painting/fonts.h"
#include "app/painting/paint.h"
#include "app/paper_keys.h"
#include "core/book/prints.h"
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

std::string key_of(PaperKind kind)
{
    return std::string(name_of(kind));
}

std::vector<std::string> numbers_of(const std::vector<Packet>& packets)
{
    std::vector<std::string> numbers;
    numbers.reserve(packets.size());
    for (const Packet& packet : packets) numbers.push_back(packet.held.parcel.number);
    return numbers;
}

std::optional<papers::Reprint> reprint_of(const Day& day, PaperKind kind, const Packet& packet)
{
    return reprint_of(day, key_of(kind), {packet.held.parcel.number});
}

std::string counted_as(const book::HandOverList& list)
{
    return "list " + std::to_string(list.id.value);
}

papers::Document pick_list(const Day& day, PaperKind kind, const std::vector<Packet>& all,
                           const papers::TextMeasure& measure)
{
    // She owns so many trays: one sheet a round.
    const auto trays = static_cast<std::size_t>(std::max(1, day.cupboard().house.trays));
    papers::Document document;
    int round = book::last_round(day.book());
    for (std::size_t from = 0; from < all.size(); from += trays) {
        std::vector<shop::Parcel> parcels;
        std::vector<shop::HeldOrder> orders;
        std::vector<std::string> numbers;
        for (std::size_t i = from; i < std::min(all.size(), from + trays); ++i) {
            shop::Parcel parcel = all[i].held.parcel;
            if (parcel.tray.empty()) parcel.tray = std::string(1, static_cast<char>('A' + (i - from)));
            numbers.push_back(parcel.number);
            parcels.push_back(std::move(parcel));
            orders.insert(orders.end(), all[i].orders.begin(), all[i].orders.end());
        }
        ++round;
        const int known_round = all[from].held.round;
        auto sheet =
            papers::pick_sheet(day.today(), known_round > 0 ? known_round : round, parcels, orders, day.cupboard());
        sheet.reprint = reprint_of(day, key_of(kind), numbers);
        append(document, kind == PaperKind::pick_list
                             ? papers::lay_out(sheet, blank_of(day), her_words(), measure)
                             : papers::lay_out_by_order(sheet, blank_of(day), her_words(), measure));
    }
    return document;
}

papers::LabelData label_of(const Day& day, const Packet& packet, int print)
{
    const planning::ParcelPlan& plan = packet.held.plan;
    papers::LabelData made = papers::label(packet.held.parcel, packet.to(), day.cupboard().house, service_of(packet),
                                           plan.part, plan.parts, print);
    made.marks = papers::handling_marks(plan, day.cupboard());
    return made;
}

papers::Document labels(const Day& day, PaperKind kind, const std::vector<Packet>& all,
                        const papers::TextMeasure& measure)
{
    const shop::House& house = day.cupboard().house;
    std::vector<papers::LabelData> made;
    for (const Packet& packet : all) {
        const shop::Parcel& parcel = packet.held.parcel;
        const int print = book::next_print(day.book(), key_of(kind), {parcel.number});
        made.push_back(kind == PaperKind::return_labels ? papers::return_label(parcel, packet.to(), house, print)
                                                        : label_of(day, packet, print));
    }
    return papers::lay_out(made, next_label(day), her_words(), measure, house.label_form);
}

} // namespace

std::string_view name_of(PaperKind kind)
{
    switch (kind) {
    case PaperKind::pick_list: return paper_key::pick_list;
    case PaperKind::pick_list_by_order: return paper_key::pick_list_by_order;
    case PaperKind::packing_slips: return paper_key::packing_slips;
    case PaperKind::bench_cards: return paper_key::bench_cards;
    case PaperKind::labels: return paper_key::labels;
    case PaperKind::return_labels: return paper_key::return_labels;
    case PaperKind::gift_notes: return paper_key::gift_notes;
    case PaperKind::customs: return paper_key::customs;
    case PaperKind::hand_over_list: return paper_key::hand_over_list;
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

namespace {

papers::Document paper_of(const Day& day, PaperKind kind, const std::vector<Packet>& all)
{
    const painting::FontMeasure measure;
    const shop::Cupboard& cupboard = day.cupboard();
    std::error_code unreadable;
    const bool has_logo = std::filesystem::exists(cupboard.house.logo, unreadable);
    papers::Document document;
    switch (kind) {
    case PaperKind::pick_list:
    case PaperKind::pick_list_by_order: document = pick_list(day, kind, all, measure); break;
    case PaperKind::packing_slips:
        for (const Packet& packet : all) {
            auto slip = papers::slip(packet.held.parcel, packet.orders, cupboard, packet.held.plan.part,
                                     packet.held.plan.parts);
            if (has_logo) slip.logo = cupboard.house.logo;
            slip.reprint = reprint_of(day, kind, packet);
            const Words words(papers::language_for(packet.to().country));
            append(document, papers::lay_out(slip, blank_of(day), words, measure));
        }
        break;
    case PaperKind::bench_cards:
        for (const Packet& packet : all) {
            auto card = papers::bench_card(packet.held.parcel, packet.held.plan, packet.orders, cupboard);
            card.reprint = reprint_of(day, kind, packet);
            append(document, papers::lay_out(card, blank_of(day), her_words(), measure));
        }
        break;
    case PaperKind::labels:
    case PaperKind::return_labels: document = labels(day, kind, all, measure); break;
    case PaperKind::gift_notes: // on cards of their own, in the giver's words and no others
        for (const Packet& packet : all) {
            for (const shop::HeldOrder& held : packet.orders) {
                if (held.order.gift) append(document, papers::gift_note(*held.order.gift, measure));
            }
        }
        break;
    case PaperKind::customs: // in English, which every office reads; parcels that cross no border have none
        for (const Packet& packet : all) {
            const ParcelCustoms customs = customs_of(day, packet.held);
            if (customs.border == shop::Border::none) continue;
            append(document, papers::lay_out(customs.data, blank_of(day), Words(Language::english), measure));
        }
        break;
    case PaperKind::hand_over_list: break; // belongs to a closed list
    }
    return document;
}

} // namespace

papers::Document paper_of(const Day& day, PaperKind kind, const std::vector<shop::ParcelId>& ids)
{
    return paper_of(day, kind, packets(day, ids));
}

papers::Document paper_of_round(const Day& day, PaperKind kind, const std::vector<book::Tray>& round)
{
    std::vector<shop::ParcelId> ids;
    ids.reserve(round.size());
    for (const book::Tray& tray : round) ids.push_back(tray.parcel);
    std::vector<Packet> all = packets(day, ids);
    for (Packet& packet : all) {
        shop::Parcel& parcel = packet.held.parcel;
        const auto own = std::find_if(round.begin(), round.end(), [&](const auto& t) { return t.parcel == parcel.id; });
        parcel.tray = own->name;
    }
    return paper_of(day, kind, all);
}

const painting::Palette& palette_of(const Day& day, PaperKind kind)
{
    const bool black = kind == PaperKind::labels || kind == PaperKind::return_labels;
    return black ? painting::black_only() : palette_of(day);
}

std::optional<std::filesystem::path> write_paper(const Day& day, PaperKind kind, const std::vector<shop::ParcelId>& ids,
                                                 const std::filesystem::path& folder)
{
    return write_document(folder, key_of(kind), paper_of(day, kind, ids), palette_of(day, kind));
}

std::optional<std::filesystem::path> print_paper(Day& day, PaperKind kind, const std::vector<shop::ParcelId>& ids,
                                                 const std::filesystem::path& folder)
{
    const std::vector<Packet> all = packets(day, ids);
    auto file = write_document(folder, key_of(kind), paper_of(day, kind, all), palette_of(day, kind));
    if (file) book::count_print(day.book(), key_of(kind), numbers_of(all));
    return file;
}

papers::Document hand_over_paper(const Day& day, const book::HandOverList& list)
{
    std::vector<shop::Parcel> parcels;
    for (const shop::ParcelId id : list.parcels) {
        if (const auto held = book::parcel(day.book(), id)) parcels.push_back(held->parcel);
    }
    auto paper = papers::hand_over_list(list.carrier, std::to_string(list.number), list.day, day.time(), parcels,
                                        day.orders(), day.cupboard().house);
    for (auto& line : paper.lines) {
        line.label_print = labels_printed(day, line.parcel);
    }
    paper.reprint = reprint_of(day, key_of(PaperKind::hand_over_list), {counted_as(list)});
    const painting::FontMeasure measure;
    return papers::lay_out(paper, blank_of(day), her_words(), measure);
}

std::optional<std::filesystem::path> print_hand_over_list(Day& day, const book::HandOverList& list,
                                                          const std::filesystem::path& folder)
{
    std::string name = key_of(PaperKind::hand_over_list) + "-" + list.carrier + "-" + std::to_string(list.number);
    std::replace_if(
        name.begin(), name.end(), [](char c) { return c == ' ' || c == '/'; }, '-');
    auto file = write_document(folder, name, hand_over_paper(day, list), palette_of(day));
    if (file) book::count_print(day.book(), key_of(PaperKind::hand_over_list), {counted_as(list)});
    return file;
}

papers::Document command_cards(const Day& day)
{
    const painting::FontMeasure measure;
    return papers::command_cards(blank_of(day), her_words(), measure);
}

std::optional<std::filesystem::path> write_command_cards(const Day& day, const std::filesystem::path& folder)
{
    return write_document(folder, paper_key::command_cards, command_cards(day), painting::black_only());
}

int labels_printed(const Day& day, const std::string& parcel)
{
    return book::next_print(day.book(), key_of(PaperKind::labels), {parcel}) - 1;
}

std::map<std::string, papers::LabelFit> label_fits(const Day& day, const std::vector<shop::ParcelId>& ids)
{
    const painting::FontMeasure measure;
    std::map<std::string, papers::LabelFit> fits;
    for (const Packet& packet : packets(day, ids)) {
        const std::string& number = packet.held.parcel.number;
        const papers::LabelData label = label_of(day, packet, std::max(1, labels_printed(day, number)));
        fits[number] = papers::fit_of(label, her_words(), measure, day.cupboard().house.label_form);
    }
    return fits;
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
