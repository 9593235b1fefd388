// Copies of the book that are kept without anybody asking: of each of the last days, then of weeks, then of months.
#pragma once

#include "core/book/backup.h"
#include "core/book/steps.h"

#include <vector>

namespace stow::book {

inline constexpr int days_kept = 7, weeks_kept = 4, months_kept = 12;

// Of days that have a copy, those whose copy stays: the last seven days, the newest of each of the four weeks (from
// Monday) and the twelve months up to today. A day after today stays: the clock may have gone back. Ascending.
std::vector<Date> worth_keeping(const std::vector<Date>& days, Date today);

struct DailyCopy {
    Date day;
    std::filesystem::path file;
};
// Beside the book: "<name of the book> copies".
std::filesystem::path copies_folder(const std::filesystem::path& book);
// Of the book at this path, newest first.
std::vector<DailyCopy> daily_copies(const std::filesystem::path& book);

// Makes today's copy if there is none yet (checked like every backup) and removes those not worth keeping; none is
// removed when the copy fails. Nothing: there is one already. Readable by its owner only.
tl::expected<std::optional<DailyCopy>, BackupProblem> copy_of_today(const Book& book, Date today);

// What a book holds, and a copy of one before it is restored: a file nobody has open, which stays as it is.
struct BookHolds {
    std::int64_t steps = 0, orders = 0, parcels = 0;
    std::optional<Step> last{};
};
BookHolds holds(const Book& book);
tl::expected<BookHolds, OpenProblem> look_into(const std::filesystem::path& copy);

} // namespace stow::book
