// The disk fails in the middle of a day: full, writing half, refusing, or its power goes with all that was not synced.
// Each time the book opens again afterwards, every finished step is in it, no half step, and the ledger adds up.
#include "core/book/verify.h"
#include "faulty_disk.h"
#include "small_shop.h"
#include "tests/bench/extent.h"

#include <string>

using namespace stow;
using namespace stow::book;
using Fault = FaultyDisk::Fault;

namespace {

std::int64_t newest(const Book& book)
{
    const auto all = steps(book, 1);
    return all.empty() ? 0 : all.front().id.value;
}

// Steps of a day until the disk fails; the last one finished.
std::int64_t work(SmallShop& shop, FaultyDisk& disk)
{
    std::int64_t last = newest(shop.book);
    try {
        for (int n = 1; !disk.has_failed(); ++n) {
            if (receive(shop.book, {"K2"}, shop::pieces(3))) last = newest(shop.book);
            take_in_goods(shop.book, {SmallShop::good("INK-SEA", 20 + n)}, "goods.csv");
            last = newest(shop.book);
            shop.labelled(std::to_string(1000 + n).c_str());
            last = newest(shop.book);
            if (n % 3 == 0 && hand_over(shop.book, "Skerry Post")) last = newest(shop.book);
            if (n % 4 == 0 && undo(shop.book, {last})) last = newest(shop.book);
        }
    } catch (const BookFailure&) { // told to her; the day goes on with another start
    } catch (const tl::bad_expected_access<Refused>&) {
    }
    return last;
}

class Faults : public testing::TestWithParam<Fault> {};

} // namespace

TEST_P(Faults, LoseNoFinishedStepAndKeepNoHalfOne)
{
    const int tries = bench::cases(25, 200);
    std::mt19937 dice(20261125);
    std::int64_t finished = 0;
    for (int t = 0; t < tries; ++t) {
        FaultyDisk disk;
        const Folder folder;
        const auto path = folder / "shop.book";
        std::int64_t last = 0;
        {
            SmallShop shop;
            shop.book = open_or_throw(path, [&shop] { return shop.now; });
            shop.stock_up();
            disk.fail(GetParam(), std::uniform_int_distribution<int>(1, 300)(dice));
            last = work(shop, disk);
            ASSERT_TRUE(disk.has_failed());
        }
        disk.repair(dice);
        std::filesystem::remove(path.string() + "-shm"); // memory, not disk
        auto again = Book::open(path);
        ASSERT_TRUE(again) << again.error().detail << ", try " << t;
        EXPECT_GE(newest(*again), last) << "a finished step is lost, try " << t;
        EXPECT_TRUE(verify(*again).empty()) << "try " << t << ", after step " << last;
        EXPECT_TRUE(receive(*again, {"K3"}, shop::pieces(1)));
        finished += last;
    }
    std::cout << tries << " faults, " << finished << " steps finished before them\n";
    EXPECT_GT(finished, tries * 4);
}

TEST(FullDisk, IsNamedWhenABookIsMadeOrOpened)
{
    std::mt19937 dice(20261125);
    FaultyDisk disk;
    const Folder folder;
    const auto path = folder / "shop.book";
    disk.fail(Fault::full, 1);
    const auto made = Book::open(path);
    ASSERT_FALSE(made);
    EXPECT_EQ(made.error().fault, OpenFault::disk_full);
    disk.repair(dice);
    EXPECT_TRUE(Book::open(path)) << "with room again it is made";
    disk.fail(Fault::full, 1);
    const auto opened = Book::open(path);
    EXPECT_TRUE(opened || opened.error().fault == OpenFault::disk_full);
    disk.repair(dice);
}

INSTANTIATE_TEST_SUITE_P(All, Faults,
                         testing::Values(Fault::full, Fault::half_written, Fault::write_fails, Fault::sync_fails,
                                         Fault::power_lost));
