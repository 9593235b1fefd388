// A mixed integer program, solved by CBC: silent, on one thread, bounded by nodes, so that it is the same everywhere.
#pragma once

#include <chrono>
#include <optional>
#include <utility>
#include <vector>

namespace stow::planning {

struct IntegerProgram { // the least cost is sought
    struct Column {
        double cost = 0, low = 0, high = 1;
        bool whole = true;
    };
    struct Row {
        std::vector<std::pair<int, double>> terms; // column and factor
        double low = 0, high = 0;
    };
    std::vector<Column> columns;
    std::vector<Row> rows;
    std::vector<double> start; // values of the columns to begin with, which keep all rows; may be empty
    double least_step = 0;     // no two costs that matter lie nearer to each other; 0: unknown
};

struct ProgramLimits {
    int nodes = 0;                                   // 0: no bound
    double gap = 0;                                  // of the cost, that need not be closed
    std::optional<std::chrono::milliseconds> time{}; // safety stop, to the second; answers may then differ
};

struct ProgramAnswer {
    enum class End { optimal, stopped, infeasible } end = End::infeasible;
    std::vector<double> values; // of the columns; empty: none found
    double cost = 0;
    double bound = 0; // no solution costs less
};

ProgramAnswer solve(const IntegerProgram& program, const ProgramLimits& limits);

} // namespace stow::planning
