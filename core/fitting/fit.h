// Finds the smallest outer that holds the items, and proves it where it can. Every arrangement that leaves here has
// passed the checker (check.h). Deterministic for a given question and work limit.
#pragma once

#include "core/fitting/answer.h"
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
inline constexpr int engine_version = 1;

Answer fit(const Question& question, Run& run, Memory* memory = nullptr);

// One outer only: does the set go into `question.outers[outer_index]`? `found_only` skips the exact search, so that an
// answer comes in about a millisecond and a refusal may be undecided.
enum class Effort { quick, proven };
Answer fit_one(const Question& question, std::size_t outer_index, Effort effort, Run& run);

} // namespace stow::fitting
