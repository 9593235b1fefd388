// Our own tables: known columns, each cell read into its unit, what is wrong noted by place.
#pragma once

#include "core/intake/csv.h"
#include "core/intake/numbers.h"
#include "core/measure/decimal.h"
#include "core/measure/quantity.h"

#include <algorithm>
#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace stow::intake {

struct Columns {
    std::vector<std::string_view> needed;
    std::vector<std::string_view> optional;
};

// What a number may be. `least` and `most` in smallest units.
struct Range {
    bool zero = false;
    std::int64_t most = 0;
};
constexpr Range size_range{false, 100'000};      // 10 m
constexpr Range slack_range{true, 100'000};      // a cushion or an ease may be nothing
constexpr Range weight_range{false, 10'000'000}; // 1 t
constexpr Range spread_range{true, 10'000'000};

class Row;

// The columns of a file matched by heading, letter case aside. A needed one that is missing is a problem and leaves no
// rows; one we do not know is only named.
class Table {
public:
    Table(const Csv& csv, const Columns& columns);

    const std::vector<CsvRow>& rows() const { return *rows_; }
    Row row(const CsvRow& row);
    std::vector<Problem> take_problems() { return std::move(problems_); }

private:
    friend class Row;
    const Csv* csv_;
    const std::vector<CsvRow>* rows_;
    std::map<std::string, std::size_t, std::less<>> place_; // of a column in each row
    std::vector<Problem> problems_;
};

// One row being read. Absent columns read as blank cells; `sound` turns false with the first problem that stops it.
class Row {
public:
    Row(Table& table, const CsvRow& row) : table_(&table), row_(&row) {}

    bool sound() const { return sound_; }
    bool blank(std::string_view column) const { return cell(column).empty(); }
    std::string text(std::string_view column) const { return std::string(cell(column)); }
    std::string needed_text(std::string_view column);

    // Blank: nothing, and no problem.
    std::optional<Length> length(std::string_view column, Range range = size_range, Rounding rounding = Rounding::up);
    std::optional<Weight> weight(std::string_view column, Range range = weight_range);
    std::optional<int> whole(std::string_view column, int least, int most);
    std::optional<std::int64_t> thousandths(std::string_view column, bool zero = true); // of any unit
    std::optional<Money> money(std::string_view column, const Currency& currency);
    Currency currency(std::string_view column, const Currency& usual);
    bool yes(std::string_view column);

    // Blank: a problem; the value is then zero and the row not sound.
    Length needed_length(std::string_view column, Rounding rounding = Rounding::up);
    Weight needed_weight(std::string_view column);

    // One of the words that `parse` knows; `words` tells which they are.
    template <class Parse>
    auto word(std::string_view column, Parse parse, std::string_view words) -> decltype(parse(std::string_view{}))
    {
        const auto value = parse(cell(column));
        if (!value && !blank(column)) note(ProblemKind::unknown_word, column, std::string(words));
        return value;
    }

    void note(ProblemKind kind, std::string_view column, std::string detail = {}, bool stops = true);
    // Of one of several things that stand in a cell.
    void note_part(ProblemKind kind, std::string_view column, std::string value, std::string detail = {});

private:
    std::string_view cell(std::string_view column) const;
    std::optional<std::int64_t> number(std::string_view column, int places, Rounding rounding, Range range);

    Table* table_;
    const CsvRow* row_;
    bool sound_ = true;
};

// "2 INK-SEA + NIB-TIN" as amounts (in thousandths) and codes; nothing where it is not so written.
struct CountedCode {
    std::int64_t thousandths = 1000;
    std::string code;
};
std::optional<std::vector<CountedCode>> counted_codes(std::string_view text, char decimal_mark);

} // namespace stow::intake
