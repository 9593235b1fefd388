#include "core/intake/csv.h"

#include "core/intake/text_encoding.h"

#include <algorithm>
#include <csv.h>
#include <filesystem>
#include <fstream>
#include <functional>
#include <istream>

namespace stow::intake {

namespace {

// Reads all bytes, but stops at the first line past the limit and at the first zero byte outside UTF-16.
std::optional<Problem> load(std::istream& in, const CsvLimits& limits, std::string& bytes)
{
    std::string chunk(std::size_t{64} * 1024, '\0');
    std::size_t line_begin = 0, line = 1;
    bool wide = false;
    const auto refuse = [](ProblemKind kind, std::size_t row, std::size_t limit) {
        Problem problem;
        problem.row = row;
        problem.kind = kind;
        if (limit != 0) problem.detail = size_in_words(limit);
        return problem;
    };
    while (in) {
        in.read(chunk.data(), static_cast<std::streamsize>(chunk.size()));
        const auto got = static_cast<std::size_t>(in.gcount());
        std::size_t i = bytes.size();
        bytes.append(chunk, 0, got);
        if (i == 0) wide = utf16_kind(bytes).has_value();
        for (; i < bytes.size(); ++i) {
            if (bytes[i] == '\0' && !wide) return refuse(ProblemKind::binary_file, line, 0);
            if (bytes[i] == '\n' || bytes[i] == '\r') {
                line += bytes[i] == '\n' ? 1U : 0U;
                line_begin = i + 1;
            } else if (i - line_begin >= limits.line_bytes) {
                return refuse(ProblemKind::line_too_long, line, limits.line_bytes);
            }
        }
        if (bytes.size() > limits.file_bytes) return refuse(ProblemKind::file_too_large, 0, limits.file_bytes);
    }
    if (bytes.empty()) return refuse(ProblemKind::empty_file, 0, 0);
    return std::nullopt;
}

// One physical line with its line end.
std::string_view take_line(std::string_view& text)
{
    std::size_t end = text.find_first_of("\r\n");
    if (end == std::string_view::npos)
        end = text.size();
    else
        end += text.substr(end, 2) == "\r\n" ? 2U : 1U;
    const std::string_view line = text.substr(0, end);
    text.remove_prefix(end);
    return line;
}

// libcsv fed line by line, so that each row knows the line it begins on.
class Rows {
public:
    explicit Rows(char delimiter, std::size_t row_bytes) : row_bytes_(row_bytes)
    {
        csv_init(&parser_, CSV_REPALL_NL | CSV_STRICT_FINI);
        csv_set_delim(&parser_, static_cast<unsigned char>(delimiter));
    }
    Rows(const Rows&) = delete;
    Rows& operator=(const Rows&) = delete;
    ~Rows() { csv_free(&parser_); }

    enum class End { read, row_too_long, quote_left_open };

    // `take` gets each row that is not blank, and returns false to stop.
    End read(std::string_view text, std::size_t first_line, const std::function<bool(CsvRow&&)>& take)
    {
        std::size_t line = first_line;
        row_.line = line;
        std::size_t row_size = 0;
        while (!text.empty()) {
            const std::string_view part = take_line(text);
            row_size += part.size();
            if (row_size > row_bytes_ + 2) return End::row_too_long;
            ended_ = false;
            csv_parse(&parser_, part.data(), part.size(), &on_cell, &on_row, this);
            ++line;
            if (!ended_) continue; // within quotes
            if (!deliver(take)) return End::read;
            row_.line = line;
            row_size = 0;
        }
        if (csv_fini(&parser_, &on_cell, &on_row, this) != 0) return End::quote_left_open;
        deliver(take);
        return End::read;
    }

    std::size_t line() const { return row_.line; } // where the row being read began

private:
    static void on_cell(void* bytes, std::size_t size, void* self)
    {
        static_cast<Rows*>(self)->row_.cells.emplace_back(static_cast<const char*>(bytes), size);
    }
    static void on_row(int, void* self) { static_cast<Rows*>(self)->ended_ = true; }

    bool deliver(const std::function<bool(CsvRow&&)>& take)
    {
        CsvRow row;
        row.line = row_.line;
        row.cells.swap(row_.cells);
        return row.cells.empty() || take(std::move(row));
    }

