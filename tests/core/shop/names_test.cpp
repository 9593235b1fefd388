// Words in files and books never change: each is written out here.
#include "core/shop/cupboard.h"
#include "core/shop/parcels.h"

#include <gtest/gtest.h>

namespace stow::shop {
namespace {

template <class Enum, class Parse>
void expect_word(Enum value, const char* word, Parse parse)
{
    EXPECT_EQ(name_of(value), word);
    EXPECT_EQ(parse(word), value) << word;
}

TEST(Names, OrdersAndParcels)
{
    expect_word(OrderState::arrived, "arrived", order_state);
    expect_word(OrderState::checked, "checked", order_state);
    expect_word(OrderState::set_aside, "set aside", order_state);
    expect_word(OrderState::called_off, "called off", order_state);
    expect_word(ParcelState::planned, "planned", parcel_state);
    expect_word(ParcelState::picked, "picked", parcel_state);
    expect_word(ParcelState::packed, "packed", parcel_state);
    expect_word(ParcelState::labelled, "labelled", parcel_state);
    expect_word(ParcelState::handed_over, "handed over", parcel_state);
    expect_word(ParcelState::came_back, "came back", parcel_state);
    expect_word(WeighingStage::contents, "contents", weighing_stage);
    expect_word(WeighingStage::closed, "closed", weighing_stage);
    expect_word(WeighingStage::labelled, "labelled", weighing_stage);
    EXPECT_EQ(order_state("lost"), std::nullopt);
    EXPECT_EQ(parcel_state(""), std::nullopt);
    EXPECT_EQ(weighing_stage("Closed"), std::nullopt);
}

TEST(Names, Supplies)
{
    const char* words[] = {"outer", "wrap", "filler", "tape", "label", "insert", "ribbon", "paper"};
    for (std::size_t i = 0; i < all_supply_kinds.size(); ++i) expect_word(all_supply_kinds[i], words[i], supply_kind);
    expect_word(Unit::piece, "piece", unit);
    expect_word(Unit::litre, "litre", unit);
    expect_word(Unit::metre, "m", unit);
    expect_word(Unit::kilogram, "kg", unit);
    EXPECT_EQ(unit("yard"), std::nullopt);
}

TEST(Names, RulesAndRestrictions)
{
    expect_word(HouseRule::When::every_order, "every order", rule_when);
    expect_word(HouseRule::When::gift, "gift", rule_when);
    expect_word(HouseRule::When::no_gift, "no gift", rule_when);
    expect_word(HouseRule::When::abroad, "abroad", rule_when);
    expect_word(HouseRule::When::good_in_order, "good", rule_when);
    expect_word(HouseRule::When::value_from, "value from", rule_when);
    expect_word(Restriction::none, "none", restriction);
    expect_word(Restriction::flammable, "flammable", restriction);
    expect_word(Restriction::ask_carrier, "ask carrier", restriction);
}

TEST(Cupboard, FindsByCodeOnly)
{
    Cupboard cupboard;
    cupboard.goods[{"INK"}].name = "ink";
    cupboard.supplies[{"BOX"}].name = "box";
    cupboard.wrappings[{"W"}].name = "wrap";
    ASSERT_NE(cupboard.good({"INK"}), nullptr);
    EXPECT_EQ(cupboard.good({"INK"})->name, "ink");
    EXPECT_EQ(cupboard.supply({"BOX"})->name, "box");
    EXPECT_EQ(cupboard.wrapping({"W"})->name, "wrap");
    EXPECT_EQ(cupboard.good({"ink"}), nullptr);
    EXPECT_EQ(cupboard.supply({""}), nullptr);
    EXPECT_EQ(cupboard.wrapping({"X"}), nullptr);
}

} // namespace
} // namespace stow::shop
