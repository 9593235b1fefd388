// The command line: one subcommand a file, each a plain function from its options to an exit code. What is promised
// about it stands in DEVELOPERS.md, "Command line".
#pragma once

#include "app/day.h"

#include <CLI/CLI.hpp>
#include <QString>

#include <filesystem>
#include <functional>
#include <iosfwd>
#include <optional>
#include <string>
#include <vector>

namespace stow::command {

enum Exit : int { done = 0, attention = 1, usage = 2, refused = 3, book_unusable = 4 };

// What every command is given. Progress and messages go to `err`; with --json one document alone goes to `out`.
struct Context {
    std::filesystem::path book;
    bool book_named = false; // with --book
    bool json = false;
    std::ostream& out;
    std::ostream& err;
    std::filesystem::path demo_data; // folder that holds demo_orders and rate_tables
    std::optional<int> exit;         // set by the command that ran
};

// Opens the shop book or says why not and sets the exit code.
std::unique_ptr<Day> open_day(Context& context);

void say(std::ostream& stream, const QString& line);

// A file or, for "-", standard input; says why not. At most 8 MiB are read and one byte more, so that a reader with
// that limit refuses what is longer.
std::optional<std::string> read_whole(const std::string& file, Context& context);

// For a window asked for without a display: the plan as it stands.
int print_today(Context& context, const Day& day);

void add_all(CLI::App& app, Context& context);

void add_demo(CLI::App& app, Context& context);
void add_take_in(CLI::App& app, Context& context);
void add_plan(CLI::App& app, Context& context);
void add_papers(CLI::App& app, Context& context);
void add_weigh(CLI::App& app, Context& context);
void add_hand_over(CLI::App& app, Context& context);
void add_supplies(CLI::App& app, Context& context);
void add_records(CLI::App& app, Context& context);
void add_sizes(CLI::App& app, Context& context);
void add_paper_box(CLI::App& app, Context& context);
void add_fit(CLI::App& app, Context& context);
void add_price(CLI::App& app, Context& context);
void add_verify(CLI::App& app, Context& context);
void add_backup(CLI::App& app, Context& context); // and restore
void add_forget(CLI::App& app, Context& context);

} // namespace stow::command
