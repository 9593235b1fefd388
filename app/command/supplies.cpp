#include "app/command/command.h"
#include "app/words/book.h"
#include "app/words/format.h"
#include "core/book/ledger.h"
#include "core/measure/decimal.h"

#include <nlohmann/json.hpp>
#include <ostream>

namespace stow::command {

namespace {

struct Options {
    std::string code;
    std::string amount;
    std::string reason;
};

int show(Context& context)
{
    const auto day = open_day(context);
    if (!day) return book_unusable;
    auto list = nlohmann::json::array();
    for (const auto& [code, supply] : day->cupboard().supplies) {
        const auto found = day->cupboard().on_hand.find(code);
        const shop::Amount on_hand = found == day->cupboard().on_hand.end() ? shop::Amount{} : found->second;
        const bool low = on_hand < supply.reorder_at;
        if (context.json) {
            list.push_back({{"code", code.text},
                            {"name", supply.name},
                            {"on_hand", static_cast<double>(on_hand.thousandths) / 1000.0},
                            {"unit", std::string(shop::name_of(supply.unit))},
                            {"reorder", low}});
        } else {
            say(context.out, QStringLiteral("%1  %2  %3%4")
                                 .arg(QString::fromStdString(code.text), -12)
                                 .arg(words::amount(on_hand, supply.unit, QLocale::c()), 10)
                                 .arg(QString::fromStdString(supply.name))
                                 .arg(low ? QObject::tr("  (reorder)") : QString()));
        }
    }
    if (context.json) context.out << list.dump() << '\n';
    return done;
}

using Move = std::function<book::Done(book::Book&, const shop::SupplyCode&, shop::Amount, const std::string&)>;

int move(Context& context, const Options& options, const Move& step)
{
    const auto day = open_day(context);
    if (!day) return book_unusable;
    const auto amount = scaled(options.amount, 3, Rounding::nearest);
    if (!amount) {
        say(context.err, QObject::tr("“%1” is not a number.").arg(QString::fromStdString(options.amount)));
        return usage;
    }
    if (const auto moved = step(day->book(), {options.code}, {*amount}, options.reason); !moved) {
        say(context.err, words::refused(moved.error()));
        return refused;
    }
    return done;
}

} // namespace

void add_supplies(CLI::App& app, Context& context)
{
    auto* command = app.add_subcommand("supplies", "What is on the rack; receive, count, spoil");
    command->require_subcommand(0, 1);
    command->callback([&context, command] {
        if (command->get_subcommands().empty()) context.exit = show(context);
    });
    const auto options = std::make_shared<Options>();
    const auto add = [&](const char* name, const char* help, Move step) {
        auto* sub = command->add_subcommand(name, help);
        sub->add_option("CODE", options->code)->required();
        sub->add_option("AMOUNT", options->amount, "In the supply's own unit")->required();
        sub->add_option("--why", options->reason, "Reason, kept in the ledger");
        sub->callback([&context, options, step] { context.exit = move(context, *options, step); });
    };
    add("receive", "Came from the supplier",
        [](book::Book& book, const auto& code, shop::Amount amount, const std::string&) {
            return book::receive(book, code, amount);
        });
    add("count", "So many are there; the difference is booked",
        [](book::Book& book, const auto& code, shop::Amount found, const std::string& why) {
            return book::count(book, code, found, why);
        });
    add("spoil", "Broken, wet, misprinted",
        [](book::Book& book, const auto& code, shop::Amount amount, const std::string& why) {
            return book::spoil(book, code, amount, why);
        });
}

} // namespace stow::command
