// The shop book: one SQLite file that holds a shop's data. Opening says what is wrong as a value; writing goes through
// steps (steps.h) only. What can be read and written is in the other headers of this folder, one a subject.
#pragma once

#include "core/measure/date.h"

#include <filesystem>
#include <functional>
#include <memory>
#include <stdexcept>
#include <string>
#include <tl/expected.hpp>

namespace SQLite {
class Database;
}

namespace stow::book {

using Clock = std::function<Instant()>; // handed in, so that a test can hold time still
Instant system_time();

inline constexpr int book_version = 7;                // PRAGMA user_version this program writes
inline constexpr std::int32_t book_mark = 0x53746f77; // PRAGMA application_id: "Stow" in ASCII

enum class OpenFault {
    unreadable, // the file or its folder cannot be opened or made
    read_only,  // it can be read, and not written: the file or its folder
    disk_full,
    not_a_book,    // an SQLite file of something else, or not SQLite at all
    newer,         // written by a later version of the program; left untouched
    damaged,       // SQLite finds its structure broken
    locked,        // another program is writing and did not finish in time
    update_failed, // bringing an older book up to date went wrong; the book is as it was
};

struct OpenProblem {
    OpenFault fault = OpenFault::unreadable;
    std::string path;
    std::string detail; // SQLite's or the system's own words
    int found = 0;      // for `newer`: the version of the book
    int understood = book_version;
};

// Thrown when a sound book fails underneath (disk full, file removed): nothing of the step under way was kept.
class BookFailure : public std::runtime_error {
public:
    BookFailure(const std::string& what, int sqlite_code) : std::runtime_error(what), sqlite_code_(sqlite_code) {}
    int sqlite_code() const { return sqlite_code_; }
    bool busy() const; // another program was writing and did not finish in time
    bool disk_full() const;

private:
    int sqlite_code_;
};

class Book {
public:
    // Opens the book, making it (0600) with its folders if there is none, and brings an older one up to date.
    static tl::expected<Book, OpenProblem> open(const std::filesystem::path& path, Clock clock = system_time);

    Book(Book&&) noexcept;
    Book& operator=(Book&&) noexcept;
    ~Book();

    const std::filesystem::path& path() const { return path_; }
    Instant now() const { return clock_(); }

    // For the files of this folder.
    SQLite::Database& db() const { return *db_; }

private:
    Book(std::unique_ptr<SQLite::Database> db, std::filesystem::path path, Clock clock);

    std::unique_ptr<SQLite::Database> db_;
    std::filesystem::path path_;
    Clock clock_;
};

// $XDG_DATA_HOME/stowbench/shop.book, or ~/.local/share/stowbench/shop.book where that variable is unset, empty or not
// an absolute path (XDG Base Directory Specification 0.8).
std::filesystem::path default_book_path();

} // namespace stow::book
