// How long the whole-day choice takes, and what it gains over one by one: 200 and 1,000 orders of the demo's goods with
// few of every outer, then with plenty. First plans, without the proofs that follow in the background.
//   day_bench [seed] [orders]
#include "core/planning/planner.h"
#include "tests/bench/demo_shop.h"

#include <chrono>
#include <fmt/format.h>
#include <string>
#include <vector>

namespace {

using namespace stow;

struct Measured {
    planning::DayPlan plan;
    double seconds = 0;
};

Measured planned(const bench::DemoShop& shop, const std::vector<shop::HeldOrder>& orders, planning::Preference wanted)
{
    planning::Wish wish;
    wish.day = *parse_date("2026-11-25");
    wish.prove = false;
    wish.preference = wanted;
    Run run;
    const auto start = std::chrono::steady_clock::now();
    Measured m;
    m.plan = planning::plan_day(shop.cupboard, orders, shop.rate_sheets, wish, run);
    m.seconds = std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
    return m;
}

void measure(int count, std::uint64_t seed, bool few, bool little_filler, planning::Preference wanted)
{
    bench::DemoShop shop = bench::demo_shop();
    for (auto& [code, pieces] : shop.cupboard.pieces) pieces = 100'000;
    for (auto& [code, amount] : shop.cupboard.on_hand) {
        const bool outer = shop.cupboard.supplies.at(code).kind == shop::SupplyKind::outer;
        amount = shop::pieces(outer && few ? count / 14 : 100'000);
    }
    if (little_filler) shop.cupboard.on_hand[shop.cupboard.house.filler] = shop::pieces(count);
    const auto orders = bench::random_orders(shop, count, seed, *parse_date("2026-11-24"));
    const Measured m = planned(shop, orders, wanted);
    const auto& s = m.plan.sharing;
    fmt::print(
        "{:5} orders, {:14} {:10} {:13}: {:6.2f} s, {} parcels, {} stuck, {} stepped back, {} more go, saves {}, "
        "{:.1f} l smaller, {}{}\n",
        count, planning::name_of(wanted), few ? "few" : "plenty", little_filler ? "little filler" : "", m.seconds,
        m.plan.parcels.size(), m.plan.stuck.size(), s.moved, s.more_go, to_text(s.saves), in_litres(s.smaller),
        s.proven ? "proven" : "stopped",
        (s.more_may_go ? fmt::format(", at most {} more go", *s.more_may_go) : "") +
            (s.gap_permille ? fmt::format(", gap {} permille", *s.gap_permille) : ""));
    for (const auto& scarce : s.scarce) {
        fmt::print("      {} more of {}: {} go, saves {}, {:.1f} l smaller\n", scarce.more.thousandths / 1000,
                   scarce.supply.text, scarce.more_go, to_text(scarce.saves), in_litres(scarce.smaller));
    }
}

} // namespace

int main(int argc, char** argv)
{
    const std::uint64_t seed = argc > 1 ? std::stoull(argv[1]) : 1;
    using P = planning::Preference;
    std::vector<int> counts{200, 1000};
    if (argc > 2) counts = {std::stoi(argv[2])};
    for (const int count : counts) {
        for (const P wanted : {P::smallest, P::cheapest}) {
            measure(count, seed, false, false, wanted);
            measure(count, seed, true, false, wanted);
            measure(count, seed, true, true, wanted);
        }
    }
    return 0;
}
