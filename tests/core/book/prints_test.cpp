#include "core/book/prints.h"
#include "core/book/schema.h"
#include "tests/core/book/small_shop.h"

#include <SQLiteCpp/SQLiteCpp.h>

namespace stow::book {
namespace {

TEST(Prints, AreCountedByPaperAndThing)
{
    SmallShop shop;
    EXPECT_EQ(next_print(shop.book, "labels", {"2611-001"}), 1);
    count_print(shop.book, "labels", {"2611-001", "2611-002"});
    count_print(shop.book, "labels", {"2611-002"});
    EXPECT_EQ(next_print(shop.book, "labels", {"2611-001"}), 2);
    EXPECT_EQ(next_print(shop.book, "labels", {"2611-002"}), 3);
    EXPECT_EQ(next_print(shop.book, "labels", {"2611-001", "2611-002", "2611-003"}), 3) << "the most of them";
    EXPECT_EQ(next_print(shop.book, "labels", {"2611-002", "2611-001"}), 3) << "in whatever order";
    EXPECT_EQ(next_print(shop.book, "bench-cards", {"2611-002"}), 1);
    EXPECT_EQ(next_print(shop.book, "labels", {}), 1);
}

TEST(Prints, CountAThingNamedTwiceOnce)
{
    SmallShop shop;
    count_print(shop.book, "labels", {"2611-001", "2611-001"});
    EXPECT_EQ(next_print(shop.book, "labels", {"2611-001"}), 2);
}

TEST(Prints, AreKeptOverARestartAndOutlastUndo)
{
    SmallShop shop;
    ASSERT_TRUE(take_in_goods(shop.book, {SmallShop::good("INK", 3)}, "g.csv").step);
    count_print(shop.book, "labels", {"2611-001"});
    const auto step = last_undoable(shop.book);
    ASSERT_TRUE(step);
    ASSERT_TRUE(undo(shop.book, step->id));
    EXPECT_EQ(next_print(shop.book, "labels", {"2611-001"}), 2) << "the paper is not gone";
    const std::filesystem::path path = shop.book.path();
    shop.book = open_or_throw(shop.folder / "other.book", system_time); // the first is closed
    const Book again = open_or_throw(path, system_time);
    EXPECT_EQ(next_print(again, "labels", {"2611-001"}), 2);
}

// Books of before counted nothing: what a round had printed is not to come out again as if it were the first.
TEST(Prints, OfARoundOfAnOlderBookAreCountedOnce)
{
    const Folder folder;
    SQLite::Database older((folder / "shop.book").string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
    std::vector<Migration> before = migrations();
    std::erase_if(before, [](const Migration& step) { return step.to > 5; });
    ASSERT_TRUE(migrate(older, before));
    older.exec("PRAGMA foreign_keys = OFF");
    for (const char* number_and_round : {"'2611-001', 1", "'2611-002', 0"}) {
        older.exec(std::string("INSERT INTO parcel (number, round, state, order_version) VALUES (") + number_and_round +
                   ", 'planned', 1)");
    }
    older.exec("INSERT INTO hand_over_list (id, carrier, day, number, at) VALUES (7, 'Skua Post', '2026-11-24', 1, 0)");
    ASSERT_TRUE(migrate(older, migrations()));
    const auto times = [&](const std::string& of, const std::string& paper) {
        SQLite::Statement row(older, "SELECT times FROM printed WHERE of = ? AND paper = ?");
        row.bind(1, of);
        row.bind(2, paper);
        return row.executeStep() ? row.getColumn(0).getInt() : 0;
    };
    for (const char* paper : {"pick-list", "packing-slips", "bench-cards", "labels"}) {
        EXPECT_EQ(times("2611-001", paper), 1) << paper;
        EXPECT_EQ(times("2611-002", paper), 0) << paper;
    }
    EXPECT_EQ(times("list 7", "hand-over-list"), 1);
}

} // namespace
} // namespace stow::book
