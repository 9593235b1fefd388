// What accepted weighings teach, kept as lessons: what is believed of a weight follows from the estimate she entered
// and the lessons since, so taking back a weighing takes back what it taught.
#pragma once

#include "core/shop/cupboard.h"
#include "core/weighing/learning.h"

#include <compare>
#include <map>

namespace stow::weighing {

struct Lesson {
    struct Taught {
        std::string code;
        bool supply = false;
        int count = 1;
        std::int64_t thousandths = 1000; // of one: 1.4 litres of filler are one of 1400
        shop::WeightEstimate entered;    // of one, as she had entered it then
        friend bool operator==(const Taught&, const Taught&) = default;
    };
    std::vector<Taught> things;
    Expected rest; // all else in the parcel, and the scale's step
    Weight reading;
    friend bool operator==(const Lesson&, const Lesson&) = default;
};

// So many lessons at most are looked back on: batches change, and a book grows for years.
constexpr std::size_t lessons_kept = 2000;

// Fills in what is learnt of goods and supplies, lessons oldest first. Lessons about an estimate that she has entered
// anew since teach nothing about it. What was learnt from fewer than three pieces is not shown yet.
void teach(shop::Cupboard& cupboard, const std::vector<Lesson>& lessons);

} // namespace stow::weighing
