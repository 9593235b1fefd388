// Files into the book: read, checked, written as one step each. A bad row never stops good ones; the same file twice
// changes nothing.
#pragma once

#include "app/day.h"
#include "core/intake/order_columns.h"
#include "core/intake/problem.h"

#include <filesystem>
#include <optional>
#include <string_view>
#include <vector>

namespace stow {

enum class TakeInKind { goods, supplies, wrappings, rules, house, rates, stock };
std::optional<TakeInKind> take_in_kind(std::string_view name);

struct TakenIn {
    int fresh = 0, unchanged = 0, changed = 0, called_off = 0;
    std::vector<intake::Problem> problems;
    bool refused = false; // nothing could be read, nothing was changed
};

// Everything but orders.
TakenIn take_in(Day& day, TakeInKind kind, const std::filesystem::path& file);

// The columns remembered for this shop where they suit the file, else guessed.
intake::ColumnMatch columns_for(const Day& day, const intake::Csv& csv, const std::string& shop);

// Takes the orders in and remembers the columns for the shop. Arrived orders that nothing stands in the way of are
// left arrived: checking is hers.
TakenIn take_in_orders(Day& day, const intake::Csv& csv, const intake::ColumnMatch& columns);

} // namespace stow
