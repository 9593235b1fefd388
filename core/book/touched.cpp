#include "core/book/touched.h"

#include "core/book/order_rows.h"
#include "core/book/parcel_rows.h"

#include <fmt/format.h>

namespace stow::book {

namespace {

template <class Id>
std::string list_of(const std::set<Id>& ids)
{
    std::string list;
    for (const Id id : ids) list += (list.empty() ? "" : ",") + std::to_string(id.value);
    return list;
}

constexpr auto to_plan =
    "SELECT id FROM orders WHERE done = 0 AND state = 'checked' AND paid AND EXISTS (SELECT 1 FROM "
    "order_line WHERE order_id = orders.id AND count > (SELECT coalesce(sum(sent.count), 0) FROM "
    "piece_sent AS sent WHERE sent.order_id = orders.id AND sent.line = place AND (sent.locked OR "
    "sent.state <> 'planned')))";

std::set<shop::OrderId> ids_from(const Book& book, const std::string& sql)
{
    std::set<shop::OrderId> ids;
    Query rows(book, sql);
    while (rows.next()) ids.insert({rows.integer(0)});
    return ids;
}

} // namespace

Mark newest_mark(const Book& book)
{
    Query row(book, "SELECT coalesce(max(id), 0) FROM image");
    row.next();
    return row.integer(0);
}

Touched touched_since(const Book& book, Mark mark)
{
    Touched touched;
    // A row that is gone says in its image whose it was.
    Query rows(
        book,
        "SELECT tab, key, coalesce((SELECT order_id FROM order_line WHERE tab = 'order_line' AND id = key), "
        "(SELECT order_id FROM parcel_piece WHERE tab = 'parcel_piece' AND id = key), "
        "json_extract(before, '$.order_id'), 0), "
        "coalesce((SELECT parcel FROM parcel_piece WHERE tab = 'parcel_piece' AND id = key), "
        "(SELECT parcel FROM weighing WHERE tab = 'weighing' AND id = key), json_extract(before, '$.parcel'), 0) "
        "FROM image WHERE id > ?",
        mark);
    while (rows.next()) {
        const std::string table = rows.text(0);
        const std::int64_t key = rows.integer(1);
        if (table == "orders") touched.orders.insert({key});
        if (table == "order_line" || table == "parcel_piece") touched.orders.insert({rows.integer(2)});
        if (table == "parcel" || table == "parcel_plan") touched.parcels.insert({key});
        if (table == "parcel_piece" || table == "weighing") touched.parcels.insert({rows.integer(3)});
        if (table == "good" || table == "supply" || table == "wrapping" || table == "house") touched.cupboard = true;
        if (table == "rate_sheet") touched.rate_sheets = true;
    }
    if (touched.parcels.empty()) return touched;
    // Whether an order is to be planned hangs on the state of its parcels.
    Query pieces(book, "SELECT DISTINCT order_id FROM parcel_piece WHERE parcel IN (" + list_of(touched.parcels) + ")");
    while (pieces.next()) touched.orders.insert({pieces.integer(0)});
    return touched;
}

// A plus keeps SQLite from asking an index of all orders where a few ids are given.
std::vector<shop::HeldOrder> orders_open(const Book& book, Date since, const std::set<shop::OrderId>& among)
{
    return read_orders(book,
                       fmt::format("id IN ({}) AND ((+done = 0 AND +state IN ('arrived', 'checked', 'set aside')) "
                                   "OR +date >= '{}')",
                                   list_of(among), to_text(since)));
}

std::vector<shop::Parcel> parcels_of_day(const Book& book, Date day, const std::set<shop::ParcelId>& among)
{
    return read_parcels(book,
                        fmt::format("id IN ({}) AND (+state IN ('planned', 'picked', 'packed', 'labelled') OR +list IN "
                                    "(SELECT hand_over_list.id FROM hand_over_list WHERE day = '{}'))",
                                    list_of(among), to_text(day)));
}

std::set<shop::OrderId> ids_to_plan(const Book& book)
{
    return ids_from(book, to_plan);
}

std::set<shop::OrderId> ids_to_plan(const Book& book, const std::set<shop::OrderId>& among)
{
    return ids_from(book, fmt::format("{} AND id IN ({})", to_plan, list_of(among)));
}

Date planned_arrival(const Book& book, shop::ParcelId id)
{
    Query row(book, "SELECT json_extract(document, '$.plan.delivered') FROM parcel_plan WHERE id = ?", id);
    return row.next() ? row.date(0) : Date{};
}

} // namespace stow::book
