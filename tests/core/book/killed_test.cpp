// The program killed (SIGKILL) in the middle of a day, at moments drawn at random: the book opens again, every finished
// step is in it, no half step, and the ledger adds up. Killed while it erases buyers or restores a copy, it leaves a
// whole book and whole copies, and the work is finished at the next start. A pulled plug, which also loses what the
// system had not written yet, is more than this shows.
#include "core/book/backup.h"
#include "core/book/daily_copies.h"
#include "core/book/erasing.h"
#include "core/book/verify.h"
#include "small_shop.h"
#include "tests/bench/extent.h"

#include <chrono>
#include <csignal>
#include <random>
#include <set>
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

// When to kill: drawn within the time the work took when it was timed; nearer where it proves quicker than that,
// farther again where it does not. However busy the machine, most kills come in the middle.
class Moments {
public:
    Moments(std::chrono::microseconds length, unsigned seed)
        : longest_(2 * length.count()), most_(length.count()), draw_(seed)
    {
    }
    std::chrono::microseconds next()
    {
        return std::chrono::microseconds(std::uniform_int_distribution<std::int64_t>(0, most_)(draw_));
    }
    void told(bool in_the_middle) { most_ = in_the_middle ? std::min(longest_, most_ * 9 / 8 + 1) : most_ * 2 / 3 + 1; }

private:
    std::int64_t longest_, most_;
    std::mt19937_64 draw_;
};

// What the child does is killed after `wait` and some microseconds more; true: it was still at it.
bool killed_in(const std::function<void()>& work, std::chrono::microseconds wait)
{
    int ends[2];
    if (::pipe(ends) != 0) throw std::runtime_error("no pipe");
    const pid_t child = ::fork();
    if (child == 0) {
        if (::write(ends[1], "b", 1) != 1) std::_Exit(1);
        work();
        std::_Exit(0);
    }
    ::close(ends[1]);
    char begun = 0;
    if (::read(ends[0], &begun, 1) != 1) throw std::runtime_error("it did not begin");
    ::close(ends[0]);
    ::usleep(static_cast<useconds_t>(wait.count()));
    ::kill(child, SIGKILL);
    int status = 0;
    ::waitpid(child, &status, 0);
    const bool killed = WIFSIGNALED(status) && WTERMSIG(status) == SIGKILL;
    if (!killed && status != 0) throw std::runtime_error("it failed of itself");
    return killed;
}

// Unharmed, how long does it take? Only to draw moments that fall into it.
std::chrono::microseconds length_of(const std::function<void()>& work)
{
    const auto before = std::chrono::steady_clock::now();
    work();
    return std::chrono::duration_cast<std::chrono::microseconds>(std::chrono::steady_clock::now() - before);
}

// A book of buyers who may be forgotten, one of whom was taken in by mistake, and copies of each kind beside it.
class ToForget {
public:
    static constexpr const char* traces[] = {"Strandvik", "Tangvej", "ida@example", "TRACK-", "her sister"};

    ToForget()
    {
        SmallShop shop;
        shop.stock_up();
        for (int n = 0; n < 8; ++n) {
            const auto id = shop.labelled(std::to_string(1001 + n).c_str());
            set_tracking(shop.book, id, "TRACK-" + std::to_string(n)).value();
        }
        hand_over(shop.book, "Skerry Post").value();
        const auto mistaken = take_in_orders(shop.book, {SmallShop::order("2001")}, "wrong.csv");
        copy(shop, "shop copies/2026-11-24.book");
        undo(shop.book, *mistaken.step).value();
        const auto called_off = shop.checked_order("1009");
        set_aside(shop.book, called_off, "asks her sister", std::nullopt).value();
        call_off(shop.book, called_off).value();
        for (const char* name : {"shop copies/2026-11-25.book", "shop.book.before-restore", "shop.book.version-3"}) {
            copy(shop, name);
        }
        std::filesystem::copy_file(shop.book.path(), first_ / "shop.book");
        std::filesystem::copy_file(shop.book.path().string() + "-wal", first_ / "shop.book-wal");
    }

    // Fresh, in a folder of its own.
    std::filesystem::path lay_out(const Folder& folder) const
    {
        std::filesystem::copy(first_ / "", folder / "", std::filesystem::copy_options::recursive);
        return folder / "shop.book";
    }

private:
    void copy(const SmallShop& shop, const char* as)
    {
        const auto path = first_ / as;
        std::filesystem::create_directories(path.parent_path());
        if (!backup_to(shop.book, path)) throw std::runtime_error("no copy");
    }
    Folder first_;
};

const Date forget_before = *parse_date("2026-11-25");

// What a start of the program does.
void erase_as_at_a_start(const std::filesystem::path& path)
{
    Book book = open_or_throw(path, system_time);
    erase_buyers(book, forget_before);
    if (copies_are_behind(book)) erase_in_copies(book);
}

