// Copies of the book.
#pragma once

#include "core/book/book.h"

#include <optional>

namespace stow::book {

struct BackupProblem {
    enum class Fault { cannot_write, copy_unsound, source_refused, in_use } fault = Fault::cannot_write;
    std::string detail;
    std::optional<OpenProblem> source; // why the copy to restore from was refused
};

// A copy while the book is open (SQLite online backup): written beside `to`, checked, then moved into place, so that an
// older backup there is never lost to a failed one.
tl::expected<void, BackupProblem> backup_to(const Book& book, const std::filesystem::path& to);

// Puts the copy `from` in the place of the book at `to`, which must not be open. It is opened and checked first, and
// buyers whose data the book at `to` has erased are erased in it too; the
// book that was there is kept beside it as "<name>.before-restore".
tl::expected<void, BackupProblem> restore(const std::filesystem::path& from, const std::filesystem::path& to);

} // namespace stow::book
