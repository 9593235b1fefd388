#include "core/book/sql.h"

#include <SQLiteCpp/Column.h>
#include <SQLiteCpp/Exception.h>

namespace stow::book {

void fail(const SQLite::Exception& failure)
{
    throw BookFailure(failure.what(), failure.getExtendedErrorCode());
}

bool Query::next()
{
    try {
        return statement_.executeStep();
    } catch (const SQLite::Exception& failure) {
        fail(failure);
    }
}

void Query::run()
{
    while (next()) {
    }
}

bool Query::null(int column) const
{
    return statement_.getColumn(column).isNull();
}

std::int64_t Query::integer(int column) const
{
    return statement_.getColumn(column).getInt64();
}

std::string Query::text(int column) const
{
    return statement_.getColumn(column).getString();
}

std::string_view Query::view(int column) const
{
    const SQLite::Column cell = statement_.getColumn(column);
    const char* const text = cell.getText();
    return {text, static_cast<std::size_t>(cell.getBytes())};
}

std::optional<std::string> Query::maybe_text(int column) const
{
    if (null(column)) return std::nullopt;
    return text(column);
}

std::optional<std::int64_t> Query::maybe_integer(int column) const
{
    if (null(column)) return std::nullopt;
    return integer(column);
}

std::optional<Date> Query::maybe_date(int column) const
{
    if (null(column)) return std::nullopt;
    return date(column);
}

Date Query::date(int column) const
{
    const auto known = parse_date(text(column));
    if (!known) throw BookFailure("not a date in the book: " + text(column), 0);
    return *known;
}

Instant Query::instant(int column) const
{
    return Instant(std::chrono::seconds(integer(column)));
}

std::optional<Money> Query::maybe_money(int minor_column) const
{
    if (null(minor_column)) return std::nullopt;
    const auto currency = Currency::from(text(minor_column + 1));
    if (!currency) throw BookFailure("no currency in the book: " + text(minor_column + 1), 0);
    return Money{integer(minor_column), *currency};
}

} // namespace stow::book
