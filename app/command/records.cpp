#include "app/records.h"

#include "app/command/command.h"
#include "app/words/format.h"

#include <nlohmann/json.hpp>
#include <ostream>

namespace stow::command {

namespace {

struct Options {
    std::string from, until;
};

int show_records(Context& context, const Options& options)
{
    const auto day = open_day(context);
    if (!day) return book_unusable;
    const auto from = options.from.empty() ? day->today() - std::chrono::days(365) : parse_date(options.from);
    const auto until = options.until.empty() ? day->today() : parse_date(options.until);
    if (!from || !until) {
        say(context.err, QObject::tr("Dates are written as 2026-11-25."));
        return usage;
    }
    const records::Summary s = records_of(*day, *from, *until);
    const auto empty = s.empty_permille();
    if (context.json) {
        auto materials = nlohmann::json::array();
        for (const auto& [key, weight] : s.packaging_by_material) {
            materials.push_back({{"material", std::string(shop::name_of(key.first))},
                                 {"country", key.second},
                                 {"weight_g", in_grams(weight)}});
        }
        nlohmann::json document{{"from", to_text(*from)},
                                {"until", to_text(*until)},
                                {"parcels", s.parcels},
                                {"postage", to_text(s.postage)},
                                {"packaging", to_text(s.packaging)},
                                {"weighed", s.weighed},
                                {"off_by_g", in_grams(s.off_by)},
                                {"packaging_by_material", std::move(materials)}};
        if (empty) document["empty_space_percent"] = *empty / 10.0;
        context.out << document.dump() << '\n';
        return done;
    }
    const QLocale plain = QLocale::c();
    say(context.out, QObject::tr("%n parcels", nullptr, s.parcels));
    say(context.out,
        QObject::tr("postage %1, packaging %2")
            .arg(words::money_with_currency(s.postage, plain), words::money_with_currency(s.packaging, plain)));
    if (empty) {
        say(context.out,
            QObject::tr("empty space %1 % (our estimate after EU 2025/40, Art. 24; the official method was "
                        "not adopted when this was written)")
                .arg(plain.toString(*empty / 10.0, 'f', 1)));
    }
    for (const auto& [key, weight] : s.packaging_by_material) {
        say(context.out, QStringLiteral("%1  %2  %3")
                             .arg(QString::fromStdString(key.second),
                                  QString::fromUtf8(shop::name_of(key.first).data()), words::weight(weight, plain)));
    }
    return done;
}

} // namespace

void add_records(CLI::App& app, Context& context)
{
    const auto options = std::make_shared<Options>();
    auto* command =
        app.add_subcommand("records", "What packed parcels cost, how full they were, packaging by material");
    command->add_option("--from", options->from, "First day; a year ago if left out");
    command->add_option("--until", options->until, "Last day; today if left out");
    command->callback([&context, options] { context.exit = show_records(context, *options); });
}

} // namespace stow::command
