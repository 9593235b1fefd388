#include "core/shop/cupboard.h"

namespace stow::shop {

namespace {

template <class Key, class Value>
const Value* find(const std::map<Key, Value>& map, const Key& key)
{
    const auto found = map.find(key);
    return found == map.end() ? nullptr : &found->second;
}

} // namespace

const Good* Cupboard::good(const GoodCode& code) const
{
    return find(goods, code);
}

const Supply* Cupboard::supply(const SupplyCode& code) const
{
    return find(supplies, code);
}

const Wrapping* Cupboard::wrapping(const WrappingCode& code) const
{
    return find(wrappings, code);
}

LearntWeight Cupboard::weight_of(const Good& good) const
{
    const auto learnt = learnt_goods.find(good.code);
    return learnt != learnt_goods.end() ? learnt->second : LearntWeight{good.weight, house.batch_percent * 10, 0};
}

LearntWeight Cupboard::weight_of(const Supply& supply) const
{
    const auto learnt = learnt_supplies.find(supply.code);
    return learnt != learnt_supplies.end() ? learnt->second : LearntWeight{supply.weight, 0, 0};
}

} // namespace stow::shop
