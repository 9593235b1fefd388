#include "app/view/rate_questions.h"

#include "app/view/rates.h"
#include "app/view/text.h"

#include <QLocale>
#include <QRegularExpression>

#include <algorithm>
#include <map>

namespace stow::view {

namespace {

using intake::PartWord;
using Questions = std::map<std::string_view, RateQuestion>; // by word

RateQuestion typed(const QString& label, const QString& example = {}, const char* unit = "", int room = 128)
{
    return {label, example, QString::fromUtf8(unit), room, false, {}, false};
}

RateQuestion ticked(const QString& label)
{
    return {label, {}, {}, 176, true, {}, false};
}

RateQuestion seldom(RateQuestion question)
{
    question.seldom = true;
    return question;
}

QString example(const char* typed)
{
    return QString::fromUtf8(typed);
}

Questions of_a_service()
{
    using C = RatesController;
    return {{"tracked", ticked(C::tr("tracked"))},
            {"days", typed(C::tr("Days on the way"), example("2–4"))},
            {"cut-off", typed(C::tr("Cut-off"), local_weekdays(example("16:30, Sat 12:00")), "", 176)},
            {"collected", typed(C::tr("Collected on"), local_weekdays(example("Mon Tue Wed Thu Fri")), "", 216)},
            {"cover", typed(C::tr("Covered up to"), example("100"))},
            {"not sent", typed(C::tr("Does not take"), example("flammable, liquid"), "", 216)},
            {"tax", typed(C::tr("Tax of its own"), {}, "%")},
            {"parcel post", seldom(ticked(C::tr("parcel post")))},
            {"divisor", seldom(typed(C::tr("Volume divisor"), example("5000")))},
            {"rounding", seldom(typed(C::tr("Weight in steps of"), example("500"), "g"))},
            {"above", seldom(typed(C::tr("By volume above"), example("28.3"), "l"))},
            {"sides", seldom(typed(C::tr("Sides rounded"), example("up to 10"), "mm", 152))},
            {"rolls count", seldom(typed(C::tr("A roll counts"), example("78.5"), "%"))}};
}

Questions of_a_format()
{
    using C = RatesController;
    const auto limit = [](const QString& label) { return typed(label, {}, "mm", 152); };
    return {{"length", typed(C::tr("Length"), example("140–353"), "mm", 152)},
            {"width", limit(C::tr("Width"))},
            {"height", limit(C::tr("Height"))},
            {"sum", limit(C::tr("All three together"))},
            {"girth", limit(C::tr("Length and girth"))},
            {"roll length", seldom(limit(C::tr("Length of a roll")))},
            {"roll sum", seldom(limit(C::tr("Roll: length and 2 ⌀")))},
            {"ratio", seldom(typed(C::tr("Length to width"), example("1.4–2.5"), "", 152))},
            {"tolerance", seldom(typed(C::tr("Tolerance"), example("2"), "mm"))}};
}

Questions of_a_surcharge()
{
    using C = RatesController;
    return {{"service", typed(C::tr("Only service"))},
            {"zone", typed(C::tr("Only zone"))},
            {"format", typed(C::tr("Only format"))},
            {"longer than", typed(C::tr("Longer than"), {}, "mm")},
            {"wider than", typed(C::tr("Wider than"), {}, "mm")},
            {"girth over", typed(C::tr("Girth over"), {}, "mm")},
            {"heavier than", typed(C::tr("Heavier than"), {}, "g")},
            {"larger than", seldom(typed(C::tr("Larger than"), {}, "l"))},
            {"value above", seldom(typed(C::tr("Value above")))},
            {"rolls", seldom(ticked(C::tr("only rolls")))},
            {"not boxed", seldom(ticked(C::tr("only what is not boxed")))},
            {"per kg", seldom(ticked(C::tr("for each kg")))},
            {"of value", seldom(ticked(C::tr("percent of the value")))},
            {"with", seldom(typed(C::tr("Percent of these too"), C::tr("toll, fuel"), "", 216))},
            {"in", seldom(typed(C::tr("Only in"), example("DK 3700 to 3799, SE 62"), "", 216))},
            {"from", seldom(typed(C::tr("From"), example("2026-11-01")))},
            {"until", seldom(typed(C::tr("Until"), example("2026-12-24")))}};
}

Questions questions(std::string_view record)
{
    using C = RatesController;
    if (record == "service") return of_a_service();
    if (record == "format") return of_a_format();
    if (record == "surcharge") return of_a_surcharge();
    if (record == "zone") return {{"", typed(C::tr("Countries, postcodes"), example("DE 20 to 29, SE 62"), "", 432)}};
    if (record == "holiday") {
        return {{"from", typed(C::tr("From"), example("2026-12-24"))},
                {"until", typed(C::tr("Until"), example("2026-12-26"))}};
    }
    Questions priced{{"service", typed(C::tr("Service"))},
                     {"zone", typed(C::tr("Zone"))},
                     {"format", typed(C::tr("Format"))},
                     {"grams", typed(C::tr("Weight up to"), example("31500"), "g")}};
    if (record == "volume") priced["litres"] = typed(C::tr("Volume up to"), example("20"), "l");
    return priced;
}

bool names_weekdays(std::string_view record, const PartWord& word)
{
    return record == "service" && (word.word == "cut-off" || word.word == "collected");
}

// The week's days in the file's words, Monday first, and in hers.
QString with_weekdays(QString text, bool to_local)
{
    const QLocale file(QLocale::English, QLocale::UnitedKingdom), hers;
    for (int day = 1; day <= 7; ++day) {
        const auto name = [&](const QLocale& locale) {
            return locale.standaloneDayName(day, QLocale::ShortFormat).remove(QLatin1Char('.'));
        };
        const QString from = name(to_local ? file : hers), to = name(to_local ? hers : file);
        text.replace(QRegularExpression(QStringLiteral("\\b%1\\b\\.?").arg(QRegularExpression::escape(from)),
                                        QRegularExpression::CaseInsensitiveOption),
                     to);
    }
    return text;
}

} // namespace

std::vector<RateChapter> rate_chapters()
{
    using C = RatesController;
    const QString price = C::tr("Price");
    return {{"service", C::tr("Services"), C::tr("service"), true, C::tr("In full"), {}},
            {"zone", C::tr("Zones"), C::tr("zone"), true, {}, {}},
            {"format", C::tr("Formats"), C::tr("format"), true, {}, {}},
            {"beyond", C::tr("For each kilogram past the last step"), C::tr("past the last step"), false, price,
             example("0.70")},
            {"volume", C::tr("By volume"), C::tr("by volume"), false, price, example("9.40")},
            {"surcharge", C::tr("Surcharges"), C::tr("surcharge"), true, C::tr("Price or percent"), example("7.5 %")},
            {"holiday", C::tr("Holidays"), C::tr("holiday"), false, {}, {}}};
}

QVariantList rate_questions(const QString& record)
{
    const std::string of = utf8(record);
    Questions asked = questions(of);
    QVariantList list;
    for (const PartWord& word : intake::part_words(of)) {
        RateQuestion& question = asked.at(word.word);
        question.word = text(word.word);
        list += QVariant::fromValue(question);
    }
    return list;
}

QString local_weekdays(const QString& text)
{
    return with_weekdays(text, true);
}

QStringList values_shown(const intake::TypedPart& part)
{
    QStringList shown;
    const auto& words = intake::part_words(part.record);
    const auto values = intake::part_values(part.record, part.details);
    for (std::size_t i = 0; i < words.size(); ++i) {
        shown += names_weekdays(part.record, words[i]) ? local_weekdays(text(values[i])) : text(values[i]);
    }
    return shown;
}

std::string details_typed(const std::string& record, const QStringList& typed)
{
    std::vector<std::string> values;
    for (const PartWord& word : intake::part_words(record)) {
        const QString value = typed.value(static_cast<qsizetype>(values.size()));
        values.push_back(utf8(names_weekdays(record, word) ? with_weekdays(value, false) : value));
    }
    return intake::part_details(record, values);
}

} // namespace stow::view
