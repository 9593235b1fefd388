#include "core/book/book.h"

#include "core/book/copying.h"
#include "core/book/schema.h"
#include "core/book/sql.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <cerrno>
#include <cstdlib>
#include <cstring>
#include <fcntl.h>
#include <sqlite3.h>
#include <sys/stat.h>
#include <unistd.h>

namespace stow::book {

namespace {

namespace fs = std::filesystem;

constexpr std::uintmax_t looked_at_whole = 64 << 20; // bytes
constexpr int patience_ms = 2000;                    // for another program that is writing

// Too little room for the log and its index, which SQLite reports as failures to write.
bool disk_is_full(const fs::path& path)
{
    constexpr std::uintmax_t least = 256 << 10; // bytes
    std::error_code unknown;
    const auto space = fs::space(path, unknown);
    return !unknown && space.available < least;
}

OpenFault fault_of(const SQLite::Exception& failure, const fs::path& path)
{
    switch (failure.getErrorCode()) {
    case SQLITE_READONLY: return OpenFault::read_only;
    case SQLITE_FULL: return OpenFault::disk_full;
    case SQLITE_IOERR: return disk_is_full(path) ? OpenFault::disk_full : OpenFault::unreadable;
    case SQLITE_NOTADB:
    case SQLITE_CORRUPT: return OpenFault::damaged; // its first bytes said that it is SQLite's
    case SQLITE_BUSY:
    case SQLITE_LOCKED: return OpenFault::locked;
    default: return OpenFault::unreadable;
    }
}

enum class Beginning { empty, sqlite, other, unreadable };

// Through SQLite's own file: were the process to open and close it beside SQLite, the locks of all its connections
// would be gone (POSIX, fcntl), and another program would take itself for the only one.
Beginning beginning_of(SQLite::Database& db)
{
    sqlite3_file* file = nullptr;
    const bool known = ::sqlite3_file_control(db.getHandle(), nullptr, SQLITE_FCNTL_FILE_POINTER, &file) == SQLITE_OK;
    if (!known || file == nullptr || file->pMethods == nullptr) return Beginning::unreadable;
    sqlite3_int64 size = 0;
    if (file->pMethods->xFileSize(file, &size) != SQLITE_OK) return Beginning::unreadable;
    if (size == 0) return Beginning::empty;
    char first[16]{};
    if (size < 16) return Beginning::other;
    if (file->pMethods->xRead(file, first, sizeof first, 0) != SQLITE_OK) return Beginning::unreadable;
    return std::memcmp(first, "SQLite format 3", 16) == 0 ? Beginning::sqlite : Beginning::other;
}

void set_up(SQLite::Database& db)
{
    db.exec("PRAGMA foreign_keys = ON");
    db.exec("PRAGMA secure_delete = ON"); // an erased buyer leaves no trace on a free page
    db.exec("PRAGMA journal_mode = WAL");
    db.exec("PRAGMA synchronous = FULL"); // a pulled plug loses no finished step
}

} // namespace

bool BookFailure::busy() const
{
    const int kind = sqlite_code_ & 0xff; // without its details
    return kind == SQLITE_BUSY || kind == SQLITE_LOCKED;
}

bool BookFailure::disk_full() const
{
    return (sqlite_code_ & 0xff) == SQLITE_FULL;
}

Instant system_time()
{
    return std::chrono::floor<std::chrono::seconds>(std::chrono::system_clock::now());
}

Book::Book(std::unique_ptr<SQLite::Database> db, std::filesystem::path path, Clock clock)
    : db_(std::move(db)), path_(std::move(path)), clock_(std::move(clock))
{
}
Book::Book(Book&&) noexcept = default;
Book& Book::operator=(Book&&) noexcept = default;
Book::~Book() = default;

tl::expected<Book, OpenProblem> Book::open(const fs::path& path, Clock clock)
{
    const auto problem = [&](OpenFault fault, std::string detail) {
        return tl::unexpected(OpenProblem{fault, path.string(), std::move(detail), 0, book_version});
    };
    std::error_code failed;
    if (!fs::exists(path, failed)) {
        if (path.has_parent_path()) fs::create_directories(path.parent_path(), failed);
        if (failed) return problem(OpenFault::unreadable, failed.message());
        if (const auto reason = make_private(path)) return problem(OpenFault::unreadable, *reason);
    }
    if (!fs::is_regular_file(path, failed)) return problem(OpenFault::unreadable, "it is not a file");
    if (::access(path.c_str(), R_OK) != 0) return problem(OpenFault::unreadable, std::strerror(errno));
    try {
        auto db = std::make_unique<SQLite::Database>(path.string(), SQLite::OPEN_READWRITE, patience_ms);
        const Beginning beginning = beginning_of(*db);
        if (beginning == Beginning::unreadable) return problem(OpenFault::unreadable, "cannot be read");
        if (beginning == Beginning::other) return problem(OpenFault::not_a_book, "not an SQLite file");
        if (::sqlite3_db_readonly(db->getHandle(), "main") == 1) return problem(OpenFault::read_only, "the file");
        const int version = db->execAndGet("PRAGMA user_version").getInt();
        const int mark = db->execAndGet("PRAGMA application_id").getInt();
        const bool fresh = version == 0 && db->execAndGet("SELECT count(*) FROM sqlite_schema").getInt() == 0;
        if (mark != book_mark && !(fresh && mark == 0)) {
            return problem(OpenFault::not_a_book, "an SQLite file of something else");
        }
        if (!fresh && version < 1) return problem(OpenFault::damaged, "it does not say its version");
        // Said before anything is written: a later program's book stays as it is.
        if (version > book_version) {
            return tl::unexpected(OpenProblem{OpenFault::newer, path.string(), {}, version, book_version});
        }
        // Looking at every page of years of work takes seconds; then `verify` does it, and a broken page is found when
        // it is read.
        std::error_code unknown;
        const bool small = fs::file_size(path, unknown) <= looked_at_whole;
        const std::string sound =
            db->execAndGet(small ? "PRAGMA quick_check(1)" : "PRAGMA quick_check(house)").getString();
        if (sound != "ok") return problem(OpenFault::damaged, sound.substr(sound.rfind('\n') + 1)); // under a heading
        if (!fresh && version < book_version) {
            const fs::path older = path.string() + ".version-" + std::to_string(version);
            if (const auto fault = copy_checked(*db, older)) return problem(OpenFault::update_failed, fault->why);
        }
        set_up(*db);
        { // May we write, and now? Given back at once.
            const SQLite::Transaction asked(*db, SQLite::TransactionBehavior::IMMEDIATE);
        }
        if (const auto done = migrate(*db, migrations()); !done) return problem(OpenFault::update_failed, done.error());
        record_images(*db);
        return Book(std::move(db), path, std::move(clock));
    } catch (const SQLite::Exception& failure) {
        return problem(fault_of(failure, path), failure.what());
    } catch (const fs::filesystem_error& failure) { // the copy of an older book
        return problem(OpenFault::update_failed, reason(failure));
    }
}

fs::path default_book_path()
{
    const auto folder = [](const char* variable) -> fs::path {
        const char* const value = std::getenv(variable); // NOLINT(concurrency-mt-unsafe): read once, at the start
        return value ? fs::path(value) : fs::path();
    };
    fs::path data = folder("XDG_DATA_HOME");
    if (!data.is_absolute()) data = folder("HOME") / ".local" / "share";
    return data / "stowbench" / "shop.book";
}

} // namespace stow::book
