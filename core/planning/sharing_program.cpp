#include "core/planning/sharing_program.h"

#include "core/planning/integer_program.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

namespace stow::planning {

namespace {

constexpr int most_nodes = 2'000;    // of one level
constexpr double widest = 1'000'000; // sum of levels solved at once: far within what a double tells apart
constexpr std::size_t over_level = 3, wish_level = 4, levels = 9;
constexpr double infinite = std::numeric_limits<double>::infinity();

std::array<std::int64_t, levels> levels_of(const Merit& m)
{
    return {m.left_out, m.no_service, m.late, m.over, m.wishes[0], m.wishes[1], m.wishes[2], m.moved, m.turn};
}

class Program {
public:
    explicit Program(const Sharing& sharing) : sharing_(sharing)
    {
        for (std::size_t o = 0; o < sharing.orders.size(); ++o) {
            IntegerProgram::Row one{{}, 1, 1};
            for (std::size_t w = 0; w < sharing.orders[o].size(); ++w) {
                if (dominated(o, w)) continue;
                one.terms.emplace_back(static_cast<int>(columns_.size()), 1);
                columns_.push_back({o, w});
            }
            program_.rows.push_back(std::move(one));
        }
        program_.columns.resize(columns_.size());
        over_of_.assign(sharing.limits.size(), -1);
        for (std::size_t l = 0; l < sharing.limits.size(); ++l) add_limit(l);
    }

    Shared solve(Run& run)
    {
        Shared best;
        best.ways = one_by_one(sharing_);
        best.merit = merit_of(sharing_, best.ways);
        const auto reach = reach_of_levels();
        for (std::size_t from = 0; from < levels;) {
            std::size_t until = from;
            double width = 1;
            while (until < levels && (until == from || width * reach[until] <= widest)) width *= reach[until++];
            if (width > 1 && !solve_levels(from, until, reach, run, best)) return best;
            from = until;
        }
        return best;
    }

private:
    struct Column {
        std::size_t order = 0, way = 0;
    };

    bool dominated(std::size_t order, std::size_t way) const
    {
        const auto& ways = sharing_.orders[order];
        const auto needs_no_more = [](const Way& a, const Way& b) {
            return std::all_of(a.needs.begin(), a.needs.end(), [&](const Need& need) {
                return std::any_of(b.needs.begin(), b.needs.end(), [&](const Need& other) {
                    return other.limit == need.limit && other.amount >= need.amount;
                });
            });
        };
        for (std::size_t w = 0; w < ways.size(); ++w) {
            if (w == way || !needs_no_more(ways[w], ways[way])) continue;
            const bool as_good = levels_of(ways[w].merit) <= levels_of(ways[way].merit);
            const bool alike =
                needs_no_more(ways[way], ways[w]) && levels_of(ways[w].merit) == levels_of(ways[way].merit);
            if (as_good && (!alike || w < way)) return true;
        }
        return false;
    }

    void add_limit(std::size_t l)
    {
        IntegerProgram::Row row{{}, -infinite, static_cast<double>(sharing_.limits[l].left)};
        double most = 0;
        for (std::size_t c = 0; c < columns_.size(); ++c) {
            for (const Need& need : way(c).needs) {
                if (need.limit != l) continue;
                row.terms.emplace_back(static_cast<int>(c), static_cast<double>(need.amount));
                most += static_cast<double>(need.amount);
            }
        }
        if (row.terms.empty()) return;
        if (sharing_.limits[l].firm) {
            row.high = std::max(row.high, 0.0);
        } else {
            over_of_[l] = static_cast<int>(program_.columns.size());
            program_.columns.push_back({0, 0, most + std::max(0.0, -row.high), false});
            row.terms.emplace_back(over_of_[l], -1);
        }
        program_.rows.push_back(std::move(row));
    }

    const Way& way(std::size_t column) const { return sharing_.orders[columns_[column].order][columns_[column].way]; }

