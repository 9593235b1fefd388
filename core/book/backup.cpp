#include "core/book/backup.h"

#include <SQLiteCpp/Backup.h>
#include <SQLiteCpp/SQLiteCpp.h>
#include <fmt/format.h>
#include <sqlite3.h>
#include <sys/stat.h>

namespace stow::book {

namespace {

namespace fs = std::filesystem;
using Fault = BackupProblem::Fault;

tl::unexpected<BackupProblem> problem(Fault fault, std::string detail, std::optional<OpenProblem> source = std::nullopt)
{
    return tl::unexpected(BackupProblem{fault, std::move(detail), std::move(source)});
}

fs::path beside(const fs::path& path, const char* ending)
{
    fs::path other = path;
    other += ending;
    return other;
}

void remove_with_logs(const fs::path& path)
{
    std::error_code ignored;
    for (const char* ending : {"", "-wal", "-shm", "-journal"}) fs::remove(beside(path, ending), ignored);
}

// Copies page by page while others may go on using `from`, as one self-contained file without a log beside it.
void copy_online(SQLite::Database& from, const fs::path& to)
{
    remove_with_logs(to);
    SQLite::Database copy(to.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
    ::chmod(to.c_str(), S_IRUSR | S_IWUSR);
    SQLite::Backup(copy, from).executeStep();
    copy.exec("PRAGMA journal_mode = DELETE");
}

// What is wrong with a finished copy.
std::optional<std::string> unsound(const fs::path& path)
{
    SQLite::Database copy(path.string(), SQLite::OPEN_READONLY);
    const std::string structure = copy.execAndGet("PRAGMA integrity_check(1)").getString();
    if (structure != "ok") return structure;
    if (copy.execAndGet("PRAGMA application_id").getInt() != book_mark) return "not a shop book";
    return std::nullopt;
}

// A connection that has a book in WAL mode open keeps a lock on it, which another that wants it alone runs into.
bool in_use(const fs::path& path)
{
    try {
        SQLite::Database alone(path.string(), SQLite::OPEN_READWRITE);
        alone.exec("PRAGMA locking_mode = EXCLUSIVE");
        alone.exec("BEGIN EXCLUSIVE");
        alone.exec("COMMIT");
        return false;
    } catch (const SQLite::Exception& failure) {
        return failure.getErrorCode() == SQLITE_BUSY || failure.getErrorCode() == SQLITE_LOCKED;
    }
}

} // namespace

tl::expected<void, BackupProblem> backup_to(const Book& book, const fs::path& to)
{
    const fs::path part = beside(to, ".part");
    try {
        copy_online(book.db(), part);
        if (const auto fault = unsound(part)) {
            remove_with_logs(part);
            return problem(Fault::copy_unsound, *fault);
        }
        fs::rename(part, to);
        return {};
    } catch (const SQLite::Exception& failure) {
        remove_with_logs(part);
        return problem(Fault::cannot_write, failure.what());
    } catch (const fs::filesystem_error& failure) {
        remove_with_logs(part);
        return problem(Fault::cannot_write, failure.what());
    }
}

tl::expected<void, BackupProblem> restore(const fs::path& from, const fs::path& to)
{
    const fs::path part = beside(to, ".part");
    std::error_code failed;
    if (!fs::is_regular_file(from, failed)) {
        return problem(Fault::source_refused, "no such file", OpenProblem{OpenFault::unreadable, from.string(), {}, 0});
    }
    if (fs::exists(to, failed) && in_use(to)) return problem(Fault::in_use, to.string());
    // Judged on a copy: opening a book may bring it up to date, and the backup stays as it is.
    fs::copy_file(from, part, fs::copy_options::overwrite_existing, failed);
    if (failed) return problem(Fault::cannot_write, failed.message());
    if (fs::exists(beside(from, "-wal"))) { // a book that was not closed in peace: its last steps are in there
        fs::copy_file(beside(from, "-wal"), beside(part, "-wal"), fs::copy_options::overwrite_existing, failed);
        if (failed) return problem(Fault::cannot_write, failed.message());
    }
    fs::permissions(part, fs::perms::owner_read | fs::perms::owner_write, failed); // wherever `from` lay
    if (failed) return problem(Fault::cannot_write, failed.message());
    std::optional<OpenProblem> refused;
    if (const auto opened = Book::open(part); !opened) refused = opened.error();
    for (int version = 1; version < book_version; ++version) { // kept on the way; `from` is that book still
        fs::remove(beside(part, fmt::format(".version-{}", version).c_str()), failed);
    }
    if (refused) {
        remove_with_logs(part);
        return problem(Fault::source_refused, refused->detail, refused);
    }
    try {
        if (const auto fault = unsound(part)) {
            remove_with_logs(part);
            return problem(Fault::copy_unsound, *fault);
        }
        if (fs::exists(to)) fs::rename(to, beside(to, ".before-restore"));
        remove_with_logs(to);
        fs::rename(part, to);
        remove_with_logs(part); // empty ones, of the check
        return {};
    } catch (const SQLite::Exception& failure) {
        remove_with_logs(part);
        return problem(Fault::copy_unsound, failure.what());
    } catch (const fs::filesystem_error& failure) {
        remove_with_logs(part);
        return problem(Fault::cannot_write, failure.what());
    }
}

} // namespace stow::book
