// The program killed (SIGKILL) in the middle of a day, at moments drawn at random: the book opens again, every finished
// step is in it, no half step, and the ledger adds up. A pulled plug, which also loses what the system had not written
// yet, is more than this shows.
#include "core/book/verify.h"
#include "small_shop.h"
#include "tests/bench/extent.h"

#include <csignal>
#include <random>
#include <string>
#include <sys/wait.h>

using namespace stow;
using namespace stow::book;

namespace {

StepId newest(const Book& book)
{
    const auto all = steps(book, 1);
    return all.empty() ? StepId{} : all.front().id;
}

// A day that never ends: orders in, planned, picked, packed, weighed, labelled, handed over, things counted and undone.
// After each step its number goes into the pipe.
[[noreturn]] void work_until_killed(SmallShop& shop, int pipe)
{
    const auto tell = [&] {
        const std::int64_t id = newest(shop.book).value;
        if (::write(pipe, &id, sizeof id) != sizeof id) std::_Exit(1);
    };
    for (int n = 1;; ++n) {
        receive(shop.book, {"K2"}, shop::pieces(3));
        tell();
        take_in_goods(shop.book, {SmallShop::good("INK-SEA", 20 + n)}, "goods.csv");
        tell();
        shop.labelled(std::to_string(1000 + n).c_str());
        tell();
        if (n % 3 == 0 && hand_over(shop.book, "Skerry Post")) tell();
        if (n % 4 == 0 && undo(shop.book, newest(shop.book))) tell();
    }
}

} // namespace

TEST(Killed, LosesNoFinishedStepAndKeepsNoHalfOne)
{
    const int kills = bench::cases(25, 500);
    std::mt19937 draw(20261125);
    std::int64_t finished = 0, in_all = 0;
    for (int k = 0; k < kills; ++k) {
        SmallShop shop;
        shop.stock_up();
        int ends[2];
        ASSERT_EQ(::pipe(ends), 0);
        const pid_t child = ::fork();
        ASSERT_GE(child, 0);
        if (child == 0) {
            ::close(ends[0]);
            // A connection of its own: SQLite's do not survive a fork.
            shop.book = open_or_throw(shop.folder / "shop.book", [&shop] { return shop.now; });
            work_until_killed(shop, ends[1]);
        }
        ::close(ends[1]);
        std::int64_t last = 0;
        const auto hear = [&] { return ::read(ends[0], &last, sizeof last) == sizeof last; };
        ASSERT_TRUE(hear()) << "the day did not begin";
        // So many steps further, however fast the machine is, and then into the middle of one.
        for (int steps = std::uniform_int_distribution<int>(0, 16)(draw); steps > 0; --steps) ASSERT_TRUE(hear());
        ::usleep(std::uniform_int_distribution<useconds_t>(0, 4'000)(draw));
        ::kill(child, SIGKILL);
        int status = 0;
        ::waitpid(child, &status, 0);
        ASSERT_TRUE(WIFSIGNALED(status)) << "it ended before it was killed";
        while (hear()) {
        } // what it had finished
        ::close(ends[0]);

        auto again = Book::open(shop.folder / "shop.book");
        ASSERT_TRUE(again) << again.error().detail;
        const std::int64_t there = newest(*again).value;
        EXPECT_GE(there, last) << "a finished step is lost";
        const auto violations = verify(*again);
        EXPECT_TRUE(violations.empty()) << "kill " << k << " after step " << last;
        // It can be worked in at once.
        EXPECT_TRUE(receive(*again, {"K3"}, shop::pieces(1)));
        EXPECT_GT(newest(*again).value, there);
        finished += last;
        in_all += there;
    }
    std::cout << kills << " kills, " << finished << " steps finished before them, " << in_all << " in the books\n";
    EXPECT_GT(finished, kills * 6); // they fell into the middle of days that were under way
}
