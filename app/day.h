// The day at the bench: the open shop book, the clock, and what is looked up all the time. Screens and commands read
// from here; they write through core/book and then call `moved`.
#pragma once

#include "core/book/book.h"
#include "core/book/steps.h"
#include "core/book/touched.h"
#include "core/postage/rate_sheet.h"
#include "core/shop/cupboard.h"
#include "core/shop/orders.h"

#include <QObject>

#include <functional>
#include <map>
#include <memory>
#include <set>
#include <unordered_map>
#include <vector>

namespace stow {

struct LocalTime { // on the workshop's wall
    Date day;
    TimeOfDay time;
};
LocalTime system_local_time();

class Day : public QObject {
    Q_OBJECT
public:
    using WallClock = std::function<LocalTime()>;

    explicit Day(book::Book book, WallClock clock = system_local_time);

    book::Book& book() { return book_; }
    const book::Book& book() const { return book_; }
    Date today() const { return clock_().day; }
    TimeOfDay time() const { return clock_().time; }

    // As the book holds them after the last `moved`.
    const shop::Cupboard& cupboard() const { return cupboard_; }
    const std::vector<postage::RateSheet>& rate_sheets() const { return rate_sheets_; }
    // Those with something left to do, and all of the last fortnight.
    const std::vector<shop::HeldOrder>& orders() const { return orders_; }
    // Any order of the book; those that are done and not of late are read when asked for.
    const shop::HeldOrder* order(shop::OrderId id) const;
    // Of these, the checked ones with pieces that are in no kept parcel.
    const std::set<shop::OrderId>& to_plan() const { return to_plan_; }
    // Those that are not with a carrier yet, and those handed over today; by number.
    const std::vector<shop::Parcel>& parcels() const { return parcels_; }
    std::vector<shop::Parcel> parcels_in(shop::ParcelState state) const;

    // Grows whenever one of them was read again: what was worked out from it before still holds while it stands still.
    int revision(shop::OrderId id) const;
    int revision(shop::ParcelId id) const;
    int cupboard_revision() const { return cupboard_revision_; } // not of what is on hand

    // To be called after a step was written: reads again what it touched and tells everybody.
    void moved();
    // The same in two halves: what is read by a day beside, on its thread, is taken over here without asking the book.
    struct Seen {               // how far the book was read
        std::optional<Date> on; // nothing: not yet
        book::Mark mark = 0;
        bool operator==(const Seen&) const = default;
    };
    struct Reading;
    const Seen& seen() const { return seen_; }
    Reading read(const Seen& seen) const;
    void take(Reading reading);
    // Another one on the same book, for another thread.
    std::unique_ptr<Day> beside() const;
    // To be called when the book failed underneath.
    void fails(const book::BookFailure& failure) { emit failed(failure); }

signals:
    void changed();
    void failed(const stow::book::BookFailure& failure);
    void waiting(const QString& for_what);                 // long work is under way; empty: it is over
    void called(const char* of, const QByteArray& method); // from the window; for whoever watches

private:
    void take_all(Reading reading);
    void take_touched(Reading reading);

    book::Book book_;
    WallClock clock_;
    shop::Cupboard cupboard_;
    std::vector<postage::RateSheet> rate_sheets_;
    std::vector<shop::HeldOrder> orders_; // by id
    std::set<shop::OrderId> to_plan_;
    std::vector<shop::Parcel> parcels_;
    Seen seen_;
    int moves_ = 0, all_read_ = 0, cupboard_revision_ = 0;
    std::unordered_map<std::int64_t, int> orders_read_, parcels_read_; // in which move, if since all were read
    mutable std::map<shop::OrderId, shop::HeldOrder> older_;           // asked for since the last `moved`
};

struct Day::Reading {
    Seen from, to;
    bool all = false; // else of orders and parcels what was touched, and no more
    book::Touched touched;
    shop::Cupboard cupboard;
    std::vector<postage::RateSheet> rate_sheets; // if they were touched
    std::vector<shop::HeldOrder> orders;         // by id
    std::set<shop::OrderId> to_plan;
    std::vector<shop::Parcel> parcels; // by number
};

} // namespace stow
