// Every supply's weeks to come: what will be used, how long it lasts, when and how much to order.
#pragma once

#include "core/supplies/forecast.h"
#include "core/supplies/stock.h"

namespace stow::supplies {

inline constexpr int weeks_known = 130; // of the past, that forecasts look at
inline constexpr int weeks_ahead = 13;

struct Outlook {
    std::optional<Forecast> forecast;
    shop::Amount reorder_at;  // the larger of hers and the one worked out
    shop::Amount worked_out;  // zero: too little is known
    std::optional<int> cover; // days, of what plans have not reserved
};

// `use`: of each week, oldest first (the book's weekly_use). `service_level`: chance of not running out while an order
// is on its way, above 0 and below 1.
std::map<shop::SupplyCode, Outlook> outlook(const std::map<shop::SupplyCode, shop::Supply>& supplies,
                                            const std::map<shop::SupplyCode, shop::Amount>& on_hand,
                                            const std::map<shop::SupplyCode, shop::Amount>& reserved,
                                            const std::map<shop::SupplyCode, Weeks>& use, double service_level);

// The supplies with the outlook's reorder points in place of hers, for `reorder_list`.
std::map<shop::SupplyCode, shop::Supply> with_points(std::map<shop::SupplyCode, shop::Supply> supplies,
                                                     const std::map<shop::SupplyCode, Outlook>& outlook);

} // namespace stow::supplies
