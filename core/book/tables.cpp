#include "core/book/tables.h"

#include "core/book/copying.h"
#include "core/book/verify.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <cerrno>
#include <charconv>
#include <fmt/format.h>
#include <fstream>
#include <sqlite3.h>
#include <variant>
#include <vector>

namespace stow::book {

namespace {

namespace fs = std::filesystem;
using Fault = BackupProblem::Fault;

constexpr const char* head_file = "book.csv";

tl::unexpected<BackupProblem> problem(Fault fault, std::string detail)
{
    return tl::unexpected(BackupProblem{fault, std::move(detail), std::nullopt});
}

std::vector<std::string> names(SQLite::Database& db, const std::string& sql)
{
    std::vector<std::string> found;
    SQLite::Statement rows(db, sql);
    while (rows.executeStep()) found.push_back(rows.getColumn(0).getString());
    return found;
}

// SQLite's own are made by it again, but for the numbers it counts on from.
std::vector<std::string> tables_of(SQLite::Database& db)
{
    return names(db, "SELECT name FROM sqlite_schema WHERE type = 'table' AND (name NOT LIKE 'sqlite_%' OR "
                     "name = 'sqlite_sequence') ORDER BY name");
}

std::vector<std::string> columns_of(SQLite::Database& db, const std::string& table)
{
    return names(db, fmt::format("SELECT name FROM pragma_table_info('{}') ORDER BY cid", table));
}

// Table programs take text for a formula that begins with one of these (OWASP, CSV Injection); an apostrophe before it
// stops that. Further apostrophes are kept apart from ours: text that has them already gets one more, and gives it
// back.
bool needs_apostrophe(std::string_view text)
{
    const auto first = text.find_first_not_of('\'');
    return first != std::string_view::npos && std::string_view("=+-@\t\r").find(text[first]) != std::string_view::npos;
}

std::string in_quotes(std::string_view text)
{
    std::string out = needs_apostrophe(text) ? "\"'" : "\"";
    for (const char c : text) {
        if (c == '"') out += '"';
        out += c;
    }
    return out + '"';
}

std::string written(const SQLite::Column& cell)
{
    switch (cell.getType()) {
    case SQLITE_NULL: return {};
    case SQLITE_INTEGER: return fmt::format("{}", cell.getInt64());
    case SQLITE_FLOAT: return fmt::format("{:.17e}", cell.getDouble());
    default: return in_quotes(cell.getString());
    }
}

std::size_t write_table(SQLite::Database& db, const std::string& table, std::ostream& out)
{
    std::string list;
    for (const std::string& column : columns_of(db, table)) list += (list.empty() ? "" : ",") + column;
    out << list << '\n';
    std::size_t count = 0;
    SQLite::Statement rows(db, fmt::format("SELECT {} FROM \"{}\" ORDER BY 1", list, table));
    for (; rows.executeStep(); ++count) {
        for (int c = 0; c < rows.getColumnCount(); ++c) out << (c > 0 ? "," : "") << written(rows.getColumn(c));
        out << '\n';
    }
    return count;
}

using Cell = std::variant<std::monostate, std::int64_t, double, std::string>;

// Reads what write_table wrote. Throws std::runtime_error with the row where it was not that.
class TableReader {
public:
    explicit TableReader(const fs::path& file) : file_(file), in_(file, std::ios::binary)
    {
        if (!in_) fail("it cannot be opened");
    }

    std::string head() // first: the names stand bare, as no value does
    {
        ++number_;
        std::string line;
        std::getline(in_, line);
        if (!line.empty() && line.back() == '\r') line.pop_back();
        return line;
    }

    bool next(std::vector<Cell>& row)
    {
        row.clear();
        if (in_.peek() == std::char_traits<char>::eof()) return false;
        ++number_;
        for (;;) {
            row.push_back(in_.peek() == '"' ? Cell(text()) : plain());
            const int c = in_.get();
            if (c == '\n' || c == std::char_traits<char>::eof()) return true;
            if (c == '\r') continue;
            if (c != ',') fail("a comma or the end of the row is missing");
        }
    }

    [[noreturn]] void fail(const std::string& why) const
    {
        const std::string name = file_.filename().string();
        throw std::runtime_error(number_ == 0 ? fmt::format("{}: {}", name, why)
                                              : fmt::format("{}, row {}: {}", name, number_, why));
    }

private:
    std::string text()
    {
        std::string text;
        in_.get();
        for (;;) {
            const int c = in_.get();
            if (c == std::char_traits<char>::eof()) fail("the text does not end");
            if (c == '"') {
                if (in_.peek() != '"') return needs_apostrophe(text) && text[0] == '\'' ? text.substr(1) : text;
                in_.get();
            }
            text += static_cast<char>(c);
        }
    }

    Cell plain()
    {
        std::string digits;
        while (in_.peek() != ',' && in_.peek() != '\n' && in_.peek() != '\r' &&
               in_.peek() != std::char_traits<char>::eof()) {
            digits += static_cast<char>(in_.get());
        }
        if (digits.empty()) return std::monostate();
        const char* const end = digits.data() + digits.size();
        std::int64_t whole = 0;
        if (const auto read = std::from_chars(digits.data(), end, whole); read.ec == std::errc() && read.ptr == end) {
            return whole;
        }
        double number = 0;
        const auto read = std::from_chars(digits.data(), end, number);
        if (read.ec != std::errc() || read.ptr != end) fail(fmt::format("{} is no number, and text is quoted", digits));
        return number;
    }

