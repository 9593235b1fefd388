#include "app/day_papers.h"
#include "app/her_papers.h"
#include "app/paper_keys.h"
#include "app/supply_papers.h"
#include "app/take_in.h"
#include "app/view/cupboard.h"
#include "app/view/paper_ways.h"
#include "app/view/taken_words.h"
#include "app/view/text.h"
#include "app/words/book.h"
#include "app/words/format.h"
#include "core/book/ledger.h"
#include "core/supplies/stock.h"

#include <QDateTime>

#include <algorithm>
#include <cmath>

namespace stow::view {

namespace {

QString movement_word(book::MovementKind kind)
{
    using K = book::MovementKind;
    switch (kind) {
    case K::start: return SuppliesController::tr("on hand at the start");
    case K::received: return SuppliesController::tr("received");
    case K::made: return SuppliesController::tr("made");
    case K::used: return SuppliesController::tr("used in packing");
    case K::sold: return SuppliesController::tr("sold");
    case K::counted: return SuppliesController::tr("counted");
    case K::spoilt: return SuppliesController::tr("spoilt");
    case K::missing: return SuppliesController::tr("not there");
    case K::returned: return SuppliesController::tr("came back");
    }
    return {};
}

// "about 12 a week (steady, off by 2.1 a week in weeks it had not seen); order at 31"
QString forecast_words(const supplies::Outlook& own, shop::Unit unit)
{
    const supplies::Forecast& f = *own.forecast;
    const auto rounded = [&](double thousandths) {
        return words::amount({std::llround(thousandths / 100) * 100}, unit);
    };
    QString method;
    switch (f.method) {
    case supplies::Method::steady: method = SuppliesController::tr("steady"); break;
    case supplies::Method::intermittent: method = SuppliesController::tr("now and then"); break;
    case supplies::Method::seasonal: method = SuppliesController::tr("with the season"); break;
    }
    QString told = SuppliesController::tr("about %1 next week, %2").arg(rounded(f.ahead.front()), method);
    if (f.error)
        told += SuppliesController::tr("; off by %1 a week in %n weeks it had not seen", nullptr, f.judged)
                    .arg(rounded(*f.error));
    return told + SuppliesController::tr("; order at %1").arg(words::amount(own.reorder_at, unit));
}

} // namespace

SuppliesController::SuppliesController(Day& day, QObject* parent)
    : QObject(parent), day_(day),
      rows_({{tr("by code"), {}},
             {tr("what ends first"), [](const auto& a, const auto& b) { return a.days < b.days; }},
             {tr("by kind"), [](const auto& a, const auto& b) { return a.kind.localeAwareCompare(b.kind) < 0; }},
             {tr("by supplier"),
              [](const auto& a, const auto& b) { return a.supplier.localeAwareCompare(b.supplier) < 0; }}})
{
}

void SuppliesController::refresh()
{
    if (!open_) return;
    const auto& cupboard = day_.cupboard();
    const auto reserved = book::supplies_reserved(day_.book());
    outlook_ = outlook_of(day_);
    std::map<shop::SupplyCode, supplies::ReorderLine> reorder;
    for (const auto& list :
         supplies::reorder_list(supplies::with_points(cupboard.supplies, outlook_), cupboard.on_hand, reserved)) {
        for (const auto& line : list.lines) reorder[line.supply] = line;
    }
    int to_count = 0;
    std::vector<SupplyRow> rows;
    for (const auto& [code, supply] : cupboard.supplies) {
        SupplyRow row;
        row.code = text(code.text);
        row.name = text(supply.name);
        row.kind = supply.form ? kind_name(supply.form->kind) : supply_kind_name(supply.kind);
        if (!supply.made_from.empty()) row.kind = joined({row.kind, tr("made of %1").arg(text(supply.made_from.text))});
        if (supply.reused) row.kind = joined({row.kind, tr("used again")});
        if (supply.form)
            row.size = inner_size(*supply.form);
        else if (supply.sheet)
            row.size = words::size({supply.sheet->length, supply.sheet->width, supply.sheet->thickness});
        const auto found = cupboard.on_hand.find(code);
        const shop::Amount on_hand = found != cupboard.on_hand.end() ? found->second : shop::Amount{};
        row.on_hand = words::amount(on_hand, supply.unit);
        if (const auto cover = outlook_.at(code).cover) {
            row.cover = tr("lasts %n days", nullptr, *cover);
            row.days = *cover;
        }
        row.cost = words::money(supply.cost);
        row.supplier = text(supply.supplier);
        if (on_hand < shop::Amount{}) {
            row.warning = tr("more was packed than the book knows: count it");
            ++to_count;
        } else if (const auto line = reorder.find(code); line != reorder.end()) {
            const QString much = words::amount(line->second.to_order, supply.unit);
            row.warning =
                row.supplier.isEmpty() ? tr("reorder %1").arg(much) : tr("reorder %1 from %2").arg(much, row.supplier);
        }
        rows.push_back(std::move(row));
    }
    std::stable_sort(rows.begin(), rows.end(),
                     [](const auto& a, const auto& b) { return a.warning.isEmpty() < b.warning.isEmpty(); });
    headline_ = rows.empty()      ? tr("Supplies")
                : to_count > 0    ? tr("%n supplies to count", nullptr, to_count)
                : reorder.empty() ? tr("%n supplies, all there", nullptr, static_cast<int>(rows.size()))
                                  : tr("%n supplies to reorder", nullptr, static_cast<int>(reorder.size()));
    rows_.show(std::move(rows));
    if (!looked_at_.empty()) show_detail();
    emit changed();
}

void SuppliesController::look(int index)
{
    const SupplyRow* row = rows_.shown(index);
    looked_at_ = {row != nullptr ? utf8(row->code) : std::string()};
    show_detail();
}

void SuppliesController::show_detail()
{
    const shop::Supply* supply = day_.cupboard().supply(looked_at_);
    detail_.clear();
    std::vector<LedgerRow> ledger;
    if (supply != nullptr) {
        const auto found = day_.cupboard().on_hand.find(supply->code);
        const shop::Amount on_hand = found != day_.cupboard().on_hand.end() ? found->second : shop::Amount{};
        QStringList facts{joined(
            {text(supply->code.text), supply->form ? kind_name(supply->form->kind) : supply_kind_name(supply->kind)})};
        if (supply->form) {
            facts += tr("inside %1, outside %2").arg(inner_size(*supply->form), words::size(supply->form->outer));
        }
        facts += joined({tr("weighs %1").arg(words::weight(supply->weight.mean)),
                         tr("costs %1").arg(words::money_with_currency(supply->cost)), text(supply->supplier),
                         supply->lead_days > 0 ? tr("comes in %n days", nullptr, supply->lead_days) : QString(),
                         tr("reorder at %1").arg(words::amount(supply->reorder_at, supply->unit))});
        const auto average = book::average_costs(day_.book(), day_.cupboard().house.currency);
        if (const auto paid = average.find(supply->code); paid != average.end()) {
            facts += tr("cost %1 on average when it came in").arg(words::money_with_currency(paid->second));
        }
        if (const auto known = outlook_.find(supply->code); known != outlook_.end() && known->second.forecast) {
            facts += forecast_words(known->second, supply->unit);
        }
        detail_ = {{QStringLiteral("code"), text(supply->code.text)},
                   {QStringLiteral("name"), text(supply->name)},
                   {QStringLiteral("facts"), facts.join(QLatin1Char('\n'))},
                   {QStringLiteral("unit"),
                    supply->unit == shop::Unit::piece ? tr("pieces") : text(shop::name_of(supply->unit))},
                   {QStringLiteral("onHand"), tr("%1 there").arg(words::amount(on_hand, supply->unit))}};
        constexpr std::size_t most = 50;
        auto movements = book::movements_of(day_.book(), supply->code, most);
        std::reverse(movements.begin(), movements.end());
        for (const book::Movement& m : movements) {
            const auto at = QDateTime::fromSecsSinceEpoch(m.at.time_since_epoch().count());
            const QString sign = m.amount.thousandths > 0 ? QStringLiteral("+") : QString();
            ledger.push_back({QLocale().toString(at, QLocale::ShortFormat),
                              joined({joined({movement_word(m.kind), text(m.reason)}, QStringLiteral(": ")),
                                      m.cost ? words::money_with_currency(*m.cost) : QString(), text(m.supplier)}),
                              sign + words::amount(m.amount, supply->unit)});
        }
    }
    ledger_.show(std::move(ledger));
    emit detailChanged();
}

QString SuppliesController::count(const QString& code, const QString& typed)
{
    const auto amount = typed_amount(typed);
    if (!amount) return tr("“%1” is not a number").arg(typed);
    const auto done = book::count(day_.book(), shop::SupplyCode{utf8(code)}, *amount, tr("counted").toStdString());
    if (!done) return words::refused(done.error());
    emit said(tr("%1 counted: %2").arg(code, typed));
    day_.moved();
    return {};
}

QString SuppliesController::receive(const QString& code, const QString& typed, const QString& cost)
{
    const auto amount = typed_amount(typed);
    if (!amount || amount->thousandths == 0) return tr("“%1” is not a number above zero").arg(typed);
    const shop::Supply* supply = day_.cupboard().supply({utf8(code)});
    std::optional<Money> paid;
    if (!cost.trimmed().isEmpty()) {
        paid = typed_money(cost, day_.cupboard().house.currency);
        if (!paid) return tr("“%1” is not an amount of money").arg(cost);
    }
    const auto done =
        book::receive(day_.book(), {utf8(code)}, *amount, paid, supply != nullptr ? supply->supplier : std::string());
    if (!done) return words::refused(done.error());
    emit said(tr("%1 of %2 received").arg(typed, code));
    day_.moved();
    return {};
}

QString SuppliesController::spoil(const QString& code, const QString& typed, const QString& why)
{
    const auto amount = typed_amount(typed);
    if (!amount || amount->thousandths == 0) return tr("“%1” is not a number above zero").arg(typed);
    const auto done = book::spoil(day_.book(), shop::SupplyCode{utf8(code)}, *amount, utf8(why));
    if (!done) return words::refused(done.error());
    emit said(tr("%1 of %2 spoilt").arg(typed, code));
    day_.moved();
    return {};
}

DraftPaper SuppliesController::draft()
{
    return {name_of_paper(text(paper_key::reorder_list)), reorder_paper(day_), &palette_of(day_), tr("Print"),
            [this] { printReorder(); }};
}

void SuppliesController::printReorder()
{
    const auto file = print_reorder_list(day_, paper_folder(day_));
    if (file) emit written(text(paper_key::reorder_list), text(file->string()));
    emit said(file ? tr("Reorder list: %1").arg(text(file->string())) : tr("There is nothing to reorder."));
}

void SuppliesController::takeIn(const QUrl& file)
{
    emit said(taken_words(take_in(day_, TakeInKind::supplies, file.toLocalFile().toStdString())));
}

} // namespace stow::view
