#include "app/command/command.h"
#include "app/privacy.h"
#include "app/words/book.h"
#include "core/book/erasing.h"
#include "core/book/orders.h"

#include <ostream>

namespace stow::command {

namespace {

struct Options {
    std::string before, shop, number;
    bool papers = false;
};

int forget(Context& context, const Options& options)
{
    const auto day = open_day(context);
    if (!day) return book_unusable;
    int count = 0;
    if (!options.before.empty()) {
        const auto before = parse_date(options.before);
        if (!before) {
            say(context.err, QObject::tr("Dates are written as 2026-11-25."));
            return usage;
        }
        count = book::erase_buyers(day->book(), *before);
    } else if (!options.number.empty()) {
        const auto held = book::order_by_key(day->book(), {options.shop, options.number});
        if (!held) {
            say(context.err, QObject::tr("There is no order %1 of %2.")
                                 .arg(QString::fromStdString(options.number), QString::fromStdString(options.shop)));
            return refused;
        }
        if (const auto erased = book::erase_buyer(day->book(), held->id); !erased) {
            say(context.err, words::refused(erased.error()));
            return refused;
        }
        count = 1;
    }
    const book::ErasedInCopies copies = book::erase_in_copies(day->book());
    say(context.out, QObject::tr("The data of %n buyers is erased from the book, its history and the copies beside it. "
                                 "Copies you made elsewhere are erased when they are restored. Tax law may ask you to "
                                 "keep invoices, elsewhere.",
                                 nullptr, count));
    for (const auto& copy : copies.unreached) say(context.err, words::may_still_show(copy));
    const int exit = copies.unreached.empty() ? done : attention;
    const auto kept = papers_kept(*day);
    if (options.papers) {
        say(context.out, QObject::tr("%n papers deleted", nullptr, delete_papers(kept)));
        return exit;
    }
    if (!kept.empty()) say(context.out, QObject::tr("Papers that may still show it (--delete-papers deletes them):"));
    for (const auto& paper : kept) context.out << paper.string() << '\n';
    return exit;
}

} // namespace

void add_forget(CLI::App& app, Context& context)
{
    const auto options = std::make_shared<Options>();
    auto* command = app.add_subcommand("forget", "Erase buyers' names and addresses; counts and costs stay");
    auto* before =
        command->add_option("--before", options->before, "Of all that were ordered before this day and went");
    auto* number = command->add_option("--order", options->number, "Of this order, with --shop");
    auto* shop = command->add_option("--shop", options->shop, "The shop it came from");
    number->needs(shop)->excludes(before);
    command->add_flag("--delete-papers", options->papers, "Delete the papers beside the book too");
    command->callback([&context, options, before, number] {
        if (before->count() + number->count() == 0) throw CLI::RequiredError("--before or --order");
        context.exit = forget(context, *options);
    });
}

} // namespace stow::command
