// Which sizes to buy: 2,000 distinct order shapes, 200 cartons offered, 1 to 12 sizes; how long it takes and how near
// it is proven to be. The shapes are blocks of the demo's orders' sizes, seen between 1 and 40 times each.
//   size_bench [seed]
#include "core/records/size_advice.h"
#include "tests/bench/cpu_clock.h"
#include "tests/bench/demo_shop.h"
#include "tests/bench/report.h"

#include <fmt/format.h>
#include <random>

int main(int argc, char** argv)
{
    using namespace stow;
    const std::uint64_t seed = argc > 1 ? std::stoull(argv[1]) : 1;
    std::mt19937_64 random(seed);
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
    const bench::Stopwatch watch;
    const records::SizeChooser chooser(demands);
    bench::print_heading("Which sizes to buy", fmt::format("size_bench {}", seed));
    fmt::print("2,000 order shapes, 200 cartons offered; {} kinds and {} cartons after dominance.\n\n",
               chooser.kinds_left(), chooser.sizes_left());
    std::vector<bench::TableRow> rows;
    for (int k = 1; k <= 12; ++k) {
        Run run;
        const records::SizeChoice choice = chooser.choose(k, run);
        rows.push_back({fmt::to_string(k), fmt::format("{:.2f}", static_cast<double>(choice.cost) / 100),
                        fmt::to_string(choice.served), fmt::to_string(choice.not_served),
                        fmt::format("{:.2f}", choice.gap() * 100), fmt::format("{:.1f}", watch.seconds())});
    }
    bench::print_table({"sizes", "cost", "orders served", "not served", "proven gap %", "s since the start"}, rows);
    return 0;
}
