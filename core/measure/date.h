// Calendar dates and times. Dates are days without a time zone; an Instant is UTC seconds.
#pragma once

#include <chrono>
#include <optional>
#include <string>
#include <string_view>

namespace stow {

using Date = std::chrono::sys_days;
using Instant = std::chrono::sys_seconds;
using TimeOfDay = std::chrono::minutes; // after local midnight

std::string to_text(Date date);                                    // 2026-11-25 (ISO 8601)
std::string to_text(Instant instant);                              // 2026-11-25T07:30:00Z
std::string to_text(TimeOfDay time);                               // 16:30
Date monday_of(Date day);                                          // of its week, which begins on Monday (ISO 8601)
std::optional<Date> parse_date(std::string_view iso);              // only real days of the calendar
std::optional<Instant> parse_instant(std::string_view iso);        // as to_text writes it
std::optional<TimeOfDay> parse_time_of_day(std::string_view text); // H:MM or HH:MM, 0:00 to 23:59

} // namespace stow
