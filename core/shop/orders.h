// Orders, as shops and hands give them.
#pragma once

#include "core/measure/date.h"
#include "core/measure/money.h"
#include "core/shop/codes.h"

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace stow::shop {

struct Address {
    std::string name;
    std::string company;
    std::vector<std::string> street; // house and street, further lines
    std::string postcode;
    std::string town;
    std::string region;
    std::string country; // ISO 3166-1 alpha-2
    friend bool operator==(const Address&, const Address&) = default;
};

struct OrderLine {
    std::string title; // as the shop calls the good
    std::string variant;
    std::string shop_code; // the shop's own code for it, if any
    GoodCode good;         // empty: not matched yet
    int count = 1;
    std::optional<Money> price; // of one
    std::string personal_text;  // "engrave: Anna"
    friend bool operator==(const OrderLine&, const OrderLine&) = default;
};

struct Gift {
    std::string giver;
    std::string message;
    friend bool operator==(const Gift&, const Gift&) = default;
};

enum class OrderState { arrived, checked, set_aside, called_off };
std::string_view name_of(OrderState state);
std::optional<OrderState> order_state(std::string_view name);

// What identifies an order: the same shop and number is the same order.
struct OrderKey {
    std::string shop;
    std::string number;
    friend auto operator<=>(const OrderKey&, const OrderKey&) = default;
};

struct Order {
    OrderKey key;
    Date date;
    std::optional<Date> promised;
    bool paid = true;          // an unpaid order is never planned
    std::string buyer_contact; // e-mail or telephone, as the shop gives it
    Address to;
    std::vector<OrderLine> lines;
    std::string note;
    std::optional<Gift> gift;
    std::string service_wanted;
    std::optional<Money> postage_paid;
    bool called_off = false; // the shop says so
    friend bool operator==(const Order&, const Order&) = default;
};

// An order as the shop book holds it.
struct HeldOrder {
    OrderId id;
    Order order;
    OrderState state = OrderState::arrived;
    std::string aside_reason;
    std::optional<Date> aside_until;
    int version = 1;                  // grows when the shop's data changed
    bool changed = false;             // changed since she last looked
    std::optional<OrderId> joined_to; // packed together with this one
};

// Orders with the same key may be packed together: same name, street, postcode, town and country, letter case, spaces
// and punctuation aside.
std::string joining_key(const Address& to);

// What keeps an order from being planned, or should be looked at before it is. `missing_street`: no name, street or
// town. `joinable` and `changed` are seen from all held orders, not from one.
enum class OrderProblem {
    unmatched_good,
    unpaid,
    bad_postcode,
    unknown_country,
    missing_street,
    promised_passed,
    joinable,
    changed,
    note_to_read
};
struct OrderFinding {
    OrderProblem problem;
    bool blocks = false;
    std::size_t line = 0; // of the order, for unmatched_good
};
std::vector<OrderFinding> look_over(const Order& order, Date today);

// Has the shape that the country's postcodes have; true where we know of none. Letter case aside.
bool postcode_ok(const std::string& country, const std::string& postcode);

} // namespace stow::shop
