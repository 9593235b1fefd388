// The words enums are stored by, so that their order in the code may change. Private to intake. Each is a switch, so an
// enum value without a word does not compile.
#pragma once

#include "core/planning/plan.h"
#include "core/records/account.h"
#include "core/shop/cupboard.h"
#include "core/shop/dispatch.h"
#include "core/weighing/lessons.h"

namespace stow::intake {

constexpr const char* word(Turns::Rule value)
{
    using enum Turns::Rule;
    switch (value) {
    case any: return "any";
    case upright: return "upright";
    case flat: return "flat";
    case fixed: return "fixed";
    case listed: return "listed";
    }
    return nullptr;
}

constexpr const char* word(shop::PaperSize value)
{
    using enum shop::PaperSize;
    switch (value) {
    case a4: return "a4";
    case letter: return "letter";
    }
    return nullptr;
}

constexpr const char* word(shop::LabelForm value)
{
    using enum shop::LabelForm;
    switch (value) {
    case single_100x150: return "100x150";
    case single_a6: return "a6";
    case roll_62: return "62";
    case a4_of_4: return "a4x4";
    case a4_of_6: return "a4x6";
    }
    return nullptr;
}

constexpr const char* word(OuterKind value)
{
    using enum OuterKind;
    switch (value) {
    case carton: return "carton";
    case gift_box: return "gift-box";
    case mailer: return "mailer";
    case padded_mailer: return "padded-mailer";
    case board_mailer: return "board-mailer";
    case tube: return "tube";
    }
    return nullptr;
}

constexpr const char* word(shop::Restriction value)
{
    using enum shop::Restriction;
    switch (value) {
    case none: return "none";
    case flammable: return "flammable";
    case ask_carrier: return "ask carrier";
    }
    return nullptr;
}

constexpr const char* word(shop::Material value)
{
    using enum shop::Material;
    switch (value) {
    case paper: return "paper";
    case plastic: return "plastic";
    case glass: return "glass";
    case wood: return "wood";
    case ferrous: return "ferrous";
    case aluminium: return "aluminium";
    case composite: return "composite";
    case other: return "other";
    }
    return nullptr;
}

constexpr const char* word(shop::SupplyKind value)
{
    using enum shop::SupplyKind;
    switch (value) {
    case outer: return "outer";
    case wrap: return "wrap";
    case filler: return "filler";
    case tape: return "tape";
    case label: return "label";
    case insert: return "insert";
    case ribbon: return "ribbon";
    case paper: return "paper";
    }
    return nullptr;
}

constexpr const char* word(shop::Unit value)
{
    using enum shop::Unit;
    switch (value) {
    case piece: return "piece";
    case litre: return "litre";
    case metre: return "m";
    case kilogram: return "kg";
    }
    return nullptr;
}

constexpr const char* word(shop::HouseRule::When value)
{
    using enum shop::HouseRule::When;
    switch (value) {
    case every_order: return "every order";
    case gift: return "gift";
    case no_gift: return "no gift";
    case abroad: return "abroad";
    case good_in_order: return "good in order";
    case value_from: return "value from";
    }
    return nullptr;
}

constexpr const char* word(fitting::Verdict value)
{
    using enum fitting::Verdict;
    switch (value) {
    case fits: return "fits";
    case cannot_fit: return "cannot fit";
    case undecided: return "undecided";
    }
    return nullptr;
}

constexpr const char* word(fitting::Proof value)
{
    using enum fitting::Proof;
    switch (value) {
    case geometry: return "geometry";
    case rules: return "rules";
    case none: return "none";
    }
    return nullptr;
}

constexpr const char* word(fitting::Reason value)
{
    using enum fitting::Reason;
    switch (value) {
    case volume: return "volume";
    case edge: return "edge";
    case turns: return "turns";
    case cross_section: return "cross section";
    case weight: return "weight";
    case bound: return "bound";
    case exhausted: return "exhausted";
    case sleeve: return "sleeve";
    case tube_section: return "tube section";
    }
    return nullptr;
}

constexpr const char* word(fitting::Axis value)
{
    using enum fitting::Axis;
    switch (value) {
    case x: return "x";
    case y: return "y";
    case z: return "z";
    }
    return nullptr;
}

constexpr const char* word(fitting::Support value)
{
    using enum fitting::Support;
    switch (value) {
    case none: return "none";
    case partial: return "partial";
    case full: return "full";
    }
    return nullptr;
}

constexpr const char* word(Stop value)
{
    using enum Stop;
    switch (value) {
    case cancelled: return "cancelled";
    case work: return "work";
    case time: return "time";
    }
    return nullptr;
}

constexpr const char* word(postage::Surcharge::Kind value)
{
    using enum postage::Surcharge::Kind;
    switch (value) {
    case percent: return "percent";
    case fixed: return "fixed";
    case per_kg: return "per kg";
    case percent_of_value: return "percent of value";
    }
    return nullptr;
}

constexpr const char* word(postage::NotTaken value)
{
    using enum postage::NotTaken;
    switch (value) {
    case not_valid_then: return "not valid then";
    case no_zone: return "no zone";
    case too_big: return "too big";
    case too_small: return "too small";
    case too_heavy: return "too heavy";
    case not_admitted: return "not admitted";
    case not_covered: return "not covered";
    case no_price: return "no price";
    }
    return nullptr;
}

constexpr const char* word(postage::Part::Kind value)
{
    using enum postage::Part::Kind;
    switch (value) {
    case base: return "base";
    case surcharge: return "surcharge";
    case tax: return "tax";
    }
    return nullptr;
}

constexpr const char* word(planning::PackedItem::Kind value)
{
    using enum planning::PackedItem::Kind;
    switch (value) {
    case good: return "good";
    case gift_box: return "gift box";
    case insert: return "insert";
    case slip: return "slip";
    case gift_note: return "gift note";
    case roll: return "roll";
    }
    return nullptr;
}

constexpr const char* word(planning::PassedOver::Why value)
{
    using enum planning::PassedOver::Why;
    switch (value) {
    case does_not_fit: return "does not fit";
    case undecided: return "undecided";
    case none_left: return "none left";
    case no_service: return "no service";
    case dearer: return "dearer";
    case too_little_cushion: return "too little cushion";
    case too_late: return "too late";
    }
    return nullptr;
}

// The kinds of a variant by name, in its order.
template <class Variant>
inline constexpr std::array<const char*, 0> kinds{};
template <>
inline constexpr std::array kinds<Shape>{"block", "cylinder", "sheet", "roll", "soft"};
template <>
inline constexpr std::array kinds<std::variant<postage::Price, postage::Refused>>{"price", "refused"};

} // namespace stow::intake
