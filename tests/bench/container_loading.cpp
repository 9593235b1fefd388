// Fills the containers of Bischoff & Ratcliff (classes 1 to 15, or a file of OR-Library) and prints a table a class.
//   container_loading [--class 1-7] [--first 20] [--shard 1/1] [--seconds 30] [--support none|full]
//                     [--file thpack.txt] [--results container_loading.txt]
// One anytime run a problem; its best after 1, 5, 10 and 30 s is kept. A line a problem goes to the results file, and
// what stands there already is not run again, so that long runs can be stopped, and shared out by shards. `--first 0`
// runs nothing and prints the table.
#include "core/fitting/check.h"
#include "core/fitting/fill.h"
#include "tests/bench/cpu_clock.h"
#include "tests/bench/first_fit.h"
#include "tests/bench/report.h"
#include "tests/bench/thpack.h"

#include <algorithm>
#include <fmt/format.h>
#include <fstream>
#include <iostream>
#include <sstream>

namespace {

using namespace stow;
using namespace stow::bench;
using fitting::Support;

constexpr std::array<double, 4> moments{1, 5, 10, 30}; // s

struct Result {
    int br_class = 0, problem = 0;
    std::string support;
    int seconds = 0;
    std::int64_t container = 0, cargo = 0, baseline = 0;
    std::array<std::int64_t, moments.size()> best{}; // volume at each moment
};

std::ostream& operator<<(std::ostream& out, const Result& r)
{
    out << r.br_class << ' ' << r.problem << ' ' << r.support << ' ' << r.seconds << ' ' << r.container << ' '
        << r.cargo << ' ' << r.baseline;
    for (const std::int64_t volume : r.best) out << ' ' << volume;
    return out << '\n';
}

std::vector<Result> read_results(const std::string& name)
{
    std::vector<Result> results;
    std::ifstream in(name);
    for (std::string line; std::getline(in, line);) {
        std::istringstream words(line);
        Result r;
        words >> r.br_class >> r.problem >> r.support >> r.seconds >> r.container >> r.cargo >> r.baseline;
        for (std::int64_t& volume : r.best) words >> volume;
        if (words) results.push_back(r);
    }
    return results;
}

// The pieces chosen, asked as a question of their own, so that the checker can judge the arrangement.
void verify(const fitting::Question& question, const fitting::Filled& filled)
{
    fitting::Question chosen = question;
    Volume sum;
    for (fitting::Item& item : chosen.items) {
        const auto inside = std::count_if(filled.placements.begin(), filled.placements.end(),
                                          [&](const fitting::Placement& p) { return p.item == item.id; });
        if (inside > item.count) throw std::logic_error("more pieces of a type than there are");
        item.count = static_cast<int>(inside);
        sum += volume(bounding_size(item.shape)) * inside;
    }
    const auto wrong = fitting::check(chosen, question.outers[0].id, {}, filled.placements);
    if (!wrong.empty()) {
        throw std::logic_error("the checker objects: " + std::string(name_of(wrong[0].rule)) + ", " + wrong[0].item);
    }
    if (sum != filled.volume) throw std::logic_error("a volume that is not that of the pieces inside");
}

Result run_one(int br_class, const ContainerProblem& problem, const std::string& support, int seconds)
{
    const fitting::Question question = question_of(problem, support == "full" ? Support::full : Support::none);
    Result result{br_class,
                  problem.number,
                  support,
                  seconds,
                  container_volume(problem),
                  cargo_volume(problem),
                  first_fit_filled(question).units,
                  {}};
    const Stopwatch watch;
    Run run({std::chrono::seconds(seconds), 0}, nullptr, thread_time);
    const auto note = [&](const fitting::Filled& filled) {
        for (std::size_t m = 0; m < moments.size(); ++m) {
            if (watch.seconds() <= moments[m]) result.best[m] = std::max(result.best[m], filled.volume.units);
        }
    };
    const fitting::Filled filled = fitting::fill(question, 0, run, note);
    verify(question, filled);
    return result;
}

// Published means, %, without and with full support; see tests/bench/RESULTS.md for what the marks mean.
struct Published {
    const char* method;
    std::array<double, 15> mean;
};
constexpr std::array without_support{Published{"CLTRS 2010, 320 s [M=]",
                                               {95.05, 95.43, 95.47, 95.18, 95.00, 94.79, 94.24, 93.70, 93.44, 93.09,
                                                92.81, 92.73, 92.46, 92.40, 92.40}},
                                     Published{"ID-GLTS 2012, 500 s [M=]",
                                               {95.59, 96.13, 96.30, 96.15, 95.98, 95.81, 95.36, 94.80, 94.53, 94.35,
                                                94.14, 94.10, 93.86, 93.83, 93.78}},
                                     Published{"BSG 2014, 500 s [M=]",
                                               {95.69, 96.24, 96.49, 96.31, 96.18, 96.05, 95.77, 95.33, 95.07, 94.97,
                                                94.80, 94.64, 94.59, 94.49, 94.37}}};
constexpr std::array with_support{Published{"CLTRS 2010, 320 s [M]",
                                            {94.51, 94.73, 94.74, 94.41, 94.13, 93.85, 93.20, 92.26, 91.48, 90.86,
                                             90.11, 89.51, 88.98, 88.26, 87.57}},
                                  Published{"mp-BRKGA 2012, 147 s, several cores [M]",
                                            {94.34, 94.88, 95.05, 94.75, 94.58, 94.39, 93.74, 92.65, 91.90, 91.28,
                                             90.39, 89.81, 89.27, 88.57, 87.96}},
                                  Published{"ID-GLTS 2012, 500 s [M]",
                                            {94.40, 94.85, 95.10, 94.81, 94.52, 94.33, 93.59, 92.65, 92.11, 91.60,
                                             90.64, 90.35, 89.69, 89.07, 88.36}}};

struct Means { // of one class, shares of one
    int problems = 0;
    double cargo = 0, baseline = 0;
    std::array<double, moments.size()> best{};
    std::array<double, 3> published{};

