// A parcel plan as a JSON document and back, complete and exact: what the shop book stores as a snapshot.
#pragma once

#include "core/planning/plan.h"

#include <string>
#include <string_view>
#include <tl/expected.hpp>

namespace stow::intake {

inline constexpr int plan_version = 1; // of the document

std::string plan_to_json(const planning::ParcelPlan& plan);
// A reason in words of the JSON library where the document is not a plan; a later version is refused.
tl::expected<planning::ParcelPlan, std::string> plan_from_json(std::string_view document);

} // namespace stow::intake
