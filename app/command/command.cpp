#include "app/command/command.h"

#include "app/command/day_table.h"
#include "app/words/book.h"
#include "app/words/reasons.h"
#include "core/book/parcels.h"
#include "core/planning/day_totals.h"

#include <filesystem>
#include <fstream>
#include <iostream>

namespace stow::command {

void say(std::ostream& stream, const QString& line)
{
    stream << line.toStdString() << '\n';
}

std::unique_ptr<Day> open_day(Context& context)
{
    auto book = book::Book::open(context.book);
    if (!book) {
        say(context.err, words::problem(book.error()));
        context.exit = book_unusable;
        return nullptr;
    }
    return std::make_unique<Day>(std::move(*book));
}

std::optional<std::string> read_whole(const std::string& file, Context& context)
{
    constexpr std::size_t most = (8U << 20U) + 1;
    std::ifstream opened;
    if (file != "-") {
        opened.open(file, std::ios::binary);
        std::error_code unknown;
        if (!opened || std::filesystem::is_directory(file, unknown)) { // which opens, and has nothing to read
            intake::Problem unreadable;
            unreadable.file = file;
            say(context.err, words::problem(unreadable));
            return std::nullopt;
        }
    }
    std::istream& in = file == "-" ? std::cin : opened;
    std::string text(most, '\0');
    in.read(text.data(), static_cast<std::streamsize>(most));
    text.resize(static_cast<std::size_t>(in.gcount()));
    return text;
}

int print_today(Context& context, const Day& day)
{
    planning::DayPlan plan;
    plan.day = day.today();
    plan.postage.currency = plan.packaging.currency = day.cupboard().house.currency;
    std::vector<std::string> numbers;
    for (const shop::Parcel& parcel : book::parcels(day.book())) {
        if (parcel.state >= shop::ParcelState::handed_over) continue;
        auto held = book::parcel(day.book(), parcel.id);
        numbers.push_back(parcel.number);
        plan.parcels.push_back(std::move(held->plan));
    }
    planning::add_up(plan, day.cupboard(), {}, {});
    say(context.err, QObject::tr("There is no display to open a window on; this is the day as it stands."));
    print_day(context.out, plan, day.orders(), day.cupboard(), numbers);
    return done;
}

void add_all(CLI::App& app, Context& context)
{
    add_demo(app, context);
    add_take_in(app, context);
    add_plan(app, context);
    add_papers(app, context);
    add_weigh(app, context);
    add_hand_over(app, context);
    add_supplies(app, context);
    add_records(app, context);
    add_sizes(app, context);
    add_paper_box(app, context);
    add_fit(app, context);
    add_price(app, context);
    add_verify(app, context);
    add_backup(app, context);
    add_forget(app, context);
}

} // namespace stow::command
