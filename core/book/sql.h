// One prepared question to the book, bound by position and read row by row. For the files of this folder.
#pragma once

#include "core/book/book.h"
#include "core/measure/money.h"
#include "core/measure/quantity.h"
#include "core/shop/codes.h"

#include <SQLiteCpp/Statement.h>
#include <optional>
#include <string>
#include <string_view>

namespace stow::book {

// The throwing of SQLite as ours.
[[noreturn]] void fail(const SQLite::Exception& failure);

class Query {
public:
    template <class... Values>
    Query(SQLite::Database& db, const std::string& sql, const Values&... values)
    try : statement_(db, sql) {
        (bind(values), ...);
    } catch (const SQLite::Exception& failure) {
        fail(failure);
    }
    template <class... Values>
    Query(const Book& book, const std::string& sql, const Values&... values) : Query(book.db(), sql, values...)
    {
    }

    bool next();
    void run(); // to the end, for what gives no rows

    bool null(int column) const;
    std::int64_t integer(int column) const;
    int small(int column) const { return static_cast<int>(integer(column)); }
    bool truth(int column) const { return integer(column) != 0; }
    std::string text(int column) const;
    std::string_view view(int column) const; // until the next row
    std::optional<std::string> maybe_text(int column) const;
    std::optional<std::int64_t> maybe_integer(int column) const;
    std::optional<Date> maybe_date(int column) const; // stored as 2026-11-25
    Date date(int column) const;
    Instant instant(int column) const;                        // stored as seconds since 1970
    std::optional<Money> maybe_money(int minor_column) const; // and the currency in the next column

private:
    void bind(std::nullptr_t) { statement_.bind(++bound_); }
    void bind(bool value) { statement_.bind(++bound_, value ? 1 : 0); }
    void bind(int value) { statement_.bind(++bound_, value); }
    void bind(std::int64_t value) { statement_.bind(++bound_, value); }
    void bind(std::size_t value) { statement_.bind(++bound_, static_cast<std::int64_t>(value)); }
    void bind(const std::string& value) { statement_.bind(++bound_, value); }
    void bind(std::string_view value) { statement_.bind(++bound_, std::string(value)); }
    void bind(const char* value) { statement_.bind(++bound_, value); }
    void bind(Date value) { bind(to_text(value)); }
    void bind(Instant value) { bind(static_cast<std::int64_t>(value.time_since_epoch().count())); }
    template <class Kind>
    void bind(Quantity<Kind> value)
    {
        bind(value.units);
    }
    template <class Kind>
    void bind(const shop::Code<Kind>& code)
    {
        bind(code.text);
    }
    template <class Kind>
    void bind(shop::Id<Kind> id)
    {
        bind(id.value);
    }
    void bind(const std::optional<Money>& money) // takes two places
    {
        bind(money ? std::optional(money->minor) : std::nullopt);
        bind(money ? std::optional(money->currency.code()) : std::nullopt);
    }
    template <class T>
    void bind(const std::optional<T>& value)
    {
        if (value)
            bind(*value);
        else
            bind(nullptr);
    }

    SQLite::Statement statement_;
    int bound_ = 0;
};

} // namespace stow::book
