#include "core/book/erasing.h"

#include "core/book/copying.h"
#include "core/book/daily_copies.h"
#include "core/book/order_rows.h"
#include "core/book/orders.h"
#include "core/book/settings.h"

#include <SQLiteCpp/SQLiteCpp.h>

#include <algorithm>
#include <fmt/format.h>

namespace stow::book {

namespace {

namespace fs = std::filesystem;

constexpr int at_once = 200; // orders in one step, so that a window beside it need not wait
constexpr const char* in_work = ".erasing";
constexpr const char* copies_reached = "copies reached by erasing";

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

// Orders by id, and all that is remembered of them. In SQL alone, so that it serves copies of every version. The
// country stays: the packaging records need it. Rows come before images, since changing them makes images.
void wipe(SQLite::Database& db, const std::vector<shop::OrderId>& ids)
{
    db.exec("CREATE TEMP TABLE IF NOT EXISTS erasing (id INTEGER PRIMARY KEY)");
    db.exec("DELETE FROM temp.erasing");
    for (const shop::OrderId id : ids) Query(db, "INSERT OR IGNORE INTO temp.erasing VALUES (?)", id).run();
    Query(db, "UPDATE orders SET contact = '', name = '', company = '', street = '', postcode = '', town = '', "
              "region = '', note = '', giver = iif(giver IS NULL, NULL, ''), "
              "gift_message = iif(gift_message IS NULL, NULL, ''), told = " +
                  without_buyer("told") + " WHERE id IN (SELECT id FROM temp.erasing)")
        .run();
    Query(db, "UPDATE order_line SET personal_text = '' WHERE personal_text <> '' "
              "AND order_id IN (SELECT id FROM temp.erasing)")
        .run();
    Query(db, "UPDATE image SET before = json_set(before, '$.contact', '', '$.name', '', '$.company', '', "
              "'$.street', '', '$.postcode', '', '$.town', '', '$.region', '', '$.note', '', "
              "'$.giver', iif(json_extract(before, '$.giver') IS NULL, NULL, ''), "
              "'$.gift_message', iif(json_extract(before, '$.gift_message') IS NULL, NULL, ''), '$.told', " +
                  without_buyer("json_extract(before, '$.told')") +
                  ") WHERE tab = 'orders' AND key IN (SELECT id FROM temp.erasing) AND before IS NOT NULL")
        .run();
    Query(db, "UPDATE image SET before = json_set(before, '$.personal_text', '') WHERE tab = 'order_line' "
              "AND json_extract(before, '$.order_id') IN (SELECT id FROM temp.erasing)")
        .run();
}

void note_erased(const Book& book, const shop::OrderKey& key, Instant at)
{
    Query(book, "INSERT OR IGNORE INTO erased (shop, number, at) VALUES (?, ?, ?)", key.shop, key.number, at).run();
}

void erase(const Book& book, Writer& writer, const std::vector<shop::HeldOrder>& orders)
{
    std::vector<shop::OrderId> ids;
    for (const shop::HeldOrder& held : orders) {
        note_erased(book, held.order.key, writer.at());
        ids.push_back(held.id);
    }
    wipe(book.db(), ids);
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

// Orders that are in the history alone.
void wipe_undone(const Book& book, Date before)
{
    std::vector<shop::OrderId> gone;
    Query rows(book,
               "SELECT DISTINCT key FROM image WHERE tab = 'orders' AND key NOT IN (SELECT id FROM orders) AND "
               "before IS NOT NULL AND json_extract(before, '$.date') < ? AND json_extract(before, '$.name') <> ''",
               before);
    while (rows.next()) gone.push_back({rows.integer(0)});
    if (gone.empty()) return;
    try {
        SQLite::Transaction transaction(book.db(), SQLite::TransactionBehavior::IMMEDIATE);
        wipe(book.db(), gone);
        transaction.commit();
    } catch (const SQLite::Exception& failure) {
        fail(failure);
    }
}

std::int64_t count_erased(const Book& book)
{
    Query count(book, "SELECT count(*) FROM erased");
    count.next();
    return count.integer(0);
}

// Those of the keys whose buyers a database still shows.
std::vector<shop::OrderId> shown_in(SQLite::Database& db, const std::vector<shop::OrderKey>& keys)
{
    std::vector<shop::OrderId> ids;
    for (const shop::OrderKey& key : keys) {
        Query row(db,
                  "SELECT id FROM orders WHERE shop = ? AND number = ? AND "
                  "(name <> '' OR company <> '' OR street <> '' OR postcode <> '' OR contact <> '' OR note <> '')",
                  key.shop, key.number);
        if (row.next()) ids.push_back({row.integer(0)});
    }
    return ids;
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

// What a program that was killed in the middle left of a copy that is no more.
void sweep(const fs::path& folder, const std::string& names)
{
    std::error_code none;
    std::vector<fs::path> left;
    for (const auto& entry : fs::directory_iterator(folder, none)) {
        fs::path copy = entry.path();
        if (copy.extension() != in_work || !copy.filename().string().starts_with(names)) continue;
        if (!fs::exists(copy.replace_extension(), none)) left.push_back(entry.path());
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
    return in_step(book, StepKind::erase_buyer, named ? words_of(*named) : Words{}, [&](Writer& writer) -> Allowed {
        const auto held = order(book, id);
        if (!held) return refuse(Why::unknown_order);
        if (!may_be_erased(book, *held)) return refuse(Why::wrong_state, std::string(name_of(held->state)));
        erase(book, writer, {*held});
        return {};
    });
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
    wipe_undone(book, before);
    return static_cast<int>(going.size());
}

bool is_erased(const Book& book, const shop::OrderKey& key)
{
    return Query(book, "SELECT 1 FROM erased WHERE shop = ? AND number = ?", key.shop, key.number).next();
}

std::vector<shop::OrderKey> erased_buyers(SQLite::Database& db)
{
    std::vector<shop::OrderKey> keys;
    Query rows(db, "SELECT shop, number FROM erased ORDER BY shop, number");
    while (rows.next()) keys.push_back({rows.text(0), rows.text(1)});
    return keys;
}

void erase_again(Book& book, const std::vector<shop::OrderKey>& keys)
{
    std::vector<shop::HeldOrder> held;
    for (const shop::OrderKey& key : keys) {
        note_erased(book, key, book.now()); // also of an order that came after the copy: its file may come again
        if (auto there = order_by_key(book, key)) held.push_back(*std::move(there));
    }
    erase_many(book, held);
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
    const auto keys = erased_buyers(book.db());
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
