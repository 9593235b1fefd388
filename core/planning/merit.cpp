#include "core/planning/merit.h"

namespace stow::planning {

std::string_view name_of(Preference preference)
{
    switch (preference) {
    case Preference::smallest: return "smallest";
    case Preference::cheapest: return "cheapest";
    case Preference::least_material: return "least-material";
    }
    return {};
}

std::optional<Preference> preference(std::string_view name)
{
    for (const Preference p : {Preference::smallest, Preference::cheapest, Preference::least_material}) {
        if (name_of(p) == name) return p;
    }
    return std::nullopt;
}

Money cost_in_all(const ParcelPlan& plan)
{
    if (!plan.chosen) return plan.packaging;
    return plan.packaging + plan.quotes[*plan.chosen].price()->total;
}

Merit merit_of(const ParcelPlan& plan, Volume closed, Preference preference)
{
    const std::int64_t volume = closed.units;
    const std::int64_t cost = cost_in_all(plan).minor;
    // The goods weigh the same in every outer, so the whole weight ranks as the packaging alone would.
    const std::int64_t material = plan.weight.mean.units;
    Merit merit{!plan.quotes.empty() && !plan.chosen, !plan.keeps_promise, {}, plan.outer.text};
    switch (preference) {
    case Preference::smallest: merit.wishes = {volume, cost, material}; break;
    case Preference::cheapest: merit.wishes = {cost, volume, material}; break;
    case Preference::least_material: merit.wishes = {material, cost, volume}; break;
    }
    return merit;
}

} // namespace stow::planning
