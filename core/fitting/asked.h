// Questions answered earlier in the same planning: many orders of a day are alike, and each way to share a day out asks
// again. Equal questions have equal answers, so nothing is checked anew.
#pragma once

#include "core/fitting/answer.h"

#include <unordered_map>

namespace stow::fitting {

class Asked {
public:
    const Answer* recall(const Question& question) const; // nothing: not asked yet
    void keep(const Question& question, const Answer& answer);

private:
    struct Hash {
        std::size_t operator()(const Question& question) const;
    };
    std::unordered_map<Question, Answer, Hash> answers_;
};

} // namespace stow::fitting
