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

} // namespace stow::shop
