// Customs data in the order of forms CN 22 and CN 23: what is inside, weight, value, tariff number, origin. The fields
// are those of the form texts in print (India Post's CN 22; a British guide to CN 23), in the words of the form that
// OECD (2018), Misuse of Small Parcels for Trade in Counterfeit Goods, annex A, shows; the layout is ours.
#pragma once

#include "core/papers/text.h"
#include "core/papers/words.h"
#include "core/shop/cupboard.h"
#include "core/shop/customs.h"
#include "core/shop/orders.h"
#include "core/shop/parcels.h"

#include <optional>
#include <string>
#include <vector>

namespace stow::papers {

struct CustomsData {
    std::vector<std::string> from, to; // lines
    std::string contact;
    std::string parcel; // number
    enum class Category { sold_goods, gift, documents, sample, returned } category = Category::sold_goods;
    struct Line { // empty or missing values are shown as missing, for they stop a parcel at the border
        int count = 1;
        std::string description;
        Weight weight;              // of all pieces of the line
        std::optional<Money> value; // of all pieces of the line
        std::string tariff_number, origin;
    };
    std::vector<Line> lines;
    std::optional<Weight> gross;                              // with packaging
    shop::CustomsForm form = shop::CustomsForm::cn23;         // whose data this is; none: not said
    std::vector<std::pair<std::string, std::string>> numbers; // asked of the sender, by what they are called
    bool gift_shown = false;                                  // the value on the outside lets a gift out
    Date date;
};

// Sold goods stay sold goods when the buyer gives them away. Sets are declared as one good where they have customs
// words of their own, else by their parts, the set's price shared out by weight.
CustomsData customs_data(const shop::Parcel& parcel, const std::vector<shop::HeldOrder>& orders,
                         const shop::Cupboard& cupboard, std::optional<Weight> gross, Date date);

enum class CustomsLack { description, vague, tariff_number, origin, value, two_currencies, heavier_than_parcel };
struct CustomsFault {
    CustomsLack lack;
    std::string what; // the description or good it stands for
};
// What would stop the parcel at the border: by line, then for the whole (the lines together weigh more than the parcel,
// or are valued in two currencies).
std::vector<CustomsFault> faults(const CustomsData& data);

Document lay_out(const CustomsData& data, const Blank& blank, const Words& words, const TextMeasure& measure);

} // namespace stow::papers
