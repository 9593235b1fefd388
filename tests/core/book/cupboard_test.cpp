// What the house takes for itself out of what comes in.
#include "small_shop.h"

using namespace stow;
using namespace stow::book;

namespace {

shop::Supply supply(const char* code, shop::SupplyKind kind)
{
    shop::Supply made;
    made.code = {code};
    made.name = code;
    made.kind = kind;
    return made;
}

TEST(Cupboard, TheFirstFillerTapeAndLabelAreWhatTheHouseUses)
{
    SmallShop shop;
    using Kind = shop::SupplyKind;
    const auto first = use_where_none_is(shop.book, {supply("SHRED", Kind::filler), supply("CHIPS", Kind::filler),
                                                     supply("TAPE", Kind::tape), supply("K2", Kind::outer)});
    ASSERT_TRUE(first);
    EXPECT_TRUE(*first); // a step
    EXPECT_EQ(house(shop.book).filler.text, "SHRED");
    EXPECT_EQ(house(shop.book).tape.text, "TAPE");
    EXPECT_TRUE(house(shop.book).label.empty());

    const auto later = use_where_none_is(shop.book, {supply("CHIPS", Kind::filler)});
    ASSERT_TRUE(later);
    EXPECT_FALSE(*later); // nothing to write
    EXPECT_EQ(house(shop.book).filler.text, "SHRED");
}

} // namespace
