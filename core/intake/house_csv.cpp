#include "core/intake/house_csv.h"

#include "core/intake/table.h"
#include "core/shop/countries.h"

#include <functional>
#include <set>

namespace stow::intake {

namespace {

using shop::House;
constexpr std::string_view value = "value";
constexpr Range margin_range{false, shop::most_margin.units};

void take_street(House& house, std::size_t line, std::string text)
{
    std::vector<std::string>& street = house.address.street;
    if (street.size() <= line) street.resize(line + 1);
    street[line] = std::move(text);
}

void take_code(Row& row, const shop::Cupboard& known, shop::SupplyCode& code)
{
    code = {row.text(value)};
    if (!code.empty() && !known.supplies.empty() && known.supply(code) == nullptr)
        row.note(ProblemKind::unknown_code, value);
}

// Reads the value of one setting into its place; false where there is no such setting.
bool take(House& house, const std::string& setting, Row& row, const shop::Cupboard& known)
{
    shop::Address& from = house.address;
    const auto text = [&](std::string& place) { place = row.text(value); };
    const auto length = [&](Length& place) { place = row.length(value, slack_range).value_or(place); };
    const auto whole = [&](int& place, int least, int most) { place = row.whole(value, least, most).value_or(place); };
    const auto weight = [&](Weight& place) { place = row.weight(value).value_or(place); };
    if (setting == "name")
        text(from.name);
    else if (setting == "company")
        text(from.company);
    else if (setting == "street")
        take_street(house, 0, row.text(value));
    else if (setting == "street_2")
        take_street(house, 1, row.text(value));
    else if (setting == "postcode")
        text(from.postcode);
    else if (setting == "town")
        text(from.town);
    else if (setting == "region")
        text(from.region);
    else if (setting == "country") {
        text(from.country);
        if (!shop::is_country(from.country)) row.note(ProblemKind::unknown_country, value);
    } else if (setting == "contact")
        text(house.contact);
    else if (setting == "currency")
        house.currency = row.currency(value, house.currency);
    else if (setting == "trays")
        whole(house.trays, 1, 26);
    else if (setting == "ease_mm")
        length(house.ease);
    else if (setting == "lining_mm")
        length(house.lining);
    else if (setting == "rattle_mm")
        length(house.rattle);
    else if (setting == "overfill_percent")
        whole(house.overfill_percent, 0, 100);
    else if (setting == "bulge_mm")
        length(house.bulge);
    else if (setting == "heavy_g")
        weight(house.heavy);
    else if (setting == "filler")
        take_code(row, known, house.filler);
    else if (setting == "tape")
        take_code(row, known, house.tape);
    else if (setting == "label")
        take_code(row, known, house.label);
    else if (setting == "batch_percent")
        whole(house.batch_percent, 0, 50);
    else if (setting == "humidity_percent")
        whole(house.humidity_percent, 0, 50);
    else if (setting == "scale_step_g")
        weight(house.scale_step);
    else if (setting == "cut_minutes")
        whole(house.cut_minutes, 0, 120);
    else if (setting == "hour_cost")
        house.hour = row.money(value, house.currency).value_or(house.hour);
    else if (setting == "service_percent")
        whole(house.service_percent, 50, 99);
    else if (setting == "forget_months")
        whole(house.forget_months, 0, 240);
    else if (setting == "paper") {
        if (const auto size = shop::paper_size(row.text(value)))
            house.paper = *size;
        else
            row.note(ProblemKind::unknown_code, value);
    } else if (setting == "margin_mm")
        house.margin = std::max(row.length(value, margin_range).value_or(house.margin), shop::least_margin);
    else if (setting == "label_form") {
        if (const auto form = shop::label_form(row.text(value)))
            house.label_form = *form;
        else
            row.note(ProblemKind::unknown_word, value);
    } else if (setting == "logo")
        text(house.logo);
    else if (setting == "black_only")
        house.black_only = row.yes(value);
    else
        return false;
    return true;
}

} // namespace

Taken<House> read_house(const Csv& csv, const shop::Cupboard& known)
{
    Table table(csv, {{"setting", "value"}, {}});
    House house = known.house;
    std::set<std::string> seen;
    bool any = false;
    for (const CsvRow& cells : table.rows()) {
        Row row = table.row(cells);
        const std::string setting = row.needed_text("setting");
        if (!setting.empty() && !seen.insert(setting).second) {
            row.note(ProblemKind::duplicate, "setting");
            continue;
        }
        House changed = house;
        if (!setting.empty() && !take(changed, setting, row, known)) row.note(ProblemKind::unknown_member, "setting");
        if (!row.sound()) continue;
        house = std::move(changed);
        any = true;
    }
    Taken<House> taken;
    if (any) taken.rows.push_back(std::move(house));
    taken.problems = table.take_problems();
    return taken;
}

} // namespace stow::intake
