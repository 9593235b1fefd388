#include "core/planning/split_search.h"

#include "core/planning/integer_program.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace stow::planning {

namespace {

constexpr double late_costs = 1e7;            // minor units: more than any parcel costs
constexpr int nodes_of_choice = 1'000;        // of the integer program
constexpr std::size_t even_splits = 12;       // tried, fewest parcels first
constexpr std::size_t most_ways_of_two = 256; // to share out what two parcels hold

using Parts = std::vector<Counts>;

class Search {
public:
    Search(Shares& shares, const SplitBound& bound, const Stock& stock, std::size_t most_priced, Run& run)
        : shares_(shares), bound_(bound), stock_(stock), most_priced_(most_priced), run_(run), all_(shares.all()),
          least_(bound.least_of_all())
    {
    }

    Parts find(const Parts& start)
    {
        keep_if_cheaper(start);
        try_even_splits(start.size());
        pick();
        while (go_on() && (exchange() || pick())) {
        }
        return best_;
    }

private:
    bool go_on()
    {
        const bool at_bound = !best_.empty() && cost_.late == 0 && cost_.minor <= least_;
        return !at_bound && shares_.priced() < most_priced_ && run_.go_on(256);
    }

    // Nothing: some share goes into no outer.
    std::optional<ShareCost> cost_of(const Parts& parts)
    {
        ShareCost sum;
        for (std::size_t i = 0; i < parts.size(); ++i) {
            const PricedShare& priced = shares_.price(parts[i], i == 0);
            if (!priced.outer) return std::nullopt;
            sum = sum + priced.cost;
        }
        return sum;
    }

    bool keep_if_cheaper(const Parts& parts)
    {
        const std::optional<ShareCost> cost = cost_of(parts);
        if (!cost || (!best_.empty() && *cost >= cost_)) return false;
        best_ = parts;
        cost_ = *cost;
        return true;
    }

    // Every piece in n parcels alike, what is left over going round.
    void try_even_splits(std::size_t most_parts)
    {
        const std::size_t last = std::min(most_parts, even_splits + 1);
        for (std::size_t n = 2; n <= last && go_on(); ++n) {
            Parts parts(n, Counts(all_.size(), 0));
            std::size_t turn = 0;
            for (std::size_t i = 0; i < all_.size(); ++i) {
                for (int k = 0; k < all_[i]; ++k) ++parts[turn++ % n][i];
            }
            parts.erase(std::remove_if(parts.begin(), parts.end(), [](const Counts& c) { return total(c) == 0; }),
                        parts.end());
            if (total(parts.front()) < total(all_)) keep_if_cheaper(parts);
        }
    }

    // The cheapest of all shares priced that add up to the order.
    bool pick()
    {
        std::vector<const Counts*> columns;
        std::vector<bool> first;
        IntegerProgram choice;
        choice.least_step = 1;
        IntegerProgram::Row one_first{{}, 1, 1};
        std::vector<IntegerProgram::Row> by_piece(all_.size());
        std::map<shop::SupplyCode, IntegerProgram::Row> by_outer;
        for (const auto& [key, priced] : shares_.known()) {
            if (!priced.outer) continue;
            const int column = static_cast<int>(columns.size());
            const double most = key.second ? 1 : total(all_);
            choice.columns.push_back(
                {static_cast<double>(priced.cost.minor) + late_costs * priced.cost.late, 0, most, true});
            if (key.second) one_first.terms.emplace_back(column, 1);
            for (std::size_t i = 0; i < all_.size(); ++i) {
                if (key.first[i] > 0) by_piece[i].terms.emplace_back(column, key.first[i]);
            }
            by_outer[*priced.outer].terms.emplace_back(column, 1);
            columns.push_back(&key.first);
            first.push_back(key.second);
        }
        choice.rows.push_back(std::move(one_first));
        for (std::size_t i = 0; i < all_.size(); ++i) {
            by_piece[i].low = by_piece[i].high = all_[i];
            choice.rows.push_back(std::move(by_piece[i]));
        }
        for (auto& [outer, row] : by_outer) {
            row.high = std::floor(static_cast<double>(stock_.left(outer).thousandths) / 1000);
            if (row.high > 0 && row.high < total(all_)) choice.rows.push_back(std::move(row));
        }
        const ProgramAnswer answer = solve(choice, {.nodes = nodes_of_choice, .gap = 0, .time = {}});
        Parts parts;
        for (std::size_t column = 0; column < answer.values.size(); ++column) {
            const auto times = static_cast<std::size_t>(std::llround(answer.values[column]));
            if (first[column] && times > 0)
                parts.insert(parts.begin(), *columns[column]);
            else
                parts.insert(parts.end(), times, *columns[column]);
        }
        return !parts.empty() && keep_if_cheaper(parts);
    }

