#include "app/command/command.h"
#include "app/scale_check.h"
#include "app/words/book.h"
#include "app/words/format.h"
#include "core/measure/decimal.h"

#include <nlohmann/json.hpp>
#include <ostream>

namespace stow::command {

namespace {

struct Options {
    std::string parcel, grams, stage = "closed", why;
    bool anyway = false;
};

int weigh(Context& context, const Options& options)
{
    const auto day = open_day(context);
    if (!day) return book_unusable;
    const auto weight = scaled(options.grams, 1, Rounding::nearest);
    if (!weight || *weight <= 0) {
        say(context.err, QObject::tr("“%1” is not a weight in grams.").arg(QString::fromStdString(options.grams)));
        return usage;
    }
    const auto parcel = book::parcel_by_number(day->book(), options.parcel);
    if (!parcel) {
        say(context.err, QObject::tr("There is no parcel %1.").arg(QString::fromStdString(options.parcel)));
        return refused;
    }
    const auto stage = *shop::weighing_stage(options.stage);
    const ScaleCheck check = check_scale(*day, *parcel, stage, {*weight});
    const weighing::Finding& finding = check.finding;
    const bool right = finding.verdict == weighing::Finding::Verdict::right;
    if (right || options.anyway) {
        const book::Reading reading{stage,          {*weight},   !right, right ? std::string() : options.why,
                                    check.by_parts, std::nullopt}; // nothing was scanned
        if (const auto kept = book::weigh(day->book(), parcel->parcel.id, reading); !kept) {
            say(context.err, words::refused(kept.error()));
            return refused;
        }
    }
    const QString verdict = words_of(*day, finding);
    if (context.json) {
        context.out << nlohmann::json{{"right", right},
                                      {"words", verdict.toStdString()},
                                      {"expected_g", in_grams(finding.expected.mean)},
                                      {"spread_g", in_grams(finding.expected.spread)},
                                      {"least_seen_g", in_grams(weighing::least_detectable(finding.expected.spread))}}
                           .dump()
                    << '\n';
    } else {
        say(context.out, QObject::tr("%1; expected %2, seen from %3")
                             .arg(verdict, words::weight_and_spread(finding.expected, QLocale::c()),
                                  words::weight(weighing::least_detectable(finding.expected.spread), QLocale::c())));
    }
    return right || options.anyway ? done : attention;
}

} // namespace

void add_weigh(CLI::App& app, Context& context)
{
    const auto options = std::make_shared<Options>();
    auto* command = app.add_subcommand("weigh", "Tell the scale's reading for a parcel and hear whether it is right");
    command->add_option("PARCEL", options->parcel, "Its number, as 2611-017")->required();
    command->add_option("GRAMS", options->grams)->required();
    command->add_option("--stage", options->stage, "contents (before filler), closed or labelled")
        ->check(CLI::IsMember({"contents", "closed", "labelled"}));
    command->add_flag("--anyway", options->anyway, "Keep the weight although it does not look right");
    command->add_option("--why", options->why, "Why it stands all the same, for the records");
    command->callback([&context, options] { context.exit = weigh(context, *options); });
}

} // namespace stow::command
