// Supplies over time: on hand as a sum, days of cover, when and how much to order.
#pragma once

#include "core/shop/supplies.h"

#include <map>
#include <optional>
#include <vector>

namespace stow::supplies {

// On hand is the sum of movements, whatever their order.
shop::Amount on_hand(const std::vector<shop::Amount>& movements);

// Days that `on_hand` lasts at the average use of the past `days`; nothing when nothing was used.
std::optional<int> days_of_cover(shop::Amount on_hand, shop::Amount used, int days);

struct Demand { // of one day, in the supply's unit
    double mean = 0;
    double spread = 0; // standard deviation
};
// Standard normal quantile of the service level (0 < level < 1), such as 1.645 for 0.95.
double z_of(double service_level);
// Safety stock z·σ·√L over a lead time of L days, and reorder point mean·L + z·σ·√L.
double safety_stock(Demand daily, double lead_days, double service_level);
double reorder_point(Demand daily, double lead_days, double service_level);

struct ReorderLine {
    shop::SupplyCode supply;
    shop::Amount on_hand; // less what planned parcels will use
    shop::Amount reorder_at;
    shop::Amount to_order; // whole packs
    std::int64_t packs = 0;
    Money cost; // of the packs
    int lead_days = 0;
};
struct ReorderList { // of one supplier
    std::string supplier;
    std::vector<ReorderLine> lines; // by code
    std::vector<Money> totals;      // one a currency
};

// Everything that is at or below its reorder point once `reserved` is used up, or short without one; ordered up to
// twice the reorder point (our choice) in whole packs; grouped by supplier, in order of their names.
std::vector<ReorderList> reorder_list(const std::map<shop::SupplyCode, shop::Supply>& supplies,
                                      const std::map<shop::SupplyCode, shop::Amount>& on_hand,
                                      const std::map<shop::SupplyCode, shop::Amount>& reserved);

} // namespace stow::supplies
