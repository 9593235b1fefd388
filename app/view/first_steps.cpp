#include "app/view/first_steps.h"

#include "app/take_in.h"
#include "app/view/supply_card.h"
#include "app/view/taken_words.h"
#include "app/view/text.h"
#include "app/words/book.h"
#include "core/book/cupboard.h"
#include "core/book/orders.h"
#include "core/book/parcels.h"
#include "core/book/settings.h"

#include <QCoreApplication>
#include <QFile>
#include <QLocale>
#include <QProcess>
#include <QStandardPaths>
#include <QTemporaryDir>

#include <algorithm>

namespace stow::view {

namespace {
constexpr const char* remembered_steps = "first_steps";
}

FirstSteps::FirstSteps(Day& day, QObject* parent) : QObject(parent), day_(day) {}

void FirstSteps::refresh()
{
    const bool was_needed = needed_;
    needed_ = !book::remembered(day_.book(), remembered_steps).has_value();
    if (!needed_) {
        if (was_needed) emit changed();
        return;
    }
    // Planned today, or worked with before there were first steps.
    if (book::last_round(day_.book()) > 0 || !day_.parcels().empty()) return putAway();
    const auto& cupboard = day_.cupboard();
    const bool outers = std::any_of(cupboard.supplies.begin(), cupboard.supplies.end(),
                                    [](const auto& known) { return known.second.kind == shop::SupplyKind::outer; });
    const auto& house = cupboard.house;
    std::vector<FirstStep> steps{
        {tr("Whose workshop it is"),
         tr("Your name and address stand on labels, slips and customs papers."),
         tr("Type it in"),
         {},
         !house.address.name.empty() && !house.address.street.empty() && !house.address.town.empty() &&
             !house.address.country.empty()},
        {tr("What you sell"), tr("Each good with its size and weight: one is enough to begin with."),
         tr("Enter a good"), tr("Take in a table"), !cupboard.goods.empty()},
        {tr("What you pack in"),
         tr("Boxes, mailers, filler and tape. The starter rack holds ten of each common one; change what differs from "
            "yours."),
         tr("Take the starter rack"), tr("Enter your own"), outers},
        {tr("What postage costs"),
         tr("One carrier's price list, typed as it is printed. It can wait: parcels are then planned without prices."),
         tr("Type a rate sheet"), tr("Take in a table"), !day_.rate_sheets().empty()},
        {tr("A first order"), tr("By hand, or the file your shop exports."), tr("Enter an order"), tr("Take in a file"),
         !day_.orders().empty()},
        {tr("Its plan"),
         tr("The smallest outer that holds it, the filler, the weight and the postage."),
         tr("Plan it"),
         {},
         false}};
    const auto next = std::find_if(steps.begin(), steps.end(), [](const FirstStep& step) { return !step.done; });
    if (next != steps.end()) next->now = true;
    const auto left = std::count_if(steps.begin(), steps.end(), [](const FirstStep& step) { return !step.done; });
    headline_ = tr("%n steps to the first parcel", nullptr, static_cast<int>(left));
    steps_.show(std::move(steps));
    emit changed();
}

void FirstSteps::takeStarterRack()
{
    const bool german = QLocale().language() == QLocale::German;
    const QTemporaryDir folder;
    const QString file = folder.filePath(QStringLiteral("starter_rack.csv"));
    if (!QFile::copy(german ? QStringLiteral(":/stow/starter/rack_de.csv")
                            : QStringLiteral(":/stow/starter/rack_en.csv"),
                     file)) {
        emit said(tr("The starter rack could not be written to %1").arg(file));
        return;
    }
    emit said(taken_words(take_in(day_, TakeInKind::supplies, file.toStdString())));
}

void FirstSteps::openDemo()
{
    const QString folder =
        QStandardPaths::writableLocation(QStandardPaths::AppLocalDataLocation) + QStringLiteral("/demo");
    auto* demo = new QProcess(this);
    const QString program = QCoreApplication::applicationFilePath();
    connect(demo, &QProcess::finished, this, [this, demo, program, folder] {
        demo->deleteLater();
        const QString file = folder + QStringLiteral("/demo.book");
        if (!QFile::exists(file) || !QProcess::startDetached(program, {QStringLiteral("--book"), file}))
            emit said(tr("The demo day could not be written into %1").arg(folder));
    });
    connect(demo, &QProcess::errorOccurred, this,
            [this, folder] { emit said(tr("The demo day could not be written into %1").arg(folder)); });
    emit said(tr("The demo day opens in a window of its own."));
    demo->start(program, {QStringLiteral("demo"), QStringLiteral("--out"), folder});
}

void FirstSteps::putAway()
{
    book::remember(day_.book(), remembered_steps, "put away");
    needed_ = false;
    emit changed();
}

} // namespace stow::view
