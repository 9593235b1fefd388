#include "core/supplies/outlook.h"

#include <algorithm>
#include <cmath>

namespace stow::supplies {

namespace {

constexpr std::ptrdiff_t least_weeks = 4; // a forecast from fewer would be a guess

shop::Amount amount_of(const std::map<shop::SupplyCode, shop::Amount>& amounts, const shop::SupplyCode& code)
{
    const auto found = amounts.find(code);
    return found == amounts.end() ? shop::Amount{} : found->second;
}

bool long_enough(const Weeks& weeks)
{
    const auto first = std::find_if(weeks.begin(), weeks.end(), [](std::int64_t use) { return use > 0; });
    return weeks.end() - first >= least_weeks;
}

} // namespace

std::map<shop::SupplyCode, Outlook> outlook(const std::map<shop::SupplyCode, shop::Supply>& supplies,
                                            const std::map<shop::SupplyCode, shop::Amount>& on_hand,
                                            const std::map<shop::SupplyCode, shop::Amount>& reserved,
                                            const std::map<shop::SupplyCode, Weeks>& use, double service_level)
{
    std::map<shop::SupplyCode, Outlook> all;
    for (const auto& [code, supply] : supplies) {
        Outlook& own = all[code];
        own.reorder_at = supply.reorder_at;
        const auto weeks = use.find(code);
        if (weeks == use.end() || !long_enough(weeks->second)) continue;
        own.forecast = forecast(weeks->second, weeks_ahead);
        if (!own.forecast) continue;
        const Point point = supplies::reorder_point(*own.forecast, supply.lead_days, service_level);
        own.worked_out = {std::llround(std::ceil(point.reorder_at()))};
        if (supply.unit == shop::Unit::piece) {
            own.worked_out = shop::pieces((own.worked_out.thousandths + 999) / 1000);
        }
        own.reorder_at = std::max(own.reorder_at, own.worked_out);
        own.cover = days_of_cover((amount_of(on_hand, code) - amount_of(reserved, code)).thousandths, *own.forecast);
    }
    return all;
}

std::map<shop::SupplyCode, shop::Supply> with_points(std::map<shop::SupplyCode, shop::Supply> supplies,
                                                     const std::map<shop::SupplyCode, Outlook>& outlook)
{
    for (auto& [code, supply] : supplies) {
        if (const auto own = outlook.find(code); own != outlook.end()) supply.reorder_at = own->second.reorder_at;
    }
    return supplies;
}

} // namespace stow::supplies
