// Postage bought elsewhere, and the lists a carrier signs.
#include "core/book/parcel_rows.h"
#include "core/book/parcels.h"

#include <algorithm>
#include <fmt/format.h>

namespace stow::book {

namespace {

std::vector<PostageBought> read_postage(const Book& book, const std::string& condition, std::int64_t value)
{
    std::vector<PostageBought> found;
    Query rows(book,
               "SELECT id, parcel, carrier, service, amount, currency, number, at, refunded FROM postage WHERE " +
                   condition + " ORDER BY id",
               value);
    while (rows.next()) {
        found.push_back({rows.integer(0), shop::ParcelId{rows.integer(1)}, rows.text(2), rows.text(3),
                         *rows.maybe_money(4), rows.text(6), rows.instant(7), rows.truth(8)});
    }
    return found;
}

std::vector<HandOverList> read_lists(const Book& book, const std::string& condition)
{
    std::vector<HandOverList> lists;
    Query rows(book,
               "SELECT id, carrier, day, number, at FROM hand_over_list WHERE " + condition + " ORDER BY id DESC");
    while (rows.next()) {
        HandOverList list{{rows.integer(0)}, rows.text(1), rows.date(2), rows.small(3), rows.instant(4), {}};
        for (const shop::Parcel& parcel : read_parcels(book, fmt::format("list = {}", list.id.value))) {
            list.parcels.push_back(parcel.id);
        }
        lists.push_back(std::move(list));
    }
    return lists;
}

} // namespace

Done buy_postage(Book& book, const PostageBought& bought, bool again, const std::map<shop::SupplyCode, int>& stamps)
{
    const auto buy = [&](Writer& writer) -> Allowed {
        const auto parcel = parcel_in(book, bought.parcel,
                                      {shop::ParcelState::planned, shop::ParcelState::picked, shop::ParcelState::packed,
                                       shop::ParcelState::labelled});
        if (!parcel) return tl::unexpected(parcel.error());
        for (const PostageBought& before : postage_bought(book, bought.parcel)) {
            if (!before.refunded && !again) return refuse(Why::already_bought, before.number);
        }
        writer.run(
            "INSERT INTO postage (parcel, carrier, service, amount, currency, number, at) VALUES (?, ?, ?, ?, ?, ?, ?)",
            bought.parcel, bought.carrier, bought.service, std::optional(bought.amount), bought.number, writer.at());
        for (const auto& [stamp, count] : stamps) {
            if (count <= 0) return refuse(Why::not_positive, stamp.text);
            if (!Query(book, "SELECT 1 FROM supply WHERE code = ?", stamp).next()) {
                return refuse(Why::unknown_supply, stamp.text);
            }
            writer.move(Ledger::supplies, stamp.text, MovementKind::used, -shop::pieces(count), bought.parcel);
        }
        // Paid for: the plan is kept from now on.
        writer.run("UPDATE parcel SET carrier = ?2, service = ?3, postage = ?4, postage_currency = ?5, locked = 1 "
                   "WHERE id = ?1",
                   bought.parcel, bought.carrier, bought.service, std::optional(bought.amount));
        writer.words["amount"] = to_text(bought.amount);
        return {};
    };
    return in_step(book, StepKind::buy_postage, words_of(book, bought.parcel), buy);
}

Done refund_postage(Book& book, std::int64_t id)
{
    const auto before = read_postage(book, "id = ?", id);
    if (before.empty()) return refuse(Why::nothing_to_do);
    return in_step(book, StepKind::refund_postage, words_of(book, before.front().parcel),
                   [&](Writer& writer) -> Allowed {
                       writer.run("UPDATE postage SET refunded = 1 WHERE id = ?", id);
                       return {};
                   });
}

std::vector<PostageBought> postage_bought(const Book& book, shop::ParcelId id)
{
    return read_postage(book, "parcel = ?", id.value);
}

HandOverList next_hand_over(const Book& book, const std::string& carrier)
{
    HandOverList list;
    list.carrier = carrier;
    list.at = book.now();
    list.day = std::chrono::floor<std::chrono::days>(list.at);
    Query last(book, "SELECT coalesce(max(number), 0) + 1 FROM hand_over_list WHERE carrier = ? AND day = ?", carrier,
               list.day);
    last.next();
    list.number = last.small(0);
    std::vector<shop::Parcel> going;
    for (shop::Parcel& parcel : parcels_in(book, shop::ParcelState::labelled)) {
        if (parcel.carrier == carrier && !parcel_standing(book, parcel).stops()) going.push_back(std::move(parcel));
    }
    std::sort(going.begin(), going.end(), [](const auto& a, const auto& b) { return a.number < b.number; });
    for (const shop::Parcel& parcel : going) list.parcels.push_back(parcel.id);
    return list;
}

tl::expected<HandOverList, Refused> hand_over(Book& book, const std::string& carrier)
{
    shop::ListId id;
    const auto close = [&](Writer& writer) -> Allowed {
        const HandOverList next = next_hand_over(book, carrier);
        if (next.parcels.empty()) return refuse(Why::nothing_to_do, carrier);
        id.value = writer.add("INSERT INTO hand_over_list (carrier, day, number, at) VALUES (?, ?, ?, ?)", carrier,
                              next.day, next.number, writer.at());
        for (const shop::ParcelId parcel : next.parcels) {
            writer.run("UPDATE parcel SET state = 'handed over', list = ? WHERE id = ?", id, parcel);
        }
        writer.run("UPDATE orders SET done = 1 WHERE id IN (SELECT order_id FROM parcel_piece JOIN parcel "
                   "ON parcel.id = parcel_piece.parcel WHERE list = ?) AND NOT EXISTS ("
                   "SELECT 1 FROM order_line WHERE order_id = orders.id AND count > ("
                   "SELECT coalesce(sum(piece_sent.count), 0) FROM piece_sent WHERE piece_sent.order_id = orders.id "
                   "AND line = place AND piece_sent.state IN ('handed over', 'came back')))",
                   id);
        writer.words["list"] = std::to_string(next.number);
        writer.words["parcels"] = std::to_string(next.parcels.size());
        return {};
    };
    const Done done = in_step(book, StepKind::hand_over, {{"carrier", carrier}}, close);
    if (!done) return tl::unexpected(done.error());
    return *hand_over_list(book, id);
}

std::vector<HandOverList> hand_over_lists(const Book& book)
{
    return read_lists(book, "true");
}

std::vector<HandOverList> hand_over_lists(const Book& book, Date day)
{
    return read_lists(book, fmt::format("day = '{}'", to_text(day)));
}

std::optional<HandOverList> hand_over_list(const Book& book, shop::ListId id)
{
    auto found = read_lists(book, fmt::format("id = {}", id.value));
    if (found.empty()) return std::nullopt;
    return std::move(found.front());
}

} // namespace stow::book
