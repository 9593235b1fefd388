// Fewest bins for the problems of Martello, Pisinger & Vigo (items not turned), and a table a class.
//   bins [--class 1,4-8] [--items 50,100,150,200] [--first 10] [--shard 1/1] [--seconds 5] [--results bins.txt]
// A line a problem goes to the results file, and what stands there already is not run again. `--first 0` runs nothing
// and prints the table. A search ends early at the bound L2.
#include "core/fitting/bins.h"
#include "core/fitting/check.h"
#include "tests/bench/bin_problems.h"
#include "tests/bench/cpu_clock.h"
#include "tests/bench/first_fit.h"
#include "tests/bench/report.h"

#include <algorithm>
#include <fmt/format.h>
#include <fstream>
#include <iostream>
#include <sstream>

namespace {

using namespace stow;
using namespace stow::bench;

struct Result {
    int mpv_class = 0, items = 0, problem = 0, seconds = 0;
    std::int64_t l2 = 0, baseline = 0, bins = 0;
    double when = 0; // s until the last improvement
};

std::ostream& operator<<(std::ostream& out, const Result& r)
{
    return out << r.mpv_class << ' ' << r.items << ' ' << r.problem << ' ' << r.seconds << ' ' << r.l2 << ' '
               << r.baseline << ' ' << r.bins << ' ' << r.when << '\n';
}

std::vector<Result> read_results(const std::string& name)
{
    std::vector<Result> results;
    std::ifstream in(name);
    for (std::string line; std::getline(in, line);) {
        std::istringstream words(line);
        Result r;
        words >> r.mpv_class >> r.items >> r.problem >> r.seconds >> r.l2 >> r.baseline >> r.bins >> r.when;
        if (words) results.push_back(r);
    }
    return results;
}

// Each bin as a question of its own; every item exactly once.
void verify(const fitting::Question& question, const fitting::Bins& bins)
{
    std::vector<std::string> seen;
    for (const std::vector<fitting::Placement>& placements : bins.outers) {
        fitting::Question one = question;
        one.items.clear();
        for (const fitting::Placement& p : placements) {
            one.items.push_back(question.items.at(static_cast<std::size_t>(std::stoul(p.item) - 1)));
            seen.push_back(p.item);
        }
        if (!fitting::check(one, "bin", {}, placements).empty()) throw std::logic_error("the checker objects");
    }
    std::sort(seen.begin(), seen.end());
    const bool twice = std::adjacent_find(seen.begin(), seen.end()) != seen.end();
    if (twice || seen.size() != question.items.size()) throw std::logic_error("not every item exactly once");
}

Result run_one(int mpv_class, int items, int problem, int seconds)
{
    const BinProblem instance = martello_pisinger_vigo(mpv_class, items, problem);
    const fitting::Question question = question_of(instance);
    Result result{mpv_class, items, problem, seconds, bound_l2(instance), first_fit_bins(question), 0, 0};
    const Stopwatch watch;
    Run run({std::chrono::seconds(seconds), 0}, nullptr, thread_time);
    const fitting::Bins bins = fitting::fewest_outers(question, 0, run, static_cast<std::size_t>(result.l2),
                                                      [&](const fitting::Bins&) { result.when = watch.seconds(); });
    verify(question, bins);
    result.bins = static_cast<std::int64_t>(bins.outers.size());
    return result;
}

// Published mean bins of ten problems, remembered from the papers; classes 2 and 3 are not in their tables.
struct Published {
    int mpv_class, items;
    double ts3, gls, ts2pack;
};
constexpr std::array published{
    Published{1, 50, 13.4, 13.4, 13.4},  Published{1, 100, 26.6, 26.7, 26.7},    Published{1, 150, 36.7, 37.0, 37.0},
    Published{1, 200, 51.2, 51.2, 51.1}, Published{4, 50, 29.4, 29.4, 29.4},     Published{4, 100, 59.0, 59.0, 58.9},
    Published{4, 150, 86.8, 86.8, 86.8}, Published{4, 200, 118.8, 119.0, 118.8}, Published{5, 50, 8.4, 8.3, 8.3},
    Published{5, 100, 15.0, 15.1, 15.2}, Published{5, 150, 20.4, 20.2, 20.1},    Published{5, 200, 27.6, 27.2, 27.4},
    Published{6, 50, 9.9, 9.8, 9.8},     Published{6, 100, 19.1, 19.1, 19.1},    Published{6, 150, 29.4, 29.4, 29.2},
    Published{6, 200, 37.7, 37.7, 37.7}, Published{7, 50, 7.5, 7.4, 7.4},        Published{7, 100, 12.5, 12.3, 12.3},
    Published{7, 150, 16.1, 15.8, 15.8}, Published{7, 200, 23.9, 23.5, 23.5},    Published{8, 50, 9.3, 9.2, 9.2},
    Published{8, 100, 18.9, 18.9, 18.8}, Published{8, 150, 24.1, 23.9, 23.9},    Published{8, 200, 30.3, 29.9, 30.0}};

void print_results(const std::vector<Result>& results)
{
    std::vector<TableRow> rows;
    std::array<double, 6> sums{}; // l2, baseline, ours, and the published ones, over the groups the papers have
    int groups = 0;
    for (int c = 1; c <= 8; ++c) {
        for (int n = 50; n <= 200; n += 50) {
            double count = 0, l2 = 0, baseline = 0, ours = 0;
            int proven = 0;
            for (const Result& r : results) {
                if (r.mpv_class != c || r.items != n) continue;
                count += 1;
                l2 += static_cast<double>(r.l2);
                baseline += static_cast<double>(r.baseline);
                ours += static_cast<double>(r.bins);
                proven += r.l2 == r.bins ? 1 : 0;
            }
            if (count == 0) continue;
            TableRow row{std::to_string(c),     std::to_string(n),          fixed(count, 0),
                         fixed(l2 / count, 1),  fixed(baseline / count, 1), fixed(ours / count, 1),
                         std::to_string(proven)};
            const auto known = std::find_if(published.begin(), published.end(),
                                            [&](const Published& p) { return p.mpv_class == c && p.items == n; });
            if (known == published.end()) {
                row.insert(row.end(), 3, "");
            } else {
                const std::array values{l2 / count, baseline / count, ours / count,
                                        known->ts3, known->gls,       known->ts2pack};
                for (std::size_t k = 0; k < sums.size(); ++k) sums[k] += values[k];
                for (std::size_t k = 3; k < sums.size(); ++k) row.push_back(fixed(values[k], 1));
                ++groups;
            }
            rows.push_back(row);
        }
    }
    rows.push_back({"**sum**", fmt::format("{} rows of classes 1, 4-8", groups), "", fixed(sums[0], 1),
                    fixed(sums[1], 1), fixed(sums[2], 1), "", fixed(sums[3], 1), fixed(sums[4], 1), fixed(sums[5], 1)});
    print_table({"class", "items", "problems", "bound L2", "first fit", "ours", "proven by L2", "TS3 2002, 1000 s [M]",
                 "GLS 2003, 1000 s [M]", "TS2PACK 2009, 300 s [M]"},
                rows);
}

} // namespace

