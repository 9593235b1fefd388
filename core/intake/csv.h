// Tables of text: finds out encoding (ICU), delimiter and decimal mark; reads with libcsv (RFC 4180 and its relatives).
#pragma once

#include "core/intake/problem.h"

#include <iosfwd>
#include <string>
#include <string_view>
#include <vector>

namespace stow::intake {

struct CsvLimits {
    std::size_t line_bytes = 1 << 20;
    std::size_t cell_bytes = 20'000;
    std::size_t columns = 1'000;
    std::size_t rows = 200'000;
    std::size_t file_bytes = 64 << 20;
};

struct CsvRow {
    std::size_t line = 0;           // in the file, from 1, where the row begins
    std::vector<std::string> cells; // UTF-8; spaces around a cell are dropped unless quoted
};

struct Csv {
    std::string file;     // name for problems
    std::string encoding; // "UTF-8", "windows-1252", ...
    char delimiter = ',';
    char decimal_mark = '.';
    std::vector<std::string> headings;
    std::vector<CsvRow> rows;
    std::vector<Problem> problems; // not empty with no headings: nothing could be read
};

std::string size_in_words(std::size_t bytes); // "8 MiB"

// Reads as a stream: stops with `line_too_long` without holding more than the limit.
Csv read_csv(std::istream& in, std::string name, CsvLimits limits = {});
// Named in problems by the file's own name, without its folders.
Csv read_csv_file(const std::string& path, CsvLimits limits = {});

// A cell as RFC 4180 writes it: in quotes where it must be, or has spaces around it.
std::string csv_cell(const std::string& cell);
// One row, ending in CRLF.
std::string csv_line(const std::vector<std::string>& cells);

} // namespace stow::intake
