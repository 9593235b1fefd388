#include "core/records/size_advice.h"
#include "core/records/size_choice.h"

#include <gtest/gtest.h>

#include <random>

namespace stow::records {
namespace {

struct Best {
    std::int64_t served = -1, cost = 0;
};

// Every choice of k sizes.
Best brute_force(const std::vector<Demand>& demands, int k)
{
    const std::size_t sizes = demands.front().cost.size();
    Best best;
    for (std::uint32_t choice = 0; choice < (1U << sizes); ++choice) {
        if (__builtin_popcount(choice) != k) continue;
        Best own{0, 0};
        for (const Demand& d : demands) {
            std::optional<std::int64_t> least;
            for (std::size_t s = 0; s < sizes; ++s) {
                if ((choice >> s & 1U) != 0 && d.cost[s] && (!least || *d.cost[s] < *least)) least = d.cost[s];
            }
            if (!least) continue;
            own.served += d.count;
            own.cost += *least * d.count;
        }
        if (own.served > best.served || (own.served == best.served && own.cost < best.cost)) best = own;
    }
    return best;
}

TEST(SizeChooser, AgreesWithBruteForceWithinItsBound)
{
    std::mt19937 random(3);
    int closed = 0, cases = 0;
    for (int i = 0; i < 150; ++i) {
        const auto up_to = [&](unsigned n) { return static_cast<std::int64_t>(random() % n); };
        const auto sizes = static_cast<std::size_t>(4 + up_to(6));
        std::vector<std::int64_t> room;
        for (std::size_t s = 0; s < sizes; ++s) room.push_back(10 + up_to(90));
        std::vector<Demand> demands;
        for (auto d = 3 + up_to(20); d > 0; --d) {
            Demand demand{1 + up_to(9), {}};
            const std::int64_t need = up_to(95);
            for (const std::int64_t r : room) {
                demand.cost.push_back(r >= need ? std::optional(20 + r + (r - need) / 3 + up_to(4)) : std::nullopt);
            }
            demands.push_back(std::move(demand));
        }
        for (int k = 1; k <= 4; ++k) {
            stow::Run run;
            const SizeChoice choice = SizeChooser(demands).choose(k, run);
            const Best best = brute_force(demands, std::min(k, static_cast<int>(sizes)));
            ++cases;
            EXPECT_LE(choice.served, best.served);
            if (choice.served == best.served) {
                EXPECT_GE(choice.cost, best.cost);
                EXPECT_LE(choice.bound, static_cast<double>(best.cost) + 1e-3);
            }
            closed += choice.served == best.served && choice.cost == best.cost ? 1 : 0;
        }
    }
    EXPECT_GE(closed, cases * 98 / 100); // the exchange finds the best of nearly all small ones
}

TEST(SizeChooser, BranchingClosesWhatTheRelaxationLeaves)
{
    // A kind for each pair of six sizes, cheap in those two. Any two sizes serve 9 of the 15 kinds well; taking each
    // size by a third would serve each kind by two thirds, 15 × (2/3 · 1 + 1/3 · 10) = 60.
    std::vector<Demand> demands;
    for (std::size_t a = 0; a < 6; ++a) {
        for (std::size_t b = a + 1; b < 6; ++b) {
            Demand demand{1, std::vector<std::optional<std::int64_t>>(6, 1000)};
            demand.cost[a] = demand.cost[b] = 100;
            demands.push_back(std::move(demand));
        }
    }
    stow::Run run;
    const SizeChoice choice = SizeChooser(demands).choose(2, run);
    EXPECT_EQ(choice.cost, 9 * 100 + 6 * 1000);
    EXPECT_NEAR(choice.bound, 6900, 0.01 * 6900);
}

TEST(SizeChooser, LeavesOutWhatAnotherSizeDoesAsWell)
{
    // The second size holds all that the first does, for less; the third is the second again.
    const std::vector<Demand> demands{{3, {10, 9, 9, 5}}, {2, {12, 12, 12, std::nullopt}}};
    const SizeChooser chooser(demands);
    EXPECT_EQ(chooser.sizes_left(), 2U);
    stow::Run run;
    const SizeChoice one = chooser.choose(1, run);
    EXPECT_EQ(one.sizes, std::vector<std::size_t>{1});
    EXPECT_EQ(one.served, 5);
    EXPECT_EQ(one.cost, 3 * 9 + 2 * 12);
    const SizeChoice two = chooser.choose(2, run);
    EXPECT_EQ(two.sizes, (std::vector<std::size_t>{1, 3}));
    EXPECT_EQ(two.cost, 3 * 5 + 2 * 12);
    EXPECT_DOUBLE_EQ(two.gap(), 0);
}

TEST(SizeAdvice, IsJudgedByWeeksItHasNotSeen)
{
    shop::Cupboard cupboard;
    const auto carton = [](const char* code, std::int64_t edge, std::int64_t cents) {
        shop::Supply s;
        s.code = {code};
        s.form = OuterForm{};
        s.form->inner = {mm(edge), mm(edge), mm(edge)};
        s.form->outer = {mm(edge + 6), mm(edge + 6), mm(edge + 6)};
        s.cost = {cents, {}};
        return s;
    };
    cupboard.supplies[{"NOW"}] = carton("NOW", 300, 120);
    SizeWish wish;
    wish.offered = {carton("A", 110, 40), carton("B", 210, 70), carton("C", 310, 110)};
    wish.most = 3;
    wish.weeks_kept_back = 2;
    std::vector<PackedShape> history;
    const Date first = *parse_date("2026-08-03");
    for (int day = 0; day < 70; ++day) {
        const std::int64_t edge = day % 3 == 0 ? 200 : 100;
        history.push_back({{mm(edge), mm(edge), mm(edge)}, grams(500), first + std::chrono::days(day)});
    }
    stow::Run run;
    const SizeAdvice advice = advise_sizes(history, cupboard, wish, run);
    EXPECT_EQ(advice.parcels, 56);
    EXPECT_EQ(advice.judged, 14);
    EXPECT_EQ(advice.kinds, 2);
    ASSERT_EQ(advice.curve.size(), 3U);
    EXPECT_EQ(advice.curve[0].sizes, std::vector<std::size_t>{1}); // the one that holds both
    EXPECT_EQ(advice.curve[1].sizes, (std::vector<std::size_t>{0, 1}));
    EXPECT_EQ(advice.judged_cost[0], 7000);
    EXPECT_EQ(advice.judged_cost[1], (5 * 70 + 9 * 40) * 100 / 14);
    EXPECT_EQ(advice.cost_now, 12000);
}

} // namespace
} // namespace stow::records
