#include "app/view/supply_card.h"

#include "app/view/text.h"
#include "app/words/book.h"
#include "app/words/format.h"
#include "app/words/reasons.h"
#include "core/book/cupboard.h"
#include "core/intake/supplies_csv.h"

#include <QLocale>

#include <algorithm>
#include <array>

namespace stow::view {

namespace {

using shop::SupplyKind;

struct Kind {
    SupplyKind kind;
    std::optional<OuterKind> outer;
    const char* unit; // what it usually is counted in
};
constexpr std::array all_kinds{Kind{SupplyKind::outer, OuterKind::carton, "piece"},
                               Kind{SupplyKind::outer, OuterKind::gift_box, "piece"},
                               Kind{SupplyKind::outer, OuterKind::mailer, "piece"},
                               Kind{SupplyKind::outer, OuterKind::padded_mailer, "piece"},
                               Kind{SupplyKind::outer, OuterKind::board_mailer, "piece"},
                               Kind{SupplyKind::outer, OuterKind::tube, "piece"},
                               Kind{SupplyKind::wrap, std::nullopt, "m"},
                               Kind{SupplyKind::filler, std::nullopt, "litre"},
                               Kind{SupplyKind::tape, std::nullopt, "m"},
                               Kind{SupplyKind::label, std::nullopt, "piece"},
                               Kind{SupplyKind::insert, std::nullopt, "piece"},
                               Kind{SupplyKind::ribbon, std::nullopt, "m"},
                               Kind{SupplyKind::paper, std::nullopt, "piece"}};
const Kind& kind_at(int index)
{
    return all_kinds.at(static_cast<std::size_t>(std::clamp(index, 0, static_cast<int>(all_kinds.size()) - 1)));
}

constexpr std::array units{shop::Unit::piece, shop::Unit::litre, shop::Unit::metre, shop::Unit::kilogram};

QStringList unit_words()
{
    return {SupplyCard::tr("piece"), SupplyCard::tr("litre"), SupplyCard::tr("metre"), SupplyCard::tr("kilogram")};
}

QStringList material_words()
{
    QStringList words;
    for (const shop::Material material : shop::all_materials) words += material_name(material);
    return words;
}

// The columns that say something of this kind.
std::vector<SupplyField> fields_of(const Kind& kind)
{
    std::vector<SupplyField> fields;
    const QString mm = SupplyCard::tr("mm");
    const auto add = [&](const char* key, const QString& label, const QString& unit = {}) -> SupplyField& {
        SupplyField field;
        field.key = QString::fromLatin1(key);
        field.label = label;
        field.unit = unit;
        fields.push_back(field);
        return fields.back();
    };
    const auto three = [&](const char* l, const QString& length, const char* w, const QString& width, const char* h,
                           const QString& height) {
        add(l, length, mm);
        add(w, width, mm);
        add(h, height, mm);
    };
    add("code", SupplyCard::tr("Code"));
    add("name", SupplyCard::tr("Name")).wide = true;
    const auto outside = [&](const QString& height) {
        three("outer_length_mm", SupplyCard::tr("Outer length"), "outer_width_mm", SupplyCard::tr("Outer width"),
              "outer_height_mm", height);
    };
    if (kind.outer == OuterKind::tube) {
        add("inner_diameter_mm", SupplyCard::tr("Inner diameter"), mm);
        add("inner_length_mm", SupplyCard::tr("Inner length"), mm);
        add("max_load_g", SupplyCard::tr("Holds at most"), SupplyCard::tr("g"));
        add("outer_diameter_mm", SupplyCard::tr("Outer diameter"), mm);
        add("outer_length_mm", SupplyCard::tr("Outer length"), mm);
    } else if (kind.outer && is_sleeve(*kind.outer)) {
        add("inner_length_mm", SupplyCard::tr("Length to the fold"), mm);
        add("inner_width_mm", SupplyCard::tr("Inner width"), mm);
        add("wall_mm", SupplyCard::tr("One wall"), mm);
        outside(SupplyCard::tr("Thickness, empty"));
        add("max_load_g", SupplyCard::tr("Holds at most"), SupplyCard::tr("g"));
    } else if (kind.outer) {
        const bool board = kind.outer == OuterKind::board_mailer;
        three("inner_length_mm", SupplyCard::tr("Inner length"), "inner_width_mm", SupplyCard::tr("Inner width"),
              "inner_height_mm", board ? SupplyCard::tr("Thickest load") : SupplyCard::tr("Inner height"));
        outside(board ? SupplyCard::tr("Thickness, empty") : SupplyCard::tr("Outer height"));
        add("max_load_g", SupplyCard::tr("Holds at most"), SupplyCard::tr("g"));
    } else {
        if (kind.kind == SupplyKind::insert || kind.kind == SupplyKind::paper) {
            three("sheet_length_mm", SupplyCard::tr("Length"), "sheet_width_mm", SupplyCard::tr("Width"),
                  "sheet_thickness_mm", SupplyCard::tr("Thickness"));
        }
        add("unit", SupplyCard::tr("Counted in")).options = unit_words();
    }
    add("weight_g", kind.outer ? SupplyCard::tr("Weight, empty") : SupplyCard::tr("Weight of one"),
        SupplyCard::tr("g"));
    add("material", SupplyCard::tr("Material")).options = material_words();
    add("cost", SupplyCard::tr("Cost of one"));
    add("on_hand", SupplyCard::tr("There now"));
    add("reorder_at", SupplyCard::tr("Reorder at"));
    add("pack", SupplyCard::tr("Bought by"));
    add("supplier", SupplyCard::tr("Supplier")).wide = true;
    add("lead_days", SupplyCard::tr("Comes in"), SupplyCard::tr("days"));
    return fields;
}

QString mm_of(Length length)
{
    return length > Length{} ? number(in_mm(length)) : QString();
}

QString amount_of(shop::Amount amount)
{
    return number(static_cast<double>(amount.thousandths) / 1000);
}

std::map<std::string, QString> typed_of(const shop::Supply& supply)
{
    std::map<std::string, QString> typed{{"code", text(supply.code.text)},
                                         {"name", text(supply.name)},
                                         {"unit", text(shop::name_of(supply.unit))},
                                         {"weight_g", number(in_grams(supply.weight.mean))},
                                         {"material", text(shop::name_of(supply.material))},
                                         {"cost", words::money(supply.cost)},
                                         {"pack", amount_of(supply.pack)},
                                         {"supplier", text(supply.supplier)},
                                         {"lead_days", QString::number(supply.lead_days)},
                                         {"reorder_at", amount_of(supply.reorder_at)}};
    if (supply.max_load) typed["max_load_g"] = number(in_grams(*supply.max_load));
    if (supply.sheet) {
        typed["sheet_length_mm"] = mm_of(supply.sheet->length);
        typed["sheet_width_mm"] = mm_of(supply.sheet->width);
        typed["sheet_thickness_mm"] = mm_of(supply.sheet->thickness);
    }
    if (!supply.form) return typed;
    const OuterForm& form = *supply.form;
    if (form.kind == OuterKind::tube) {
        typed["inner_diameter_mm"] = mm_of(form.inner.x);
        typed["inner_length_mm"] = mm_of(form.inner.z);
        typed["outer_diameter_mm"] = mm_of(form.outer.x);
        typed["outer_length_mm"] = mm_of(form.outer.z);
        return typed;
    }
    typed["inner_length_mm"] = mm_of(form.inner.x);
    typed["inner_width_mm"] = mm_of(form.inner.y);
    typed["inner_height_mm"] = mm_of(form.inner.z);
    typed["outer_length_mm"] = mm_of(form.outer.x);
    typed["outer_width_mm"] = mm_of(form.outer.y);
    typed["outer_height_mm"] = mm_of(form.outer.z);
    typed["wall_mm"] = mm_of(form.wall);
    return typed;
}

// As a file of one row, so that what is typed is judged as what is taken in.
intake::Csv table_of(const Kind& kind, const std::map<std::string, QString>& typed)
{
    intake::Csv csv;
    csv.decimal_mark = decimal_mark();
    csv.headings = {"kind", "outer_kind"};
    intake::CsvRow row{
        2, {std::string(shop::name_of(kind.kind)), kind.outer ? std::string(name_of(*kind.outer)) : std::string()}};
    for (const SupplyField& field : fields_of(kind)) {
        const std::string column = field.key.toStdString();
        const auto found = typed.find(column);
        csv.headings.push_back(column);
        row.cells.push_back(found != typed.end() ? as_in_a_file(found->second, csv.decimal_mark) : std::string());
    }
    csv.rows.push_back(std::move(row));
    return csv;
}

// What the card does not show stays as it was.
void keep_the_rest(shop::Supply& supply, const shop::Supply& before)
{
    supply.on_hand = before.on_hand;
    supply.minutes = before.minutes;
    supply.made_from = before.made_from;
    supply.takes = before.takes;
    supply.reused = before.reused;
    supply.folded = before.folded;
    if (supply.sheet && before.sheet) supply.sheet->least_roll = before.sheet->least_roll;
    if (supply.weight.mean == before.weight.mean) supply.weight = before.weight;
    if (!supply.form || !before.form || supply.form->kind != before.form->kind) return;
    supply.form->cut_heights = before.form->cut_heights;
    std::erase_if(supply.form->cut_heights, [&](Length height) { return height >= supply.form->inner.z; });
    if (is_sleeve(supply.form->kind))
        supply.form->ease = before.form->ease;
    else
        supply.form->wall = before.form->wall;
}

} // namespace

SupplyCard::SupplyCard(Day& day, QObject* parent) : QObject(parent), day_(day)
{
    begin();
}

QStringList SupplyCard::kinds() const
{
    QStringList words;
    for (const Kind& kind : all_kinds) words += kind.outer ? kind_name(*kind.outer) : supply_kind_name(kind.kind);
    return words;
}

void SupplyCard::setKind(int kind)
{
    kind_ = kind;
    if (fresh_) typed_["unit"] = QString::fromLatin1(kind_at(kind).unit);
    faults_.clear();
    show();
}

void SupplyCard::begin()
{
    fresh_ = true;
    title_ = tr("New supply");
    typed_.clear();
    setKind(0);
}

void SupplyCard::change(const QString& code)
{
    const shop::Supply* supply = day_.cupboard().supply({utf8(code)});
    if (supply == nullptr) return;
    fresh_ = false;
    title_ = text(supply->name);
    typed_ = typed_of(*supply);
    const auto is = [&](const Kind& kind) {
        return kind.kind == supply->kind &&
               (supply->form ? kind.outer == std::optional(supply->form->kind) : !kind.outer);
    };
    setKind(static_cast<int>(std::find_if(all_kinds.begin(), all_kinds.end(), is) - all_kinds.begin()));
}

void SupplyCard::show()
{
    std::vector<SupplyField> fields = fields_of(kind_at(kind_));
    // How many there are is counted in a step of its own.
    if (!fresh_) std::erase_if(fields, [](const SupplyField& f) { return f.key == QLatin1String("on_hand"); });
    for (SupplyField& field : fields) {
        const std::string key = field.key.toStdString();
        if (const auto found = typed_.find(key); found != typed_.end()) field.typed = found->second;
        if (const auto found = faults_.find(key); found != faults_.end()) field.fault = found->second;
        const auto place = [&](const auto& all) {
            const auto found =
                std::find_if(all.begin(), all.end(), [&](auto one) { return text(shop::name_of(one)) == field.typed; });
            return found != all.end() ? static_cast<int>(found - all.begin()) : 0;
        };
        if (field.key == QLatin1String("unit")) field.chosen = place(units);
        if (field.key == QLatin1String("material")) field.chosen = place(shop::all_materials);
        field.fixed = !fresh_ && field.key == QLatin1String("code");
    }
    fields_.show(std::move(fields));
    emit changed();
}

void SupplyCard::set(const QString& key, const QString& typed)
{
    typed_[key.toStdString()] = typed;
}

void SupplyCard::choose(const QString& key, int option)
{
    const auto at = static_cast<std::size_t>(std::max(0, option));
    const bool unit = key == QLatin1String("unit");
    set(key, text(unit ? shop::name_of(units.at(at)) : shop::name_of(shop::all_materials.at(at))));
}

bool SupplyCard::keep()
{
    faults_.clear();
    const Kind& kind = kind_at(kind_);
    const auto taken = intake::read_supplies(table_of(kind, typed_), day_.cupboard().house.currency);
    for (const intake::Problem& problem : taken.problems) {
        faults_.emplace(problem.column, words::what_is_wrong(problem));
    }
    const shop::Supply* known = taken.rows.empty() ? nullptr : day_.cupboard().supply(taken.rows.front().code);
    if (fresh_ && known != nullptr) faults_.emplace("code", tr("there is a supply of this code already"));
    if (taken.rows.empty() || !faults_.empty()) {
        show();
        return false;
    }
    shop::Supply supply = taken.rows.front();
    if (known != nullptr) keep_the_rest(supply, *known);
    if (const auto done = book::put_supply(day_.book(), supply); !done) {
        faults_.emplace("code", words::refused(done.error()));
        show();
        return false;
    }
    emit said(tr("%1 is kept").arg(text(supply.code.text)));
    if (const auto done = book::use_where_none_is(day_.book(), {supply}); !done)
        emit said(words::refused(done.error()));
    day_.moved();
    return true;
}

} // namespace stow::view
