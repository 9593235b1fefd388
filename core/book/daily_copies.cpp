#include "core/book/daily_copies.h"

#include "core/book/copying.h"
#include "core/book/sql.h"

#include <algorithm>
#include <chrono>
#include <set>

namespace stow::book {

namespace {

namespace fs = std::filesystem;

constexpr std::string_view ending = ".book";

std::chrono::year_month month_of(Date day)
{
    const std::chrono::year_month_day parts(day);
    return parts.year() / parts.month();
}

} // namespace

fs::path copies_folder(const fs::path& book)
{
    return book.parent_path() / (book.stem().string() + " copies");
}

std::vector<Date> worth_keeping(const std::vector<Date>& days, Date today)
{
    std::vector<Date> newest_first = days;
    std::sort(newest_first.rbegin(), newest_first.rend());
    std::set<Date> kept, weeks;
    std::set<std::chrono::year_month> months;
    for (const Date day : newest_first) {
        const auto weeks_ago = (monday_of(today) - monday_of(day)).count() / 7;
        const auto months_ago = (month_of(today) - month_of(day)).count();
        const bool first_of_week = weeks.insert(monday_of(day)).second;
        const bool first_of_month = months.insert(month_of(day)).second;
        if (today - day < std::chrono::days(days_kept) || (weeks_ago < weeks_kept && first_of_week) ||
            (months_ago < months_kept && first_of_month)) {
            kept.insert(day);
        }
    }
    return {kept.begin(), kept.end()};
}

std::vector<DailyCopy> daily_copies(const fs::path& book)
{
    std::vector<DailyCopy> copies;
    std::error_code none;
    for (const auto& entry : fs::directory_iterator(copies_folder(book), none)) {
        const fs::path& file = entry.path();
        const auto day = file.extension() == ending ? parse_date(file.stem().string()) : std::nullopt;
        if (day) copies.push_back({*day, file});
    }
    std::sort(copies.begin(), copies.end(), [](const DailyCopy& a, const DailyCopy& b) { return a.day > b.day; });
    return copies;
}

tl::expected<std::optional<DailyCopy>, BackupProblem> copy_of_today(const Book& book, Date today)
{
    const fs::path folder = copies_folder(book.path());
    std::error_code failed;
    const bool fresh = fs::create_directories(folder, failed);
    if (fresh) fs::permissions(folder, fs::perms::owner_all, failed);
    if (failed) return tl::unexpected(BackupProblem{BackupProblem::Fault::cannot_write, failed.message(), {}});
    const DailyCopy made{today, folder / (to_text(today) + std::string(ending))};
    if (fs::exists(made.file, failed)) return std::optional<DailyCopy>();
    if (const auto written = backup_to(book, made.file); !written) return tl::unexpected(written.error());
    std::vector<Date> days;
    const std::vector<DailyCopy> copies = daily_copies(book.path());
    days.reserve(copies.size());
    for (const DailyCopy& copy : copies) days.push_back(copy.day);
    const std::vector<Date> kept = worth_keeping(days, today);
    for (const DailyCopy& copy : copies) {
        if (!std::binary_search(kept.begin(), kept.end(), copy.day)) fs::remove(copy.file, failed);
    }
    return made;
}

BookHolds holds(const Book& book)
{
    BookHolds holds;
    Query counts(book, "SELECT (SELECT count(*) FROM step), (SELECT count(*) FROM orders), "
                       "(SELECT count(*) FROM parcel)");
    counts.next();
    holds.steps = counts.integer(0);
    holds.orders = counts.integer(1);
    holds.parcels = counts.integer(2);
    const auto newest = steps(book, 1);
    if (!newest.empty()) holds.last = newest.front();
    return holds;
}

tl::expected<BookHolds, OpenProblem> look_into(const fs::path& copy)
{
    std::error_code failed;
    if (!fs::is_regular_file(copy, failed)) {
        return tl::unexpected(OpenProblem{OpenFault::unreadable, copy.string(), "no such file", 0});
    }
    try {
        const Aside aside(copy, copy.string() + looked_into);
        const auto opened = Book::open(aside.file());
        if (opened) return holds(*opened);
        OpenProblem problem = opened.error();
        problem.path = copy.string();
        return tl::unexpected(std::move(problem));
    } catch (const fs::filesystem_error& failure) {
        return tl::unexpected(OpenProblem{OpenFault::unreadable, copy.string(), reason(failure), 0});
    }
}

} // namespace stow::book
