#include "app/command/command.h"

#include "app/words/book.h"
#include "core/book/backup.h"

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

} // namespace

void add_backup(CLI::App& app, Context& context)
{
    // The file's name lives as long as the program's command line.
    const auto file = std::make_shared<std::string>();
    auto* backup_command = app.add_subcommand("backup", "Copy the shop book to FILE while it may be open; checked");
    backup_command->add_option("FILE", *file)->required();
    backup_command->callback([&context, file] { context.exit = backup(context, *file); });

    auto* restore_command = app.add_subcommand("restore", "Put the copy FILE in the place of the shop book");
    restore_command->add_option("FILE", *file)->required();
    restore_command->callback([&context, file] { context.exit = restore(context, *file); });
}

} // namespace stow::command
