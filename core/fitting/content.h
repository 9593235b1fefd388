// Items packed in an outer of their own: their content is fitted first, then they are an upright block with a weight.
#pragma once

#include "core/fitting/answer.h"
#include "core/fitting/question.h"
#include "core/run/run.h"

namespace stow::fitting {

struct Resolved {
    Question question;                           // its items have shape and weight, none has content
    std::vector<std::vector<Placement>> content; // one an item, empty for items without
    std::optional<Refusal> refusal;              // the content of `refusal->item` was not fitted into its outer
};

// Depends on the items, gap, lining, bed, support and the outers that items name; not on the other outers.
Resolved resolve_content(const Question& question, Run& run);

} // namespace stow::fitting
