#include "tests/bench/demo_shop.h"

#include "core/intake/csv.h"
#include "core/intake/goods_csv.h"
#include "core/intake/house_csv.h"
#include "core/intake/packing_csv.h"
#include "core/intake/rate_sheet_csv.h"
#include "core/intake/supplies_csv.h"

#include <array>
#include <random>
#include <string>

namespace stow::bench {

namespace {

const std::string root = STOW_SOURCE_DIR;

intake::Csv table(const char* file)
{
    return intake::read_csv_file(root + "/demo_orders/" + file);
}

template <class Map, class T>
void put(Map& map, std::vector<T> rows)
{
    for (T& row : rows) map.emplace(row.code, std::move(row));
}

} // namespace

DemoShop demo_shop()
{
    DemoShop s;
    put(s.cupboard.supplies, intake::read_supplies(table("supplies.csv"), Currency{}).rows);
    s.cupboard.house = intake::read_house(table("house.csv"), s.cupboard).rows.at(0);
    put(s.cupboard.wrappings, intake::read_wrappings(table("wrappings.csv"), s.cupboard).rows);
    put(s.cupboard.goods, intake::read_goods(table("goods.csv"), s.cupboard).rows);
    s.cupboard.rules = intake::read_house_rules(table("house_rules.csv"), s.cupboard).rows;
    for (const auto& [code, supply] : s.cupboard.supplies) s.cupboard.on_hand[code] = supply.on_hand;
    for (const auto& [code, good] : s.cupboard.goods) s.cupboard.pieces[code] = good.pieces;
    for (const char* file : {"brinewind_parcels_2026", "skua_post_2026", "tern_tube_mail_2026"}) {
        s.rate_sheets.push_back(*intake::read_rate_sheet_file(root + "/rate_tables/" + file + ".csv").sheet);
    }
    return s;
}

std::vector<shop::HeldOrder> random_orders(const DemoShop& shop, int count, std::uint64_t seed, Date from)
{
    std::mt19937_64 random(seed);
    const auto up_to = [&](int n) { return static_cast<int>(random() % static_cast<std::uint64_t>(n)) + 1; };
    std::vector<const shop::Good*> goods;
    for (const auto& [code, good] : shop.cupboard.goods) goods.push_back(&good);
    struct Place {
        const char *country, *postcode;
    };
    constexpr std::array<Place, 6> places{
        {{"DE", "24103"}, {"DE", "80331"}, {"DK", "5700"}, {"NL", "1012"}, {"AT", "1010"}, {"FR", "75003"}}};
    std::vector<shop::HeldOrder> orders;
    for (int o = 1; o <= count; ++o) {
        shop::HeldOrder held;
        held.id = {o};
        held.state = shop::OrderState::checked;
        held.order.key = {"bench", std::to_string(o)};
        held.order.date = from;
        const Place& place = places.at(static_cast<std::size_t>(up_to(6) - 1));
        held.order.to.name = "Buyer " + std::to_string(o);
        held.order.to.street = {"Kai " + std::to_string(o)};
        held.order.to.town = "Ostermund";
        held.order.to.country = place.country;
        held.order.to.postcode = place.postcode;
        if (up_to(3) == 1) held.order.promised = from + std::chrono::days(3 + up_to(9));
        for (int lines = up_to(10) <= 6 ? 1 : up_to(4); lines > 0; --lines) {
            const shop::Good& good = *goods[static_cast<std::size_t>(up_to(static_cast<int>(goods.size())) - 1)];
            shop::OrderLine line;
            line.title = good.name;
            line.good = good.code;
            line.count = up_to(4) == 1 ? 1 + up_to(2) : 1;
            line.price = good.price;
            held.order.lines.push_back(std::move(line));
        }
        orders.push_back(std::move(held));
    }
    return orders;
}

} // namespace stow::bench
