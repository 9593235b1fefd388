// Which column of a shop's export means what. Guessed from the headings once a shop, shown, corrected, remembered.
#pragma once

#include "core/intake/csv.h"
#include "core/intake/dates.h"
#include "core/measure/money.h"

#include <array>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <tl/expected.hpp>
#include <vector>

namespace stow::intake {

enum class OrderField {
    number,
    date,
    promised,
    first_name,
    name, // `name` alone, or the family name behind `first_name`
    company,
    street,
    house_number,
    street_2,
    postcode,
    town,
    region,
    country,
    contact,
    title,
    variant,
    shop_code,
    count,
    price,
    currency,
    personal_text,
    note,
    is_gift,
    gift_message,
    giver,
    service,
    postage,
    paid,
    called_off,
};
inline constexpr std::array all_order_fields{
    OrderField::number,        OrderField::date,     OrderField::promised, OrderField::first_name,
    OrderField::name,          OrderField::company,  OrderField::street,   OrderField::house_number,
    OrderField::street_2,      OrderField::postcode, OrderField::town,     OrderField::region,
    OrderField::country,       OrderField::contact,  OrderField::title,    OrderField::variant,
    OrderField::shop_code,     OrderField::count,    OrderField::price,    OrderField::currency,
    OrderField::personal_text, OrderField::note,     OrderField::is_gift,  OrderField::gift_message,
    OrderField::giver,         OrderField::service,  OrderField::postage,  OrderField::paid,
    OrderField::called_off};
std::string_view name_of(OrderField field); // as a match is written: "order number", "gift message"
std::optional<OrderField> order_field(std::string_view name);

struct ColumnMatch {
    std::string shop;                           // whose file it is
    std::map<OrderField, std::string> headings; // as they stand in the file
    DateOrder dates = DateOrder::day_month;     // where the file itself does not tell
    std::string home = "DE";                    // country of an address that names none
    Currency currency;                          // of a price that names none
    friend bool operator==(const ColumnMatch&, const ColumnMatch&) = default;
};

// From our own table of English and German words. Columns of the delivery address win over plain ones, those of the
// invoice address are never taken.
ColumnMatch guess_columns(const Csv& csv, std::string shop);

// What an order cannot do without and the match does not give, or gives by a heading that is not in the file: number,
// date, name, street, town, and title or shop code.
std::vector<OrderField> missing_fields(const ColumnMatch& match, const Csv& csv);

// As JSON: {"shop": ..., "columns": {"order number": "Bestellnummer", ...}, "dates": "day month", ...}.
using stow::to_text; // so that dates and money keep theirs in this namespace
std::string to_text(const ColumnMatch& match);
tl::expected<ColumnMatch, std::string> column_match(std::string_view json); // else what is wrong with it

} // namespace stow::intake
