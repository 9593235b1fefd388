#include "app/view/before_sale.h"

#include "app/day_papers.h"
#include "app/her_papers.h"
#include "app/view/bench_scale.h"
#include "app/view/text.h"
#include "app/words/format.h"
#include "app/words/reasons.h"
#include "core/intake/country_names.h"
#include "core/intake/csv.h"
#include "core/measure/decimal.h"
#include "core/shop/countries.h"
#include "core/weighing/expected.h"

#include <cmath>
#include <fstream>
#include <set>

namespace stow::view {

namespace {

planning::Wish quick_wish(const Day& day)
{
    planning::Wish wish;
    wish.day = day.today();
    wish.prove = false;
    wish.work_per_question = 5'000;
    return wish;
}

} // namespace

BeforeSaleController::BeforeSaleController(Day& day, QObject* parent)
    : QObject(parent), day_(day), asking_(day), writing_(day)
{
    connect(&asking_, &Work::changed, this, &BeforeSaleController::workingChanged);
    connect(&writing_, &Work::changed, this, &BeforeSaleController::workingChanged);
}

void BeforeSaleController::refresh()
{
    goods_.clear();
    codes_.clear();
    for (const auto& [code, good] : day_.cupboard().goods) {
        codes_.push_back(code.text);
        goods_ += joined({text(code.text), text(good.name)});
    }
    emit changed();
}

void BeforeSaleController::ask(int good, const QString& count, const QString& country, const QString& postcode)
{
    if (good < 0 || good >= static_cast<int>(codes_.size())) return;
    bool whole = false;
    const int pieces = count.trimmed().isEmpty() ? 1 : count.trimmed().toInt(&whole);
    const bool counted = count.trimmed().isEmpty() || (whole && pieces >= 1 && pieces <= 99);
    const std::string to = intake::CountryNames().code(utf8(country)).value_or(utf8(country.toUpper()));
    count_fault_ = counted ? QString() : tr("1 to 99");
    country_fault_ = shop::is_country(to)
                         ? QString()
                         : tr("“%1” is not a country: its name, or two letters such as DE or NO").arg(country);
    answer_.clear();
    packed_.clear();
    risk_.clear();
    saving_.clear();
    if (!count_fault_.isEmpty() || !country_fault_.isEmpty()) {
        services_.show({});
        return emit answered();
    }
    planning::Wish wish = quick_wish(day_);
    wish.prove = true;
    planning::Offer asked{{codes_[static_cast<std::size_t>(good)]}, pieces, to, utf8(postcode)};
    asking_.start([this, cupboard = day_.cupboard(), rates = day_.rate_sheets(), wish,
                   asked = std::move(asked)](Run&) -> Work::Finish {
        Run run({std::chrono::milliseconds(3000), 400'000});
        auto plan = planning::before_sale(cupboard, asked, rates, wish, run);
        return [this, asked, plan = std::move(plan)] { show(asked, plan); };
    });
    emit answered();
}

void BeforeSaleController::show(const planning::Offer& asked,
                                const tl::expected<planning::ParcelPlan, planning::StuckOrder>& plan)
{
    if (!plan) {
        services_.show({});
        answer_ = tr("It cannot go: %1").arg(words::stuck(plan.error()));
        return emit answered();
    }
    if (plan->chosen) {
        const postage::Quote& quote = plan->quotes[*plan->chosen];
        answer_ = words::money_with_currency(quote.price()->total) + QStringLiteral(", ") +
                  joined({text(quote.carrier), text(quote.service_name)}, QStringLiteral(", "));
    } else {
        answer_ = tr("No service takes it");
    }
    packed_ = joined({supply_name(day_, plan->outer), words::weight_and_spread(plan->weight),
                      tr("closed %1").arg(words::size(plan->closed))});
    std::vector<OfferRow> rows;
    for (std::size_t i = 0; i < plan->quotes.size(); ++i) {
        const postage::Quote& quote = plan->quotes[i];
        OfferRow row;
        row.service = joined({text(quote.carrier), text(quote.service_name)}, QStringLiteral(", "));
        row.chosen = plan->chosen == i;
        if (const postage::Price* price = quote.price()) {
            row.price = words::money_with_currency(price->total);
            row.more = joined({quote.tracked ? tr("tracked") : QString(),
                               tr("%n days at most", nullptr, quote.days_most), text(price->format)});
        } else {
            row.more = words::reason(std::get<postage::Refused>(quote.result));
        }
        rows.push_back(std::move(row));
    }
    if (plan->chosen) {
        const postage::Quote& quote = plan->quotes[*plan->chosen];
        const postage::Price& price = *quote.price();
        if (price.step_edge && price.next_step) {
            const double over = weighing::probability_above(plan->weight, *price.step_edge);
            if (over > 0.01) {
                risk_ = tr("%1 is heavier than its step: then %2")
                            .arg(odds(over), words::money_with_currency(*price.next_step));
            }
        }
        postage::ParcelFacts facts;
        facts.closed = plan->closed;
        facts.weight = plan->weight.mean;
        facts.country = asked.country;
        facts.postcode = asked.postcode;
        facts.holds = plan->holds;
        facts.hand_over = plan->hand_over;
        saving_ = saving_words(day_, facts, quote);
    }
    services_.show(std::move(rows));
    emit answered();
}

void BeforeSaleController::writeTable()
{
    std::set<std::string> countries{day_.cupboard().house.address.country};
    for (const shop::HeldOrder& held : day_.orders()) countries.insert(held.order.to.country);
    std::vector<planning::SendTo> destinations;
    for (const std::string& country : countries) {
        if (shop::is_country(country)) destinations.push_back({country, {}});
    }
    writing_.start([this, cupboard = day_.cupboard(), rates = day_.rate_sheets(), wish = quick_wish(day_),
                    destinations = std::move(destinations)](Run& run) -> Work::Finish {
        auto table = planning::charges(cupboard, destinations, rates, wish, run);
        return [this, table = std::move(table)] { write(table); };
    });
}

void BeforeSaleController::write(const std::vector<planning::Charge>& table)
{
    std::string csv = intake::csv_line({"good", "name", "country", "postage", "currency", "carrier", "service",
                                        "weight g", "spread g", "risk of next step %", "next step", "to charge"});
    const auto amount = [](const std::optional<Money>& m) {
        return m ? unscaled(m->minor, m->currency.places()) : std::string();
    };
    for (const planning::Charge& c : table) {
        const shop::Good* good = day_.cupboard().good(c.good);
        csv += intake::csv_line({no_formula(c.good.text), no_formula(good != nullptr ? good->name : std::string()),
                                 c.country, amount(c.postage), c.postage ? c.postage->currency.code() : std::string(),
                                 no_formula(c.carrier), no_formula(c.service), unscaled(c.weight.mean.units, 1),
                                 unscaled(c.weight.spread.units, 1), unscaled(std::lround(c.risk * 1000), 1),
                                 amount(c.next_step), amount(c.to_charge)});
    }
    const auto file = paper_folder(day_) / ("postage-to-charge-" + to_text(day_.today()) + ".csv");
    std::error_code error;
    std::filesystem::create_directories(file.parent_path(), error);
    std::ofstream out(file, std::ios::binary);
    out << csv;
    emit said(out ? tr("%n rows: ", nullptr, static_cast<int>(table.size())) + text(file.string())
                  : tr("%1 cannot be written").arg(text(file.string())));
}

} // namespace stow::view
