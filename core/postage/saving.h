// What a millimetre or a gram less would save: "3 mm thinner goes as a large letter: saves 2.40".
#pragma once

#include "core/postage/quote.h"

namespace stow::postage {

struct Reach { // how much less is worth thinking about
    int millimetres = 20;
    Weight weight = grams(50);
};

struct Saving {
    // Of a box its edges from the longest to the shortest; of a roll length (`length`) and diameter (`height`).
    enum class By { length, width, height, weight } by = By::height;
    Length less;    // whole millimetres, for edges
    Weight lighter; // for weight
    std::string carrier, service, service_name, format;
    Money total, saves;
};

// Each lower price that is reached by taking off one edge alone, or weight alone: the least that must go, then the next
// lower price, and so on; edges first, the least change first. Only services as good as the present one count: tracked
// if it is, the goods covered if they are, no slower than it or than `days_most`. What is cheaper already without any
// change is no saving of a millimetre, so savings are counted from the cheapest of these as the parcel is now. Empty
// where the present quote has no price.
std::vector<Saving> savings(const Tariffs& tariffs, const ParcelFacts& parcel, const Quote& now, int days_most = 0,
                            const Reach& reach = {});

} // namespace stow::postage