std::set<std::string> traces_below(const Folder& folder)
{
    std::set<std::string> found;
    for (const auto& entry : std::filesystem::recursive_directory_iterator(folder / "")) {
        if (!entry.is_regular_file()) continue;
        std::ifstream file(entry.path(), std::ios::binary);
        const std::string bytes{std::istreambuf_iterator<char>(file), {}};
        for (const char* trace : ToForget::traces) {
            if (bytes.find(trace) != std::string::npos) found.insert(trace + (" in " + entry.path().string()));
        }
    }
    return found;
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

TEST(Killed, FinishesErasingAtTheNextStart)
{
    const ToForget shop;
    std::chrono::microseconds length{};
    {
        const Folder folder;
        const auto path = shop.lay_out(folder);
        for (const char* trace : ToForget::traces) {
            EXPECT_TRUE(std::any_of(traces_below(folder).begin(), traces_below(folder).end(), [&](const auto& found) {
                return found.starts_with(trace);
            })) << trace;
        }
        length = length_of([&] { erase_as_at_a_start(path); });
        EXPECT_EQ(traces_below(folder), std::set<std::string>()) << "unharmed";
    }
    const int kills = bench::cases(10, 500);
    Moments moments(length, 20261126);
    int in_the_middle = 0, book_first = 0, begun_a_copy = 0;
    for (int k = 0; k < kills; ++k) {
        const Folder folder;
        const auto path = shop.lay_out(folder);
        const bool killed = killed_in([&] { erase_as_at_a_start(path); }, moments.next());
        moments.told(killed);
        in_the_middle += killed ? 1 : 0;
        for (const auto& entry : std::filesystem::recursive_directory_iterator(folder / "")) {
            begun_a_copy += entry.path().extension() == ".erasing" ? 1 : 0;
        }
        // All of it opens, whole, also without another erasing.
        const auto copies = copies_beside(path);
        EXPECT_EQ(copies.size(), 4u) << "kill " << k;
        for (const auto& copy : copies) {
            const auto held = look_into(copy);
            ASSERT_TRUE(held) << copy << ", kill " << k << ": " << held.error().detail;
            EXPECT_GE(held->orders, 9) << copy << ", kill " << k;
        }
        {
            auto again = Book::open(path);
            ASSERT_TRUE(again) << again.error().detail;
            EXPECT_TRUE(verify(*again).empty()) << "kill " << k;
            EXPECT_EQ(holds(*again).orders, 9) << "kill " << k;
            book_first += copies_are_behind(*again) ? 1 : 0;
        }
        erase_as_at_a_start(path);
        EXPECT_EQ(traces_below(folder), std::set<std::string>()) << "kill " << k;
        for (const auto& copy : copies) {
            const Book held = open_or_throw(copy, system_time);
            EXPECT_TRUE(verify(held).empty()) << copy << ", kill " << k;
            EXPECT_EQ(order_by_key(held, SmallShop::order("1001").key)->order.to.country, "DK");
        }
        EXPECT_FALSE(copies_are_behind(open_or_throw(path, system_time))) << "kill " << k;
    }
    std::cout << kills << " kills, " << in_the_middle << " while it worked, " << book_first
              << " between the book and its copies, " << begun_a_copy << " in the middle of a copy\n";
    EXPECT_GT(in_the_middle, kills / 4); // the rest it was quicker than
}

TEST(Killed, LeavesAWholeBookInTheMiddleOfRestoring)
{
    const ToForget shop;
    const auto restored = [](const std::filesystem::path& path) {
        if (!restore(path.parent_path() / "shop copies" / "2026-11-24.book", path)) std::_Exit(1);
    };
    const auto length = [&] {
        const Folder folder;
        const auto path = shop.lay_out(folder);
        return length_of([&] { restored(path); });
    }();
    const int kills = bench::cases(10, 500);
    Moments moments(length, 20261127);
    int in_the_middle = 0, as_before = 0;
    for (int k = 0; k < kills; ++k) {
        const Folder folder;
        const auto path = shop.lay_out(folder);
        const bool killed = killed_in([&] { restored(path); }, moments.next());
        moments.told(killed);
        in_the_middle += killed ? 1 : 0;
        ASSERT_TRUE(std::filesystem::exists(path)) << "a start would make an empty book, kill " << k;
        {
            auto again = Book::open(path);
            ASSERT_TRUE(again) << again.error().detail;
            EXPECT_TRUE(verify(*again).empty()) << "kill " << k;
            const bool before = !order_by_key(*again, SmallShop::order("2001").key);
            as_before += before ? 1 : 0;
            EXPECT_TRUE(order_by_key(*again, SmallShop::order("1001").key)) << "kill " << k;
            EXPECT_EQ(before, order_by_key(*again, SmallShop::order("1009").key).has_value()) << "kill " << k;
        }
        for (const auto& copy : copies_beside(path)) ASSERT_TRUE(look_into(copy)) << copy << ", kill " << k;
        EXPECT_TRUE(restore(path.parent_path() / "shop copies" / "2026-11-24.book", path)) << "kill " << k;
        erase_as_at_a_start(path);
        for (const auto& entry : std::filesystem::recursive_directory_iterator(folder / "")) {
            EXPECT_EQ(entry.path().string().find(".part"), std::string::npos) << entry.path() << ", kill " << k;
        }
    }
    std::cout << kills << " kills, " << in_the_middle << " while it worked, " << as_before
              << " left the book as it was\n";
    EXPECT_GT(in_the_middle, kills / 4);
}
