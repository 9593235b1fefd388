// What packed parcels tell: cost, air, how good the weight estimates are, packaging by material and country.
#pragma once

#include "core/planning/plan.h"
#include "core/shop/cupboard.h"

#include <map>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace stow::records {

struct PackedParcel {
    planning::ParcelPlan plan;
    std::optional<Money> postage;  // paid
    std::optional<Weight> weighed; // closed or labelled, by the scale
    std::string country;           // where it went
};

struct Summary {
    int parcels = 0;
    Money postage, packaging; // in the house's currency; amounts in others are left out and counted here:
    int in_other_currency = 0;
    Volume closed, goods; // sums of closed outers, and of the goods in them
    int weighed = 0;
    Weight off_by; // mean absolute difference of estimate and scale
    // Used up, by material and country. Only what the ledger moves: wraps, outers, filler, tape, inserts; and the
    // goods' own packaging.
    std::map<std::pair<shop::Material, std::string>, Weight> packaging_by_material;

    // The share of empty space in 0.1 %, after Regulation (EU) 2025/40, Article 24: what is not goods counts as empty,
    // filler and wraps too. Our estimate: the total is taken as the closed outer's volume; the official method was not
    // adopted when this was written. Nothing where there are no parcels.
    std::optional<int> empty_permille() const;
};

Summary summarise(const std::vector<PackedParcel>& parcels, const shop::Cupboard& cupboard);

} // namespace stow::records
