// A tariff of three zones, eight steps, two formats and two surcharges, as one may type it in, and forty parcels priced
// by hand from the printed table: sizes in 0.1 mm, weights in 0.1 g, totals in cents; 0: not taken.
#include "sheets.h"
#include "tariff_of_three_zones.h"

namespace stow::postage {
namespace {

struct Priced {
    std::array<std::int64_t, 3> size;
    std::int64_t weight;
    const char *country, *postcode, *zone, *format;
    std::int64_t total;
};

const std::vector<Priced> by_hand{
    {{2400, 1650, 50}, 180, "DK", "5700", "home", "flat", 118},
    {{2400, 1650, 50}, 200, "DK", "5700", "home", "flat", 118},
    {{2400, 1650, 50}, 201, "DK", "5700", "home", "flat", 129},
    {{3530, 2500, 250}, 999, "DK", "1050", "home", "flat", 172},
    {{3530, 2500, 250}, 1000, "DK", "1050", "home", "flat", 172},
    {{3530, 2500, 250}, 1001, "DK", "9990", "home", "flat", 194},
    {{250, 3530, 2500}, 2500, "DK", "5700", "home", "flat", 237},
    {{3530, 2500, 251}, 2500, "DK", "5700", "home", "box", 473},
    {{3530, 2510, 250}, 2500, "DK", "5700", "home", "box", 473},
    {{3540, 2500, 250}, 2500, "DK", "5700", "home", "box", 473},
    {{3000, 2000, 200}, 10000, "DK", "5700", "home", "flat", 452},
    {{3000, 2000, 200}, 10001, "DK", "5700", "home", "box", 731},
    {{3000, 2000, 1500}, 4999, "DK", "5700", "home", "box", 527},
    {{3000, 2000, 1500}, 5000, "DK", "5700", "home", "box", 527},
    {{3000, 2000, 1500}, 5001, "DK", "5700", "home", "box", 602},
    {{4500, 3000, 2000}, 20000, "DK", "5700", "home", "box", 731},
    {{4501, 3000, 2000}, 20000, "DK", "5700", "home", "box", 1131},
    {{6000, 4000, 2500}, 99999, "DK", "5700", "home", "box", 1905},
    {{6000, 4000, 3000}, 100000, "DK", "5700", "home", "box", 1905},
    {{6000, 4000, 3000}, 100001, "DK", "5700", "home", "", 0},
    {{2400, 1650, 50}, 200, "DE", "20095", "near", "flat", 161},
    {{2400, 1650, 50}, 500, "SE", "11122", "near", "flat", 204},
    {{3530, 2500, 250}, 2501, "NL", "1012AB", "near", "flat", 634},
    {{3530, 2500, 250}, 7500, "DE", "80331", "near", "flat", 796},
    {{2000, 1500, 1000}, 2500, "DE", "20095", "near", "box", 742},
    {{2000, 1500, 1000}, 2501, "DE", "20095", "near", "box", 935},
    {{4600, 1000, 1000}, 30000, "SE", "11122", "near", "box", 2324},
    {{1000, 4600, 1000}, 30001, "SE", "11122", "near", "box", 2873},
    {{5990, 2000, 2000}, 70000, "NL", "1012AB", "near", "box", 3410},
    {{3530, 2500, 100}, 9999, "NL", "1012AB", "near", "flat", 968},
    {{2400, 1650, 50}, 199, "FR", "75001", "far", "flat", 194},
    {{3530, 2500, 250}, 1499, "US", "10001", "far", "flat", 484},
    {{3530, 2500, 250}, 1501, "US", "10001", "far", "flat", 667},
    {{2000, 1500, 1000}, 2500, "JP", "1500001", "far", "box", 1032},
    {{2000, 1500, 1000}, 10001, "JP", "1500001", "far", "box", 3053},
    {{4501, 2000, 1000}, 19999, "NZ", "6011", "far", "box", 3453},
    {{6001, 2000, 1000}, 19999, "NZ", "6011", "far", "", 0},
    {{5000, 4000, 3520}, 4000, "FR", "75001", "far", "", 0},
    {{3000, 3000, 3000}, 100000, "GB", "M25BQ", "far", "box", 8600},
    {{2400, 1650, 50}, 9001, "DK", "3740", "far", "flat", 1774},
};

TEST(ByHand, FortyParcels)
{
    ASSERT_EQ(by_hand.size(), 40U);
    const Tariffs tariffs({tariff_of_three_zones()});
    for (std::size_t i = 0; i < by_hand.size(); ++i) {
        const Priced& p = by_hand[i];
        ParcelFacts facts;
        facts.closed = {tenth_mm(p.size[0]), tenth_mm(p.size[1]), tenth_mm(p.size[2])};
        facts.weight = tenth_g(p.weight);
        facts.country = p.country;
        facts.postcode = p.postcode;
        facts.hand_over = day("2026-11-25");
        const auto quotes = tariffs.quotes(facts);
        ASSERT_EQ(quotes.size(), 1U);
        const Price* price = quotes.front().price();
        ASSERT_EQ(price != nullptr, p.total != 0) << "parcel " << i;
        if (price == nullptr) continue;
        EXPECT_EQ(price->total, euro(p.total)) << "parcel " << i;
        EXPECT_EQ(price->zone, p.zone) << "parcel " << i;
        EXPECT_EQ(price->format, p.format) << "parcel " << i;
    }
}

TEST(ByHand, TheSheetHasNoFaults)
{
    EXPECT_TRUE(check(tariff_of_three_zones(), day("2026-11-25")).empty());
}

} // namespace
} // namespace stow::postage
