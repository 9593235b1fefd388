#include "core/records/summary.h"

#include <gtest/gtest.h>

namespace stow::records {
namespace {

shop::Cupboard cupboard()
{
    shop::Cupboard c;
    shop::Good box;
    box.code = {"BOX"};
    box.shape = Block{{mm(200), mm(150), mm(100)}}; // 3.0 L
    box.own_packaging = {shop::Material::glass, grams(78)};
    c.goods[box.code] = box;
    shop::Good half = box;
    half.code = {"HALF"};
    half.shape = Block{{mm(150), mm(100), mm(100)}}; // 1.5 L
    c.goods[half.code] = half;
    shop::Supply carton;
    carton.code = {"K"};
    carton.weight = {grams(160), {}};
    c.supplies[carton.code] = carton;
    shop::Supply filler;
    filler.code = {"FILL"};
    filler.weight = {grams(20), {}};
    c.supplies[filler.code] = filler;
    return c;
}

PackedParcel parcel(std::vector<shop::Piece> pieces)
{
    PackedParcel p;
    p.plan.pieces = std::move(pieces);
    p.plan.closed = {mm(300), mm(200), mm(150)}; // 9.0 L
    p.plan.uses = {{{"K"}, shop::pieces(1)}};
    p.country = "DE";
    return p;
}

shop::Piece piece(const char* good, int count)
{
    return {{1}, 0, {good}, count};
}

// Regulation (EU) 2025/40, Art. 24: filling counts as empty. Figures worked from it: a box of 9.0 L with goods of
// 3.0 L is 66.7 % empty, with 4.5 L exactly 50.0 %; two litres of filler change nothing.
TEST(Summary, EmptySpaceCountsFillerAsEmpty)
{
    EXPECT_EQ(summarise({parcel({piece("BOX", 1)})}, cupboard()).empty_permille(), 667);
    EXPECT_EQ(summarise({parcel({piece("BOX", 1), piece("HALF", 1)})}, cupboard()).empty_permille(), 500);
    PackedParcel filled = parcel({piece("BOX", 1)});
    filled.plan.uses.push_back({{"FILL"}, {2000}});
    EXPECT_EQ(summarise({filled}, cupboard()).empty_permille(), 667);
}

TEST(Summary, OfNothingHasNoEmptySpace)
{
    EXPECT_EQ(summarise({}, cupboard()).empty_permille(), std::nullopt);
}

TEST(Summary, AddsUpPackagingWithTheGoodsOwn)
{
    PackedParcel filled = parcel({piece("BOX", 2)});
    filled.plan.uses.push_back({{"FILL"}, {1500}});
    const Summary s = summarise({filled, parcel({})}, cupboard());
    using M = shop::Material;
    EXPECT_EQ(s.packaging_by_material.at({M::glass, "DE"}), grams(156));
    EXPECT_EQ(s.packaging_by_material.at({M::paper, "DE"}), grams(160 + 30 + 160));
}

TEST(Summary, CountsWhatIsInAnotherCurrency)
{
    PackedParcel p = parcel({});
    p.postage = Money{500, *Currency::from("USD")};
    const Summary s = summarise({p}, cupboard());
    EXPECT_EQ(s.in_other_currency, 1);
    EXPECT_EQ(s.postage, Money{});
}

TEST(Summary, TellsHowFarEstimatesAreOff)
{
    PackedParcel light = parcel({}), heavy = parcel({}), unweighed = parcel({});
    light.plan.weight.mean = heavy.plan.weight.mean = grams(500);
    light.weighed = grams(496);
    heavy.weighed = grams(510);
    const Summary s = summarise({light, heavy, unweighed}, cupboard());
    EXPECT_EQ(s.weighed, 2);
    EXPECT_EQ(s.off_by, grams(7));
}

} // namespace
} // namespace stow::records
