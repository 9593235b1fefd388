#include "core/planning/sharing_program.h"

#include "core/planning/integer_program.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <tuple>

namespace stow::planning {

namespace {

constexpr int most_nodes = 2'000;    // of one step, of a few orders
constexpr int few_nodes = 20;        // of many
constexpr double widest = 1'000'000; // sum of levels solved at once: far within what a double tells apart
constexpr std::size_t levels = std::tuple_size_v<Levels>;
constexpr double infinite = std::numeric_limits<double>::infinity();

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

    Shared solve(const Ways& start, std::size_t last, int nodes, Run& run)
    {
        Shared best{start, merit_of(sharing_, start)};
        by_steps(last, [&](const Step& step) {
            begin_with(best.ways);
            const ProgramAnswer answer = solved(nodes, run);
            take(answer, best);
            if (answer.end == ProgramAnswer::End::optimal) return value(step, best.ways);
            best.behind = behind(step, best, answer.bound);
            return ended;
        });
        if (best.behind == Levels{} && last + 1 < levels) best.behind = behind(Step{last + 1, last + 1, {}}, best, 0);
        return best;
    }

    // The same with parts of ways allowed, which no ways that keep the limits undercut.
    Levels behind_at_most(const Shared& found, Run& run)
    {
        for (auto& column : program_.columns) column.whole = false;
        Levels apart{};
        by_steps(levels - 1, [&](const Step& step) {
            const ProgramAnswer answer = solved(few_nodes, run);
            const double own = value(step, found.ways);
            if (answer.end == ProgramAnswer::End::optimal && whole_above(answer.bound) >= own) return own;
            apart = behind(step, found, answer.end == ProgramAnswer::End::optimal ? answer.bound : 0);
            return ended;
        });
        return apart;
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

    struct Step { // levels looked at together, as one number: each weighs more than all that follow
        std::size_t from = 0, until = 0;
        std::array<double, levels> weight{};
    };
    static constexpr double ended = -1;

    // As far as the step of the level `last`. `work` gives the value to hold from this step on, or `ended`.
    template <class Work>
    void by_steps(std::size_t last, Work&& work)
    {
        for (const auto& order : sharing_.orders) least_.push_back(least_levels(order));
        const auto reach = reach_of_levels();
        Step step;
        for (; step.from <= last; step.from = step.until) {
            double width = 1;
            step.until = step.from;
            while (step.until <= last && (step.until == step.from || width * reach[step.until] <= widest))
                width *= reach[step.until++];
            if (width <= 1) continue;
            step.weight = {};
            double unit = 1;
            for (std::size_t k = step.until; k-- > step.from; unit *= reach[k]) step.weight[k] = unit;
            set_costs(step);
            const double held = work(step);
            if (held == ended) return;
            hold(held);
        }
    }

    double cost_of(const Step& step, std::size_t order, const Way& way) const
    {
        double cost = 0;
        const Levels own = levels_of(way.merit);
        for (std::size_t k = step.from; k < step.until; ++k)
            cost += step.weight[k] * static_cast<double>(own[k] - least_[order][k]); // only differences matter
        return cost;
    }

    void set_costs(const Step& step)
    {
        for (auto& column : program_.columns) column.cost = 0;
        for (std::size_t c = 0; c < columns_.size(); ++c) {
            program_.columns[c].cost = cost_of(step, columns_[c].order, way(c));
        }
        for (const int over : over_of_) {
            if (over >= 0) program_.columns[static_cast<std::size_t>(over)].cost = step.weight[over_level];
        }
        program_.least_step = 1;
    }

    double value(const Step& step, const Ways& ways) const
    {
        double sum = step.weight[over_level] * static_cast<double>(merit_of(sharing_, ways).over);
        for (std::size_t o = 0; o < ways.size(); ++o) sum += cost_of(step, o, sharing_.orders[o][ways[o]]);
        return sum;
    }

    void hold(double value)
    {
        IntegerProgram::Row held{{}, -infinite, value + 0.5};
        for (std::size_t c = 0; c < program_.columns.size(); ++c) {
            if (program_.columns[c].cost != 0) held.terms.emplace_back(static_cast<int>(c), program_.columns[c].cost);
        }
        program_.rows.push_back(std::move(held));
    }

    ProgramAnswer solved(int nodes, Run& run) const
    {
        (void)run.go_on(256);
        if (!run.stopped()) return planning::solve(program_, {nodes, 0, run.time_left()});
        ProgramAnswer nothing;
        nothing.end = ProgramAnswer::End::stopped;
        return nothing;
    }

    void begin_with(const Ways& ways)
    {
        program_.start.assign(program_.columns.size(), 0);
        for (std::size_t c = 0; c < columns_.size(); ++c) {
            if (ways[columns_[c].order] == columns_[c].way) program_.start[c] = 1;
        }
        const auto needed = amounts_needed(sharing_, ways);
        for (std::size_t l = 0; l < over_of_.size(); ++l) {
            if (over_of_[l] < 0) continue;
            const std::int64_t over = std::max<std::int64_t>(needed[l] - sharing_.limits[l].left, 0);
            program_.start[static_cast<std::size_t>(over_of_[l])] = static_cast<double>(over);
        }
    }

    // What CBC rounded is judged in whole numbers.
    void take(const ProgramAnswer& answer, Shared& best) const
    {
        if (answer.values.empty()) return;
        Ways ways(sharing_.orders.size(), 0);
        for (std::size_t c = 0; c < columns_.size(); ++c) {
            if (answer.values[c] > 0.5) ways[columns_[c].order] = columns_[c].way;
        }
        const Merit merit = merit_of(sharing_, ways);
        if (!keeps_limits(sharing_, ways) || !(merit < best.merit)) return;
        best.ways = std::move(ways);
        best.merit = merit;
    }

    // The least whole number that is no less, the rounding of doubles allowed for.
    static double whole_above(double bound) { return std::ceil(bound - 1e-3 - 1e-7 * std::abs(bound)); }

    // In this step the bound told apart into its levels; of later ones each order's own least.
    Levels behind(const Step& step, const Shared& found, double bound) const
    {
        Levels apart = levels_of(found.merit);
        for (const Levels& own : least_) apart = apart - own;
        std::fill(apart.begin(), apart.begin() + static_cast<std::ptrdiff_t>(step.from), 0);
        double rest = std::clamp(whole_above(bound), 0.0, value(step, found.ways));
        for (std::size_t k = step.from; k < step.until; ++k) {
            const double digit = std::floor(rest / step.weight[k]);
            rest -= digit * step.weight[k];
            apart[k] -= static_cast<std::int64_t>(digit);
        }
        return apart;
    }

    const Sharing& sharing_;
    IntegerProgram program_;
    std::vector<Column> columns_;
    std::vector<Levels> least_; // of each order, level by level
    std::vector<int> over_of_;  // column of what a limit is exceeded by; -1: firm, or no way needs it
};

} // namespace

Shared share_by_program(const Sharing& sharing, Run& run)
{
    return Program(sharing).solve(one_by_one(sharing), levels - 1, most_nodes, run);
}

Shared share_by_wish(const Sharing& sharing, const Ways& start, Run& run)
{
    return Program(sharing).solve(start, wish_level, few_nodes, run);
}

Levels behind_at_most(const Sharing& sharing, const Shared& found, Run& run)
{
    return Program(sharing).behind_at_most(found, run);
}

} // namespace stow::planning
