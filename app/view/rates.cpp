#include "app/view/rates.h"

#include "app/take_in.h"
#include "app/view/rate_questions.h"
#include "app/view/taken_words.h"
#include "app/view/text.h"
#include "app/words/book.h"
#include "app/words/format.h"
#include "app/words/reasons.h"
#include "core/book/rate_sheets.h"
#include "core/book/settings.h"
#include "core/intake/rate_parts.h"
#include "core/intake/rate_sheet_csv.h"

#include <QClipboard>
#include <QGuiApplication>
#include <QRegularExpression>

#include <algorithm>
#include <fstream>
#include <map>
#include <set>
#include <sstream>

namespace stow::view {

namespace {

using intake::TypedFault;
using intake::TypedPart;

constexpr const char* remembered_draft = "rates.draft";
constexpr int spare_rows = 8; // blank, below what is there

// What she sends to: for zones that forget a country.
std::vector<std::string> countries(const Day& day)
{
    std::set<std::string> all;
    for (const shop::HeldOrder& held : day.orders()) {
        if (!held.order.to.country.empty()) all.insert(held.order.to.country);
    }
    return {all.begin(), all.end()};
}

bool blank(const intake::TypedRow& row)
{
    return row.grams.empty() &&
           std::all_of(row.prices.begin(), row.prices.end(), [](const std::string& p) { return p.empty(); });
}

bool blank(const TypedPart& p)
{
    return p.name.empty() && p.amount.empty() && p.details.empty();
}

// Which of the values the reader objects to; -1: none of them, or it does not say.
int faulty_value(const TypedPart& part, const std::string& objected)
{
    if (objected.empty()) return -1;
    const auto values = intake::part_values(part.record, part.details);
    for (std::size_t i = 0; i < values.size(); ++i) {
        std::vector<std::string> alone(values.size());
        alone[i] = values[i];
        if (intake::part_details(part.record, alone).find(objected) != std::string::npos) return static_cast<int>(i);
    }
    return -1;
}

// The rows of a table that say something, in the order she typed them.
intake::TypedSheet without_blanks(intake::TypedSheet sheet)
{
    for (intake::TypedTable& table : sheet.tables) {
        table.rows.erase(std::remove_if(table.rows.begin(), table.rows.end(),
                                        [](const intake::TypedRow& row) { return blank(row); }),
                         table.rows.end());
    }
    sheet.parts.erase(
        std::remove_if(sheet.parts.begin(), sheet.parts.end(), [](const TypedPart& p) { return blank(p); }),
        sheet.parts.end());
    sheet.tables.erase(std::remove_if(sheet.tables.begin(), sheet.tables.end(),
                                      [](const intake::TypedTable& t) { return t.rows.empty(); }),
                       sheet.tables.end());
    return sheet;
}

QString sheet_name(const postage::RateSheet& sheet)
{
    return sheet.valid_from
               ? RatesController::tr("%1, from %2").arg(text(sheet.carrier), words::date(*sheet.valid_from))
               : text(sheet.carrier);
}

} // namespace

RatesController::RatesController(Day& day, QObject* parent) : QObject(parent), day_(day) {}

QString RatesController::carrier() const
{
    return text(draft_.carrier);
}
QString RatesController::currency() const
{
    return text(draft_.currency);
}
QString RatesController::tax() const
{
    return text(draft_.tax);
}
QString RatesController::from() const
{
    return text(draft_.from);
}
QString RatesController::until() const
{
    return text(draft_.until);
}

QStringList RatesController::services() const
{
    QStringList all;
    for (const std::string& name : draft_.names("service")) all += text(name);
    return all;
}

QStringList RatesController::formats() const
{
    QStringList all{tr("any size")};
    for (const std::string& name : draft_.names("format")) all += text(name);
    return all;
}

QStringList RatesController::zones() const
{
    QStringList all;
    for (const std::string& name : draft_.names("zone")) all += text(name);
    return all;
}

// What lies on the table -------------------------------------------------------------------------------------------

void RatesController::setCurrent(int sheet)
{
    if (sheet < 0 || sheet >= static_cast<int>(day_.rate_sheets().size())) return;
    if (unkept_) {
        emit said(tr("Keep this sheet first (Ctrl+S), or put it away (Ctrl+Backspace)."));
        emit changed();
        return;
    }
    current_ = sheet;
    lay(intake::typed(day_.rate_sheets()[static_cast<std::size_t>(sheet)], decimal_mark()));
}

void RatesController::lay(intake::TypedSheet sheet)
{
    draft_ = std::move(sheet);
    open_ = true;
    asked_.clear(); // the language may be another
    service_ = 0;
    // The first table that has prices is looked at first.
    const auto formats = draft_.names("format");
    format_ = formats.empty() ? 0 : 1;
    if (!draft_.tables.empty()) {
        const auto services = draft_.names("service");
        const auto s = std::find(services.begin(), services.end(), draft_.tables.front().service);
        const auto f = std::find(formats.begin(), formats.end(), draft_.tables.front().format);
        if (s != services.end()) service_ = static_cast<int>(s - services.begin());
        format_ = f != formats.end() ? static_cast<int>(f - formats.begin()) + 1 : 0;
    }
    show_parts();
    show_grid();
    check();
    emit tablesChanged();
    emit changed();
}

intake::TypedTable& RatesController::table()
{
    const auto services = draft_.names("service"), formats = draft_.names("format");
    const std::string service =
        service_ < static_cast<int>(services.size()) ? services[static_cast<std::size_t>(service_)] : std::string();
    const std::string format = format_ > 0 && format_ <= static_cast<int>(formats.size())
                                   ? formats[static_cast<std::size_t>(format_ - 1)]
                                   : std::string();
    return draft_.table(service, format);
}

void RatesController::setService(int service)
{
    if (service < 0 || service >= services().size() || service == service_) return;
    service_ = service;
    show_grid();
    emit tablesChanged();
}

void RatesController::setFormat(int format)
{
    if (format < 0 || format >= formats().size() || format == format_) return;
    format_ = format;
    show_grid();
    emit tablesChanged();
}

void RatesController::show_grid()
{
    intake::TypedTable& here = table();
    const std::size_t zones = draft_.names("zone").size();
    while (!here.rows.empty() && blank(here.rows.back())) here.rows.pop_back();
    here.rows.resize(here.rows.size() + spare_rows);
    std::vector<GridRow> rows;
    for (intake::TypedRow& row : here.rows) {
        row.prices.resize(std::max(row.prices.size(), zones));
        GridRow shown{text(row.grams), {}, {}};
        for (std::size_t z = 0; z < zones; ++z) shown.prices += text(row.prices[z]);
        rows.push_back(std::move(shown));
    }
    grid_.show(std::move(rows));
}

void RatesController::show_parts()
{
    // In chapters, each with a blank row at its end.
    std::vector<TypedPart> ordered;
    std::vector<PartRow> rows;
    for (const RateChapter& chapter : rate_chapters()) {
        QString title = chapter.title;
        const auto add = [&](const TypedPart& part) {
            ordered.push_back(part);
            rows.push_back({text(part.record),
                            text(part.name),
                            text(part.amount),
                            values_shown(part),
                            {},
                            -1,
                            title,
                            chapter.one,
                            chapter.named,
                            chapter.amount,
                            chapter.example});
            title.clear();
        };
        for (const TypedPart& part : draft_.parts) {
            if (part.record == chapter.record && !blank(part)) add(part);
        }
        add({chapter.record, {}, {}, {}});
    }
    draft_.parts = std::move(ordered);
    parts_.show(std::move(rows));
}

// Checks while typing ----------------------------------------------------------------------------------------------

void RatesController::check()
{
    problems_.clear();
    facts_.clear();
    read_ = intake::read(draft_);
    struct PartFault {
        QString words;
        int value = -1;
    };
    std::map<std::size_t, PartFault> part_faults;
    std::map<std::size_t, QString> cell_faults; // of the table in sight, by row
    const auto here = static_cast<std::size_t>(&table() - draft_.tables.data());
    for (const TypedFault& fault : read_.faults) {
        const QString what = words::what_is_wrong({{}, 0, {}, fault.kind, fault.value, fault.detail, true});
        const bool cell = fault.at == TypedFault::At::price || fault.at == TypedFault::At::row;
        if (fault.at == TypedFault::At::part) {
            part_faults[fault.part] = {what, faulty_value(draft_.parts[fault.part], fault.value)};
        }
        if (cell && fault.part == here) {
            cell_faults[fault.row] +=
                QStringLiteral(" %1 ").arg(fault.at == TypedFault::At::row ? 0 : static_cast<int>(fault.zone) + 1);
        }
        QString where = tr("the sheet");
        if (fault.at == TypedFault::At::part) {
            const TypedPart& part = draft_.parts[fault.part];
            where = joined({parts_.all()[fault.part].one, text(part.name)}, QStringLiteral(" "));
        } else if (cell) {
            const intake::TypedTable& of = draft_.tables[fault.part];
            where = joined({text(of.service), text(of.format), tr("row %1").arg(fault.row + 1)}, QStringLiteral(", "));
        }
        problems_ += QStringLiteral("× ") + where + QStringLiteral(": ") + what;
    }
    if (read_.sheet) {
        const auto& all = day_.rate_sheets();
        postage::SheetContext context{day_.today(), countries(day_), true, 42};
        if (read_.sheet->valid_until) {
            context.followed = std::any_of(all.begin(), all.end(), [&](const postage::RateSheet& other) {
                return other.carrier == read_.sheet->carrier && other.valid_from &&
                       *other.valid_from > *read_.sheet->valid_until;
            });
        }
        for (const postage::SheetProblem& problem : postage::check(*read_.sheet, context)) {
            problems_ += (problem.stops ? QStringLiteral("× ") : QStringLiteral("! ")) + words::fault(problem);
        }
        facts_ =
            joined({text(read_.sheet->currency.code()),
                    read_.sheet->valid_until ? tr("until %1").arg(words::date(*read_.sheet->valid_until)) : QString(),
                    tr("%n services", nullptr, static_cast<int>(read_.sheet->services.size())),
                    tr("%n zones", nullptr, static_cast<int>(read_.sheet->zones.size())),
                    tr("%n steps", nullptr, static_cast<int>(read_.sheet->steps.size()))});
    }
    problems_.removeDuplicates();
    std::stable_sort(problems_.begin(), problems_.end(), [](const QString& a, const QString& b) {
        return a.startsWith(QChar(0x00D7)) && !b.startsWith(QChar(0x00D7));
    });
    for (std::size_t i = 0; i < parts_.all().size(); ++i) {
        PartRow row = parts_.all()[i];
        const PartFault fault = part_faults.count(i) > 0 ? part_faults[i] : PartFault{};
        if (row.fault == fault.words && row.faulty == fault.value) continue;
        row.fault = fault.words;
        row.faulty = fault.value;
        parts_.change(i, std::move(row));
    }
    for (std::size_t i = 0; i < grid_.all().size(); ++i) {
        GridRow row = grid_.all()[i];
        const QString faulty = cell_faults.count(i) > 0 ? cell_faults[i] : QString();
        if (row.faulty == faulty) continue;
        row.faulty = faulty;
        grid_.change(i, std::move(row));
    }
    const auto& kept = day_.rate_sheets();
    const bool same = current_ < static_cast<int>(kept.size()) &&
                      without_blanks(draft_) ==
                          without_blanks(intake::typed(kept[static_cast<std::size_t>(current_)], decimal_mark()));
    unkept_ = open_ && !same;
    try_parcel();
    emit checked();
}

void RatesController::try_parcel()
{
    tried_.clear();
    tried_fault_.clear();
    if (parcel_.trimmed().isEmpty() || !read_.sheet) return;
    const bool stops =
        std::any_of(problems_.begin(), problems_.end(), [](const QString& p) { return p.startsWith(QChar(0x00D7)); });
    if (stops) {
        tried_fault_ = tr("first mend what is marked ×");
        return;
    }
    QStringList typed = parcel_.simplified().split(QLatin1Char(' '));
    postage::ParcelFacts facts;
    facts.hand_over = read_.sheet->valid_from ? std::max(*read_.sheet->valid_from, day_.today()) : day_.today();
    if (read_.sheet->valid_until) facts.hand_over = std::min(facts.hand_over, *read_.sheet->valid_until);
    const auto said = [&](const QString& word) { return typed.removeAll(word) > 0; };
    facts.roll = said(QStringLiteral("roll"));
    facts.soft = said(QStringLiteral("mailer"));
    const std::size_t sizes = facts.roll ? 2 : 3;
    std::vector<Length> edges;
    for (std::size_t i = 0; i < sizes && i < static_cast<std::size_t>(typed.size()); ++i) {
        if (const auto edge = typed_length(typed[static_cast<qsizetype>(i)])) edges.push_back(*edge);
    }
    const auto after = static_cast<qsizetype>(sizes);
    const auto weight = typed.size() > after ? typed_weight(typed[after]) : std::nullopt;
    if (edges.size() < sizes || !weight || typed.size() < after + 2) {
        tried_fault_ = tr("length width height in mm, grams, country, postcode: 250 180 90 812 DE 20095");
        return;
    }
    facts.closed = facts.roll ? Size{edges[0], edges[0], edges[1]} : Size{edges[0], edges[1], edges[2]};
    facts.weight = *weight;
    facts.country = utf8(typed[after + 1].toUpper());
    facts.postcode = utf8(typed.mid(after + 2).join(QLatin1Char(' ')));
    for (const postage::Quote& quote : postage::quotes({*read_.sheet}, facts)) {
        const QString name = text(quote.service_name);
        if (const postage::Price* price = quote.price()) {
            QStringList parts;
            for (const postage::Part& part : price->parts) {
                const QString what = part.kind == postage::Part::Kind::tax ? tr("tax") : text(part.name);
                parts += joined({what, words::money(part.amount)}, QStringLiteral(" "));
            }
            tried_ += tr("%1: %2 (zone %3; %4)")
                          .arg(name, words::money_with_currency(price->total), text(price->zone),
                               parts.join(QStringLiteral(" + ")));
        } else {
            tried_ += tr("%1: no, %2").arg(name, words::reason(std::get<postage::Refused>(quote.result)));
        }
    }
}

void RatesController::tryParcel(const QString& typed)
{
    parcel_ = typed;
    try_parcel();
    emit checked();
}

// Typing -----------------------------------------------------------------------------------------------------------

void RatesController::remember_draft()
{
    // She never loses her place: what is half typed is there when the program is opened again.
    std::string draft;
    if (unkept_ && read_.sheet) draft = intake::write_rate_sheet(*read_.sheet);
    book::remember(day_.book(), remembered_draft, draft);
}

void RatesController::setHead(const QString& what, const QString& typed)
{
    const std::string value = utf8(typed);
    if (what == QLatin1String("carrier")) draft_.carrier = value;
    if (what == QLatin1String("currency")) draft_.currency = utf8(typed.toUpper());
    if (what == QLatin1String("tax")) draft_.tax = value;
    if (what == QLatin1String("from")) draft_.from = value;
    if (what == QLatin1String("until")) draft_.until = value;
    check();
    remember_draft();
}

void RatesController::setCell(int row, int column, const QString& typed)
{
    intake::TypedTable& here = table();
    if (row < 0 || row >= static_cast<int>(here.rows.size()) || column < 0) return;
    intake::TypedRow& into = here.rows[static_cast<std::size_t>(row)];
    const auto zone = static_cast<std::size_t>(column) - 1;
    if (column > 0 && zone >= into.prices.size()) return;
    std::string& cell = column == 0 ? into.grams : into.prices[zone];
    if (cell == utf8(typed)) return;
    cell = utf8(typed);
    GridRow shown = grid_.all()[static_cast<std::size_t>(row)];
    if (column == 0)
        shown.grams = typed;
    else
        shown.prices[column - 1] = typed;
    grid_.change(static_cast<std::size_t>(row), std::move(shown));
    check();
    remember_draft();
}

bool RatesController::tableInClipboard() const
{
    return QGuiApplication::clipboard()->text().contains(QRegularExpression(QStringLiteral("[\\t\\n]")));
}

void RatesController::paste(int row, int column)
{
    const QString clipboard = QGuiApplication::clipboard()->text();
    if (row < 0 || column < 0) return;
    const std::size_t zones = draft_.names("zone").size();
    const int put = intake::paste(table(), zones, static_cast<std::size_t>(row), static_cast<std::size_t>(column),
                                  clipboard.toStdString());
    show_grid();
    check();
    remember_draft();
    emit said(tr("%n cells pasted", nullptr, put));
}

void RatesController::setPart(int row, const QString& what, const QString& typed)
{
    if (row < 0 || row >= static_cast<int>(draft_.parts.size())) return;
    PartRow shown = parts_.all()[static_cast<std::size_t>(row)];
    if (what == QLatin1String("name")) shown.name = typed;
    if (what == QLatin1String("amount")) shown.amount = typed;
    part_typed(row, std::move(shown));
}

void RatesController::setValue(int row, int value, const QString& typed)
{
    if (row < 0 || row >= static_cast<int>(draft_.parts.size())) return;
    PartRow shown = parts_.all()[static_cast<std::size_t>(row)];
    if (value < 0 || value >= shown.values.size() || shown.values[value] == typed) return;
    shown.values[value] = typed;
    part_typed(row, std::move(shown));
}

QVariantList RatesController::asked(const QString& record)
{
    // Asked for by every part of a sheet on the table.
    QVariantList& known = asked_[record];
    if (known.isEmpty()) known = rate_questions(record);
    return known;
}

void RatesController::part_typed(int row, PartRow shown)
{
    TypedPart& part = draft_.parts[static_cast<std::size_t>(row)];
    const std::string before = part.name;
    part.name = utf8(shown.name);
    part.amount = utf8(shown.amount);
    part.details = details_typed(part.record, shown.values);
    // A new name goes with the prices that stand under the old one.
    if (part.name != before && !before.empty()) {
        for (intake::TypedTable& table : draft_.tables) {
            if (part.record == "service" && table.service == before) table.service = part.name;
            if (part.record == "format" && table.format == before) table.format = part.name;
        }
    }
    const bool empty = blank(part);
    PartRow more = shown;
    more.name = more.amount = more.fault = more.chapter = QString();
    more.values.fill(QString());
    more.faulty = -1;
    parts_.change(static_cast<std::size_t>(row), std::move(shown));
    // The last of a chapter is in use now: another blank one is put behind it.
    const auto next = static_cast<std::size_t>(row) + 1;
    const bool last = next == draft_.parts.size() || draft_.parts[next].record != part.record;
    if (last && !empty) {
        draft_.parts.insert(draft_.parts.begin() + row + 1, TypedPart{utf8(more.record), {}, {}, {}});
        parts_.insert(next, std::move(more));
    }
    show_grid();
    check();
    remember_draft();
    emit tablesChanged();
}

// Sheets -----------------------------------------------------------------------------------------------------------

void RatesController::begin()
{
    intake::TypedSheet fresh;
    fresh.currency = day_.cupboard().house.currency.code();
    current_ = static_cast<int>(day_.rate_sheets().size());
    lay(std::move(fresh));
}

void RatesController::nextYear()
{
    if (!read_.sheet || unkept_) {
        emit said(tr("Keep this sheet first (Ctrl+S)."));
        return;
    }
    const postage::RateSheet next = intake::next_year(*read_.sheet);
    current_ = static_cast<int>(day_.rate_sheets().size());
    lay(intake::typed(next, decimal_mark()));
    emit said(tr("The prices of %1 to be put right for the time from %2")
                  .arg(text(next.carrier), next.valid_from ? words::date(*next.valid_from) : QString()));
}

void RatesController::keep()
{
    const bool stops =
        std::any_of(problems_.begin(), problems_.end(), [](const QString& p) { return p.startsWith(QChar(0x00D7)); });
    if (!read_.sheet || stops) {
        emit said(
            tr("It cannot be used yet: %1").arg(problems_.isEmpty() ? tr("nothing is typed") : problems_.front()));
        return;
    }
    const postage::RateSheet sheet = *read_.sheet;
    if (const auto done = book::put_rate_sheet(day_.book(), sheet); !done) {
        emit said(words::refused(done.error()));
        return;
    }
    unkept_ = false;
    book::remember(day_.book(), remembered_draft, {});
    day_.moved();
    const auto& all = day_.rate_sheets();
    const auto here = std::find_if(all.begin(), all.end(), [&](const postage::RateSheet& s) {
        return s.carrier == sheet.carrier && s.valid_from == sheet.valid_from;
    });
    if (here != all.end()) current_ = static_cast<int>(here - all.begin());
    check();
    emit changed();
    emit said(tr("Kept: %1").arg(sheet_name(sheet)));
}

void RatesController::putAway()
{
    unkept_ = false;
    open_ = false;
    book::remember(day_.book(), remembered_draft, {});
    current_ = 0;
    refresh();
}

void RatesController::refresh()
{
    sheets_.clear();
    for (const postage::RateSheet& sheet : day_.rate_sheets()) sheets_ += sheet_name(sheet);
    if (unkept_) { // what is being typed stays on the table
        if (current_ >= sheets_.size()) sheets_ += draft_.carrier.empty() ? tr("new sheet") : text(draft_.carrier);
        emit changed();
        return;
    }
    const auto& all = day_.rate_sheets();
    if (!open_) {
        if (const auto draft = book::remembered(day_.book(), remembered_draft); draft && !draft->empty()) {
            std::istringstream in(*draft);
            if (const auto taken = intake::read_rate_sheet(in, {}); taken.sheet) {
                const auto same = std::find_if(all.begin(), all.end(), [&](const postage::RateSheet& s) {
                    return s.carrier == taken.sheet->carrier && s.valid_from == taken.sheet->valid_from;
                });
                current_ = static_cast<int>(same - all.begin());
                return lay(intake::typed(*taken.sheet, decimal_mark()));
            }
        }
    }
    if (all.empty()) {
        open_ = false;
        emit changed();
        return;
    }
    current_ = std::clamp(current_, 0, static_cast<int>(all.size()) - 1);
    const intake::TypedSheet kept = intake::typed(all[static_cast<std::size_t>(current_)], decimal_mark());
    if (!open_ || without_blanks(draft_) != without_blanks(kept)) lay(kept);
    emit changed();
}

void RatesController::takeIn(const QUrl& file)
{
    unkept_ = false;
    open_ = false;
    emit said(taken_words(take_in(day_, TakeInKind::rates, file.toLocalFile().toStdString())));
}

void RatesController::write(const QUrl& file)
{
    if (!read_.sheet) return;
    std::ofstream out(file.toLocalFile().toStdString(), std::ios::binary);
    out << intake::write_rate_sheet(*read_.sheet);
    emit said(out ? tr("Written to %1").arg(file.toLocalFile()) : tr("%1 cannot be written").arg(file.toLocalFile()));
}

} // namespace stow::view
