#include "app/view/text.h"

#include "app/words/format.h"
#include "core/measure/decimal.h"
#include "core/measure/inch_ounce.h"
#include "core/papers/address.h"

#include <QCoreApplication>
#include <QLocale>
#include <QRegularExpression>

#include <algorithm>
#include <cmath>

namespace stow::view {

namespace {

struct Say {
    Q_DECLARE_TR_FUNCTIONS(View)
};

constexpr std::int64_t most_thousandths = 1'000'000'000; // of inches and ounces

// "1 234,5" and "1234.5" alike: the last comma or point is the decimal mark.
std::string plain(QString typed)
{
    typed.remove(QChar(QChar::Nbsp)).remove(QLatin1Char(' '));
    typed.replace(QLatin1Char(','), QLatin1Char('.'));
    return typed.toStdString();
}

std::optional<std::int64_t> number(const QString& typed, int places, Rounding rounding)
{
    return scaled(plain(typed), places, rounding);
}

} // namespace

QString joined(const QStringList& words, const QString& between)
{
    QStringList said;
    std::copy_if(words.begin(), words.end(), std::back_inserter(said), [](const QString& w) { return !w.isEmpty(); });
    return said.join(between);
}

QString held_together(QString words)
{
    static const QRegularExpression times(QStringLiteral(" × ")),
        unit(QStringLiteral("(\\d) (?=(ml|cl|l|g|kg|mm|cm|m|oz|lb|in)\\b)"));
    words.replace(times, QStringLiteral("\u00a0×\u00a0"));
    words.replace(unit, QStringLiteral("\\1\u00a0"));
    return words;
}

QString place_of(const shop::Address& to)
{
    return joined({text(to.town), text(to.country)}, QStringLiteral(" "));
}

QString address_of(const shop::Address& to, const std::string& from_country)
{
    QStringList lines;
    for (const std::string& line : papers::address_lines(to, from_country)) lines += text(line);
    return lines.join(QLatin1Char('\n'));
}

QString good_name(const Day& day, const shop::GoodCode& code)
{
    const shop::Good* good = day.cupboard().good(code);
    return good != nullptr && !good->name.empty() ? text(good->name) : text(code.text);
}

QString supply_name(const Day& day, const shop::SupplyCode& code)
{
    const shop::Supply* supply = day.cupboard().supply(code);
    return supply != nullptr && !supply->name.empty() ? text(supply->name) : text(code.text);
}

namespace {

// "2 Ink Sea, Pen": one text grown in place, as the window asks it of thousands of orders at once.
void add_counted(QString& said, int count, const QString& name)
{
    if (!said.isEmpty()) said += QLatin1String(", ");
    if (count != 1) said += QString::number(count) + QLatin1Char(' ');
    said += name;
}

} // namespace

QString contents_of(const Day& day, const shop::Order& order)
{
    QString said;
    for (const shop::OrderLine& line : order.lines)
        add_counted(said, line.count, line.good.empty() ? text(line.title) : good_name(day, line.good));
    return said;
}

QString contents_of(const Day& day, const planning::ParcelPlan& plan)
{
    QString said;
    for (const shop::Piece& piece : plan.pieces) add_counted(said, piece.count, good_name(day, piece.good));
    return said;
}

QString inner_size(const OuterForm& form)
{
    const Size& in = form.inner;
    const auto flat = [&] {
        const QString across = words::length(in.x).section(QChar(QChar::Nbsp), 0, 0);
        return across + QStringLiteral(" × ") + words::length(in.y);
    };
    switch (form.kind) {
    case OuterKind::tube: return Say::tr("⌀ %1, %2 long").arg(words::length(in.x), words::length(in.z));
    case OuterKind::mailer:
    case OuterKind::padded_mailer: return flat();
    default: return words::size(in);
    }
}

QString inside(const OuterForm& form)
{
    return Say::tr("inside %1").arg(inner_size(form));
}

char decimal_mark()
{
    return QLocale().decimalPoint() == QLatin1String(",") ? ',' : '.';
}

QString number(double value)
{
    QLocale plainly;
    plainly.setNumberOptions(plainly.numberOptions() | QLocale::OmitGroupSeparator); // read back, 1.200 would be 1.2
    return plainly.toString(value, 'g', 8);
}

QString material_name(shop::Material material)
{
    using M = shop::Material;
    switch (material) {
    case M::paper: return Say::tr("paper and board");
    case M::plastic: return Say::tr("plastic");
    case M::glass: return Say::tr("glass");
    case M::wood: return Say::tr("wood");
    case M::ferrous: return Say::tr("steel");
    case M::aluminium: return Say::tr("aluminium");
    case M::composite: return Say::tr("composite");
    case M::other: return Say::tr("other");
    }
    return {};
}

QString supply_kind_name(shop::SupplyKind kind)
{
    using K = shop::SupplyKind;
    switch (kind) {
    case K::outer: return Say::tr("outer");
    case K::wrap: return Say::tr("wrap");
    case K::filler: return Say::tr("filler");
    case K::tape: return Say::tr("tape");
    case K::label: return Say::tr("label");
    case K::insert: return Say::tr("insert");
    case K::ribbon: return Say::tr("ribbon");
    case K::paper: return Say::tr("paper");
    }
    return {};
}

QString kind_name(OuterKind kind)
{
    switch (kind) {
    case OuterKind::carton: return Say::tr("Carton");
    case OuterKind::gift_box: return Say::tr("Gift box");
    case OuterKind::mailer: return Say::tr("Mailer");
    case OuterKind::padded_mailer: return Say::tr("Padded mailer");
    case OuterKind::board_mailer: return Say::tr("Board mailer");
    case OuterKind::tube: return Say::tr("Tube");
    }
    return {};
}

const shop::HeldOrder* order_of(const Day& day, const std::vector<shop::Piece>& pieces)
{
    return pieces.empty() ? nullptr : day.order(pieces.front().order);
}

std::vector<shop::HeldOrder> orders_of(const Day& day, const std::vector<shop::Piece>& pieces)
{
    std::vector<shop::HeldOrder> orders;
    for (const shop::Piece& piece : pieces) {
        const bool known =
            std::any_of(orders.begin(), orders.end(), [&](const auto& held) { return held.id == piece.order; });
        if (const auto* held = day.order(piece.order); held != nullptr && !known) orders.push_back(*held);
    }
    return orders;
}

QString numbers_of(const Day& day, const std::vector<shop::Piece>& pieces)
{
    QStringList numbers;
    for (const shop::HeldOrder& held : orders_of(day, pieces)) numbers += text(held.order.key.number);
    return numbers.join(QStringLiteral(" + "));
}

QString minutes_left(TimeOfDay from, TimeOfDay to)
{
    const auto minutes = static_cast<int>((to - from).count());
    if (minutes < 0) return Say::tr("%1 min ago").arg(-minutes);
    if (minutes < 60) return Say::tr("%1 min left").arg(minutes);
    return Say::tr("%1 h %2 min left").arg(minutes / 60).arg(minutes % 60);
}

QString odds(double probability)
{
    if (probability > 0.75) return Say::tr("very likely");
    if (probability > 0.4) return Say::tr("as likely as not");
    const auto in = std::lround(1 / std::max(probability, 1e-3));
    return Say::tr("one in %1").arg(in);
}

std::string as_in_a_file(const QString& typed, char decimal_mark)
{
    static const QRegularExpression number(QStringLiteral("^-?\\d+[.,]\\d+$"));
    std::string said = utf8(typed);
    if (number.match(typed.trimmed()).hasMatch()) {
        std::replace_if(
            said.begin(), said.end(), [](char c) { return c == ',' || c == '.'; }, decimal_mark);
    }
    return said;
}

std::optional<Length> typed_length(const QString& typed)
{
    QString digits = typed.trimmed().toLower();
    if (digits.endsWith(QLatin1String("in"))) {
        digits.chop(2);
        const auto thousandths = number(digits, 3, Rounding::up);
        const bool sensible = thousandths && *thousandths > 0 && *thousandths < most_thousandths;
        return sensible ? std::optional(from_thousandth_inches(*thousandths)) : std::nullopt;
    }
    if (digits.endsWith(QLatin1String("mm"))) digits.chop(2);
    const auto tenths = number(digits, 1, Rounding::up);
    return tenths && *tenths > 0 ? std::optional(tenth_mm(*tenths)) : std::nullopt;
}

std::optional<Weight> typed_weight(const QString& typed)
{
    QString digits = typed.trimmed().toLower();
    const qsizetype pounds_end = digits.indexOf(QLatin1String("lb"));
    if (pounds_end >= 0 || digits.endsWith(QLatin1String("oz"))) {
        QString ounces = pounds_end >= 0 ? digits.mid(pounds_end + 2) : digits;
        if (ounces.endsWith(QLatin1String("oz"))) ounces.chop(2);
        const auto pounds =
            pounds_end >= 0 ? number(digits.left(pounds_end), 3, Rounding::nearest) : std::optional<std::int64_t>(0);
        const auto rest = ounces.trimmed().isEmpty() && pounds_end >= 0 ? std::optional<std::int64_t>(0)
                                                                        : number(ounces, 3, Rounding::nearest);
        if (!pounds || !rest || *pounds < 0 || *rest < 0 || *pounds > most_thousandths / ounces_a_pound) return {};
        const std::int64_t all = *pounds * ounces_a_pound + *rest;
        return all > 0 && all < most_thousandths ? std::optional(from_thousandth_ounces(all)) : std::nullopt;
    }
    const bool kilograms = digits.endsWith(QStringLiteral("kg"));
    if (kilograms)
        digits.chop(2);
    else if (digits.endsWith(QLatin1Char('g')))
        digits.chop(1);
    const auto tenths = number(digits, kilograms ? 4 : 1, Rounding::nearest);
    return tenths && *tenths > 0 ? std::optional(tenth_g(*tenths)) : std::nullopt;
}

std::optional<Volume> typed_litres(const QString& typed)
{
    const auto thousandths = number(typed, 3, Rounding::up);
    return thousandths && *thousandths > 0 ? std::optional(millilitres(*thousandths)) : std::nullopt;
}

std::optional<shop::Amount> typed_amount(const QString& typed)
{
    const auto thousandths = number(typed, 3, Rounding::nearest);
    return thousandths && *thousandths >= 0 ? std::optional(shop::Amount{*thousandths}) : std::nullopt;
}

std::optional<Money> typed_money(const QString& typed, Currency currency)
{
    return parse_money(plain(typed), currency);
}

} // namespace stow::view
