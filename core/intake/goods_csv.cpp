#include "core/intake/goods_csv.h"

#include "core/intake/estimate.h"
#include "core/intake/table.h"
#include "core/shop/check_digits.h"
#include "core/shop/countries.h"

#include <set>

namespace stow::intake {

namespace {

constexpr std::string_view materials_in_words = "paper, plastic, glass, wood, ferrous, aluminium, composite, other";
constexpr int most_pieces = 1'000'000;

const Columns& columns()
{
    static const Columns columns{
        {"code", "name", "shape", "weight_g"},
        {"length_mm",   "width_mm",      "height_mm",       "diameter_mm", "thickness_mm", "least_roll_mm",
         "volume_ml",   "least_mm",      "spread_g",        "turns",       "fragile",      "top_load_g",
         "cushion_mm",  "liquid",        "softens_above_c", "restriction", "wrapping",     "packaging_material",
         "packaging_g", "shelf",         "pieces",          "lowest",      "gtin",         "price",
         "currency",    "customs_words", "hs_code",         "origin",      "parts",        "gift_box"}};
    return columns;
}

std::optional<Turns> turns(std::string_view word)
{
    if (word == "any") return Turns{};
    if (word == "upright") return Turns{Turns::Rule::upright, {}};
    if (word == "flat") return Turns{Turns::Rule::flat, {}};
    return std::nullopt;
}

Shape shape(Row& row)
{
    const std::string kind = row.needed_text("shape");
    if (kind == "block")
        return Block{{row.needed_length("length_mm"), row.needed_length("width_mm"), row.needed_length("height_mm")}};
    if (kind == "cylinder") return Cylinder{row.needed_length("diameter_mm"), row.needed_length("height_mm")};
    if (kind == "roll") return Roll{row.needed_length("diameter_mm"), row.needed_length("length_mm")};
    if (kind == "sheet")
        return Sheet{row.needed_length("length_mm"), row.needed_length("width_mm"), row.needed_length("thickness_mm"),
                     row.length("least_roll_mm")};
    if (kind == "soft") {
        if (row.blank("volume_ml")) row.note(ProblemKind::missing_value, "volume_ml");
        // Thousandths of a millilitre are cubic millimetres.
        const auto volume = row.thousandths("volume_ml", false);
        return Soft{{volume.value_or(0) * 1000}, row.needed_length("least_mm")};
    }
    if (!kind.empty()) row.note(ProblemKind::unknown_word, "shape", "block, cylinder, sheet, roll, soft");
    return Block{};
}

bool is_hs_code(std::string_view code)
{
    return code.size() >= 6 && code.size() <= 10 && code.find_first_not_of("0123456789") == std::string_view::npos;
}

void read_parts(Row& row, shop::Good& good, char decimal_mark)
{
    const auto parts = counted_codes(row.text("parts"), decimal_mark);
    if (!parts)
        row.note(ProblemKind::not_a_number, "parts", "2 CODE + CODE");
    else {
        for (const CountedCode& part : *parts) {
            if (part.thousandths % 1000 != 0 || part.thousandths > 500'000) {
                row.note(ProblemKind::out_of_range, "parts", "1–500");
                return;
            }
            good.parts.push_back({{part.code}, static_cast<int>(part.thousandths / 1000)});
        }
    }
}

void read_codes(Row& row, shop::Good& good, const shop::Cupboard& known)
{
    good.wrapping = {row.text("wrapping")};
    if (!good.wrapping.empty() && known.wrapping(good.wrapping) == nullptr)
        row.note(ProblemKind::unknown_code, "wrapping");
    good.gift_box = {row.text("gift_box")};
    if (!good.gift_box.empty()) {
        const shop::Supply* box = known.supply(good.gift_box);
        if (box == nullptr || !box->form) row.note(ProblemKind::unknown_code, "gift_box");
    }
    good.gtin = row.text("gtin");
    if (!good.gtin.empty() && !shop::gtin_ok(good.gtin)) row.note(ProblemKind::bad_check_digit, "gtin");
    good.hs_code = row.text("hs_code");
    if (!good.hs_code.empty() && !is_hs_code(good.hs_code))
        row.note(ProblemKind::out_of_range, "hs_code", "000000–0000000000");
    good.origin = row.text("origin");
    if (!good.origin.empty() && !shop::is_country(good.origin)) row.note(ProblemKind::unknown_country, "origin");
}

shop::Good read_good(Row& row, const shop::Cupboard& known, char decimal_mark)
{
    shop::Good good;
    good.code = {row.needed_text("code")};
    good.name = row.needed_text("name");
    read_parts(row, good, decimal_mark);
    const bool set = !good.parts.empty();
    if (!set || !row.blank("shape")) good.shape = shape(row);
    if (!set && row.blank("weight_g")) row.note(ProblemKind::missing_value, "weight_g");
    good.weight = estimate(row);
    good.turns = row.word("turns", turns, "any, upright, flat").value_or(Turns{});
    good.fragile = row.yes("fragile");
    good.top_load = row.weight("top_load_g", spread_range);
    good.cushion = row.length("cushion_mm", slack_range).value_or(Length{});
    good.liquid = row.yes("liquid");
    good.softens_above_c = row.whole("softens_above_c", -50, 500);
    good.restriction =
        row.word("restriction", shop::restriction, "none, flammable, ask carrier").value_or(shop::Restriction::none);
    good.own_packaging.material =
        row.word("packaging_material", shop::material, materials_in_words).value_or(shop::Material::paper);
    good.own_packaging.weight = row.weight("packaging_g", spread_range).value_or(Weight{});
    good.shelf = row.text("shelf");
    good.pieces = row.whole("pieces", 0, most_pieces).value_or(0);
    good.lowest = row.whole("lowest", 0, most_pieces).value_or(0);
    good.price = row.money("price", row.currency("currency", known.house.currency));
    good.customs_words = row.text("customs_words");
    read_codes(row, good, known);
    return good;
}

} // namespace

Taken<shop::Good> read_goods(const Csv& csv, const shop::Cupboard& known)
{
    Table table(csv, columns());
    // Parts may stand further down than the set, so codes are gathered first.
    std::set<shop::GoodCode> in_file;
    for (const CsvRow& cells : table.rows()) in_file.insert({table.row(cells).text("code")});
    Taken<shop::Good> taken;
    std::set<shop::GoodCode> read;
    for (const CsvRow& cells : table.rows()) {
        Row row = table.row(cells);
        shop::Good good = read_good(row, known, csv.decimal_mark);
        for (const shop::SetPart& part : good.parts) {
            if (part.good == good.code || (in_file.count(part.good) == 0 && known.good(part.good) == nullptr))
                row.note_part(ProblemKind::unknown_code, "parts", part.good.text);
        }
        if (!good.code.empty() && !read.insert(good.code).second) row.note(ProblemKind::duplicate, "code");
        if (row.sound()) taken.rows.push_back(std::move(good));
    }
    taken.problems = table.take_problems();
    return taken;
}

} // namespace stow::intake
