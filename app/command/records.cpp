#include "app/records.h"

#include "app/command/command.h"
#include "app/supply_papers.h"
#include "app/words/format.h"

#include <fmt/format.h>
#include <fstream>
#include <nlohmann/json.hpp>
#include <ostream>

namespace stow::command {

namespace {

struct Options {
    std::string from, until, by, materials_csv, parcels_csv;
};

// A number without a group separator.
std::string plain(Money m)
{
    return words::money(m, QLocale::c()).remove(QLatin1Char(',')).toStdString();
}

bool write_materials(const std::string& file, const std::vector<records::ParcelFacts>& facts, const Day& day, Date from,
                     Date until)
{
    std::ofstream out(file, std::ios::binary);
    out << "from,until,country,material,grams,of_goods_grams\n";
    for (const records::MaterialLine& line : records::materials(facts, day.cupboard())) {
        out << to_text(from) << ',' << to_text(until) << ',' << line.country << ',' << shop::name_of(line.material)
            << ',' << fmt::format("{:.1f},{:.1f}\n", in_grams(line.weight), in_grams(line.of_goods));
    }
    return static_cast<bool>(out.flush());
}

bool write_parcels(const std::string& file, const std::vector<records::ParcelAccount>& accounts)
{
    std::ofstream out(file, std::ios::binary);
    out << "parcel,packed_on,order,shop,country";
    for (const records::Spent on : records::all_spent) out << ',' << records::name_of(on);
    out << ",total,postage_paid,minutes,empty_percent,expected_g,weighed_g,overridden,"
           "came_back,why,restocked,written_off,sent_again\n";
    for (const records::ParcelAccount& a : accounts) {
        out << a.number << ',' << to_text(a.packed_on) << ',' << csv_cell(a.order) << ',' << csv_cell(a.shop) << ','
            << a.country;
        for (const records::Spent on : records::all_spent) {
            const auto found = a.spent.find(on);
            out << ',' << (found == a.spent.end() ? std::string("0") : plain(found->second));
        }
        out << ',' << plain(a.total) << ',' << plain(a.paid)
            << fmt::format(",{:.1f},{},{:.1f},{}", a.seconds / 60.0,
                           a.empty_permille ? fmt::format("{:.1f}", *a.empty_permille / 10.0) : "",
                           in_grams(a.expected), a.weighed ? fmt::format("{:.1f}", in_grams(*a.weighed)) : "")
            << ',' << a.overridden << ',' << a.came_back << ',' << csv_cell(a.back_why) << ',' << a.restocked << ','
            << a.written_off << ',' << a.again << '\n';
    }
    return static_cast<bool>(out.flush());
}

void show_sums(Context& context, const std::vector<records::Sum>& sums)
{
    for (const records::Sum& s : sums) {
        say(context.out, QObject::tr("%1  %n parcels, %2 spent, %3 postage paid", nullptr, s.parcels)
                             .arg(QString::fromStdString(s.key), -12)
                             .arg(words::money(s.total, QLocale::c()), words::money(s.paid, QLocale::c())));
    }
}

std::optional<records::Grouped> grouped(const std::string& by)
{
    if (by == "week") return records::Grouped::week;
    if (by == "shop") return records::Grouped::shop;
    if (by == "country") return records::Grouped::country;
    return std::nullopt;
}

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
    const auto by = grouped(options.by);
    if (by || !options.materials_csv.empty() || !options.parcels_csv.empty()) {
        const auto facts = parcel_facts(*day, *from, *until);
        const auto accounts = parcel_accounts(*day, facts);
        if (by) show_sums(context, records::sums(accounts, *by, day->cupboard().house.currency));
        const bool kept =
            (options.materials_csv.empty() || write_materials(options.materials_csv, facts, *day, *from, *until)) &&
            (options.parcels_csv.empty() || write_parcels(options.parcels_csv, accounts));
        if (!kept) say(context.err, QObject::tr("The file cannot be written."));
        if (!options.materials_csv.empty()) {
            say(context.err,
                QObject::tr("Counted: what the ledger used in packing, and the goods' own packaging; not what "
                            "was used again. Each country's register decides what is to be reported."));
        }
        return kept ? done : refused;
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
    command->add_option("--by", options->by, "Sums by week, shop or country")
        ->check(CLI::IsMember({"week", "shop", "country"}));
    command->add_option("--materials", options->materials_csv, "Packaging by country and material, as CSV");
    command->add_option("--parcels", options->parcels_csv, "Every parcel with what it cost, as CSV");
    command->callback([&context, options] { context.exit = show_records(context, *options); });
}

} // namespace stow::command
