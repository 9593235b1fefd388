// Plans become parcels, and parcels are looked up.
#include "core/book/parcels.h"

#include "core/book/documents.h"
#include "core/book/ledger.h"
#include "core/book/orders.h"
#include "core/book/parcel_rows.h"
#include "core/intake/plan_json.h"

#include <fmt/format.h>
#include <set>

namespace stow::book {

namespace {

using shop::ParcelState;

std::set<shop::OrderId> orders_of(const std::vector<shop::Piece>& pieces)
{
    std::set<shop::OrderId> ids;
    for (const shop::Piece& piece : pieces) ids.insert(piece.order);
    return ids;
}

tl::expected<int, Refused> version_sum(const Book& book, const std::vector<shop::Piece>& pieces)
{
    int sum = 0;
    for (const shop::OrderId id : orders_of(pieces)) {
        Query row(book, "SELECT version FROM orders WHERE id = ?", id);
        if (!row.next()) return refuse(Why::unknown_order);
        sum += row.small(0);
    }
    return sum;
}

// "2611-": the month of UTC now.
std::string month_prefix(Instant now)
{
    const std::chrono::year_month_day day(std::chrono::floor<std::chrono::days>(now));
    return fmt::format("{:02}{:02}-", static_cast<int>(day.year()) % 100, static_cast<unsigned>(day.month()));
}

int next_number(const Book& book, const std::string& prefix)
{
    Query row(
        book,
        "SELECT coalesce(max(CAST(substr(number, 6) AS INTEGER)), 0) + 1 FROM parcel WHERE substr(number, 1, 5) = ?",
        prefix);
    row.next();
    return row.small(0);
}

// Carrier, service and postage that a plan chose.
struct Chosen {
    std::string carrier, service;
    std::optional<Money> postage;
};
Chosen chosen(const planning::ParcelPlan& plan)
{
    if (!plan.chosen || *plan.chosen >= plan.quotes.size()) return {};
    const postage::Quote& quote = plan.quotes[*plan.chosen];
    return {quote.carrier, quote.service, quote.price() ? std::optional(quote.price()->total) : std::nullopt};
}

void insert_pieces(Writer& writer, shop::ParcelId id, const std::vector<shop::Piece>& pieces)
{
    for (const shop::Piece& piece : pieces) {
        writer.run("INSERT INTO parcel_piece (parcel, order_id, line, good, count) VALUES (?, ?, ?, ?, ?)", id,
                   piece.order, piece.line, piece.good, piece.count);
    }
}

Allowed not_more_than_ordered(const Book& book, const std::set<shop::OrderId>& ids)
{
    for (const shop::OrderId id : ids) {
        Query over(book,
                   "SELECT orders.number FROM orders JOIN piece_sent ON piece_sent.order_id = orders.id "
                   "LEFT JOIN order_line ON order_line.order_id = orders.id AND place = line WHERE orders.id = ? "
                   "GROUP BY line HAVING sum(piece_sent.count) > coalesce(max(order_line.count), 0)",
                   id);
        if (over.next()) return refuse(Why::more_than_ordered, over.text(0));
    }
    return {};
}

} // namespace

tl::expected<std::vector<shop::ParcelId>, Refused> put_plan(Book& book, const std::vector<shop::OrderId>& orders,
                                                            const std::vector<planning::ParcelPlan>& plans)
{
    std::vector<shop::ParcelId> made;
    const auto put = [&](Writer& writer) -> Allowed {
        for (const shop::OrderId id : orders) {
            for (const shop::Parcel& old : parcels_of(book, id)) {
                if (old.state == ParcelState::planned && !old.locked) delete_parcel(writer, old.id);
            }
        }
        const std::string prefix = month_prefix(writer.at());
        int number = next_number(book, prefix);
        std::set<shop::OrderId> touched(orders.begin(), orders.end());
        for (const planning::ParcelPlan& plan : plans) {
            const auto version = version_sum(book, plan.pieces);
            if (!version) return tl::unexpected(version.error());
            const Chosen service = chosen(plan);
            const shop::ParcelId id{writer.add(
                "INSERT INTO parcel (number, state, order_version, carrier, service, postage, postage_currency) "
                "VALUES (?, 'planned', ?, ?, ?, ?, ?)",
                fmt::format("{}{:03}", prefix, number++), *version, service.carrier, service.service, service.postage)};
            writer.run("INSERT INTO parcel_plan (id, document) VALUES (?, ?)", id, intake::plan_to_json(plan));
            insert_pieces(writer, id, plan.pieces);
            touched.merge(orders_of(plan.pieces));
            made.push_back(id);
        }
        return not_more_than_ordered(book, touched);
    };
    const Done done = in_step(book, StepKind::plan, {{"parcels", std::to_string(plans.size())}}, put);
    if (!done) return tl::unexpected(done.error());
    return made;
}

Done replan(Book& book, shop::ParcelId id, const planning::ParcelPlan& plan, Kept kept)
{
    return in_step(book, StepKind::plan, words_of(book, id), [&](Writer& writer) -> Allowed {
        const auto parcel = parcel_in(book, id, {ParcelState::planned, ParcelState::picked});
        if (!parcel) return tl::unexpected(parcel.error());
        const auto version = version_sum(book, plan.pieces);
        if (!version) return tl::unexpected(version.error());
        const Chosen service = chosen(plan);
        writer.run(
            "UPDATE parcel SET order_version = ?2, carrier = ?3, service = ?4, postage = ?5, postage_currency = ?6, "
            "steps_done = 0, scanned = 0 WHERE id = ?1",
            id, *version, service.carrier, service.service, service.postage);
        if (kept == Kept::from_now_on) writer.run("UPDATE parcel SET locked = 1 WHERE id = ?", id);
        writer.run("UPDATE parcel_plan SET document = ? WHERE id = ?", intake::plan_to_json(plan), id);
        if (parcel->pieces != plan.pieces) {
            writer.run("DELETE FROM parcel_piece WHERE parcel = ?", id);
            insert_pieces(writer, id, plan.pieces);
        }
        return not_more_than_ordered(book, orders_of(plan.pieces));
    });
}

Done drop_parcel(Book& book, shop::ParcelId id)
{
    return in_step(book, StepKind::drop_parcel, words_of(book, id), [&](Writer& writer) -> Allowed {
        const auto parcel = parcel_in(book, id, {ParcelState::planned, ParcelState::picked});
        if (!parcel) return tl::unexpected(parcel.error());
        delete_parcel(writer, id);
        return {};
    });
}

std::vector<shop::Parcel> parcels(const Book& book)
{
    return read_parcels(book, "true");
}

std::vector<shop::Parcel> parcels_of_day(const Book& book, Date day)
{
    return read_parcels(book, fmt::format("id IN (SELECT id FROM parcel WHERE state IN ('planned', 'picked', 'packed', "
                                          "'labelled') UNION SELECT parcel.id FROM hand_over_list "
                                          "JOIN parcel ON list = hand_over_list.id WHERE day = '{}')",
                                          to_text(day)));
}

std::vector<shop::Parcel> parcels_in(const Book& book, ParcelState state)
{
    return read_parcels(book, fmt::format("state = '{}'", name_of(state)));
}

std::vector<shop::Parcel> parcels_of(const Book& book, shop::OrderId order)
{
    return read_parcels(book, fmt::format("id IN (SELECT parcel FROM piece_sent WHERE order_id = {})", order.value));
}

std::optional<HeldParcel> parcel(const Book& book, shop::ParcelId id)
{
    return read_held(book, fmt::format("id = {}", id.value));
}

std::optional<HeldParcel> parcel_by_number(const Book& book, std::string_view number)
{
    Query row(book, "SELECT id FROM parcel WHERE number = ?", number);
    return row.next() ? parcel(book, shop::ParcelId{row.integer(0)}) : std::nullopt;
}

Standing parcel_standing(const Book& book, const shop::Parcel& parcel)
{
    Standing standing;
    std::vector<shop::OrderId> changed;
    int versions = 0;
    for (const shop::OrderId id : orders_of(parcel.pieces)) {
        const auto held = order(book, id);
        if (!held) continue;
        versions += held->version;
        if (held->version > 1) changed.push_back(id); // only the sum at planning is known: any of these may be the one
        if (held->state == shop::OrderState::called_off) standing.called_off.push_back(id);
        if (held->state == shop::OrderState::set_aside) standing.aside.push_back(id);
    }
    if (versions != parcel.order_version) standing.changed = std::move(changed);
    return standing;
}

Done accept_changes(Book& book, shop::ParcelId id)
{
    return in_step(book, StepKind::look_at_order, words_of(book, id), [&](Writer& writer) -> Allowed {
        const auto held = read_parcels(book, fmt::format("id = {}", id.value));
        if (held.empty()) return refuse(Why::unknown_parcel);
        const auto version = version_sum(book, held.front().pieces);
        if (!version) return tl::unexpected(version.error());
        writer.run("UPDATE parcel SET order_version = ? WHERE id = ?", *version, id);
        return {};
    });
}

std::map<shop::SupplyCode, shop::Amount> supplies_reserved(const Book& book)
{
    std::map<shop::SupplyCode, shop::Amount> sum;
    Query rows(book, "SELECT document FROM parcel JOIN planned_part ON planned_part.id = parcel.id "
                     "WHERE state IN ('planned', 'picked')");
    while (rows.next()) {
        for (const planning::Used& use : read_document<records::PlannedPart>(rows.text(0)).uses) {
            sum[use.supply] += use.amount;
        }
    }
    return sum;
}

std::map<shop::GoodCode, int> pieces_reserved(const Book& book)
{
    std::vector<shop::Piece> pieces;
    for (const ParcelState state : {ParcelState::planned, ParcelState::picked}) {
        for (const shop::Parcel& parcel : parcels_in(book, state)) {
            pieces.insert(pieces.end(), parcel.pieces.begin(), parcel.pieces.end());
        }
    }
    return single_goods(book, pieces);
}

} // namespace stow::book
