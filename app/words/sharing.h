// What the whole day's choice came to, and what more of a scarce supply would be worth, in words.
#pragma once

#include "core/planning/plan.h"

#include <QLocale>
#include <QString>

namespace stow::words {

// "Shared out over the day: 2 parcels stepped back, 4.20 less than one by one". Empty: nothing was scarce.
QString sharing(const planning::DaySharing& sharing, const QLocale& locale = QLocale());
// "3 more of Carton K would save 7.20 today".
QString scarce(const planning::ScarceSupply& scarce, const QString& name, shop::Unit unit,
               const QLocale& locale = QLocale());

} // namespace stow::words
