// Values kept whole in one row as a document. For the files of this folder.
#pragma once

#include "core/book/sql.h"
#include "core/intake/document.h"

#include <fmt/format.h>

namespace stow::book {

template <class T>
T read_document(const std::string& text)
{
    auto value = intake::from_document<T>(text);
    if (!value) throw BookFailure("a document of the book cannot be read: " + value.error(), 0);
    return std::move(*value);
}

// All documents of a table, in the given order of rows.
template <class T>
std::vector<T> read_documents(const Book& book, const std::string& table, const std::string& order)
{
    std::vector<T> values;
    Query rows(book, fmt::format("SELECT document FROM {} ORDER BY {}", table, order));
    while (rows.next()) values.push_back(read_document<T>(rows.text(0)));
    return values;
}

} // namespace stow::book
