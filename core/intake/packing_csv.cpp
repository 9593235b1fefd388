#include "core/intake/packing_csv.h"

#include "core/intake/estimate.h"
#include "core/intake/table.h"

#include <set>

namespace stow::intake {

namespace {

using shop::HouseRule;

const Columns& wrapping_columns()
{
    static const Columns columns{{"code", "name", "weight_g"},
                                 {"growth_length_mm", "growth_width_mm", "growth_height_mm", "cushion_mm", "squeeze_mm",
                                  "uses", "spread_g", "seconds"}};
    return columns;
}

const Columns& rule_columns()
{
    static const Columns columns{{"when", "insert"}, {"good", "from", "currency", "count"}};
    return columns;
}

shop::Wrapping read_wrapping(Row& row, const shop::Cupboard& known, char decimal_mark)
{
    const auto slack = [&](std::string_view column) { return row.length(column, slack_range).value_or(Length{}); };
    shop::Wrapping wrapping;
    wrapping.code = {row.needed_text("code")};
    wrapping.name = row.needed_text("name");
    wrapping.growth = {slack("growth_length_mm"), slack("growth_width_mm"), slack("growth_height_mm")};
    wrapping.cushion = slack("cushion_mm");
    wrapping.squeeze = slack("squeeze_mm");
    const auto uses = counted_codes(row.text("uses"), decimal_mark);
    if (!uses)
        row.note(ProblemKind::not_a_number, "uses", "0.6 CODE + CODE");
    else {
        for (const CountedCode& use : *uses) {
            if (known.supply({use.code}) == nullptr) row.note_part(ProblemKind::unknown_code, "uses", use.code);
            wrapping.uses.push_back({{use.code}, {use.thousandths}});
        }
    }
    if (row.blank("weight_g")) row.note(ProblemKind::missing_value, "weight_g");
    wrapping.weight = estimate(row);
    wrapping.seconds = row.whole("seconds", 0, 36'000).value_or(0);
    return wrapping;
}

HouseRule read_rule(Row& row, const shop::Cupboard& known)
{
    HouseRule rule;
    row.needed_text("when");
    rule.when = row.word("when", shop::rule_when, "every order, gift, no gift, abroad, good, value from")
                    .value_or(HouseRule::When::every_order);
    rule.insert = {row.needed_text("insert")};
    const shop::Supply* insert = known.supply(rule.insert);
    if (!rule.insert.empty() && insert == nullptr) row.note(ProblemKind::unknown_code, "insert");
    if (rule.when == HouseRule::When::good_in_order) {
        rule.good = {row.needed_text("good")};
        if (!rule.good.empty() && known.good(rule.good) == nullptr) row.note(ProblemKind::unknown_code, "good");
    }
    if (rule.when == HouseRule::When::value_from) {
        row.needed_text("from");
        rule.from = row.money("from", row.currency("currency", known.house.currency));
    }
    rule.count = row.whole("count", 1, 100).value_or(1);
    return rule;
}

} // namespace

Taken<shop::Wrapping> read_wrappings(const Csv& csv, const shop::Cupboard& known)
{
    Table table(csv, wrapping_columns());
    Taken<shop::Wrapping> taken;
    std::set<shop::WrappingCode> read;
    for (const CsvRow& cells : table.rows()) {
        Row row = table.row(cells);
        shop::Wrapping wrapping = read_wrapping(row, known, csv.decimal_mark);
        if (!wrapping.code.empty() && !read.insert(wrapping.code).second) row.note(ProblemKind::duplicate, "code");
        if (row.sound()) taken.rows.push_back(std::move(wrapping));
    }
    taken.problems = table.take_problems();
    return taken;
}

Taken<HouseRule> read_house_rules(const Csv& csv, const shop::Cupboard& known)
{
    Table table(csv, rule_columns());
    Taken<HouseRule> taken;
    for (const CsvRow& cells : table.rows()) {
        Row row = table.row(cells);
        HouseRule rule = read_rule(row, known);
        if (row.sound()) taken.rows.push_back(std::move(rule));
    }
    taken.problems = table.take_problems();
    return taken;
}

} // namespace stow::intake
