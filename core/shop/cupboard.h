// Everything the shop owns and knows, as one value: what planning looks things up in.
#pragma once

#include "core/shop/goods.h"
#include "core/shop/house.h"
#include "core/shop/supplies.h"

#include <map>
#include <vector>

namespace stow::shop {

struct Cupboard {
    House house;
    std::map<GoodCode, Good> goods;
    std::map<SupplyCode, Supply> supplies;
    std::map<WrappingCode, Wrapping> wrappings;
    std::vector<HouseRule> rules;
    std::map<SupplyCode, Amount> on_hand; // by the ledger
    std::map<GoodCode, int> pieces;       // by the ledger

    const Good* good(const GoodCode& code) const;
    const Supply* supply(const SupplyCode& code) const;
    const Wrapping* wrapping(const WrappingCode& code) const;
};

} // namespace stow::shop
