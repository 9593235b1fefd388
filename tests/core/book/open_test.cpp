// Opening: fresh, again, and every way in which a file cannot be the book.
#include "core/book/schema.h"
#include "core/book/steps.h"
#include "core/book/verify.h"
#include "small_shop.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <fstream>
#include <sys/stat.h>
#include <sys/wait.h>

using namespace stow;
using namespace stow::book;

namespace {

OpenFault fault_of(const std::filesystem::path& path)
{
    const auto book = Book::open(path);
    if (book) throw std::runtime_error("it opened");
    return book.error().fault;
}

void write_file(const std::filesystem::path& path, const std::string& bytes)
{
    std::ofstream(path, std::ios::binary) << bytes;
}

std::string read_file(const std::filesystem::path& path)
{
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), {}};
}

} // namespace

TEST(OpenBook, MakesOneThatOnlyItsOwnerCanRead)
{
    const Folder folder;
    const auto path = folder / "deep" / "er.book";
    const auto book = Book::open(path);
    ASSERT_TRUE(book) << book.error().detail;
    struct stat entry {};
    ASSERT_EQ(::stat(path.c_str(), &entry), 0);
    EXPECT_EQ(entry.st_mode & 0777, 0600u);
    EXPECT_EQ(book->db().execAndGet("PRAGMA user_version").getInt(), book_version);
    EXPECT_EQ(book->db().execAndGet("PRAGMA application_id").getInt(), book_mark);
    EXPECT_EQ(book->db().execAndGet("PRAGMA foreign_keys").getInt(), 1);
    EXPECT_EQ(book->db().execAndGet("PRAGMA synchronous").getInt(), 2) << "FULL";
    EXPECT_EQ(book->db().execAndGet("PRAGMA journal_mode").getString(), "wal");
    EXPECT_EQ(book->db()
                  .execAndGet("SELECT count(*) FROM pragma_table_list WHERE schema = 'main' AND type = 'table' AND "
                              "NOT strict AND name NOT LIKE 'sqlite_%'")
                  .getInt(),
              0)
        << "every table is STRICT";
    EXPECT_TRUE(verify(*book).empty());
}

TEST(OpenBook, OpensAgainUnchanged)
{
    const Folder folder;
    const auto path = folder / "shop.book";
    Book::open(path).value();
    const std::string before = read_file(path);
    Book::open(path).value();
    EXPECT_EQ(read_file(path), before);
}

TEST(OpenBook, LeavesANewerBookAsItIs)
{
    const Folder folder;
    const auto path = folder / "shop.book";
    {
        const Book book = Book::open(path).value();
        book.db().exec("PRAGMA user_version = " + std::to_string(book_version + 3));
    }
    const std::string before = read_file(path);
    const auto book = Book::open(path);
    ASSERT_FALSE(book);
    EXPECT_EQ(book.error().fault, OpenFault::newer);
    EXPECT_EQ(book.error().found, book_version + 3);
    EXPECT_EQ(book.error().understood, book_version);
    EXPECT_EQ(read_file(path), before);
}

