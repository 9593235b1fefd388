// The files of books: made private, copied, judged and cleared away. Internal to the book.
#pragma once

#include <filesystem>
#include <optional>
#include <string>

namespace SQLite {
class Database;
}

namespace stow::book {

// Makes an empty file only its owner may read, before SQLite can make one that others may. Else the reason.
std::optional<std::string> make_private(const std::filesystem::path& path);

void remove_with_logs(const std::filesystem::path& path);

// Copies page by page while others may go on using `from`, as one private file without a log beside it. Else the
// reason; SQLite's own failures are thrown.
std::optional<std::string> copy_online(SQLite::Database& from, const std::filesystem::path& to);

// What is wrong with a finished copy.
std::optional<std::string> unsound(const std::filesystem::path& path);

// A private copy of a book's file `of`, with its log where it was not closed in peace: opening a book may bring it up
// to date, so it is judged on a copy. What is left of it goes at the end. Throws std::filesystem::filesystem_error.
class Aside {
public:
    Aside(const std::filesystem::path& of, std::filesystem::path at);
    ~Aside();
    Aside(const Aside&) = delete;
    Aside& operator=(const Aside&) = delete;
    const std::filesystem::path& file() const { return file_; }

private:
    std::filesystem::path file_;
};

} // namespace stow::book
