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

// "reorder-list.pdf" and ".csv", "making-list.pdf". Nothing: there is nothing on it, or it cannot be written.
std::optional<std::filesystem::path> write_reorder_list(const Day& day, const std::filesystem::path& folder);
std::optional<std::filesystem::path> write_making_list(const Day& day, const std::filesystem::path& folder);
std::optional<std::filesystem::path> write_box_template(const paperbox::Wanted& wanted, papers::Format format,
                                                        const std::filesystem::path& folder);

} // namespace stow
