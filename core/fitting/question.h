// One packing question: do these items go into one of these outers, and which is the smallest?
#pragma once

#include "core/measure/quantity.h"
#include "core/measure/shape.h"

#include <optional>
#include <string>
#include <vector>

namespace stow::fitting {

struct Item {
    std::string id{};
    int count = 1;
    Shape shape{};   // its wrapped size
    Weight weight{}; // of one piece
    Turns turns{};
    std::optional<Weight> top_load{}; // what one piece may carry; nothing: unlimited, or 0 if fragile
    bool fragile = false;
    // Set for an item that is packed in an outer of its own first: its content, and that outer's id. `shape` and
    // `weight` are then worked out (outer size plus bow on top; tare plus content), it stands upright.
    std::vector<Item> content{};
    std::string packed_in{};
    Length bow{};
    friend bool operator==(const Item&, const Item&) = default;
};

struct Outer {
    std::string id{};
    OuterForm form{};
    Weight tare{};
    std::optional<Weight> max_load{};
    friend bool operator==(const Outer&, const Outer&) = default;
};

enum class Support { none, partial, full };

struct Question {
    std::vector<Item> items{};
    std::vector<Outer> outers{};
    Length gap{};    // cushion between any two items
    Length lining{}; // kept free on all six sides (cartons, board mailers, gift boxes)
    Length bed{};    // firm bed under the lowest layer
    Support support = Support::none;
    friend bool operator==(const Question&, const Question&) = default;
};

} // namespace stow::fitting
