#include "core/book/settings.h"

#include "core/book/step_writer.h"

namespace stow::book {

Done remember_columns(Book& book, const std::string& shop, const std::string& columns)
{
    return in_step(book, StepKind::match_columns, {{"shop", shop}}, [&](Writer& writer) -> Allowed {
        if (columns_of(book, shop)) {
            writer.run("UPDATE column_match SET columns = ? WHERE shop = ?", columns, shop);
        } else {
            writer.add("INSERT INTO column_match (shop, columns) VALUES (?, ?)", shop, columns);
        }
        return {};
    });
}

std::optional<std::string> columns_of(const Book& book, const std::string& shop)
{
    Query row(book, "SELECT columns FROM column_match WHERE shop = ?", shop);
    if (!row.next()) return std::nullopt;
    return row.text(0);
}

std::map<std::string, std::string> all_columns(const Book& book)
{
    std::map<std::string, std::string> all;
    Query rows(book, "SELECT shop, columns FROM column_match");
    while (rows.next()) all[rows.text(0)] = rows.text(1);
    return all;
}

void remember(Book& book, const std::string& name, const std::string& value)
{
    Query(book,
          "INSERT INTO remembered (name, value) VALUES (?, ?) ON CONFLICT (name) DO UPDATE SET value = excluded.value",
          name, value)
        .run();
}

std::optional<std::string> remembered(const Book& book, const std::string& name)
{
    Query row(book, "SELECT value FROM remembered WHERE name = ?", name);
    if (!row.next()) return std::nullopt;
    return row.text(0);
}

} // namespace stow::book
