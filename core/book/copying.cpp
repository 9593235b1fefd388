#include "core/book/copying.h"

#include "core/book/book.h"

#include <SQLiteCpp/Backup.h>
#include <SQLiteCpp/SQLiteCpp.h>
#include <cerrno>
#include <cstring>
#include <fcntl.h>
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
