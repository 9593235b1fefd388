// Orders as rows. For the files of this folder.
#pragma once

#include "core/book/step_writer.h"
#include "core/shop/orders.h"

namespace stow::book {

// Of the orders that `condition` (SQL over the table orders) picks, by promised day, then date, then id.
std::vector<shop::HeldOrder> read_orders(const Book& book, const std::string& condition);
template <class... Values>
std::vector<shop::OrderId> order_ids(const Book& book, const std::string& condition, const Values&... values)
{
    std::vector<shop::OrderId> ids;
    Query rows(book, "SELECT id FROM orders WHERE " + condition, values...);
    while (rows.next()) ids.push_back({rows.integer(0)});
    return ids;
}

// `told`: the order as its shop told it; nothing for one entered by hand.
shop::OrderId insert_order(Writer& writer, const shop::Order& order, const std::optional<std::string>& told);
void update_order(const Book& book, Writer& writer, shop::OrderId id, const shop::Order& order);
// Gives lines without a good the one remembered for their shop, title and variant, or the one of the shop's own code.
void fill_in_goods(Writer& writer);
// Takes an order out of those it is packed with; if others followed it, they follow the first of themselves.
void part(const Book& book, Writer& writer, shop::OrderId id);
// The same, if its address is no longer that of the others.
void part_if_elsewhere(const Book& book, Writer& writer, shop::OrderId id);

} // namespace stow::book
