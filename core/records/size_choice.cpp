#include "core/records/size_choice.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>
#include <numeric>
#include <random>

namespace stow::records {

namespace {

constexpr int most_steps = 1'500;
constexpr int most_shakes = 150; // of the best choice, to get out of where exchanges end
constexpr int patience = 30;     // steps without a better bound before they get shorter
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
    for (const auto& [costs, count] : kinds) {
        count_.push_back(static_cast<double>(count));
        for (const std::size_t s : sizes_) {
            cost_.push_back(static_cast<double>(count) * (costs[s] ? static_cast<double>(*costs[s]) : unserved_));
        }
    }
}

double SizeChooser::value(const std::vector<std::size_t>& open) const
{
    double sum = 0;
    for (std::size_t i = 0; i < count_.size(); ++i) {
        double best = std::numeric_limits<double>::infinity();
        for (const std::size_t s : open) best = std::min(best, cost(i, s));
        sum += best;
    }
    return sum;
}

// Exchanges one size for another as long as that helps: each time the pair that helps most.
std::vector<std::size_t> SizeChooser::exchanged(std::vector<std::size_t> open, Run& run) const
{
    const std::size_t m = sizes_.size();
    for (;;) {
        // Nearest and second nearest open size of each kind; then every exchange is one pass over the kinds.
        std::vector<double> removal(open.size(), 0);
        std::vector<double> first(count_.size()), second(count_.size());
        std::vector<std::size_t> at(count_.size());
        for (std::size_t i = 0; i < count_.size(); ++i) {
            first[i] = second[i] = std::numeric_limits<double>::infinity();
            for (std::size_t o = 0; o < open.size(); ++o) {
                const double c = cost(i, open[o]);
                if (c < first[i]) {
                    second[i] = first[i];
                    first[i] = c;
                    at[i] = o;
                } else {
                    second[i] = std::min(second[i], c);
                }
            }
        }
        double best = -close_enough * (1 + value(open));
        std::size_t out = open.size(), in = m;
        for (std::size_t s = 0; s < m; ++s) {
            if (std::find(open.begin(), open.end(), s) != open.end()) continue;
            if (!run.go_on(256)) return open;
            std::fill(removal.begin(), removal.end(), 0.0);
            double gain = 0;
            for (std::size_t i = 0; i < count_.size(); ++i) {
                const double c = cost(i, s);
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

SizeChoice SizeChooser::choose(int k, Run& run) const
{
    const std::size_t m = sizes_.size(), n = count_.size();
    const auto wanted = std::min(m, static_cast<std::size_t>(std::max(k, 0)));
    SizeChoice choice;
    choice.not_served = never_;
    if (wanted == 0 || n == 0) {
        for (const double c : count_) choice.not_served += std::llround(c);
        return choice;
    }
    // Greedy to begin with.
    std::vector<std::size_t> open;
    std::vector<double> nearest(n, std::numeric_limits<double>::max() / (2.0 * static_cast<double>(n)));
    while (open.size() < wanted) {
        std::size_t best = m;
        double least = std::numeric_limits<double>::infinity();
        for (std::size_t s = 0; s < m; ++s) {
            if (std::find(open.begin(), open.end(), s) != open.end()) continue;
            double sum = 0;
            for (std::size_t i = 0; i < n; ++i) sum += std::min(nearest[i], cost(i, s));
            if (sum >= least) continue;
            least = sum;
            best = s;
        }
        open.push_back(best);
        for (std::size_t i = 0; i < n; ++i) nearest[i] = std::min(nearest[i], cost(i, best));
    }
    open = exchanged(open, run);
    double upper = value(open);
    std::mt19937 random(1); // the same shakes every time
    for (int shake = 0; shake < most_shakes && wanted < m; ++shake) {
        if (!run.go_on(256)) break;
        std::vector<std::size_t> shaken = open;
        for (int changes = 1 + shake % 3; changes > 0; --changes) {
            const std::size_t in = random() % m;
            if (std::find(shaken.begin(), shaken.end(), in) == shaken.end()) shaken[random() % wanted] = in;
        }
        shaken = exchanged(std::move(shaken), run);
        if (const double v = value(shaken); v < upper) {
            upper = v;
            open = std::move(shaken);
        }
    }

    std::vector<double> price(n); // of serving each kind
    for (std::size_t i = 0; i < n; ++i) {
        double first = std::numeric_limits<double>::infinity();
        for (const std::size_t s : open) first = std::min(first, cost(i, s));
        price[i] = first;
    }
    double lower = 0, step = 1;
    int since = 0;
    std::vector<double> reduced(m);
    std::vector<std::size_t> order(m);
    std::vector<double> served(n);
    for (int t = 0; t < most_steps && wanted < m; ++t) {
        if (!run.go_on(256)) break;
        std::fill(reduced.begin(), reduced.end(), 0.0);
        for (std::size_t i = 0; i < n; ++i) {
            const double* row = &cost_[i * m];
            for (std::size_t s = 0; s < m; ++s) {
                const double saved = row[s] - price[i];
                if (saved < 0) reduced[s] += saved;
            }
        }
        std::iota(order.begin(), order.end(), std::size_t{0});
        std::partial_sort(order.begin(), order.begin() + static_cast<std::ptrdiff_t>(wanted), order.end(),
                          [&](std::size_t a, std::size_t b) {
                              return reduced[a] < reduced[b] || (reduced[a] == reduced[b] && a < b);
                          });
        std::vector<std::size_t> picked(order.begin(), order.begin() + static_cast<std::ptrdiff_t>(wanted));
        double bound = std::accumulate(price.begin(), price.end(), 0.0);
        for (const std::size_t s : picked) bound += reduced[s];
        if (bound > lower + close_enough * std::abs(upper)) {
            lower = bound;
            since = 0;
        } else if (++since == patience) {
            step /= 2;
            since = 0;
        }
        if (const double v = value(picked); v < upper * 1.02) { // near enough to be worth bettering
            const auto bettered = t % 50 == 0 || v < upper ? exchanged(picked, run) : picked;
            if (const double w = value(bettered); w < upper) {
                upper = w;
                open = bettered;
            }
        }
        if (upper - lower <= close_enough * std::abs(upper) || step < 1e-5) break;
        double norm = 0;
        for (std::size_t i = 0; i < n; ++i) {
            served[i] = 1;
            for (const std::size_t s : picked) served[i] -= cost(i, s) < price[i] ? 1 : 0;
            norm += served[i] * served[i];
        }
        if (norm == 0) break; // every kind served once: this is the best there is
        const double by = step * (upper - bound) / norm;
        for (std::size_t i = 0; i < n; ++i) price[i] += by * served[i];
    }
    if (wanted == m) lower = upper;

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
