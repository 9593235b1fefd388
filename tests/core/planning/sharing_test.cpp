// Sharing out, against trying every way.
#include "core/planning/sharing.h"

#include "core/planning/assignment.h"
#include "core/planning/sharing_price.h"
#include "core/planning/sharing_program.h"

#include <gtest/gtest.h>

#include <random>

namespace stow::planning {
namespace {

std::optional<Merit> brute_force(const Sharing& sharing)
{
    std::optional<Merit> best;
    Ways ways(sharing.orders.size(), 0);
    for (;;) {
        if (keeps_limits(sharing, ways)) {
            const Merit merit = merit_of(sharing, ways);
            if (!best || merit < *best) best = merit;
        }
        std::size_t o = 0;
        while (o < ways.size() && ++ways[o] == sharing.orders[o].size()) ways[o++] = 0;
        if (o == ways.size()) return best;
    }
}

struct Kind {
    bool pieces_only = true;
    bool soft = false;
    bool boxes = false; // two more limits are gift boxes: all ways of an order need one of them, or none does
};

Sharing random_day(std::mt19937& random, Kind kind)
{
    const auto up_to = [&](int n) { return static_cast<std::int64_t>(random() % static_cast<unsigned>(n)); };
    Sharing day;
    const auto limits = static_cast<std::size_t>(2 + up_to(4));
    for (std::size_t l = 0; l < limits; ++l) day.limits.push_back({1000 * up_to(4), true});
    if (kind.soft) day.limits.push_back({500 * up_to(8), false});
    for (int b = 0; kind.boxes && b < 2; ++b) day.limits.push_back({1000 * up_to(3), true});
    const auto orders = static_cast<std::size_t>(3 + up_to(4));
    for (std::size_t o = 0; o < orders; ++o) {
        std::vector<Way> ways;
        const auto box = day.limits.size() - 1 - static_cast<std::size_t>(up_to(2));
        const bool boxed = kind.boxes && up_to(2) == 0;
        for (auto w = 1 + up_to(4); w > 0; --w) {
            Way way;
            way.merit.late = up_to(8) == 0 ? 1 : 0;
            way.merit.wishes = {up_to(6) * 700, up_to(300), up_to(3)};
            way.merit.moved = up_to(2);
            way.merit.turn = up_to(20);
            const auto l = static_cast<std::size_t>(up_to(static_cast<int>(limits)));
            if (up_to(8) > 0 || !kind.boxes) way.needs = {{l, 1000}};
            if (boxed) way.needs.push_back({box, up_to(9) == 0 ? 2000 : 1000});
            if (!kind.pieces_only && up_to(2) == 0) way.needs.push_back({(l + 1) % limits, 1000 * (1 + up_to(2))});
            if (kind.soft && up_to(3) > 0) way.needs.push_back({limits, 1 + up_to(1900)});
            ways.push_back(way);
        }
        std::sort(ways.begin(), ways.end(), [](const Way& a, const Way& b) { return a.merit < b.merit; });
        Way out;
        out.merit.left_out = 1;
        ways.push_back(out);
        day.orders.push_back(std::move(ways));
    }
    return day;
}

void agrees(Kind kind, unsigned seed, int days)
{
    std::mt19937 random(seed);
    int scarce = 0;
    for (int i = 0; i < days; ++i) {
        SCOPED_TRACE(i);
        const Sharing day = random_day(random, kind);
        stow::Run run;
        const Shared shared = share_out(day, run);
        EXPECT_TRUE(keeps_limits(day, shared.ways));
        EXPECT_EQ(shared.merit, merit_of(day, shared.ways));
        EXPECT_EQ(shared.merit, brute_force(day));
        EXPECT_TRUE(shared.proven());
        EXPECT_LE(shared.merit, merit_of(day, one_by_one(day)));
        if (shared.ways != Ways(day.orders.size(), 0)) ++scarce;
    }
    EXPECT_GT(scarce, days / 2); // or the days would say little
}

TEST(ShareOut, AgreesWithBruteForceWherePiecesAreScarce)
{
    agrees({}, 11, 200);
}

TEST(ShareOut, AgreesWithBruteForceWhereGiftBoxesAreScarceToo)
{
    agrees({true, false, true}, 16, 600);
}

TEST(ShareOut, AgreesWithBruteForceWhereAWayNeedsSeveralThings)
{
    agrees({false, false}, 12, 150);
}

TEST(ShareOut, AgreesWithBruteForceWhereFillerRunsShort)
{
    agrees({false, true}, 13, 150);
}

TEST(ShareOut, GainsExactlyNothingWhereNothingIsScarce)
{
    std::mt19937 random(14);
    for (int i = 0; i < 100; ++i) {
        Sharing day = random_day(random, {false, true});
        for (Limit& limit : day.limits) limit.left = 1'000'000;
        stow::Run run;
        const Shared shared = share_out(day, run);
        EXPECT_EQ(shared.ways, Ways(day.orders.size(), 0));
        EXPECT_EQ(shared.ways, one_by_one(day));
        EXPECT_EQ(shared.merit, merit_of(day, one_by_one(day)));
    }
}

// Two orders, one small carton: the first could do with little more, the second would need far more. One by one the
// first takes it.
TEST(ShareOut, LeavesTheScarceThingToWhomItSavesMost)
{
    const auto way = [](std::int64_t volume, std::vector<Need> needs) {
        Way w;
        w.merit.wishes[0] = volume;
        w.needs = std::move(needs);
        return w;
    };
    Way out;
    out.merit.left_out = 1;
    Sharing day{{{way(10, {{0, 1000}}), way(11, {}), out}, {way(10, {{0, 1000}}), way(30, {}), out}}, {{1000, true}}};
    EXPECT_EQ(one_by_one(day), (Ways{0, 1}));
    stow::Run run;
    EXPECT_EQ(share_out(day, run).ways, (Ways{1, 0}));
}

// Priced, a day is sound, never better than the best, and says how far from it it may be.
TEST(ShareByPrice, KeepsItsPromiseOfTheGap)
{
    std::mt19937 random(17);
    int found = 0, open = 0;
    for (int i = 0; i < 300; ++i) {
        SCOPED_TRACE(i);
        const Sharing day = random_day(random, {true, true});
        stow::Run run;
        const auto priced = share_by_price(day, one_by_one(day), 50, run);
        if (!priced) continue;
        ++found;
        const Merit best = *brute_force(day);
        EXPECT_TRUE(keeps_limits(day, priced->ways));
        EXPECT_GE(priced->merit, best);
        EXPECT_LE(levels_of(priced->merit) - priced->behind, levels_of(best));
        if (priced->proven())
            EXPECT_EQ(priced->merit, best);
        else
            ++open;
    }
    EXPECT_GT(found, 200);
    EXPECT_GT(open, 20);
}

// However early the search ends, nothing is better by more than it says; and what the program finds is no worse.
TEST(ShareOut, NothingIsBetterByMoreThanItSays)
{
    std::mt19937 random(18);
    int behind = 0, wished_as_good = 0, days = 0;
    for (int i = 0; i < 400; ++i) {
        SCOPED_TRACE(i);
        const Sharing day = random_day(random, {i % 2 == 0, i % 3 == 0});
        const Levels best = levels_of(*brute_force(day));
        const Ways plain = one_by_one(day);
        stow::Run run;
        const Shared wished = share_by_wish(day, plain, run);
        EXPECT_TRUE(keeps_limits(day, wished.ways));
        EXPECT_LE(wished.merit, merit_of(day, plain));
        EXPECT_LE(levels_of(wished.merit) - wished.behind, best);
        const auto until_wish = [](const Levels& l) { return std::vector(l.begin(), l.begin() + wish_level + 1); };
        ++days;
        if (until_wish(levels_of(wished.merit)) == until_wish(best)) ++wished_as_good;
        Shared start{plain, merit_of(day, plain)};
        EXPECT_LE(levels_of(start.merit) - behind_at_most(day, start, run), best);
        if (const auto assigned = assign_all(day, plain, 1)) {
            const Levels found = levels_of(merit_of(day, assigned->ways));
            EXPECT_LE(found - assigned->behind, best);
            if (found != best) ++behind;
        }
    }
    EXPECT_GT(behind, 10); // or the bound would say little
    EXPECT_EQ(wished_as_good, days);
}

TEST(ShareOut, AStoppedRunKeepsTheBaseline)
{
    std::mt19937 random(15);
    const std::atomic<bool> cancelled{true};
    for (int i = 0; i < 50; ++i) {
        const Sharing day = random_day(random, {false, true});
        stow::Run run({}, &cancelled);
        const Shared shared = share_out(day, run);
        EXPECT_TRUE(keeps_limits(day, shared.ways));
        EXPECT_LE(shared.merit, merit_of(day, one_by_one(day)));
    }
}

TEST(Assignment, RefusesWhatIsNone)
{
    Way two;
    two.needs = {{0, 1000}, {1, 1000}};
    EXPECT_EQ(assign({{{two}}, {{5000, true}, {5000, true}}}), std::nullopt);
    Way litres;
    litres.needs = {{0, 1400}};
    EXPECT_EQ(assign({{{litres}}, {{5000, false}}}), std::nullopt);
}

} // namespace
} // namespace stow::planning