int main(int argc, char** argv)
{
    const Options options(argc, argv,
                          {{"--class", "1,4-8"},
                           {"--items", "50,100,150,200"},
                           {"--first", "10"},
                           {"--shard", "1/1"},
                           {"--seconds", "5"},
                           {"--results", "bins.txt"}});
    const std::string name = options.text("--results"), shard = options.text("--shard");
    const int seconds = options.number("--seconds");
    const int part = std::stoi(shard), parts = std::stoi(shard.substr(shard.find('/') + 1));
    std::vector<Result> results = read_results(name);
    results.erase(std::remove_if(results.begin(), results.end(), [&](const Result& r) { return r.seconds != seconds; }),
                  results.end());
    int number = 0;
    for (const int c : options.numbers("--class")) {
        for (const int n : options.numbers("--items")) {
            for (int v = 1; v <= std::min(options.number("--first"), 10); ++v) {
                if (number++ % parts != part - 1) continue;
                const auto done = [&, c = c, n = n](const Result& r) {
                    return r.mpv_class == c && r.items == n && r.problem == v;
                };
                if (std::any_of(results.begin(), results.end(), done)) continue;
                const Result result = run_one(c, n, v, seconds);
                std::ofstream(name, std::ios::app) << result;
                std::cerr << "class " << c << ", " << n << " items, problem " << v << ": " << result.bins
                          << " bins, bound " << result.l2 << '\n';
                results.push_back(result);
            }
        }
    }
    print_heading("Three-dimensional bin packing, items not turned", options.command());
    fmt::print(
        "Mean bins of the problems of each row. Every bin passed the checker; a search ends early at the bound.\n\n");
    print_results(results);
    return 0;
}
