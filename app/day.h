// The day at the bench: the open shop book, the clock, and what is looked up all the time. Screens and commands read
// from here; they write through core/book and then call `moved`.
#pragma once

#include "core/book/book.h"
#include "core/book/steps.h"
#include "core/postage/rate_sheet.h"
#include "core/shop/cupboard.h"
#include "core/shop/orders.h"

#include <QObject>

#include <functional>
#include <map>
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

    // To be called after a step was written: reads again and tells everybody.
    void moved();

signals:
    void changed();

private:
    book::Book book_;
    WallClock clock_;
    shop::Cupboard cupboard_;
    std::vector<postage::RateSheet> rate_sheets_;
    std::vector<shop::HeldOrder> orders_;                    // by id
    mutable std::map<shop::OrderId, shop::HeldOrder> older_; // asked for since the last `moved`
};

} // namespace stow
