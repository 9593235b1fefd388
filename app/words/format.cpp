#include "app/words/format.h"

#include "app/words/measures.h"
#include "core/measure/inch_ounce.h"

#include <QCoreApplication>
#include <QDate>

#include <cmath>

namespace stow::words {

namespace {

// At most `places` decimals, none that are zero.
QString plain(double value, int places, const QLocale& locale)
{
    int needed = 0;
    for (double scaled = value; needed < places && std::abs(scaled - std::round(scaled)) > 1e-9; ++needed) scaled *= 10;
    return locale.toString(value, 'f', needed);
}

QString with_unit(const QString& number, const char* unit)
{
    return number + QChar(QChar::Nbsp) + QString::fromUtf8(unit);
}

bool metric()
{
    return measures_in_use() == Measures::metric;
}

QString pounds_and_ounces(Weight w, const QLocale& locale)
{
    const std::int64_t tenths = std::llround(in_ounces(w) * 10), pound = ounces_a_pound * 10;
    const auto ounces = [&](std::int64_t n) {
        return with_unit(locale.toString(static_cast<double>(n) / 10, 'f', 1), "oz");
    };
    if (tenths < pound) return ounces(tenths);
    return with_unit(locale.toString(static_cast<qlonglong>(tenths / pound)), "lb") + QChar(QChar::Nbsp) +
           ounces(tenths % pound);
}

QString one_length(Length l, const QLocale& locale) // a number without its unit
{
    return metric() ? plain(in_mm(l), 1, locale) : locale.toString(in_inches(l), 'f', 2);
}

const char* unit_of_length()
{
    return metric() ? "mm" : "in";
}

} // namespace

QString weight(Weight w, const QLocale& locale)
{
    if (!metric()) return pounds_and_ounces(w, locale);
    if (w >= grams(10'000)) return with_unit(locale.toString(in_grams(w) / 1000.0, 'f', 2), "kg");
    return with_unit(locale.toString(std::llround(in_grams(w))), "g");
}

QString weight_and_spread(const shop::WeightEstimate& w, const QLocale& locale)
{
    const QString between = QStringLiteral(" ± ");
    if (!metric()) {
        const double two_sigma = std::ceil(20.0 * in_ounces(w.spread)) / 10;
        return with_unit(locale.toString(in_ounces(w.mean), 'f', 1) + between + locale.toString(two_sigma, 'f', 1),
                         "oz");
    }
    const auto two_sigma = std::llround(std::ceil(2.0 * in_grams(w.spread)));
    return with_unit(locale.toString(std::llround(in_grams(w.mean))) + between + locale.toString(two_sigma), "g");
}

QString length(Length l, const QLocale& locale)
{
    return with_unit(one_length(l, locale), unit_of_length());
}

QString size(const Size& s, const QLocale& locale)
{
    const QString times = QStringLiteral(" × ");
    return with_unit(one_length(s.x, locale) + times + one_length(s.y, locale) + times + one_length(s.z, locale),
                     unit_of_length());
}

QString litres(Volume v, const QLocale& locale)
{
    if (!metric()) return with_unit(locale.toString(std::llround(in_cubic_inches(v))), "in³");
    return with_unit(locale.toString(in_litres(v), 'f', 1), "L");
}

QString metres(Length l, const QLocale& locale)
{
    if (!metric()) return with_unit(locale.toString(in_inches(l) / 12, 'f', 1), "ft");
    return with_unit(locale.toString(in_mm(l) / 1000.0, 'f', 1), "m");
}

QString money(const Money& m, const QLocale& locale)
{
    const int places = m.currency.places();
    return locale.toString(static_cast<double>(m.minor) / std::pow(10.0, places), 'f', places);
}

QString money_with_currency(const Money& m, const QLocale& locale)
{
    return with_unit(money(m, locale), m.currency.code().c_str());
}

QString amount(shop::Amount a, shop::Unit unit, const QLocale& locale)
{
    const double value = static_cast<double>(a.thousandths) / 1000.0;
    switch (unit) {
    case shop::Unit::piece: return plain(value, 2, locale);
    case shop::Unit::litre: return with_unit(locale.toString(value, 'f', 1), "L");
    case shop::Unit::metre: return with_unit(locale.toString(value, 'f', 1), "m");
    case shop::Unit::kilogram: return with_unit(locale.toString(value, 'f', 2), "kg");
    }
    return {};
}

QString date(Date d, const QLocale& locale)
{
    const std::chrono::year_month_day ymd{d};
    const QDate day(static_cast<int>(ymd.year()), static_cast<int>(static_cast<unsigned>(ymd.month())),
                    static_cast<int>(static_cast<unsigned>(ymd.day())));
    return locale.toString(day, QCoreApplication::translate("words", "ddd d MMM", "date format"));
}

} // namespace stow::words
