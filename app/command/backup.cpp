#include "app/command/command.h"

#include "app/words/book.h"
#include "core/book/daily_copies.h"
#include "core/book/tables.h"

namespace stow::command {

namespace {

int backup(Context& context, const std::string& file)
{
    const auto day = open_day(context);
    if (!day) return book_unusable;
    if (const auto written = book::backup_to(day->book(), file); !written) {
        say(context.err, words::problem(written.error()));
        return refused;
    }
    say(context.err, QObject::tr("Copied and checked: %1").arg(QString::fromStdString(file)));
    return done;
}

int restore(Context& context, const std::string& file)
{
    if (const auto restored = book::restore(file, context.book); !restored) {
        say(context.err, words::problem(restored.error()));
        return refused;
    }
    say(context.err,
        QObject::tr("The shop book is as in %1; the one before lies beside it.").arg(QString::fromStdString(file)));
    return done;
}

// What restoring would bring back, and what it would take away.
int look(Context& context, const std::string& file)
{
    const auto copy = book::look_into(file);
    if (!copy) {
        say(context.err, words::copy_refused(copy.error()));
        return refused;
    }
    const auto told = [](const book::BookHolds& holds) {
        return QObject::tr("%1 steps, %2 orders, %3 parcels; the last step: %4")
            .arg(holds.steps)
            .arg(holds.orders)
            .arg(holds.parcels)
            .arg(holds.last
                     ? words::step(*holds.last) + QStringLiteral(", ") + QString::fromStdString(to_text(holds.last->at))
                     : QObject::tr("none"));
    };
    say(context.out, QObject::tr("The copy holds %1").arg(told(*copy)));
    if (!std::filesystem::exists(context.book)) return done;
    const auto day = open_day(context); // perhaps in use: its last steps may lie in its log
    if (!day) return book_unusable;
    say(context.out, QObject::tr("Your book holds %1").arg(told(book::holds(day->book()))));
    return done;
}

int list_copies(Context& context)
{
    const auto copies = book::daily_copies(context.book);
    if (copies.empty()) {
        say(context.err, QObject::tr("There is no daily copy yet in %1. The window makes one on each day it is open.")
                             .arg(QString::fromStdString(book::copies_folder(context.book).string())));
    }
    for (const book::DailyCopy& copy : copies) {
        context.out << to_text(copy.day) << "  " << copy.file.string() << '\n';
    }
    return done;
}

int write_out(Context& context, const std::string& folder)
{
    const auto day = open_day(context);
    if (!day) return book_unusable;
    const auto written = book::write_tables(day->book(), folder);
    if (!written) {
        say(context.err, words::problem(written.error()));
        return refused;
    }
    say(context.err, QObject::tr("%n tables, %1 rows. Buyers' names and addresses are in them.", nullptr,
                                 static_cast<int>(written->tables))
                         .arg(written->rows));
    return done;
}

int read_in(Context& context, const std::string& folder)
{
    const auto read = book::read_tables(folder, context.book);
    if (!read) {
        say(context.err, words::problem(read.error()));
        return refused;
    }
    say(context.err, QObject::tr("A shop book of %n tables, %1 rows, checked", nullptr, static_cast<int>(read->tables))
                         .arg(read->rows));
    return done;
}

} // namespace

void add_backup(CLI::App& app, Context& context)
{
    // The file's name lives as long as the program's command line.
    const auto file = std::make_shared<std::string>();
    auto* backup_command = app.add_subcommand("backup", "Copy the shop book to FILE while it may be open; checked");
    backup_command->add_option("FILE", *file)->required();
    backup_command->callback([&context, file] { context.exit = backup(context, *file); });

    auto* tables = app.add_subcommand("tables", "The whole shop book as tables (CSV), and a book made of them");
    tables->require_subcommand(1);
    auto* out = tables->add_subcommand("out", "Write them into FOLDER, which is new or empty");
    out->add_option("FOLDER", *file)->required();
    out->callback([&context, file] { context.exit = write_out(context, *file); });
    auto* in = tables->add_subcommand("in", "Make the book, which must not be there yet, of the tables in FOLDER");
    in->add_option("FOLDER", *file)->required();
    in->callback([&context, file] { context.exit = read_in(context, *file); });

    auto* restore_command = app.add_subcommand("restore", "Put the copy FILE in the place of the shop book");
    const auto only_look = std::make_shared<bool>(false), list = std::make_shared<bool>(false);
    auto* named = restore_command->add_option("FILE", *file);
    restore_command->add_flag("--look", *only_look, "Say what FILE holds and change nothing")->needs(named);
    restore_command->add_flag("--list", *list, "List the daily copies of the shop book")->excludes(named);
    restore_command->callback([&context, file, only_look, list, named] {
        if (named->count() == 0 && !*list) throw CLI::RequiredError("FILE");
        context.exit = *list ? list_copies(context) : *only_look ? look(context, *file) : restore(context, *file);
    });
}

} // namespace stow::command
