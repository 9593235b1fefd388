#include "app/take_in.h"
#include "app/command/command.h"
#include "app/words/reasons.h"
#include "core/intake/csv.h"

#include <fstream>
#include <iterator>
#include <nlohmann/json.hpp>
#include <ostream>

namespace stow::command {

namespace {

struct Options {
    std::string kind;
    std::string file;
    std::string columns;
    std::string shop;
};

TakenIn orders(Day& day, const Options& options, std::string& columns_fault)
{
    const intake::Csv csv = intake::read_csv_file(options.file);
    if (csv.headings.empty()) return {0, 0, 0, 0, csv.problems, true};
    const std::string shop = options.shop.empty() ? std::filesystem::path(options.file).stem().string() : options.shop;
    intake::ColumnMatch columns = columns_for(day, csv, shop);
    if (!options.columns.empty()) {
        std::ifstream in(options.columns, std::ios::binary);
        auto given = intake::column_match(std::string(std::istreambuf_iterator<char>(in), {}));
        if (!given) {
            columns_fault = given.error();
            return {0, 0, 0, 0, {}, true};
        }
        columns = std::move(*given);
        columns.shop = shop;
    }
    return take_in_orders(day, csv, columns);
}

int take_in(Context& context, const Options& options)
{
    const auto day = open_day(context);
    if (!day) return book_unusable;
    std::string columns_fault;
    const TakenIn outcome = options.kind == "orders" ? orders(*day, options, columns_fault)
                                                     : stow::take_in(*day, *take_in_kind(options.kind), options.file);
    if (!columns_fault.empty()) {
        say(context.err, QObject::tr("The columns file cannot be used: %1").arg(QString::fromStdString(columns_fault)));
        return refused;
    }
    for (const intake::Problem& problem : outcome.problems) say(context.err, words::problem(problem));
    if (context.json) {
        auto problems = nlohmann::json::array();
        for (const intake::Problem& problem : outcome.problems) {
            problems.push_back({{"file", problem.file},
                                {"row", problem.row},
                                {"column", problem.column},
                                {"words", words::problem(problem).toStdString()},
                                {"left_out", problem.stops}});
        }
        context.out << nlohmann::json{{"new", outcome.fresh},
                                      {"unchanged", outcome.unchanged},
                                      {"changed", outcome.changed},
                                      {"called_off", outcome.called_off},
                                      {"problems", std::move(problems)}}
                           .dump()
                    << '\n';
    } else if (!outcome.refused) {
        say(context.out, QObject::tr("%1 new, %2 changed, %3 as before, %4 called off")
                             .arg(outcome.fresh)
                             .arg(outcome.changed)
                             .arg(outcome.unchanged)
                             .arg(outcome.called_off));
    }
    if (outcome.refused) return refused;
    return outcome.problems.empty() ? done : attention;
}

} // namespace

void add_take_in(CLI::App& app, Context& context)
{
    const auto options = std::make_shared<Options>();
    auto* command = app.add_subcommand("take-in", "Take a file in: KIND is goods, supplies, wrappings, rules, house, "
                                                  "rates, orders or stock");
    command->add_option("KIND", options->kind)
        ->required()
        ->check(CLI::IsMember({"goods", "supplies", "wrappings", "rules", "house", "rates", "orders", "stock"}));
    command->add_option("FILE", options->file, "A table of text; its columns are described in DEVELOPERS.md")
        ->required();
    command->add_option("--columns", options->columns, "Orders: which column means what, as JSON; guessed if left out");
    command->add_option("--shop", options->shop, "Orders: whose they are; the file's name if left out");
    command->callback([&context, options] { context.exit = take_in(context, *options); });
}

} // namespace stow::command
