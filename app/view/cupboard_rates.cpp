#include "app/take_in.h"
#include "app/view/cupboard.h"
#include "app/view/taken_words.h"
#include "app/view/text.h"
#include "app/words/format.h"
#include "app/words/reasons.h"

#include <algorithm>

namespace stow::view {

RatesController::RatesController(Day& day, QObject* parent) : QObject(parent), day_(day) {}

void RatesController::setCurrent(int sheet)
{
    if (sheet < 0 || sheet >= sheets_.size() || sheet == current_) return;
    current_ = sheet;
    refresh();
}

void RatesController::refresh()
{
    sheets_.clear();
    problems_.clear();
    facts_.clear();
    std::vector<RateRow> rows;
    for (const postage::RateSheet& sheet : day_.rate_sheets()) {
        sheets_ += sheet.valid_from ? tr("%1, from %2").arg(text(sheet.carrier), words::date(*sheet.valid_from))
                                    : text(sheet.carrier);
    }
    current_ = std::clamp(current_, 0, std::max(0, static_cast<int>(sheets_.size()) - 1));
    if (!sheets_.isEmpty()) {
        const postage::RateSheet& sheet = day_.rate_sheets()[static_cast<std::size_t>(current_)];
        facts_ = joined({text(sheet.currency.code()),
                         sheet.valid_until ? tr("until %1").arg(words::date(*sheet.valid_until)) : QString(),
                         sheet.tax_permille > 0 ? tr("tax %1 %").arg(static_cast<double>(sheet.tax_permille) / 10)
                                                : tr("tax included or none"),
                         tr("%n services", nullptr, static_cast<int>(sheet.services.size())),
                         tr("%n zones", nullptr, static_cast<int>(sheet.zones.size()))});
        for (const postage::SheetProblem& problem : postage::check(sheet, day_.today())) {
            problems_ += (problem.stops ? QStringLiteral("× ") : QStringLiteral("! ")) + words::fault(problem);
        }
        const auto service_name = [&](const std::string& code) {
            const auto found = std::find_if(sheet.services.begin(), sheet.services.end(),
                                            [&](const auto& s) { return s.code == code; });
            return text(found != sheet.services.end() && !found->name.empty() ? found->name : code);
        };
        const postage::Step* before = nullptr;
        for (const postage::Step& step : sheet.steps) {
            RateRow row{service_name(step.service), text(step.zone),
                        text(step.format),          tr("to %1").arg(words::weight(step.up_to)),
                        words::money(step.price),   false};
            row.first = before == nullptr || before->service != step.service || before->zone != step.zone ||
                        before->format != step.format;
            before = &step;
            rows.push_back(std::move(row));
        }
    }
    steps_.show(std::move(rows));
    emit changed();
}

void RatesController::takeIn(const QUrl& file)
{
    emit said(taken_words(take_in(day_, TakeInKind::rates, file.toLocalFile().toStdString())));
}

} // namespace stow::view
