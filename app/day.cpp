#include "app/day.h"

#include "core/book/cupboard.h"
#include "core/book/orders.h"
#include "core/book/rate_sheets.h"

#include <algorithm>
#include <ctime>

namespace stow {

LocalTime system_local_time()
{
    const std::time_t now = std::time(nullptr);
    std::tm wall{};
    localtime_r(&now, &wall);
    const std::chrono::year_month_day ymd{std::chrono::year{wall.tm_year + 1900},
                                          std::chrono::month{static_cast<unsigned>(wall.tm_mon + 1)},
                                          std::chrono::day{static_cast<unsigned>(wall.tm_mday)}};
    return {Date{ymd}, TimeOfDay{wall.tm_hour * 60 + wall.tm_min}};
}

Day::Day(book::Book book, WallClock clock) : book_(std::move(book)), clock_(std::move(clock))
{
    moved();
}

const shop::HeldOrder* Day::order(shop::OrderId id) const
{
    const auto found =
        std::lower_bound(orders_.begin(), orders_.end(), id,
                         [](const shop::HeldOrder& held, shop::OrderId wanted) { return held.id < wanted; });
    if (found != orders_.end() && found->id == id) return &*found;
    const auto known = older_.find(id);
    if (known != older_.end()) return &known->second;
    auto held = book::order(book_, id);
    return held ? &older_.emplace(id, *std::move(held)).first->second : nullptr;
}

void Day::moved()
{
    cupboard_ = book::cupboard(book_);
    rate_sheets_ = book::rate_sheets(book_);
    orders_ = book::orders_open(book_, today() - std::chrono::days(14));
    older_.clear();
    std::sort(orders_.begin(), orders_.end(), [](const auto& a, const auto& b) { return a.id < b.id; });
    emit changed();
}

} // namespace stow
