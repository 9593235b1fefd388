// The reorder list, grouped by supplier, and the making list: what, how many are there, how many are wanted.
#pragma once

#include "core/papers/reprint.h"
#include "core/papers/text.h"
#include "core/papers/words.h"

#include <optional>
#include <string>
#include <vector>

namespace stow::papers {

struct NeedList {
    enum class Kind { reorder, making } kind = Kind::reorder;
    Date day;
    struct Line {
        std::string name, code, detail; // detail: pack size, shelf, what it is short for
        std::string on_hand, wanted;    // with their unit
    };
    struct Group {
        std::string heading; // the supplier; empty: none
        std::vector<Line> lines;
    };
    std::vector<Group> groups;
    std::optional<Reprint> reprint{};
};

Document lay_out(const NeedList& list, const Blank& blank, const Words& words, const TextMeasure& measure);

} // namespace stow::papers
