#include "core/measure/date.h"

#include <charconv>
#include <fmt/format.h>

namespace stow {

namespace {

std::optional<int> whole(std::string_view text)
{
    int value = 0;
    const auto end = text.data() + text.size();
    const auto parsed = std::from_chars(text.data(), end, value);
    if (text.empty() || text[0] == '-' || parsed.ec != std::errc{} || parsed.ptr != end) return std::nullopt;
    return value;
}

} // namespace

std::string to_text(Date date)
{
    const std::chrono::year_month_day ymd{date};
    return fmt::format("{:04}-{:02}-{:02}", static_cast<int>(ymd.year()), static_cast<unsigned>(ymd.month()),
                       static_cast<unsigned>(ymd.day()));
}

std::string to_text(Instant instant)
{
    const Date day = std::chrono::floor<std::chrono::days>(instant);
    const std::chrono::hh_mm_ss time{instant - day};
    return fmt::format("{}T{:02}:{:02}:{:02}Z", to_text(day), time.hours().count(), time.minutes().count(),
                       time.seconds().count());
}

std::string to_text(TimeOfDay time)
{
    return fmt::format("{:02}:{:02}", time.count() / 60, time.count() % 60);
}

Date monday_of(Date day)
{
    return day - std::chrono::days(static_cast<int>(std::chrono::weekday(day).iso_encoding()) - 1);
}

std::optional<Date> parse_date(std::string_view iso)
{
    if (iso.size() != 10 || iso[4] != '-' || iso[7] != '-') return std::nullopt;
    const auto year = whole(iso.substr(0, 4)), month = whole(iso.substr(5, 2)), day = whole(iso.substr(8, 2));
    if (!year || !month || !day) return std::nullopt;
    const std::chrono::year_month_day ymd{std::chrono::year{*year}, std::chrono::month{static_cast<unsigned>(*month)},
                                          std::chrono::day{static_cast<unsigned>(*day)}};
    if (!ymd.ok()) return std::nullopt;
    return Date{ymd};
}

std::optional<TimeOfDay> parse_time_of_day(std::string_view text)
{
    const auto colon = text.find(':');
    if (colon > 2 || text.size() - colon != 3) return std::nullopt; // no colon: more than 2, too
    const auto hours = whole(text.substr(0, colon)), minutes = whole(text.substr(colon + 1));
    if (!hours || !minutes || *hours > 23 || *minutes > 59) return std::nullopt;
    return TimeOfDay{*hours * 60 + *minutes};
}

std::optional<Instant> parse_instant(std::string_view iso)
{
    if (iso.size() != 20 || iso[10] != 'T' || iso[16] != ':' || iso[19] != 'Z') return std::nullopt;
    const auto day = parse_date(iso.substr(0, 10));
    const auto time = parse_time_of_day(iso.substr(11, 5));
    const auto seconds = whole(iso.substr(17, 2));
    if (!day || !time || !seconds || *seconds > 59) return std::nullopt;
    return Instant{*day + *time + std::chrono::seconds{*seconds}};
}

} // namespace stow
