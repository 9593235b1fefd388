#include "app/view/sizes.h"

#include "app/day.h"
#include "app/view/background.h"
#include "app/view/text.h"
#include "app/words/format.h"
#include "app/words/reasons.h"
#include "core/book/parcels.h"
#include "core/intake/csv.h"
#include "core/intake/supplies_csv.h"
#include "core/records/size_advice.h"

#include <QLocale>

#include <algorithm>

namespace stow::view {

namespace {

constexpr int years_back = 2;

// Hundredths of the minor unit, as money with its currency.
QString precise(double hundredths, Currency currency)
{
    double value = hundredths / 100;
    for (int place = 0; place < currency.places(); ++place) value /= 10;
    return QLocale().toString(value, 'f', currency.places()) + QChar(QChar::Nbsp) + text(currency.code());
}

} // namespace

SizesController::SizesController(Day& day, QObject* parent)
    : QObject(parent), day_(day), work_(std::make_unique<Work>(day)),
      words_(tr("Take in the list of cartons a supplier offers: a table in the columns of supplies."))
{
    connect(work_.get(), &Work::changed, this, &SizesController::runningChanged);
}

SizesController::~SizesController() = default;

bool SizesController::running() const
{
    return work_->running();
}

double SizesController::progress() const
{
    return work_->progress();
}

QString SizesController::choose(const QUrl& file, const QString& a_litre)
{
    const Currency currency = day_.cupboard().house.currency;
    records::SizeWish wish;
    wish.a_litre = Money{0, currency};
    if (!a_litre.trimmed().isEmpty()) {
        const auto typed = typed_money(a_litre, currency);
        if (!typed || typed->minor < 0) return tr("“%1” is not an amount").arg(a_litre);
        wish.a_litre = *typed;
    }
    auto offered = intake::read_supplies(intake::read_csv_file(file.toLocalFile().toStdString()), currency);
    rows_.show({});
    curve_ = {};
    if (offered.rows.empty()) {
        words_ = offered.problems.empty() ? tr("There is no carton in that file.")
                                          : words::problem(offered.problems.front());
        emit changed();
        return {};
    }
    wish.offered = std::move(offered.rows);
    const Date from = day_.today() - std::chrono::days(365 * years_back);
    auto history = records::shapes_of(book::packed_facts(day_.book(), from, day_.today()));
    if (history.empty()) {
        words_ = tr("No carton was packed in that time: there is nothing to go by.");
        emit changed();
        return {};
    }
    words_ = tr("Weighing up %n parcels of the last two years", nullptr, static_cast<int>(history.size()));
    if (!offered.problems.empty()) {
        words_ += QStringLiteral(" · ") + words::problem(offered.problems.front());
    }
    emit changed();
    work_->start([this, wish = std::move(wish), history = std::move(history),
                  cupboard = day_.cupboard()](Run& run) -> Work::Finish {
        auto advice = records::advise_sizes(history, cupboard, wish, run);
        return [this, advice = std::move(advice), offered = wish.offered] { show(advice, offered); };
    });
    return {};
}

void SizesController::stop()
{
    work_->cancel();
}

void SizesController::show(const records::SizeAdvice& advice, const std::vector<shop::Supply>& offered)
{
    const Currency currency = day_.cupboard().house.currency;
    std::vector<SizeRow> rows;
    papers::Chart chart;
    chart.kind = papers::Chart::Kind::curve;
    for (std::size_t k = 0; k < advice.curve.size(); ++k) {
        const records::SizeChoice& choice = advice.curve[k];
        if (choice.served == 0) continue;
        if (choice.sizes.size() <= k) break; // one more of them would serve nobody better
        const double a_parcel = static_cast<double>(choice.cost) * 100 / static_cast<double>(choice.served);
        QStringList names;
        for (const std::size_t s : choice.sizes) names += text(offered[s].name);
        SizeRow row;
        row.sizes = tr("%n sizes", nullptr, static_cast<int>(choice.sizes.size()));
        row.cost = precise(a_parcel, currency);
        row.names = names.join(QStringLiteral(", "));
        const double gap = choice.gap() * 100;
        row.more = joined(
            {gap < 0.005 ? tr("the best there is, proven")
                         : tr("at most %1 % from the best").arg(QLocale().toString(gap, 'f', 2)),
             choice.not_served > 0 ? tr("%n parcels go into none of them", nullptr, static_cast<int>(choice.not_served))
                                   : QString(),
             advice.judged_cost[k]
                 ? tr("%1 on the weeks kept back").arg(precise(static_cast<double>(*advice.judged_cost[k]), currency))
                 : QString()});
        // What goes into no size makes a choice cheap: only points that serve all as well as the last are compared.
        const bool serves_all = choice.not_served == advice.curve.back().not_served;
        chart.values.push_back({serves_all ? a_parcel : 0, QString::number(choice.sizes.size()).toStdString(),
                                serves_all ? utf8(precise(a_parcel, currency)) : std::string(), false});
        rows.push_back(std::move(row));
    }
    auto& points = chart.values;
    points.erase(std::remove_if(points.begin(), points.end(), [](const auto& p) { return p.value <= 0; }),
                 points.end());
    curve_ = sketch_of(std::move(chart), tr("Cost of a parcel against how many sizes there are"));
    words_ =
        joined({tr("%n parcels", nullptr, advice.parcels), tr("%n different blocks", nullptr, advice.kinds),
                advice.cost_now ? tr("with the cartons of today one costs %1 on the %n parcels kept back to judge by",
                                     nullptr, advice.judged)
                                      .arg(precise(static_cast<double>(*advice.cost_now), currency))
                                : tr("%n parcels kept back to judge by", nullptr, advice.judged)});
    rows_.show(std::move(rows));
    emit changed();
}

} // namespace stow::view
