#include "core/shop/goods.h"

#include "core/shop/word_list.h"

namespace stow::shop {

namespace {

constexpr WordList<Restriction, 3> restrictions{
    {{Restriction::none, "none"}, {Restriction::flammable, "flammable"}, {Restriction::ask_carrier, "ask carrier"}}};

} // namespace

std::string_view name_of(Restriction value)
{
    return word_for(restrictions, value);
}

std::optional<Restriction> restriction(std::string_view name)
{
    return value_of(restrictions, name);
}

} // namespace stow::shop
