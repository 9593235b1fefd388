// Small charts in the hand of our papers: columns of what was, and a curve of what would be. The axis begins at zero.
#pragma once

#include "core/papers/display_list.h"
#include "core/papers/text.h"

#include <string>
#include <vector>

namespace stow::papers {

struct Chart {
    enum class Kind { columns, curve } kind = Kind::columns;
    struct Value {
        double value = 0;         // not below zero
        std::string label, words; // beneath the axis; at the value
        bool marked = false;      // picked out, and always labelled
    };
    std::vector<Value> values;
};

// Fills `extent`. Labels that would run into another are left out: the first, the last and marked ones go first.
DisplayList draw(const Chart& chart, Extent extent, const TextMeasure& measure);

} // namespace stow::papers
