// Buyers' data: out of the book, of its history, and of every copy that lies beside it.
#include "core/book/backup.h"
#include "core/book/daily_copies.h"
#include "core/book/erasing.h"
#include "core/book/verify.h"
#include "small_shop.h"

#include <SQLiteCpp/SQLiteCpp.h>

using namespace stow;
using namespace stow::book;

namespace {

constexpr auto traces = {"Strandvik", "Tangvej",        "ida@example",     "6700",
                         "engrave",   "happy birthday", "asks her sister", "TRACK-7",
                         "STAMPED-8", "he moved away",  "a fat catalogue"};

std::string bytes_of(const std::filesystem::path& path)
{
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), {}};
}

// Its log, too.
int traces_in(const std::filesystem::path& path)
{
    const std::string bytes = bytes_of(path) + bytes_of(path.string() + "-wal");
    return static_cast<int>(std::count_if(traces.begin(), traces.end(),
                                          [&](const char* trace) { return bytes.find(trace) != std::string::npos; }));
}

// An order that left a trace in every place there is.
shop::Order telling(const char* number)
{
    shop::Order order = SmallShop::order(number);
    order.lines[0].personal_text = "engrave: Strandvik";
    order.gift = shop::Gift{"Strandvik", "happy birthday"};
    order.note = "Tangvej, at the back";
    return order;
}

shop::ParcelId label_telling(SmallShop& shop, const char* number)
{
    const auto taken = take_in_orders(shop.book, {telling(number)}, "m.csv");
    undo(shop.book, *set_aside(shop.book, taken.touched.at(0), "asks her sister").value()).value();
    check_order(shop.book, taken.touched.at(0)).value();
    const auto id = put_plan(shop.book, taken.touched, {shop.plan(taken.touched.at(0))}).value().at(0);
    mark_picked(shop.book, id).value();
    Reading overruled;
    overruled.weight = grams(990);
    overruled.overridden = true;
    overruled.why = "a fat catalogue for Ida";
    weigh(shop.book, id, overruled).value();
    mark_packed(shop.book, id).value();
    buy_postage(shop.book, {{}, id, "Skerry Post", "PACKET", Money{690, {}}, "STAMPED-8", {}, false}).value();
    undo(shop.book, *set_tracking(shop.book, id, "TRACK-7").value()).value();
    set_tracking(shop.book, id, "TRACK-77").value();
    mark_labelled(shop.book, id).value();
    return id;
}

// It came back; she was told why.
void bring_back(SmallShop& shop, shop::ParcelId id)
{
    mark_came_back(shop.book, id, {"he moved away", GoodsBack::written_off, false}).value();
}

const Date the_day_after = SmallShop::order("1001").date + std::chrono::days(1);

} // namespace

TEST(EraseBuyer, LeavesNoTraceInTheFile)
{
    SmallShop shop;
    shop.stock_up();
    const shop::ParcelId parcel_id = label_telling(shop, "1001");
    const shop::OrderId id = parcel(shop.book, parcel_id)->parcel.pieces.at(0).order;
    EXPECT_EQ(erase_buyer(shop.book, id).error().why, Why::wrong_state) << "not before it is gone";
    shop::Order changed = telling("1001");
    changed.lines[0].personal_text = "engrave: Ida Strandvik";
    take_in_orders(shop.book, {changed}, "m.csv");
    accept_changes(shop.book, parcel_id).value();
    hand_over(shop.book, "Skerry Post").value();
    bring_back(shop, parcel_id);
    EXPECT_EQ(traces_in(shop.book.path()), static_cast<int>(traces.size()));
    ASSERT_TRUE(erase_buyer(shop.book, id));
    EXPECT_EQ(traces_in(shop.book.path()), 0) << "also while it is open";
    const auto held = order(shop.book, id);
    EXPECT_EQ(held->order.to.name, "");
    EXPECT_TRUE(held->order.gift) << "that it was a gift";
    EXPECT_EQ(held->order.to.country, "DK") << "the packaging records need it";
    EXPECT_TRUE(orders_open(shop.book, the_day_after).empty()) << "nothing is left to do for it";
    const auto sent = parcel(shop.book, parcel_id)->parcel;
    EXPECT_EQ(sent.weighings.at(0).weight, grams(990));
    EXPECT_EQ(postage_bought(shop.book, parcel_id).at(0).amount, (Money{690, {}})) << "costs stay";
    EXPECT_TRUE(sent.written_off);
    EXPECT_TRUE(verify(shop.book).empty());

    SQLite::Statement all(shop.book.db(), "SELECT group_concat(before) FROM image");
    all.executeStep();
    for (const char* trace : traces) {
        EXPECT_EQ(all.getColumn(0).getString().find(trace), std::string::npos) << trace;
    }
    EXPECT_EQ(traces_in(shop.book.path()), 0);
    EXPECT_EQ(undo(shop.book, steps(shop.book, 1).at(0).id).error().why, Why::not_undoable);
    EXPECT_EQ(take_in_orders(shop.book, {}, "m.csv").step, std::nullopt);
}

