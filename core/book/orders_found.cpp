// Looking orders up.
#include "core/book/order_rows.h"
#include "core/book/orders.h"

#include <SQLiteCpp/Database.h>
#include <algorithm>
#include <fmt/format.h>
#include <sqlite3.h>
#include <unicode/unistr.h>

namespace stow::book {

namespace {

void fold_by_icu(std::string_view text, std::string& bare)
{
    icu::UnicodeString letters =
        icu::UnicodeString::fromUTF8(icu::StringPiece(text.data(), static_cast<int>(text.size())));
    letters.foldCase();
    bare.clear();
    letters.toUTF8String(bare);
    bare.erase(std::remove(bare.begin(), bare.end(), ' '), bare.end());
}

// Letter case and spaces aside, for all scripts. The letters of Latin-1 are folded here, as Unicode's CaseFolding.txt
// has them: what ICU takes for a cell would be felt in a hundred thousand orders.
void fold(std::string_view text, std::string& bare)
{
    bare.clear();
    for (std::size_t i = 0; i < text.size(); ++i) {
        const char c = text[i];
        const auto byte = static_cast<unsigned char>(c);
        if (byte < 0x80) {
            if (c != ' ') bare += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
            continue;
        }
        const unsigned next = i + 1 < text.size() ? static_cast<unsigned char>(text[i + 1]) : 0;
        if (byte != 0xC3 || next < 0x80 || next > 0xBF) return fold_by_icu(text, bare);
        ++i;
        const bool capital = next <= 0x9E && next != 0x97; // À to Þ, but for ×
        if (next == 0x9F)
            bare += "ss"; // ß
        else
            bare.append({c, static_cast<char>(capital ? next + 0x20 : next)});
    }
}

class Wanted {
public:
    explicit Wanted(std::string_view text) { fold(text, wanted_); }
    bool nothing() const { return wanted_.empty(); }
    bool in(std::string_view cell)
    {
        if (cell.size() * 3 < wanted_.size()) return false; // folding makes no text more than three times as long
        fold(cell, cell_);
        return cell_.find(wanted_) != std::string::npos;
    }

private:
    std::string wanted_, cell_;
};

void holds_text(sqlite3_context* context, int count, sqlite3_value** cells)
{
    auto& wanted = *static_cast<Wanted*>(sqlite3_user_data(context));
    bool held = false;
    for (int i = 0; i < count && !held; ++i) {
        const auto* text = reinterpret_cast<const char*>(sqlite3_value_text(cells[i]));
        if (text != nullptr) held = wanted.in({text, static_cast<std::size_t>(sqlite3_value_bytes(cells[i]))});
    }
    sqlite3_result_int(context, held ? 1 : 0);
}

std::optional<shop::HeldOrder> first(std::vector<shop::HeldOrder> found)
{
    if (found.empty()) return std::nullopt;
    return std::move(found.front());
}

} // namespace

std::vector<shop::HeldOrder> orders(const Book& book)
{
    return read_orders(book, "true");
}

std::vector<shop::HeldOrder> orders_open(const Book& book, Date since)
{
    return read_orders(book,
                       fmt::format("id IN (SELECT id FROM orders WHERE done = 0 AND state IN ('arrived', 'checked', "
                                   "'set aside') UNION SELECT id FROM orders WHERE date >= '{}')",
                                   to_text(since)));
}

std::vector<shop::HeldOrder> orders_in(const Book& book, shop::OrderState state)
{
    return read_orders(book, fmt::format("state = '{}'", name_of(state)));
}

std::vector<shop::HeldOrder> orders_to_plan(const Book& book)
{
    std::vector<shop::HeldOrder> open;
    for (shop::HeldOrder& held : read_orders(book, "done = 0 AND state = 'checked' AND paid")) {
        Query kept(book,
                   "SELECT line, sum(count) FROM piece_sent WHERE order_id = ? AND (locked OR state <> 'planned') "
                   "GROUP BY line",
                   held.id);
        std::vector<shop::OrderLine>& lines = held.order.lines;
        while (kept.next()) {
            const auto line = static_cast<std::size_t>(kept.integer(0));
            if (line < lines.size()) lines[line].count = std::max(0, lines[line].count - kept.small(1));
        }
        if (std::any_of(lines.begin(), lines.end(), [](const auto& line) { return line.count > 0; })) {
            open.push_back(std::move(held));
        }
    }
    return open;
}

std::optional<shop::HeldOrder> order(const Book& book, shop::OrderId id)
{
    return first(read_orders(book, fmt::format("id = {}", id.value)));
}

std::optional<shop::HeldOrder> order_by_key(const Book& book, const shop::OrderKey& key)
{
    const auto ids = order_ids(book, "shop = ? AND number = ?", key.shop, key.number);
    return ids.empty() ? std::nullopt : order(book, ids.front());
}

std::vector<Match> matches(const Book& book)
{
    std::vector<Match> all;
    Query rows(book, "SELECT shop, title, variant, good FROM good_match ORDER BY shop, title, variant");
    while (rows.next()) all.push_back({rows.text(0), rows.text(1), rows.text(2), {rows.text(3)}});
    return all;
}

std::vector<Hit> search(const Book& book, std::string_view text, std::size_t most)
{
    Wanted wanted(text);
    std::vector<Hit> hits;
    if (wanted.nothing()) return hits;

    // SQLite asks for each cell and gives only what holds the text: a hundred thousand rows handed out would be felt.
    book.db().createFunction("holds_text", -1, false, &wanted, &holds_text);
    Query rows(book, "SELECT id, number, name, postcode FROM orders WHERE holds_text(number, name, postcode)");
    while (rows.next()) {
        const shop::OrderId id{rows.integer(0)};
        if (wanted.in(rows.view(1)))
            hits.push_back({id, std::nullopt, Hit::By::number});
        else if (wanted.in(rows.view(2)))
            hits.push_back({id, std::nullopt, Hit::By::name});
        else if (wanted.in(rows.view(3)))
            hits.push_back({id, std::nullopt, Hit::By::postcode});
    }
    const auto newest_first = [](const Hit& a, const Hit& b) { return a.order.value > b.order.value; };
    std::sort(hits.begin(), hits.end(), newest_first);

    std::vector<std::pair<shop::ParcelId, Hit::By>> sent;
    Query parcels(book, "SELECT id, number, tracking FROM parcel WHERE holds_text(number, tracking)");
    while (parcels.next()) {
        const shop::ParcelId id{parcels.integer(0)};
        if (wanted.in(parcels.view(1)))
            sent.emplace_back(id, Hit::By::parcel_number);
        else if (wanted.in(parcels.view(2)))
            sent.emplace_back(id, Hit::By::tracking);
    }
    std::sort(sent.begin(), sent.end(), [](const auto& a, const auto& b) { return a.first.value > b.first.value; });
    for (const auto& [parcel, by] : sent) {
        if (hits.size() >= most) break;
        Query orders(book, "SELECT DISTINCT order_id FROM parcel_piece WHERE parcel = ? ORDER BY order_id", parcel);
        while (orders.next()) hits.push_back({{orders.integer(0)}, parcel, by});
    }
    if (hits.size() > most) hits.resize(most);
    return hits;
}

std::vector<Step> history(const Book& book, shop::OrderId id)
{
    // Lines and parcels that are gone by now are known from their images.
    Query touched(book,
                  "WITH lines AS (SELECT id FROM order_line WHERE order_id = ?1 UNION SELECT key FROM image "
                  "WHERE tab = 'order_line' AND json_extract(before, '$.order_id') = ?1), "
                  "parcels AS (SELECT parcel AS id FROM parcel_piece WHERE order_id = ?1 UNION "
                  "SELECT json_extract(before, '$.parcel') FROM image WHERE tab = 'parcel_piece' "
                  "AND json_extract(before, '$.order_id') = ?1), "
                  "weighings AS (SELECT id FROM weighing WHERE parcel IN parcels), "
                  "stamps AS (SELECT id FROM postage WHERE parcel IN parcels) "
                  "SELECT DISTINCT step FROM image WHERE (tab = 'orders' AND key = ?1) "
                  "OR (tab = 'order_line' AND key IN lines) "
                  "OR (tab IN ('parcel', 'parcel_plan') AND key IN parcels) "
                  "OR (tab = 'weighing' AND key IN weighings) OR (tab = 'postage' AND key IN stamps) ORDER BY step",
                  id);
    std::vector<Step> found;
    while (touched.next()) {
        if (auto one = step(book, StepId{touched.integer(0)})) found.push_back(std::move(*one));
    }
    return found;
}

} // namespace stow::book
