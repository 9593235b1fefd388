// How long the whole-day choice takes, and what it gains over one by one: 200 and 1,000 orders of the demo's goods with
// few of every outer, then with plenty. First plans, without the proofs that follow in the background.
//   day_bench [seed] [orders]
#include "core/planning/planner.h"
#include "tests/bench/cpu_clock.h"
#include "tests/bench/demo_shop.h"
#include "tests/bench/report.h"

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
    const bench::Stopwatch watch;
    Measured m;
    m.plan = planning::plan_day(shop.cupboard, orders, shop.rate_sheets, wish, run);
    m.seconds = watch.seconds();
    return m;
}

std::vector<bench::TableRow> rows;

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
    std::string dearest;
    if (!s.scarce.empty()) {
        const auto& worst = s.scarce.front();
        dearest = fmt::format("{} more of {}: {} go, saves {}", worst.more.thousandths / 1000, worst.supply.text,
                              worst.more_go, to_text(worst.saves));
    }
    std::string proof = "proven";
    if (s.gap) {
        using In = planning::SharingGap::In;
        switch (s.gap->in) {
        case In::orders_going: proof = fmt::format("at most {} more could go", s.gap->most); break;
        case In::orders_in_time: proof = fmt::format("at most {} more in time", s.gap->most); break;
        case In::filler_and_tape: proof = fmt::format("at most {} less over", s.gap->most / 1000); break;
        case In::wish: proof = fmt::format("at most {:.1f} % better", static_cast<double>(s.gap->most) / 10); break;
        }
    }
    rows.push_back({fmt::to_string(count), std::string(planning::name_of(wanted)),
                    std::string(few ? "few of each outer" : "plenty") + (little_filler ? ", little filler" : ""),
                    fmt::format("{:.2f}", m.seconds), fmt::to_string(m.plan.parcels.size()),
                    fmt::to_string(m.plan.stuck.size()), fmt::to_string(s.moved), fmt::to_string(s.more_go),
                    to_text(s.saves), fmt::format("{:.1f}", in_litres(s.smaller)), proof, dearest});
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
    bench::print_heading("The whole day's choice", fmt::format("day_bench {}", seed));
    fmt::print("Saved and smaller: against taking the orders one by one from the same stock, of orders that go either "
               "way.\n\n");
    bench::print_table({"orders", "wanted", "stock", "s", "parcels", "stuck", "stepped back", "more go", "saves",
                        "l smaller", "", "dearest shortage"},
                       rows);
    return 0;
}
