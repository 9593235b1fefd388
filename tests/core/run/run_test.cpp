// Time is held still by a clock of the test's own; nothing here measures how long anything takes.
#include "core/run/run.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace stow {
namespace {

using namespace std::chrono_literals;
using Work = Run; // inside a TEST the name Run is taken
using Moment = std::chrono::steady_clock::time_point;

struct HeldClock {
    Moment now{};
    Work::Clock clock()
    {
        return [this] { return now; };
    }
};

// Asks as an inner loop does, often enough that the clock is looked at.
bool goes_on(Work& run, int times = 600)
{
    for (int i = 0; i < times; ++i) {
        if (!run.go_on()) return false;
    }
    return true;
}

TEST(Run, WithoutLimitsGoesOn)
{
    Work run;
    EXPECT_TRUE(goes_on(run, 10'000));
    EXPECT_EQ(run.work_done(), 10'000U);
    EXPECT_FALSE(run.stopped());
}

TEST(Run, StopsPastItsWork)
{
    Work run({.time = {}, .work = 3});
    EXPECT_TRUE(run.go_on());
    EXPECT_TRUE(run.go_on(2));
    EXPECT_FALSE(run.go_on());
    EXPECT_EQ(run.stopped(), Stop::work);
    EXPECT_FALSE(run.go_on()) << "for good";
    EXPECT_EQ(run.work_done(), 4U) << "work is not counted after the stop";
}

TEST(Run, StopsWhenItsTimeHasCome)
{
    HeldClock held;
    Work run({.time = 100ms, .work = 0}, nullptr, held.clock());
    EXPECT_TRUE(goes_on(run));
    held.now += 99ms;
    EXPECT_TRUE(goes_on(run));
    held.now += 1ms;
    EXPECT_FALSE(goes_on(run));
    EXPECT_EQ(run.stopped(), Stop::time);
}

TEST(Run, StopsWhenCancelled)
{
    std::atomic<bool> cancelled = false;
    Work run({}, &cancelled);
    EXPECT_TRUE(goes_on(run));
    cancelled = true;
    EXPECT_FALSE(goes_on(run));
    EXPECT_EQ(run.stopped(), Stop::cancelled);
}

TEST(Run, APartHasItsOwnWorkAndTheSameEnd)
{
    HeldClock held;
    std::atomic<bool> cancelled = false;
    Work whole({.time = 100ms, .work = 1000}, &cancelled, held.clock());

    Work small = whole.part({.time = {}, .work = 5});
    EXPECT_FALSE(goes_on(small));
    EXPECT_EQ(small.stopped(), Stop::work);
    EXPECT_FALSE(whole.stopped());

    Work long_part = whole.part({.time = 10s, .work = 0});
    held.now += 100ms;
    EXPECT_FALSE(goes_on(long_part)) << "never later than the whole";
    EXPECT_EQ(long_part.stopped(), Stop::time);

    HeldClock fresh;
    Work other({.time = 100ms, .work = 0}, &cancelled, fresh.clock());
    Work short_part = other.part({.time = 10ms, .work = 0});
    fresh.now += 10ms;
    EXPECT_FALSE(goes_on(short_part));
    EXPECT_TRUE(goes_on(other));

    cancelled = true;
    Work late = other.part({});
    EXPECT_FALSE(goes_on(late));
    EXPECT_EQ(late.stopped(), Stop::cancelled);
}

TEST(Run, TellsProgressBetweenNothingAndAll)
{
    std::vector<double> told;
    Work run;
    run.tell_progress(0.1); // nobody listens
    run.on_progress([&](double done) { told.push_back(done); });
    for (const double done : {-1.0, 0.5, 2.0}) run.tell_progress(done);
    EXPECT_EQ(told, (std::vector<double>{0.0, 0.5, 1.0}));
}

// A work budget is the same everywhere: exactly the nodes within it are done.
RC_GTEST_PROP(Run, DoesExactlyItsWork, ())
{
    const auto budget = *rc::gen::inRange<std::uint64_t>(1, 5000);
    Work run({.time = {}, .work = budget});
    std::uint64_t done = 0;
    while (run.go_on()) ++done;
    RC_ASSERT(done == budget);
    RC_ASSERT(run.stopped() == Stop::work);
}

} // namespace
} // namespace stow