    fs::path file_;
    std::ifstream in_;
    std::size_t number_ = 0;
};

void put_into(SQLite::Statement& insert, const std::vector<Cell>& row)
{
    insert.reset();
    insert.clearBindings();
    for (std::size_t c = 0; c < row.size(); ++c) {
        const int place = static_cast<int>(c) + 1;
        if (const auto* whole = std::get_if<std::int64_t>(&row[c]))
            insert.bind(place, *whole);
        else if (const auto* number = std::get_if<double>(&row[c]))
            insert.bind(place, *number);
        else if (const auto* text = std::get_if<std::string>(&row[c]))
            insert.bind(place, *text);
    }
}

std::size_t read_table(SQLite::Database& db, const std::string& table, const fs::path& file)
{
    TableReader reader(file);
    std::vector<Cell> row;
    const std::vector<std::string> columns = columns_of(db, table);
    std::string list, places;
    for (const std::string& column : columns) {
        list += (list.empty() ? "" : ",") + column;
        places += places.empty() ? "?" : ",?";
    }
    if (reader.head() != list) reader.fail(fmt::format("the columns should be {}", list));
    std::size_t count = 0;
    SQLite::Statement insert(db, fmt::format("INSERT INTO \"{}\" ({}) VALUES ({})", table, list, places));
    while (reader.next(row)) {
        if (row.size() != columns.size()) {
            reader.fail(fmt::format("it has {} cells instead of {}", row.size(), columns.size()));
        }
        put_into(insert, row);
        try {
            insert.exec();
        } catch (const SQLite::Exception& refused) {
            reader.fail(refused.what());
        }
        ++count;
    }
    return count;
}

int version_in(const fs::path& folder)
{
    TableReader reader(folder / head_file);
    reader.head();
    std::vector<Cell> row;
    if (!reader.next(row) || row.size() != 1 || !std::holds_alternative<std::int64_t>(row[0])) {
        reader.fail("it should name the version of the book");
    }
    return static_cast<int>(std::get<std::int64_t>(row[0]));
}

// With the triggers away: what they would count up is among the tables.
TablesCount fill(SQLite::Database& db, const fs::path& folder)
{
    db.exec("PRAGMA foreign_keys = OFF");
    SQLite::Transaction all(db);
    const auto triggers = names(db, "SELECT sql FROM sqlite_schema WHERE type = 'trigger' ORDER BY rowid");
    for (const std::string& name : names(db, "SELECT name FROM sqlite_schema WHERE type = 'trigger'")) {
        db.exec(fmt::format("DROP TRIGGER \"{}\"", name));
    }
    TablesCount count;
    for (const std::string& table : tables_of(db)) {
        db.exec(fmt::format("DELETE FROM \"{}\"", table));
        count.rows += read_table(db, table, folder / (table + ".csv"));
        ++count.tables;
    }
    for (const std::string& sql : triggers) db.exec(sql);
    SQLite::Statement loose(db, "PRAGMA foreign_key_check");
    if (loose.executeStep()) {
        throw std::runtime_error(fmt::format("{}.csv: a row belongs to one of {}.csv that is not there",
                                             loose.getColumn(0).getString(), loose.getColumn(2).getString()));
    }
    all.commit();
    return count;
}

} // namespace

tl::expected<TablesCount, BackupProblem> write_tables(const Book& book, const fs::path& folder)
{
    std::vector<fs::path> files;
    const auto fails = [&](const std::string& why) { // half of them would be taken for all
        std::error_code ignored;
        for (const fs::path& file : files) fs::remove(file, ignored);
        return problem(Fault::cannot_write, why);
    };
    const auto into = [&](const std::string& name, const auto& write) {
        files.push_back(folder / name);
        errno = 0;
        std::ofstream out(files.back(), std::ios::binary);
        write(out);
        if (!out.flush()) throw fs::filesystem_error("", files.back(), {errno, std::generic_category()});
    };
    try {
        if (fs::exists(folder) && !fs::is_empty(folder)) return problem(Fault::cannot_write, "the folder is not empty");
        fs::create_directories(folder);
        fs::permissions(folder, fs::perms::owner_all);
        SQLite::Database& db = book.db();
        SQLite::Transaction still(db); // all tables as of one moment
        TablesCount count;
        for (const std::string& table : tables_of(db)) {
            into(table + ".csv", [&](std::ostream& out) { count.rows += write_table(db, table, out); });
            ++count.tables;
        }
        into(head_file, [](std::ostream& out) { out << "version\n" << book_version << '\n'; });
        return count;
    } catch (const SQLite::Exception& failure) {
        return fails(failure.what());
    } catch (const fs::filesystem_error& failure) {
        return fails(reason(failure));
    }
}

tl::expected<TablesCount, BackupProblem> read_tables(const fs::path& folder, const fs::path& to)
{
    if (fs::exists(to)) return problem(Fault::cannot_write, "there is a shop book already: " + to.string());
    fs::path part = to;
    part += ".part";
    remove_with_logs(part);
    try {
        if (const int version = version_in(folder); version != book_version) {
            return problem(Fault::source_refused, fmt::format("the tables are of version {} of the book, this program "
                                                              "makes version {}",
                                                              version, book_version));
        }
        TablesCount count;
        if (const auto empty = Book::open(part); !empty) return problem(Fault::cannot_write, empty.error().detail);
        {
            SQLite::Database db(part.string(), SQLite::OPEN_READWRITE); // not as a book, which would note each step
            count = fill(db, folder);
        }
        {
            const auto book = Book::open(part);
            if (!book) throw std::runtime_error(book.error().detail);
            if (const auto faults = verify(*book); !faults.empty()) {
                throw std::runtime_error(faults.front().where + ": " + faults.front().detail);
            }
        }
        if (const auto fault = unsound(part)) throw std::runtime_error(*fault);
        fs::rename(part, to);
        return count;
    } catch (const std::exception& failure) {
        remove_with_logs(part);
        return problem(Fault::copy_unsound, failure.what());
    }
}

} // namespace stow::book
