#include "core/book/prints.h"

#include "core/book/sql.h"

#include <SQLiteCpp/Transaction.h>
#include <algorithm>
#include <set>

namespace stow::book {

int next_print(const Book& book, const std::string& paper, const std::vector<std::string>& of)
{
    int before = 0;
    for (const std::string& one : of) {
        Query row(book, "SELECT times FROM printed WHERE of = ? AND paper = ?", one, paper);
        if (row.next()) before = std::max(before, row.small(0));
    }
    return before + 1;
}

void count_print(Book& book, const std::string& paper, const std::vector<std::string>& of)
{
    try {
        SQLite::Transaction together(book.db());
        for (const std::string& one : std::set<std::string>(of.begin(), of.end())) {
            Query(book,
                  "INSERT INTO printed (paper, of, times) VALUES (?, ?, 1) "
                  "ON CONFLICT (of, paper) DO UPDATE SET times = times + 1",
                  paper, one)
                .run();
        }
        together.commit();
    } catch (const SQLite::Exception& failure) {
        fail(failure);
    }
}

} // namespace stow::book
