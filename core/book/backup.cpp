#include "core/book/backup.h"

#include "core/book/copying.h"
#include "core/book/erasing.h"

#include <SQLiteCpp/SQLiteCpp.h>

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

// Of a book that may be damaged, older, or not there: then nobody's.
std::vector<shop::OrderKey> erased_in(const fs::path& path)
{
    try {
        SQLite::Database db(path.string(), SQLite::OPEN_READONLY);
        return erased_buyers(db);
    } catch (const SQLite::Exception&) {
        return {};
    } catch (const BookFailure&) {
        return {};
    }
}

} // namespace

tl::expected<void, BackupProblem> backup_to(const Book& book, const fs::path& to)
{
    const fs::path part = beside(to, ".part");
    try {
        if (const auto reason = copy_online(book.db(), part)) return problem(Fault::cannot_write, *reason);
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
    std::error_code failed;
    if (!fs::is_regular_file(from, failed)) {
        return problem(Fault::source_refused, "no such file", OpenProblem{OpenFault::unreadable, from.string(), {}, 0});
    }
    if (fs::exists(to, failed) && in_use(to)) return problem(Fault::in_use, to.string());
    try {
        const Aside part(from, beside(to, ".part"));
        {
            auto opened = Book::open(part.file());
            if (!opened) return problem(Fault::source_refused, opened.error().detail, opened.error());
            erase_again(*opened, erased_in(to));
        }
        if (const auto fault = unsound(part.file())) return problem(Fault::copy_unsound, *fault);
        if (fs::exists(to)) fs::rename(to, beside(to, ".before-restore"));
        remove_with_logs(to);
        fs::rename(part.file(), to);
        return {};
    } catch (const SQLite::Exception& failure) {
        return problem(Fault::copy_unsound, failure.what());
    } catch (const fs::filesystem_error& failure) {
        return problem(Fault::cannot_write, failure.what());
    }
}

} // namespace stow::book