TEST(OpenBook, RefusesWhatIsNoBook)
{
    const Folder folder;
    write_file(folder / "text", "Order;Name;Postcode\n1;Ida;6700\n");
    EXPECT_EQ(fault_of(folder / "text"), OpenFault::not_a_book);
    write_file(folder / "short", "SQL");
    EXPECT_EQ(fault_of(folder / "short"), OpenFault::not_a_book);
    {
        SQLite::Database other((folder / "other.db").string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
        other.exec("CREATE TABLE songs (title TEXT)");
    }
    EXPECT_EQ(fault_of(folder / "other.db"), OpenFault::not_a_book);
    {
        SQLite::Database other((folder / "marked.db").string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
        other.exec("PRAGMA application_id = 12345");
    }
    EXPECT_EQ(fault_of(folder / "marked.db"), OpenFault::not_a_book);
    std::filesystem::create_directory(folder / "folder");
    EXPECT_EQ(fault_of(folder / "folder"), OpenFault::unreadable);
    EXPECT_EQ(fault_of(folder / "text" / "inside.book"), OpenFault::unreadable) << "its folder is a file";
}

TEST(OpenBook, SaysWhenItIsDamaged)
{
    const Folder folder;
    const auto path = folder / "shop.book";
    Book::open(path).value();
    const std::string sound = read_file(path);
    ASSERT_GT(sound.size(), 40'000u);

    write_file(path, sound.substr(0, sound.size() / 2));
    EXPECT_EQ(fault_of(path), OpenFault::damaged) << "cut off";
    write_file(path, sound.substr(0, 60));
    EXPECT_EQ(fault_of(path), OpenFault::damaged) << "cut off in its first page";
    std::string scribbled = sound;
    std::fill(scribbled.begin() + 4096, scribbled.begin() + 3 * 4096, '\x5a');
    write_file(path, scribbled);
    EXPECT_EQ(fault_of(path), OpenFault::damaged) << "scribbled over";
    write_file(path, sound);
    SQLite::Database(path.string(), SQLite::OPEN_READWRITE).exec("PRAGMA user_version = 0");
    EXPECT_EQ(fault_of(path), OpenFault::damaged) << "of no version, and yet with tables";
    EXPECT_FALSE(std::filesystem::exists(path.string() + ".version-0"));
}

// Either it opens, and then verifying ends, or there is a reason; never anything else.
TEST(OpenBook, MeetsAnyFlippedByteWithAReason)
{
    const Folder folder;
    const auto path = folder / "shop.book";
    Book::open(path).value();
    const std::string sound = read_file(path);
    int refused = 0;
    for (std::size_t at = 0; at < sound.size(); at += 997) { // a prime: every place in a page comes up
        std::string flipped = sound;
        flipped[at] = static_cast<char>(~flipped[at]);
        for (const char* log : {"shop.book-wal", "shop.book-shm"}) std::filesystem::remove(folder / log);
        write_file(path, flipped);
        try {
            const auto book = Book::open(path);
            if (!book) ++refused;
            if (book) verify(*book);
        } catch (const BookFailure& failure) {
            EXPECT_NE(failure.what(), std::string());
            ++refused;
        }
    }
    EXPECT_GT(refused, 0);
}

TEST(OpenBook, SaysWhenAnotherProgramIsWriting)
{
    const Folder folder;
    const auto path = folder / "shop.book";
    Book::open(path).value();
    SQLite::Database other(path.string(), SQLite::OPEN_READWRITE);
    other.exec("BEGIN IMMEDIATE");
    EXPECT_EQ(fault_of(path), OpenFault::locked);
    other.exec("COMMIT");
    EXPECT_TRUE(Book::open(path));
}

// A process that closes a file itself gives up all locks it has on it, its other connections' too (POSIX, fcntl: "all
// locks associated with a file ... shall be removed when a file descriptor for that file is closed by that process").
// Then another program would take itself for the last one, clear away the log, and what is written to it later is lost.
TEST(OpenBook, OpeningItTwiceInOneProgramLosesNoStepToAnotherProgram)
{
    const Folder folder;
    const auto path = folder / "shop.book";
    int go[2];
    ASSERT_EQ(::pipe(go), 0);
    const pid_t other = ::fork(); // before this one has the book open: SQLite's connections do not survive a fork
    ASSERT_GE(other, 0);
    if (other == 0) {
        char begin = 0;
        if (::read(go[0], &begin, 1) != 1) ::_exit(1);
        bool done = false;
        {
            auto book = Book::open(path);
            done = book && receive(*book, {"K2"}, shop::pieces(1)).has_value();
        }
        ::_exit(done ? 0 : 1);
    }
    std::size_t finished = 0;
    {
        Book first = Book::open(path).value();
        take_in_supplies(first, {SmallShop::carton("K2", 10)}, "supplies.csv");
        Book::open(path).value(); // as the window does every hour
        ASSERT_EQ(::write(go[1], "!", 1), 1);
        int status = 0;
        ASSERT_EQ(::waitpid(other, &status, 0), other);
        ASSERT_TRUE(WIFEXITED(status) && WEXITSTATUS(status) == 0);
        ASSERT_TRUE(receive(first, {"K2"}, shop::pieces(1)));
        finished = 3;
        EXPECT_TRUE(std::filesystem::exists(path.string() + "-wal")) << "the log was cleared away under it";
    }
    const Book again = Book::open(path).value();
    EXPECT_EQ(steps(again).size(), finished);
    EXPECT_EQ(supplies_on_hand(again).at({"K2"}), shop::pieces(12));
    EXPECT_TRUE(verify(again).empty());
}

// A book that may be read and not written is refused with a reason, and stays as it is. Root may write all, so another
// user tries (65534 is nobody).
TEST(OpenBook, SaysWhenItMayOnlyBeRead)
{
    const Folder folder;
    const auto path = folder / "shop.book";
    Book::open(path).value();
    using std::filesystem::perms;
    const perms all_read = perms::owner_read | perms::group_read | perms::others_read;
    std::filesystem::permissions(path, all_read);
    std::filesystem::permissions(path.parent_path(),
                                 all_read | perms::owner_exec | perms::group_exec | perms::others_exec);
    const std::string before = read_file(path);
    const auto opens_as_nobody = [&] {
        if (::geteuid() == 0 && ::setuid(65534) != 0) return 2;
        const auto book = Book::open(path);
        return !book && book.error().fault == OpenFault::read_only ? 0 : 1;
    };
    EXPECT_EXIT(::_exit(opens_as_nobody()), testing::ExitedWithCode(0), "");
    std::filesystem::permissions(path.parent_path(), perms::all);
    EXPECT_EXIT(::_exit(opens_as_nobody()), testing::ExitedWithCode(0), "") << "only its folder may be written";
    std::filesystem::permissions(path.parent_path(), perms::owner_all);
    EXPECT_EQ(read_file(path), before);
}

// The clock of the machine was set back: what was done last is still what is undone first, and all adds up.
TEST(OpenBook, WorksOnWhenTheClockWentBack)
{
    SmallShop shop;
    shop.stock_up();
    const shop::ParcelId first = shop.labelled("1001");
    shop.now -= std::chrono::hours(24 * 40);
    const shop::ParcelId second = shop.labelled("1002");
    EXPECT_NE(parcel(shop.book, first)->parcel.number, parcel(shop.book, second)->parcel.number);
    const auto all = steps(shop.book);
    for (std::size_t i = 1; i < all.size(); ++i) EXPECT_GT(all[i - 1].id.value, all[i].id.value) << "newest first";
    const auto last = last_undoable(shop.book);
    ASSERT_TRUE(last);
    EXPECT_EQ(last->at, shop.now);
    ASSERT_TRUE(undo(shop.book, last->id));
    EXPECT_EQ(parcel(shop.book, second)->parcel.state, shop::ParcelState::packed);
    EXPECT_EQ(parcel(shop.book, first)->parcel.state, shop::ParcelState::labelled);
    EXPECT_TRUE(verify(shop.book).empty());
}

TEST(Migrations, AFailingOneLeavesTheBookAsItWas)
{
    const Folder folder;
    SQLite::Database db((folder / "shop.book").string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
    ASSERT_TRUE(migrate(db, migrations()));
    const auto tables = db.execAndGet("SELECT count(*) FROM sqlite_schema").getInt();

    std::vector<Migration> more = migrations();
    more.push_back(
        {book_version + 1, "CREATE TABLE attic (id INTEGER PRIMARY KEY) STRICT; INSERT INTO nowhere VALUES (1);"});
    const auto done = migrate(db, more);
    ASSERT_FALSE(done);
    EXPECT_NE(done.error().find("nowhere"), std::string::npos) << done.error();
    EXPECT_EQ(db.execAndGet("PRAGMA user_version").getInt(), book_version);
    EXPECT_EQ(db.execAndGet("SELECT count(*) FROM sqlite_schema").getInt(), tables);

    more.back().sql = "CREATE TABLE attic (id INTEGER PRIMARY KEY) STRICT";
    EXPECT_TRUE(migrate(db, more));
    EXPECT_TRUE(migrate(db, more)) << "again";
    EXPECT_EQ(db.execAndGet("PRAGMA user_version").getInt(), book_version + 1);
}

TEST(Migrations, TheOlderBookIsKeptForItsOwnerOnly)
{
    const Folder folder;
    const auto path = folder / "shop.book";
    {
        SQLite::Database older(path.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
        older.exec("PRAGMA application_id = " + std::to_string(book_mark));
        ASSERT_TRUE(migrate(older, {migrations().front()}));
    }
    ASSERT_TRUE(Book::open(path));
    const auto kept = folder / "shop.book.version-1";
    struct stat about {};
    ASSERT_EQ(::stat(kept.c_str(), &about), 0);
    EXPECT_EQ(about.st_mode & 0777U, 0600U);
    SQLite::Database copy(kept.string(), SQLite::OPEN_READONLY);
    EXPECT_EQ(copy.execAndGet("PRAGMA user_version").getInt(), 1);
    EXPECT_EQ(copy.execAndGet("PRAGMA integrity_check").getString(), "ok");
}

// Every column of a tracked table must be in its images, or undoing would lose it.
TEST(Schema, TracksEveryTableThatIsNotListedAsFree)
{
    const Folder folder;
    const Book book = Book::open(folder / "shop.book").value();
    const std::vector<std::string> free{"step",   "image",       "movement",     "shelf",  "remembered",
                                        "solved", "used_on_day", "planned_part", "erased", "printed"};
    SQLite::Statement tables(book.db(),
                             "SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT LIKE 'sqlite_%'");
    while (tables.executeStep()) {
        const std::string name = tables.getColumn(0).getString();
        const auto in = [&](const auto& list) { return std::find(list.begin(), list.end(), name) != list.end(); };
        EXPECT_NE(in(tracked_tables()), in(free)) << name;
    }
}

TEST(Schema, RefusesWritingOutsideAStep)
{
    const Folder folder;
    const Book book = Book::open(folder / "shop.book").value();
    EXPECT_THROW(book.db().exec("INSERT INTO column_match (shop, columns) VALUES ('a', 'b')"), SQLite::Exception);
}

TEST(Schema, KeepsTheLedgerAppendOnly)
{
    SmallShop shop;
    shop.stock_up();
    EXPECT_THROW(shop.book.db().exec("UPDATE movement SET amount = 1"), SQLite::Exception);
    EXPECT_THROW(shop.book.db().exec("DELETE FROM movement"), SQLite::Exception);
    EXPECT_THROW(shop.book.db().exec("DELETE FROM step"), SQLite::Exception);
}

TEST(Steps, EveryKindHasAWordOfItsOwn)
{
    for (int i = 0; i <= static_cast<int>(StepKind::erase_buyer); ++i) {
        const auto kind = static_cast<StepKind>(i);
        ASSERT_FALSE(name_of(kind).empty()) << i;
        EXPECT_EQ(step_kind(name_of(kind)), kind) << name_of(kind);
    }
}

// XDG Base Directory Specification 0.8: $XDG_DATA_HOME if set, not empty and absolute, else $HOME/.local/share.
TEST(DefaultBookPath, FollowsTheBaseDirectorySpecification)
{
    const char* const home = std::getenv("HOME");
    const char* const data = std::getenv("XDG_DATA_HOME");
    const std::string old_home = home ? home : "", old_data = data ? data : "";
    ::setenv("HOME", "/home/maker", 1);
    ::setenv("XDG_DATA_HOME", "/data", 1);
    EXPECT_EQ(default_book_path(), "/data/stowbench/shop.book");
    ::setenv("XDG_DATA_HOME", "", 1);
    EXPECT_EQ(default_book_path(), "/home/maker/.local/share/stowbench/shop.book");
    ::setenv("XDG_DATA_HOME", "relative", 1);
    EXPECT_EQ(default_book_path(), "/home/maker/.local/share/stowbench/shop.book");
    ::unsetenv("XDG_DATA_HOME");
    EXPECT_EQ(default_book_path(), "/home/maker/.local/share/stowbench/shop.book");
    if (home) ::setenv("HOME", old_home.c_str(), 1);
    if (data) ::setenv("XDG_DATA_HOME", old_data.c_str(), 1);
}
