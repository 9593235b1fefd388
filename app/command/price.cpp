#include "app/command/command.h"
#include "app/words/reasons.h"
#include "core/intake/price_json.h"

#include <ostream>

namespace stow::command {

namespace {

int price(Context& context, const std::string& file)
{
    const auto answer = intake::answer_price_file(file);
    if (!answer) {
        for (const intake::Problem& problem : answer.error()) say(context.err, words::problem(problem));
        return refused;
    }
    for (const intake::Problem& problem : answer->problems) say(context.err, words::problem(problem));
    context.out << answer->json << '\n';
    return answer->problems.empty() ? done : attention;
}

} // namespace

void add_price(CLI::App& app, Context& context)
{
    const auto file = std::make_shared<std::string>();
    auto* command = app.add_subcommand("price", "Rate sheets and a parcel to prices, with parts or reasons");
    command->add_option("FILE", *file, "JSON as DEVELOPERS.md describes it")->required();
    command->callback([&context, file] { context.exit = price(context, *file); });
}

} // namespace stow::command
