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
Erased erased_in(const fs::path& path)
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

// A copy, byte for byte, since it may be damaged; the book itself stays until the restored one takes its place, so that
// there is a book at every moment.
void keep(const fs::path& book, const fs::path& as)
{
    const fs::path part = beside(as, unfinished);
    copy_bytes(book, part);
    put_in_place(part, as);
}

} // namespace

tl::expected<void, BackupProblem> backup_to(const Book& book, const fs::path& to)
{
    std::error_code failed;
    if (fs::equivalent(book.path(), to, failed)) return problem(Fault::cannot_write, "it is the shop book itself");
    try {
        const auto fault = copy_checked(book.db(), to);
        if (fault) return problem(fault->unsound ? Fault::copy_unsound : Fault::cannot_write, fault->why);
        return {};
    } catch (const SQLite::Exception& failure) {
        return problem(Fault::cannot_write, failure.what());
    } catch (const fs::filesystem_error& failure) {
        return problem(Fault::cannot_write, reason(failure));
    }
}

tl::expected<void, BackupProblem> restore(const fs::path& from, const fs::path& to)
{
    std::error_code failed;
    if (!fs::is_regular_file(from, failed)) {
        return problem(Fault::source_refused, "no such file",
                       OpenProblem{OpenFault::unreadable, from.string(), "no such file", 0});
    }
    if (fs::exists(to, failed) && in_use(to)) return problem(Fault::in_use, to.string());
    try {
        const Aside part(from, beside(to, unfinished));
        {
            auto opened = Book::open(part.file());
            if (!opened) {
                OpenProblem why = opened.error();
                why.path = from.string(); // by the name she knows
                return problem(Fault::source_refused, why.detail, why);
            }
            erase_again(*opened, erased_in(to));
        }
        if (const auto fault = unsound(part.file())) return problem(Fault::copy_unsound, *fault);
        if (fs::exists(to)) keep(to, beside(to, ".before-restore"));
        put_in_place(part.file(), to);
        return {};
    } catch (const SQLite::Exception& failure) {
        return problem(Fault::copy_unsound, failure.what());
    } catch (const fs::filesystem_error& failure) {
        return problem(Fault::cannot_write, reason(failure));
    }
}

} // namespace stow::book
