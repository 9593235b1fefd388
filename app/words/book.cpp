#include "app/words/book.h"

#include "app/words/reasons.h"
#include "app/words/texts.h"

namespace stow::words {

QString problem(const book::OpenProblem& p)
{
    using book::OpenFault;
    const QString path = text(p.path);
    const QString detail = text(p.detail);
    switch (p.fault) {
    case OpenFault::unreadable: return Words::tr("The shop book %1 cannot be opened: %2.").arg(path, detail);
    case OpenFault::read_only:
        return Words::tr("The shop book %1 can be read but not written: it, its folder or its disk is read-only, or "
                         "belongs to somebody else. Allow writing and try again.")
            .arg(path);
    case OpenFault::disk_full:
        return Words::tr("The disk of the shop book %1 is full. The book is as it was; make room and try again.")
            .arg(path);
    case OpenFault::not_a_book: return Words::tr("%1 is not a shop book. It was left untouched.").arg(path);
    case OpenFault::newer:
        return Words::tr(
                   "The shop book %1 was written by a newer Stowbench (its version is %2, this program knows up to "
                   "%3). It was left untouched; please use the newer program.")
            .arg(path)
            .arg(p.found)
            .arg(p.understood);
    case OpenFault::damaged:
        return Words::tr(
                   "The shop book %1 is damaged (%2). It was left untouched; “stowbench restore” puts a backup in "
                   "its place.")
            .arg(path, detail);
    case OpenFault::locked:
        return Words::tr("The shop book %1 is in use by another program. Close that one and try again.").arg(path);
    case OpenFault::update_failed:
        return Words::tr("The shop book %1 could not be brought up to date (%2). It is as it was.").arg(path, detail);
    }
    return {};
}

QString copy_refused(const book::OpenProblem& p)
{
    if (p.fault != book::OpenFault::damaged) return problem(p);
    return Words::tr(
               "The copy %1 is damaged (%2). Nothing was changed; take an older one (“stowbench restore --list”).")
        .arg(text(p.path), text(p.detail));
}

QString problem(const book::BackupProblem& p)
{
    using Fault = book::BackupProblem::Fault;
    const QString detail = text(p.detail);
    switch (p.fault) {
    case Fault::cannot_write: return Words::tr("Nothing was written: %1.").arg(detail);
    case Fault::copy_unsound: return Words::tr("What was made is not sound and was thrown away: %1.").arg(detail);
    case Fault::source_refused:
        return p.source ? copy_refused(*p.source) : Words::tr("Refused, nothing was changed: %1.").arg(detail);
    case Fault::in_use: return Words::tr("The shop book is in use. Close Stowbench and try again.");
    }
    return {};
}

// The book names a state in the words it is kept in.
static QString state_named(const std::string& name)
{
    if (const auto of_parcel = shop::parcel_state(name)) return state(*of_parcel);
    if (const auto of_order = shop::order_state(name)) return state(*of_order);
    return text(name);
}

QString refused(const book::Refused& r)
{
    using book::Why;
    const QString what = text(r.what);
    switch (r.why) {
    case Why::unknown_order: return Words::tr("There is no such order: %1").arg(what);
    case Why::unknown_parcel: return Words::tr("There is no such parcel: %1").arg(what);
    case Why::unknown_good: return Words::tr("There is no such good: %1").arg(what);
    case Why::unknown_supply: return Words::tr("There is no such supply: %1").arg(what);
    case Why::unknown_step: return Words::tr("There is no such step");
    case Why::wrong_state: return Words::tr("That cannot be done now: it is %1").arg(state_named(r.what));
    case Why::parcel_stops: return Words::tr("Stop: the order changed or was called off since it was planned");
    case Why::is_locked: return Words::tr("The plan of this parcel is kept; unlock it first");
    case Why::more_than_ordered: return Words::tr("That would pack more than was ordered");
    case Why::already_there: return Words::tr("That is there already: %1").arg(what);
    case Why::already_bought: return Words::tr("Postage for this parcel was bought already: %1").arg(what);
    case Why::nothing_to_do:
        return what.isEmpty() ? Words::tr("There is nothing to do")
                              : Words::tr("There is nothing to do: no labelled parcel for %1").arg(what);
    case Why::not_joinable: return Words::tr("These orders do not go to the same address");
    case Why::not_positive: return Words::tr("The amount must be more than zero");
    case Why::already_undone: return Words::tr("That was undone already");
    case Why::later_step: return Words::tr("A later step builds on it: %1. Undo that one first").arg(what);
    case Why::not_undoable: return Words::tr("That cannot be undone");
    }
    return {};
}

namespace {

// Which print it was is worth a word where there were several.
QString label_step(const QString& parcel, int print, int printed)
{
    if (printed < 2) return Words::tr("label stuck on parcel %1").arg(parcel);
    if (print == 0)
        return Words::tr("label stuck on parcel %1, not scanned; it was printed %2 times").arg(parcel).arg(printed);
    if (print == printed) return Words::tr("label stuck on parcel %1: print %2, the last").arg(parcel).arg(print);
    return Words::tr("label stuck on parcel %1: print %2, though print %3 was made later")
        .arg(parcel)
        .arg(print)
        .arg(printed);
}

} // namespace

QString step(const book::Step& s)
{
    using book::StepKind;
    const auto word = [&](const char* key) {
        const auto found = s.words.find(key);
        return found == s.words.end() ? QString() : text(found->second);
    };
    const QString file = word("file"), order = word("order"), parcel = word("parcel");
    const int many = word("count").toInt(); // of orders or parcels; 0: one, named
    const QString code = word("good") + word("supply") + word("code");
    switch (s.kind) {
    case StepKind::take_in_goods: return Words::tr("goods taken in from %1").arg(file);
    case StepKind::take_in_supplies: return Words::tr("supplies taken in from %1").arg(file);
    case StepKind::take_in_wrappings: return Words::tr("wrappings taken in from %1").arg(file);
    case StepKind::take_in_rules: return Words::tr("house rules taken in from %1").arg(file);
    case StepKind::take_in_rates: return Words::tr("rate sheets taken in from %1").arg(file);
    case StepKind::take_in_stock: return Words::tr("counts taken in from %1").arg(file);
    case StepKind::take_in_orders: return Words::tr("orders taken in from %1").arg(file);
    case StepKind::edit_good: return Words::tr("good %1 changed").arg(code);
    case StepKind::edit_supply: return Words::tr("supply %1 changed").arg(code);
    case StepKind::edit_wrapping: return Words::tr("a wrapping changed");
    case StepKind::edit_rules: return Words::tr("house rules changed");
    case StepKind::edit_house: return Words::tr("settings changed");
    case StepKind::edit_rates: return Words::tr("a rate sheet changed");
    case StepKind::remove: return Words::tr("%1 removed").arg(code);
    case StepKind::enter_order: return Words::tr("order %1 entered").arg(order);
    case StepKind::edit_order: return Words::tr("order %1 changed").arg(order);
    case StepKind::check_order:
        return many ? Words::tr("%n orders checked", nullptr, many) : Words::tr("order %1 checked").arg(order);
    case StepKind::set_order_aside:
        return many ? Words::tr("%n orders set aside", nullptr, many) : Words::tr("order %1 set aside").arg(order);
    case StepKind::take_order_back:
        return many ? Words::tr("%n orders taken back", nullptr, many) : Words::tr("order %1 taken back").arg(order);
    case StepKind::call_order_off:
        return many ? Words::tr("%n orders called off", nullptr, many) : Words::tr("order %1 called off").arg(order);
    case StepKind::look_at_order: return Words::tr("change of order %1 seen").arg(order);
    case StepKind::join_orders: return Words::tr("order %1 joined to another").arg(order);
    case StepKind::part_order: return Words::tr("order %1 packed by itself again").arg(order);
    case StepKind::match_good: return Words::tr("a title matched to a good");
    case StepKind::match_columns: return Words::tr("columns matched");
    case StepKind::plan:
        return parcel.isEmpty() ? Words::tr("planned") : Words::tr("parcel %1 planned anew").arg(parcel);
    case StepKind::drop_parcel: return Words::tr("parcel %1 dropped").arg(parcel);
    case StepKind::lock_parcel:
        return many ? Words::tr("%n parcels locked", nullptr, many) : Words::tr("parcel %1 locked").arg(parcel);
    case StepKind::unlock_parcel:
        return many ? Words::tr("%n parcels unlocked", nullptr, many) : Words::tr("parcel %1 unlocked").arg(parcel);
    case StepKind::start_round: return Words::tr("round of picking started");
    case StepKind::pick: return Words::tr("parcel %1 picked").arg(parcel);
    case StepKind::not_there: return Words::tr("%1 was not there").arg(code);
    case StepKind::bench_tick: return Words::tr("a step at the bench, parcel %1").arg(parcel);
    case StepKind::weigh: return Words::tr("parcel %1 weighed").arg(parcel);
    case StepKind::pack: return Words::tr("parcel %1 packed").arg(parcel);
    case StepKind::choose_service: return Words::tr("service chosen for parcel %1").arg(parcel);
    case StepKind::buy_postage: return Words::tr("postage for parcel %1").arg(parcel);
    case StepKind::refund_postage: return Words::tr("postage refunded");
    case StepKind::label: return label_step(parcel, word("print").toInt(), word("printed").toInt());
    case StepKind::track: return Words::tr("tracking number of parcel %1").arg(parcel);
    case StepKind::hand_over: return Words::tr("list for %1 closed").arg(word("carrier"));
    case StepKind::came_back:
        return word("reason").isEmpty() ? Words::tr("parcel %1 came back").arg(parcel)
                                        : Words::tr("parcel %1 came back: %2").arg(parcel, word("reason"));
    case StepKind::return_goods: return Words::tr("goods of parcel %1 back on the shelf").arg(parcel);
    case StepKind::receive: return Words::tr("%1 received").arg(code);
    case StepKind::count: return Words::tr("%1 counted").arg(code);
    case StepKind::spoil: return Words::tr("%1 spoilt").arg(code);
    case StepKind::make: return Words::tr("%1 made").arg(code);
    case StepKind::undo: return Words::tr("undone");
    case StepKind::erase_buyer:
        return word("buyers").isEmpty() ? Words::tr("a buyer's data erased")
                                        : Words::tr("the data of %1 buyers erased").arg(word("buyers"));
    }
    return {};
}

QString finding(const book::Finding& f)
{
    using book::Unsound;
    const QString where = text(f.where) + QStringLiteral(": ");
    switch (f.what) {
    case Unsound::structure: return where + Words::tr("the file is damaged (%1)").arg(text(f.detail));
    case Unsound::reference: return where + Words::tr("refers to something that is not there (%1)").arg(text(f.detail));
    case Unsound::ledger: return where + Words::tr("the movements do not add up (%1)").arg(text(f.detail));
    case Unsound::step:
        return where + Words::tr("an undoing is not the opposite of what it undid (%1)").arg(text(f.detail));
    case Unsound::plan_unreadable: return where + Words::tr("the plan cannot be read (%1)").arg(text(f.detail));
    case Unsound::plan_geometry: return where + (f.violation ? violation(*f.violation) : text(f.detail));
    case Unsound::plan_pieces: return where + Words::tr("plan and parcel disagree on what is inside");
    case Unsound::refusal:
        return where + Words::tr("%1 was remembered as too small, which does not hold").arg(text(f.detail));
    case Unsound::too_many_pieces: return where + Words::tr("more in parcels than was ordered");
    }
    return {};
}

QString failure(const book::BookFailure& f)
{
    if (f.busy()) {
        return Words::tr("Another program is writing in the shop book and did not finish in time. Nothing of this step "
                         "was kept; please try again.");
    }
    if (f.disk_full()) {
        return Words::tr("The disk of the shop book is full. Nothing of this step was kept; make room and try again.");
    }
    return Words::tr("The shop book failed: %1. Nothing of this step was kept; the last finished step is there.")
        .arg(text(f.what()));
}

QString may_still_show(const std::filesystem::path& copy)
{
    return Words::tr(
               "%1 is in use or damaged and may still show erased buyers: close it, and erase again, or delete it.")
        .arg(text(copy.string()));
}

} // namespace stow::words
