// Planning the day from the book and back into it, in three parts so that the middle one can run on another thread.
#pragma once

#include "app/day.h"
#include "core/book/orders.h"
#include "core/book/parcels.h"
#include "core/planning/planner.h"

#include <variant>

namespace stow {

// Values only: nothing here refers to the book.
struct PlanInput {
    shop::Cupboard cupboard;
    std::vector<shop::HeldOrder> orders;
    std::vector<postage::RateSheet> rate_sheets;
    planning::Wish wish; // with what kept parcels have reserved
};

// Everything that is checked and in no kept parcel.
PlanInput gather(const Day& day, planning::Preference preference);

// Puts the plan in place of the planned, unlocked parcels of its orders. Gives the new parcels in the plan's order.
tl::expected<std::vector<shop::ParcelId>, book::Refused> store(Day& day, const PlanInput& input,
                                                               const planning::DayPlan& plan);

// The orders that the last stored plan could not send, with the reason; those that wait no longer are left out.
std::vector<planning::StuckOrder> still_stuck(const Day& day);

// What sharing out the day came to when the last plan was stored.
planning::DaySharing last_sharing(const Day& day);

// The same for one parcel and its own pieces.
struct ParcelInput {
    shop::Cupboard cupboard;
    std::vector<shop::HeldOrder> orders;
    std::vector<shop::Piece> pieces;
    std::vector<postage::RateSheet> rate_sheets;
    planning::Wish wish;
    int part = 1, parts = 1;
};
std::optional<ParcelInput> gather(const Day& day, shop::ParcelId parcel); // nothing: there is no such parcel
// In the outer named, or the best that is on hand. Nothing is stored.
tl::expected<planning::ParcelPlan, planning::StuckOrder> plan(const ParcelInput& input,
                                                              const std::optional<shop::SupplyCode>& outer, Run& run,
                                                              fitting::Memory* memory = nullptr);

// Why a parcel could not be planned anew.
using NotRepacked = std::variant<planning::StuckOrder, book::Refused>;

// The parcel's own pieces in another outer: the best that is on hand, or the one named, which is kept then. Not once it
// is packed.
tl::expected<planning::ParcelPlan, NotRepacked> repack(Day& day, shop::ParcelId parcel,
                                                       const std::optional<shop::SupplyCode>& outer, Run& run,
                                                       fitting::Memory* memory = nullptr);

} // namespace stow
