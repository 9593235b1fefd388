// What may be said of a part of a rate sheet besides its name and amount, one value a word: "length" 140–240. For eye
// and hand a span has a dash and a list commas; kept are the phrases of the file (rate_sheet_csv.h).
#pragma once

#include "core/intake/rate_grid.h"

#include <string>
#include <string_view>
#include <vector>

namespace stow::intake {

struct PartWord {
    enum class Says {
        alone,   // "tracked": said or not
        one,     // "cover 100"
        range,   // "days 2–4"
        limit,   // "length 140–240"; "length 140–": at least; "length 240": at most
        several, // "cut-off 16:30, Sat 12:00": a phrase each
        places   // without a word before them: "DK, SE 62"
    };
    std::string_view word;
    Says says = Says::one;
};

// In the order in which they are asked. None: a record that is no part.
const std::vector<PartWord>& part_words(std::string_view record);

// A value for each of part_words; of a word alone the word. What begins with none of the words is left out.
std::vector<std::string> part_values(std::string_view record, std::string_view details);
std::string part_details(std::string_view record, const std::vector<std::string>& values);

} // namespace stow::intake
