#include "app/command/command.h"

#include "app/words/book.h"
#include "core/book/verify.h"

#include <iterator>
#include <memory>
#include <nlohmann/json.hpp>
#include <ostream>

namespace stow::command {

namespace {

void say_again(Context& context, const book::SolvedAgain& again)
{
    if (again.questions == 0) {
        say(context.out,
            QObject::tr("No packing question is remembered from earlier days, so there is none to work out "
                        "again."));
        return;
    }
    say(context.out, QObject::tr("%n remembered packing questions were worked out again. Outers refused in them: %1; "
                                 "none of them holds its set.",
                                 nullptr, again.questions)
                         .arg(again.refusals));
    if (again.undecided > 0) {
        say(context.out, QObject::tr("Of these refusals %n could not be proven again with the work allowed, nor "
                                     "disproven.",
                                     nullptr, again.undecided));
    }
}

int verify(Context& context, bool deep)
{
    const auto day = open_day(context);
    if (!day) return book_unusable;
    auto findings = book::verify(day->book());
    book::SolvedAgain again;
    if (deep) {
        Run run;
        again = book::verify_solved(day->book(), run);
        std::move(again.findings.begin(), again.findings.end(), std::back_inserter(findings));
    }
    if (context.json) {
        auto list = nlohmann::json::array();
        for (const auto& finding : findings) {
            list.push_back({{"where", finding.where}, {"what", words::finding(finding).toStdString()}});
        }
        context.out << nlohmann::json{{"sound", findings.empty()}, {"findings", list}}.dump() << '\n';
    } else if (findings.empty()) {
        say(context.out, QObject::tr("The shop book is sound: its structure, its ledger and every plan."));
        if (deep) say_again(context, again);
    } else {
        for (const auto& finding : findings) say(context.out, words::finding(finding));
    }
    return findings.empty() ? done : attention;
}

} // namespace

void add_verify(CLI::App& app, Context& context)
{
    auto* command = app.add_subcommand("verify", "Check the whole shop book: file, ledger, every plan's geometry");
    auto deep = std::make_shared<bool>(false);
    command->add_flag("--deep", *deep, "Also work out again every refusal remembered from earlier days");
    command->callback([&context, deep] { context.exit = verify(context, *deep); });
}

} // namespace stow::command
