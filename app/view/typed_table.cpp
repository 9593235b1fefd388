#include "app/view/typed_table.h"

#include "app/day.h"
#include "app/view/text.h"
#include "app/words/book.h"
#include "app/words/format.h"
#include "app/words/reasons.h"
#include "core/book/cupboard.h"
#include "core/intake/packing_csv.h"

#include <QLocale>

#include <algorithm>

namespace stow::view {

namespace {

constexpr std::size_t first_row = 2; // of a file, its heading being 1

bool is_blank(const std::map<std::string, QString>& typed)
{
    return std::all_of(typed.begin(), typed.end(), [](const auto& cell) { return cell.second.trimmed().isEmpty(); });
}

QString blank_or(const QString& words, bool there)
{
    return there ? words : QString();
}

} // namespace

void TypedTable::begin()
{
    typed_ = as_in_the_book();
    typed_.emplace_back();
    fault_.clear();
    show();
}

void TypedTable::set(int row, const QString& column, const QString& typed)
{
    if (row >= 0 && row < static_cast<int>(typed_.size()))
        typed_[static_cast<std::size_t>(row)][column.toStdString()] = typed;
}

void TypedTable::choose(int row, const QString& column, int option)
{
    for (const Column& known : columns()) {
        if (column != QLatin1String(known.name) || option < 0 || option >= static_cast<int>(known.options.size()))
            continue;
        set(row, column, text(known.options[static_cast<std::size_t>(option)].first));
    }
}

void TypedTable::add()
{
    typed_.emplace_back();
    show();
}

void TypedTable::remove(int row)
{
    if (row < 0 || row >= static_cast<int>(typed_.size())) return;
    typed_.erase(typed_.begin() + row);
    show();
}

void TypedTable::show(const std::map<std::pair<std::size_t, std::string>, QString>& faults)
{
    std::vector<TypedRow> rows;
    const auto all = columns();
    for (std::size_t i = 0; i < typed_.size(); ++i) {
        TypedRow row;
        row.blank = is_blank(typed_[i]);
        for (const Column& column : all) {
            const auto typed = typed_[i].find(column.name);
            const QString words = typed != typed_[i].end() ? typed->second : QString();
            QStringList options;
            qsizetype chosen = -1;
            for (const auto& [word, said] : column.options) {
                if (words == text(word)) chosen = options.size();
                options += said;
            }
            const auto fault = faults.find({i, column.name});
            row.cells.push_back(
                QVariantMap{{QStringLiteral("column"), QString::fromLatin1(column.name)},
                            {QStringLiteral("label"), column.label},
                            {QStringLiteral("unit"), column.unit},
                            {QStringLiteral("typed"), words},
                            {QStringLiteral("fault"), fault != faults.end() ? fault->second : QString()},
                            {QStringLiteral("options"), options},
                            {QStringLiteral("chosen"), chosen},
                            {QStringLiteral("share"), column.share}});
        }
        rows.push_back(std::move(row));
    }
    rows_.show(std::move(rows));
    emit changed();
}

bool TypedTable::keep()
{
    intake::Csv table;
    table.decimal_mark = decimal_mark();
    const auto all = columns();
    for (const Column& column : all) table.headings.emplace_back(column.name);
    for (std::size_t i = 0; i < typed_.size(); ++i) {
        if (is_blank(typed_[i])) continue;
        intake::CsvRow row{i + first_row, {}};
        for (const Column& column : all) {
            const auto typed = typed_[i].find(column.name);
            row.cells.push_back(typed != typed_[i].end() ? as_in_a_file(typed->second, table.decimal_mark)
                                                         : std::string());
        }
        table.rows.push_back(std::move(row));
    }
    Outcome outcome =
        table.rows.empty() && as_in_the_book().empty() ? Outcome(tr("Nothing is typed yet")) : take(table);
    fault_.clear();
    std::map<std::pair<std::size_t, std::string>, QString> faults;
    if (const auto* wrong = std::get_if<QString>(&outcome)) fault_ = *wrong;
    if (const auto* problems = std::get_if<std::vector<intake::Problem>>(&outcome)) {
        for (const intake::Problem& problem : *problems) {
            if (problem.row >= first_row)
                faults.emplace(std::pair(problem.row - first_row, problem.column), words::what_is_wrong(problem));
            else
                fault_ = words::what_is_wrong(problem);
        }
    }
    if (const auto* kept = std::get_if<Kept>(&outcome)) {
        emit said(kept->words);
        day_.moved();
        return true;
    }
    show(faults);
    return false;
}

// Which insert goes into which order ----------------------------------------------------------------------------------

QString RulesTable::title() const
{
    return tr("What goes into which order");
}

QString RulesTable::words() const
{
    return tr("Cards, samples and notes that are put in by themselves. A good or a value is needed only where the rule "
              "asks for one.");
}

std::vector<TypedTable::Column> RulesTable::columns() const
{
    using When = shop::HouseRule::When;
    const auto as = [](When when, const QString& words) { return std::pair(std::string(shop::name_of(when)), words); };
    std::vector<std::pair<std::string, QString>> inserts;
    for (const auto& [code, supply] : day_.cupboard().supplies) {
        if (supply.kind == shop::SupplyKind::insert) inserts.emplace_back(code.text, text(supply.name));
    }
    return {{"when",
             tr("Which orders"),
             {},
             3,
             {as(When::every_order, tr("every order")), as(When::gift, tr("gifts")), as(When::no_gift, tr("no gifts")),
              as(When::abroad, tr("abroad")), as(When::good_in_order, tr("with the good")),
              as(When::value_from, tr("worth at least"))}},
            {"good", tr("Good, its code"), {}, 3},
            {"from", tr("Value"), text(day_.cupboard().house.currency.code()), 2},
            {"insert", tr("Insert"), {}, 4, std::move(inserts)},
            {"count", tr("How many"), {}, 2}};
}

std::vector<TypedTable::Typed> RulesTable::as_in_the_book() const
{
    std::vector<Typed> rows;
    for (const shop::HouseRule& rule : day_.cupboard().rules) {
        rows.push_back({{"when", text(shop::name_of(rule.when))},
                        {"good", text(rule.good.text)},
                        {"from", rule.from ? words::money(*rule.from) : QString()},
                        {"insert", text(rule.insert.text)},
                        {"count", QString::number(rule.count)}});
    }
    return rows;
}

TypedTable::Outcome RulesTable::take(const intake::Csv& table)
{
    auto taken = intake::read_house_rules(table, day_.cupboard());
    if (!taken.problems.empty()) return std::move(taken.problems);
    if (const auto done = book::put_rules(day_.book(), taken.rows); !done) return words::refused(done.error());
    return Kept{tr("%n rules are kept", nullptr, static_cast<int>(taken.rows.size()))};
}

// How goods are wrapped -----------------------------------------------------------------------------------------------

QString WrappingsTable::title() const
{
    return tr("Wrappings");
}

QString WrappingsTable::words() const
{
    return tr(
        "How much a good grows by it in each direction, what it uses up (0.5 BUBBLE + TISSUE), and what that weighs. "
        "Goods name it by its code.");
}

std::vector<TypedTable::Column> WrappingsTable::columns() const
{
    const QString mm = tr("mm"), g = tr("g");
    return {{"code", tr("Code"), {}, 2},
            {"name", tr("Name"), {}, 4},
            {"growth_length_mm", tr("Adds to length"), mm, 2},
            {"growth_width_mm", tr("to width"), mm, 2},
            {"growth_height_mm", tr("to height"), mm, 2},
            {"cushion_mm", tr("Cushion"), mm, 2},
            {"squeeze_mm", tr("Can be pressed"), mm, 2},
            {"uses", tr("Uses up"), {}, 4},
            {"weight_g", tr("Weight"), g, 2},
            {"spread_g", tr("Spread, one sigma"), g, 2},
            {"seconds", tr("Takes"), tr("s"), 2}};
}

std::vector<TypedTable::Typed> WrappingsTable::as_in_the_book() const
{
    std::vector<Typed> rows;
    const auto length = [](Length l) { return blank_or(number(in_mm(l)), l != Length{}); };
    for (const auto& [code, wrapping] : day_.cupboard().wrappings) {
        QStringList uses;
        for (const shop::Wrapping::Use& use : wrapping.uses) {
            const double amount = static_cast<double>(use.amount.thousandths) / 1000;
            uses += joined({blank_or(number(amount), use.amount != shop::pieces(1)), text(use.supply.text)},
                           QStringLiteral(" "));
        }
        rows.push_back({{"code", text(code.text)},
                        {"name", text(wrapping.name)},
                        {"growth_length_mm", length(wrapping.growth.x)},
                        {"growth_width_mm", length(wrapping.growth.y)},
                        {"growth_height_mm", length(wrapping.growth.z)},
                        {"cushion_mm", length(wrapping.cushion)},
                        {"squeeze_mm", length(wrapping.squeeze)},
                        {"uses", uses.join(QStringLiteral(" + "))},
                        {"weight_g", number(in_grams(wrapping.weight.mean))},
                        {"spread_g", number(in_grams(wrapping.weight.spread))},
                        {"seconds", blank_or(QString::number(wrapping.seconds), wrapping.seconds != 0)}});
    }
    return rows;
}

TypedTable::Outcome WrappingsTable::take(const intake::Csv& table)
{
    auto taken = intake::read_wrappings(table, day_.cupboard());
    if (!taken.problems.empty()) return std::move(taken.problems);
    const auto kept = [&](const shop::WrappingCode& code) {
        return std::any_of(taken.rows.begin(), taken.rows.end(), [&](const auto& w) { return w.code == code; });
    };
    for (const auto& [code, good] : day_.cupboard().goods) {
        const bool wrapped = day_.cupboard().wrapping(good.wrapping) != nullptr;
        if (wrapped && !kept(good.wrapping))
            return tr("%1 is wrapped in %2: it stays").arg(text(code.text), text(good.wrapping.text));
    }
    if (const auto done = book::put_wrappings(day_.book(), taken.rows); !done) return words::refused(done.error());
    return Kept{tr("%n wrappings are kept", nullptr, static_cast<int>(taken.rows.size()))};
}

} // namespace stow::view
