// The hand-over list: what a carrier took, for the signature.
#pragma once

#include "core/papers/reprint.h"
#include "core/papers/text.h"
#include "core/papers/words.h"
#include "core/shop/cupboard.h"
#include "core/shop/orders.h"
#include "core/shop/parcels.h"

#include <optional>
#include <string>
#include <vector>

namespace stow::papers {

struct HandOverList {
    std::string carrier, number;
    Date date;
    std::optional<TimeOfDay> time;
    std::vector<std::string> sender; // lines
    struct Line {
        std::string parcel, name, place, service, tracking;
        std::optional<Weight> weight;
        int label_print = 1; // above one the list says which label is the right one
    };
    std::vector<Line> lines;
    std::optional<Reprint> reprint{};
};

HandOverList hand_over_list(const std::string& carrier, const std::string& number, Date date,
                            std::optional<TimeOfDay> time, const std::vector<shop::Parcel>& parcels,
                            const std::vector<shop::HeldOrder>& orders, const shop::House& house);

Document lay_out(const HandOverList& list, const Blank& blank, const Words& words, const TextMeasure& measure);

} // namespace stow::papers
