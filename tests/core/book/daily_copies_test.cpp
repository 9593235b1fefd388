// Copies kept without asking, and a look into them before one is restored.
#include "core/book/daily_copies.h"
#include "core/book/verify.h"
#include "small_shop.h"

#include <fstream>

using namespace stow;
using namespace stow::book;

namespace {

Date day(std::string_view iso)
{
    return *parse_date(iso);
}

} // namespace

TEST(DailyCopies, SevenDaysFourWeeksTwelveMonthsStay)
{
    // A copy on every day of more than two years, looked at on each of its last days.
    std::vector<Date> days;
    const Date last = day("2026-11-25");
    for (Date d = day("2024-10-01"); d <= last; d += std::chrono::days(1)) {
        days.push_back(d);
        days = worth_keeping(days, d); // as it goes from day to day
    }
    std::vector<std::string> kept;
    for (const Date d : days) kept.push_back(to_text(d));
    // Days: 19 to 25 November. Weeks from Monday the 2nd, 9th, 16th, 23rd: their newest, of which the Sundays the 8th
    // and the 15th are not among the days. Months: the last day of each since December.
    const std::vector<std::string> expected{"2025-12-31", "2026-01-31", "2026-02-28", "2026-03-31", "2026-04-30",
                                            "2026-05-31", "2026-06-30", "2026-07-31", "2026-08-31", "2026-09-30",
                                            "2026-10-31", "2026-11-08", "2026-11-15", "2026-11-19", "2026-11-20",
                                            "2026-11-21", "2026-11-22", "2026-11-23", "2026-11-24", "2026-11-25"};
    EXPECT_EQ(kept, expected);
}

TEST(DailyCopies, ADayAfterTodayStaysWhereTheClockWentBack)
{
    const std::vector<Date> days{day("2026-11-20"), day("2027-03-01")};
    EXPECT_EQ(worth_keeping(days, day("2026-11-21")), days);
}

TEST(DailyCopies, OneADayEachCheckedAndPrivate)
{
    SmallShop shop;
    shop.stock_up();
    const shop::ParcelId id = shop.labelled("1001");
    const auto made = copy_of_today(shop.book, day("2026-11-25"));
    ASSERT_TRUE(made && *made);
    EXPECT_EQ(std::filesystem::status((*made)->file).permissions(),
              std::filesystem::perms::owner_read | std::filesystem::perms::owner_write);
    EXPECT_EQ(std::filesystem::status((*made)->file.parent_path()).permissions(), std::filesystem::perms::owner_all);
    take_in_goods(shop.book, {SmallShop::good("WAX-RED", 4)}, "later.csv");
    const auto again = copy_of_today(shop.book, day("2026-11-25"));
    ASSERT_TRUE(again);
    EXPECT_FALSE(*again) << "one a day";
    ASSERT_TRUE(copy_of_today(shop.book, day("2026-11-26")));

    const auto copies = daily_copies(shop.book.path());
    ASSERT_EQ(copies.size(), 2U);
    EXPECT_EQ(to_text(copies[0].day), "2026-11-26");
    const auto before = look_into(copies[1].file), after = look_into(copies[0].file);
    ASSERT_TRUE(before && after);
    EXPECT_EQ(before->steps + 1, after->steps);
    EXPECT_EQ(before->orders, after->orders);
    EXPECT_EQ(after->last->kind, StepKind::take_in_goods);
    const Book opened = open_or_throw(copies[1].file, system_time);
    EXPECT_EQ(parcel(opened, id)->parcel.number, "2611-001");
    EXPECT_TRUE(verify(opened).empty());
}

TEST(DailyCopies, AnOpenBookIsSeenWithItsLastStep)
{
    SmallShop shop;
    const auto before = holds(shop.book);
    take_in_goods(shop.book, {SmallShop::good("WAX-RED", 4)}, "later.csv"); // lies in the log, not in the file yet
    const auto after = holds(shop.book);
    EXPECT_EQ(after.steps, before.steps + 1);
    EXPECT_EQ(after.last->kind, StepKind::take_in_goods);
    const auto copied = look_into(shop.book.path()); // with its log
    ASSERT_TRUE(copied);
    EXPECT_EQ(copied->steps, after.steps);
    EXPECT_TRUE(verify(shop.book).empty());
}

TEST(DailyCopies, AFailedCopyRemovesNothing)
{
    SmallShop shop;
    ASSERT_TRUE(copy_of_today(shop.book, day("2020-01-01"))); // would go with the next one
    const auto old = daily_copies(shop.book.path()).front().file;
    // Something lies where the copy is to be written that cannot be replaced by a file.
    std::filesystem::create_directories(old.parent_path() / "2026-11-25.book.part" / "in the way");
    EXPECT_FALSE(copy_of_today(shop.book, day("2026-11-25")));
    EXPECT_TRUE(std::filesystem::exists(old));
    std::filesystem::remove_all(old.parent_path() / "2026-11-25.book.part");
    ASSERT_TRUE(copy_of_today(shop.book, day("2026-11-25")));
    EXPECT_FALSE(std::filesystem::exists(old));
}

TEST(DailyCopies, ALookIntoWhatIsNoCopySaysSo)
{
    SmallShop shop;
    const auto other = shop.folder / "other.book";
    std::ofstream(other) << "not a book at all";
    const auto looked = look_into(other);
    ASSERT_FALSE(looked);
    EXPECT_EQ(looked.error().fault, OpenFault::not_a_book);
    EXPECT_EQ(looked.error().path, other.string());
    EXPECT_EQ(look_into(shop.folder / "nowhere").error().fault, OpenFault::unreadable);
    EXPECT_FALSE(std::filesystem::exists(other.string() + ".looked-into"));
}
