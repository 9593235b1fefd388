#include "core/book/order_rows.h"

#include "core/book/orders.h"

#include <fmt/format.h>
#include <unordered_map>

namespace stow::book {

namespace {

std::string join_lines(const std::vector<std::string>& lines)
{
    std::string text;
    for (std::size_t i = 0; i < lines.size(); ++i) text += (i ? "\n" : "") + lines[i];
    return text;
}

std::vector<std::string> split_lines(const std::string& text)
{
    std::vector<std::string> lines;
    if (text.empty()) return lines;
    for (std::size_t from = 0;;) {
        const std::size_t end = text.find('\n', from);
        lines.push_back(text.substr(from, end - from));
        if (end == std::string::npos) return lines;
        from = end + 1;
    }
}

void insert_line(Writer& writer, shop::OrderId id, std::size_t place, const shop::OrderLine& line)
{
    writer.run(
        "INSERT INTO order_line (order_id, place, title, variant, shop_code, good, count, price, price_currency, "
        "personal_text) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
        id, place, line.title, line.variant, line.shop_code, line.good, line.count, line.price, line.personal_text);
}

void update_line(Writer& writer, shop::OrderId id, std::size_t place, const shop::OrderLine& line)
{
    writer.run("UPDATE order_line SET title = ?3, variant = ?4, shop_code = ?5, good = ?6, count = ?7, price = ?8, "
               "price_currency = ?9, personal_text = ?10 WHERE order_id = ?1 AND place = ?2",
               id, place, line.title, line.variant, line.shop_code, line.good, line.count, line.price,
               line.personal_text);
}

// All at once: a question for each of thousands of orders would be felt.
std::unordered_map<std::int64_t, std::vector<shop::OrderLine>> read_lines(const Book& book, const std::string& orders)
{
    std::unordered_map<std::int64_t, std::vector<shop::OrderLine>> lines;
    Query rows(book, "SELECT title, variant, shop_code, good, count, price, price_currency, personal_text, order_id "
                     "FROM order_line WHERE order_id IN (SELECT id FROM orders WHERE " +
                         orders + ") ORDER BY order_id, place");
    while (rows.next()) {
        shop::OrderLine line;
        line.title = rows.text(0);
        line.variant = rows.text(1);
        line.shop_code = rows.text(2);
        line.good = {rows.text(3)};
        line.count = rows.small(4);
        line.price = rows.maybe_money(5);
        line.personal_text = rows.text(7);
        lines[rows.integer(8)].push_back(std::move(line));
    }
    return lines;
}

std::size_t line_count(const Book& book, shop::OrderId id)
{
    Query row(book, "SELECT count(*) FROM order_line WHERE order_id = ?", id);
    row.next();
    return static_cast<std::size_t>(row.integer(0));
}

std::optional<std::string> giver(const shop::Order& order)
{
    return order.gift ? std::optional(order.gift->giver) : std::nullopt;
}
std::optional<std::string> gift_message(const shop::Order& order)
{
    return order.gift ? std::optional(order.gift->message) : std::nullopt;
}

} // namespace

std::vector<shop::HeldOrder> read_orders(const Book& book, const std::string& condition)
{
    std::vector<shop::HeldOrder> found;
    auto lines = read_lines(book, condition);
    Query row(
        book,
        "SELECT id, shop, number, date, promised, paid, contact, name, company, street, postcode, town, region, "
        "country, note, giver, gift_message, service_wanted, postage_paid, postage_paid_currency, called_off, state, "
        "aside_reason, aside_until, version, changed, joined_to FROM orders WHERE " +
            condition + " ORDER BY coalesce(promised, '9999'), date, id");
    while (row.next()) {
        shop::HeldOrder held;
        held.id = {row.integer(0)};
        shop::Order& order = held.order;
        order.key = {row.text(1), row.text(2)};
        order.date = row.date(3);
        order.promised = row.maybe_date(4);
        order.paid = row.truth(5);
        order.buyer_contact = row.text(6);
        order.to = {row.text(7),  row.text(8), split_lines(row.text(9)), row.text(10), row.text(11),
                    row.text(12), row.text(13)};
        order.lines = std::move(lines[held.id.value]);
        order.note = row.text(14);
        if (!row.null(15)) order.gift = shop::Gift{row.text(15), row.text(16)};
        order.service_wanted = row.text(17);
        order.postage_paid = row.maybe_money(18);
        order.called_off = row.truth(20);
        held.state = shop::order_state(row.text(21)).value_or(shop::OrderState::arrived);
        held.aside_reason = row.text(22);
        held.aside_until = row.maybe_date(23);
        held.version = row.small(24);
        held.changed = row.truth(25);
        if (const auto joined = row.maybe_integer(26)) held.joined_to = shop::OrderId{*joined};
        found.push_back(std::move(held));
    }
    return found;
}

shop::OrderId insert_order(Writer& writer, const shop::Order& order, const std::optional<std::string>& told)
{
    const auto state = order.called_off ? shop::OrderState::called_off : shop::OrderState::arrived;
    const shop::OrderId id{writer.add("INSERT INTO orders (shop, number, date, promised, paid, contact, name, company, "
                                      "street, postcode, town, region, "
                                      "country, note, giver, gift_message, service_wanted, postage_paid, "
                                      "postage_paid_currency, called_off, state, told) "
                                      "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
                                      order.key.shop, order.key.number, order.date, order.promised, order.paid,
                                      order.buyer_contact, order.to.name, order.to.company, join_lines(order.to.street),
                                      order.to.postcode, order.to.town, order.to.region, order.to.country, order.note,
                                      giver(order), gift_message(order), order.service_wanted, order.postage_paid,
                                      order.called_off, name_of(state), told)};
    for (std::size_t i = 0; i < order.lines.size(); ++i) insert_line(writer, id, i, order.lines[i]);
    return id;
}

void update_order(const Book& book, Writer& writer, shop::OrderId id, const shop::Order& order)
{
    writer.run(
        "UPDATE orders SET date = ?2, promised = ?3, paid = ?4, contact = ?5, name = ?6, company = ?7, street = ?8, "
        "postcode = ?9, town = ?10, region = ?11, country = ?12, note = ?13, giver = ?14, gift_message = ?15, "
        "service_wanted = ?16, postage_paid = ?17, postage_paid_currency = ?18, called_off = ?19, done = 0 WHERE id = "
        "?1",
        id, order.date, order.promised, order.paid, order.buyer_contact, order.to.name, order.to.company,
        join_lines(order.to.street), order.to.postcode, order.to.town, order.to.region, order.to.country, order.note,
        giver(order), gift_message(order), order.service_wanted, order.postage_paid, order.called_off);
    const std::size_t before = line_count(book, id);
    for (std::size_t i = 0; i < order.lines.size(); ++i) {
        if (i < before)
            update_line(writer, id, i, order.lines[i]);
        else
            insert_line(writer, id, i, order.lines[i]);
    }
    writer.run("DELETE FROM order_line WHERE order_id = ? AND place >= ?", id, order.lines.size());
}

void fill_in_goods(Writer& writer)
{
    writer.run("UPDATE order_line SET good = coalesce("
               "(SELECT good_match.good FROM good_match JOIN orders ON orders.id = order_line.order_id "
               "WHERE good_match.shop = orders.shop AND good_match.title = order_line.title "
               "AND good_match.variant = order_line.variant), "
               "(SELECT code FROM good WHERE code = order_line.shop_code), '') WHERE good = ''");
}

void part(const Book& book, Writer& writer, shop::OrderId id)
{
    writer.run("UPDATE orders SET joined_to = NULL WHERE id = ?", id);
    const auto followers = order_ids(book, "joined_to = ? ORDER BY id", id);
    for (const shop::OrderId follower : followers) {
        if (follower == followers.front())
            writer.run("UPDATE orders SET joined_to = NULL WHERE id = ?", follower);
        else
            writer.run("UPDATE orders SET joined_to = ? WHERE id = ?", followers.front(), follower);
    }
}

void part_if_elsewhere(const Book& book, Writer& writer, shop::OrderId id)
{
    const auto held = order(book, id);
    if (!held) return;
    const std::string with =
        fmt::format("joined_to = {0} OR id = (SELECT joined_to FROM orders WHERE id = {0})", id.value);
    for (const shop::HeldOrder& other : read_orders(book, with)) {
        if (shop::joining_key(other.order.to) != shop::joining_key(held->order.to)) return part(book, writer, id);
    }
}

} // namespace stow::book
