#include "core/supplies/stock.h"

#include <boost/math/special_functions/erf.hpp>
#include <cmath>
#include <stdexcept>

namespace stow::supplies {

shop::Amount on_hand(const std::vector<shop::Amount>& movements)
{
    shop::Amount sum;
    for (const shop::Amount movement : movements) sum += movement;
    return sum;
}

std::optional<int> days_of_cover(shop::Amount on_hand, shop::Amount used, int days)
{
    if (used <= shop::Amount{} || days <= 0) return std::nullopt;
    if (on_hand <= shop::Amount{}) return 0;
    return static_cast<int>(on_hand.thousandths * days / used.thousandths);
}

double z_of(double service_level)
{
    if (!(service_level > 0 && service_level < 1)) throw std::logic_error("a service level lies between 0 and 1");
    return std::sqrt(2.0) * boost::math::erf_inv(2 * service_level - 1);
}

double safety_stock(Demand daily, double lead_days, double service_level)
{
    return z_of(service_level) * daily.spread * std::sqrt(lead_days);
}

double reorder_point(Demand daily, double lead_days, double service_level)
{
    return daily.mean * lead_days + safety_stock(daily, lead_days, service_level);
}

namespace {

shop::Amount amount_of(const std::map<shop::SupplyCode, shop::Amount>& amounts, const shop::SupplyCode& code)
{
    const auto found = amounts.find(code);
    return found == amounts.end() ? shop::Amount{} : found->second;
}

// Cost of so many packs, rounded to the nearest minor unit: amounts may be fractions of the priced unit.
Money cost_of(const shop::Supply& supply, shop::Amount amount)
{
    return share(supply.cost, amount.thousandths, 1000);
}

void add_to(std::vector<Money>& totals, Money cost)
{
    for (Money& total : totals) {
        if (total.currency == cost.currency) {
            total += cost;
            return;
        }
    }
    totals.push_back(cost);
}

} // namespace

std::vector<ReorderList> reorder_list(const std::map<shop::SupplyCode, shop::Supply>& supplies,
                                      const std::map<shop::SupplyCode, shop::Amount>& on_hand,
                                      const std::map<shop::SupplyCode, shop::Amount>& reserved)
{
    std::map<std::string, ReorderList> by_supplier;
    for (const auto& [code, supply] : supplies) {
        ReorderLine line;
        line.supply = code;
        line.on_hand = amount_of(on_hand, code) - amount_of(reserved, code);
        line.reorder_at = supply.reorder_at;
        line.lead_days = supply.lead_days;
        // Never watched (no reorder point) and never short: not asked for.
        const bool short_now = line.on_hand < shop::Amount{};
        const bool low = supply.reorder_at > shop::Amount{} && line.on_hand <= supply.reorder_at;
        if (!short_now && !low) continue;

        const std::int64_t pack = std::max<std::int64_t>(supply.pack.thousandths, 1);
        const std::int64_t wanted = 2 * supply.reorder_at.thousandths - line.on_hand.thousandths;
        line.packs = std::max<std::int64_t>((wanted + pack - 1) / pack, 1);
        line.to_order = {line.packs * pack};
        line.cost = cost_of(supply, line.to_order);
        ReorderList& list = by_supplier[supply.supplier];
        list.supplier = supply.supplier;
        add_to(list.totals, line.cost);
        list.lines.push_back(std::move(line));
    }
    std::vector<ReorderList> lists;
    lists.reserve(by_supplier.size());
    for (auto& [supplier, list] : by_supplier) lists.push_back(std::move(list));
    return lists;
}

} // namespace stow::supplies
