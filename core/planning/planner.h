// Orders and cupboard to a plan: wrapping, inserts, candidates, outer, filler, weight, service, split.
#pragma once

#include "core/fitting/fit.h"
#include "core/planning/plan.h"
#include "core/run/run.h"
#include "core/shop/cupboard.h"

#include <functional>
#include <map>
#include <optional>
#include <tl/expected.hpp>

namespace stow::planning {

struct Wish {
    Date day;
    Preference preference = Preference::smallest;
    std::map<shop::OrderId, shop::SupplyCode> outer_by_hand; // keyed by the parcel's first order
    std::uint64_t work_per_question = 200'000; // search nodes; bounds the time in a way that is the same everywhere
    bool prove = true;                         // false: first plans only, proofs to follow by `prove`
};

// Plans the orders given (checked ones, joined orders together). Orders that cannot go are listed with the reason.
DayPlan plan_day(const shop::Cupboard& cupboard, const std::vector<shop::HeldOrder>& orders,
                 const std::vector<postage::RateSheet>& sheets, const Wish& wish, Run& run,
                 fitting::Memory* memory = nullptr);

// One parcel of exactly these pieces, in the given outer if one is named.
tl::expected<ParcelPlan, StuckOrder>
plan_parcel(const shop::Cupboard& cupboard, const std::vector<shop::HeldOrder>& orders,
            const std::vector<shop::Piece>& pieces, const std::vector<postage::RateSheet>& sheets, const Wish& wish,
            const std::optional<shop::SupplyCode>& outer, Run& run, fitting::Memory* memory = nullptr);

} // namespace stow::planning
