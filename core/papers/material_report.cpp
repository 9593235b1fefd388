#include "core/papers/material_report.h"

#include "core/papers/countries.h"
#include "core/papers/sheet.h"

#include <algorithm>
#include <array>
#include <map>

namespace stow::papers {

namespace {

constexpr int amount_width = from_mm(34), row_height = from_mm(7);

std::string country_of(const std::string& code)
{
    const auto* const found =
        std::find_if(countries.begin(), countries.end(), [&](const Country& c) { return c.code == code; });
    return found == countries.end() ? code : code + " · " + std::string(found->name);
}

struct Amounts {
    Weight weight, of_goods, again;
    void operator+=(const records::MaterialLine& line)
    {
        weight += line.weight;
        of_goods += line.of_goods;
        again += line.again;
    }
};

// The right edge of the amounts, three in a row.
int column(const Sheet& s, std::size_t i)
{
    return s.right() - amount_width * static_cast<int>(2 - i);
}

void column_heads(Sheet& s)
{
    const std::array heads{Word::total, Word::goods_own, Word::used_again};
    for (std::size_t i = 0; i < heads.size(); ++i) {
        s.line(column(s, i), s.y(), std::string(s.words()(heads[i])), type::small, Align::end);
    }
    s.down(s.line_height(type::small) + from_mm(1));
    s.rule(s.y(), Role::second_ink);
}

void row(Sheet& s, const std::string& name, const Amounts& amounts, const Style& style)
{
    s.need(row_height);
    const int top = s.y() + from_mm(1);
    s.line(s.left(), top, name, style);
    const auto amount = [&](std::size_t i, Weight weight, const Style& in) {
        s.line(column(s, i), top, weight > Weight{} ? s.words().weight(weight) : "–", in, Align::end);
    };
    amount(0, amounts.weight, style);
    amount(1, amounts.of_goods, type::quiet);
    amount(2, amounts.again, type::quiet);
    s.down(row_height);
    s.rule(s.y());
}

void group(Sheet& s, const std::string& heading, const std::map<shop::Material, Amounts>& materials)
{
    s.need(from_mm(30)); // a heading never stands alone at the foot
    s.down(s.paragraph(s.left(), s.y(), s.width(), heading, type::large));
    column_heads(s);
    for (const auto& [material, amounts] : materials) {
        row(s, std::string(s.words()(word_for(material))), amounts, type::body);
    }
    s.down(from_mm(6));
}

} // namespace

Word word_for(shop::Material material)
{
    using M = shop::Material;
    switch (material) {
    case M::paper: return Word::material_paper;
    case M::plastic: return Word::material_plastic;
    case M::glass: return Word::material_glass;
    case M::wood: return Word::material_wood;
    case M::ferrous: return Word::material_steel;
    case M::aluminium: return Word::material_aluminium;
    case M::composite: return Word::material_composite;
    case M::other: break;
    }
    return Word::material_other;
}

Document lay_out(const MaterialReport& report, const Blank& blank, const Words& words, const TextMeasure& measure)
{
    const std::string title(words(Word::material_report));
    const std::string days = words.date(report.from) + " – " + words.date(report.until);
    const auto head = [&](Sheet& s, bool carried) {
        if (carried) return s.carried_head(title + ", " + std::string(words(Word::continued)), days, from_mm(9));
        s.line(s.left(), s.y(), title, type::title);
        s.down(s.line_height(type::title));
        const std::string count = report.parcels == 1 ? std::string(words(Word::one_together))
                                                      : words.with(Word::all_together, std::to_string(report.parcels));
        s.line(s.left(), s.y(), days + " · " + count, type::quiet);
        s.down(s.line_height(type::quiet) + from_mm(3));
        s.down(s.paragraph(s.left(), s.y(), s.width(), std::string(words(Word::material_covers)), type::small) +
               from_mm(6));
    };
    std::map<shop::Material, Amounts> whole;
    std::map<std::string, std::map<shop::Material, Amounts>> by_country;
    for (const records::MaterialLine& line : report.lines) {
        whole[line.material] += line;
        by_country[line.country][line.material] += line;
    }
    Sheet s(blank, words, measure, head);
    group(s, std::string(words(Word::all_countries)), whole);
    for (const auto& [country, materials] : by_country) group(s, country_of(country), materials);
    return s.finish(title, title + " · " + days, report.reprint);
}

} // namespace stow::papers
