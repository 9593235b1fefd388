// Sharing out what there is not enough of: each order has ways to be packed, each way needs some of what is limited,
// and the sum of all merits is to be the least. Pure numbers: no shop in here.
#pragma once

#include "core/planning/merit.h"
#include "core/run/run.h"

#include <optional>
#include <vector>

namespace stow::planning {

struct Need { // of one limit
    std::size_t limit = 0;
    std::int64_t amount = 0; // above 0
};
struct Way {
    Merit merit;
    std::vector<Need> needs; // one a limit at most
};
struct Limit {
    std::int64_t left = 0;
    bool firm = true; // otherwise more may be used, and counts as `over` in the merit of the whole
};
struct Sharing {
    std::vector<std::vector<Way>> orders; // the best way first; one way of each needs nothing firm, or it has none
    std::vector<Limit> limits;
};

using Ways = std::vector<std::size_t>; // one of each order

// Of an order's ways each level by itself: no way has less of any.
Levels least_levels(const std::vector<Way>& order);
// Of each limit, by these ways.
std::vector<std::int64_t> amounts_needed(const Sharing& sharing, const Ways& ways);
// Of these ways together, with what they use beyond the limits that are not firm.
Merit merit_of(const Sharing& sharing, const Ways& ways);
// No firm limit is broken.
bool keeps_limits(const Sharing& sharing, const Ways& ways);

// Each order in its turn takes the best that is left.
Ways one_by_one(const Sharing& sharing);

struct Shared {
    Ways ways;
    Merit merit;
    Levels behind{};            // nothing that exists has less than `merit` by more than this, level before level
    std::vector<bool> scarce{}; // the limits that came into it
    bool proven() const { return behind == Levels{}; } // nothing better exists
};
// All orders together. Limits that nobody exceeds drop out, and orders that share no scarce thing are shared out apart.
// Where only pieces are scarce each part is a flow (assignment.h), exact in whole numbers; where filler runs short a
// small part is an integer program, level of the merit by level, and a large one is priced, with its gap. Never worse
// than `one_by_one`, and the same when nothing is scarce.
// `start`: a good answer that keeps the limits, of a question much like this one; then less is tried, only to better
// it.
Shared share_out(const Sharing& sharing, Run& run, const Ways* start = nullptr);

} // namespace stow::planning
