// A shop's export to orders. One row an order or one row a line: rows of one order number are the lines of one order,
// and may leave what belongs to the whole order blank after the first.
#pragma once

#include "core/intake/order_columns.h"
#include "core/intake/taken.h"
#include "core/shop/goods.h"
#include "core/shop/orders.h"

#include <compare>
#include <map>

namespace stow::intake {

// Sound orders in the order of the file. An order with a bad row is left out whole, since half an order must not be
// packed: its other rows are named `order_incomplete`. A bad postcode or an unknown country is named but taken: the
// order then waits for a better address (shop::look_over). The same row twice is one line.
Taken<shop::Order> read_orders(const Csv& csv, const ColumnMatch& match);

struct TitleKey { // what one shop calls a good
    std::string shop, title, variant;
    friend auto operator<=>(const TitleKey&, const TitleKey&) = default;
};
using Matches = std::map<TitleKey, shop::GoodCode>;

// Fills in the goods of unmatched lines: by what was remembered, else where the shop's own code is one of our codes.
// Returns how many lines stay unmatched.
std::size_t match_goods(shop::Order& order, const Matches& matches, const std::map<shop::GoodCode, shop::Good>& goods);

} // namespace stow::intake
