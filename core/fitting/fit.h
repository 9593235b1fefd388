// Finds the smallest outer that holds the items, and proves it where it can. Every arrangement that leaves here has
// passed the checker (check.h). Deterministic for a given question and work limit.
//
// When "cannot fit" is said, and how far it reaches:
//   geometry  edges, turns, volume, pairs, dual feasible functions: any set, any outer but tubes (bounds.h)
//   geometry  exhausted: up to 16 pieces without soft goods in cartons, gift boxes, board mailers and sleeves; upright
//             round goods as circles (exact.h). A sleeve with more than 64 possible thicknesses is searched in steps.
//   geometry  tubes: a single piece, two that must lie side by side, volume, rolls of one diameter (tube.h)
//   rules     the greatest load of the outer, and nothing else: where only support or top loads stand in the way the
//             answer is undecided.
// An item whose content does not go into its own outer is refused everywhere with the proof of that.
#pragma once

#include "core/fitting/answer.h"
#include "core/fitting/content.h"
#include "core/fitting/question.h"
#include "core/run/run.h"

#include <functional>

namespace stow::fitting {

// Solved questions remembered from earlier days; implemented by core/book, passed in by main. An answer found there is
// checked again before it is used.
class Memory {
public:
    virtual ~Memory() = default;
    virtual std::optional<Answer> recall(const Question& question) = 0;
    virtual void keep(const Question& question, const Answer& answer) = 0;
};

// Changes whenever an answer of the engine may change; remembered refusals of another version are not trusted.
inline constexpr int engine_version = 3;

Answer fit(const Question& question, Run& run, Memory* memory = nullptr);

// One outer only: does the set go into `question.outers[outer_index]`? `found_only` skips the exact search, so that an
// answer comes in about a millisecond and a refusal may be undecided.
enum class Effort { quick, proven };
Answer fit_one(const Question& question, std::size_t outer_index, Effort effort, Run& run);
// The same where the content of its items is known already, from a question that differs in the outers to choose from.
Answer fit_one(const Question& question, std::size_t outer_index, Effort effort, Run& run, Resolved content);

} // namespace stow::fitting
