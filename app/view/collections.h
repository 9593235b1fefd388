// When couriers come today: from the cut-off times of the rate sheets that are valid.
#pragma once

#include "app/day.h"

#include <optional>
#include <string>
#include <vector>

namespace stow::view {

struct Collection {
    std::string carrier;
    std::optional<TimeOfDay> at; // nothing: no time in the sheet, or not today
    friend bool operator==(const Collection&, const Collection&) = default;
};

// One a carrier, in the order of the sheets. Of several services' times the first that is still to come counts, else
// the last of the day.
std::vector<Collection> collections(const Day& day);

} // namespace stow::view
