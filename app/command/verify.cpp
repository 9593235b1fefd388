#include "app/command/command.h"

#include "app/words/book.h"
#include "core/book/verify.h"

#include <nlohmann/json.hpp>
#include <ostream>

namespace stow::command {

namespace {

int verify(Context& context)
{
    const auto day = open_day(context);
    if (!day) return book_unusable;
    const auto findings = book::verify(day->book());
    if (context.json) {
        auto list = nlohmann::json::array();
        for (const auto& finding : findings) {
            list.push_back({{"where", finding.where}, {"what", words::finding(finding).toStdString()}});
        }
        context.out << nlohmann::json{{"sound", findings.empty()}, {"findings", list}}.dump() << '\n';
    } else if (findings.empty()) {
        say(context.out, QObject::tr("The shop book is sound: its structure, its ledger and every plan."));
    } else {
        for (const auto& finding : findings) say(context.out, words::finding(finding));
    }
    return findings.empty() ? done : attention;
}

} // namespace

void add_verify(CLI::App& app, Context& context)
{
    auto* command = app.add_subcommand("verify", "Check the whole shop book: file, ledger, every plan's geometry");
    command->callback([&context] { context.exit = verify(context); });
}

} // namespace stow::command
