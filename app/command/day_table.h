// The plan of a day as a table for people, and as one JSON document for scripts.
#pragma once

#include "core/planning/plan.h"
#include "core/shop/cupboard.h"
#include "core/shop/orders.h"

#include <nlohmann/json_fwd.hpp>

#include <chrono>
#include <iosfwd>
#include <optional>
#include <string>
#include <vector>

namespace stow::command {

// How long planning took, for the JSON document.
struct Timing {
    std::chrono::duration<double, std::milli> all_verified{}; // until every order had a checked parcel
    std::chrono::duration<double, std::milli> all_proven{};   // until the proofs ended
    std::vector<double> parcel_ms;                            // of proving each parcel
};

// numbers: of the stored parcels, in the plan's order; empty where nothing was stored.
void print_day(std::ostream& out, const planning::DayPlan& plan, const std::vector<shop::HeldOrder>& orders,
               const shop::Cupboard& cupboard, const std::vector<std::string>& numbers);

nlohmann::json day_json(const planning::DayPlan& plan, const std::vector<shop::HeldOrder>& orders,
                        const std::vector<std::string>& numbers, const std::optional<Timing>& timing);

} // namespace stow::command
