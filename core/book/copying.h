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

// A connection that has a book in WAL mode open keeps a lock on it, which another that wants it alone runs into.
bool in_use(const std::filesystem::path& path);

// Puts a finished file where `of` was, for good. Throws std::filesystem::filesystem_error.
void put_in_place(const std::filesystem::path& made, const std::filesystem::path& of);

// While it lives, no other that asks for it has the file. Throws std::filesystem::filesystem_error where one has.
class OnlyOne {
public:
    explicit OnlyOne(const std::filesystem::path& file);
    ~OnlyOne();
    OnlyOne(const OnlyOne&) = delete;
    OnlyOne& operator=(const OnlyOne&) = delete;

private:
    int file_;
};

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
