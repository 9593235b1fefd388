// Dates as shops write them. In a file of 03/04/2026 some other row usually tells which number is the day.
#pragma once

#include "core/measure/date.h"

#include <optional>
#include <string_view>
#include <vector>

namespace stow::intake {

enum class DateOrder { day_month, month_day }; // of dates that do not begin with the year
std::string_view name_of(DateOrder order);     // "day month", "month day"
std::optional<DateOrder> date_order(std::string_view name);

// The order in which more of the `cells` are dates; `usual` where it is the same.
DateOrder tell_date_order(const std::vector<std::string_view>& cells, DateOrder usual);

// 2026-11-25, 25.11.2026, 25/11/26, 25. Nov 2026, November 25, 2026, each also with a time of day after it, which is
// passed over. Dots always mean day first. Years of two digits are of this century.
std::optional<Date> read_date(std::string_view cell, DateOrder order);

} // namespace stow::intake
