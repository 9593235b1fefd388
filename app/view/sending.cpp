#include "app/view/sending.h"

#include "app/view/text.h"
#include "app/words/book.h"
#include "app/words/format.h"
#include "core/book/cupboard.h"
#include "core/shop/countries.h"

#include <algorithm>
#include <set>

namespace stow::view {

namespace {

using shop::Dispatch;

QStringList lines_of(const QString& words)
{
    return words.split(QLatin1Char('\n'), Qt::SkipEmptyParts);
}

// "ES 35 to 35: Canary Islands, in customs area, not in tax area"
QString line_of(const shop::SpecialPlace& place)
{
    QString where = text(place.country);
    if (!place.postcode_from.empty()) where += QLatin1Char(' ') + text(place.postcode_from);
    if (place.postcode_to != place.postcode_from) where += QStringLiteral(" to ") + text(place.postcode_to);
    return QStringLiteral("%1: %2, customs %3, tax %4")
        .arg(where, text(place.name), place.in_customs_area ? QStringLiteral("yes") : QStringLiteral("no"),
             place.in_tax_area ? QStringLiteral("yes") : QStringLiteral("no"));
}

std::optional<shop::SpecialPlace> place_of_line(const QString& line)
{
    const QString where = line.section(QLatin1Char(':'), 0, 0).trimmed();
    QStringList said = line.section(QLatin1Char(':'), 1).split(QLatin1Char(','));
    if (said.size() < 3) return std::nullopt;
    const auto yes = [](const QString& words, const char* what) -> std::optional<bool> {
        const QString w = words.simplified();
        if (w == QLatin1String(what) + QStringLiteral(" yes")) return true;
        if (w == QLatin1String(what) + QStringLiteral(" no")) return false;
        return std::nullopt;
    };
    const auto tax = yes(said.takeLast(), "tax");
    const auto customs = yes(said.takeLast(), "customs");
    shop::SpecialPlace place;
    place.country = utf8(where.section(QLatin1Char(' '), 0, 0));
    const QString codes = where.section(QLatin1Char(' '), 1).trimmed();
    place.postcode_from = utf8(codes.section(QStringLiteral(" to "), 0, 0));
    place.postcode_to =
        codes.contains(QStringLiteral(" to ")) ? utf8(codes.section(QStringLiteral(" to "), 1)) : place.postcode_from;
    place.name = utf8(said.join(QLatin1Char(',')));
    if (!tax || !customs || !shop::is_country(place.country)) return std::nullopt;
    place.in_customs_area = *customs;
    place.in_tax_area = *tax;
    return place;
}

// The two lines above the columns: what stands between them, and in numbers.
const QString between = QStringLiteral("between columns");
const QString decimal = QStringLiteral("decimal mark");

// "reference = parcel", one a column; "kind = text: goods" for the same words in every row.
QString lines_of_file(const shop::OutFile& file)
{
    const QString mark = file.delimiter == '\t' ? QStringLiteral("tab") : QString(QLatin1Char(file.delimiter));
    QStringList lines{between + QStringLiteral(" = ") + mark,
                      decimal + QStringLiteral(" = ") + QLatin1Char(file.decimal_mark)};
    for (const shop::FileColumn& c : file.columns) {
        lines += text(c.heading) + QStringLiteral(" = ") + text(c.field) +
                 (c.field == "text" ? QStringLiteral(": ") + text(c.words) : QString());
    }
    return lines.join(QLatin1Char('\n'));
}

// A mark of one of these; nothing: it is none of them.
std::optional<char> mark_of(const QString& word, const QString& marks)
{
    if (word == QLatin1String("tab") && marks.contains(QLatin1Char('\t'))) return '\t';
    if (word.size() != 1 || !marks.contains(word)) return std::nullopt;
    return word.front().toLatin1();
}

tl::expected<shop::OutFile, QString> file_of_lines(const QString& words)
{
    shop::OutFile file;
    const auto& fields = shop::send_fields();
    for (const QString& line : lines_of(words)) {
        shop::FileColumn column;
        const QString heading = line.section(QStringLiteral(" = "), 0, 0);
        const QString what = line.section(QStringLiteral(" = "), 1).trimmed();
        if (heading == between || heading == decimal) {
            const auto mark = mark_of(what, heading == between ? QStringLiteral(",;|\t") : QStringLiteral(".,"));
            if (!mark) return tl::unexpected(SendingController::tr("“%1”: that mark cannot stand there").arg(line));
            (heading == between ? file.delimiter : file.decimal_mark) = *mark;
            continue;
        }
        column.heading = utf8(heading);
        column.field = utf8(what.section(QLatin1Char(':'), 0, 0));
        if (column.field == "text") column.words = utf8(what.section(QLatin1Char(':'), 1));
        if (std::find(fields.begin(), fields.end(), column.field) == fields.end()) {
            QStringList known;
            for (const std::string& field : fields) known += text(field);
            return tl::unexpected(
                SendingController::tr("“%1”: behind the = one of %2").arg(line, known.join(QStringLiteral(", "))));
        }
        file.columns.push_back(std::move(column));
    }
    return file;
}

// The file for this carrier or shop; one with the plain columns when there is none of its own.
shop::OutFile file_for(const std::vector<shop::OutFile>& files, const std::string& to,
                       const std::vector<shop::FileColumn>& plain)
{
    const auto found = std::find_if(files.begin(), files.end(), [&](const auto& f) { return f.to == to; });
    return found != files.end() ? *found : shop::OutFile{to, plain};
}

QString text_in(const Dispatch& settings, const std::string& language)
{
    const auto found = std::find_if(settings.texts.begin(), settings.texts.end(),
                                    [&](const auto& t) { return t.language == language; });
    return found != settings.texts.end() ? text(found->text) : QString();
}

} // namespace

SendingController::SendingController(Day& day, QObject* parent) : QObject(parent), day_(day) {}

void SendingController::refresh()
{
    const Dispatch settings = book::dispatch(day_.book());
    std::vector<SendingRow> rows;
    rows.push_back({QStringLiteral("text en"), tr("Message to buyers, in English"),
                    tr("with {name}, {order}, {number}, {carrier}, {service}, {arrives}, {workshop}"),
                    text_in(settings, "en")});
    rows.push_back({QStringLiteral("text de"), tr("Message to buyers, in German"), {}, text_in(settings, "de")});
    rows.push_back({QStringLiteral("text fr"), tr("Message to buyers, in French"), {}, text_in(settings, "fr")});
    rows.push_back({QStringLiteral("text it"), tr("Message to buyers, in Italian"), {}, text_in(settings, "it")});
    rows.push_back({QStringLiteral("text es"), tr("Message to buyers, in Spanish"), {}, text_in(settings, "es")});
    std::set<std::string> carriers, shops;
    for (const postage::RateSheet& sheet : day_.rate_sheets()) carriers.insert(sheet.carrier);
    for (const shop::HeldOrder& held : day_.orders()) shops.insert(held.order.key.shop);
    for (const std::string& carrier : carriers) {
        rows.push_back({QStringLiteral("carrier ") + text(carrier), tr("Send file for %1").arg(text(carrier)),
                        tr("one column a line: its heading = what stands in it"),
                        lines_of_file(file_for(settings.send_files, carrier, shop::plain_send_columns()))});
    }
    for (const std::string& shop : shops) {
        rows.push_back({QStringLiteral("shop ") + text(shop), tr("File back for %1").arg(text(shop)),
                        tr("one column a line: its heading = what stands in it"),
                        lines_of_file(file_for(settings.shop_files, shop, shop::plain_shop_columns()))});
    }
    QStringList stamps, places;
    for (const shop::Stamp& stamp : settings.stamps) {
        stamps += text(stamp.supply.text) + QStringLiteral(" = ") + words::money(stamp.face);
    }
    for (const shop::SpecialPlace& place : settings.customs.places) places += line_of(place);
    rows.push_back({QStringLiteral("stamps"), tr("Stamps"), tr("the code of a supply = its face value"),
                    stamps.join(QLatin1Char('\n'))});
    rows.push_back({QStringLiteral("cn22"), tr("CN 22 up to a value of"),
                    tr("an amount; “below” before it where the amount itself needs a CN 23"),
                    (settings.customs.limit_included ? QString() : QStringLiteral("below ")) +
                        words::money(settings.customs.cn22_up_to)});
    rows.push_back({QStringLiteral("places"), tr("Places in and out of the Union's customs and tax areas"),
                    tr("from memory, to be corrected by what your customs office says"),
                    places.join(QLatin1Char('\n'))});
    rows.push_back({QStringLiteral("numbers"), tr("Your numbers, asked for by the CN 23"),
                    tr("VAT, EORI and import scheme, one a line; on no slip"),
                    QStringList{text(settings.tax_numbers.vat), text(settings.tax_numbers.eori),
                                text(settings.tax_numbers.import_scheme)}
                        .join(QLatin1Char('\n'))});
    if (rows.size() == rows_.all().size()) { // in place, so that the focus stays
        for (std::size_t i = 0; i < rows.size(); ++i) {
            if (rows[i].words != rows_.all()[i].words || rows[i].key != rows_.all()[i].key) rows_.change(i, rows[i]);
        }
        return;
    }
    rows_.show(std::move(rows));
}

QString SendingController::set(const QString& key, const QString& typed)
{
    Dispatch settings = book::dispatch(day_.book());
    const Dispatch before = settings;
    if (key.startsWith(QLatin1String("text "))) {
        const std::string language = utf8(key.mid(5));
        const auto found = std::find_if(settings.texts.begin(), settings.texts.end(),
                                        [&](const auto& t) { return t.language == language; });
        if (found != settings.texts.end() && utf8(typed).empty())
            settings.texts.erase(found); // buyers there are written to in the first language
        else if (found != settings.texts.end())
            found->text = utf8(typed);
        else if (!utf8(typed).empty())
            settings.texts.push_back({language, utf8(typed)});
    } else if (key.startsWith(QLatin1String("carrier ")) || key.startsWith(QLatin1String("shop "))) {
        auto file = file_of_lines(typed);
        if (!file) return file.error();
        const bool carrier = key.startsWith(QLatin1String("carrier "));
        file->to = utf8(key.section(QLatin1Char(' '), 1));
        auto& files = carrier ? settings.send_files : settings.shop_files;
        const auto& plain = carrier ? shop::plain_send_columns() : shop::plain_shop_columns();
        if (*file != file_for(files, file->to, plain)) {
            files.erase(std::remove_if(files.begin(), files.end(), [&](const auto& f) { return f.to == file->to; }),
                        files.end());
            files.push_back(*std::move(file));
        }
    } else if (key == QLatin1String("stamps")) {
        settings.stamps.clear();
        for (const QString& line : lines_of(typed)) {
            const shop::SupplyCode code{utf8(line.section(QLatin1Char('='), 0, 0))};
            const auto face = typed_money(line.section(QLatin1Char('='), 1), day_.cupboard().house.currency);
            if (day_.cupboard().supply(code) == nullptr) return tr("“%1” is not a supply").arg(text(code.text));
            if (!face) return tr("“%1”: a code = a face value").arg(line);
            settings.stamps.push_back({code, *face});
        }
    } else if (key == QLatin1String("cn22")) {
        QString amount = typed.trimmed();
        settings.customs.limit_included = !amount.startsWith(QLatin1String("below "));
        if (!settings.customs.limit_included) amount = amount.mid(6);
        const auto money = typed_money(amount, day_.cupboard().house.currency);
        if (!money) return tr("“%1” is not an amount").arg(amount);
        settings.customs.cn22_up_to = *money;
    } else if (key == QLatin1String("places")) {
        settings.customs.places.clear();
        for (const QString& line : lines_of(typed)) {
            const auto place = place_of_line(line);
            if (!place) return tr("“%1”: as in ES 35: Canary Islands, customs yes, tax no").arg(line);
            settings.customs.places.push_back(*place);
        }
    } else if (key == QLatin1String("numbers")) {
        const QStringList lines = typed.split(QLatin1Char('\n'));
        settings.tax_numbers = {utf8(lines.value(0)), utf8(lines.value(1)), utf8(lines.value(2))};
    }
    if (settings == before) return {};
    if (const auto done = book::put_dispatch(day_.book(), settings); !done) return words::refused(done.error());
    emit said(tr("Kept"));
    day_.moved();
    return {};
}

} // namespace stow::view