    csv_parser parser_{};
    std::size_t row_bytes_;
    CsvRow row_;
    bool ended_ = false;
};

// The delimiter that gives the most cells in rows as wide as the first; commas last, as they stand in prose.
char find_delimiter(std::string_view text, std::size_t row_bytes)
{
    constexpr std::size_t sample_rows = 60;
    char best = ',';
    std::size_t best_score = 0;
    for (const char delimiter : {'\t', ';', '|', ','}) {
        std::size_t columns = 0, alike = 0, seen = 0;
        Rows(delimiter, row_bytes).read(text, 1, [&](CsvRow&& row) {
            if (columns == 0) columns = row.cells.size();
            if (row.cells.size() == columns) ++alike;
            return ++seen < sample_rows;
        });
        const std::size_t score = columns < 2 ? 0 : columns * alike;
        if (score > best_score) {
            best = delimiter;
            best_score = score;
        }
    }
    return best;
}

bool all_digits(std::string_view text)
{
    return !text.empty() && std::all_of(text.begin(), text.end(), [](char c) { return c >= '0' && c <= '9'; });
}

// Digits, one `mark`, and digits; with exactly three after the mark it may group thousands and tells nothing.
bool tells_mark(std::string_view cell, char mark)
{
    if (!cell.empty() && (cell[0] == '-' || cell[0] == '+')) cell.remove_prefix(1);
    const auto at = cell.rfind(mark);
    if (at == std::string_view::npos) return false;
    std::string before(cell.substr(0, at));
    const char group = mark == ',' ? '.' : ',';
    before.erase(std::remove(before.begin(), before.end(), group), before.end());
    const std::string_view after = cell.substr(at + 1);
    return all_digits(before) && all_digits(after) && (after.size() != 3 || before == "0" || before.size() != at);
}

char find_decimal_mark(const Csv& csv)
{
    std::size_t commas = 0, points = 0;
    for (const CsvRow& row : csv.rows) {
        for (const std::string& cell : row.cells) {
            commas += tells_mark(cell, ',') ? 1U : 0U;
            points += tells_mark(cell, '.') ? 1U : 0U;
        }
    }
    if (commas != points) return commas > points ? ',' : '.';
    return csv.delimiter == ';' ? ',' : '.';
}

void refuse(Csv& csv, Problem problem)
{
    csv.headings.clear();
    csv.rows.clear();
    problem.file = csv.file;
    csv.problems = {std::move(problem)};
}

void refuse(Csv& csv, ProblemKind kind, std::size_t line = 0, std::string detail = {})
{
    Problem problem;
    problem.kind = kind;
    problem.row = line;
    problem.detail = std::move(detail);
    refuse(csv, std::move(problem));
}

void note(Csv& csv, ProblemKind kind, std::size_t line, std::string column, std::string value, std::string detail,
          bool stops)
{
    csv.problems.push_back({csv.file, line, std::move(column), kind, std::move(value), std::move(detail), stops});
}

void take_headings(Csv& csv, CsvRow&& row)
{
    while (!row.cells.empty() && trimmed(row.cells.back()).empty()) row.cells.pop_back();
    for (const std::string& cell : row.cells) {
        std::string heading(trimmed(cell));
        if (!heading.empty() && std::find(csv.headings.begin(), csv.headings.end(), heading) != csv.headings.end())
            note(csv, ProblemKind::duplicate, row.line, heading, heading, {}, false);
        csv.headings.push_back(std::move(heading));
    }
}

void take_row(Csv& csv, CsvRow&& row, std::size_t cell_bytes)
{
    const bool blank =
        std::all_of(row.cells.begin(), row.cells.end(), [](const std::string& c) { return trimmed(c).empty(); });
    const std::size_t width = csv.headings.size();
    // Spreadsheets like to end rows with empty cells.
    while (row.cells.size() > width && trimmed(row.cells.back()).empty()) row.cells.pop_back();
    if (blank && width > 1) return;
    if (row.cells.size() != width) {
        note(csv, ProblemKind::uneven_row, row.line, {}, std::to_string(row.cells.size()), std::to_string(width), true);
        return;
    }
    for (std::size_t i = 0; i < width; ++i) {
        if (row.cells[i].size() <= cell_bytes) continue;
        note(csv, ProblemKind::text_too_long, row.line, csv.headings[i], {}, std::to_string(cell_bytes), true);
        return;
    }
    csv.rows.push_back(std::move(row));
}

} // namespace

std::string size_in_words(std::size_t bytes)
{
    constexpr std::size_t mebibyte = 1 << 20;
    return bytes % mebibyte == 0 ? std::to_string(bytes / mebibyte) + " MiB" : std::to_string(bytes) + " B";
}

Csv read_csv(std::istream& in, std::string name, CsvLimits limits)
{
    Csv csv;
    csv.file = std::move(name);
    std::string bytes;
    if (auto problem = load(in, limits, bytes)) {
        refuse(csv, std::move(*problem));
        return csv;
    }
    auto decoded = decode(bytes);
    if (!decoded) {
        refuse(csv, ProblemKind::unreadable_text);
        return csv;
    }
    csv.encoding = decoded->encoding;
    std::string_view text = decoded->text;
    if (text.find('\0') != std::string_view::npos) {
        refuse(csv, ProblemKind::binary_file);
        return csv;
    }

    std::size_t first_line = 1;
    if (text.substr(0, 4) == "sep=" && text.size() > 5 && (text[5] == '\r' || text[5] == '\n')) {
        csv.delimiter = text[4]; // a hint that spreadsheets write and heed
        take_line(text);
        first_line = 2;
    } else {
        csv.delimiter = find_delimiter(text, limits.line_bytes);
    }

    bool too_many = false, too_wide = false;
    Rows rows(csv.delimiter, limits.line_bytes);
    const Rows::End end = rows.read(text, first_line, [&](CsvRow&& row) {
        if (csv.headings.empty()) {
            too_wide = row.cells.size() > limits.columns;
            if (!too_wide) take_headings(csv, std::move(row));
            return !too_wide;
        }
        too_many = csv.rows.size() >= limits.rows;
        if (!too_many) take_row(csv, std::move(row), limits.cell_bytes);
        return !too_many;
    });
    if (too_many)
        refuse(csv, ProblemKind::too_many_rows, 0, std::to_string(limits.rows));
    else if (too_wide)
        refuse(csv, ProblemKind::too_many_columns, 0, std::to_string(limits.columns));
    else if (end == Rows::End::row_too_long)
        refuse(csv, ProblemKind::line_too_long, rows.line(), size_in_words(limits.line_bytes));
    else if (csv.headings.empty())
        refuse(csv, ProblemKind::empty_file);
    else if (end == Rows::End::quote_left_open)
        note(csv, ProblemKind::uneven_row, rows.line(), {}, "\"", std::to_string(csv.headings.size()), true);
    csv.decimal_mark = find_decimal_mark(csv);
    return csv;
}

Csv read_csv_file(const std::string& path, CsvLimits limits)
{
    const std::string name = std::filesystem::path(path).filename().string();
    std::ifstream in(path, std::ios::binary);
    if (in && in.peek() != std::ifstream::traits_type::eof()) return read_csv(in, name, limits);
    Csv csv;
    csv.file = name;
    // A directory opens but cannot be read; an empty file ends without a fault of the stream.
    refuse(csv, in.is_open() && !in.bad() ? ProblemKind::empty_file : ProblemKind::unreadable_file);
    return csv;
}

std::string csv_cell(const std::string& cell)
{
    if (cell.find_first_of(",\"\r\n") == std::string::npos && trimmed(cell).size() == cell.size()) return cell;
    std::string quoted = "\"";
    for (const char c : cell) quoted.append(c == '"' ? 2 : 1, c);
    return quoted + '"';
}

std::string csv_line(const std::vector<std::string>& cells)
{
    if (cells.size() == 1 && cells.front().empty()) return "\"\"\r\n"; // or it would be a blank line
    std::string line;
    for (std::size_t i = 0; i < cells.size(); ++i) {
        if (i != 0) line += ',';
        line += csv_cell(cells[i]);
    }
    return line + "\r\n";
}

} // namespace stow::intake
