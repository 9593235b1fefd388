#include "tests/bench/order_series.h"

#include "tests/bench/random.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <string>

namespace stow::bench {

namespace {

constexpr int cartons = 40;

fitting::Outer carton(int number, const Size& inner)
{
    fitting::Outer outer;
    outer.id = (number < 10 ? "0" : "") + std::to_string(number);
    outer.form.inner = inner;
    outer.form.outer = {inner.x + mm(6), inner.y + mm(6), inner.z + mm(6)};
    return outer;
}

// Flat, usual and cube-like cartons in turn; length : width : height in hundredths of the cube's side.
std::vector<fitting::Outer> shop_cartons()
{
    struct Proportion {
        std::int64_t length, width;
    };
    constexpr std::array<Proportion, 4> proportions{{{126, 100}, {150, 105}, {105, 100}, {140, 120}}};
    std::vector<fitting::Outer> outers;
    std::int64_t litre_thousandths = 300;
    for (int k = 1; k <= cartons; ++k) {
        const std::int64_t volume = litre_thousandths * 1'000'000;
        const std::int64_t side = cube_root(volume);
        const Proportion p = proportions[static_cast<std::size_t>(k) % proportions.size()];
        Size inner{Length{side * p.length / 100}, Length{side * p.width / 100}, {}};
        inner.z = Length{volume / (inner.x * inner.y).units};
        outers.push_back(carton(k, inner));
        litre_thousandths = litre_thousandths * 11'455 / 10'000; // 0.3 to 60 litres in 39 steps
    }
    return outers;
}

// Of about the given volume, as likely long as cube-like; wide enough for every single piece where that can be.
std::vector<fitting::Outer> near_cartons(Dice& dice, const std::vector<fitting::Item>& items)
{
    std::int64_t sum = 0;
    Size widest; // the largest of each sorted edge
    for (const fitting::Item& item : items) {
        const Size edges = sorted(bounding_size(item.shape));
        sum += item.count * volume(edges).units;
        widest = {std::max(widest.x, edges.x), std::max(widest.y, edges.y), std::max(widest.z, edges.z)};
    }
    std::vector<fitting::Outer> outers;
    std::int64_t wanted = sum / 1000 * 907;
    for (int k = 1; k <= cartons; ++k) {
        Size inner;
        for (int attempt = 0; attempt < 50; ++attempt) {
            const std::int64_t side = cube_root(wanted);
            inner.x = std::max(Length{dice.from_to(side, side * 2)}, widest.x);
            inner.y = std::max(Length{dice.from_to(side * 7 / 10, side * 13 / 10)}, widest.y);
            inner.z = Length{wanted / (inner.x * inner.y).units};
            if (inner.z >= std::max(widest.z, Length{side * 4 / 10})) break;
        }
        outers.push_back(carton(k, inner));
        wanted = wanted / 1000 * 1049;
    }
    return outers;
}

} // namespace

std::int64_t cube_root(std::int64_t v)
{
    auto side = static_cast<std::int64_t>(std::cbrt(static_cast<double>(v)));
    while (side * side * side > v) --side;
    while ((side + 1) * (side + 1) * (side + 1) <= v) ++side;
    return side;
}

fitting::Question order_of(Series series, int pieces, std::uint64_t number)
{
    Dice dice(20'261'125 + 1'000'003 * number + static_cast<std::uint64_t>(pieces));
    fitting::Question q;
    for (int left = pieces; left > 0;) {
        fitting::Item item;
        item.id = std::string(1, static_cast<char>('a' + q.items.size()));
        // Six of ten goods are bought once.
        item.count = dice.below(10) < 6 ? 1 : static_cast<int>(dice.from_to(1, std::min(left, 4)));
        const auto side = [&] { return Length{dice.from_to(150, 2500)}; };
        item.shape = Block{{side(), side(), side()}};
        item.weight = grams(100);
        left -= item.count;
        q.items.push_back(item);
    }
    q.outers = series == Series::shop ? shop_cartons() : near_cartons(dice, q.items);
    return q;
}

} // namespace stow::bench
