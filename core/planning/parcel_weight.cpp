#include "core/planning/parcel_weight.h"

#include "core/planning/scene.h"

namespace stow::planning {

namespace {

shop::WeightEstimate expected_at(const ParcelPlan& plan, const shop::Cupboard& cupboard, shop::WeighingStage stage)
{
    std::vector<weighing::Share> shares;
    for (const weighing::Thing& thing : things_in(plan, cupboard, stage)) shares.push_back(thing.share);
    return weighing::expected_weight(shares, circumstances(cupboard));
}

} // namespace

void weigh(ParcelPlan& plan, const shop::Cupboard& cupboard)
{
    plan.contents_weight = expected_at(plan, cupboard, shop::WeighingStage::contents);
    plan.weight = expected_at(plan, cupboard, shop::WeighingStage::labelled);
}

} // namespace stow::planning
