#include "core/postage/calendar.h"

#include <algorithm>

namespace stow::postage {

namespace {

constexpr int longest_wait = 366; // a service that never collects would be looked for without end

int iso_weekday(Date day)
{
    return static_cast<int>(std::chrono::weekday(day).iso_encoding());
}

bool holds(const std::vector<Date>& days, Date day)
{
    return std::find(days.begin(), days.end(), day) != days.end();
}

} // namespace

std::optional<TimeOfDay> cut_off_on(const Service& service, Date day)
{
    for (const CutOff& own : service.cut_offs) {
        if (own.weekday == iso_weekday(day)) return own.at;
    }
    return service.cut_off;
}

Date collection_day(const Service& service, const std::vector<Date>& holidays, Date day,
                    std::optional<TimeOfDay> ready_at)
{
    const auto collects = [&](Date d) {
        if (holds(holidays, d)) return false;
        if (service.weekdays.empty()) return iso_weekday(d) <= 5;
        return std::find(service.weekdays.begin(), service.weekdays.end(), iso_weekday(d)) != service.weekdays.end();
    };
    const auto cut_off = cut_off_on(service, day);
    if (ready_at && cut_off && *ready_at > *cut_off) day += std::chrono::days(1);
    for (int looked = 0; looked < longest_wait && !collects(day); ++looked) day += std::chrono::days(1);
    return day;
}

Date working_days_after(Date day, int days, const std::vector<Date>& holidays)
{
    while (days > 0) {
        day += std::chrono::days(1);
        if (iso_weekday(day) <= 5 && !holds(holidays, day)) --days;
    }
    return day;
}

} // namespace stow::postage
