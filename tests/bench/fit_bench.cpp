// Single questions of each kind, the bounds and the checker, one at a time (Google Benchmark).
//   fit_bench [--benchmark_filter=...]
#include "core/fitting/bounds.h"
#include "core/fitting/candidate.h"
#include "core/fitting/check.h"
#include "core/fitting/fit.h"
#include "tests/bench/by_construction.h"
#include "tests/bench/dissection.h"
#include "tests/bench/order_series.h"

#include <benchmark/benchmark.h>

namespace {

using namespace stow;
using namespace stow::bench;
using namespace stow::fitting;

constexpr std::size_t many = 32; // questions, taken in turn

template <class Make>
std::vector<Question> questions(const Make& make)
{
    std::vector<Question> all;
    for (std::size_t k = 0; k < many; ++k) all.push_back(make(k));
    return all;
}

std::vector<Question> orders(Series series, int pieces)
{
    return questions([&](std::size_t k) { return order_of(series, pieces, k); });
}

void ask_in_turn(benchmark::State& state, const std::vector<Question>& all, std::uint64_t work)
{
    std::size_t k = 0, decided = 0, asked = 0;
    for ([[maybe_unused]] auto _ : state) {
        stow::Run run({std::nullopt, work});
        const Answer a = fit(all[k], run);
        decided += a.proven_smallest || a.verdict == Verdict::cannot_fit ? 1 : 0;
        ++asked;
        k = (k + 1) % all.size();
    }
    state.counters["decided"] = static_cast<double>(decided) / static_cast<double>(asked);
}

void shop_orders(benchmark::State& state)
{
    ask_in_turn(state, orders(Series::shop, static_cast<int>(state.range(0))), 20'000);
}
BENCHMARK(shop_orders)->Arg(1)->Arg(3)->Arg(5)->Arg(8)->Arg(12);

void near_misses(benchmark::State& state)
{
    ask_in_turn(state, orders(Series::near_miss, static_cast<int>(state.range(0))), 20'000);
}
BENCHMARK(near_misses)->Arg(3)->Arg(5)->Arg(8)->Arg(12);

void pinwheels(benchmark::State& state)
{
    Dice dice(1);
    const auto puzzle = [&](std::size_t) {
        return perfect_puzzle(dice, static_cast<int>(state.range(0)), Cutting::pinwheel, tenth_mm(1)).question;
    };
    ask_in_turn(state, questions(puzzle), 1'000'000);
}
BENCHMARK(pinwheels)->Arg(5)->Arg(10);

void scene(benchmark::State& state)
{
    const Scene wanted = all_scenes[static_cast<std::size_t>(state.range(0))];
    Dice dice(1);
    const auto make = [&](std::size_t) {
        for (;;) {
            if (auto made = construct(dice, wanted)) return made->question;
        }
    };
    state.SetLabel(std::string(name_of(wanted)));
    ask_in_turn(state, questions(make), 4'000);
}
BENCHMARK(scene)->DenseRange(0, static_cast<int>(all_scenes.size()) - 1);

// The bounds alone, on every near-miss carton of one order.
template <class Bound>
void bound_in_turn(benchmark::State& state, const Bound& bound)
{
    const Question q = order_of(Series::near_miss, static_cast<int>(state.range(0)), 7);
    const Load load = make_load(q, Room::box);
    std::vector<std::size_t> indices(q.outers.size());
    for (std::size_t k = 0; k < indices.size(); ++k) indices[k] = k;
    const std::vector<Candidate> candidates = candidates_of(q, indices, load, make_load(q, Room::sleeve));
    std::size_t k = 0;
    for ([[maybe_unused]] auto _ : state) {
        benchmark::DoNotOptimize(bound(load, candidates[k].space));
        k = (k + 1) % candidates.size();
    }
}
void fast_bounds(benchmark::State& state)
{
    bound_in_turn(state, [](const Load& load, const Space& space) { return refuse_fast(load, space); });
}
BENCHMARK(fast_bounds)->Arg(8)->Arg(12);
void stronger_bounds(benchmark::State& state)
{
    bound_in_turn(state, [](const Load& load, const Space& space) { return refuse_by_bounds(load, space); });
}
BENCHMARK(stronger_bounds)->Arg(8)->Arg(12);

void checker(benchmark::State& state)
{
    Dice dice(1);
    Puzzle puzzle = perfect_puzzle(dice, 10, Cutting::pinwheel, tenth_mm(1));
    puzzle.question.support = state.range(0) == 0 ? Support::none : Support::partial;
    for ([[maybe_unused]] auto _ : state) benchmark::DoNotOptimize(check(puzzle.question, "box", {}, puzzle.solution));
    state.SetLabel(state.range(0) == 0 ? "10 pieces" : "10 pieces, support");
}
BENCHMARK(checker)->Arg(0)->Arg(1);

} // namespace

BENCHMARK_MAIN();
