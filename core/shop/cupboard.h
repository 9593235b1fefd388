// Everything the shop owns and knows, as one value: what planning looks things up in.
#pragma once

#include "core/shop/goods.h"
#include "core/shop/house.h"
#include "core/shop/supplies.h"

#include <map>
#include <vector>

namespace stow::shop {

struct LearntWeight { // of one piece, from weighings; or as entered, where nothing is learnt
    WeightEstimate one;
    int batch_permille = 0; // all pieces together may be off by this
    int seen = 0;           // pieces learnt from
    friend bool operator==(const LearntWeight&, const LearntWeight&) = default;
};

struct Cupboard {
    House house;
    std::map<GoodCode, Good> goods;
    std::map<SupplyCode, Supply> supplies;
    std::map<WrappingCode, Wrapping> wrappings;
    std::vector<HouseRule> rules;
    std::map<SupplyCode, Amount> on_hand; // by the ledger
    std::map<GoodCode, int> pieces;       // by the ledger

    std::map<GoodCode, LearntWeight> learnt_goods;
    std::map<SupplyCode, LearntWeight> learnt_supplies;

    // As the scale has taught, else as she entered it: a good with the spread of its batch, a supply without.
    LearntWeight weight_of(const Good& good) const;
    LearntWeight weight_of(const Supply& supply) const;

    const Good* good(const GoodCode& code) const;
    const Supply* supply(const SupplyCode& code) const;
    const Wrapping* wrapping(const WrappingCode& code) const;
};

} // namespace stow::shop
