#include "core/book/copying.h"

#include "core/book/book.h"

#include <SQLiteCpp/Backup.h>
#include <SQLiteCpp/SQLiteCpp.h>
#include <cerrno>
#include <cstring>
#include <fcntl.h>
#include <sqlite3.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

namespace stow::book {

namespace fs = std::filesystem;

std::optional<std::string> make_private(const fs::path& path)
{
    const int file = ::open(path.c_str(), O_CREAT | O_EXCL | O_RDWR | O_CLOEXEC, S_IRUSR | S_IWUSR);
    if (file < 0) return std::string(std::strerror(errno));
    ::close(file);
    return std::nullopt;
}

void remove_with_logs(const fs::path& path)
{
    std::error_code ignored;
    for (const char* ending : {"", "-wal", "-shm", "-journal"}) fs::remove(path.string() + ending, ignored);
}

std::optional<std::string> copy_online(SQLite::Database& from, const fs::path& to)
{
    remove_with_logs(to); // of an attempt before this one
    if (auto reason = make_private(to)) return reason;
    SQLite::Database copy(to.string(), SQLite::OPEN_READWRITE);
    SQLite::Backup(copy, from).executeStep();
    copy.exec("PRAGMA journal_mode = DELETE");
    return std::nullopt;
}

std::optional<std::string> unsound(const fs::path& path)
{
    SQLite::Database copy(path.string(), SQLite::OPEN_READONLY);
    const std::string structure = copy.execAndGet("PRAGMA integrity_check(1)").getString();
    if (structure != "ok") return structure;
    if (copy.execAndGet("PRAGMA application_id").getInt() != book_mark) return "not a shop book";
    return std::nullopt;
}

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

void put_in_place(const fs::path& made, const fs::path& of)
{
    for (const char* ending : {"-wal", "-shm", "-journal"}) fs::remove(of.string() + ending); // would be read with it
    fs::rename(made, of);
    const int folder =
        ::open(of.has_parent_path() ? of.parent_path().c_str() : ".", O_RDONLY | O_DIRECTORY | O_CLOEXEC);
    if (folder < 0) return;
    ::fsync(folder); // where a system cannot, the rename is still whole
    ::close(folder);
}

OnlyOne::OnlyOne(const fs::path& file) : file_(::open(file.c_str(), O_RDONLY | O_CLOEXEC))
{
    if (file_ >= 0 && ::flock(file_, LOCK_EX | LOCK_NB) == 0) return;
    const std::error_code why(errno, std::generic_category());
    if (file_ >= 0) ::close(file_);
    throw fs::filesystem_error("another program works on it", file, why);
}

OnlyOne::~OnlyOne()
{
    ::close(file_);
}

Aside::Aside(const fs::path& of, fs::path at) : file_(std::move(at))
{
    for (const char* ending : {"", "-wal"}) {
        const fs::path from = of.string() + ending, to = file_.string() + ending;
        if (*ending != '\0' && !fs::exists(from)) continue;
        fs::copy_file(from, to, fs::copy_options::overwrite_existing);
        fs::permissions(to, fs::perms::owner_read | fs::perms::owner_write); // wherever `of` lay
    }
}

Aside::~Aside()
{
    remove_with_logs(file_);
    std::error_code ignored; // kept while it was brought up to date; what it is a copy of is that book still
    for (int version = 1; version < book_version; ++version) {
        fs::remove(file_.string() + ".version-" + std::to_string(version), ignored);
    }
}

} // namespace stow::book
