#include "app/command/command.h"

#include "app/words/book.h"
#include "core/book/verify.h"

#include <iterator>
#include <memory>
#include <nlohmann/json.hpp>
#include <ostream>

namespace stow::command {

namespace {

int verify(Context& context, bool deep)
{
    const auto day = open_day(context);
    if (!day) return book_unusable;
    auto findings = book::verify(day->book());
    if (deep) {
        Run run;
        auto more = book::verify_solved(day->book(), run);
        std::move(more.begin(), more.end(), std::back_inserter(findings));
    }
    if (context.json) {
        auto list = nlohmann::json::array();
        for (const auto& finding : findings) {
            list.push_back({{"where", finding.where}, {"what", words::finding(finding).toStdString()}});
        }
        context.out << nlohmann::json{{"sound", findings.empty()}, {"findings", list}}.dump() << '\n';
    } else if (findings.empty()) {
        say(context.out, QObject::tr("The shop book is sound: its structure, its ledger and every plan."));
        if (deep) say(context.out, QObject::tr("Every remembered refusal was worked out again and holds."));
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
