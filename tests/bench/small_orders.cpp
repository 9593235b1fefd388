// Small orders: which share of the smallest outers is proven, and how long that takes.
//   small_orders [--series shop,near_miss] [--orders 500] [--seconds 1]
// Orders of 1 to 8 and 9 to 12 pieces in turn (order_series.h); each gets that much time. The outer that decides is
// that of the answer; orders that none of the 40 outers holds stand in a band of their own.
#include "core/fitting/check.h"
#include "core/fitting/fit.h"
#include "tests/bench/cpu_clock.h"
#include "tests/bench/first_fit.h"
#include "tests/bench/order_series.h"
#include "tests/bench/report.h"

#include <fmt/format.h>
#include <iostream>

namespace {

using namespace stow;
using namespace stow::bench;
using namespace stow::fitting;

struct Outcome {
    bool proven = false; // the smallest outer, or that none holds the order
    bool found = false;
    bool partial_decided = false; // the same under partial support
    double fill = 0;              // of the outer of the answer
    double ms = 0, baseline_ms = 0;
    double baseline_larger = 0; // volume of the baseline's outer over ours
    bool baseline_found = false, baseline_same = false;
};

Volume pieces_volume(const Question& q)
{
    Volume sum;
    for (const Item& item : q.items) sum += volume(bounding_size(item.shape)) * item.count;
    return sum;
}
std::size_t index_of(const Question& q, const std::string& outer)
{
    for (std::size_t k = 0; k < q.outers.size(); ++k) {
        if (q.outers[k].id == outer) return k;
    }
    throw std::logic_error("no such outer");
}

bool decided(const Answer& a)
{
    return a.verdict == Verdict::cannot_fit || a.proven_smallest;
}

Outcome measure(Question q, std::chrono::milliseconds time)
{
    Outcome out;
    const auto ask = [&] {
        Run run({time, 0}, nullptr, thread_time);
        Answer a = fit(q, run);
        if (a.verdict == Verdict::fits && !check(q, a.outer, a.cut_height, a.placements).empty()) {
            throw std::logic_error("the checker objects");
        }
        return a;
    };
    const Stopwatch watch;
    const Answer a = ask();
    out.ms = watch.milliseconds();
    out.proven = decided(a);
    out.found = a.verdict == Verdict::fits;
    const Stopwatch baseline_watch;
    const std::optional<std::size_t> plain = first_fit_outer(q);
    out.baseline_ms = baseline_watch.milliseconds();
    out.baseline_found = plain.has_value();
    if (out.found) {
        const auto inside = [&](std::size_t k) { return static_cast<double>(volume(q.outers[k].form.inner).units); };
        const std::size_t ours = index_of(q, a.outer);
        out.fill = static_cast<double>(pieces_volume(q).units) / inside(ours);
        out.baseline_same = plain && *plain == ours;
        if (plain) out.baseline_larger = inside(*plain) / inside(ours);
    }
    q.support = Support::partial;
    out.partial_decided = decided(ask());
    return out;
}

struct Band {
    const char* name;
    double from, to;
};
constexpr std::array bands{Band{"< 70 %", 0.0001, 0.70}, Band{"70-85 %", 0.70, 0.85}, Band{"85-95 %", 0.85, 0.95},
                           Band{"> 95 %", 0.95, 2}, Band{"none holds it", 0, 0.0001}};

TableRow row_of(const std::string& group, const std::string& band, const std::vector<Outcome>& outcomes)
{
    std::vector<double> ms;
    double proven = 0, partial = 0, same = 0, larger = 0, with_both = 0, baseline_ms = 0;
    for (const Outcome& o : outcomes) {
        ms.push_back(o.ms);
        proven += o.proven ? 1 : 0;
        partial += o.partial_decided ? 1 : 0;
        same += o.baseline_same || (!o.found && !o.baseline_found) ? 1 : 0;
        baseline_ms += o.baseline_ms;
        if (!o.found || !o.baseline_found) continue;
        larger += o.baseline_larger;
        with_both += 1;
    }
    const double n = static_cast<double>(outcomes.size());
    return {group,
            band,
            std::to_string(outcomes.size()),
            percent(proven / n),
            fixed(quantile(ms, 0.5), 3),
            fixed(quantile(ms, 0.99), 1),
            percent(partial / n),
            percent(same / n),
            with_both > 0 ? fixed(100 * (larger / with_both - 1), 1) : "",
            fixed(baseline_ms / n, 3)};
}

void print_series(Series series, const std::string& name, int orders, int seconds)
{
    std::vector<TableRow> rows;
    for (const auto& [least, most] : {std::pair{1, 8}, std::pair{9, 12}}) {
        std::vector<Outcome> all;
        for (int k = 0; k < orders; ++k) {
            const int pieces = least + k % (most - least + 1);
            all.push_back(
                measure(order_of(series, pieces, static_cast<std::uint64_t>(k)), std::chrono::seconds(seconds)));
            if ((k + 1) % 100 == 0) std::cerr << name << ", " << least << "-" << most << " pieces: " << k + 1 << '\n';
        }
        const std::string group = fmt::format("{}, {}-{} pieces", name, least, most);
        rows.push_back(row_of(group, "**all**", all));
        for (const Band& band : bands) {
            std::vector<Outcome> of_band;
            for (const Outcome& o : all) {
                if (o.fill >= band.from && o.fill < band.to) of_band.push_back(o);
            }
            if (!of_band.empty()) rows.push_back(row_of("", band.name, of_band));
        }
    }
    print_table({"series", "fill of the answer's outer", "orders", "proven %", "median ms", "99th percentile ms",
                 "decided under partial support %", "first fit: same outer %", "first fit: outer larger by %",
                 "first fit: mean ms"},
                rows);
}

} // namespace

int main(int argc, char** argv)
{
    const Options options(argc, argv, {{"--series", "shop,near_miss"}, {"--orders", "500"}, {"--seconds", "1"}});
    const int orders = options.number("--orders"), seconds = options.number("--seconds");
    print_heading("Small orders", options.command());
    fmt::print("Share of orders whose smallest outer of 40 is proven within {} s (or that none holds them), `support` "
               "none. Orders drawn from seeds, {} of each kind. First fit is the baseline in the same run.\n\n",
               seconds, orders);
    const std::string series = options.text("--series");
    if (series.find("shop") != std::string::npos) print_series(Series::shop, "shop", orders, seconds);
    if (series.find("near_miss") != std::string::npos) print_series(Series::near_miss, "near miss", orders, seconds);
    return 0;
}
