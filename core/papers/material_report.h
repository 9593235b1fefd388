// Packaging that left the house in a stretch of days, by country and material: what a register asks for.
#pragma once

#include "core/papers/reprint.h"
#include "core/papers/text.h"
#include "core/papers/words.h"
#include "core/records/account.h"

#include <vector>

namespace stow::papers {

struct MaterialReport {
    Date from, until; // inclusive
    int parcels = 0;
    std::vector<records::MaterialLine> lines; // by country, then material
    std::optional<Reprint> reprint{};
};

Document lay_out(const MaterialReport& report, const Blank& blank, const Words& words, const TextMeasure& measure);

Word word_for(shop::Material material);

} // namespace stow::papers
