#include "app/take_in.h"

#include "core/book/cupboard.h"
#include "core/book/ledger.h"
#include "core/book/orders.h"
#include "core/book/rate_sheets.h"
#include "core/book/settings.h"
#include "core/intake/goods_csv.h"
#include "core/intake/house_csv.h"
#include "core/intake/orders_csv.h"
#include "core/intake/packing_csv.h"
#include "core/intake/rate_sheet_csv.h"
#include "core/intake/stock_csv.h"
#include "core/intake/supplies_csv.h"

#include <algorithm>
#include <array>
#include <utility>

namespace stow {

namespace {

constexpr std::array kind_names{
    std::pair{TakeInKind::goods, "goods"},         std::pair{TakeInKind::supplies, "supplies"},
    std::pair{TakeInKind::wrappings, "wrappings"}, std::pair{TakeInKind::rules, "rules"},
    std::pair{TakeInKind::house, "house"},         std::pair{TakeInKind::rates, "rates"},
    std::pair{TakeInKind::stock, "stock"}};

void add(TakenIn& outcome, const book::Taken& taken)
{
    outcome.fresh = taken.fresh;
    outcome.unchanged = taken.unchanged;
    outcome.changed = taken.changed;
}

// A step without counts of its own: so many rows were new to the book, or none.
void add(TakenIn& outcome, const book::Done& step, std::size_t rows)
{
    if (!step) {
        outcome.refused = true;
    } else {
        (*step ? outcome.changed : outcome.unchanged) = static_cast<int>(rows);
    }
}

TakenIn rates(Day& day, const std::filesystem::path& file)
{
    TakenIn outcome;
    auto taken = intake::read_rate_sheet_file(file.string());
    outcome.problems = std::move(taken.problems);
    outcome.refused = !taken.sheet;
    if (taken.sheet) add(outcome, book::take_in_rate_sheets(day.book(), {*taken.sheet}, file.filename().string()));
    return outcome;
}

} // namespace

std::optional<TakeInKind> take_in_kind(std::string_view name)
{
    for (const auto& [kind, kind_name] : kind_names) {
        if (name == kind_name) return kind;
    }
    return std::nullopt;
}

TakenIn take_in(Day& day, TakeInKind kind, const std::filesystem::path& file)
{
    if (kind == TakeInKind::rates) {
        TakenIn outcome = rates(day, file);
        day.moved();
        return outcome;
    }
    const intake::Csv csv = intake::read_csv_file(file.string());
    const shop::Cupboard& known = day.cupboard();
    book::Book& book = day.book();
    const std::string name = file.filename().string();
    TakenIn outcome;
    // Reads, keeps the problems, and says whether there is anything to write.
    const auto keep = [&outcome](auto taken) {
        outcome.problems = std::move(taken.problems);
        outcome.refused = taken.rows.empty() && !outcome.problems.empty();
        return std::move(taken.rows);
    };
    switch (kind) {
    case TakeInKind::goods:
        if (const auto rows = keep(intake::read_goods(csv, known)); !rows.empty()) {
            add(outcome, book::take_in_goods(book, rows, name));
        }
        break;
    case TakeInKind::supplies:
        if (const auto rows = keep(intake::read_supplies(csv, known.house.currency)); !rows.empty()) {
            add(outcome, book::take_in_supplies(book, rows, name));
            if (!book::use_where_none_is(book, rows)) outcome.refused = true;
        }
        break;
    case TakeInKind::wrappings:
        if (const auto rows = keep(intake::read_wrappings(csv, known)); !rows.empty()) {
            add(outcome, book::take_in_wrappings(book, rows, name));
        }
        break;
    case TakeInKind::rules:
        if (const auto rows = keep(intake::read_house_rules(csv, known)); !rows.empty()) {
            add(outcome, book::take_in_rules(book, rows, name));
        }
        break;
    case TakeInKind::house:
        if (const auto rows = keep(intake::read_house(csv, known)); !rows.empty()) {
            add(outcome, book::put_house(book, rows.front()), rows.size());
        }
        break;
    case TakeInKind::stock: {
        std::vector<book::StockCount> counts;
        for (auto& row : keep(intake::read_stock(csv, known))) counts.push_back({std::move(row.what), row.found});
        if (!counts.empty()) add(outcome, book::take_in_stock(book, counts, name), counts.size());
        break;
    }
    case TakeInKind::rates: break;
    }
    day.moved();
    return outcome;
}

intake::ColumnMatch columns_for(const Day& day, const intake::Csv& csv, const std::string& shop)
{
    if (const auto text = book::columns_of(day.book(), shop)) {
        const auto remembered = intake::column_match(*text);
        if (remembered && intake::missing_fields(*remembered, csv).empty()) return *remembered;
    }
    auto guess = intake::guess_columns(csv, shop);
    guess.home = day.cupboard().house.address.country;
    guess.currency = day.cupboard().house.currency;
    return guess;
}

TakenIn take_in_orders(Day& day, const intake::Csv& csv, const intake::ColumnMatch& columns)
{
    TakenIn outcome;
    auto taken = intake::read_orders(csv, columns);
    outcome.problems = std::move(taken.problems);
    outcome.refused = taken.rows.empty() && !outcome.problems.empty();
    if (taken.rows.empty()) return outcome;

    intake::Matches matches;
    for (const book::Match& m : book::matches(day.book())) matches[{m.shop, m.title, m.variant}] = m.good;
    for (shop::Order& order : taken.rows) intake::match_goods(order, matches, day.cupboard().goods);
    const auto orders = book::take_in_orders(day.book(), taken.rows, csv.file);
    outcome.fresh = orders.fresh;
    outcome.unchanged = orders.unchanged;
    outcome.changed = orders.changed;
    outcome.called_off = orders.called_off;
    (void)book::remember_columns(day.book(), columns.shop, intake::to_text(columns)); // no step where it is known
    day.moved();
    return outcome;
}

} // namespace stow
