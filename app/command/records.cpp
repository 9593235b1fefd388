#include "app/records.h"

#include "app/command/command.h"
#include "app/her_papers.h"
#include "app/words/format.h"
#include "core/book/parcels.h"

#include <fmt/format.h>
#include <fstream>
#include <nlohmann/json.hpp>
#include <ostream>

namespace stow::command {

namespace {

struct Options {
    std::string from, until, by, materials_csv, parcels_csv, report;
};

// A number without a group separator.
std::string plain(Money m)
{
    return words::money(m, QLocale::c()).remove(QLatin1Char(',')).toStdString();
}

bool write_text(const std::string& file, const std::string& text)
{
    std::ofstream out(file, std::ios::binary);
    out << text;
    return static_cast<bool>(out.flush());
}

bool write_parcels(const std::string& file, const std::vector<records::ParcelAccount>& accounts)
{
    std::ofstream out(file, std::ios::binary);
    out << "parcel,packed_on,order,shop,country";
    for (const records::Spent on : records::all_spent) out << ',' << records::name_of(on);
    out << ",total,postage_paid,minutes,empty_percent,expected_g,weighed_g,overridden,overridden_why,"
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
                           a.empty_permille() ? fmt::format("{:.1f}", *a.empty_permille() / 10.0) : "",
                           in_grams(a.expected), a.weighed ? fmt::format("{:.1f}", in_grams(*a.weighed)) : "")
            << ',' << a.overridden << ',' << csv_cell(a.overridden_why) << ',' << a.came_back << ','
            << csv_cell(a.back_why) << ',' << a.restocked << ',' << a.written_off << ',' << a.again << '\n';
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
    const auto [facts, accounts] = read_records(day->book(), day->cupboard(), *from, *until);
    const Currency currency = day->cupboard().house.currency;
    const auto by = grouped(options.by);
    if (by || !options.materials_csv.empty() || !options.parcels_csv.empty() || !options.report.empty()) {
        if (by) show_sums(context, records::sums(accounts, *by, currency));
        bool kept = (options.materials_csv.empty() ||
                     write_text(options.materials_csv, materials_csv(*day, facts, *from, *until))) &&
                    (options.parcels_csv.empty() || write_parcels(options.parcels_csv, accounts));
        if (!options.report.empty()) {
            const auto file = print_material_report(*day, facts, *from, *until, options.report);
            if (file) say(context.err, QString::fromStdString(file->string()));
            kept = kept && file.has_value();
        }
        if (!kept) say(context.err, QObject::tr("The file cannot be written."));
        if (!options.materials_csv.empty()) {
            say(context.err,
                QObject::tr("Counted: what the ledger used in packing, and the goods' own packaging; not what "
                            "was used again. Each country's register decides what is to be reported."));
        }
        return kept ? done : refused;
    }
    const records::Sum sum = records::sum_of(accounts, currency);
    const auto materials = records::materials(facts, day->cupboard());
    const auto spent = sum.spent.find(records::Spent::postage);
    const Money postage = spent == sum.spent.end() ? Money{0, currency} : spent->second;
    const Money packaging = sum.total - postage;
    const auto empty = sum.empty_permille();
    if (context.json) {
        auto list = nlohmann::json::array();
        for (const records::MaterialLine& line : materials) {
            list.push_back({{"material", std::string(shop::name_of(line.material))},
                            {"country", line.country},
                            {"weight_g", in_grams(line.weight)},
                            {"of_goods_g", in_grams(line.of_goods)},
                            {"used_again_g", in_grams(line.again)}});
        }
        nlohmann::json document{{"from", to_text(*from)},
                                {"until", to_text(*until)},
                                {"parcels", sum.parcels},
                                {"postage", to_text(postage)},
                                {"packaging", to_text(packaging)},
                                {"weighed", sum.weighed},
                                {"off_by_g", in_grams(sum.off_by())},
                                {"packaging_by_material", std::move(list)}};
        if (empty) document["empty_space_percent"] = *empty / 10.0;
        context.out << document.dump() << '\n';
        return done;
    }
    const QLocale plain = QLocale::c();
    say(context.out, QObject::tr("%n parcels", nullptr, sum.parcels));
    say(context.out,
        QObject::tr("postage %1, packaging %2")
            .arg(words::money_with_currency(postage, plain), words::money_with_currency(packaging, plain)));
    if (empty) {
        say(context.out,
            QObject::tr("empty space %1 % (our estimate after EU 2025/40, Art. 24; the official method was "
                        "not adopted when this was written)")
                .arg(plain.toString(*empty / 10.0, 'f', 1)));
    }
    for (const records::MaterialLine& line : materials) {
        say(context.out,
            QStringLiteral("%1  %2  %3")
                .arg(QString::fromStdString(line.country), QString::fromUtf8(shop::name_of(line.material).data()),
                     words::weight(line.weight, plain)));
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
    command->add_option("--report", options->report, "Folder for the same on paper, packaging.pdf with its CSV");
    command->callback([&context, options] { context.exit = show_records(context, *options); });
}

} // namespace stow::command
