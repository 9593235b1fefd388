#include "app/day_papers.h"
#include "app/paper_keys.h"
#include "app/view/cupboard.h"
#include "app/view/paper_ways.h"
#include "app/view/text.h"
#include "app/words/book.h"
#include "app/words/format.h"
#include "app/words/measures.h"
#include "app/words/translations.h"
#include "core/book/cupboard.h"
#include "core/book/settings.h"
#include "core/intake/country_names.h"

#include <QCoreApplication>
#include <QFile>

namespace stow::view {

namespace {

const QString language = QString::fromLatin1(words::remembered_language);
constexpr const char* sounds = "screen.sounds";
const QString next_place = QStringLiteral("next label");
const QString printer_of = QStringLiteral("printer of ");

// Every setting: how it is shown, and how what is typed is kept. False: not understood.
struct Setting {
    const char* key;
    QString name, unit, more;
    QString (*shown)(const shop::House&);
    bool (*keep)(shop::House&, const QString&);
};

template <auto Member>
bool keep_whole(shop::House& house, const QString& typed, int least, int most)
{
    bool whole = false;
    const int value = typed.trimmed().toInt(&whole);
    if (!whole || value < least || value > most) return false;
    house.*Member = value;
    return true;
}

template <auto Member>
QString shown_code(const shop::House& house)
{
    return text((house.*Member).text);
}

template <auto Member>
bool keep_code(shop::House& house, const QString& typed) // whether there is such a supply is asked of the whole house
{
    house.*Member = {utf8(typed)};
    return true;
}

template <auto Member>
bool keep_length(shop::House& house, const QString& typed)
{
    if (typed.trimmed() == QLatin1String("0")) {
        house.*Member = Length{};
        return true;
    }
    const auto length = typed_length(typed);
    if (length) house.*Member = *length;
    return length.has_value();
}

std::optional<bool> yes_or_no(const QString& typed)
{
    const QString word = typed.trimmed().toLower();
    if (word == HouseController::tr("yes")) return true;
    return word == HouseController::tr("no") ? std::optional(false) : std::nullopt;
}

std::vector<Setting> settings()
{
    using shop::House;
    return {
        {"name",
         HouseController::tr("Name of the workshop"),
         {},
         HouseController::tr("sender on labels and lists"),
         [](const House& h) { return text(h.address.name); },
         [](House& h, const QString& t) {
             h.address.name = utf8(t);
             return !h.address.name.empty();
         }},
        {"street",
         HouseController::tr("House and street"),
         {},
         {},
         [](const House& h) { return h.address.street.empty() ? QString() : text(h.address.street.front()); },
         [](House& h, const QString& t) {
             h.address.street = {utf8(t)};
             return true;
         }},
        {"postcode",
         HouseController::tr("Postcode"),
         {},
         {},
         [](const House& h) { return text(h.address.postcode); },
         [](House& h, const QString& t) {
             h.address.postcode = utf8(t);
             return true;
         }},
        {"town",
         HouseController::tr("Town"),
         {},
         {},
         [](const House& h) { return text(h.address.town); },
         [](House& h, const QString& t) {
             h.address.town = utf8(t);
             return true;
         }},
        {"country",
         HouseController::tr("Country"),
         {},
         HouseController::tr("its name, or two letters such as DE or NO"),
         [](const House& h) { return text(h.address.country); },
         [](House& h, const QString& t) {
             const auto code = intake::CountryNames().code(utf8(t));
             if (code) h.address.country = *code;
             return code.has_value();
         }},
        {"contact",
         HouseController::tr("Contact"),
         {},
         HouseController::tr("telephone or e-mail, on slips"),
         [](const House& h) { return text(h.contact); },
         [](House& h, const QString& t) {
             h.contact = utf8(t);
             return true;
         }},
        {"currency",
         HouseController::tr("Currency"),
         {},
         HouseController::tr("three letters, such as EUR"),
         [](const House& h) { return text(h.currency.code()); },
         [](House& h, const QString& t) {
             const auto currency = Currency::from(utf8(t.toUpper()));
             if (currency) h.currency = *currency;
             return currency.has_value();
         }},
        {"trays",
         HouseController::tr("Picking trays"),
         {},
         HouseController::tr("one an order in a round"),
         [](const House& h) { return QString::number(h.trays); },
         [](House& h, const QString& t) { return keep_whole<&House::trays>(h, t, 1, 99); }},
        {"ease", HouseController::tr("Ease for hands"), HouseController::tr("mm"),
         HouseController::tr("kept free in every outer"), [](const House& h) { return number(in_mm(h.ease)); },
         [](House& h, const QString& t) { return keep_length<&House::ease>(h, t); }},
        {"lining", HouseController::tr("Lining"), HouseController::tr("mm"),
         HouseController::tr("least kept free along the walls"), [](const House& h) { return number(in_mm(h.lining)); },
         [](House& h, const QString& t) { return keep_length<&House::lining>(h, t); }},
        {"bulge", HouseController::tr("Bulge when closed"), HouseController::tr("mm"),
         HouseController::tr("added before the carrier's limits are checked"),
         [](const House& h) { return number(in_mm(h.bulge)); },
         [](House& h, const QString& t) { return keep_length<&House::bulge>(h, t); }},
        {"filler",
         HouseController::tr("Filler"),
         {},
         HouseController::tr("the code of the supply that fills what is empty"),
         shown_code<&House::filler>,
         keep_code<&House::filler>},
        {"tape",
         HouseController::tr("Tape"),
         {},
         HouseController::tr("the code of the supply that closes cartons"),
         shown_code<&House::tape>,
         keep_code<&House::tape>},
        {"label",
         HouseController::tr("Label"),
         {},
         HouseController::tr("the code of the supply that is used up with each label; empty: none"),
         shown_code<&House::label>,
         keep_code<&House::label>},
        {"overfill", HouseController::tr("Filler over the empty space"), HouseController::tr("%"),
         HouseController::tr("filler settles"), [](const House& h) { return QString::number(h.overfill_percent); },
         [](House& h, const QString& t) { return keep_whole<&House::overfill_percent>(h, t, 0, 100); }},
        {"heavy", HouseController::tr("Heavy from"), HouseController::tr("g"),
         HouseController::tr("the bench warns from here"), [](const House& h) { return number(in_grams(h.heavy)); },
         [](House& h, const QString& t) {
             const auto weight = typed_weight(t);
             if (weight) h.heavy = *weight;
             return weight.has_value();
         }},
        {"scale", HouseController::tr("Step of the scale"), HouseController::tr("g"),
         HouseController::tr("what it shows in"), [](const House& h) { return number(in_grams(h.scale_step)); },
         [](House& h, const QString& t) {
             const auto weight = typed_weight(t);
             if (weight) h.scale_step = *weight;
             return weight.has_value();
         }},
        {"cut", HouseController::tr("Cutting a carton down"), HouseController::tr("min"),
         HouseController::tr("to score it lower and cut it"),
         [](const House& h) { return QString::number(h.cut_minutes); },
         [](House& h, const QString& t) { return keep_whole<&House::cut_minutes>(h, t, 0, 120); }},
        {"hour",
         HouseController::tr("An hour of your time"),
         {},
         HouseController::tr("counts when the cheapest way is sought; 0: it does not"),
         [](const House& h) { return words::money(h.hour); },
         [](House& h, const QString& t) {
             const auto hour = typed_money(t, h.currency);
             if (hour && hour->minor >= 0) h.hour = *hour;
             return hour && hour->minor >= 0;
         }},
        {"service", HouseController::tr("Not to run out of a supply"), HouseController::tr("%"),
         HouseController::tr("the chance of it while an order is on its way: the higher, the earlier to reorder"),
         [](const House& h) { return QString::number(h.service_percent); },
         [](House& h, const QString& t) { return keep_whole<&House::service_percent>(h, t, 50, 99); }},
        {"forget", HouseController::tr("Forget buyers after"), HouseController::tr("months"),
         HouseController::tr("0: never. Names and addresses are erased, counts and costs stay; tax law may ask for "
                             "invoices to be kept, elsewhere"),
         [](const House& h) { return QString::number(h.forget_months); },
         [](House& h, const QString& t) { return keep_whole<&House::forget_months>(h, t, 0, 240); }},
        {"paper",
         HouseController::tr("Sheets of paper"),
         {},
         HouseController::tr("a4 or letter"),
         [](const House& h) { return text(shop::name_of(h.paper)); },
         [](House& h, const QString& t) {
             const auto size = shop::paper_size(utf8(t.toLower()));
             if (size) h.paper = *size;
             return size.has_value();
         }},
        {"margin", HouseController::tr("Margin of sheets"), HouseController::tr("mm"),
         HouseController::tr("left and right, 8 to 40"), [](const House& h) { return number(in_mm(h.margin)); },
         [](House& h, const QString& t) {
             const auto margin = typed_length(t);
             if (!margin || *margin < shop::least_margin || *margin > shop::most_margin) return false;
             h.margin = *margin;
             return true;
         }},
        {"labels",
         HouseController::tr("Address labels"),
         {},
         HouseController::tr("100x150, a6, 62 (a roll), a4x4 or a4x6 (so many on a sheet)"),
         [](const House& h) { return text(shop::name_of(h.label_form)); },
         [](House& h, const QString& t) {
             const auto form = shop::label_form(utf8(t.trimmed().toLower()));
             if (form) h.label_form = *form;
             return form.has_value();
         }},
        {"logo",
         HouseController::tr("Logo on slips"),
         {},
         HouseController::tr("a picture file; empty: none"),
         [](const House& h) { return text(h.logo); },
         [](House& h, const QString& t) {
             const bool there = t.trimmed().isEmpty() || QFile::exists(t.trimmed());
             if (there) h.logo = utf8(t.trimmed());
             return there;
         }},
        {"black",
         HouseController::tr("Papers in black only"),
         {},
         HouseController::tr("yes or no: no colours and no tints, for a laser printer"),
         [](const House& h) { return h.black_only ? HouseController::tr("yes") : HouseController::tr("no"); },
         [](House& h, const QString& t) {
             const auto wanted = yes_or_no(t);
             if (wanted) h.black_only = *wanted;
             return wanted.has_value();
         }},
        {"batch", HouseController::tr("Batches differ by"), HouseController::tr("%"),
         HouseController::tr("a whole batch a little heavier or lighter"),
         [](const House& h) { return QString::number(h.batch_percent); },
         [](House& h, const QString& t) { return keep_whole<&House::batch_percent>(h, t, 0, 50); }},
        {"humidity", HouseController::tr("Board and paper differ by"), HouseController::tr("%"),
         HouseController::tr("with the damp"), [](const House& h) { return QString::number(h.humidity_percent); },
         [](House& h, const QString& t) { return keep_whole<&House::humidity_percent>(h, t, 0, 50); }},
    };
}

// What fills, tapes and labels must be there, and be of that kind.
QString unknown_supply(const shop::Cupboard& cupboard, const shop::House& house)
{
    using Kind = shop::SupplyKind;
    for (const auto& [code, kind] : {std::pair(house.filler, Kind::filler), std::pair(house.tape, Kind::tape),
                                     std::pair(house.label, Kind::label)}) {
        if (code.empty()) continue;
        const shop::Supply* supply = cupboard.supply(code);
        if (supply == nullptr) return HouseController::tr("there is no supply with the code %1").arg(text(code.text));
        if (supply->kind != kind)
            return HouseController::tr("%1 is not of the kind “%2”").arg(text(code.text), supply_kind_name(kind));
    }
    return {};
}

} // namespace

bool sounds_wanted(const Day& day)
{
    return book::remembered(day.book(), sounds) != "no";
}

HouseController::HouseController(Day& day, QObject* parent) : QObject(parent), day_(day), rules_(day), wrappings_(day)
{
    connect(&rules_, &TypedTable::said, this, &HouseController::said);
    connect(&wrappings_, &TypedTable::said, this, &HouseController::said);
}

void HouseController::refresh()
{
    std::vector<HouseField> rows;
    for (const Setting& setting : settings()) {
        rows.push_back({QString::fromLatin1(setting.key), setting.name, setting.shown(day_.cupboard().house),
                        setting.unit, setting.more});
    }
    rows.push_back({language,
                    tr("Language of the program"),
                    text(book::remembered(day_.book(), words::remembered_language).value_or(std::string())),
                    {},
                    tr("%1; empty: the system's. From the next start on").arg(words::languages().join(tr(" or ")))});
    const bool metric = words::measures_in_use() == words::Measures::metric;
    rows.push_back({QString::fromLatin1(words::remembered_measures),
                    tr("Units on the screen"),
                    metric ? tr("metric") : tr("inches"),
                    {},
                    tr("metric, or inches (with ounces). In fields of mm and g, 3.5 in and 12 oz are understood "
                       "either way; papers stay metric")});
    rows.push_back({QString::fromLatin1(sounds),
                    tr("Tones at the bench"),
                    sounds_wanted(day_) ? tr("yes") : tr("no"),
                    {},
                    tr("yes or no: a high one for right, two low ones for wrong")});
    rows.push_back({next_place,
                    tr("Next label on the sheet"),
                    QString::number(next_label(day_)),
                    {},
                    tr("where labels begin on a begun sheet of a4x4 or a4x6; counted on as they are printed")});
    for (const PrintedPaper& paper : printed_papers()) {
        const QString key = QString::fromLatin1(paper.key);
        rows.push_back({printer_of + key,
                        tr("Printer: %1").arg(paper.name),
                        typed_way(day_, key),
                        {},
                        tr("its name, paper, tray; empty: only as a file")});
    }
    if (rows.size() == fields_.all().size()) { // in place, so that the focus stays
        for (std::size_t i = 0; i < rows.size(); ++i) {
            if (rows[i].value != fields_.all()[i].value) fields_.change(i, rows[i]);
        }
        return;
    }
    fields_.show(std::move(rows));
}

QString HouseController::set(const QString& key, const QString& typed)
{
    if (key == language) {
        const QString wanted = typed.trimmed().toLower();
        if (!wanted.isEmpty() && !words::languages().contains(wanted)) return tr("“%1” will not do").arg(typed);
        book::remember(day_.book(), words::remembered_language, utf8(wanted));
        refresh();
        return {};
    }
    if (key == QLatin1String(words::remembered_measures)) {
        const QString word = typed.trimmed().toLower();
        using words::Measures;
        const auto wanted = word == tr("metric")   ? std::optional(Measures::metric)
                            : word == tr("inches") ? std::optional(Measures::inches_and_ounces)
                                                   : std::nullopt;
        if (!wanted) return tr("“%1” will not do").arg(typed);
        book::remember(day_.book(), words::remembered_measures, std::string(words::name_of(*wanted)));
        words::use_measures(*QCoreApplication::instance(), *wanted);
        day_.moved();
        return {};
    }
    if (key == QLatin1String(sounds)) {
        const auto wanted = yes_or_no(typed);
        if (!wanted) return tr("“%1” will not do").arg(typed);
        book::remember(day_.book(), sounds, *wanted ? "yes" : "no");
        refresh();
        return {};
    }
    if (key == next_place) {
        bool whole = false;
        const int wanted = typed.trimmed().toInt(&whole);
        if (!whole || wanted < 1) return tr("“%1” will not do").arg(typed);
        use_labels(day_, wanted - next_label(day_) + 24); // 24: divided by 4 and by 6, so that none is below 0
        refresh();
        return {};
    }
    if (key.startsWith(printer_of)) {
        set_way(day_, key.mid(printer_of.size()), typed);
        refresh();
        return {};
    }
    for (const Setting& setting : settings()) {
        if (key != QLatin1String(setting.key)) continue;
        shop::House house = day_.cupboard().house;
        if (!setting.keep(house, typed)) return tr("“%1” will not do").arg(typed);
        if (house == day_.cupboard().house) return {};
        if (const QString unknown = unknown_supply(day_.cupboard(), house); !unknown.isEmpty()) return unknown;
        if (const auto done = book::put_house(day_.book(), house); !done) return words::refused(done.error());
        emit said(tr("%1: %2").arg(setting.name, typed));
        day_.moved();
        return {};
    }
    return {};
}

DraftPaper HouseController::draft()
{
    return {name_of_paper(text(paper_key::command_cards)), command_cards(day_), &painting::black_only(), tr("Print"),
            [this] { printCommandCards(); }};
}

void HouseController::printCommandCards()
{
    const auto file = write_command_cards(day_, paper_folder(day_));
    emit said(file ? tr("The command cards lie in %1").arg(text(file->string())) : tr("The file cannot be written."));
    if (file) emit written(text(paper_key::command_cards), text(file->string()));
}

// The shelves as the window names them, from the first.
bool CupboardController::hasPapers() const
{
    return shelf_ == 0 || shelf_ == 1 || shelf_ == 3 || shelf_ == 4;
}

std::vector<DraftPaper> CupboardController::drafts()
{
    switch (shelf_) {
    case 0: return {goods_.draft()};
    case 1:
        if (paper_boxes_.open()) return paper_boxes_.drafts(); // it lies over the shelf
        return {supplies_.draft()};
    case 3: return {records_.draft()};
    case 4: return {house_.draft()};
    default: return {};
    }
}

CupboardController::CupboardController(Day& day, QObject* parent)
    : QObject(parent), goods_(day), supplies_(day), rates_(day), records_(day), house_(day), sending_(day),
      before_sale_(day), sizes_(day), paper_boxes_(day), supply_card_(day)
{
}

void CupboardController::refresh()
{
    goods_.refresh();
    supplies_.refresh();
    rates_.refresh();
    records_.refresh();
    house_.refresh();
    sending_.refresh();
    before_sale_.refresh();
    paper_boxes_.refresh();
}

} // namespace stow::view
