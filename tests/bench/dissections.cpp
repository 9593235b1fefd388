// Boxes cut up without waste, put together again, and their twins with one piece grown and another shrunk.
//   dissections [--puzzles 240] [--seconds 10]
#include "core/fitting/check.h"
#include "core/fitting/fit.h"
#include "tests/bench/cpu_clock.h"
#include "tests/bench/dissection.h"
#include "tests/bench/first_fit.h"
#include "tests/bench/report.h"

#include <fmt/format.h>

namespace {

using namespace stow;
using namespace stow::bench;
using namespace stow::fitting;

struct Counts {
    int asked = 0, fits = 0, refused = 0, undecided = 0, wrong = 0, first_fit = 0;
    std::vector<double> ms;
};

void ask(const Question& q, int seconds, Counts& counts)
{
    const Stopwatch watch;
    Run run({std::chrono::seconds(seconds), 0}, nullptr, thread_time);
    const Answer a = fit(q, run);
    counts.ms.push_back(watch.milliseconds());
    ++counts.asked;
    switch (a.verdict) {
    case Verdict::fits:
        ++counts.fits;
        if (!check(q, a.outer, a.cut_height, a.placements).empty()) ++counts.wrong;
        break;
    case Verdict::cannot_fit: ++counts.refused; break;
    case Verdict::undecided: ++counts.undecided; break;
    }
    if (first_fit_outer(q)) ++counts.first_fit;
}

std::string share(int part, int whole)
{
    return percent(static_cast<double>(part) / whole);
}

} // namespace

int main(int argc, char** argv)
{
    const Options options(argc, argv, {{"--puzzles", "240"}, {"--seconds", "10"}});
    const int puzzles = options.number("--puzzles"), seconds = options.number("--seconds");
    print_heading("Perfect dissections and their twins", options.command());
    fmt::print("5 to 10 pieces, free to be turned, no room to spare; {} of each kind, {} s each. A twin has one piece "
               "grown and another shrunk, all together no more than the box: hardly any fits, and of those that do the "
               "arrangement passed the checker. Wrong: a dissection refused, or an arrangement that the checker "
               "objects to.\n\n",
               puzzles, seconds);
    std::vector<TableRow> solved, twins;
    for (const Length grain : {tenth_mm(1), mm(10)}) {
        for (const Cutting cutting : {Cutting::guillotine, Cutting::pinwheel}) {
            Counts perfect, twin;
            Dice dice(20'261'125);
            for (int k = 0; k < puzzles; ++k) {
                const Puzzle puzzle = perfect_puzzle(dice, 5 + k % 6, cutting, grain);
                ask(puzzle.question, seconds, perfect);
                ask(twin_of(dice, puzzle).question, seconds, twin);
            }
            perfect.wrong += perfect.refused;
            const std::string name =
                fmt::format("{}, sides in steps of {} mm", cutting == Cutting::guillotine ? "guillotine" : "pinwheel",
                            in_mm(grain));
            solved.push_back({name, std::to_string(perfect.asked), share(perfect.fits, perfect.asked),
                              std::to_string(perfect.wrong), fixed(quantile(perfect.ms, 0.5), 3),
                              fixed(quantile(perfect.ms, 0.99), 1), share(perfect.first_fit, perfect.asked)});
            twins.push_back({name, std::to_string(twin.asked), share(twin.refused, twin.asked),
                             share(twin.undecided, twin.asked), share(twin.fits, twin.asked),
                             std::to_string(twin.wrong), fixed(quantile(twin.ms, 0.5), 3),
                             fixed(quantile(twin.ms, 0.99), 1)});
        }
    }
    print_table({"dissections", "asked", "solved %", "wrong", "median ms", "99th percentile ms", "first fit solves %"},
                solved);
    print_table({"twins", "asked", "refused %", "undecided %", "fit all the same %", "wrong", "median ms",
                 "99th percentile ms"},
                twins);
    return 0;
}
