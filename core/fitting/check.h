// The one judge of arrangements, apart from every search: states each broken rule as data. Definitions: DEVELOPERS.md,
// "When an arrangement is valid".
#pragma once

#include "core/fitting/answer.h"
#include "core/fitting/question.h"

#include <string>
#include <vector>

namespace stow::fitting {

enum class Rule { complete, inside, apart, turned, load, supported, overloaded, sleeve, tube, known_outer };

struct Violation {
    Rule rule;
    std::string item;  // "bottle 2": item and copy
    std::string other; // the second item, for `apart`
    Length by;         // how far the rule is missed, where a length says it
};

// Empty when `placements` hold all items of the question in the outer, with the carton cut to `cut_height` if given.
std::vector<Violation> check(const Question& question, const std::string& outer, std::optional<Length> cut_height,
                             const std::vector<Placement>& placements);

} // namespace stow::fitting
