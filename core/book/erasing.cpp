#include "core/book/erasing.h"

#include "core/book/copying.h"
#include "core/book/daily_copies.h"
#include "core/book/order_rows.h"
#include "core/book/orders.h"
#include "core/book/schema.h"
#include "core/book/settings.h"

#include <SQLiteCpp/SQLiteCpp.h>

#include <algorithm>
#include <cstring>
#include <fmt/format.h>
#include <nlohmann/json.hpp>
#include <set>

namespace stow::book {

namespace {

namespace fs = std::filesystem;

constexpr int at_once = 200;                // orders in one step, so that a window beside it need not wait
constexpr const char* in_work = ".erasing"; // what is unfinished of a copy: copying.h
constexpr const char* copies_reached = "copies reached by erasing";
constexpr const char* undone_erased = "undone orders erased"; // [[shop, number]...]

struct ToErase {
    shop::OrderId id;
    shop::OrderKey key;
    Date date{}; // of one in the history
};

// A condition: does an order still tell of its buyer? `as` is how a column of it is read.
std::string shows_buyer(const char* as)
{
    std::string any;
    for (const char* column : {"name", "company", "street", "postcode", "town", "region", "contact", "note", "giver",
                               "gift_message", "aside_reason"}) {
        any += (any.empty() ? "" : " OR ") + fmt::format(fmt::runtime(as), column) + " <> ''";
    }
    return any;
}

// An order as a shop told it (intake::to_document), without its buyer. A text, not JSON inside JSON.
std::string without_buyer(const std::string& told)
{
    return fmt::format("('' || json_replace({0}, '$.buyer_contact', '', '$.to.name', '', '$.to.company', '', "
                       "'$.to.street', json('[]'), '$.to.postcode', '', '$.to.town', '', '$.to.region', '', "
                       "'$.note', '', '$.gift.giver', '', '$.gift.message', '', '$.lines', "
                       "json((SELECT json_group_array(json_replace(value, '$.personal_text', '')) "
                       "FROM json_each({0}, '$.lines')))))",
                       told);
}

// What tells of a buyer in the parcels of the orders in temp.erasing: numbers by which the carrier tells the address,
// and reasons, which she typed.
void wipe_parcels(SQLite::Database& db)
{
    db.exec("CREATE TEMP TABLE IF NOT EXISTS erasing_parcel (id INTEGER PRIMARY KEY, number TEXT)");
    db.exec("DELETE FROM temp.erasing_parcel");
    Query(db, "INSERT INTO temp.erasing_parcel SELECT parcel, (SELECT number FROM parcel WHERE id = parcel) FROM ("
              "SELECT parcel FROM parcel_piece WHERE order_id IN (SELECT id FROM temp.erasing) UNION "
              "SELECT json_extract(before, '$.parcel') FROM image WHERE tab = 'parcel_piece' "
              "AND key NOT IN (SELECT id FROM parcel_piece) AND before IS NOT NULL "
              "AND json_extract(before, '$.order_id') IN (SELECT id FROM temp.erasing))")
        .run();
    Query(db, "UPDATE temp.erasing_parcel SET number = (SELECT json_extract(before, '$.number') FROM image "
              "WHERE tab = 'parcel' AND key = erasing_parcel.id AND before IS NOT NULL) WHERE number IS NULL")
        .run();
    struct Told {
        const char *table, *column, *parcel;
    };
    constexpr Told all[] = {{"parcel", "tracking", "id"},
                            {"parcel", "back_why", "id"},
                            {"weighing", "why", "parcel"},
                            {"postage", "number", "parcel"}};
    for (const auto& [table, column, parcel] : all) {
        const auto columns = columns_of_table(db, table);
        if (std::find(columns.begin(), columns.end(), column) == columns.end()) continue; // an older version's
        Query(db, fmt::format("UPDATE {0} SET {1} = '' WHERE {1} <> '' AND {2} IN (SELECT id FROM temp.erasing_parcel)",
                              table, column, parcel))
            .run();
        // Of rows that are there, found by their keys; of those that are gone, by what they said.
        for (const char* which : {"key IN (SELECT id FROM {0} WHERE {2} IN (SELECT id FROM temp.erasing_parcel))",
                                  "key NOT IN (SELECT id FROM {0}) AND before IS NOT NULL "
                                  "AND json_extract(before, '$.{2}') IN (SELECT id FROM temp.erasing_parcel)"}) {
            Query(db, fmt::format(fmt::runtime("UPDATE image SET before = json_set(before, '$.{1}', '') "
                                               "WHERE tab = '{0}' AND " +
                                               std::string(which) + " AND json_extract(before, '$.{1}') <> ''"),
                                  table, column, parcel))
                .run();
        }
    }
}

// Her reasons in the words of steps. What else a step says (numbers, codes, counts) tells of nobody.
void wipe_reasons(SQLite::Database& db)
{
    const std::string stays = db.execAndGet("SELECT sql FROM sqlite_schema WHERE name = 'step_stays'").getString();
    db.exec("DROP TRIGGER step_stays");
    Query(db, "UPDATE step SET words = json_remove(words, '$.reason') WHERE instr(words, '\"reason\"') > 0 AND ("
              "json_extract(words, '$.parcel') IN (SELECT number FROM temp.erasing_parcel) OR EXISTS ("
              "SELECT 1 FROM temp.erasing WHERE shop = json_extract(words, '$.shop') "
              "AND number = json_extract(words, '$.order')))")
        .run();
    db.exec(stays);
}

// Orders by id, and all that is remembered of them. In SQL alone, so that it serves copies of every version. The
// country stays: the packaging records need it. Rows come before images, since changing them makes images.
void wipe(SQLite::Database& db, const std::vector<ToErase>& orders)
{
    db.exec("CREATE TEMP TABLE IF NOT EXISTS erasing (id INTEGER PRIMARY KEY, shop TEXT, number TEXT)");
    db.exec("DELETE FROM temp.erasing");
    for (const ToErase& order : orders) {
        Query(db, "INSERT OR IGNORE INTO temp.erasing VALUES (?, ?, ?)", order.id, order.key.shop, order.key.number)
            .run();
    }
    Query(db, "UPDATE orders SET contact = '', name = '', company = '', street = '', postcode = '', town = '', "
              "region = '', note = '', aside_reason = '', giver = iif(giver IS NULL, NULL, ''), "
              "gift_message = iif(gift_message IS NULL, NULL, ''), told = " +
                  without_buyer("told") + " WHERE id IN (SELECT id FROM temp.erasing)")
        .run();
    Query(db, "UPDATE order_line SET personal_text = '' WHERE personal_text <> '' "
              "AND order_id IN (SELECT id FROM temp.erasing)")
        .run();
    Query(db, "UPDATE image SET before = json_set(before, '$.contact', '', '$.name', '', '$.company', '', "
              "'$.street', '', '$.postcode', '', '$.town', '', '$.region', '', '$.note', '', '$.aside_reason', '', "
              "'$.giver', iif(json_extract(before, '$.giver') IS NULL, NULL, ''), "
              "'$.gift_message', iif(json_extract(before, '$.gift_message') IS NULL, NULL, ''), '$.told', " +
                  without_buyer("json_extract(before, '$.told')") +
                  ") WHERE tab = 'orders' AND key IN (SELECT id FROM temp.erasing) AND before IS NOT NULL")
        .run();
    Query(db, "UPDATE image SET before = json_set(before, '$.personal_text', '') WHERE tab = 'order_line' "
              "AND json_extract(before, '$.order_id') IN (SELECT id FROM temp.erasing)")
        .run();
    wipe_parcels(db);
    wipe_reasons(db);
}

// Orders that are in the history alone, since their taking in was undone, and still name somebody.
std::vector<ToErase> named_in_history(SQLite::Database& db)
{
    std::vector<ToErase> found;
    Query rows(db, "SELECT DISTINCT key, json_extract(before, '$.shop'), json_extract(before, '$.number'), "
                   "json_extract(before, '$.date') FROM image WHERE tab = 'orders' "
                   "AND key NOT IN (SELECT id FROM orders) AND before IS NOT NULL AND (" +
                       shows_buyer("json_extract(before, '$.{}')") + ")");
    while (rows.next()) found.push_back({{rows.integer(0)}, {rows.text(1), rows.text(2)}, rows.date(3)});
    return found;
}

// Those of them that have one of these keys.
void add_from_history(SQLite::Database& db, const std::set<shop::OrderKey>& keys, std::vector<ToErase>& orders)
{
    for (ToErase& order : named_in_history(db)) {
        if (keys.count(order.key) > 0) orders.push_back(std::move(order));
    }
}

void note_erased(const Book& book, const shop::OrderKey& key, Instant at)
{
    Query(book, "INSERT OR IGNORE INTO erased (shop, number, at) VALUES (?, ?, ?)", key.shop, key.number, at).run();
}

void erase(const Book& book, Writer& writer, const std::vector<shop::HeldOrder>& orders)
{
    std::vector<ToErase> going;
    std::set<shop::OrderKey> keys;
    for (const shop::HeldOrder& held : orders) {
        note_erased(book, held.order.key, writer.at());
        going.push_back({held.id, held.order.key});
        keys.insert(held.order.key);
    }
    add_from_history(book.db(), keys, going); // taken in before, and undone
    wipe(book.db(), going);
}

Words words_of(const shop::HeldOrder& held)
{
    return {{"shop", held.order.key.shop}, {"order", held.order.key.number}};
}

void erase_many(Book& book, const std::vector<shop::HeldOrder>& orders)
{
    for (std::size_t from = 0; from < orders.size(); from += at_once) {
        const auto first = orders.begin() + static_cast<std::ptrdiff_t>(from);
        const std::vector<shop::HeldOrder> some(
            first, first + static_cast<std::ptrdiff_t>(std::min<std::size_t>(at_once, orders.size() - from)));
        const Words words = some.size() == 1 ? words_of(some.front()) : Words{{"buyers", std::to_string(some.size())}};
        (void)in_step(book, StepKind::erase_buyer, words, [&](Writer& writer) -> Allowed {
            erase(book, writer, some);
            return {};
        });
    }
}

// Keys of orders that were in the history alone when they were erased: the copies may hold them still.
std::vector<shop::OrderKey> undone_keys(SQLite::Database& db)
{
    std::vector<shop::OrderKey> keys;
    Query rows(db,
               "SELECT json_extract(json_each.value, '$[0]'), json_extract(json_each.value, '$[1]') "
               "FROM remembered, json_each(remembered.value) WHERE remembered.name = ?",
               undone_erased);
    while (rows.next()) keys.push_back({rows.text(0), rows.text(1)});
    return keys;
}

void remember_undone(Book& book, const std::vector<shop::OrderKey>& more)
{
    const std::vector<shop::OrderKey> known = undone_keys(book.db());
    std::set<shop::OrderKey> all(known.begin(), known.end());
    all.insert(more.begin(), more.end());
    auto list = nlohmann::json::array();
    for (const shop::OrderKey& key : all) list.push_back({key.shop, key.number});
    remember(book, undone_erased, list.dump());
}

void wipe_undone(Book& book, const std::vector<ToErase>& orders)
{
    if (orders.empty()) return;
    std::vector<shop::OrderKey> keys;
    keys.reserve(orders.size());
    for (const ToErase& order : orders) keys.push_back(order.key);
    try {
        SQLite::Transaction transaction(book.db(), SQLite::TransactionBehavior::IMMEDIATE);
        wipe(book.db(), orders);
        remember_undone(book, keys);
        transaction.commit();
    } catch (const SQLite::Exception& failure) {
        fail(failure);
    }
}

// The log beside the book holds pages as they were, until it is written over.
void empty_log(const Book& book)
{
    try {
        Query(book, "PRAGMA wal_checkpoint(TRUNCATE)").run();
    } catch (const BookFailure&) { // somebody reads it; it is emptied at the latest when the book is closed
    }
}

std::int64_t count_erased(const Book& book)
{
    Query count(book, "SELECT count(*) FROM erased");
    count.next();
    return count.integer(0) + static_cast<std::int64_t>(undone_keys(book.db()).size());
}

// Those of the keys whose buyers a database still shows.
std::vector<ToErase> shown_in(SQLite::Database& db, const std::vector<shop::OrderKey>& keys)
{
    std::vector<ToErase> shown;
    const std::string ask = "SELECT id FROM orders WHERE shop = ? AND number = ? AND (" + shows_buyer("{}") + ")";
    for (const shop::OrderKey& key : keys) {
        Query row(db, ask, key.shop, key.number);
        if (row.next()) shown.push_back({{row.integer(0)}, key});
    }
    add_from_history(db, {keys.begin(), keys.end()}, shown);
    return shown;
}

// Did the copy hold any of them? Throws where it cannot be read or written.
bool erase_in(const fs::path& copy, const std::vector<shop::OrderKey>& keys)
{
    const OnlyOne one(copy);
    if (in_use(copy)) throw BookFailure("in use", 0);
    {
        SQLite::Database db(copy.string(), SQLite::OPEN_READWRITE);
        if (shown_in(db, keys).empty()) return false;
    }
    const Aside part(copy, copy.string() + in_work);
    {
        SQLite::Database db(part.file().string(), SQLite::OPEN_READWRITE);
        db.exec("PRAGMA journal_mode = DELETE");
        db.exec("PRAGMA secure_delete = ON");
        SQLite::Transaction transaction(db, SQLite::TransactionBehavior::IMMEDIATE);
        wipe(db, shown_in(db, keys));
        transaction.commit();
    }
    if (const auto fault = unsound(part.file())) throw BookFailure(*fault, 0);
    put_in_place(part.file(), copy);
    return true;
}

fs::path folder_of(const fs::path& file)
{
    return file.has_parent_path() ? file.parent_path() : fs::path(".");
}

// What a program that was killed in the middle left behind, which may hold anybody. Not of a copy that is to be erased
// in: it is written anew. Not what another program is at.
void sweep(const fs::path& folder, const std::string& names)
{
    std::error_code none;
    std::vector<fs::path> left;
    for (const auto& entry : fs::directory_iterator(folder, none)) {
        const std::string name = entry.path().filename().string();
        if (!name.starts_with(names)) continue;
        for (const char* kind : {in_work, unfinished, looked_into}) {
            const auto at = name.rfind(kind);
            if (at == std::string::npos) continue;
            const std::string after = name.substr(at + std::strlen(kind)), of = name.substr(0, at);
            if (!after.empty() && !after.starts_with("-") && !after.starts_with(".version-")) continue;
            if (kind == in_work && fs::exists(folder / of, none)) continue;
            if (!in_use(folder / (of + kind))) left.push_back(entry.path());
        }
    }
    for (const fs::path& path : left) remove_with_logs(path);
}

} // namespace

bool may_be_erased(const Book& book, const shop::HeldOrder& held)
{
    const auto any = [&](const char* sql) { return Query(book, sql, held.id).next(); };
    const bool here = any("SELECT 1 FROM parcel_piece JOIN parcel ON parcel.id = parcel_piece.parcel "
                          "WHERE order_id = ? AND parcel.state NOT IN ('handed over', 'came back')");
    const bool sent = any("SELECT 1 FROM piece_sent WHERE order_id = ?");
    const bool owed = any("SELECT 1 FROM order_line WHERE order_id = ?1 AND count > ("
                          "SELECT coalesce(sum(piece_sent.count), 0) FROM piece_sent WHERE piece_sent.order_id = ?1 "
                          "AND line = place)");
    return !here && (held.state == shop::OrderState::called_off || (sent && !owed));
}

Done erase_buyer(Book& book, shop::OrderId id)
{
    const auto named = order(book, id);
    const Words words = named ? words_of(*named) : Words{};
    Done done = in_step(book, StepKind::erase_buyer, words, [&](Writer& writer) -> Allowed {
        const auto held = order(book, id);
        if (!held) return refuse(Why::unknown_order);
        if (!may_be_erased(book, *held)) return refuse(Why::wrong_state, std::string(name_of(held->state)));
        erase(book, writer, {*held});
        return {};
    });
    if (done) empty_log(book);
    return done;
}

int erase_buyers(Book& book, Date before)
{
    const auto old = read_orders(
        book, fmt::format("date < '{}' AND (done = 1 OR state = 'called off') AND NOT EXISTS "
                          "(SELECT 1 FROM erased WHERE erased.shop = orders.shop AND erased.number = orders.number)",
                          to_text(before)));
    std::vector<shop::HeldOrder> going;
    std::copy_if(old.begin(), old.end(), std::back_inserter(going),
                 [&](const shop::HeldOrder& held) { return may_be_erased(book, held); });
    erase_many(book, going);
    std::vector<ToErase> undone = named_in_history(book.db());
    undone.erase(
        std::remove_if(undone.begin(), undone.end(), [&](const ToErase& order) { return order.date >= before; }),
        undone.end());
    wipe_undone(book, undone);
    empty_log(book);
    return static_cast<int>(going.size());
}

bool is_erased(const Book& book, const shop::OrderKey& key)
{
    return Query(book, "SELECT 1 FROM erased WHERE shop = ? AND number = ?", key.shop, key.number).next();
}

Erased erased_buyers(SQLite::Database& db)
{
    Erased erased;
    Query rows(db, "SELECT shop, number FROM erased ORDER BY shop, number");
    while (rows.next()) erased.orders.push_back({rows.text(0), rows.text(1)});
    for (const shop::OrderKey& key : undone_keys(db)) { // unless it was taken in again
        if (!Query(db, "SELECT 1 FROM orders WHERE shop = ? AND number = ?", key.shop, key.number).next())
            erased.undone.push_back(key);
    }
    return erased;
}

void erase_again(Book& book, const Erased& erased)
{
    std::vector<shop::HeldOrder> held;
    for (const shop::OrderKey& key : erased.orders) {
        note_erased(book, key, book.now()); // also of an order that came after the copy: its file may come again
        if (auto there = order_by_key(book, key)) held.push_back(*std::move(there));
    }
    erase_many(book, held);
    if (erased.undone.empty()) return;
    remember_undone(book, erased.undone);
    std::vector<ToErase> there, gone;
    for (ToErase& order : shown_in(book.db(), erased.undone)) {
        (stow::book::order(book, order.id) ? there : gone).push_back(std::move(order));
    }
    wipe_undone(book, gone);
    (void)in_step(book, StepKind::erase_buyer, {{"buyers", std::to_string(there.size())}}, [&](Writer&) -> Allowed {
        wipe(book.db(), there);
        return {};
    });
}

std::vector<fs::path> copies_beside(const fs::path& book)
{
    std::vector<fs::path> copies;
    for (const DailyCopy& copy : daily_copies(book)) copies.push_back(copy.file);
    const std::string name = book.filename().string();
    std::error_code none;
    for (const auto& entry : fs::directory_iterator(folder_of(book), none)) {
        const std::string other = entry.path().filename().string();
        const std::string older = name + ".version-";
        const bool version = other.starts_with(older) && other.size() > older.size() &&
                             other.find_first_not_of("0123456789", older.size()) == std::string::npos;
        if (version || other == name + ".before-restore") copies.push_back(entry.path());
    }
    std::sort(copies.begin(), copies.end());
    return copies;
}

ErasedInCopies erase_in_copies(Book& book)
{
    const std::int64_t erased = count_erased(book);
    auto [keys, undone] = erased_buyers(book.db());
    keys.insert(keys.end(), undone.begin(), undone.end());
    ErasedInCopies result;
    sweep(folder_of(book.path()), book.path().filename().string() + ".");
    sweep(copies_folder(book.path()), {});
    for (const fs::path& copy : copies_beside(book.path())) {
        try {
            result.rewritten += erase_in(copy, keys) ? 1 : 0;
        } catch (const std::exception&) { // SQLite's, the file system's or ours: it may hold them still
            result.unreached.push_back(copy);
        }
    }
    if (result.unreached.empty()) remember(book, copies_reached, std::to_string(erased));
    return result;
}

bool copies_are_behind(const Book& book)
{
    return remembered(book, copies_reached).value_or("0") != std::to_string(count_erased(book));
}

} // namespace stow::book
