#include "core/intake/table.h"

#include "core/intake/text_encoding.h"

namespace stow::intake {

namespace {

const std::vector<CsvRow> no_rows;

std::string small(std::string_view heading)
{
    std::string result(trimmed(heading));
    for (char& c : result) c = c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    return result;
}

bool holds(const std::vector<std::string_view>& names, std::string_view name)
{
    return std::find(names.begin(), names.end(), name) != names.end();
}

} // namespace

Table::Table(const Csv& csv, const Columns& columns) : csv_(&csv), rows_(&csv.rows), problems_(csv.problems)
{
    if (csv.headings.empty()) return; // unreadable; its problem says why
    for (std::size_t i = 0; i < csv.headings.size(); ++i) {
        const std::string name = small(csv.headings[i]);
        if (name.empty()) continue;
        if (holds(columns.needed, name) || holds(columns.optional, name))
            place_.emplace(name, i);
        else
            problems_.push_back(
                {csv.file, 1, csv.headings[i], ProblemKind::unknown_member, csv.headings[i], {}, false});
    }
    for (const std::string_view name : columns.needed) {
        if (place_.count(name) != 0) continue;
        problems_.push_back({csv.file, 0, std::string(name), ProblemKind::missing_column, {}, {}, true});
        rows_ = &no_rows;
    }
}

Row Table::row(const CsvRow& row)
{
    return Row(*this, row);
}

std::string_view Row::cell(std::string_view column) const
{
    const auto place = table_->place_.find(column);
    if (place == table_->place_.end() || place->second >= row_->cells.size()) return {};
    return trimmed(row_->cells[place->second]);
}

void Row::note(ProblemKind kind, std::string_view column, std::string detail, bool stops)
{
    table_->problems_.push_back(
        {table_->csv_->file, row_->line, std::string(column), kind, text(column), std::move(detail), stops});
    sound_ = sound_ && !stops;
}

void Row::note_part(ProblemKind kind, std::string_view column, std::string value, std::string detail)
{
    table_->problems_.push_back(
        {table_->csv_->file, row_->line, std::string(column), kind, std::move(value), std::move(detail), true});
    sound_ = false;
}

std::string Row::needed_text(std::string_view column)
{
    if (blank(column)) note(ProblemKind::missing_value, column);
    return text(column);
}

std::optional<std::int64_t> Row::number(std::string_view column, int places, Rounding rounding, Range range)
{
    if (blank(column)) return std::nullopt;
    const auto plain = plain_number(cell(column), table_->csv_->decimal_mark);
    const auto value = plain ? scaled(*plain, places, rounding) : std::nullopt;
    if (!value)
        note(ProblemKind::not_a_number, column);
    else if (*value < 0 || (*value == 0 && !range.zero))
        note(ProblemKind::not_positive, column);
    else if (*value > range.most)
        note(ProblemKind::out_of_range, column, "≤ " + unscaled(range.most, places));
    else
        return value;
    return std::nullopt;
}

std::optional<Length> Row::length(std::string_view column, Range range, Rounding rounding)
{
    const auto value = number(column, 1, rounding, range);
    return value ? std::optional(Length{*value}) : std::nullopt;
}

std::optional<Weight> Row::weight(std::string_view column, Range range)
{
    const auto value = number(column, 1, Rounding::nearest, range);
    return value ? std::optional(Weight{*value}) : std::nullopt;
}

std::optional<int> Row::whole(std::string_view column, int least, int most)
{
    if (blank(column)) return std::nullopt;
    const auto value = whole_number(cell(column), table_->csv_->decimal_mark);
    if (!value)
        note(ProblemKind::not_a_number, column);
    else if (least == 1 && *value < 1)
        note(ProblemKind::not_positive, column);
    else if (*value < least || *value > most)
        note(ProblemKind::out_of_range, column, std::to_string(least) + "–" + std::to_string(most));
    else
        return static_cast<int>(*value);
    return std::nullopt;
}

std::optional<std::int64_t> Row::thousandths(std::string_view column, bool zero)
{
    return number(column, 3, Rounding::nearest, {zero, 1'000'000'000'000});
}

std::optional<Money> Row::money(std::string_view column, const Currency& currency)
{
    if (blank(column)) return std::nullopt;
    const MoneyRead read = read_money(cell(column), currency, table_->csv_->decimal_mark);
    if (!read.money)
        note(read.fault == MoneyFault::unknown_currency ? ProblemKind::unknown_currency : ProblemKind::not_a_number,
             column);
    else if (read.money->minor < 0)
        note(ProblemKind::not_positive, column);
    else
        return read.money;
    return std::nullopt;
}

Currency Row::currency(std::string_view column, const Currency& usual)
{
    if (blank(column)) return usual;
    const auto known = Currency::from(cell(column));
    if (!known) note(ProblemKind::unknown_currency, column);
    return known.value_or(usual);
}

bool Row::yes(std::string_view column)
{
    const YesNo answer = yes_or_no(cell(column));
    if (answer == YesNo::unclear) note(ProblemKind::unknown_word, column, "yes, no");
    return answer == YesNo::yes;
}

Length Row::needed_length(std::string_view column, Rounding rounding)
{
    if (blank(column)) note(ProblemKind::missing_value, column);
    return length(column, size_range, rounding).value_or(Length{});
}

Weight Row::needed_weight(std::string_view column)
{
    if (blank(column)) note(ProblemKind::missing_value, column);
    return weight(column).value_or(Weight{});
}

std::optional<std::vector<CountedCode>> counted_codes(std::string_view text, char decimal_mark)
{
    std::vector<CountedCode> result;
    while (!text.empty()) {
        const auto plus = text.find('+');
        std::string_view part = trimmed(text.substr(0, plus));
        CountedCode counted;
        if (const auto space = part.find(' '); space != std::string_view::npos) {
            const auto number = plain_number(part.substr(0, space), decimal_mark);
            const auto value = number ? scaled(*number, 3, Rounding::nearest) : std::nullopt;
            if (!value || *value <= 0) return std::nullopt;
            counted.thousandths = *value;
            part = trimmed(part.substr(space));
        }
        if (part.empty() || part.find(' ') != std::string_view::npos) return std::nullopt;
        counted.code = std::string(part);
        result.push_back(std::move(counted));
        if (plus == std::string_view::npos) break;
        text.remove_prefix(plus + 1);
        if (trimmed(text).empty()) return std::nullopt; // ends in a plus
    }
    return result;
}

} // namespace stow::intake