    // One change of two parcels that makes them cheaper together.
    bool exchange()
    {
        for (std::size_t a = 0; a < best_.size(); ++a) {
            for (std::size_t b = 0; b < best_.size(); ++b) {
                if (a != b && exchange_between(a, b)) return true;
            }
        }
        for (std::size_t a = 0; a < best_.size(); ++a) {
            for (std::size_t b = a + 1; b < best_.size(); ++b) {
                if (shared_out_anew(a, b)) return true;
            }
        }
        return false;
    }

    // Every way to share out what two parcels hold, where there are few.
    bool shared_out_anew(std::size_t a, std::size_t b)
    {
        const Counts before = best_[b];
        Counts both = before;
        std::size_t ways = 1;
        for (std::size_t i = 0; i < both.size(); ++i) {
            both[i] += best_[a][i];
            ways = std::min(ways * static_cast<std::size_t>(both[i] + 1), most_ways_of_two + 1);
        }
        if (ways > most_ways_of_two) return false;
        for (Counts to_b(both.size(), 0); next(to_b, both);) {
            if (total(to_b) < total(both) && becomes(a, b, before - to_b)) return true;
        }
        return false;
    }

    bool exchange_between(std::size_t a, std::size_t b)
    {
        const Parts before = best_;
        if (a < b && becomes(a, b, before[b])) return true; // joined
        for (std::size_t i = 0; i < all_.size(); ++i) {
            for (int n = before[b][i]; n > 0; n /= 2) {
                Counts moved(all_.size(), 0);
                moved[i] = n;
                if (n < total(before[b]) && becomes(a, b, moved)) return true;
            }
            for (std::size_t j = 0; j < all_.size(); ++j) {
                if (j == i || before[b][i] == 0 || before[a][j] == 0) continue;
                Counts swapped(all_.size(), 0);
                swapped[i] = 1;
                swapped[j] = -1;
                if (becomes(a, b, swapped)) return true;
            }
        }
        return false;
    }

    // With `moved` taken from parcel b and put into parcel a.
    bool becomes(std::size_t a, std::size_t b, const Counts& moved)
    {
        if (!go_on()) return false;
        Parts parts = best_;
        for (std::size_t i = 0; i < all_.size(); ++i) {
            parts[a][i] += moved[i];
            parts[b][i] -= moved[i];
        }
        const ShareCost now = shares_.price(best_[a], a == 0).cost + shares_.price(best_[b], b == 0).cost;
        if (now.late == 0 && bound_.least(parts[a]) + bound_.least(parts[b]) >= now.minor) return false;
        if (total(parts[b]) == 0) parts.erase(parts.begin() + static_cast<std::ptrdiff_t>(b));
        return keep_if_cheaper(parts);
    }

    Shares& shares_;
    const SplitBound& bound_;
    const Stock& stock_;
    std::size_t most_priced_;
    Run& run_;
    Counts all_;
    std::int64_t least_;
    Parts best_;
    ShareCost cost_;
};

} // namespace

std::vector<Counts> cheaper_split(Shares& shares, const SplitBound& bound, const Stock& stock,
                                  const std::vector<Counts>& start, std::size_t most_priced, Run& run)
{
    return Search(shares, bound, stock, most_priced, run).find(start);
}

} // namespace stow::planning
