// The whole book as open tables, and a book made of them again: for other programs, and for the day when this one is
// gone. A file NAME.csv for each table (RFC 4180, UTF-8, a head of column names): text in quotes, numbers without,
// nothing for what is not there; an apostrophe before text that a table program would take for a formula. "book.csv"
// says which version of the book they are of. Buyers' names and addresses are in them.
#pragma once

#include "core/book/backup.h"

#include <cstddef>
#include <filesystem>
#include <tl/expected.hpp>

namespace stow::book {

struct TablesCount {
    std::size_t tables = 0, rows = 0;
};

// Into an empty or new folder, readable by its owner alone; `cannot_write` otherwise.
tl::expected<TablesCount, BackupProblem> write_tables(const Book& book, const std::filesystem::path& folder);

// Makes the book `to`, which must not be there yet. Tables of another version of the book are refused: the version of
// this program that wrote them reads them. Nothing is left of a book that could not be made whole; the reason names
// file and row.
tl::expected<TablesCount, BackupProblem> read_tables(const std::filesystem::path& folder,
                                                     const std::filesystem::path& to);

} // namespace stow::book
