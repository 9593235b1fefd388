// Papers of the rack and the shelves: what to order, what to make, templates of paper boxes. PDF, and the lists as CSV.
#pragma once

#include "app/day.h"
#include "core/paperbox/net.h"
#include "core/papers/display_list.h"
#include "core/planning/making.h"
#include "core/supplies/outlook.h"

#include <filesystem>
#include <optional>

namespace stow {

std::map<shop::SupplyCode, supplies::Outlook> outlook_of(const Day& day);
std::vector<supplies::ReorderList> reorder_lists(const Day& day);
std::vector<planning::ToMake> making_list(const Day& day);

// No page: there is nothing on it.
papers::Document reorder_paper(const Day& day);
papers::Document making_paper(const Day& day);
papers::Document box_template(const paperbox::Wanted& wanted, papers::Format format); // no page: it cannot be made

// "reorder-list.pdf" and ".csv", "making-list.pdf": a second one on a day says that it is the second. Nothing: there is
// nothing on it, or it cannot be written.
std::optional<std::filesystem::path> print_reorder_list(Day& day, const std::filesystem::path& folder);
std::optional<std::filesystem::path> print_making_list(Day& day, const std::filesystem::path& folder);
std::optional<std::filesystem::path> write_box_template(const paperbox::Wanted& wanted, papers::Format format,
                                                        const std::filesystem::path& folder);

} // namespace stow
