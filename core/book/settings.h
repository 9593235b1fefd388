// Small things remembered by name. Column matches are steps; where a screen stopped is not, and is never undone.
#pragma once

#include "core/book/steps.h"

namespace stow::book {

// Which columns of a shop's file mean what, as intake writes it.
Done remember_columns(Book& book, const std::string& shop, const std::string& columns);
std::optional<std::string> columns_of(const Book& book, const std::string& shop);
std::map<std::string, std::string> all_columns(const Book& book);

// Where she stopped, sizes of panes, the last folder...
void remember(Book& book, const std::string& name, const std::string& value);
std::optional<std::string> remembered(const Book& book, const std::string& name);

} // namespace stow::book
