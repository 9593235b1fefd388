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
    const Money own = plan.work.minor == 0 ? plan.packaging : plan.packaging + plan.work;
    if (!plan.chosen) return own;
    return own + plan.quotes[*plan.chosen].price()->total;
}

Merit operator+(const Merit& a, const Merit& b)
{
    return {a.left_out + b.left_out,
            a.no_service + b.no_service,
            a.late + b.late,
            a.over + b.over,
            {a.wishes[0] + b.wishes[0], a.wishes[1] + b.wishes[1], a.wishes[2] + b.wishes[2]},
            a.moved + b.moved,
            a.turn + b.turn,
            {}};
}

Levels levels_of(const Merit& m)
{
    return {m.left_out, m.no_service, m.late, m.over, m.wishes[0], m.wishes[1], m.wishes[2], m.moved, m.turn};
}

Levels operator+(Levels a, const Levels& b)
{
    for (std::size_t i = 0; i < a.size(); ++i) a[i] += b[i];
    return a;
}

Levels operator-(Levels a, const Levels& b)
{
    for (std::size_t i = 0; i < a.size(); ++i) a[i] -= b[i];
    return a;
}

Merit merit_of(const ParcelPlan& plan, Volume closed, Preference preference, const shop::SupplyCode& before)
{
    constexpr std::int64_t millilitre = millilitres(1).units;
    const std::int64_t volume = (closed.units + millilitre - 1) / millilitre;
    const std::int64_t cost = cost_in_all(plan).minor;
    // The goods weigh the same in every outer, so the whole weight ranks as the packaging alone would.
    const std::int64_t material = plan.weight.mean.units;
    Merit merit;
    merit.no_service = !plan.quotes.empty() && !plan.chosen ? 1 : 0;
    merit.late = plan.keeps_promise ? 0 : 1;
    merit.moved = !before.empty() && plan.outer != before ? 1 : 0;
    merit.code = plan.outer.text;
    switch (preference) {
    case Preference::smallest: merit.wishes = {volume, cost, material}; break;
    case Preference::cheapest: merit.wishes = {cost, volume, material}; break;
    case Preference::least_material: merit.wishes = {material, cost, volume}; break;
    }
    return merit;
}

} // namespace stow::planning
