// The files of books: made private, copied, judged and cleared away. Internal to the book.
#pragma once

#include <filesystem>
#include <optional>
#include <string>

namespace SQLite {
class Database;
}

namespace stow::book {

// What the file of a copy is called until it is whole, and the one in which a copy is looked into: more at the end.
inline constexpr const char* unfinished = ".part";
inline constexpr const char* looked_into = ".looked-into";

// What failed, in words: the file and the system's reason.
std::string reason(const std::filesystem::filesystem_error& failure);

// Byte for byte, over what is there. Throws std::filesystem::filesystem_error; nothing is left of half a copy.
void copy_bytes(const std::filesystem::path& from, const std::filesystem::path& to);

// Makes an empty file only its owner may read, before SQLite can make one that others may. Else the reason.
std::optional<std::string> make_private(const std::filesystem::path& path);

void remove_with_logs(const std::filesystem::path& path);

// What is wrong with a finished copy.
std::optional<std::string> unsound(const std::filesystem::path& path);

// Copies page by page while others may go on using `from`, as one private file without a log beside it; checked, and
// only then under its name: whatever stops it, no half copy is there, and an older one there is not lost. SQLite's own
// failures and the file system's are thrown.
struct CopyFault {
    bool unsound = false; // else: not written
    std::string why;
};
std::optional<CopyFault> copy_checked(SQLite::Database& from, const std::filesystem::path& to);

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
