#include "app/view/desk.h"

#include "app/day.h"
#include "app/view/away.h"
#include "app/view/paper_ways.h"
#include "app/view/text.h"
#include "app/words/book.h"
#include "app/words/reasons.h"
#include "core/book/orders.h"
#include "core/book/parcels.h"
#include "core/book/settings.h"
#include "core/papers/payload.h"

namespace stow::view {

namespace {
constexpr const char* remembered_place = "screen.place";
constexpr const char* remembered_dark = "screen.dark";
constexpr const char* remembered_printing = "print.waiting";

struct Undone {
    book::StepId by;
    book::Step what;
};
std::optional<Undone> undone_last(const book::Book& book)
{
    const auto by = book::last_redoable(book);
    const auto what = by ? book::step(book, *by->undoes) : std::nullopt;
    return what ? std::optional(Undone{by->id, *what}) : std::nullopt;
}

// Orders or parcels by the hundred, perhaps.
bool touches_many(book::StepKind kind)
{
    using K = book::StepKind;
    return kind == K::take_in_orders || kind == K::check_order || kind == K::plan || kind == K::hand_over;
}

} // namespace

Desk::Desk(Day& day, QObject* parent)
    : QObject(parent), day_(day), day_line_(day), arrivals_(day), plan_(day), pick_(day), bench_(day), hand_over_(day),
      cupboard_(day), find_(day), first_steps_(day), preview_(day)
{
    connect(&day_, &Day::changed, this, &Desk::refresh);
    connect(&day_, &Day::failed, this, &Desk::tell);
    connect(&day_, &Day::waiting, this, [this](const QString& for_what) {
        waits_for_ = for_what;
        emit waitsForChanged();
    });
    const auto hears = [this](auto& controller) {
        connect(&controller, &std::remove_reference_t<decltype(controller)>::said, this, &Desk::say);
    };
    hears(arrivals_);
    hears(plan_);
    hears(pick_);
    hears(bench_);
    hears(hand_over_);
    hears(find_);
    hears(first_steps_);
    hears(*cupboard_.supplyCard());
    hears(*cupboard_.goods());
    hears(*cupboard_.supplies());
    hears(*cupboard_.records());
    hears(*cupboard_.rates());
    hears(*cupboard_.house());
    hears(*cupboard_.sending());
    hears(*cupboard_.beforeSale());
    hears(*cupboard_.paperBoxes());
    connect(cupboard_.paperBoxes(), &PaperBoxesController::written, this, &Desk::print);
    connect(cupboard_.paperBoxes(), &PaperBoxesController::lookAsked, this, &Desk::lookAtPapers);
    connect(&pick_, &PickController::written, this, &Desk::print);
    connect(&bench_, &BenchController::written, this, &Desk::print);
    connect(&hand_over_, &HandOverController::written, this, &Desk::print);
    connect(cupboard_.supplies(), &SuppliesController::written, this, &Desk::print);
    connect(cupboard_.goods(), &GoodsController::written, this, &Desk::print);
    connect(cupboard_.records(), &RecordsController::written, this, &Desk::print);
    connect(cupboard_.house(), &HouseController::written, this, &Desk::print);
    print_queue_.remember(text(book::remembered(day_.book(), remembered_printing).value_or(std::string())));
    connect(&print_queue_, &printing::PrintQueue::changed, this, [this] {
        guarded(day_, [this] { book::remember(day_.book(), remembered_printing, utf8(print_queue_.kept())); });
        emit printTroubleChanged();
    });
    connect(&pick_, &PickController::wrong, this, &Desk::stop);
    connect(&bench_, &BenchController::wrong, this, &Desk::stop);
    connect(&pick_, &PickController::right, this, &Desk::right);
    connect(&pick_, &PickController::changed, this, &Desk::noticeChanged); // the last tick is another
    connect(&bench_, &BenchController::right, this, &Desk::right);
    connect(&cupboard_, &CupboardController::shelfChanged, this, &Desk::noticeChanged);
    connect(&plan_, &PlanController::readyToPick, this, [this] {
        show_fresh(Place::Pick);
        if (pick_.empty()) pick_.startRound();
        setPlace(Place::Pick);
    });
    clock_.setInterval(20'000); // minutes left
    connect(&clock_, &QTimer::timeout, this, [this] {
        guarded(day_, [this] {
            day_line_.refresh();
            if (place_ == Place::HandOver) hand_over_.refresh();
        });
    });
    clock_.start();

    dark_ = dark_wanted(day_);
    if (const auto place = book::remembered(day_.book(), remembered_place)) {
        bool known = false;
        const int value = text(*place).toInt(&known);
        if (known && value >= 0 && value <= static_cast<int>(Place::Cupboard)) place_ = static_cast<Place>(value);
    }
    refresh();
}

void Desk::plugIn(std::unique_ptr<scale::Device> device)
{
    scale_ = std::make_unique<scale::ScaleReader>(std::move(device));
    connect(scale_.get(), &scale::ScaleReader::says, &bench_, [this](const weighing::ScaleSays& said) {
        weighing::ScaleSays heard = said;
        heard.fresh =
            said.fresh && place_ == Place::Bench && stop_word_.isEmpty() && failure_.isEmpty() && waits_for_.isEmpty();
        guarded(day_, [&] { bench_.scaleSays(heard); });
    });
}

void Desk::setPlace(Place place)
{
    if (place == place_) return;
    place_ = place;
    guarded(day_, [&] { book::remember(day_.book(), remembered_place, std::to_string(static_cast<int>(place))); });
    show_fresh(place);
    if (!just_said_) notice_.clear(); // it was said of the place that is left
    emit placeChanged();
    emit noticeChanged(); // another place has other papers
}

bool dark_wanted(const Day& day)
{
    return book::remembered(day.book(), remembered_dark) == "yes";
}

void Desk::setDark(bool dark)
{
    if (dark == dark_) return;
    dark_ = dark;
    guarded(day_, [&] { book::remember(day_.book(), remembered_dark, dark ? "yes" : "no"); });
    emit darkChanged();
}

void Desk::refresh_place(Place place)
{
    switch (place) {
    case Place::Arrivals: return arrivals_.refresh();
    case Place::Plan: return plan_.refresh();
    case Place::Pick: return pick_.refresh();
    case Place::Bench: arrivals_.refresh_goods(); return bench_.refresh();
    case Place::HandOver: return hand_over_.refresh();
    case Place::Cupboard: return cupboard_.refresh();
    }
}

void Desk::show_fresh(Place place)
{
    if (fresh_.insert(place).second && !guarded(day_, [&] { refresh_place(place); })) fresh_.erase(place);
}

void Desk::refresh()
{
    fresh_.clear();
    day_line_.refresh();
    refresh_place(place_);
    fresh_.insert(place_);
    first_steps_.refresh();
    const auto last = book::last_undoable(day_.book());
    last_step_ = last ? words::step(*last) : QString();
    const auto undone = undone_last(day_.book());
    next_step_ = undone ? words::step(undone->what) : QString();
    emit noticeChanged();
}

QString Desk::undoWords() const
{
    if (ticks_first() && !pick_.lastTick().isEmpty()) return tr("Undo: tick of %1").arg(pick_.lastTick());
    return last_step_.isEmpty() ? QString() : tr("Undo: %1").arg(last_step_);
}

QString Desk::redoWords() const
{
    if (ticks_first() && !pick_.lastUntick().isEmpty()) return tr("Again: tick of %1").arg(pick_.lastUntick());
    return next_step_.isEmpty() ? QString() : tr("Again: %1").arg(next_step_);
}

void Desk::print(const QString& paper, const QString& file)
{
    if (const auto way = printing::way_of(typed_way(day_, paper))) print_queue_.print(name_of_paper(paper), file, *way);
}

bool Desk::hasPapers() const
{
    switch (place_) {
    case Place::Plan: return !plan_.empty(); // what its key would print
    case Place::Pick: return !pick_.empty() || pick_.canStart();
    case Place::Bench: return !bench_.empty();
    case Place::HandOver: return !hand_over_.empty();
    case Place::Cupboard: return cupboard_.hasPapers();
    case Place::Arrivals: return false;
    }
    return false;
}

void Desk::lookAtPapers()
{
    std::vector<DraftPaper> drafts;
    const bool read = guarded(day_, [&] {
        switch (place_) {
        case Place::Plan:
            show_fresh(Place::Pick);
            drafts = pick_.drafts();
            for (DraftPaper& draft : drafts) {
                draft.print = [this, print = std::move(draft.print)] {
                    print();
                    setPlace(Place::Pick);
                };
            }
            break;
        case Place::Pick: drafts = pick_.drafts(); break;
        case Place::Bench: drafts = bench_.drafts(); break;
        case Place::HandOver: drafts = hand_over_.drafts(); break;
        case Place::Cupboard: drafts = cupboard_.drafts(); break;
        case Place::Arrivals: break;
        }
    });
    if (!read) return;
    if (!preview_.show(std::move(drafts))) say(tr("There is nothing to print here now."));
}

void Desk::mendPrinting()
{
    print_queue_.mend();
}

void Desk::undo()
{
    guarded(day_, [this] {
        if (ticks_first() && pick_.undoTick()) return say(tr("The tick is gone."));
        const auto last = book::last_undoable(day_.book());
        if (!last) return say(tr("There is nothing to undo."));
        const QString what = words::step(*last);
        take_back(last->id, last->kind, tr("Undoing: %1").arg(what), tr("Undone: %1").arg(what));
    });
}

// To undo the undoing does it again.
void Desk::redo()
{
    guarded(day_, [this] {
        if (ticks_first() && pick_.redoTick()) return say(tr("Ticked again."));
        const auto undone = undone_last(day_.book());
        if (!undone) return say(tr("There is nothing to do again."));
        const QString what = words::step(undone->what);
        take_back(undone->by, undone->what.kind, tr("Doing again: %1").arg(what), tr("Done again: %1").arg(what));
    });
}

void Desk::take_back(book::StepId step, book::StepKind kind, const QString& doing, const QString& done)
{
    const auto undo = [step](Day& day) { return book::undo(day.book(), step); };
    const bool large = touches_many(kind);
    const auto undone = large ? away(day_, doing, undo) : undo(day_);
    if (!undone) return say(words::refused(undone.error()));
    say(done);
    if (!large) day_.moved(); // away() moved it already
}

// What a key would do, by a card: at the bench, where the hands are full.
void Desk::command(papers::Command command)
{
    using papers::Command;
    if (command == Command::go_on) return goOn();
    if (!stop_word_.isEmpty()) return emit wrong();
    if (command == Command::undo) return undo();
    if (place_ != Place::Bench) return say(tr("This card is for the bench."));
    switch (command) {
    case Command::done: return bench_.done();
    case Command::back: return bench_.back();
    case Command::later: return bench_.later();
    case Command::box_gone: return bench_.boxGone();
    case Command::label_again: return bench_.printAgain();
    case Command::undo:
    case Command::go_on: return;
    }
}

void Desk::scan(const QString& code)
{
    if (!failure_.isEmpty()) return emit wrong();
    guarded(day_, [&] { take_scan(code); });
}

void Desk::take_scan(const QString& code)
{
    const auto ours = papers::parse_payload(utf8(code));
    if (ours && ours->kind == papers::Payload::Kind::command) {
        if (const auto known = papers::command(ours->number)) return command(*known);
        return stop(tr("Scan it again"), tr("This card tells nothing that this program knows: %1").arg(code));
    }
    if (!stop_word_.isEmpty()) return emit wrong(); // first the word that stands there, by a key
    if (!ours && ours.error() == papers::NotOurs::damaged) {
        return stop(tr("Scan it again"), tr("The code was not read whole: %1").arg(code));
    }
    if (!ours && ours.error() == papers::NotOurs::newer_version) {
        return stop(tr("A newer code"), tr("%1 was printed by a later version of this program.").arg(code));
    }
    if (ours) {
        const auto scanned = ours->of_parcel() ? book::parcel_by_number(day_.book(), ours->number) : std::nullopt;
        if (scanned && stops(scanned->parcel)) return;
        if (place_ == Place::Bench && bench_.scan(code)) return;
        if (scanned) {
            openParcel(scanned->parcel.id.value);
            const int last = labels_printed(day_, ours->number);
            if (ours->kind == papers::Payload::Kind::label && ours->print < last) {
                say(tr("This is print %1 of label %2; print %3 was made later.")
                        .arg(ours->print)
                        .arg(text(ours->number))
                        .arg(last));
            }
            return;
        }
        for (const shop::HeldOrder& held : day_.orders()) {
            if (held.order.key.number != ours->number) continue;
            const auto parcels = book::parcels_of(day_.book(), held.id);
            if (!parcels.empty() && stops(parcels.front())) return;
            if (!parcels.empty()) return openParcel(parcels.front().id.value);
            setPlace(Place::Arrivals);
            return arrivals_.look(held.id.value);
        }
        return stop(tr("Not in this book"),
                    tr("%1 is one of our codes, but this shop book does not hold it.").arg(code));
    }
    if (place_ == Place::Pick ? pick_.scan(code) : place_ == Place::Bench && bench_.scan(code)) return;
    if (place_ == Place::Pick || place_ == Place::Bench) return; // they said themselves what is wrong
    take_foreign(code);
}

// Neither a paper of ours nor at a place where goods are scanned: what it is, if it is known at all.
void Desk::take_foreign(const QString& code)
{
    const std::string scanned = utf8(code);
    for (const auto& [known, good] : day_.cupboard().goods) {
        if (known.text != scanned && (good.gtin.empty() || good.gtin != scanned)) continue;
        return stop(tr("Not here"), tr("%1 is a good. Goods are scanned at Pick (F3), and at the Bench (F4) as they "
                                       "go in.")
                                        .arg(good_name(day_, known)));
    }
    if (!book::search(day_.book(), scanned, 1).empty()) {
        say(tr("Scanned: %1").arg(code));
        return emit findAsked(code);
    }
    stop(tr("Not known"),
         tr("“%1” is no good, order, parcel or tracking number of this shop book. Nothing was changed.").arg(code));
}

void Desk::goOn()
{
    stop_word_.clear();
    stop_more_.clear();
    emit stopChanged();
}

void Desk::openParcel(qlonglong parcel)
{
    const auto held = book::parcel(day_.book(), {parcel});
    const auto state = held ? held->parcel.state : shop::ParcelState::planned;
    if (state == shop::ParcelState::handed_over || state == shop::ParcelState::came_back) {
        return say(tr("%1 is not here any more: %2").arg(text(held->parcel.number), words::state(state)));
    }
    if (guarded(day_, [&] { bench_.open(parcel); })) setPlace(Place::Bench);
}

// Over everything until it is mended. The step last shown as undoable is the last that is known to be finished.
void Desk::tell(const book::BookFailure& failure)
{
    if (failure.disk_full()) {
        failure_ = tr("The disk is full");
        failure_remedy_ = tr("Make room on the disk that holds %1, then try again.");
    } else if (failure.busy()) {
        failure_ = tr("The shop book is in use");
        failure_remedy_ = tr("Another program is writing in %1 and did not finish in time. Let it finish or close it, "
                             "then try again.");
    } else {
        failure_ = tr("The shop book cannot be reached");
        failure_remedy_ = tr("See that the disk with %1 is there and may be written, then try again.");
    }
    failure_remedy_ = failure_remedy_.arg(text(day_.book().path().string()));
    if (!failure.disk_full() && !failure.busy())
        failure_remedy_ += QLatin1Char(' ') + tr("The system says: %1").arg(QString::fromUtf8(failure.what()));
    failure_safe_ = last_step_.isEmpty() ? tr("Every finished step is safe.")
                                         : tr("Every finished step is safe, the last: %1.").arg(last_step_);
    emit failureChanged();
    emit wrong();
}

void Desk::tryAgain()
{
    if (failure_.isEmpty()) return;
    const bool works = guarded(day_, [this] {
        book::remember(day_.book(), remembered_place, std::to_string(static_cast<int>(place_)));
        day_.moved();
    });
    if (!works) return;
    failure_.clear();
    emit failureChanged();
    say(tr("The shop book works again. See whether the last thing you did is there, and do it again if not."));
}

void Desk::say(const QString& words)
{
    notice_ = words;
    just_said_ = true;
    QTimer::singleShot(0, this, [this] { just_said_ = false; });
    emit noticeChanged();
}

void Desk::stop(const QString& word, const QString& more)
{
    stop_word_ = word;
    stop_more_ = more;
    emit stopChanged();
    emit wrong();
}

bool Desk::stops(const shop::Parcel& parcel)
{
    if (parcel.state >= shop::ParcelState::handed_over) return false; // too late
    const book::Standing standing = book::parcel_standing(day_.book(), parcel);
    const auto numbers = [&](const std::vector<shop::OrderId>& ids) {
        QStringList all;
        for (const shop::OrderId id : ids) {
            if (const shop::HeldOrder* held = day_.order(id)) all += text(held->order.key.number);
        }
        return all.join(QStringLiteral(", "));
    };
    const QString number = text(parcel.number);
    if (!standing.called_off.empty())
        stop(tr("Stop"), tr("%1 was called off. Parcel %2 does not go.").arg(numbers(standing.called_off), number));
    else if (!standing.aside.empty())
        stop(tr("Stop"), tr("%1 was set aside. Parcel %2 waits.").arg(numbers(standing.aside), number));
    else if (standing.stops()) {
        // Behind the word it lies on the bench, where she can say that it still serves.
        const bool at_the_bench =
            parcel.state == shop::ParcelState::picked || parcel.state == shop::ParcelState::packed;
        if (at_the_bench) openParcel(parcel.id.value);
        stop(tr("Stop"), tr("%1 changed since parcel %2 was planned.").arg(numbers(standing.changed), number));
    }
    return standing.stops();
}

} // namespace stow::view
