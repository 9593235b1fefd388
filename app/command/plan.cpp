#include "app/command/command.h"
#include "app/command/day_table.h"
#include "app/plan_day.h"
#include "app/words/book.h"
#include "app/words/reasons.h"
#include "core/book/solved.h"

#include <nlohmann/json.hpp>
#include <ostream>

namespace stow::command {

namespace {

struct Options {
    std::string day;
    planning::Preference preference = planning::Preference::smallest;
};

int plan(Context& context, const Options& options)
{
    const auto day = open_day(context);
    if (!day) return book_unusable;
    PlanInput input = gather(*day, options.preference);
    if (!options.day.empty()) {
        const auto date = parse_date(options.day);
        if (!date) {
            say(context.err,
                QObject::tr("%1 is not a date; write 2026-11-25.").arg(QString::fromStdString(options.day)));
            return usage;
        }
        input.wish.day = *date;
        input.wish.ready_at.reset(); // a day to come starts fresh
    }
    Run run;
    book::SolvedQuestions solved(context.book);
    const auto plan = planning::plan_day(input.cupboard, input.orders, input.rate_sheets, input.wish, run, &solved);
    const auto stored = store(*day, input, plan);
    if (!stored) {
        say(context.err, words::refused(stored.error()));
        return refused;
    }
    std::vector<std::string> numbers;
    for (const shop::ParcelId id : *stored) numbers.push_back(book::parcel(day->book(), id)->parcel.number);
    if (context.json) {
        context.out << day_json(plan, input.orders, numbers, std::nullopt).dump() << '\n';
    } else {
        print_day(context.out, plan, input.orders, day->cupboard(), numbers);
    }
    return plan.stuck.empty() ? done : attention;
}

} // namespace

void add_plan(CLI::App& app, Context& context)
{
    const auto options = std::make_shared<Options>();
    auto* command = app.add_subcommand("plan", "Plan every checked order: outer, filler, weight, service");
    command->add_option("--day", options->day, "Day of hand-over, as 2026-11-25; today if left out");
    command->add_option("--prefer", options->preference, "smallest, cheapest or least-material")
        ->transform(CLI::CheckedTransformer(
            std::map<std::string, planning::Preference>{{"smallest", planning::Preference::smallest},
                                                        {"cheapest", planning::Preference::cheapest},
                                                        {"least-material", planning::Preference::least_material}}));
    command->callback([&context, options] { context.exit = plan(context, *options); });
}

} // namespace stow::command
