// What is left on the shelves while a day is planned; nothing here touches the ledger.
#pragma once

#include "core/planning/contents.h"
#include "core/planning/planner.h"

#include <map>

namespace stow::planning {

class Stock {
public:
    // On hand by the cupboard, less what earlier plans keep back.
    Stock(const shop::Cupboard& cupboard, const Wish& wish);

    shop::Amount left(const shop::SupplyCode& supply) const; // below zero: more is planned than there is
    int left(const shop::GoodCode& good) const;
    bool has(const shop::SupplyCode& supply, int n = 1) const { return left(supply) >= shop::pieces(n); }

    bool has(const Used& used) const { return left(used.supply) >= used.amount; }

    void take(const std::vector<Used>& uses);
    void give_back(const std::vector<Used>& uses);

    // Takes the goods of an order, all or none; otherwise the good that is short and how many are missing.
    struct Short {
        shop::GoodCode good;
        int missing = 0;
    };
    std::optional<Short> take_goods(const std::vector<Several>& goods);
    void give_back(const std::vector<Several>& goods);

private:
    std::map<shop::SupplyCode, shop::Amount> supplies_;
    std::map<shop::GoodCode, int> goods_;
};

} // namespace stow::planning
