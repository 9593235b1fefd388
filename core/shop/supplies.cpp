#include "core/shop/supplies.h"

#include "core/shop/word_list.h"

namespace stow::shop {

namespace {

constexpr WordList<SupplyKind, 8> kinds{{{SupplyKind::outer, "outer"},
                                         {SupplyKind::wrap, "wrap"},
                                         {SupplyKind::filler, "filler"},
                                         {SupplyKind::tape, "tape"},
                                         {SupplyKind::label, "label"},
                                         {SupplyKind::insert, "insert"},
                                         {SupplyKind::ribbon, "ribbon"},
                                         {SupplyKind::paper, "paper"}}};

constexpr WordList<Unit, 4> units{
    {{Unit::piece, "piece"}, {Unit::litre, "litre"}, {Unit::metre, "m"}, {Unit::kilogram, "kg"}}};

using When = HouseRule::When;
constexpr WordList<When, 6> whens{{{When::every_order, "every order"},
                                   {When::gift, "gift"},
                                   {When::no_gift, "no gift"},
                                   {When::abroad, "abroad"},
                                   {When::good_in_order, "good"},
                                   {When::value_from, "value from"}}};

} // namespace

std::string_view name_of(SupplyKind kind)
{
    return word_for(kinds, kind);
}

std::optional<SupplyKind> supply_kind(std::string_view name)
{
    return value_of(kinds, name);
}

std::string_view name_of(Unit unit)
{
    return word_for(units, unit);
}

std::optional<Unit> unit(std::string_view name)
{
    return value_of(units, name);
}

std::string_view name_of(HouseRule::When when)
{
    return word_for(whens, when);
}

std::optional<HouseRule::When> rule_when(std::string_view name)
{
    return value_of(whens, name);
}

} // namespace stow::shop
