// Orders in the book: taken in from shops, entered, checked, set aside, joined.
#pragma once

#include "core/book/steps.h"
#include "core/shop/orders.h"

namespace stow::book {

struct OrdersTaken {
    int fresh = 0, unchanged = 0, changed = 0, called_off = 0;
    std::vector<shop::OrderId> touched; // fresh, changed or called off
    std::optional<StepId> step;         // nothing when the file brought nothing new
};
// Identity is shop and number. What the shop said last is kept apart from what she edited by hand: only what the shop
// itself changed is taken over, the version grows, and the order's parcels stop (parcel_standing in parcels.h).
// Lines without a good get the one remembered for shop, title and variant.
OrdersTaken take_in_orders(Book& book, const std::vector<shop::Order>& orders, const std::string& file);

tl::expected<shop::OrderId, Refused> enter_order(Book& book, const shop::Order& order);
// Replaces address, lines, note and the rest by hand; the key stays. Stops its parcels like a change by the shop when
// address, lines, gift or service differ.
Done edit_order(Book& book, shop::OrderId id, const shop::Order& order);

// Several orders are one step: all of them, or none and why.
using OrderIds = std::vector<shop::OrderId>;
Done check_orders(Book& book, const OrderIds& ids);
Done set_aside(Book& book, const OrderIds& ids, const std::string& reason, std::optional<Date> until = std::nullopt);
Done take_back(Book& book, const OrderIds& ids); // from aside or called off to arrived
Done call_off(Book& book, const OrderIds& ids);
inline Done check_order(Book& book, shop::OrderId id)
{
    return check_orders(book, OrderIds{id});
}
inline Done set_aside(Book& book, shop::OrderId id, const std::string& reason, std::optional<Date> until = std::nullopt)
{
    return set_aside(book, OrderIds{id}, reason, until);
}
inline Done take_back(Book& book, shop::OrderId id)
{
    return take_back(book, OrderIds{id});
}
inline Done call_off(Book& book, shop::OrderId id)
{
    return call_off(book, OrderIds{id});
}
Done look_at(Book& book, shop::OrderId id); // she has seen what the shop changed

// Packed together from now on; orders joined to `id` follow it. Only with the same joining key.
Done join_orders(Book& book, shop::OrderId id, shop::OrderId to);
Done part_order(Book& book, shop::OrderId id);

struct Match { // what one shop calls a good
    std::string shop, title, variant;
    shop::GoodCode good;
};
// Remembers and fills in the good in all unmatched lines of that shop, title and variant.
Done remember_match(Book& book, const Match& match);
std::vector<Match> matches(const Book& book);

std::vector<shop::HeldOrder> orders(const Book& book);
// Those with something left to do, and all that are dated `since` or later.
std::vector<shop::HeldOrder> orders_open(const Book& book, Date since);
std::vector<shop::HeldOrder> orders_in(const Book& book, shop::OrderState state);
// Checked, paid, with pieces that are in no parcel, or only in planned, unlocked ones.
std::vector<shop::HeldOrder> orders_to_plan(const Book& book);
std::optional<shop::HeldOrder> order(const Book& book, shop::OrderId id);
std::optional<shop::HeldOrder> order_by_key(const Book& book, const shop::OrderKey& key);

struct Hit {
    shop::OrderId order;
    std::optional<shop::ParcelId> parcel;
    enum class By { name, postcode, number, tracking, parcel_number } by = By::name;
};
// Finds by part of the buyer's name, postcode, order number, parcel number or tracking number, letter case and spaces
// aside; orders first, the newest first.
std::vector<Hit> search(const Book& book, std::string_view text, std::size_t most = 100);

// The steps that touched the order, its lines or its parcels, oldest first.
std::vector<Step> history(const Book& book, shop::OrderId id);

} // namespace stow::book
