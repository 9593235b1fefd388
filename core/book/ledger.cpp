#include "core/book/ledger.h"

#include "core/book/step_writer.h"

#include <fmt/format.h>

namespace stow::book {

std::string_view name_of(MovementKind kind)
{
    using enum MovementKind;
    switch (kind) {
    case start: return "start";
    case received: return "received";
    case made: return "made";
    case used: return "used";
    case sold: return "sold";
    case counted: return "counted";
    case spoilt: return "spoilt";
    case missing: return "missing";
    case returned: return "returned";
    }
    return {};
}

std::optional<MovementKind> movement_kind(std::string_view name)
{
    for (int i = 0; !name_of(static_cast<MovementKind>(i)).empty(); ++i) {
        if (name_of(static_cast<MovementKind>(i)) == name) return static_cast<MovementKind>(i);
    }
    return std::nullopt;
}

namespace {

constexpr const char* stored(Ledger ledger)
{
    return ledger == Ledger::supplies ? "supplies" : "goods";
}

bool known(const Book& book, Ledger ledger, const std::string& code)
{
    const char* const table = ledger == Ledger::supplies ? "supply" : "good";
    return Query(book, fmt::format("SELECT 1 FROM {} WHERE code = ?", table), code).next();
}

shop::Amount on_hand(const Book& book, Ledger ledger, const std::string& code)
{
    Query sum(book, "SELECT coalesce(sum(amount), 0) FROM shelf WHERE ledger = ? AND code = ?", stored(ledger), code);
    sum.next();
    return {sum.integer(0)};
}

Allowed must_be_known(const Book& book, Ledger ledger, const std::string& code)
{
    if (known(book, ledger, code)) return {};
    return refuse(ledger == Ledger::supplies ? Why::unknown_supply : Why::unknown_good, code);
}

// One movement of one thing as a step.
Done move_one(Book& book, StepKind step, Ledger ledger, const std::string& code, MovementKind kind, shop::Amount amount,
              bool out, const std::string& reason)
{
    if (amount <= shop::Amount{}) return refuse(Why::not_positive, code);
    return in_step(book, step, {{"code", code}, {"reason", reason}}, [&](Writer& writer) -> Allowed {
        if (auto allowed = must_be_known(book, ledger, code); !allowed) return allowed;
        writer.move(ledger, code, kind, out ? -amount : amount, std::nullopt, reason);
        return {};
    });
}

// A count is kept even where it found what the ledger said: later steps must not be undone past it unawares.
Allowed book_count(const Book& book, Writer& writer, Ledger ledger, const std::string& code, shop::Amount found,
                   const std::string& reason)
{
    if (found < shop::Amount{}) return refuse(Why::not_positive, code);
    if (auto allowed = must_be_known(book, ledger, code); !allowed) return allowed;
    writer.move(ledger, code, MovementKind::counted, found - on_hand(book, ledger, code), std::nullopt, reason);
    return {};
}

Done count_one(Book& book, Ledger ledger, const std::string& code, shop::Amount found, const std::string& reason)
{
    return in_step(book, StepKind::count, {{"code", code}, {"reason", reason}},
                   [&](Writer& writer) { return book_count(book, writer, ledger, code, found, reason); });
}

constexpr auto movement_columns =
    "SELECT movement.id, step, step.at, ledger, code, movement.kind, amount, parcel, reason, "
    "cost, cost_currency, supplier "
    "FROM movement JOIN step ON step.id = step ";

std::vector<Movement> read_movements(Query rows)
{
    std::vector<Movement> found;
    while (rows.next()) {
        Movement movement;
        movement.id = rows.integer(0);
        movement.step = {rows.integer(1)};
        movement.at = rows.instant(2);
        movement.ledger = rows.text(3) == "goods" ? Ledger::goods : Ledger::supplies;
        movement.code = rows.text(4);
        movement.kind = movement_kind(rows.text(5)).value_or(MovementKind::counted);
        movement.amount = {rows.integer(6)};
        if (const auto parcel = rows.maybe_integer(7)) movement.parcel = shop::ParcelId{*parcel};
        movement.reason = rows.text(8);
        movement.cost = rows.maybe_money(9);
        movement.supplier = rows.text(11);
        found.push_back(std::move(movement));
    }
    return found;
}

std::vector<Movement> newest_movements(const Book& book, Ledger ledger, const std::string& code, std::size_t most)
{
    std::vector<Movement> found = read_movements(
        Query(book, std::string(movement_columns) + "WHERE ledger = ? AND code = ? ORDER BY movement.id DESC LIMIT ?",
              stored(ledger), code, most));
    std::reverse(found.begin(), found.end());
    return found;
}

} // namespace

std::map<shop::SupplyCode, shop::Amount> supplies_on_hand(const Book& book)
{
    std::map<shop::SupplyCode, shop::Amount> sums;
    Query rows(book, "SELECT code, amount FROM shelf WHERE ledger = 'supplies'");
    while (rows.next()) sums[{rows.text(0)}] = {rows.integer(1)};
    return sums;
}

std::map<shop::GoodCode, int> pieces_on_hand(const Book& book)
{
    std::map<shop::GoodCode, int> sums;
    Query rows(book, "SELECT code, amount / 1000 FROM shelf WHERE ledger = 'goods'");
    while (rows.next()) sums[{rows.text(0)}] = rows.small(1);
    return sums;
}

std::vector<Movement> movements(const Book& book)
{
    return read_movements(Query(book, std::string(movement_columns) + "ORDER BY movement.id"));
}

std::vector<Movement> movements_of(const Book& book, const shop::SupplyCode& code, std::size_t most)
{
    return newest_movements(book, Ledger::supplies, code.text, most);
}

std::vector<Movement> movements_of(const Book& book, const shop::GoodCode& code, std::size_t most)
{
    return newest_movements(book, Ledger::goods, code.text, most);
}

Done receive(Book& book, const shop::SupplyCode& code, shop::Amount amount, const std::optional<Money>& cost,
             const std::string& supplier)
{
    if (amount <= shop::Amount{}) return refuse(Why::not_positive, code.text);
    return in_step(book, StepKind::receive, {{"code", code.text}, {"reason", {}}}, [&](Writer& writer) -> Allowed {
        if (auto allowed = must_be_known(book, Ledger::supplies, code.text); !allowed) return allowed;
        writer.receive(code.text, amount, cost, supplier);
        return {};
    });
}

std::map<shop::SupplyCode, Money> average_costs(const Book& book, Currency currency)
{
    std::map<shop::SupplyCode, Money> costs;
    Query rows(book,
               "SELECT code, sum(cost), sum(amount) FROM movement INDEXED BY movement_received WHERE ledger = "
               "'supplies' AND kind = 'received' "
               "AND cost IS NOT NULL AND cost_currency = ? GROUP BY code HAVING sum(amount) > 0",
               currency.code());
    while (rows.next()) {
        costs[{rows.text(0)}] = share({rows.integer(1), currency}, 1000, rows.integer(2));
    }
    return costs;
}

std::map<shop::SupplyCode, std::vector<std::int64_t>> weekly_use(const Book& book, Instant now, int weeks)
{
    const std::int64_t today = std::chrono::floor<std::chrono::days>(now).time_since_epoch().count();
    std::map<shop::SupplyCode, std::vector<std::int64_t>> use;
    Query rows(book,
               "SELECT code, (?1 - day) / 7 AS ago, sum(amount) FROM used_on_day "
               "WHERE day > ?1 - 7 * ?2 AND day <= ?1 GROUP BY code, ago",
               today, static_cast<std::int64_t>(weeks));
    while (rows.next()) {
        auto& of_it = use[{rows.text(0)}];
        of_it.resize(static_cast<std::size_t>(weeks), 0);
        const auto ago = static_cast<std::size_t>(rows.integer(1));
        if (ago < of_it.size()) of_it[of_it.size() - 1 - ago] = std::max<std::int64_t>(rows.integer(2), 0);
    }
    return use;
}

Done count(Book& book, const shop::SupplyCode& code, shop::Amount found, const std::string& reason)
{
    return count_one(book, Ledger::supplies, code.text, found, reason);
}

Done spoil(Book& book, const shop::SupplyCode& code, shop::Amount amount, const std::string& reason)
{
    return move_one(book, StepKind::spoil, Ledger::supplies, code.text, MovementKind::spoilt, amount, true, reason);
}

Done make(Book& book, const shop::GoodCode& code, int pieces)
{
    return move_one(book, StepKind::make, Ledger::goods, code.text, MovementKind::made, shop::pieces(pieces), false,
                    {});
}

Done count(Book& book, const shop::GoodCode& code, int found, const std::string& reason)
{
    return count_one(book, Ledger::goods, code.text, shop::pieces(found), reason);
}

Done spoil(Book& book, const shop::GoodCode& code, int pieces, const std::string& reason)
{
    return move_one(book, StepKind::spoil, Ledger::goods, code.text, MovementKind::spoilt, shop::pieces(pieces), true,
                    reason);
}

Done take_in_stock(Book& book, const std::vector<StockCount>& counts, const std::string& file)
{
    return in_step(book, StepKind::take_in_stock, {{"file", file}, {"count", std::to_string(counts.size())}},
                   [&](Writer& writer) -> Allowed {
                       for (const StockCount& one : counts) {
                           const auto* const good = std::get_if<shop::GoodCode>(&one.what);
                           const Ledger ledger = good ? Ledger::goods : Ledger::supplies;
                           const std::string& code = good ? good->text : std::get<shop::SupplyCode>(one.what).text;
                           // Here a count that found nothing new is left out, so that the same file twice is no step.
                           if (known(book, ledger, code) && on_hand(book, ledger, code) == one.found) continue;
                           if (auto allowed = book_count(book, writer, ledger, code, one.found, file); !allowed) {
                               return allowed;
                           }
                       }
                       return {};
                   });
}

} // namespace stow::book
