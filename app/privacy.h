// Buyers' names and addresses are forgotten: on request, and of themselves after the months she set.
#pragma once

#include "app/day.h"

#include <filesystem>
#include <vector>

namespace stow {

// Of orders older than the book's own months that have gone out or were called off; how many. 0 months: nobody.
int forget_old_buyers(book::Book& book, Date today);

// PDF and table files beside the book that were written from orders, and may still show what the book has forgotten.
std::vector<std::filesystem::path> papers_kept(const Day& day);
int delete_papers(const std::vector<std::filesystem::path>& papers); // how many are gone

} // namespace stow
