// What happens to a parcel between plan and courier: locked, picked, packed, weighed, labelled.
#include "core/book/documents.h"
#include "core/book/ledger.h"
#include "core/book/parcel_rows.h"
#include "core/book/parcels.h"

#include <algorithm>
#include <fmt/format.h>
#include <set>

namespace stow::book {

namespace {

using shop::ParcelState;

constexpr auto before_courier = {ParcelState::planned, ParcelState::picked, ParcelState::packed, ParcelState::labelled};

// A step that sets columns of parcels in one of the given states.
template <class... Values>
Done set(Book& book, StepKind kind, const std::vector<shop::ParcelId>& ids, std::initializer_list<ParcelState> states,
         const std::string& columns, const Values&... values)
{
    const Words words = ids.size() == 1 ? words_of(book, ids.front()) : Words{{"count", std::to_string(ids.size())}};
    return in_step(book, kind, words, [&](Writer& writer) -> Allowed {
        for (const shop::ParcelId id : ids) {
            const auto parcel = parcel_in(book, id, states);
            if (!parcel) return tl::unexpected(parcel.error());
            writer.run(fmt::format("UPDATE parcel SET {} WHERE id = {}", columns, id.value), values...);
        }
        return {};
    });
}

} // namespace

Done lock_parcels(Book& book, const std::vector<shop::ParcelId>& ids)
{
    return set(book, StepKind::lock_parcel, ids, before_courier, "locked = 1");
}

Done unlock_parcels(Book& book, const std::vector<shop::ParcelId>& ids)
{
    return set(book, StepKind::unlock_parcel, ids, {ParcelState::planned}, "locked = 0, tray = '', round = 0");
}

int last_round(const Book& book)
{
    Query last(book, "SELECT coalesce(max(round), 0) FROM parcel");
    last.next();
    return last.small(0);
}

tl::expected<int, Refused> start_round(Book& book, const std::vector<Tray>& trays)
{
    int round = 0;
    const auto start = [&](Writer& writer) -> Allowed {
        round = last_round(book) + 1;
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

Done bench_tick(Book& book, shop::ParcelId id, int steps_done, bool scanned)
{
    constexpr int most_steps = 62; // as many as the bits hold
    return in_step(book, StepKind::bench_tick, words_of(book, id), [&](Writer& writer) -> Allowed {
        const auto parcel = parcel_in(book, id, before_courier);
        if (!parcel) return tl::unexpected(parcel.error());
        const auto bits = [&](int steps) {
            return steps <= 0 ? std::int64_t{0} : (std::int64_t{1} << std::min(steps, most_steps)) - 1;
        };
        std::int64_t kept = parcel->scanned & bits(scanned ? steps_done - 1 : steps_done);
        if (!scanned && steps_done > parcel->steps_done) kept &= bits(parcel->steps_done);
        if (scanned && steps_done >= 1 && steps_done <= most_steps) kept |= std::int64_t{1} << (steps_done - 1);
        writer.run("UPDATE parcel SET steps_done = ?, scanned = ? WHERE id = ?", steps_done, kept, id);
        return {};
    });
}

Done weigh(Book& book, shop::ParcelId id, const Reading& reading)
{
    if (reading.weight <= Weight{}) return refuse(Why::not_positive);
    return in_step(book, StepKind::weigh, words_of(book, id), [&](Writer& writer) -> Allowed {
        const auto parcel = parcel_in(book, id, before_courier);
        if (!parcel) return tl::unexpected(parcel.error());
        writer.words["grams"] = fmt::format("{}.{}", reading.weight.units / 10, reading.weight.units % 10);
        std::optional<std::int64_t> expected, spread;
        if (reading.expected) {
            expected = reading.expected->mean.units;
            spread = reading.expected->spread.units;
        }
        std::optional<std::string> lesson;
        if (reading.lesson && !reading.overridden) {
            lesson = intake::to_document(*reading.lesson);
            // A parcel teaches once: by its last weighing.
            writer.run("UPDATE weighing SET lesson = NULL WHERE parcel = ? AND lesson IS NOT NULL", id);
        }
        writer.run("INSERT INTO weighing (parcel, stage, weight, overridden, at, expected, spread, lesson, why) VALUES "
                   "(?, ?, ?, ?, ?, ?, ?, ?, ?)",
                   id, name_of(reading.stage), reading.weight, reading.overridden, writer.at(), expected, spread,
                   lesson, reading.why);
        return {};
    });
}

std::vector<weighing::Lesson> lessons(const Book& book, std::size_t most)
{
    std::vector<weighing::Lesson> found;
    Query rows(book, "SELECT lesson FROM weighing WHERE lesson IS NOT NULL ORDER BY id DESC LIMIT ?", most);
    while (rows.next()) found.push_back(read_document<weighing::Lesson>(rows.text(0)));
    std::reverse(found.begin(), found.end());
    return found;
}

std::vector<weighing::Weighed> weighed(const Book& book, shop::WeighingStage stage, std::size_t most)
{
    std::vector<weighing::Weighed> found;
    Query rows(
        book,
        "SELECT expected, spread, weight FROM weighing WHERE stage = ? AND overridden = 0 AND expected IS NOT NULL "
        "AND spread IS NOT NULL ORDER BY id DESC LIMIT ?",
        name_of(stage), most);
    while (rows.next()) {
        found.push_back({{Weight{rows.integer(0)}, Weight{rows.integer(1)}}, Weight{rows.integer(2)}});
    }
    std::reverse(found.begin(), found.end());
    return found;
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
    return set(book, StepKind::choose_service, {id}, before_courier,
               "carrier = ?, service = ?, postage = ?, postage_currency = ?", carrier, service, postage);
}

Done mark_labelled(Book& book, shop::ParcelId id, const StuckOn& label)
{
    Words words = words_of(book, id);
    if (label.print > 0) words["print"] = std::to_string(label.print);
    if (label.printed > 0) words["printed"] = std::to_string(label.printed);
    return in_step(book, StepKind::label, words, [&](Writer& writer) -> Allowed {
        const auto parcel = parcel_in(book, id, {ParcelState::packed});
        if (!parcel) return tl::unexpected(parcel.error());
        if (auto allowed = may_go_on(book, *parcel); !allowed) return allowed;
        writer.run("UPDATE parcel SET state = 'labelled' WHERE id = ?", id);
        return {};
    });
}

Done set_tracking(Book& book, shop::ParcelId id, const std::string& tracking)
{
    return set(book, StepKind::track, {id},
               {ParcelState::planned, ParcelState::picked, ParcelState::packed, ParcelState::labelled,
                ParcelState::handed_over, ParcelState::came_back},
               "tracking = ?", tracking);
}

Done set_trackings(Book& book, const std::map<std::string, std::string>& tracking_by_number)
{
    const Words words{{"parcels", std::to_string(tracking_by_number.size())}};
    return in_step(book, StepKind::track, words, [&](Writer& writer) -> Allowed {
        for (const auto& [number, tracking] : tracking_by_number) {
            if (!Query(book, "SELECT 1 FROM parcel WHERE number = ?", number).next()) {
                return refuse(Why::unknown_parcel, number);
            }
            writer.run("UPDATE parcel SET tracking = ? WHERE number = ?", tracking, number);
        }
        return {};
    });
}

std::optional<shop::ParcelId> parcel_by_tracking(const Book& book, std::string_view tracking)
{
    if (tracking.empty()) return std::nullopt;
    Query rows(book, "SELECT id FROM parcel WHERE tracking = ? LIMIT 2", tracking);
    if (!rows.next()) return std::nullopt;
    const shop::ParcelId found{rows.integer(0)};
    if (rows.next()) return std::nullopt;
    return found;
}

bool is_restocked(const Book& book, shop::ParcelId id)
{
    Query back(book,
               "SELECT coalesce(sum(amount), 0) FROM movement WHERE ledger = 'goods' AND parcel = ? "
               "AND kind = 'returned'",
               id);
    return back.next() && back.integer(0) > 0;
}

Done mark_came_back(Book& book, shop::ParcelId id, const CameBack& back)
{
    return in_step(book, StepKind::came_back, words_of(book, id), [&](Writer& writer) -> Allowed {
        const auto parcel = parcel_in(book, id, {ParcelState::handed_over, ParcelState::came_back});
        if (!parcel) return tl::unexpected(parcel.error());
        const bool decided = parcel->written_off || is_restocked(book, id);
        const bool decides = back.goods != GoodsBack::undecided && !decided;
        const bool sends = back.send_again && !parcel->sent_again;
        if (parcel->state == ParcelState::came_back && !decides && !sends) return refuse(Why::already_there);
        if (back.goods != GoodsBack::undecided && decided) return refuse(Why::already_there);
        writer.run("UPDATE parcel SET state = 'came back', back_why = iif(?2 = '', back_why, ?2), "
                   "written_off = written_off OR ?3, sent_again = sent_again OR ?4 WHERE id = ?1",
                   id, back.why, back.goods == GoodsBack::written_off, back.send_again);
        if (back.goods == GoodsBack::on_the_shelf) {
            // What left the stock is what comes back, even if the set was changed since.
            Query sold(book,
                       "SELECT code, -sum(amount) FROM movement WHERE ledger = 'goods' AND parcel = ? "
                       "AND kind = 'sold' GROUP BY code "
                       "ORDER BY code",
                       id);
            while (sold.next()) {
                writer.move(Ledger::goods, sold.text(0), MovementKind::returned, shop::Amount{sold.integer(1)}, id);
            }
        }
        if (sends) {
            writer.run("UPDATE orders SET done = 0 WHERE id IN (SELECT order_id FROM parcel_piece WHERE parcel = ?)",
                       id);
        }
        if (!back.why.empty()) writer.words["reason"] = back.why;
        return {};
    });
}

} // namespace stow::book