TEST(EraseBuyer, IsNotUndoneByTheSameFileNorByAnOlderCopy)
{
    SmallShop shop;
    shop.labelled("1001");
    shop.planned("1002");
    hand_over(shop.book, "Skerry Post").value();
    const auto copy = shop.folder / "copy.book";
    ASSERT_TRUE(backup_to(shop.book, copy));
    const Date day = SmallShop::order("1001").date;
    EXPECT_EQ(erase_buyers(shop.book, day), 0) << "not older than that";
    EXPECT_EQ(erase_buyers(shop.book, day + std::chrono::days(1)), 1) << "the other has not gone out";
    EXPECT_EQ(erase_buyers(shop.book, day + std::chrono::days(1)), 0);
    const shop::OrderKey key = SmallShop::order("1001").key;
    EXPECT_EQ(erased_buyers(shop.book.db()).orders, std::vector{key});
    EXPECT_EQ(take_in_orders(shop.book, {SmallShop::order("1001")}, "m.csv").unchanged, 1);
    EXPECT_EQ(order_by_key(shop.book, key)->order.to.name, "");

    const auto place = shop.folder / "place.book";
    ASSERT_TRUE(backup_to(shop.book, place));
    ASSERT_TRUE(restore(copy, place));
    const Book restored = open_or_throw(place, system_time);
    EXPECT_EQ(order_by_key(restored, key)->order.to.name, "");
    EXPECT_NE(order_by_key(restored, SmallShop::order("1002").key)->order.to.name, "");
}

TEST(EraseBuyer, WaitsForWhatIsStillOwed)
{
    SmallShop shop;
    const shop::OrderId id = shop.checked_order("1001", 4);
    const auto parcel_id = put_plan(shop.book, {id}, {shop.plan(id, 2)}).value().at(0); // two of four
    mark_picked(shop.book, parcel_id).value();
    mark_packed(shop.book, parcel_id).value();
    mark_labelled(shop.book, parcel_id).value();
    hand_over(shop.book, "Skerry Post").value();
    EXPECT_EQ(erase_buyer(shop.book, id).error().why, Why::wrong_state);
    EXPECT_EQ(erase_buyers(shop.book, the_day_after), 0);
}

// Taken in by mistake and undone: no order names them, the history does.
TEST(EraseBuyer, ReachesOrdersWhoseTakingInWasUndone)
{
    SmallShop shop;
    const auto taken = take_in_orders(shop.book, {telling("1001")}, "m.csv");
    undo(shop.book, *taken.step).value();
    EXPECT_EQ(erase_buyers(shop.book, the_day_after - std::chrono::days(1)), 0) << "not that old";
    EXPECT_GT(traces_in(shop.book.path()), 0);
    EXPECT_EQ(erase_buyers(shop.book, the_day_after), 0);
    EXPECT_EQ(traces_in(shop.book.path()), 0);
}

// She asks for it by its number, and it had been taken in and undone before.
TEST(EraseBuyer, ReachesAnEarlierTakingInOfTheSameOrder)
{
    SmallShop shop;
    undo(shop.book, *take_in_orders(shop.book, {telling("1001")}, "m.csv").step).value();
    const auto sent = label_telling(shop, "1001");
    hand_over(shop.book, "Skerry Post").value();
    ASSERT_TRUE(erase_buyer(shop.book, parcel(shop.book, sent)->parcel.pieces.at(0).order));
    EXPECT_EQ(traces_in(shop.book.path()), 0);
}

// A parcel whose plan was undone after it had a number: neither is there any more, the history holds both.
TEST(EraseBuyer, ReachesParcelsThatAreNoMore)
{
    SmallShop shop;
    shop.stock_up();
    const shop::ParcelId first = shop.planned("1001");
    const shop::OrderId id = parcel(shop.book, first)->parcel.pieces.at(0).order;
    undo(shop.book, *set_tracking(shop.book, first, "TRACK-7").value()).value();
    drop_parcel(shop.book, first).value();
    call_off(shop.book, id).value();
    EXPECT_GT(traces_in(shop.book.path()), 0);
    ASSERT_TRUE(erase_buyer(shop.book, id));
    EXPECT_EQ(traces_in(shop.book.path()), 0);
}

