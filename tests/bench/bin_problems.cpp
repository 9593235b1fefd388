#include "tests/bench/bin_problems.h"

#include "tests/bench/random.h"

#include <algorithm>
#include <set>

namespace stow::bench {

namespace {

using Edges = std::array<std::int64_t, 3>;

struct Range {
    std::int64_t least, most;
};

std::array<Range, 3> ranges_of_type(std::int64_t type, std::int64_t bin)
{
    const Range small{1, bin / 2}, large{bin / 2, bin}, long_one{2 * bin / 3, bin};
    switch (type) {
    case 1: return {small, long_one, long_one};
    case 2: return {long_one, small, long_one};
    case 3: return {long_one, long_one, small};
    case 4: return {large, large, large};
    case 5: return {small, small, small};
    case 7: return {Range{1, 35}, Range{1, 35}, Range{1, 35}};
    default: return {Range{1, bin}, Range{1, bin}, Range{1, bin}};
    }
}

std::int64_t ceil_div(std::int64_t a, std::int64_t b)
{
    return a > 0 ? (a + b - 1) / b : -(-a / b);
}

// Items more than half a bin in w and h stand one behind the other along d: a bound of bars (L1 of the paper).
std::int64_t bound_l1(const std::vector<Edges>& bars, std::int64_t bin)
{
    std::int64_t more_than_half = 0;
    std::set<std::int64_t> steps;
    for (const Edges& e : bars) {
        if (2 * e[2] > bin) ++more_than_half;
        if (2 * e[2] <= bin) steps.insert(e[2]);
    }
    std::int64_t extra = 0;
    for (const std::int64_t p : steps) {
        std::int64_t small_sum = 0, small = 0, large_sum = 0, large = 0, beside = 0;
        for (const Edges& e : bars) {
            const std::int64_t d = e[2];
            if (2 * d > bin && d <= bin - p) {
                ++large;
                large_sum += d;
                beside += (bin - d) / p;
            } else if (2 * d <= bin && d >= p) {
                ++small;
                small_sum += d;
            }
        }
        extra = std::max(extra, ceil_div(small_sum - (large * bin - large_sum), bin));
        extra = std::max(extra, ceil_div(small - beside, bin / p));
    }
    return more_than_half + extra;
}

// Along one direction: w, h across, d along.
std::int64_t bound_along(const std::vector<Edges>& items, std::int64_t bin)
{
    std::vector<Edges> bars;
    std::set<std::int64_t> ps{1}, qs{1};
    for (const Edges& e : items) {
        if (2 * e[0] > bin && 2 * e[1] > bin) bars.push_back(e);
        // The sets of a threshold change only at an edge or just past what an edge leaves.
        for (const auto& [edge, steps] : {std::pair{e[0], &ps}, std::pair{e[1], &qs}}) {
            for (const std::int64_t step : {edge, bin - edge + 1}) {
                if (step >= 1 && 2 * step <= bin) steps->insert(step);
            }
        }
    }
    const std::int64_t l1 = bound_l1(bars, bin);
    std::int64_t extra = 0;
    for (const std::int64_t p : ps) {
        for (const std::int64_t q : qs) {
            std::int64_t volume = 0, whole = 0; // `whole`: lengths of bars beside which nothing of (p, q) goes
            for (const Edges& e : items) {
                const bool bar = 2 * e[0] > bin && 2 * e[1] > bin;
                if (bar && e[0] > bin - p && e[1] > bin - q) {
                    whole += e[2];
                } else if (bar || (e[0] >= p && e[1] >= q)) {
                    volume += e[0] * e[1] * e[2];
                }
            }
            extra = std::max(extra, ceil_div(volume - (bin * l1 - whole) * bin * bin, bin * bin * bin));
        }
    }
    return l1 + extra;
}

} // namespace

BinProblem martello_pisinger_vigo(int mpv_class, int items, int problem)
{
    BinProblem p;
    p.bin = mpv_class == 6 ? 10 : mpv_class == 7 ? 40 : 100;
    Rand48 random(static_cast<std::uint64_t>(problem + items));
    for (int i = 0; i < items; ++i) {
        std::int64_t type = mpv_class;
        if (mpv_class <= 5) {
            const std::int64_t drawn = random.from_to(1, 10);
            if (drawn <= 5) type = drawn;
        }
        Edges edges{};
        const auto ranges = ranges_of_type(type, p.bin);
        for (std::size_t j = 0; j < 3; ++j) edges[j] = random.from_to(ranges[j].least, ranges[j].most);
        p.items.push_back(edges);
    }
    return p;
}

std::int64_t continuous_bound(const BinProblem& problem)
{
    std::int64_t volume = 0;
    for (const Edges& e : problem.items) volume += e[0] * e[1] * e[2];
    return ceil_div(volume, problem.bin * problem.bin * problem.bin);
}

std::int64_t bound_l2(const BinProblem& problem)
{
    std::int64_t best = 0;
    std::vector<Edges> turned = problem.items;
    for (int direction = 0; direction < 3; ++direction) {
        best = std::max(best, bound_along(turned, problem.bin));
        for (Edges& e : turned) std::rotate(e.begin(), e.begin() + 1, e.end());
    }
    return best;
}

fitting::Question question_of(const BinProblem& problem)
{
    fitting::Question q;
    for (const Edges& e : problem.items) {
        fitting::Item item;
        item.id = std::to_string(q.items.size() + 1);
        item.shape = Block{{Length{e[0]}, Length{e[1]}, Length{e[2]}}};
        item.turns.rule = Turns::Rule::fixed;
        q.items.push_back(item);
    }
    fitting::Outer outer;
    outer.id = "bin";
    outer.form.inner = outer.form.outer = {Length{problem.bin}, Length{problem.bin}, Length{problem.bin}};
    q.outers = {outer};
    return q;
}

} // namespace stow::bench