    void add(const Means& m)
    {
        problems += m.problems;
        cargo += m.cargo;
        baseline += m.baseline;
        for (std::size_t k = 0; k < best.size(); ++k) best[k] += m.best[k];
        for (std::size_t k = 0; k < published.size(); ++k) published[k] += m.published[k];
    }
    void divide(double by)
    {
        cargo /= by;
        baseline /= by;
        for (double& b : best) b /= by;
        for (double& p : published) p /= by;
    }
};

Means means_of(const std::vector<Result>& results, int br_class, const std::array<Published, 3>& published)
{
    Means means;
    for (const Result& r : results) {
        if (r.br_class != br_class) continue;
        const auto container = static_cast<double>(r.container);
        ++means.problems;
        means.cargo += static_cast<double>(r.cargo) / container;
        means.baseline += static_cast<double>(r.baseline) / container;
        for (std::size_t m = 0; m < moments.size(); ++m) means.best[m] += static_cast<double>(r.best[m]) / container;
    }
    means.divide(std::max(means.problems, 1));
    for (std::size_t k = 0; k < published.size(); ++k) {
        if (br_class >= 1) means.published[k] = published[k].mean[static_cast<std::size_t>(br_class - 1)] / 100;
    }
    return means;
}

void print_results(const std::vector<Result>& results, const std::string& support, int seconds)
{
    const std::array<Published, 3>& published = support == "full" ? with_support : without_support;
    TableRow head{"class", "problems", "cargo / container", "first fit"};
    std::size_t shown = 0; // moments within the time given
    while (shown < moments.size() && moments[shown] <= seconds) {
        head.push_back(fmt::format("{:.0f} s", moments[shown]));
        ++shown;
    }
    for (const Published& p : published) head.emplace_back(p.method);
    const auto row_of = [&](const std::string& name, const Means& m) {
        TableRow row{name, std::to_string(m.problems), percent(m.cargo), percent(m.baseline)};
        for (std::size_t k = 0; k < shown; ++k) row.push_back(percent(m.best[k]));
        for (const double p : m.published) row.push_back(p > 0 ? percent(p) : "");
        return row;
    };
    std::vector<TableRow> rows;
    for (const auto& [first, last] : {std::pair{0, 0}, std::pair{1, 7}, std::pair{8, 15}}) {
        Means all;
        int classes = 0;
        for (int c = first; c <= last; ++c) {
            const Means m = means_of(results, c, published);
            if (m.problems == 0) continue;
            rows.push_back(row_of(c == 0 ? "file" : fmt::format("BR{}", c), m));
            all.add(m);
            ++classes;
        }
        if (classes < 2) continue;
        all.divide(classes);
        rows.push_back(row_of(fmt::format("**{} classes**", classes), all));
    }
    print_table(head, rows);
}

} // namespace

int main(int argc, char** argv)
{
    const Options options(argc, argv,
                          {{"--class", "1-7"},
                           {"--first", "20"},
                           {"--shard", "1/1"},
                           {"--seconds", "30"},
                           {"--support", "none"},
                           {"--file", ""},
                           {"--results", "container_loading.txt"}});
    const std::string support = options.text("--support"), name = options.text("--results");
    const int seconds = options.number("--seconds");
    const std::string shard = options.text("--shard");
    const int part = std::stoi(shard), parts = std::stoi(shard.substr(shard.find('/') + 1));

    std::vector<std::pair<int, ContainerProblem>> problems; // class 0: from a file
    if (!options.text("--file").empty()) {
        std::ifstream in(options.text("--file"));
        for (const ContainerProblem& p : read_thpack(in)) {
            if (p.number <= options.number("--first")) problems.emplace_back(0, p);
        }
    } else {
        for (const int c : options.numbers("--class")) {
            for (int p = 1; p <= std::min(options.number("--first"), 100); ++p) {
                problems.emplace_back(c, bischoff_ratcliff(types_of_class(c), p));
            }
        }
    }

    const auto of_this_kind = [&](const Result& r) { return r.support == support && r.seconds == seconds; };
    std::vector<Result> results = read_results(name);
    results.erase(std::remove_if(results.begin(), results.end(), [&](const Result& r) { return !of_this_kind(r); }),
                  results.end());
    for (std::size_t k = 0; k < problems.size(); ++k) {
        if (static_cast<int>(k) % parts != part - 1) continue;
        const auto& [br_class, problem] = problems[k];
        const auto done = [&, c = br_class, number = problem.number](const Result& r) {
            return r.br_class == c && r.problem == number;
        };
        if (std::any_of(results.begin(), results.end(), done)) continue;
        const Result result = run_one(br_class, problem, support, seconds);
        std::ofstream(name, std::ios::app) << result;
        std::cerr << "class " << br_class << ", problem " << problem.number << ": "
                  << percent(static_cast<double>(result.best.back()) / static_cast<double>(result.container)) << " %\n";
        results.push_back(result);
    }
    print_heading(support == "full" ? "Container loading, full support" : "Container loading, no support",
                  options.command());
    fmt::print(
        "Mean share of the container's volume in %; the best of one run at each moment. Every arrangement passed "
        "the checker.\n\n");
    print_results(results, support, seconds);
    return 0;
}