TEST(EraseBuyer, ManyAtOnceAreAsWellErased)
{
    SmallShop shop;
    std::vector<shop::Order> many;
    for (int n = 0; n < 450; ++n) {
        many.push_back(telling(std::to_string(2000 + n).c_str()));
        many.back().called_off = true;
    }
    take_in_orders(shop.book, many, "m.csv");
    const std::size_t before = steps(shop.book, 1000).size();
    EXPECT_EQ(erase_buyers(shop.book, the_day_after), 450);
    EXPECT_EQ(steps(shop.book, 1000).size(), before + 3) << "in steps of 200";
    EXPECT_EQ(erased_buyers(shop.book.db()).orders.size(), 450u);
    EXPECT_EQ(traces_in(shop.book.path()), 0);
    EXPECT_TRUE(verify(shop.book).empty());
}

TEST(EraseBuyer, AnOlderCopyInWhichTheOrderIsStillOpenIsErasedToo)
{
    SmallShop shop;
    label_telling(shop, "1001");
    const auto copy = shop.folder / "copy.book", place = shop.folder / "place.book";
    ASSERT_TRUE(backup_to(shop.book, copy)); // before the courier came
    hand_over(shop.book, "Skerry Post").value();
    const shop::ParcelId later = label_telling(shop, "1002");
    const shop::OrderId later_order = parcel(shop.book, later)->parcel.pieces.at(0).order;
    hand_over(shop.book, "Skerry Post").value();
    ASSERT_EQ(erase_buyers(shop.book, the_day_after), 2);
    const shop::OrderKey later_key = order(shop.book, later_order)->order.key;
    ASSERT_TRUE(backup_to(shop.book, place));
    ASSERT_TRUE(restore(copy, place));
    EXPECT_EQ(traces_in(place), 0);
    Book restored = open_or_throw(place, system_time);
    EXPECT_TRUE(is_erased(restored, later_key)) << "its file must not bring it back";
    EXPECT_EQ(take_in_orders(restored, {telling("1002")}, "m.csv").fresh, 0);
}

namespace {

// A book with a copy of today, one from before a restore, and one kept when it was brought up to date.
struct WithCopies : SmallShop {
    std::vector<std::filesystem::path> copies;
    WithCopies()
    {
        stock_up();
        label_telling(*this, "1001");
        label_telling(*this, "1002");
        hand_over(book, "Skerry Post").value();
        for (const char* name : {"shop.book.before-restore", "shop.book.version-3"}) {
            EXPECT_TRUE(backup_to(book, folder / name));
        }
        EXPECT_TRUE(copy_of_today(book, *parse_date("2026-11-25")));
        copies = copies_beside(book.path());
    }
};

} // namespace

TEST(EraseInCopies, ReachesEveryCopyBesideTheBook)
{
    WithCopies shop;
    ASSERT_EQ(shop.copies.size(), 3u);
    { // a book that was open when the restore came is in WAL mode
        SQLite::Database wal(shop.copies.at(1).string(), SQLite::OPEN_READWRITE);
        wal.exec("PRAGMA journal_mode = WAL");
    }
    const shop::OrderKey first = SmallShop::order("1001").key, second = SmallShop::order("1002").key;
    ASSERT_TRUE(erase_buyer(shop.book, order_by_key(shop.book, first)->id));
    EXPECT_TRUE(copies_are_behind(shop.book));
    const ErasedInCopies once = erase_in_copies(shop.book);
    EXPECT_EQ(once.rewritten, 3);
    EXPECT_TRUE(once.unreached.empty());
    EXPECT_FALSE(copies_are_behind(shop.book));
    EXPECT_EQ(erase_in_copies(shop.book).rewritten, 0) << "nothing is left to erase";
    for (const auto& copy : shop.copies) {
        EXPECT_GT(traces_in(copy), 0) << "the other buyer's stay: " << copy;
        EXPECT_EQ(std::filesystem::status(copy).permissions(),
                  std::filesystem::perms::owner_read | std::filesystem::perms::owner_write);
        const Book held = open_or_throw(copy, system_time);
        EXPECT_EQ(order_by_key(held, first)->order.to.name, "");
        EXPECT_EQ(order_by_key(held, first)->order.to.country, "DK");
        EXPECT_NE(order_by_key(held, second)->order.to.name, "");
        EXPECT_TRUE(verify(held).empty());
    }
    ASSERT_EQ(erase_buyers(shop.book, the_day_after), 1);
    EXPECT_EQ(erase_in_copies(shop.book).rewritten, 3);
    for (const auto& copy : shop.copies) EXPECT_EQ(traces_in(copy), 0) << copy;
    for (const auto& entry : std::filesystem::recursive_directory_iterator(shop.folder / "")) {
        const std::string ending = entry.path().extension().string();
        EXPECT_NE(ending, ".erasing") << entry.path();
    }
}

