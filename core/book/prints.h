// How often each paper came out. Not steps: what was printed lies there, whatever is undone.
#pragma once

#include "core/book/book.h"

#include <string>
#include <vector>

namespace stow::book {

// The print that comes next: 1 the first. Of several things on one paper the one printed most often counts.
int next_print(const Book& book, const std::string& paper, const std::vector<std::string>& of);
// All or, if the disk fails, none of them.
void count_print(Book& book, const std::string& paper, const std::vector<std::string>& of);

} // namespace stow::book
