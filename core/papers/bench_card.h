// The bench card: how one parcel is packed, on one sheet.
#pragma once

#include "core/papers/drawing.h"
#include "core/papers/reprint.h"
#include "core/papers/text.h"
#include "core/papers/words.h"
#include "core/planning/plan.h"
#include "core/shop/cupboard.h"
#include "core/shop/orders.h"
#include "core/shop/parcels.h"

#include <optional>
#include <string>
#include <vector>

namespace stow::papers {

struct BenchCard {
    std::string parcel, tray, buyer, town, country;
    std::vector<std::string> order_numbers;
    std::string outer_name;
    bool proven_smallest = false;
    Arrangement arrangement;        // with the form of the outer
    struct Step {                   // a thing to put in, in order; several equal ones one after the other are one step
        std::vector<int> numbers{}; // as in the drawing; none: not in it
        int count = 1;
        std::string name{}, wrapping{}, personal_text{};
        bool under_cushion = false, folded = false, rolled = false;
        std::vector<std::string> content{}; // of a gift box or roll: "2 × Ink bottle, sea green"
        std::optional<Word> own_paper{};    // a slip or gift note: goes by our name for it, in the reader's language
    };
    std::vector<Step> steps;
    std::string filler; // "shredded paper"; empty: none
    Volume filler_volume;
    Length tape;
    shop::WeightEstimate weight; // closed and labelled
    Size closed;
    std::string service; // empty: none takes it
    std::optional<Money> postage;
    bool gift = false;
    std::string note;
    bool heavy = false, glass = false, flammable = false, liquid = false;
    std::string code; // payload
    std::optional<Reprint> reprint{};
};

BenchCard bench_card(const shop::Parcel& parcel, const planning::ParcelPlan& plan,
                     const std::vector<shop::HeldOrder>& orders, const shop::Cupboard& cupboard);

Document lay_out(const BenchCard& card, const Blank& blank, const Words& words, const TextMeasure& measure);

} // namespace stow::papers
