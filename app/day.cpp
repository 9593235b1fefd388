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

bool by_id(const shop::HeldOrder& a, const shop::HeldOrder& b)
{
    return a.id < b.id;
}

// Sorted rows, those of `ids` replaced by what they are now.
template <class Row, class Ids, class Before>
void put_in_place(std::vector<Row>& rows, const Ids& ids, std::vector<Row> now, const Before& before)
{
    if (ids.empty()) return;
    std::erase_if(rows, [&](const Row& row) { return ids.contains(row.id); });
    const auto put = rows.insert(rows.end(), std::move_iterator(now.begin()), std::move_iterator(now.end()));
    std::inplace_merge(rows.begin(), put, rows.end(), before);
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
    take(read(seen_));
}

Day::Reading Day::read(const Seen& seen) const
{
    Reading now;
    now.from = seen;
    now.to = {today(), book::newest_mark(book_)};
    const bool first = seen.on != now.to.on;
    if (!first) now.touched = book::touched_since(book_, seen.mark);
    now.touched.cupboard |= first;
    now.touched.rate_sheets |= first;
    now.all = first || now.touched.orders.size() > many || now.touched.parcels.size() > many;
    now.cupboard = book::cupboard(book_);
    if (now.touched.rate_sheets) now.rate_sheets = book::rate_sheets(book_);
    const Date since = fortnight_before(today());
    if (now.all) {
        now.orders = book::orders_open(book_, since);
        now.to_plan = book::ids_to_plan(book_);
        now.parcels = book::parcels_of_day(book_, today());
    }
    if (!now.all && !now.touched.orders.empty()) {
        now.orders = book::orders_open(book_, since, now.touched.orders);
        now.to_plan = book::ids_to_plan(book_, now.touched.orders);
    }
    if (!now.all && !now.touched.parcels.empty())
        now.parcels = book::parcels_of_day(book_, today(), now.touched.parcels);
    std::sort(now.orders.begin(), now.orders.end(), by_id);
    return now;
}

void Day::take(Reading reading)
{
    if (reading.from != seen_) return moved(); // moved since: what was read may be older than what is held
    ++moves_;
    seen_ = reading.to;
    cupboard_ = std::move(reading.cupboard);
    if (reading.touched.cupboard) cupboard_revision_ = moves_;
    if (reading.touched.rate_sheets) rate_sheets_ = std::move(reading.rate_sheets);
    older_.clear();
    reading.all ? take_all(std::move(reading)) : take_touched(std::move(reading));
    emit changed();
}

void Day::take_all(Reading reading)
{
    orders_ = std::move(reading.orders);
    to_plan_ = std::move(reading.to_plan);
    parcels_ = std::move(reading.parcels);
    orders_read_.clear();
    parcels_read_.clear();
    all_read_ = moves_;
}

void Day::take_touched(Reading reading)
{
    const book::Touched& touched = reading.touched;
    put_in_place(orders_, touched.orders, std::move(reading.orders), by_id);
    put_in_place(parcels_, touched.parcels, std::move(reading.parcels),
                 [](const auto& a, const auto& b) { return by_number(a) < by_number(b); });
    for (const shop::OrderId id : touched.orders) {
        to_plan_.erase(id);
        orders_read_[id.value] = moves_;
    }
    to_plan_.merge(reading.to_plan);
    for (const shop::ParcelId id : touched.parcels) parcels_read_[id.value] = moves_;
}

} // namespace stow
