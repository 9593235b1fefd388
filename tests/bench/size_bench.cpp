// Which sizes to buy: 2,000 distinct order shapes, 200 cartons offered, 1 to 12 sizes; how long it takes and how near
// it is proven to be. The shapes are blocks of the demo's orders' sizes, seen between 1 and 40 times each.
//   size_bench [seed]
#include "core/records/size_advice.h"
#include "tests/bench/demo_shop.h"

#include <chrono>
#include <fmt/format.h>
#include <random>

int main(int argc, char** argv)
{
    using namespace stow;
    std::mt19937_64 random(argc > 1 ? std::stoull(argv[1]) : 1);
    const auto from_to = [&](std::int64_t a, std::int64_t b) {
        return a + static_cast<std::int64_t>(random() % static_cast<std::uint64_t>(b - a + 1));
    };
    const shop::Cupboard cupboard = bench::demo_shop().cupboard;
    std::vector<shop::Supply> offered;
    for (int i = 0; i < 200; ++i) {
        shop::Supply s;
        s.code = {fmt::format("C{}", i)};
        s.form = OuterForm{};
        const Size inner = sorted({mm(from_to(80, 480)), mm(from_to(70, 380)), mm(from_to(50, 300))});
        s.form->inner = inner;
        s.form->outer = {inner.x + mm(6), inner.y + mm(6), inner.z + mm(12)};
        s.cost = {15 + volume(inner).units / 1'000'000'000 * 6 + from_to(0, 10), {}}; // by the litre, about
        offered.push_back(s);
    }
    std::vector<records::Demand> demands;
    for (int i = 0; i < 2000; ++i) {
        const records::PackedShape shape{
            {mm(from_to(40, 380)), mm(from_to(30, 260)), mm(from_to(15, 190))}, grams(from_to(100, 4000)), {}};
        records::Demand demand{from_to(1, 40), {}};
        for (const shop::Supply& s : offered) demand.cost.push_back(records::cost_in(s, shape, cupboard, {12, {}}));
        demands.push_back(std::move(demand));
    }
    const auto start = std::chrono::steady_clock::now();
    const auto seconds = [&] {
        return std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
    };
    const records::SizeChooser chooser(demands);
    fmt::print("{} kinds, {} sizes after dominance, {:.2f} s\n", chooser.kinds_left(), chooser.sizes_left(), seconds());
    for (int k = 1; k <= 12; ++k) {
        Run run;
        const records::SizeChoice choice = chooser.choose(k, run);
        fmt::print("{:3} sizes: cost {:9.2f}, {} served, {} not, proven gap {:.3f} %, {:.2f} s\n", k,
                   static_cast<double>(choice.cost) / 100, choice.served, choice.not_served, choice.gap() * 100,
                   seconds());
    }
    return 0;
}
