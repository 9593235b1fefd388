// Small words that several screens say, and what is typed turned back into values.
#pragma once

#include "app/day.h"
#include "core/planning/plan.h"

#include <QString>
#include <QStringList>

#include <optional>

namespace stow::view {

inline QString text(const std::string& s)
{
    return QString::fromStdString(s);
}
inline QString text(const char* s)
{
    return QString::fromUtf8(s);
}
inline QString text(std::string_view s)
{
    return QString::fromUtf8(s.data(), static_cast<qsizetype>(s.size()));
}
inline std::string utf8(const QString& s)
{
    return s.trimmed().toStdString();
}

QString joined(const QStringList& words, const QString& between = QStringLiteral(" · ")); // leaves out what is empty
QString held_together(QString words);      // no line ends within "160 × 115" or "30 ml"
QString place_of(const shop::Address& to); // "Ostermund DE"
QString address_of(const shop::Address& to, const std::string& from_country); // line by line
QString contents_of(const Day& day, const shop::Order& order);                // "2 ink bottle sea green, 1 sealing wax"
QString contents_of(const Day& day, const planning::ParcelPlan& plan);
QString good_name(const Day& day, const shop::GoodCode& code);
QString supply_name(const Day& day, const shop::SupplyCode& code);
char decimal_mark();          // of her locale: ',' or '.'
QString number(double value); // as it is typed in her locale
QString material_name(shop::Material material);
QString supply_kind_name(shop::SupplyKind kind);
QString kind_name(OuterKind kind);         // "Carton"
QString inner_size(const OuterForm& form); // a flat mailer has no height
QString inside(const OuterForm& form);     // "inside 160 × 115 × 95 mm"

// A parcel's first order, and all its order numbers: "1042 + 1043".
const shop::HeldOrder* order_of(const Day& day, const std::vector<shop::Piece>& pieces);
std::vector<shop::HeldOrder> orders_of(const Day& day, const std::vector<shop::Piece>& pieces);
QString numbers_of(const Day& day, const std::vector<shop::Piece>& pieces);

QString minutes_left(TimeOfDay from, TimeOfDay to); // "42 min left", "2 h 10 min left", "12 min ago"
QString odds(double probability);                   // "one in six"

// A number typed with the other decimal mark, as a file of her locale says it; anything else as it is.
std::string as_in_a_file(const QString& typed, char decimal_mark);

// As typed, in the locale's way or with a point. Nothing: not understood.
std::optional<Length> typed_length(const QString& typed); // mm, or with "in" behind it
std::optional<Weight> typed_weight(const QString& typed); // g, or with kg, oz, lb behind it: "1 lb 12.6 oz"
std::optional<Volume> typed_litres(const QString& typed);
std::optional<shop::Amount> typed_amount(const QString& typed);
std::optional<Money> typed_money(const QString& typed, Currency currency);

} // namespace stow::view
