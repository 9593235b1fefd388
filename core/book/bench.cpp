// What happens to a parcel between plan and courier: locked, picked, packed, weighed, labelled.
#include "core/book/ledger.h"
#include "core/book/parcel_rows.h"
#include "core/book/parcels.h"

#include <fmt/format.h>
#include <set>

namespace stow::book {

namespace {

using shop::ParcelState;

constexpr auto before_courier = {ParcelState::planned, ParcelState::picked, ParcelState::packed, ParcelState::labelled};

// A step that sets columns of one parcel in one of the given states.
template <class... Values>
Done set(Book& book, StepKind kind, shop::ParcelId id, std::initializer_list<ParcelState> states,
         const std::string& columns, const Values&... values)
{
    return in_step(book, kind, words_of(book, id), [&](Writer& writer) -> Allowed {
        const auto parcel = parcel_in(book, id, states);
        if (!parcel) return tl::unexpected(parcel.error());
        writer.run(fmt::format("UPDATE parcel SET {} WHERE id = {}", columns, id.value), values...);
        return {};
    });
}

} // namespace

Done lock_parcel(Book& book, shop::ParcelId id)
{
    return set(book, StepKind::lock_parcel, id, before_courier, "locked = 1");
}

Done unlock_parcel(Book& book, shop::ParcelId id)
{
    return set(book, StepKind::unlock_parcel, id, {ParcelState::planned}, "locked = 0, tray = '', round = 0");
}

tl::expected<int, Refused> start_round(Book& book, const std::vector<Tray>& trays)
{
    int round = 0;
    const auto start = [&](Writer& writer) -> Allowed {
        Query last(book, "SELECT coalesce(max(round), 0) + 1 FROM parcel");
        last.next();
        round = last.small(0);
        for (const Tray& tray : trays) {
            const auto parcel = parcel_in(book, tray.parcel, {ParcelState::planned});
            if (!parcel) return tl::unexpected(parcel.error());
            if (auto allowed = may_go_on(book, *parcel); !allowed) return allowed;
            writer.run("UPDATE parcel SET tray = ?, round = ?, locked = 1 WHERE id = ?", tray.name, round, tray.parcel);
        }
        writer.words["round"] = std::to_string(round);
        return {};
    };
    const Done done = in_step(book, StepKind::start_round, {}, start);
    if (!done) return tl::unexpected(done.error());
    if (!*done) return refuse(Why::nothing_to_do);
    return round;
}

Done mark_picked(Book& book, shop::ParcelId id)
{
    return in_step(book, StepKind::pick, words_of(book, id), [&](Writer& writer) -> Allowed {
        const auto parcel = parcel_in(book, id, {ParcelState::planned});
        if (!parcel) return tl::unexpected(parcel.error());
        if (auto allowed = may_go_on(book, *parcel); !allowed) return allowed;
        writer.run("UPDATE parcel SET state = 'picked', locked = 1 WHERE id = ?", id);
        return {};
    });
}

Done not_there(Book& book, shop::ParcelId id, const shop::GoodCode& good, int missing, const std::string& reason)
{
    if (missing <= 0) return refuse(Why::not_positive, good.text);
    return in_step(book, StepKind::not_there, words_of(book, id), [&](Writer& writer) -> Allowed {
        const auto parcel = parcel_in(book, id, {ParcelState::planned, ParcelState::picked});
        if (!parcel) return tl::unexpected(parcel.error());
        const auto wanted = single_goods(book, parcel->pieces);
        if (wanted.find(good) == wanted.end()) return refuse(Why::unknown_good, good.text);
        writer.words["good"] = good.text;
        writer.words["missing"] = std::to_string(missing);
        writer.move(Ledger::goods, good.text, MovementKind::missing, -shop::pieces(missing), id, reason);
        std::set<shop::OrderId> orders;
        for (const shop::Piece& piece : parcel->pieces) orders.insert(piece.order);
        for (const shop::OrderId order : orders) {
            writer.run("UPDATE orders SET state = 'set aside', aside_reason = ? WHERE id = ? AND state <> 'called off'",
                       reason, order);
        }
        delete_parcel(writer, id);
        return {};
    });
}

Done bench_tick(Book& book, shop::ParcelId id, int steps_done)
{
    return set(book, StepKind::bench_tick, id, before_courier, "steps_done = ?", steps_done);
}

Done weigh(Book& book, shop::ParcelId id, shop::WeighingStage stage, Weight weight, bool overridden)
{
    if (weight <= Weight{}) return refuse(Why::not_positive);
    return in_step(book, StepKind::weigh, words_of(book, id), [&](Writer& writer) -> Allowed {
        const auto parcel = parcel_in(book, id, before_courier);
        if (!parcel) return tl::unexpected(parcel.error());
        writer.words["grams"] = fmt::format("{}.{}", weight.units / 10, weight.units % 10);
        writer.run("INSERT INTO weighing (parcel, stage, weight, overridden, at) VALUES (?, ?, ?, ?, ?)", id,
                   name_of(stage), weight, overridden, writer.at());
        return {};
    });
}

Done mark_packed(Book& book, shop::ParcelId id)
{
    return in_step(book, StepKind::pack, words_of(book, id), [&](Writer& writer) -> Allowed {
        const auto parcel = parcel_in(book, id, {ParcelState::planned, ParcelState::picked});
        if (!parcel) return tl::unexpected(parcel.error());
        if (auto allowed = may_go_on(book, *parcel); !allowed) return allowed;
        std::map<shop::SupplyCode, shop::Amount> used;
        for (const planning::Used& use : read_plan(book, id).uses) used[use.supply] += use.amount;
        for (const auto& [supply, amount] : used) {
            if (amount != shop::Amount{}) writer.move(Ledger::supplies, supply.text, MovementKind::used, -amount, id);
        }
        for (const auto& [good, count] : single_goods(book, parcel->pieces)) {
            writer.move(Ledger::goods, good.text, MovementKind::sold, -shop::pieces(count), id);
        }
        writer.run("UPDATE parcel SET state = 'packed', locked = 1, packed_at = ? WHERE id = ?", writer.at(), id);
        return {};
    });
}

Done choose_service(Book& book, shop::ParcelId id, const std::string& carrier, const std::string& service,
                    std::optional<Money> postage)
{
    return set(book, StepKind::choose_service, id, before_courier,
               "carrier = ?, service = ?, postage = ?, postage_currency = ?", carrier, service, postage);
}

Done mark_labelled(Book& book, shop::ParcelId id)
{
    return in_step(book, StepKind::label, words_of(book, id), [&](Writer& writer) -> Allowed {
        const auto parcel = parcel_in(book, id, {ParcelState::packed});
        if (!parcel) return tl::unexpected(parcel.error());
        if (auto allowed = may_go_on(book, *parcel); !allowed) return allowed;
        writer.run("UPDATE parcel SET state = 'labelled' WHERE id = ?", id);
        return {};
    });
}

Done set_tracking(Book& book, shop::ParcelId id, const std::string& tracking)
{
    return set(book, StepKind::track, id,
               {ParcelState::planned, ParcelState::picked, ParcelState::packed, ParcelState::labelled,
                ParcelState::handed_over, ParcelState::came_back},
               "tracking = ?", tracking);
}

Done mark_came_back(Book& book, shop::ParcelId id)
{
    return set(book, StepKind::came_back, id, {ParcelState::handed_over}, "state = 'came back'");
}

Done return_goods(Book& book, shop::ParcelId id)
{
    return in_step(book, StepKind::return_goods, words_of(book, id), [&](Writer& writer) -> Allowed {
        const auto parcel = parcel_in(book, id, {ParcelState::came_back});
        if (!parcel) return tl::unexpected(parcel.error());
        Query back(book, "SELECT sum(amount) FROM movement WHERE parcel = ? AND kind = 'returned'", id);
        if (back.next() && back.integer(0) > 0) return refuse(Why::already_there);
        // What left the stock is what comes back, even if the set was changed since.
        Query sold(
            book,
            "SELECT code, -sum(amount) FROM movement WHERE parcel = ? AND kind = 'sold' GROUP BY code ORDER BY code",
            id);
        while (sold.next()) {
            writer.move(Ledger::goods, sold.text(0), MovementKind::returned, shop::Amount{sold.integer(1)}, id);
        }
        return {};
    });
}

} // namespace stow::book