    // By how much each level can differ between two choices, and one more.
    std::array<double, levels> reach_of_levels() const
    {
        std::array<double, levels> reach{};
        reach.fill(1);
        for (const auto& order : sharing_.orders) {
            for (std::size_t k = 0; k < levels; ++k) {
                const auto [least, most] =
                    std::minmax_element(order.begin(), order.end(), [k](const Way& a, const Way& b) {
                        return levels_of(a.merit)[k] < levels_of(b.merit)[k];
                    });
                reach[k] += static_cast<double>(levels_of(most->merit)[k] - levels_of(least->merit)[k]);
            }
        }
        for (const int over : over_of_) {
            if (over >= 0) reach[over_level] += program_.columns[static_cast<std::size_t>(over)].high;
        }
        return reach;
    }

    // False: ended early, `best` says so.
    bool solve_levels(std::size_t from, std::size_t until, const std::array<double, levels>& reach, Run& run,
                      Shared& best)
    {
        std::array<double, levels> weight{};
        double unit = 1;
        for (std::size_t k = until; k-- > from; unit *= reach[k]) weight[k] = unit;
        std::vector<std::array<std::int64_t, levels>> least; // of each order: only differences matter
        for (const auto& order : sharing_.orders) {
            least.push_back(levels_of(order.front().merit));
            for (const Way& w : order) {
                const auto own = levels_of(w.merit);
                for (std::size_t k = 0; k < levels; ++k) least.back()[k] = std::min(least.back()[k], own[k]);
            }
        }
        const auto cost_of = [&](std::size_t order, const Way& w) {
            double cost = 0;
            const auto own = levels_of(w.merit);
            for (std::size_t k = from; k < until; ++k)
                cost += weight[k] * static_cast<double>(own[k] - least[order][k]);
            return cost;
        };
        for (auto& column : program_.columns) column.cost = 0;
        for (std::size_t c = 0; c < columns_.size(); ++c) program_.columns[c].cost = cost_of(columns_[c].order, way(c));
        for (const int over : over_of_) {
            if (over >= 0) program_.columns[static_cast<std::size_t>(over)].cost = weight[over_level];
        }
        program_.least_step = 1;
        const auto value = [&](const Ways& ways) {
            double sum = weight[over_level] * static_cast<double>(merit_of(sharing_, ways).over);
            for (std::size_t o = 0; o < ways.size(); ++o) sum += cost_of(o, sharing_.orders[o][ways[o]]);
            return sum;
        };

        (void)run.go_on(256);
        ProgramAnswer answer;
        if (!run.stopped()) {
            const ProgramLimits limits{most_nodes, 0, run.time_left()};
            answer = planning::solve(program_, limits);
        } else {
            answer.end = ProgramAnswer::End::stopped;
        }
        if (!answer.values.empty()) {
            Ways ways(sharing_.orders.size(), 0);
            for (std::size_t c = 0; c < columns_.size(); ++c) {
                if (answer.values[c] > 0.5) ways[columns_[c].order] = columns_[c].way;
            }
            // What CBC rounded is judged in whole numbers.
            const Merit merit = merit_of(sharing_, ways);
            if (keeps_limits(sharing_, ways) && merit < best.merit) {
                best.ways = std::move(ways);
                best.merit = merit;
            }
        }
        const double found = value(best.ways);
        if (answer.end != ProgramAnswer::End::optimal) {
            best.proven = false;
            if (from == wish_level && until == from + 1 && best.merit.wishes[0] > 0 && !answer.values.empty()) {
                const double gap = std::max(0.0, found - answer.bound);
                best.gap_permille = static_cast<int>(std::ceil(gap * 1000 / static_cast<double>(best.merit.wishes[0])));
            }
            return false;
        }
        IntegerProgram::Row held{{}, -infinite, found + 0.5};
        for (std::size_t c = 0; c < program_.columns.size(); ++c) {
            if (program_.columns[c].cost != 0) held.terms.emplace_back(static_cast<int>(c), program_.columns[c].cost);
        }
        program_.rows.push_back(std::move(held));
        return true;
    }

    const Sharing& sharing_;
    IntegerProgram program_;
    std::vector<Column> columns_;
    std::vector<int> over_of_; // column of what a limit is exceeded by; -1: firm, or no way needs it
};

} // namespace

Shared share_by_program(const Sharing& sharing, Run& run)
{
    return Program(sharing).solve(run);
}

} // namespace stow::planning
