#include "app/command/command.h"
#include "app/words/format.h"
#include "app/words/reasons.h"
#include "core/book/parcels.h"
#include "core/intake/csv.h"
#include "core/intake/supplies_csv.h"
#include "core/records/size_advice.h"

#include <nlohmann/json.hpp>
#include <ostream>

namespace stow::command {

namespace {

struct Options {
    std::string file, from, litre = "0";
    int most = 12, weeks = 8;
};

double in_money(std::int64_t hundredths, Currency currency)
{
    double value = static_cast<double>(hundredths) / 100;
    for (int place = 0; place < currency.places(); ++place) value /= 10;
    return value;
}

int advise(Context& context, const Options& options)
{
    const auto day = open_day(context);
    if (!day) return book_unusable;
    const Currency currency = day->cupboard().house.currency;
    const auto a_litre = parse_money(options.litre, currency);
    const auto from = options.from.empty() ? day->today() - std::chrono::days(2 * 365) : parse_date(options.from);
    if (!a_litre || !from) {
        say(context.err, QObject::tr("Dates are written as 2026-11-25, money as 0.12."));
        return usage;
    }
    const auto csv = intake::read_csv_file(options.file);
    auto offered = intake::read_supplies(csv, currency);
    for (const intake::Problem& problem : offered.problems) say(context.err, words::problem(problem));
    if (offered.rows.empty()) return refused;
    records::SizeWish wish;
    wish.offered = std::move(offered.rows);
    wish.a_litre = *a_litre;
    wish.most = options.most;
    wish.weeks_kept_back = options.weeks;
    Run run;
    const auto history = records::shapes_of(book::packed_facts(day->book(), *from, day->today()));
    const auto advice = records::advise_sizes(history, day->cupboard(), wish, run);
    auto curve = nlohmann::json::array();
    for (std::size_t k = 0; k < advice.curve.size(); ++k) {
        const records::SizeChoice& choice = advice.curve[k];
        std::vector<std::string> codes;
        for (const std::size_t s : choice.sizes) codes.push_back(wish.offered[s].code.text);
        nlohmann::json point{{"sizes", codes},
                             {"cost", to_text(Money{choice.cost, currency})},
                             {"not_served", choice.not_served},
                             {"gap_percent", choice.gap() * 100}};
        if (advice.judged_cost[k]) point["judged_a_parcel"] = in_money(*advice.judged_cost[k], currency);
        curve.push_back(std::move(point));
        if (context.json) continue;
        QStringList names;
        for (const std::string& code : codes) names += QString::fromStdString(code);
        say(context.out, QObject::tr("%1 sizes: %2, %n not served, at most %3 % from the best: %4", nullptr,
                                     static_cast<int>(choice.not_served))
                             .arg(codes.size())
                             .arg(words::money({choice.cost, currency}, QLocale::c()))
                             .arg(choice.gap() * 100, 0, 'f', 2)
                             .arg(names.join(QStringLiteral(", "))));
    }
    if (context.json) {
        nlohmann::json document{{"parcels", advice.parcels},
                                {"kinds", advice.kinds},
                                {"judged", advice.judged},
                                {"curve", std::move(curve)}};
        if (advice.cost_now) document["now_a_parcel"] = in_money(*advice.cost_now, currency);
        context.out << document.dump() << '\n';
    } else if (advice.parcels == 0) {
        say(context.out, QObject::tr("No carton was packed in that time: there is nothing to go by."));
    } else if (advice.cost_now) {
        say(context.out, QObject::tr("Judged by %n parcels of the last weeks, which played no part in the choice; with "
                                     "the cartons of today one costs %1.",
                                     nullptr, advice.judged)
                             .arg(in_money(*advice.cost_now, currency), 0, 'f', 2));
    }
    return done;
}

} // namespace

void add_sizes(CLI::App& app, Context& context)
{
    const auto options = std::make_shared<Options>();
    auto* command = app.add_subcommand("sizes", "Which cartons of a supplier's list to buy, from what was packed");
    command->add_option("FILE", options->file, "Cartons offered, in the columns of supplies")->required();
    command->add_option("--most", options->most, "Sizes at most")->check(CLI::Range(1, 40));
    command->add_option("--from", options->from, "First day of the history; two years ago if left out");
    command->add_option("--litre", options->litre, "What a litre of parcel costs in postage");
    command->add_option("--judge-weeks", options->weeks, "Last weeks to judge by")->check(CLI::Range(1, 52));
    command->callback([&context, options] { context.exit = advise(context, *options); });
}

} // namespace stow::command
