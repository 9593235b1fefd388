#include "core/book/orders.h"

#include "core/book/documents.h"
#include "core/book/erasing.h"
#include "core/book/order_rows.h"

namespace stow::book {

namespace {

// Which good a line stands for is our matching, not what the shop told.
shop::Order as_told(shop::Order order)
{
    for (shop::OrderLine& line : order.lines) line.good = {};
    return order;
}

template <class T>
void take_over(T& mine, const T& before, const T& now)
{
    if (now != before) mine = now;
}

// What she holds, with what the shop changed since it last told; her own edits elsewhere stay.
shop::Order merged(shop::Order mine, const shop::Order& before, const shop::Order& now)
{
    take_over(mine.date, before.date, now.date);
    take_over(mine.promised, before.promised, now.promised);
    take_over(mine.paid, before.paid, now.paid);
    take_over(mine.buyer_contact, before.buyer_contact, now.buyer_contact);
    take_over(mine.to, before.to, now.to);
    take_over(mine.note, before.note, now.note);
    take_over(mine.gift, before.gift, now.gift);
    take_over(mine.service_wanted, before.service_wanted, now.service_wanted);
    take_over(mine.postage_paid, before.postage_paid, now.postage_paid);
    take_over(mine.called_off, before.called_off, now.called_off);
    if (now.lines != before.lines) {
        const std::vector<shop::OrderLine> matched = mine.lines;
        mine.lines = now.lines;
        for (shop::OrderLine& line : mine.lines) {
            for (const shop::OrderLine& old : matched) {
                if (old.title == line.title && old.variant == line.variant) line.good = old.good;
            }
        }
    }
    return mine;
}

// Only these change what is packed or where it goes.
bool packs_otherwise(const shop::Order& a, const shop::Order& b)
{
    return a.to != b.to || a.lines != b.lines || a.gift != b.gift || a.service_wanted != b.service_wanted;
}

bool has_gone_out(const Book& book, shop::OrderId id)
{
    return Query(book,
                 "SELECT 1 FROM parcel_piece JOIN parcel ON parcel.id = parcel_piece.parcel "
                 "WHERE order_id = ? AND parcel.state IN ('handed over', 'came back')",
                 id)
        .next();
}

std::optional<std::string> told(const Book& book, shop::OrderId id)
{
    Query row(book, "SELECT told FROM orders WHERE id = ?", id);
    return row.next() ? row.maybe_text(0) : std::nullopt;
}

enum class Brought { unchanged, changed, called_off };

Brought take_in_again(const Book& book, Writer& writer, const shop::HeldOrder& held, const shop::Order& now)
{
    const auto document = told(book, held.id);
    const shop::Order before = document ? read_document<shop::Order>(*document) : as_told(held.order);
    const shop::Order told_now = as_told(now);
    if (before == told_now) return Brought::unchanged;

    update_order(book, writer, held.id, merged(held.order, before, told_now));
    // What changed has to be checked again, unless it is on its way already.
    shop::OrderState state = held.state;
    if (now.called_off)
        state = shop::OrderState::called_off;
    else if (before.called_off || (state == shop::OrderState::checked && !has_gone_out(book, held.id)))
        state = shop::OrderState::arrived;
    writer.run("UPDATE orders SET version = version + 1, changed = 1, state = ?, told = ? WHERE id = ?", name_of(state),
               intake::to_document(told_now), held.id);
    part_if_elsewhere(book, writer, held.id);
    return now.called_off && !before.called_off ? Brought::called_off : Brought::changed;
}

// An order in one of the states given, or why not.
tl::expected<shop::HeldOrder, Refused> order_in(const Book& book, shop::OrderId id,
                                                std::initializer_list<shop::OrderState> states)
{
    auto held = order(book, id);
    if (!held) return refuse(Why::unknown_order);
    if (std::find(states.begin(), states.end(), held->state) == states.end()) {
        return refuse(Why::wrong_state, std::string(name_of(held->state)));
    }
    return std::move(*held);
}

Words words_of(const Book& book, shop::OrderId id)
{
    const auto held = order(book, id);
    return held ? Words{{"shop", held->order.key.shop}, {"order", held->order.key.number}} : Words{};
}

// Which order, or how many.
Words words_of(const Book& book, const OrderIds& ids)
{
    return ids.size() == 1 ? words_of(book, ids.front()) : Words{{"count", std::to_string(ids.size())}};
}

// A step that only changes the state of orders; why they are aside and until when goes along.
Done set_state(Book& book, StepKind kind, const OrderIds& ids, std::initializer_list<shop::OrderState> from,
               shop::OrderState to, const std::string& reason = {}, std::optional<Date> until = std::nullopt)
{
    Words words = words_of(book, ids);
    if (!reason.empty()) words["reason"] = reason;
    return in_step(book, kind, words, [&](Writer& writer) -> Allowed {
        for (const shop::OrderId id : ids) {
            const auto held = order_in(book, id, from);
            if (!held) return tl::unexpected(held.error());
            // What lies aside keeps the mark that she has not seen what its shop changed.
            writer.run("UPDATE orders SET state = ?1, aside_reason = ?2, aside_until = ?3, "
                       "changed = iif(?1 = 'set aside', changed, 0) WHERE id = ?4",
                       name_of(to), reason, until, id);
        }
        return {};
    });
}

} // namespace

OrdersTaken take_in_orders(Book& book, const std::vector<shop::Order>& orders, const std::string& file)
{
    OrdersTaken taken;
    const Done done = in_step(book, StepKind::take_in_orders, {{"file", file}}, [&](Writer& writer) -> Allowed {
        for (const shop::Order& order : orders) {
            if (is_erased(book, order.key)) { // the same file again must not bring her back
                ++taken.unchanged;
            } else if (const auto held = order_by_key(book, order.key)) {
                const Brought brought = take_in_again(book, writer, *held, order);
                if (brought == Brought::unchanged) {
                    ++taken.unchanged;
                    continue;
                }
                ++(brought == Brought::called_off ? taken.called_off : taken.changed);
                taken.touched.push_back(held->id);
            } else {
                taken.touched.push_back(insert_order(writer, order, intake::to_document(as_told(order))));
                ++(order.called_off ? taken.called_off : taken.fresh);
            }
        }
        fill_in_goods(writer);
        writer.words["new"] = std::to_string(taken.fresh);
        writer.words["changed"] = std::to_string(taken.changed);
        writer.words["called off"] = std::to_string(taken.called_off);
        return {};
    });
    taken.step = done.value();
    return taken;
}

tl::expected<shop::OrderId, Refused> enter_order(Book& book, const shop::Order& order)
{
    shop::OrderId id;
    const Done done = in_step(book, StepKind::enter_order, {{"shop", order.key.shop}, {"order", order.key.number}},
                              [&](Writer& writer) -> Allowed {
                                  if (order_by_key(book, order.key))
                                      return refuse(Why::already_there, order.key.number);
                                  id = insert_order(writer, order, std::nullopt);
                                  fill_in_goods(writer);
                                  return {};
                              });
    if (!done) return tl::unexpected(done.error());
    return id;
}

Done edit_order(Book& book, shop::OrderId id, const shop::Order& edited)
{
    return in_step(book, StepKind::edit_order, words_of(book, id), [&](Writer& writer) -> Allowed {
        const auto held = order(book, id);
        if (!held) return refuse(Why::unknown_order);
        update_order(book, writer, id, edited);
        if (packs_otherwise(held->order, edited)) {
            writer.run("UPDATE orders SET version = version + 1 WHERE id = ?", id);
            part_if_elsewhere(book, writer, id);
        }
        return {};
    });
}

Done check_orders(Book& book, const OrderIds& ids)
{
    using S = shop::OrderState;
    return set_state(book, StepKind::check_order, ids, {S::arrived, S::checked}, S::checked);
}

Done set_aside(Book& book, const OrderIds& ids, const std::string& reason, std::optional<Date> until)
{
    using S = shop::OrderState;
    return set_state(book, StepKind::set_order_aside, ids, {S::arrived, S::checked, S::set_aside}, S::set_aside, reason,
                     until);
}

Done take_back(Book& book, const OrderIds& ids)
{
    using S = shop::OrderState;
    return set_state(book, StepKind::take_order_back, ids, {S::set_aside, S::called_off}, S::arrived);
}

Done call_off(Book& book, const OrderIds& ids)
{
    using S = shop::OrderState;
    return set_state(book, StepKind::call_order_off, ids, {S::arrived, S::checked, S::set_aside, S::called_off},
                     S::called_off);
}

Done look_at(Book& book, shop::OrderId id)
{
    return in_step(book, StepKind::look_at_order, words_of(book, id), [&](Writer& writer) -> Allowed {
        writer.run("UPDATE orders SET changed = 0 WHERE id = ?", id);
        return {};
    });
}

Done join_orders(Book& book, shop::OrderId id, shop::OrderId to)
{
    return in_step(book, StepKind::join_orders, words_of(book, id), [&](Writer& writer) -> Allowed {
        const auto held = order(book, id);
        const auto other = order(book, to);
        if (!held || !other) return refuse(Why::unknown_order);
        const shop::OrderId first = other->joined_to.value_or(to);
        if (id == first || held->joined_to == first) return {};
        if (shop::joining_key(held->order.to) != shop::joining_key(other->order.to)) return refuse(Why::not_joinable);
        writer.words["to"] = other->order.key.number;
        writer.run("UPDATE orders SET joined_to = ?1 WHERE id = ?2 OR joined_to = ?2", first, id);
        return {};
    });
}

Done part_order(Book& book, shop::OrderId id)
{
    return in_step(book, StepKind::part_order, words_of(book, id), [&](Writer& writer) -> Allowed {
        if (!order(book, id)) return refuse(Why::unknown_order);
        part(book, writer, id);
        return {};
    });
}

Done remember_match(Book& book, const Match& match)
{
    return in_step(
        book, StepKind::match_good, {{"shop", match.shop}, {"title", match.title}, {"good", match.good.text}},
        [&](Writer& writer) -> Allowed {
            Query old(book, "SELECT good FROM good_match WHERE shop = ? AND title = ? AND variant = ?", match.shop,
                      match.title, match.variant);
            if (old.next()) {
                // Orders she has not checked yet follow the mended match.
                writer.run("UPDATE order_line SET good = '' WHERE title = ?2 AND variant = ?3 AND good = ?4 AND "
                           "good <> ?5 AND order_id IN "
                           "(SELECT id FROM orders WHERE shop = ?1 AND state = 'arrived')",
                           match.shop, match.title, match.variant, old.text(0), match.good);
                writer.run("UPDATE good_match SET good = ?4 WHERE shop = ?1 AND title = ?2 AND variant = ?3",
                           match.shop, match.title, match.variant, match.good);
            } else {
                writer.run("INSERT INTO good_match (shop, title, variant, good) VALUES (?, ?, ?, ?)", match.shop,
                           match.title, match.variant, match.good);
            }
            fill_in_goods(writer);
            return {};
        });
}

} // namespace stow::book
