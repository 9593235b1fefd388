// The one judge of arrangements, apart from every search: states each broken rule as data. Definitions: DEVELOPERS.md,
// "When an arrangement is valid". Lengths, areas and loads are exact integers; only the contact of a round base (its
// inscribed 64-gon) is measured in floating point, with one part in a million of grace.
//   Sleeves   coordinates count from a corner of the block around the contents; round goods count as their blocks.
//   Tubes     z runs along the tube and at (0, 0) stands the corner of the square around its section; there is no
//             support and no load on top in a tube.
//   Contact   of the bodies themselves, not the enlarged ones: one gap apart and one above the other.
#pragma once

#include "core/fitting/answer.h"
#include "core/fitting/question.h"

#include <string>
#include <string_view>
#include <vector>

namespace stow::fitting {

enum class Rule { complete, inside, apart, turned, load, supported, overloaded, sleeve, tube, known_outer };
std::string_view name_of(Rule rule);

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
