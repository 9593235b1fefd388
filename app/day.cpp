#include "app/day.h"

#include "core/book/cupboard.h"
#include "core/book/orders.h"
#include "core/book/rate_sheets.h"
#include "core/book/touched.h"

#include <algorithm>
#include <cstdlib>
#include <ctime>
#include <tuple>

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

namespace {

constexpr std::size_t many = 500; // touched: reading all is as quick

Date fortnight_before(Date day)
{
    return day - std::chrono::days(14);
}

// As the book sorts them: 2611-9 before 2611-10.
auto by_number(const shop::Parcel& parcel)
{
    const std::string& number = parcel.number;
    return std::tuple(number.substr(0, 4), number.size() > 5 ? std::atoi(number.c_str() + 5) : 0, parcel.id);
}

} // namespace

std::vector<shop::Parcel> Day::parcels_in(shop::ParcelState state) const
{
    std::vector<shop::Parcel> found;
    std::copy_if(parcels_.begin(), parcels_.end(), std::back_inserter(found),
                 [&](const shop::Parcel& parcel) { return parcel.state == state; });
    return found;
}

int Day::revision(shop::OrderId id) const
{
    const auto read = orders_read_.find(id.value);
    return read != orders_read_.end() ? read->second : all_read_;
}

int Day::revision(shop::ParcelId id) const
{
    const auto read = parcels_read_.find(id.value);
    return read != parcels_read_.end() ? read->second : all_read_;
}

std::unique_ptr<Day> Day::beside() const
{
    auto book = book::Book::open(book_.path(), [this] { return book_.now(); });
    if (!book) throw book::BookFailure(book.error().detail, 0);
    return std::make_unique<Day>(*std::move(book), clock_);
}

void Day::moved()
{
    ++moves_;
    const book::Mark mark = book::newest_mark(book_);
    const bool first = read_on_ != today();
    const book::Touched touched = first ? book::Touched{} : book::touched_since(book_, mark_);
    read_on_.reset(); // were the book to fail now, all is read next time
    cupboard_ = book::cupboard(book_);
    if (first || touched.cupboard) cupboard_revision_ = moves_;
    if (first || touched.rate_sheets) rate_sheets_ = book::rate_sheets(book_);
    older_.clear();
    if (first || touched.orders.size() > many || touched.parcels.size() > many)
        read_all();
    else
        read_touched(touched);
    read_on_ = today();
    mark_ = mark;
    emit changed();
}

void Day::read_all()
{
    orders_ = book::orders_open(book_, fortnight_before(today()));
    std::sort(orders_.begin(), orders_.end(), [](const auto& a, const auto& b) { return a.id < b.id; });
    to_plan_ = book::ids_to_plan(book_);
    parcels_ = book::parcels_of_day(book_, today());
    orders_read_.clear();
    parcels_read_.clear();
    all_read_ = moves_;
}

void Day::read_touched(const book::Touched& touched)
{
    if (!touched.orders.empty()) {
        std::erase_if(orders_, [&](const shop::HeldOrder& held) { return touched.orders.contains(held.id); });
        for (shop::HeldOrder& held : book::orders_open(book_, fortnight_before(today()), touched.orders)) {
            const auto place =
                std::lower_bound(orders_.begin(), orders_.end(), held.id,
                                 [](const shop::HeldOrder& there, shop::OrderId id) { return there.id < id; });
            orders_.insert(place, std::move(held));
        }
        for (const shop::OrderId id : touched.orders) {
            to_plan_.erase(id);
            orders_read_[id.value] = moves_;
        }
        to_plan_.merge(book::ids_to_plan(book_, touched.orders));
    }
    if (touched.parcels.empty()) return;
    std::erase_if(parcels_, [&](const shop::Parcel& parcel) { return touched.parcels.contains(parcel.id); });
    for (shop::Parcel& parcel : book::parcels_of_day(book_, today(), touched.parcels)) {
        const auto place =
            std::lower_bound(parcels_.begin(), parcels_.end(), parcel,
                             [](const shop::Parcel& a, const shop::Parcel& b) { return by_number(a) < by_number(b); });
        parcels_.insert(place, std::move(parcel));
    }
    for (const shop::ParcelId id : touched.parcels) parcels_read_[id.value] = moves_;
}

} // namespace stow
