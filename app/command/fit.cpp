#include "core/fitting/fit.h"
#include "app/command/command.h"
#include "app/words/reasons.h"
#include "core/intake/fit_json.h"

#include <chrono>
#include <ostream>

namespace stow::command {

namespace {

int fit(Context& context, const std::string& file)
{
    const auto text = read_whole(file, context);
    if (!text) return refused;
    const auto request = intake::read_fit_question(*text);
    if (!request) {
        intake::Problem problem = request.error();
        problem.file = file == "-" ? "standard input" : file;
        say(context.err, words::problem(problem));
        return refused;
    }
    Run run({request->time, request->work});
    const auto start = std::chrono::steady_clock::now();
    const auto answer = fitting::fit(request->question, run);
    const std::chrono::duration<double, std::milli> taken = std::chrono::steady_clock::now() - start;
    context.out << intake::write_fit_answer(*request, answer, taken.count()) << '\n';
    return answer.verdict == fitting::Verdict::fits ? done : attention;
}

} // namespace

void add_fit(CLI::App& app, Context& context)
{
    const auto file = std::make_shared<std::string>();
    auto* command = app.add_subcommand("fit", "Answer one packing question: does it go in, where, or why not");
    command->add_option("FILE", *file, "JSON as DEVELOPERS.md describes it; - reads standard input")->required();
    command->callback([&context, file] { context.exit = fit(context, *file); });
}

} // namespace stow::command
