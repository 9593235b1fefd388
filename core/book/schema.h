// The tables of the book, how an older book gets them, and how changed rows are remembered. For the files of this
// folder and its tests.
#pragma once

#include <SQLiteCpp/Database.h>
#include <string>
#include <tl/expected.hpp>
#include <vector>

namespace stow::book {

struct Migration {
    int to = 1; // the version it makes out of the one before
    std::string sql;
};
const std::vector<Migration>& migrations();

// Brings the book up to the last of `steps`, each in one transaction with its version number. A reason where one fails:
// the book then stands at the last version that was reached.
tl::expected<void, std::string> migrate(SQLite::Database& db, const std::vector<Migration>& steps);

// Tables whose rows are kept as they were before each step (all have the key `id`).
const std::vector<std::string>& tracked_tables();
// Makes the connection record rows before they change, as `image` rows of the step in temp.current_step. Written for
// the columns the tables have now, so no migration can forget them. Without a step a change is refused.
void record_images(SQLite::Database& db);

std::vector<std::string> columns_of_table(SQLite::Database& db, const std::string& table);

} // namespace stow::book
