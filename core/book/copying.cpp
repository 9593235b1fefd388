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
#include <vector>

namespace stow::book {

namespace fs = std::filesystem;

namespace {

struct File {
    explicit File(int opened) : number(opened) {}
    ~File()
    {
        if (number >= 0) ::close(number);
    }
    File(const File&) = delete;
    File& operator=(const File&) = delete;
    int number;
};

} // namespace

std::string reason(const fs::filesystem_error& failure)
{
    const fs::path& path = failure.path2().empty() ? failure.path1() : failure.path2();
    return path.empty() ? failure.code().message() : path.string() + ": " + failure.code().message();
}

void copy_bytes(const fs::path& from, const fs::path& to)
{
    // By hand: where the disk is full, std::filesystem::copy_file says "input/output error".
    const auto failed = [&](const char* what, const fs::path& at) {
        const std::error_code why(errno, std::generic_category());
        remove_with_logs(to);
        throw fs::filesystem_error(what, at, why);
    };
    const File in(::open(from.c_str(), O_RDONLY | O_CLOEXEC));
    if (in.number < 0) failed("cannot be read", from);
    const File out(::open(to.c_str(), O_CREAT | O_TRUNC | O_WRONLY | O_CLOEXEC, S_IRUSR | S_IWUSR));
    if (out.number < 0 || ::fchmod(out.number, S_IRUSR | S_IWUSR) != 0) failed("cannot be written", to);
    std::vector<char> bytes(std::size_t{1} << 20);
    for (;;) {
        const ssize_t got = ::read(in.number, bytes.data(), bytes.size());
        if (got < 0) failed("cannot be read", from);
        if (got == 0) return;
        for (ssize_t at = 0; at < got;) {
            const ssize_t put = ::write(out.number, bytes.data() + at, static_cast<std::size_t>(got - at));
            if (put < 0) failed("cannot be written", to);
            at += put;
        }
    }
}

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

namespace {

void write_through(const fs::path& path, int how)
{
    const File file(::open(path.c_str(), how | O_CLOEXEC));
    if (file.number >= 0) ::fsync(file.number);
}

} // namespace

void put_in_place(const fs::path& made, const fs::path& of)
{
    write_through(made, O_RDONLY);
    for (const char* ending : {"-wal", "-shm", "-journal"}) fs::remove(of.string() + ending); // would be read with it
    fs::rename(made, of);
    // Where a system cannot, the rename is still whole.
    write_through(of.has_parent_path() ? of.parent_path() : ".", O_RDONLY | O_DIRECTORY);
}

namespace {

std::optional<std::string> copy_online(SQLite::Database& from, const fs::path& to)
{
    remove_with_logs(to); // of an attempt before this one
    if (auto reason = make_private(to)) return reason;
    SQLite::Database copy(to.string(), SQLite::OPEN_READWRITE);
    SQLite::Backup(copy, from).executeStep();
    copy.exec("PRAGMA journal_mode = DELETE");
    return std::nullopt;
}

} // namespace

std::optional<CopyFault> copy_checked(SQLite::Database& from, const fs::path& to)
{
    const fs::path part = to.string() + unfinished;
    try {
        if (auto reason = copy_online(from, part)) return CopyFault{false, *std::move(reason)};
        if (auto fault = unsound(part)) {
            remove_with_logs(part);
            return CopyFault{true, *std::move(fault)};
        }
        put_in_place(part, to);
        return std::nullopt;
    } catch (...) {
        remove_with_logs(part);
        throw;
    }
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
    remove_with_logs(file_); // of an attempt before this one
    for (const char* ending : {"", "-wal"}) {
        const fs::path from = of.string() + ending, to = file_.string() + ending;
        if (*ending != '\0' && !fs::exists(from)) continue;
        try {
            copy_bytes(from, to);
        } catch (const fs::filesystem_error&) {
            remove_with_logs(file_);
            throw;
        }
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
