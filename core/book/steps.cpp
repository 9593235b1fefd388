#include "core/book/steps.h"

#include "core/book/step_writer.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <nlohmann/json.hpp>

namespace stow::book {

std::string_view name_of(StepKind kind)
{
    using enum StepKind;
    switch (kind) {
    case take_in_goods: return "take in goods";
    case take_in_supplies: return "take in supplies";
    case take_in_wrappings: return "take in wrappings";
    case take_in_rules: return "take in rules";
    case take_in_rates: return "take in rates";
    case take_in_stock: return "take in stock";
    case take_in_orders: return "take in orders";
    case edit_good: return "edit good";
    case edit_supply: return "edit supply";
    case edit_wrapping: return "edit wrapping";
    case edit_rules: return "edit rules";
    case edit_house: return "edit house";
    case edit_rates: return "edit rates";
    case remove: return "remove";
    case enter_order: return "enter order";
    case edit_order: return "edit order";
    case check_order: return "check order";
    case set_order_aside: return "set order aside";
    case take_order_back: return "take order back";
    case call_order_off: return "call order off";
    case look_at_order: return "look at order";
    case join_orders: return "join orders";
    case part_order: return "part order";
    case match_good: return "match good";
    case match_columns: return "match columns";
    case plan: return "plan";
    case drop_parcel: return "drop parcel";
    case lock_parcel: return "lock parcel";
    case unlock_parcel: return "unlock parcel";
    case start_round: return "start round";
    case pick: return "pick";
    case not_there: return "not there";
    case bench_tick: return "bench tick";
    case weigh: return "weigh";
    case pack: return "pack";
    case choose_service: return "choose service";
    case buy_postage: return "buy postage";
    case refund_postage: return "refund postage";
    case label: return "label";
    case track: return "track";
    case hand_over: return "hand over";
    case came_back: return "came back";
    case return_goods: return "return goods";
    case receive: return "receive";
    case count: return "count";
    case spoil: return "spoil";
    case make: return "make";
    case undo: return "undo";
    case erase_buyer: return "erase buyer";
    }
    return {};
}

std::optional<StepKind> step_kind(std::string_view name)
{
    for (int i = 0; !name_of(static_cast<StepKind>(i)).empty(); ++i) {
        if (name_of(static_cast<StepKind>(i)) == name) return static_cast<StepKind>(i);
    }
    return std::nullopt;
}

void Writer::move(Ledger ledger, const std::string& code, MovementKind kind, shop::Amount amount,
                  std::optional<shop::ParcelId> parcel, const std::string& reason)
{
    run("INSERT INTO movement (step, ledger, code, kind, amount, parcel, reason) VALUES (?, ?, ?, ?, ?, ?, ?)", id_,
        ledger == Ledger::supplies ? "supplies" : "goods", code, name_of(kind), amount.thousandths, parcel, reason);
}

void Writer::receive(const std::string& code, shop::Amount amount, const std::optional<Money>& cost,
                     const std::string& supplier)
{
    run("INSERT INTO movement (step, ledger, code, kind, amount, cost, cost_currency, supplier) "
        "VALUES (?, 'supplies', ?, ?, ?, ?, ?, ?)",
        id_, code, name_of(MovementKind::received), amount.thousandths, cost, supplier);
}

std::int64_t Writer::last_id() const
{
    return book_.db().getLastInsertRowid();
}

static bool recorded_anything(const Book& book, StepId id)
{
    Query changes(book,
                  "SELECT EXISTS (SELECT 1 FROM image WHERE step = ?1) OR "
                  "EXISTS (SELECT 1 FROM movement WHERE step = ?1)",
                  id);
    return changes.next() && changes.truth(0);
}

Done in_step(Book& book, StepKind kind, Words words, const std::function<Allowed(Writer&)>& work,
             std::optional<StepId> undoes)
{
    try {
        SQLite::Database& db = book.db();
        SQLite::Transaction transaction(db, SQLite::TransactionBehavior::IMMEDIATE);
        // Known beforehand, since no one else can write now; the row itself comes last, when its words are known.
        const StepId id{
            db.execAndGet("SELECT coalesce((SELECT seq FROM sqlite_sequence WHERE name = 'step'), 0) + 1").getInt64()};
        Query(db, "INSERT INTO current_step VALUES (?)", id).run();
        Writer writer(book, id, std::move(words));
        if (Allowed allowed = work(writer); !allowed) return tl::unexpected(std::move(allowed.error()));

        if (!recorded_anything(book, id)) return std::nullopt;
        Query(db, "INSERT INTO step (id, at, kind, words, undoes) VALUES (?, ?, ?, ?, ?)", id, writer.at(),
              name_of(kind),
              nlohmann::json(writer.words).dump(-1, ' ', false, nlohmann::json::error_handler_t::replace), undoes)
            .run();
        Query(db, "DELETE FROM current_step").run();
        transaction.commit();
        return id;
    } catch (const SQLite::Exception& failure) {
        fail(failure);
    }
}

} // namespace stow::book
