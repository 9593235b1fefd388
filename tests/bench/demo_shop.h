// The demo's goods, supplies and rate sheets as a shop to measure in, and orders drawn from it.
#pragma once

#include "core/postage/rate_sheet.h"
#include "core/shop/cupboard.h"
#include "core/shop/orders.h"

#include <cstdint>
#include <vector>

namespace stow::bench {

struct DemoShop {
    shop::Cupboard cupboard;
    std::vector<postage::RateSheet> rate_sheets;
};
DemoShop demo_shop();

// `count` orders of 1 to 4 lines, most of them of one or two pieces, to the countries the demo posts to; a third has a
// promised day. The same seed gives the same orders.
std::vector<shop::HeldOrder> random_orders(const DemoShop& shop, int count, std::uint64_t seed, Date from);

} // namespace stow::bench
