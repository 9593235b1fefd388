// Amounts as people read them, in the locale's way and in the measures in use: "812 g" or "1 lb 12.6 oz", "1.4 L" or
// "85 in³", "226 × 166 × 126 mm" or "8.90 × 6.54 × 4.96 in", "4.60".
#pragma once

#include "core/measure/date.h"
#include "core/measure/money.h"
#include "core/measure/shape.h"
#include "core/shop/goods.h"
#include "core/shop/supplies.h"

#include <QLocale>
#include <QString>

namespace stow::words {

QString weight(Weight w, const QLocale& locale = QLocale()); // whole grams, kilograms from 10 kg; tenths of ounces
QString weight_and_spread(const shop::WeightEstimate& w, const QLocale& locale = QLocale()); // 812 ± 28 g, two σ
QString length(Length l, const QLocale& locale = QLocale());      // 90.5 mm, no needless places
QString size(const Size& s, const QLocale& locale = QLocale());   // 226 × 166 × 126 mm
QString litres(Volume v, const QLocale& locale = QLocale());      // 1.4 L
QString metres(Length l, const QLocale& locale = QLocale());      // 0.8 m
QString money(const Money& m, const QLocale& locale = QLocale()); // 4.60, without the currency
QString money_with_currency(const Money& m, const QLocale& locale = QLocale());
QString amount(shop::Amount a, shop::Unit unit, const QLocale& locale = QLocale()); // 12, 1.4 L, 0.8 m
QString date(Date d, const QLocale& locale = QLocale());                            // Wed 25 Nov

} // namespace stow::words
