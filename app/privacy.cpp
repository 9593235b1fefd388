#include "app/privacy.h"

#include "app/day_papers.h"
#include "core/book/cupboard.h"
#include "core/book/erasing.h"

#include <algorithm>

namespace stow {

namespace {

Date months_before(Date day, int months)
{
    const std::chrono::year_month_day then = std::chrono::year_month_day(day) - std::chrono::months(months);
    return then.ok() ? Date(then) : Date(then.year() / then.month() / std::chrono::last);
}

} // namespace

int forget_old_buyers(book::Book& book, Date today)
{
    const int months = book::house(book).forget_months;
    return months > 0 ? book::erase_buyers(book, months_before(today, months)) : 0;
}

std::vector<std::filesystem::path> papers_kept(const Day& day)
{
    namespace fs = std::filesystem;
    std::vector<fs::path> papers;
    std::error_code failed;
    for (fs::recursive_directory_iterator at(paper_folder(day), failed), end; !failed && at != end;
         at.increment(failed)) {
        const std::string kind = at->path().extension().string();
        if (at->is_regular_file() && (kind == ".pdf" || kind == ".csv" || kind == ".txt")) papers.push_back(at->path());
    }
    std::sort(papers.begin(), papers.end());
    return papers;
}

int delete_papers(const std::vector<std::filesystem::path>& papers)
{
    return static_cast<int>(std::count_if(papers.begin(), papers.end(), [](const auto& paper) {
        std::error_code failed;
        return std::filesystem::remove(paper, failed);
    }));
}

} // namespace stow
