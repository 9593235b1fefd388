#include "app/command/command.h"
#include "app/supply_papers.h"
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
    std::string reason, cost, supplier;
    std::string out = "papers";
};

int show(Context& context)
{
    const auto day = open_day(context);
    if (!day) return book_unusable;
    auto list = nlohmann::json::array();
    const auto outlook = outlook_of(*day);
    for (const auto& [code, supply] : day->cupboard().supplies) {
        const auto found = day->cupboard().on_hand.find(code);
        const shop::Amount on_hand = found == day->cupboard().on_hand.end() ? shop::Amount{} : found->second;
        const supplies::Outlook& own = outlook.at(code);
        const bool low = on_hand < own.reorder_at;
        const bool to_count = on_hand < shop::Amount{}; // more was packed than the book knew
        if (context.json) {
            list.push_back({{"code", code.text},
                            {"name", supply.name},
                            {"on_hand", static_cast<double>(on_hand.thousandths) / 1000.0},
                            {"unit", std::string(shop::name_of(supply.unit))},
                            {"reorder", low},
                            {"reorder_at", static_cast<double>(own.reorder_at.thousandths) / 1000.0},
                            {"count_it", to_count}});
            if (own.cover) list.back()["lasts_days"] = *own.cover;
            if (own.forecast) list.back()["forecast"] = std::string(supplies::name_of(own.forecast->method));
        } else {
            say(context.out, QStringLiteral("%1  %2  %3%4")
                                 .arg(QString::fromStdString(code.text), -12)
                                 .arg(words::amount(on_hand, supply.unit, QLocale::c()), 10)
                                 .arg(QString::fromStdString(supply.name))
                                 .arg(to_count ? QObject::tr("  (less than none: count it)")
                                      : low    ? QObject::tr("  (reorder)")
                                               : QString()));
        }
    }
    if (context.json) context.out << list.dump() << '\n';
    return done;
}

using Move = std::function<book::Done(Day&, const shop::SupplyCode&, shop::Amount, const Options&)>;

int move(Context& context, const Options& options, const Move& step)
{
    const auto day = open_day(context);
    if (!day) return book_unusable;
    const auto amount = scaled(options.amount, 3, Rounding::nearest);
    if (!amount) {
        say(context.err, QObject::tr("“%1” is not a number.").arg(QString::fromStdString(options.amount)));
        return usage;
    }
    if (const auto moved = step(*day, {options.code}, {*amount}, options); !moved) {
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
    add("receive", "Came from the supplier", [](Day& day, const auto& code, shop::Amount amount, const Options& o) {
        const auto cost = parse_money(o.cost, day.cupboard().house.currency);
        return book::receive(day.book(), code, amount, cost, o.supplier);
    });
    auto* receive = command->get_subcommand("receive");
    receive->add_option("--cost", options->cost, "Of all that came, in the house's currency, as 12.50");
    receive->add_option("--supplier", options->supplier, "Who it came from");
    add("count", "So many are there; the difference is booked",
        [](Day& day, const auto& code, shop::Amount found, const Options& o) {
            return book::count(day.book(), code, found, o.reason);
        });
    add("spoil", "Broken, wet, misprinted", [](Day& day, const auto& code, shop::Amount amount, const Options& o) {
        return book::spoil(day.book(), code, amount, o.reason);
    });
    const auto paper = [&](const char* name, const char* help, auto&& write) {
        auto* sub = command->add_subcommand(name, help);
        sub->add_option("--out", options->out, "Folder");
        sub->callback([&context, options, write] {
            const auto day = open_day(context);
            if (!day) {
                context.exit = book_unusable;
                return;
            }
            const auto file = write(*day, options->out);
            say(context.out,
                file ? QString::fromStdString(file->string()) : QObject::tr("There is nothing on that list."));
            context.exit = done;
        });
    };
    paper("reorder", "What to order, by supplier, in whole packs: paper and CSV",
          [](Day& day, const std::string& folder) { return print_reorder_list(day, folder); });
    paper("make", "Which goods to make: paper",
          [](Day& day, const std::string& folder) { return print_making_list(day, folder); });
}

} // namespace stow::command
