#include "core/planning/sharing.h"

#include "core/planning/assignment.h"
#include "core/planning/sharing_price.h"
#include "core/planning/sharing_program.h"

#include <algorithm>
#include <map>
#include <numeric>

namespace stow::planning {

namespace {

// Limits that these ways exceed and that are not among `active` yet.
bool add_exceeded(const Sharing& sharing, const Ways& ways, std::vector<bool>& active)
{
    const auto sum = amounts_needed(sharing, ways);
    bool added = false;
    for (std::size_t l = 0; l < sum.size(); ++l) {
        if (active[l] || sum[l] <= sharing.limits[l].left) continue;
        active[l] = added = true;
    }
    return added;
}

// Limits that some ways exceed.
std::vector<bool> may_be_exceeded(const Sharing& sharing)
{
    std::vector<std::int64_t> most(sharing.limits.size(), 0);
    for (const auto& order : sharing.orders) {
        std::map<std::size_t, std::int64_t> of_order;
        for (const Way& way : order) {
            for (const Need& need : way.needs) of_order[need.limit] = std::max(of_order[need.limit], need.amount);
        }
        for (const auto& [limit, amount] : of_order) most[limit] += amount;
    }
    std::vector<bool> exceeded;
    for (std::size_t l = 0; l < most.size(); ++l) exceeded.push_back(most[l] > sharing.limits[l].left);
    return exceeded;
}

// Limits that these ways leave too little of for anybody's need.
void add_used_up(const Sharing& sharing, const Ways& ways, std::vector<bool>& scarce)
{
    const auto sum = amounts_needed(sharing, ways);
    for (const auto& order : sharing.orders) {
        for (const Way& way : order) {
            for (const Need& need : way.needs) {
                if (sum[need.limit] + need.amount > sharing.limits[need.limit].left) scarce[need.limit] = true;
            }
        }
    }
}

// Orders that share an active limit, directly or by way of others. An order whose best way needs none of them keeps it:
// to move it would help nobody.
std::vector<std::vector<std::size_t>> parts_of(const Sharing& sharing, const std::vector<bool>& active)
{
    std::vector<std::size_t> leads(sharing.limits.size()); // each limit to one of its part
    std::iota(leads.begin(), leads.end(), std::size_t{0});
    const auto lead = [&](std::size_t l) {
        while (leads[l] != l) l = leads[l] = leads[leads[l]];
        return l;
    };
    const auto is_active = [&](const Need& need) { return active[need.limit]; };
    std::vector<std::pair<std::size_t, std::size_t>> involved; // order, one of its limits
    for (std::size_t o = 0; o < sharing.orders.size(); ++o) {
        const auto& ways = sharing.orders[o];
        const auto first = std::find_if(ways.front().needs.begin(), ways.front().needs.end(), is_active);
        if (first == ways.front().needs.end()) continue;
        involved.emplace_back(o, first->limit);
        for (const Way& way : ways) {
            for (const Need& need : way.needs) {
                if (is_active(need)) leads[lead(need.limit)] = lead(first->limit);
            }
        }
    }
    std::map<std::size_t, std::vector<std::size_t>> parts;
    for (const auto& [order, limit] : involved) parts[lead(limit)].push_back(order);
    std::vector<std::vector<std::size_t>> all;
    all.reserve(parts.size());
    for (auto& [limit, orders] : parts) all.push_back(std::move(orders));
    return all;
}

// One part by itself: its own orders, only the active limits.
Sharing part_of(const Sharing& sharing, const std::vector<std::size_t>& orders, const std::vector<bool>& active)
{
    Sharing part;
    part.limits = sharing.limits;
    for (const std::size_t o : orders) {
        part.orders.push_back(sharing.orders[o]);
        for (Way& way : part.orders.back()) {
            way.needs.erase(std::remove_if(way.needs.begin(), way.needs.end(),
                                           [&](const Need& need) { return !active[need.limit]; }),
                            way.needs.end());
        }
    }
    return part;
}

constexpr std::size_t few_ways = 120; // up to here an integer program is done in no time

// Assignments looked at, so that a day of any size takes about as long.
int most_assignments(std::size_t orders, bool thorough)
{
    const int all = std::clamp(static_cast<int>(3'000 / std::max<std::size_t>(orders, 1)), 8, 400);
    return thorough ? all : 2;
}

// Where only pieces are scarce.
std::optional<Shared> share_as_flow(const Sharing& part, const Ways& start, int most)
{
    const auto assigned = assign_all(part, start, most);
    if (!assigned) return std::nullopt;
    return Shared{assigned->ways, merit_of(part, assigned->ways), assigned->behind};
}

std::size_t ways_of(const Sharing& part)
{
    std::size_t ways = 0;
    for (const auto& order : part.orders) ways += order.size();
    return ways;
}

Shared share_part(const Sharing& part, const Ways& start, bool thorough, Run& run)
{
    const bool few = ways_of(part) <= few_ways;
    auto found = share_as_flow(part, start, few ? most_assignments(part.orders.size(), thorough) : 2);
    if (!found && !few) found = share_by_price(part, start, 1, run);
    if (!found) found = share_by_program(part, run);
    if (!thorough || found->proven()) return *found;
    // Level by level as far as the wish; for the levels after it the orders are assigned once more around the others.
    Shared wished = share_by_wish(part, found->ways, run);
    if (const auto polished = share_as_flow(part, wished.ways, 2); polished && polished->merit < wished.merit) {
        wished.behind = wished.behind - levels_of(wished.merit) + levels_of(polished->merit);
        wished.ways = polished->ways;
        wished.merit = polished->merit;
    }
    const bool as_good = std::all_of(wished.behind.begin(), wished.behind.begin() + wish_level + 1,
                                     [](std::int64_t by) { return by == 0; });
    if (!as_good) wished.behind = std::min(wished.behind, behind_at_most(part, wished, run));
    return wished;
}

} // namespace

Levels least_levels(const std::vector<Way>& order)
{
    Levels least = levels_of(order.front().merit);
    for (const Way& way : order) {
        const Levels own = levels_of(way.merit);
        for (std::size_t k = 0; k < least.size(); ++k) least[k] = std::min(least[k], own[k]);
    }
    return least;
}

std::vector<std::int64_t> amounts_needed(const Sharing& sharing, const Ways& ways)
{
    std::vector<std::int64_t> sum(sharing.limits.size(), 0);
    for (std::size_t o = 0; o < ways.size(); ++o) {
        for (const Need& need : sharing.orders[o][ways[o]].needs) sum[need.limit] += need.amount;
    }
    return sum;
}

Merit merit_of(const Sharing& sharing, const Ways& ways)
{
    Merit sum;
    for (std::size_t o = 0; o < ways.size(); ++o) sum = sum + sharing.orders[o][ways[o]].merit;
    const auto needed = amounts_needed(sharing, ways);
    for (std::size_t l = 0; l < needed.size(); ++l) {
        if (!sharing.limits[l].firm) sum.over += std::max<std::int64_t>(needed[l] - sharing.limits[l].left, 0);
    }
    return sum;
}

bool keeps_limits(const Sharing& sharing, const Ways& ways)
{
    const auto needed = amounts_needed(sharing, ways);
    for (std::size_t l = 0; l < needed.size(); ++l) {
        // What was overdrawn before the day is nobody's fault, as long as nobody adds to it.
        if (sharing.limits[l].firm && needed[l] > std::max<std::int64_t>(sharing.limits[l].left, 0)) return false;
    }
    return true;
}

Ways one_by_one(const Sharing& sharing)
{
    std::vector<std::int64_t> left;
    for (const Limit& limit : sharing.limits) left.push_back(limit.left);
    Ways ways;
    for (const auto& order : sharing.orders) {
        std::optional<Merit> best;
        std::size_t chosen = 0;
        for (std::size_t w = 0; w < order.size(); ++w) {
            Merit merit = order[w].merit;
            bool possible = true;
            for (const Need& need : order[w].needs) {
                const std::int64_t there = std::max<std::int64_t>(left[need.limit], 0);
                if (need.amount > there && sharing.limits[need.limit].firm) possible = false;
                merit.over += std::max<std::int64_t>(need.amount - there, 0);
            }
            if (!possible || (best && *best <= merit)) continue;
            best = merit;
            chosen = w;
        }
        for (const Need& need : order[chosen].needs) left[need.limit] -= need.amount;
        ways.push_back(chosen);
    }
    return ways;
}

Shared share_out(const Sharing& sharing, Run& run, const Ways* start)
{
    const Ways plain = one_by_one(sharing);
    Shared best;
    best.ways.assign(sharing.orders.size(), 0);
    std::vector<bool> scarce(sharing.limits.size(), false);
    const auto solve = [&](const std::vector<bool>& active, bool thorough) {
        best.behind = {};
        Ways from = start != nullptr ? *start : plain;
        std::fill(best.ways.begin(), best.ways.end(), std::size_t{0});
        for (const auto& orders : parts_of(sharing, active)) {
            Ways own;
            for (const std::size_t o : orders) own.push_back(from[o]);
            const Shared solved = share_part(part_of(sharing, orders, active), own, thorough, run);
            for (std::size_t i = 0; i < orders.size(); ++i) best.ways[orders[i]] = solved.ways[i];
            best.behind = best.behind + solved.behind;
        }
    };
    // Quickly until it is known what is scarce, then with all the pains, and with all that may become so.
    while (add_exceeded(sharing, best.ways, scarce)) solve(scarce, false);
    if (!best.proven() && start == nullptr) {
        solve(may_be_exceeded(sharing), true);
        add_used_up(sharing, best.ways, scarce);
    }
    best.merit = merit_of(sharing, best.ways);
    // Only a search that was stopped can have missed what the baseline found.
    if (const Merit merit = merit_of(sharing, plain); !keeps_limits(sharing, best.ways) || merit < best.merit) {
        best.ways = plain;
        best.behind = best.behind - levels_of(best.merit) + levels_of(merit);
        best.merit = merit;
    }
    best.scarce = std::move(scarce);
    return best;
}

} // namespace stow::planning
