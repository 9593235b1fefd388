#include "core/shop/heat.h"

namespace stow::shop {

std::optional<Date> better_held_until(const Good& good, Date today)
{
    if (!good.softens_above_c) return std::nullopt;
    const auto month = static_cast<unsigned>(std::chrono::year_month_day(today).month());
    if (month < 5 || month > 9) return std::nullopt;
    const unsigned weekday = std::chrono::weekday(today).iso_encoding(); // Monday is 1
    if (weekday < 4) return std::nullopt;                                // it is there before the weekend
    return today + std::chrono::days(8 - static_cast<int>(weekday));
}

} // namespace stow::shop
