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
    return {{"tracked", ticked(RatesController::tr("tracked"))},
            {"days", typed(RatesController::tr("Days on the way"), example("2–4"))},
            {"cut-off", typed(RatesController::tr("Cut-off"), local_weekdays(example("16:30, Sat 12:00")), "", 176)},
            {"collected",
             typed(RatesController::tr("Collected on"), local_weekdays(example("Mon Tue Wed Thu Fri")), "", 216)},
            {"cover", typed(RatesController::tr("Covered up to"), example("100"))},
            {"not sent", typed(RatesController::tr("Does not take"), example("flammable, liquid"), "", 216)},
            {"tax", typed(RatesController::tr("Tax of its own"), {}, "%")},
            {"parcel post", seldom(ticked(RatesController::tr("parcel post")))},
            {"divisor", seldom(typed(RatesController::tr("Volume divisor"), example("5000")))},
            {"rounding", seldom(typed(RatesController::tr("Weight in steps of"), example("500"), "g", 176))},
            {"above", seldom(typed(RatesController::tr("By volume above"), example("28.3"), "l"))},
            {"sides", seldom(typed(RatesController::tr("Sides rounded"), example("up to 10"), "mm", 152))},
            {"rolls count", seldom(typed(RatesController::tr("A roll counts"), example("78.5"), "%"))}};
}

Questions of_a_format()
{
    const auto limit = [](const QString& label) { return typed(label, {}, "mm", 152); };
    return {{"length", typed(RatesController::tr("Length"), example("140–353"), "mm", 152)},
            {"width", limit(RatesController::tr("Width"))},
            {"height", limit(RatesController::tr("Height"))},
            {"sum", limit(RatesController::tr("All three together"))},
            {"girth", limit(RatesController::tr("Length and girth"))},
            {"roll length", seldom(limit(RatesController::tr("Length of a roll")))},
            {"roll sum", seldom(limit(RatesController::tr("Roll: length and 2 ⌀")))},
            {"ratio", seldom(typed(RatesController::tr("Length to width"), example("1.4–2.5"), "", 152))},
            {"tolerance", seldom(typed(RatesController::tr("Tolerance"), example("2"), "mm"))}};
}

Questions of_a_surcharge()
{
    return {{"service", typed(RatesController::tr("Only service"))},
            {"zone", typed(RatesController::tr("Only zone"))},
            {"format", typed(RatesController::tr("Only format"))},
            {"longer than", typed(RatesController::tr("Longer than"), {}, "mm")},
            {"wider than", typed(RatesController::tr("Wider than"), {}, "mm")},
            {"girth over", typed(RatesController::tr("Girth over"), {}, "mm")},
            {"heavier than", typed(RatesController::tr("Heavier than"), {}, "g")},
            {"larger than", seldom(typed(RatesController::tr("Larger than"), {}, "l"))},
            {"value above", seldom(typed(RatesController::tr("Value above")))},
            {"rolls", seldom(ticked(RatesController::tr("only rolls")))},
            {"not boxed", seldom(ticked(RatesController::tr("only what is not boxed")))},
            {"per kg", seldom(ticked(RatesController::tr("for each kg")))},
            {"of value", seldom(ticked(RatesController::tr("percent of the value")))},
            {"with",
             seldom(typed(RatesController::tr("Percent of these too"), RatesController::tr("toll, fuel"), "", 216))},
            {"in", seldom(typed(RatesController::tr("Only in"), example("DK 3700 to 3799, SE 62"), "", 216))},
            {"from", seldom(typed(RatesController::tr("From"), example("2026-11-01")))},
            {"until", seldom(typed(RatesController::tr("Until"), example("2026-12-24")))}};
}

Questions questions(std::string_view record)
{
    if (record == "service") return of_a_service();
    if (record == "format") return of_a_format();
    if (record == "surcharge") return of_a_surcharge();
    if (record == "zone")
        return {{"", typed(RatesController::tr("Countries, postcodes"), example("DE 20 to 29, SE 62"), "", 432)}};
    if (record == "holiday") {
        return {{"from", typed(RatesController::tr("From"), example("2026-12-24"))},
                {"until", typed(RatesController::tr("Until"), example("2026-12-26"))}};
    }
    Questions priced{{"service", typed(RatesController::tr("Service"))},
                     {"zone", typed(RatesController::tr("Zone"))},
                     {"format", typed(RatesController::tr("Format"))},
                     {"grams", typed(RatesController::tr("Weight up to"), example("31500"), "g")}};
    if (record == "volume") priced["litres"] = typed(RatesController::tr("Volume up to"), example("20"), "l");
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
    const QString price = RatesController::tr("Price");
    return {
        {"service",
         RatesController::tr("Services"),
         RatesController::tr("service"),
         true,
         RatesController::tr("In full"),
         {}},
        {"zone", RatesController::tr("Zones"), RatesController::tr("zone"), true, {}, {}},
        {"format", RatesController::tr("Formats"), RatesController::tr("format"), true, {}, {}},
        {"beyond", RatesController::tr("For each kilogram past the last step"),
         RatesController::tr("past the last step"), false, price, example("0.70")},
        {"volume", RatesController::tr("By volume"), RatesController::tr("by volume"), false, price, example("9.40")},
        {"surcharge", RatesController::tr("Surcharges"), RatesController::tr("surcharge"), true,
         RatesController::tr("Price or percent"), example("7.5 %")},
        {"holiday", RatesController::tr("Holidays"), RatesController::tr("holiday"), false, {}, {}}};
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
