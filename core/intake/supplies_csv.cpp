#include "core/intake/supplies_csv.h"

#include "core/intake/estimate.h"
#include "core/intake/table.h"
#include "core/intake/text_encoding.h"
#include "core/measure/decimal.h"

#include <set>

namespace stow::intake {

namespace {

using shop::SupplyKind;

const Columns& columns()
{
    static const Columns columns{{"code", "name", "kind", "weight_g"},
                                 {"unit",
                                  "outer_kind",
                                  "inner_length_mm",
                                  "inner_width_mm",
                                  "inner_height_mm",
                                  "inner_diameter_mm",
                                  "outer_length_mm",
                                  "outer_width_mm",
                                  "outer_height_mm",
                                  "outer_diameter_mm",
                                  "ease_length_mm",
                                  "ease_width_mm",
                                  "wall_mm",
                                  "cut_heights_mm",
                                  "max_load_g",
                                  "sheet_length_mm",
                                  "sheet_width_mm",
                                  "sheet_thickness_mm",
                                  "folded_length_mm",
                                  "folded_width_mm",
                                  "folded_thickness_mm",
                                  "least_roll_mm",
                                  "spread_g",
                                  "material",
                                  "cost",
                                  "currency",
                                  "pack",
                                  "supplier",
                                  "lead_days",
                                  "on_hand",
                                  "reorder_at",
                                  "minutes",
                                  "made_from",
                                  "takes",
                                  "reused"}};
    return columns;
}

Length inside(Row& row, std::string_view column)
{
    return row.needed_length(column, Rounding::down);
}

// The outside must be at least as large as the inside, or a column was mistaken for another.
void check_walls(Row& row, Length inner, Length outer, std::string_view column)
{
    if (row.sound() && outer < inner)
        row.note(ProblemKind::out_of_range, column, "≥ " + unscaled(inner.units, 1) + " mm");
}

void read_cut_heights(Row& row, OuterForm& form, char decimal_mark)
{
    std::string text = row.text("cut_heights_mm");
    std::string_view rest = trimmed(text);
    while (!rest.empty()) {
        const auto end = rest.find(' ');
        const auto plain = plain_number(rest.substr(0, end), decimal_mark);
        const auto height = plain ? scaled(*plain, 1, Rounding::down) : std::nullopt;
        if (!height) {
            row.note(ProblemKind::not_a_number, "cut_heights_mm");
            return;
        }
        if (*height <= 0 || *height >= form.inner.z.units) {
            row.note(ProblemKind::out_of_range, "cut_heights_mm", "< " + unscaled(form.inner.z.units, 1) + " mm");
            return;
        }
        form.cut_heights.push_back({*height});
        rest = end == std::string_view::npos ? std::string_view{} : trimmed(rest.substr(end));
    }
    std::sort(form.cut_heights.rbegin(), form.cut_heights.rend());
}

OuterForm read_form(Row& row, OuterKind kind, char decimal_mark)
{
    OuterForm form;
    form.kind = kind;
    if (kind == OuterKind::tube) {
        const Length inner = inside(row, "inner_diameter_mm"), outer = row.needed_length("outer_diameter_mm");
        form.inner = {inner, inner, inside(row, "inner_length_mm")};
        form.outer = {outer, outer, row.needed_length("outer_length_mm")};
        check_walls(row, inner, outer, "outer_diameter_mm");
        check_walls(row, form.inner.z, form.outer.z, "outer_length_mm");
        return form;
    }
    form.inner = {inside(row, "inner_length_mm"), inside(row, "inner_width_mm"), Length{}};
    form.outer = {row.needed_length("outer_length_mm"), row.needed_length("outer_width_mm"),
                  row.needed_length("outer_height_mm")};
    check_walls(row, form.inner.x, form.outer.x, "outer_length_mm");
    check_walls(row, form.inner.y, form.outer.y, "outer_width_mm");
    form.wall = row.length("wall_mm", slack_range).value_or(Length{});
    form.ease = {row.length("ease_length_mm", slack_range).value_or(Length{}),
                 row.length("ease_width_mm", slack_range).value_or(Length{})};
    if (is_sleeve(kind)) return form;
    form.inner.z = inside(row, "inner_height_mm");
    if (kind == OuterKind::board_mailer) return form; // its empty thickness says nothing about the full one
    check_walls(row, form.inner.z, form.outer.z, "outer_height_mm");
    if (kind == OuterKind::carton) read_cut_heights(row, form, decimal_mark);
    return form;
}

std::optional<Sheet> read_sheet(Row& row, const char* length, const char* width, const char* thickness)
{
    if (row.blank(length) && row.blank(width) && row.blank(thickness)) return std::nullopt;
    return Sheet{row.needed_length(length), row.needed_length(width), row.needed_length(thickness),
                 row.length("least_roll_mm")};
}

shop::Supply read_supply(Row& row, const Currency& house_currency, char decimal_mark)
{
    shop::Supply supply;
    supply.code = {row.needed_text("code")};
    supply.name = row.needed_text("name");
    row.needed_text("kind");
    supply.kind = row.word("kind", shop::supply_kind, "outer, wrap, filler, tape, label, insert, ribbon, paper")
                      .value_or(SupplyKind::outer);
    supply.unit = row.word("unit", shop::unit, "piece, litre, m, kg").value_or(shop::Unit::piece);
    if (supply.kind == SupplyKind::outer) {
        row.needed_text("outer_kind");
        const auto kind =
            row.word("outer_kind", outer_kind, "carton, gift-box, mailer, padded-mailer, board-mailer, tube");
        if (kind) supply.form = read_form(row, *kind, decimal_mark);
        supply.max_load = row.weight("max_load_g");
    }
    supply.sheet = read_sheet(row, "sheet_length_mm", "sheet_width_mm", "sheet_thickness_mm");
    supply.folded = read_sheet(row, "folded_length_mm", "folded_width_mm", "folded_thickness_mm");
    if ((supply.kind == SupplyKind::insert || supply.kind == SupplyKind::paper) && !supply.sheet)
        row.note(ProblemKind::missing_value, "sheet_length_mm");
    if (row.blank("weight_g")) row.note(ProblemKind::missing_value, "weight_g");
    supply.weight = estimate(row);
    supply.material =
        row.word("material", shop::material, "paper, plastic, glass, wood, ferrous, aluminium, composite, other")
            .value_or(shop::Material::paper);
    const Currency currency = row.currency("currency", house_currency);
    supply.cost = row.money("cost", currency).value_or(Money{0, currency});
    supply.pack = {row.thousandths("pack", false).value_or(1000)};
    supply.supplier = row.text("supplier");
    supply.lead_days = row.whole("lead_days", 0, 1000).value_or(0);
    supply.on_hand = {row.thousandths("on_hand").value_or(0)};
    supply.reorder_at = {row.thousandths("reorder_at").value_or(0)};
    supply.minutes = row.whole("minutes", 0, 1000).value_or(0);
    supply.made_from = {row.text("made_from")};
    supply.takes = {row.thousandths("takes", false).value_or(1000)};
    supply.reused = row.yes("reused");
    return supply;
}

} // namespace

Taken<shop::Supply> read_supplies(const Csv& csv, const Currency& house_currency)
{
    Table table(csv, columns());
    Taken<shop::Supply> taken;
    std::set<shop::SupplyCode> read;
    for (const CsvRow& cells : table.rows()) {
        Row row = table.row(cells);
        shop::Supply supply = read_supply(row, house_currency, csv.decimal_mark);
        if (!supply.code.empty() && !read.insert(supply.code).second) row.note(ProblemKind::duplicate, "code");
        if (row.sound()) taken.rows.push_back(std::move(supply));
    }
    taken.problems = table.take_problems();
    return taken;
}

} // namespace stow::intake
