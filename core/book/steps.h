// Everything she does is a step: one transaction with its time, what it did to which rows, and its movements. A step
// can be undone, which is a new step; undoing that one does it again.
#pragma once

#include "core/book/book.h"
#include "core/shop/codes.h"
#include "core/shop/parcels.h"

#include <array>
#include <functional>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace stow::book {

using StepId = shop::Id<struct StepRow>;

enum class StepKind {
    take_in_goods,
    take_in_supplies,
    take_in_wrappings,
    take_in_rules,
    take_in_rates,
    take_in_stock,
    take_in_orders,
    edit_good,
    edit_supply,
    edit_wrapping,
    edit_rules,
    edit_house,
    edit_rates,
    remove,
    enter_order,
    edit_order,
    check_order,
    set_order_aside,
    take_order_back,
    call_order_off,
    look_at_order,
    join_orders,
    part_order,
    match_good,
    match_columns,
    plan,
    drop_parcel,
    lock_parcel,
    unlock_parcel,
    start_round,
    pick,
    not_there,
    bench_tick,
    weigh,
    pack,
    choose_service,
    buy_postage,
    refund_postage,
    label,
    track,
    hand_over,
    came_back,
    return_goods, // older books only
    receive,
    count,
    spoil,
    make,
    undo,
    erase_buyer
};
std::string_view name_of(StepKind kind); // as the book stores it: "take in orders"
std::optional<StepKind> step_kind(std::string_view name);

using Words = std::map<std::string, std::string>; // what the sentence about a step needs: "file", "order", "parcel"...

struct Step {
    StepId id;
    Instant at;
    StepKind kind = StepKind::undo;
    Words words;
    std::optional<StepId> undoes;
    std::optional<StepId> undone_by; // the step that undid it, unless that one was undone in turn
};

// Why something was not done; nothing was changed then.
enum class Why {
    unknown_order,
    unknown_parcel,
    unknown_good,
    unknown_supply,
    unknown_step,
    wrong_state,       // what: the state it is in
    parcel_stops,      // an order of the parcel changed or was called off since it was planned
    is_locked,         // the parcel's plan is kept
    more_than_ordered, // the parcels would hold more pieces than the order has
    already_there,     // the same order, or a parcel of it
    already_bought,    // postage, when not told to buy again
    nothing_to_do,     // no labelled parcel for this carrier...
    not_joinable,
    not_positive,
    already_undone,
    later_step,   // `step` depends on it and would have to be undone first
    not_undoable, // erasing a buyer
};

struct Refused {
    Why why = Why::nothing_to_do;
    std::string what;
    std::optional<StepId> step; // for later_step, already_undone
};

// The step made; nothing when everything was so already and no step was needed.
using Done = tl::expected<std::optional<StepId>, Refused>;

// Newest first. `most`: at most so many.
std::vector<Step> steps(const Book& book, std::size_t most = 200);
std::optional<Step> step(const Book& book, StepId id);
// The newest step that is neither undone nor an undoing itself: what "undo" takes back.
std::optional<Step> last_undoable(const Book& book);
// The newest undoing that still stands with no other step after it: what "do again" takes back.
std::optional<Step> last_redoable(const Book& book);

// Restores what the step changed and moves back what it moved. Refused, naming the later step, when one that stands
// changed the same rows, builds on rows it made, or counted what it moved.
Done undo(Book& book, StepId id);

} // namespace stow::book
