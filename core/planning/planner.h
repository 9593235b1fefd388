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
    Date day{};
    Preference preference = Preference::smallest;
    std::map<shop::OrderId, shop::SupplyCode> outer_by_hand{}; // keyed by the parcel's first order
    // Search nodes for the question which outer is the smallest for one parcel, over all its outers together; 0: no
    // bound. Bounds the time in a way that is the same everywhere.
    std::uint64_t work_per_question = 50'000;
    bool prove = true; // false: first plans only, proofs to follow by `prove_day`
    fitting::Support support = fitting::Support::partial;
    enum class Slip { none, a5, a4 } slip = Slip::a4; // the packing slip's paper; it travels folded
    std::optional<TimeOfDay> ready_at{};         // when the parcels are closed; later than a cut-off: next collection
    std::vector<Used> reserved{};                // by parcels already planned and kept
    std::vector<shop::SetPart> reserved_goods{}; // a set stands for its parts
    // The outer each order (a parcel's first one) has in the plan that this one replaces: kept where nothing is lost.
    std::map<shop::OrderId, shop::SupplyCode> before{};
    bool first_part = true; // for plan_parcel: false for a later parcel of a split order, which carries no inserts
};

// Plans the orders given (checked ones, joined orders together), by promised day, then by id. All costs are in the
// currency of the house; prices of rate sheets in another one are quoted but never chosen. Orders that cannot go are
// listed with the reason.
DayPlan plan_day(const shop::Cupboard& cupboard, const std::vector<shop::HeldOrder>& orders,
                 const std::vector<postage::RateSheet>& sheets, const Wish& wish, Run& run,
                 fitting::Memory* memory = nullptr);

// One parcel of exactly these pieces, in the given outer if one is named.
tl::expected<ParcelPlan, StuckOrder>
plan_parcel(const shop::Cupboard& cupboard, const std::vector<shop::HeldOrder>& orders,
            const std::vector<shop::Piece>& pieces, const std::vector<postage::RateSheet>& sheets, const Wish& wish,
            const std::optional<shop::SupplyCode>& outer, Run& run, fitting::Memory* memory = nullptr);

// Goes on where a plan made without proofs stopped: decides the outers left undecided, parcel by parcel, and takes a
// smaller one where it turns out to hold. Tells each parcel as it is done; totals and shortages are kept right.
// Nothing: all done; otherwise why it ended early, the parcels told so far being final.
using OnParcel = std::function<void(std::size_t index, const ParcelPlan& parcel)>;
std::optional<Stop> prove_day(DayPlan& plan, const shop::Cupboard& cupboard, const std::vector<shop::HeldOrder>& orders,
                              const std::vector<postage::RateSheet>& sheets, const Wish& wish, Run& run,
                              const OnParcel& on_parcel = {}, fitting::Memory* memory = nullptr);

} // namespace stow::planning
