// What a file gave: the sound rows as values, and what is wrong with the others, by place.
#pragma once

#include "core/intake/problem.h"

#include <vector>

namespace stow::intake {

template <class T>
struct Taken {
    std::vector<T> rows;
    std::vector<Problem> problems; // in the order of the file
};

} // namespace stow::intake
