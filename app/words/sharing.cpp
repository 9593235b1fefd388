#include "app/words/sharing.h"

#include "app/words/format.h"
#include "app/words/texts.h"

#include <QStringList>

namespace stow::words {

namespace {

QString gap(const planning::SharingGap& gap, const QLocale& locale)
{
    const int most = static_cast<int>(gap.most);
    switch (gap.in) {
    case planning::SharingGap::In::orders_going:
        return Words::tr("stopped: at most %n more orders could go", nullptr, most);
    case planning::SharingGap::In::orders_in_time:
        return Words::tr("stopped: at most %n more could be in time", nullptr, most);
    case planning::SharingGap::In::filler_and_tape: return Words::tr("stopped: less filler or tape might be enough");
    case planning::SharingGap::In::wish: break;
    }
    return Words::tr("stopped: at most %1 % better is possible").arg(locale.toString(most / 10.0));
}

} // namespace

QString sharing(const planning::DaySharing& s, const QLocale& locale)
{
    if (s.moved == 0 && !s.gap) return {};
    QStringList gains;
    if (s.more_go > 0) gains += Words::tr("%n more orders go", nullptr, s.more_go);
    if (s.more_in_time > 0) gains += Words::tr("%n more in time", nullptr, s.more_in_time);
    if (s.saves.minor > 0) gains += Words::tr("%1 saved").arg(money(s.saves, locale));
    if (s.smaller >= millilitres(50)) gains += Words::tr("%1 smaller").arg(litres(s.smaller, locale));
    if (gains.isEmpty()) gains += Words::tr("no better than one by one");
    QString said = Words::tr("Shared out over the day: %1").arg(gains.join(QStringLiteral(", ")));
    return s.gap ? said + QStringLiteral(" · ") + gap(*s.gap, locale) : said;
}

QString scarce(const planning::ScarceSupply& s, const QString& name, shop::Unit unit, const QLocale& locale)
{
    const QString more = amount(s.more, unit, locale);
    if (s.more_go > 0) {
        return Words::tr("%1 more of %2 would let %n orders go", nullptr, s.more_go).arg(more, name);
    }
    if (s.saves.minor > 0)
        return Words::tr("%1 more of %2 would save %3 today").arg(more, name, money(s.saves, locale));
    if (s.smaller > Volume{}) {
        return Words::tr("%1 more of %2 would make the parcels %3 smaller").arg(more, name, litres(s.smaller, locale));
    }
    return Words::tr("%1 more of %2 would be used").arg(more, name);
}

} // namespace stow::words
