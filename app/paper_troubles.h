// What would not come out on a parcel's papers as it should, known before they are used.
#pragma once

#include "app/day.h"
#include "core/papers/label.h"

#include <QString>

#include <string>
#include <vector>

namespace stow {

struct PaperTrouble {
    std::string parcel;  // its number
    std::string letters; // of what the buyer wrote, each once, that no font here has: boxes would stand there
    papers::LabelFit label = papers::LabelFit::all_of_it;
};
std::vector<PaperTrouble> paper_troubles(const Day& day, const std::vector<shop::ParcelId>& parcels);

// Which parcels, and what to do about it; empty: nothing is wrong.
QString words_of(const std::vector<PaperTrouble>& troubles);

} // namespace stow
