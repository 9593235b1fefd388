// Which print of a paper this is. The first says nothing; every later one says which it is and when it was made, so
// that two papers of one thing are told apart.
#pragma once

#include "core/measure/date.h"

namespace stow::papers {

struct Reprint {
    int print = 2; // from 2 on
    Date day;
    TimeOfDay time{};
    friend bool operator==(const Reprint&, const Reprint&) = default;
};

} // namespace stow::papers