TEST(EraseInCopies, NamesWhatItCannotReachAndLeavesItAsItIs)
{
    WithCopies shop;
    ASSERT_EQ(erase_buyers(shop.book, the_day_after), 2);
    const auto broken = shop.copies.at(0), used = shop.copies.at(1);
    std::filesystem::resize_file(broken, 5000);
    const std::string as_broken = bytes_of(broken);
    {
        SQLite::Database other(used.string(), SQLite::OPEN_READWRITE);
        other.exec("BEGIN IMMEDIATE");
        const ErasedInCopies done = erase_in_copies(shop.book);
        EXPECT_EQ(done.rewritten, 1);
        EXPECT_EQ(done.unreached, (std::vector{broken, used}));
        EXPECT_TRUE(copies_are_behind(shop.book)) << "to be tried again";
    }
    EXPECT_EQ(bytes_of(broken), as_broken);
    std::filesystem::remove(broken);
    const ErasedInCopies again = erase_in_copies(shop.book);
    EXPECT_EQ(again.rewritten, 1);
    EXPECT_TRUE(again.unreached.empty());
    EXPECT_FALSE(copies_are_behind(shop.book));
    EXPECT_EQ(traces_in(used), 0);
}

// What a program that was killed in the middle left behind goes with the next erasing; nobody else's file does.
TEST(EraseInCopies, ClearsAwayWhatWasLeftInTheMiddle)
{
    WithCopies shop;
    ASSERT_EQ(erase_buyers(shop.book, the_day_after), 2);
    const auto left = copies_folder(shop.book.path()) / "2026-10-01.book.erasing", hers = shop.folder / "poem.erasing";
    for (const auto& file : {left, hers, shop.folder / "shop.book.version-3.erasing"}) std::ofstream(file) << "Tangvej";
    EXPECT_EQ(erase_in_copies(shop.book).rewritten, 3);
    EXPECT_FALSE(std::filesystem::exists(left));
    EXPECT_TRUE(std::filesystem::exists(hers));
    EXPECT_FALSE(std::filesystem::exists(shop.folder / "shop.book.version-3.erasing"));
}

// A file taken in by mistake and undone: the book forgets whom it named, and so do copies from before and after that.
TEST(EraseInCopies, ReachesOrdersWhoseTakingInWasUndone)
{
    SmallShop shop;
    const auto taken = take_in_orders(shop.book, {telling("1001"), telling("1002")}, "m.csv");
    for (const auto* copy : {"shop.book.version-3", "elsewhere.book"}) {
        ASSERT_TRUE(backup_to(shop.book, shop.folder / copy));
    }
    undo(shop.book, *taken.step).value();
    ASSERT_TRUE(copy_of_today(shop.book, *parse_date("2026-11-25")));
    const shop::OrderKey again = telling("1002").key;
    erase_buyers(shop.book, the_day_after);
    EXPECT_TRUE(copies_are_behind(shop.book));
    EXPECT_EQ(take_in_orders(shop.book, {telling("1002")}, "m.csv").fresh, 1) << "she may still take it in";
    const ErasedInCopies done = erase_in_copies(shop.book);
    EXPECT_EQ(done.rewritten, 2);
    EXPECT_TRUE(done.unreached.empty());
    EXPECT_FALSE(copies_are_behind(shop.book));
    for (const auto& copy : copies_beside(shop.book.path())) {
        Book held = open_or_throw(copy, system_time);
        EXPECT_GT(traces_in(copy), 0) << "the other's are there";
        SQLite::Statement named(held.db(), "SELECT count(*) FROM image WHERE json_extract(before, '$.number') = '1001' "
                                           "AND json_extract(before, '$.name') <> ''");
        named.executeStep();
        EXPECT_EQ(named.getColumn(0).getInt(), 0);
        const auto first = order_by_key(held, telling("1001").key);
        EXPECT_EQ(first ? first->order.to.name : "", "");
        EXPECT_TRUE(verify(held).empty());
    }
    EXPECT_NE(order_by_key(shop.book, again)->order.to.name, "");

    // Nor does a copy that lay elsewhere bring her back.
    const auto place = shop.folder / "place.book";
    ASSERT_TRUE(backup_to(shop.book, place));
    ASSERT_TRUE(restore(shop.folder / "elsewhere.book", place));
    const Book restored = open_or_throw(place, system_time);
    EXPECT_EQ(order_by_key(restored, telling("1001").key)->order.to.name, "");
    EXPECT_NE(order_by_key(restored, again)->order.to.name, "");
    EXPECT_EQ(erased_buyers(restored.db()).undone, std::vector<shop::OrderKey>()) << "it stands in this one";
}
