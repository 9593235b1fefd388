#include "core/shop/parcels.h"

#include "core/shop/word_list.h"

namespace stow::shop {

namespace {

constexpr WordList<ParcelState, 6> states{{{ParcelState::planned, "planned"},
                                           {ParcelState::picked, "picked"},
                                           {ParcelState::packed, "packed"},
                                           {ParcelState::labelled, "labelled"},
                                           {ParcelState::handed_over, "handed over"},
                                           {ParcelState::came_back, "came back"}}};

constexpr WordList<WeighingStage, 3> stages{
    {{WeighingStage::contents, "contents"}, {WeighingStage::closed, "closed"}, {WeighingStage::labelled, "labelled"}}};

} // namespace

std::string_view name_of(ParcelState state)
{
    return word_for(states, state);
}

std::optional<ParcelState> parcel_state(std::string_view name)
{
    return value_of(states, name);
}

std::string_view name_of(WeighingStage stage)
{
    return word_for(stages, stage);
}

std::optional<WeighingStage> weighing_stage(std::string_view name)
{
    return value_of(stages, name);
}

} // namespace stow::shop
