#include "core/planning/integer_program.h"

#include <coin/Cbc_C_Interface.h>

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <limits>
#include <memory>
#include <mutex>
#include <numeric>
#include <string>

namespace stow::planning {

namespace {

constexpr double fine_step = 10;                                 // the least step of the cost, as CBC is given it
constexpr double unbounded = std::numeric_limits<double>::max(); // as COIN-OR writes infinity

struct Free {
    void operator()(Cbc_Model* model) const { Cbc_deleteModel(model); }
};
using Model = std::unique_ptr<Cbc_Model, Free>;

double bound_of(double value)
{
    if (value >= std::numeric_limits<double>::infinity()) return unbounded;
    return value <= -std::numeric_limits<double>::infinity() ? -unbounded : value;
}

void load(Cbc_Model* model, const IntegerProgram& program, double scale)
{
    // Column by column, as CBC wants the matrix.
    const std::size_t columns = program.columns.size();
    std::vector<std::vector<std::pair<int, double>>> by_column(columns);
    std::vector<double> row_low, row_high;
    for (std::size_t r = 0; r < program.rows.size(); ++r) {
        for (const auto& [column, factor] : program.rows[r].terms) {
            by_column[static_cast<std::size_t>(column)].emplace_back(static_cast<int>(r), factor);
        }
        row_low.push_back(bound_of(program.rows[r].low));
        row_high.push_back(bound_of(program.rows[r].high));
    }
    std::vector<int> start{0}, index;
    std::vector<double> value, low, high, cost;
    for (std::size_t c = 0; c < columns; ++c) {
        for (const auto& [row, factor] : by_column[c]) {
            index.push_back(row);
            value.push_back(factor);
        }
        start.push_back(static_cast<int>(index.size()));
        low.push_back(bound_of(program.columns[c].low));
        high.push_back(bound_of(program.columns[c].high));
        cost.push_back(program.columns[c].cost * scale);
    }
    Cbc_loadProblem(model, static_cast<int>(columns), static_cast<int>(program.rows.size()), start.data(), index.data(),
                    value.data(), low.data(), high.data(), cost.data(), row_low.data(), row_high.data());
    for (std::size_t c = 0; c < columns; ++c) {
        if (program.columns[c].whole) Cbc_setInteger(model, static_cast<int>(c));
    }
}

} // namespace

ProgramAnswer solve(const IntegerProgram& program, const ProgramLimits& limits)
{
    static std::mutex one_at_a_time; // the library keeps state of its own; two at once disturb each other
    const std::lock_guard alone(one_at_a_time);
    const Model model(Cbc_newModel());
    Cbc_setParameter(model.get(), "log", "0");
    Cbc_setParameter(model.get(), "slog", "0");
    Cbc_setLogLevel(model.get(), 0);
    const double scale = program.least_step > 0 ? fine_step / program.least_step : 1;
    load(model.get(), program, scale);
    // Whole numbers only: CBC reads the others with whatever decimal mark the locale has.
    const auto set = [&](const char* name, double value) {
        Cbc_setParameter(model.get(), name, std::to_string(static_cast<std::int64_t>(value)).c_str());
    };
    Cbc_setParameter(model.get(), "preprocess", "off"); // costs more than it saves on programs of this size
    if (!program.start.empty()) {
        std::vector<int> columns(program.start.size());
        std::iota(columns.begin(), columns.end(), 0);
        Cbc_setMIPStartI(model.get(), static_cast<int>(columns.size()), columns.data(), program.start.data());
        Cbc_setParameter(model.get(), "feasibilityPump", "off"); // it looks for what is there already
    }
    if (limits.nodes > 0) set("maxNodes", limits.nodes);
    if (limits.gap * scale >= 1) set("allowableGap", limits.gap * scale);
    if (program.least_step > 0) set("increment", fine_step - 1);
    if (limits.time) set("sec", std::max(1.0, std::ceil(static_cast<double>(limits.time->count()) / 1000)));
    Cbc_solve(model.get());

    ProgramAnswer answer;
    if (Cbc_isProvenInfeasible(model.get()) != 0) return answer;
    answer.end = Cbc_isProvenOptimal(model.get()) != 0 ? ProgramAnswer::End::optimal : ProgramAnswer::End::stopped;
    answer.bound = Cbc_getBestPossibleObjValue(model.get()) / scale;
    const bool any_whole = std::any_of(program.columns.begin(), program.columns.end(),
                                       [](const IntegerProgram::Column& c) { return c.whole; });
    // Without whole columns there is no tree, whose best solution and bound the library could name.
    const bool linear = !any_whole && answer.end == ProgramAnswer::End::optimal;
    const double* best = linear ? Cbc_getColSolution(model.get()) : Cbc_bestSolution(model.get());
    if (best != nullptr) {
        answer.values.assign(best, best + Cbc_getNumCols(model.get()));
        answer.cost = Cbc_getObjValue(model.get()) / scale;
        if (linear) answer.bound = answer.cost;
    }
    return answer;
}

} // namespace stow::planning
