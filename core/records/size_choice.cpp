#include "core/records/size_choice.h"

#include <algorithm>
#include <limits>
#include <map>
#include <random>

namespace stow::records {

namespace {

constexpr int most_shakes = 200;      // of the best choice, to get out of where exchanges end
constexpr int between_exchanges = 50; // choices that the bound met and that are not the best
constexpr double close_enough = 1e-9;

} // namespace

double SizeChoice::gap() const
{
    if (cost <= 0) return 0;
    return std::max(0.0, (static_cast<double>(cost) - bound) / static_cast<double>(cost));
}

SizeChooser::SizeChooser(const std::vector<Demand>& demands) : demands_(demands)
{
    const std::size_t sizes = demands.empty() ? 0 : demands.front().cost.size();
    std::map<std::vector<std::optional<std::int64_t>>, std::int64_t> kinds;
    std::int64_t dearest = 1, orders = 0;
    for (const Demand& demand : demands) {
        const bool ever =
            std::any_of(demand.cost.begin(), demand.cost.end(), [](const auto& c) { return c.has_value(); });
        if (!ever) {
            never_ += demand.count;
            continue;
        }
        kinds[demand.cost] += demand.count;
        orders += demand.count;
        for (const auto& c : demand.cost) dearest = std::max(dearest, c.value_or(0));
    }
    // More than every order could cost together, so that no saving outweighs an order that does not go.
    unserved_ = static_cast<double>(dearest) * static_cast<double>(std::max<std::int64_t>(orders, 1)) + 1;
    for (std::size_t a = 0; a < sizes; ++a) {
        const auto beats = [&](std::size_t b) {
            bool better = false;
            for (const auto& [costs, count] : kinds) {
                if (!costs[a]) continue;
                if (!costs[b] || *costs[b] > *costs[a]) return false;
                better = better || *costs[b] < *costs[a];
            }
            if (better) return true;
            for (const auto& [costs, count] : kinds) {
                if (costs[b] && !costs[a]) return true;
            }
            return b < a; // alike: the first stays
        };
        bool dominated = false;
        for (std::size_t b = 0; b < sizes && !dominated; ++b) dominated = b != a && beats(b);
        if (!dominated) sizes_.push_back(a);
    }
    costs_.kinds = kinds.size();
    costs_.sizes = sizes_.size();
    for (const auto& [costs, count] : kinds) {
        for (const std::size_t s : sizes_) {
            costs_.of.push_back(static_cast<double>(count) * (costs[s] ? static_cast<double>(*costs[s]) : unserved_));
        }
    }
}

// Exchanges one size for another as long as that helps: each time the pair that helps most.
std::vector<std::size_t> SizeChooser::exchanged(std::vector<std::size_t> open, Run& run) const
{
    const std::size_t m = sizes_.size();
    for (;;) {
        // Nearest and second nearest open size of each kind; then every exchange is one pass over the kinds.
        std::vector<double> removal(open.size(), 0);
        std::vector<double> first(costs_.kinds), second(costs_.kinds);
        std::vector<std::size_t> at(costs_.kinds);
        for (std::size_t i = 0; i < costs_.kinds; ++i) {
            first[i] = second[i] = std::numeric_limits<double>::infinity();
            for (std::size_t o = 0; o < open.size(); ++o) {
                const double c = costs_.at(i, open[o]);
                if (c < first[i]) {
                    second[i] = first[i];
                    first[i] = c;
                    at[i] = o;
                } else {
                    second[i] = std::min(second[i], c);
                }
            }
        }
        double best = -close_enough * (1 + costs_.total(open));
        std::size_t out = open.size(), in = m;
        for (std::size_t s = 0; s < m; ++s) {
            if (std::find(open.begin(), open.end(), s) != open.end()) continue;
            if (!run.go_on(256)) return open;
            std::fill(removal.begin(), removal.end(), 0.0);
            double gain = 0;
            for (std::size_t i = 0; i < costs_.kinds; ++i) {
                const double c = costs_.at(i, s);
                if (c < first[i])
                    gain += c - first[i];
                else
                    removal[at[i]] += std::min(c, second[i]) - first[i];
            }
            for (std::size_t o = 0; o < open.size(); ++o) {
                if (gain + removal[o] >= best) continue;
                best = gain + removal[o];
                out = o;
                in = s;
            }
        }
        if (in == m) return open;
        open[out] = in;
    }
}

std::vector<std::size_t> SizeChooser::greedy(std::size_t k) const
{
    std::vector<std::size_t> open;
    std::vector<double> nearest(costs_.kinds,
                                std::numeric_limits<double>::max() / (2.0 * static_cast<double>(costs_.kinds)));
    while (open.size() < k) {
        std::size_t best = costs_.sizes;
        double least = std::numeric_limits<double>::infinity();
        for (std::size_t s = 0; s < costs_.sizes; ++s) {
            if (std::find(open.begin(), open.end(), s) != open.end()) continue;
            double sum = 0;
            for (std::size_t i = 0; i < costs_.kinds; ++i) sum += std::min(nearest[i], costs_.at(i, s));
            if (sum >= least) continue;
            least = sum;
            best = s;
        }
        open.push_back(best);
        for (std::size_t i = 0; i < costs_.kinds; ++i) nearest[i] = std::min(nearest[i], costs_.at(i, best));
    }
    return open;
}

SizeChoice SizeChooser::choose(int k, Run& run) const
{
    const std::size_t m = costs_.sizes;
    const auto wanted = std::min(m, static_cast<std::size_t>(std::max(k, 0)));
    SizeChoice choice;
    if (wanted == 0 || costs_.kinds == 0) {
        for (const Demand& demand : demands_) choice.not_served += demand.count;
        return choice;
    }
    choice.not_served = never_;
    std::vector<std::size_t> open = exchanged(greedy(wanted), run);
    double upper = costs_.total(open);
    const auto better = [&](std::vector<std::size_t> other) {
        const double cost = costs_.total(other);
        if (cost >= upper) return;
        upper = cost;
        open = std::move(other);
    };
    std::mt19937 random(1); // the same shakes every time
    for (int shake = 0; shake < most_shakes && wanted < m; ++shake) {
        if (!run.go_on(256)) break;
        std::vector<std::size_t> shaken = open;
        for (int changes = 1 + shake % 3; changes > 0; --changes) {
            const std::size_t in = random() % m;
            if (std::find(shaken.begin(), shaken.end(), in) == shaken.end()) shaken[random() % wanted] = in;
        }
        better(exchanged(std::move(shaken), run));
    }
    double lower = upper;
    if (wanted < m) {
        int offered = 0;
        SizeBound bound(
            costs_, wanted,
            [&](const std::vector<std::size_t>& met) {
                if (offered++ % between_exchanges == 0 || costs_.total(met) < upper) better(exchanged(met, run));
                return upper;
            },
            run);
        lower = bound.prove(open);
    }

    std::sort(open.begin(), open.end());
    double missed = 0;
    for (const std::size_t s : open) choice.sizes.push_back(sizes_[s]);
    for (const Demand& demand : demands_) {
        std::optional<std::int64_t> best;
        for (const std::size_t s : choice.sizes) {
            if (demand.cost[s] && (!best || *demand.cost[s] < *best)) best = demand.cost[s];
        }
        if (best) {
            choice.served += demand.count;
            choice.cost += *best * demand.count;
        } else if (std::any_of(demand.cost.begin(), demand.cost.end(), [](const auto& c) { return c.has_value(); })) {
            choice.not_served += demand.count;
            missed += unserved_ * static_cast<double>(demand.count);
        }
    }
    choice.bound = std::max(0.0, lower - missed);
    return choice;
}

} // namespace stow::records
