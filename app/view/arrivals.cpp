#include "app/view/arrivals.h"

#include "app/take_in.h"
#include "app/view/away.h"
#include "app/view/text.h"
#include "app/words/book.h"
#include "app/words/format.h"
#include "app/words/reasons.h"
#include "core/book/orders.h"
#include "core/book/settings.h"
#include "core/intake/country_names.h"
#include "core/intake/csv.h"
#include "core/intake/table.h"
#include "core/shop/countries.h"

#include <QFileInfo>

#include <algorithm>
#include <set>

namespace stow::view {

struct ArrivalsController::File {
    intake::Csv csv;
    intake::ColumnMatch match;
};

namespace {

QString field_name(intake::OrderField field)
{
    using F = intake::OrderField;
    switch (field) {
    case F::number: return ArrivalsController::tr("order number");
    case F::date: return ArrivalsController::tr("date");
    case F::promised: return ArrivalsController::tr("promised day");
    case F::first_name: return ArrivalsController::tr("first name");
    case F::name: return ArrivalsController::tr("name");
    case F::company: return ArrivalsController::tr("company");
    case F::street: return ArrivalsController::tr("street");
    case F::house_number: return ArrivalsController::tr("house number");
    case F::street_2: return ArrivalsController::tr("second address line");
    case F::postcode: return ArrivalsController::tr("postcode");
    case F::town: return ArrivalsController::tr("town");
    case F::region: return ArrivalsController::tr("region");
    case F::country: return ArrivalsController::tr("country");
    case F::contact: return ArrivalsController::tr("e-mail or telephone");
    case F::title: return ArrivalsController::tr("what is ordered");
    case F::variant: return ArrivalsController::tr("variant");
    case F::shop_code: return ArrivalsController::tr("the shop's code");
    case F::count: return ArrivalsController::tr("how many");
    case F::price: return ArrivalsController::tr("price of one");
    case F::currency: return ArrivalsController::tr("currency");
    case F::personal_text: return ArrivalsController::tr("personal text");
    case F::note: return ArrivalsController::tr("note");
    case F::is_gift: return ArrivalsController::tr("is a gift");
    case F::gift_message: return ArrivalsController::tr("gift message");
    case F::giver: return ArrivalsController::tr("giver");
    case F::service: return ArrivalsController::tr("service asked for");
    case F::postage: return ArrivalsController::tr("postage paid");
    case F::paid: return ArrivalsController::tr("paid");
    case F::called_off: return ArrivalsController::tr("called off");
    }
    return {};
}

QString remedy(shop::OrderProblem problem)
{
    using P = shop::OrderProblem;
    switch (problem) {
    case P::unmatched_good: return ArrivalsController::tr("M says which good it is");
    case P::bad_postcode:
    case P::unknown_country:
    case P::missing_street: return ArrivalsController::tr("E mends the address");
    case P::joinable: return ArrivalsController::tr("J packs them together");
    case P::unpaid: return ArrivalsController::tr("P when its money is there");
    default: return {};
    }
}

Pile pile_for(const shop::OrderFinding& finding)
{
    using P = shop::OrderProblem;
    if (!finding.blocks) return Pile::look;
    return finding.problem == P::unmatched_good ? Pile::match
           : finding.problem == P::unpaid       ? Pile::unpaid
                                                : Pile::mend;
}

std::string shop_of(const QString& file_name) // "harbour-fair_2026-11-25.csv" is of "harbour-fair"
{
    const QString base = QFileInfo(file_name).completeBaseName();
    const auto digit = std::find_if(base.begin(), base.end(), [](QChar c) { return c.isDigit(); });
    QString shop(base.constData(), digit - base.begin());
    while (!shop.isEmpty() && !shop.back().isLetter()) shop.chop(1);
    return (shop.isEmpty() ? base : shop).toStdString();
}

book::OrderIds ids_of(const std::vector<const shop::HeldOrder*>& orders)
{
    book::OrderIds ids;
    for (const shop::HeldOrder* held : orders) ids.push_back(held->id);
    return ids;
}

std::optional<Date> typed_date(const QString& typed)
{
    return intake::read_date(utf8(typed), intake::DateOrder::day_month);
}

} // namespace

ArrivalsController::ArrivalsController(Day& day, QObject* parent)
    : QObject(parent), day_(day),
      orders_({{tr("problems first"), {}},
               {tr("by promised day"), [](const auto& a, const auto& b) { return a.due < b.due; }},
               {tr("oldest first"), [](const auto& a, const auto& b) { return a.date < b.date; }},
               {tr("by buyer"), [](const auto& a, const auto& b) { return a.buyer.localeAwareCompare(b.buyer) < 0; }}})
{
}

ArrivedOrder ArrivalsController::row_of(const shop::HeldOrder& held, const Stands& stands) const
{
    const shop::Order& order = held.order;
    ArrivedOrder row;
    row.order = held.id.value;
    row.number = text(order.key.number);
    row.shop = text(order.key.shop);
    row.buyer = text(order.to.name);
    row.place = place_of(order.to);
    row.contents = contents_of(day_, order);
    row.date = order.date;
    row.due = order.promised.value_or(Date{std::chrono::year{9999} / 12 / 31});
    if (order.promised) row.promised = tr("promised %1").arg(words::date(*order.promised));
    row.ready = stands.checked;
    row.planned = stands.planned;
    row.aside = held.state == shop::OrderState::set_aside;
    row.joinable = stands.joinable;
    if (row.aside) {
        row.pile = Pile::aside;
        row.problem = text(held.aside_reason);
        if (held.aside_until) row.promised = tr("until %1").arg(words::date(*held.aside_until));
    } else if (stands.checked) {
        row.pile = stands.planned ? Pile::planned : Pile::ready;
    } else {
        auto findings = shop::look_over(order, day_.today());
        std::stable_sort(findings.begin(), findings.end(),
                         [](const auto& a, const auto& b) { return a.blocks > b.blocks; });
        QStringList said;
        for (const shop::OrderFinding& finding : findings) {
            said += words::finding(finding);
            row.blocks = row.blocks || finding.blocks;
            row.unmatched = row.unmatched || finding.problem == shop::OrderProblem::unmatched_good;
        }
        said.removeDuplicates();
        if (row.joinable) said += tr("the same buyer has another order");
        row.problem = said.join(QStringLiteral(" · "));
        if (!findings.empty()) {
            row.remedy = remedy(findings.front().problem);
            row.pile = pile_for(findings.front());
        } else if (row.joinable) {
            row.remedy = remedy(shop::OrderProblem::joinable);
            row.pile = Pile::look;
        }
    }
    return row;
}

const std::string& ArrivalsController::address_known(Known& known, const shop::HeldOrder& held) const
{
    const int revision = day_.revision(held.id);
    if (std::exchange(known.address_from, revision) != revision) known.address = shop::joining_key(held.order.to);
    return known.address;
}

// Worked out anew only where something it hangs on changed: there may be thousands.
const ArrivedOrder& ArrivalsController::row_known(Known& known, const shop::HeldOrder& held, const Stands& stands) const
{
    const Known::From from{day_.revision(held.id), day_.cupboard_revision(), day_.today(), stands};
    if (known.from != from) {
        known.row = row_of(held, stands);
        known.from = from;
    }
    return known.row;
}

void ArrivalsController::refresh()
{
    std::vector<const ArrivedOrder*> sorted;
    int need_a_look = 0, aside = 0, in_plan = 0;
    std::set<shop::OrderId> planned;
    for (const shop::Parcel& parcel : day_.parcels()) {
        if (parcel.state != shop::ParcelState::planned) continue;
        for (const shop::Piece& piece : parcel.pieces) planned.insert(piece.order);
    }
    ready_ = arrived_ready_ = 0;
    at_address_.clear();
    at_address_.reserve(day_.orders().size());
    if (known_.size() > 2 * day_.orders().size() + 100) known_.clear(); // mostly of orders that are gone
    struct Looked {
        const shop::HeldOrder& held;
        Known& known;
        const Open& there;
    };
    std::vector<Looked> all;
    all.reserve(day_.orders().size());
    for (const shop::HeldOrder& held : day_.orders()) {
        Known& known = known_[held.id.value];
        Open& there = at_address_[address_known(known, held)];
        all.push_back({held, known, there});
        const bool arrived = held.state == shop::OrderState::arrived;
        if (held.joined_to || (!arrived && held.state != shop::OrderState::checked)) continue;
        there.arrived += arrived ? 1 : 0; // orders that might travel together
        if (!there.first)
            there.first = held.id;
        else if (!there.second)
            there.second = held.id;
    }
    for (const auto& [held, known, there] : all) {
        const bool waits = held.state == shop::OrderState::arrived || held.state == shop::OrderState::set_aside;
        const bool checked = held.state == shop::OrderState::checked && day_.to_plan().contains(held.id);
        if (!waits && !checked) continue;
        const Stands stands{checked, checked && planned.contains(held.id), there.arrived > 1};
        const ArrivedOrder& row = *sorted.emplace_back(&row_known(known, held, stands));
        if (row.aside)
            ++aside;
        else if (checked)
            ++(stands.planned ? in_plan : ready_);
        else
            row.problem.isEmpty() ? ++arrived_ready_ : ++need_a_look;
    }
    std::stable_sort(sorted.begin(), sorted.end(), [](const auto* a, const auto* b) { return a->pile < b->pile; });
    piles_.clear();
    std::vector<ArrivedOrder> rows;
    rows.reserve(sorted.size());
    for (const ArrivedOrder* row : sorted) {
        ++piles_[row->pile];
        rows.push_back(*row);
    }
    const int was_at = orders_.rowOf(current_);
    orders_.show(std::move(rows));
    if (was_at >= 0 && orders_.rowOf(current_) < 0) { // gone from the list: the next one is at hand
        current_ = orders_.idAt(std::min(was_at, orders_.count() - 1));
    }

    headline_ = need_a_look > 0      ? tr("%n orders need a look", nullptr, need_a_look)
                : arrived_ready_ > 0 ? tr("%n orders arrived, nothing in the way", nullptr, arrived_ready_)
                : ready_ > 0         ? tr("All orders are checked")
                : in_plan > 0        ? tr("All orders are planned")
                                     : tr("Arrivals");
    summary_ = joined({arrived_ready_ > 0 ? tr("%n fine as they are", nullptr, arrived_ready_) : QString(),
                       ready_ > 0 ? tr("%n ready to plan", nullptr, ready_) : QString(),
                       in_plan > 0 ? tr("%n planned", nullptr, in_plan) : QString(),
                       aside > 0 ? tr("%n set aside", nullptr, aside) : QString()});

    refresh_goods();
    emit changed();
    look(current_);
}

QString ArrivalsController::pileWords(int pile) const
{
    const auto here = piles_.find(static_cast<Pile>(pile));
    if (here == piles_.end()) return {};
    const QString words = [&] {
        switch (here->first) {
        case Pile::match: return tr("Say which good it is");
        case Pile::mend: return tr("Mend the address");
        case Pile::unpaid: return tr("Wait for the money");
        case Pile::look: return tr("Look it over");
        case Pile::fine: return tr("Nothing in the way");
        case Pile::aside: return tr("Set aside");
        case Pile::ready: return tr("Ready to plan");
        case Pile::planned: return tr("Planned");
        }
        return QString();
    }();
    return tr("%1: %2", "a pile of orders and how many lie there").arg(words).arg(here->second);
}

void ArrivalsController::refresh_goods()
{
    std::vector<GoodChoice> goods;
    for (const auto& [code, good] : day_.cupboard().goods) goods.push_back({text(code.text), text(good.name)});
    goods_.show(std::move(goods));
}

// The first other open order to the same address; nothing: there is none, or it travels already.
const shop::HeldOrder* ArrivalsController::travels_with(const shop::HeldOrder& held) const
{
    const auto open = at_address_.find(shop::joining_key(held.order.to));
    if (held.joined_to || open == at_address_.end()) return nullptr;
    const Open& there = open->second;
    const auto other = there.first == held.id ? there.second : there.first;
    return other ? day_.order(*other) : nullptr;
}

void ArrivalsController::look(qlonglong order)
{
    current_ = order;
    detail_.clear();
    std::vector<OrderLineRow> lines;
    if (const shop::HeldOrder* held = day_.order({order})) {
        const shop::Order& o = held->order;
        QStringList problems;
        bool unmatched = false, blocked = false;
        if (held->state == shop::OrderState::arrived) {
            for (const shop::OrderFinding& finding : shop::look_over(o, day_.today())) {
                const QString help = remedy(finding.problem);
                const QString words =
                    words::finding(finding) + (help.isEmpty() ? QString() : QStringLiteral(". ") + help);
                problems += (finding.blocks ? QStringLiteral("× ") : QStringLiteral("! ")) + words;
                unmatched = unmatched || finding.problem == shop::OrderProblem::unmatched_good;
                blocked = blocked || finding.blocks;
            }
        }
        problems.removeDuplicates();
        if (!held->aside_reason.empty()) problems += QStringLiteral("! ") + text(held->aside_reason);
        QString join;
        if (const shop::HeldOrder* other = travels_with(*held))
            join = tr("Pack with %1").arg(text(other->order.key.number));
        QString street;
        for (const std::string& line : o.to.street)
            street += (street.isEmpty() ? QString() : QStringLiteral(", ")) + text(line);
        detail_ = {{QStringLiteral("number"), text(o.key.number)},
                   {QStringLiteral("shop"), text(o.key.shop)},
                   {QStringLiteral("date"), words::date(o.date)},
                   {QStringLiteral("state"), words::state(held->state)},
                   {QStringLiteral("address"), address_of(o.to, day_.cupboard().house.address.country)},
                   {QStringLiteral("name"), text(o.to.name)},
                   {QStringLiteral("street"), street},
                   {QStringLiteral("postcode"), text(o.to.postcode)},
                   {QStringLiteral("town"), text(o.to.town)},
                   {QStringLiteral("country"), text(o.to.country)},
                   {QStringLiteral("note"), text(o.note)},
                   {QStringLiteral("gift"),
                    o.gift ? tr("A gift from %1. %2").arg(text(o.gift->giver), text(o.gift->message)) : QString()},
                   {QStringLiteral("problems"), problems},
                   {QStringLiteral("unmatched"), unmatched},
                   {QStringLiteral("unpaid"), held->state == shop::OrderState::arrived && !o.paid},
                   {QStringLiteral("canCheck"), held->state == shop::OrderState::arrived && !blocked},
                   {QStringLiteral("canTakeBack"),
                    held->state == shop::OrderState::set_aside || held->state == shop::OrderState::called_off},
                   {QStringLiteral("joinWords"), join}};
        for (std::size_t i = 0; i < o.lines.size(); ++i) {
            const shop::OrderLine& line = o.lines[i];
            OrderLineRow row;
            row.line = static_cast<int>(i);
            row.count = line.count;
            row.title = joined({text(line.title), text(line.variant)}, QStringLiteral(", "));
            row.unmatched = line.good.empty();
            row.good =
                row.unmatched ? QString() : text(line.good.text) + QStringLiteral("  ") + good_name(day_, line.good);
            row.personal = text(line.personal_text);
            lines.push_back(std::move(row));
        }
    } else {
        current_ = 0;
    }
    lines_.show(std::move(lines));
    emit currentChanged();
}

// Files ---------------------------------------------------------------------------------------------------------------

void ArrivalsController::openFile(const QUrl& url)
{
    const QString path = url.isLocalFile() ? url.toLocalFile() : url.toString();
    auto file = std::make_shared<File>();
    file->csv = intake::read_csv_file(path.toStdString());
    if (file->csv.headings.empty()) {
        const QString why = file->csv.problems.empty() ? QString() : words::problem(file->csv.problems.front());
        emit said(tr("Nothing was taken in. %1").arg(why));
        return;
    }
    file_ = file;
    file_name_ = QFileInfo(path).fileName();
    // A shop whose columns are known and suit this file: straight in.
    for (const auto& [shop, columns] : book::all_columns(day_.book())) {
        const auto known = intake::column_match(columns);
        const bool suits = known && !known->headings.empty() &&
                           std::all_of(known->headings.begin(), known->headings.end(), [&](const auto& heading) {
                               const auto& there = file->csv.headings;
                               return std::find(there.begin(), there.end(), heading.second) != there.end();
                           });
        if (!suits || !intake::missing_fields(*known, file->csv).empty()) continue;
        file_->match = *known;
        takeIn();
        return;
    }
    shop_ = text(shop_of(file_name_));
    file_->match = columns_for(day_, file_->csv, utf8(shop_));
    matching_ = true;
    outcome_.clear();
    problems_.show({});
    showFile();
}

void ArrivalsController::showFile()
{
    if (!file_) return;
    fields_ = {tr("– not used –")};
    for (const intake::OrderField field : intake::all_order_fields) fields_ += field_name(field);
    std::vector<ColumnRow> rows;
    const intake::Csv& csv = file_->csv;
    for (std::size_t i = 0; i < csv.headings.size(); ++i) {
        ColumnRow row;
        row.heading = text(csv.headings[i]);
        for (const intake::CsvRow& line : csv.rows) {
            if (i < line.cells.size() && !line.cells[i].empty()) {
                row.example = text(line.cells[i]);
                break;
            }
        }
        for (const auto& [field, heading] : file_->match.headings) {
            if (heading != csv.headings[i]) continue;
            const auto& all = intake::all_order_fields;
            row.field = static_cast<int>(std::find(all.begin(), all.end(), field) - all.begin()) + 1;
        }
        rows.push_back(std::move(row));
    }
    columns_.show(std::move(rows));
    QStringList missing;
    for (const intake::OrderField field : intake::missing_fields(file_->match, csv)) missing += field_name(field);
    still_missing_ = missing.isEmpty() ? QString()
                                       : tr("%n still missing: %1", nullptr, static_cast<int>(missing.size()))
                                             .arg(missing.join(QStringLiteral(", ")));
    file_facts_ =
        joined({tr("%n rows", nullptr, static_cast<int>(csv.rows.size())), text(csv.encoding),
                csv.delimiter == '\t' ? tr("tabs between") : tr("“%1” between").arg(QLatin1Char(csv.delimiter)),
                csv.decimal_mark == ',' ? tr("decimal comma") : tr("decimal point")});
    emit fileChanged();
}

void ArrivalsController::setShop(const QString& shop)
{
    if (!file_ || shop == shop_) return;
    shop_ = shop;
    file_->match.shop = utf8(shop);
    emit fileChanged();
}

void ArrivalsController::setField(int column, int field)
{
    if (!file_ || column < 0 || column >= static_cast<int>(file_->csv.headings.size())) return;
    const std::string& heading = file_->csv.headings[static_cast<std::size_t>(column)];
    auto& headings = file_->match.headings;
    for (auto it = headings.begin(); it != headings.end();)
        it = it->second == heading ? headings.erase(it) : std::next(it);
    if (field > 0) headings[intake::all_order_fields.at(static_cast<std::size_t>(field - 1))] = heading;
    showFile();
}

void ArrivalsController::takeIn()
{
    if (!file_) return;
    const TakenIn taken = away(day_, tr("Taking in %1").arg(file_name_),
                               [file = file_](Day& beside) { return take_in_orders(beside, file->csv, file->match); });
    std::vector<FileProblem> problems;
    int left_out = 0;
    for (const intake::Problem& problem : taken.problems) {
        problems.push_back({file_name_, words::problem(problem), problem.stops});
        left_out += problem.stops ? 1 : 0;
    }
    problems_.show(std::move(problems));
    outcome_ = tr("%1: %2").arg(
        file_name_, joined({tr("%n new", nullptr, taken.fresh),
                            taken.changed > 0 ? tr("%n changed", nullptr, taken.changed) : QString(),
                            taken.unchanged > 0 ? tr("%n known already", nullptr, taken.unchanged) : QString(),
                            taken.called_off > 0 ? tr("%n called off", nullptr, taken.called_off) : QString(),
                            left_out > 0 ? tr("%n rows left out", nullptr, left_out) : QString()},
                           QStringLiteral(", ")));
    // What was left out must be seen: the file then stays open with its problems beside it.
    matching_ = taken.refused || left_out > 0;
    if (!matching_)
        file_.reset();
    else
        showFile();
    emit fileChanged();
    emit said(outcome_);
}

void ArrivalsController::leaveFile()
{
    file_.reset();
    matching_ = false;
    emit fileChanged();
}

// One order -----------------------------------------------------------------------------------------------------------

void ArrivalsController::settle(const book::Done& done, const QString& words)
{
    emit said(done ? words : words::refused(done.error()));
    if (!done) return;
    orders_.unmark();
    day_.moved();
}

void ArrivalsController::matchLine(int line, const QString& good)
{
    const shop::HeldOrder* held = day_.order({current_});
    if (held == nullptr || good.isEmpty() || line < 0 || line >= static_cast<int>(held->order.lines.size())) return;
    const shop::OrderLine& l = held->order.lines[static_cast<std::size_t>(line)];
    settle(book::remember_match(day_.book(), {held->order.key.shop, l.title, l.variant, {utf8(good)}}),
           tr("“%1” is %2 from now on").arg(text(l.title), good));
}

std::vector<const shop::HeldOrder*> ArrivalsController::meant(qlonglong order) const
{
    std::vector<const shop::HeldOrder*> all;
    for (const qlonglong id : orders_.marked_or(order)) {
        if (const shop::HeldOrder* held = day_.order({id})) all.push_back(held);
    }
    return all;
}

void ArrivalsController::check(qlonglong order)
{
    book::OrderIds ids;
    QString in_the_way;
    const auto orders = meant(order);
    for (const shop::HeldOrder* held : orders) {
        if (held->state != shop::OrderState::arrived) continue;
        const auto findings = shop::look_over(held->order, day_.today());
        const auto blocks =
            std::find_if(findings.begin(), findings.end(), [](const auto& finding) { return finding.blocks; });
        const QString number = text(held->order.key.number);
        if (blocks == findings.end())
            ids.push_back(held->id);
        else
            in_the_way = orders.size() == 1 ? tr("Not yet: %1").arg(words::finding(*blocks))
                                            : tr("%1 not yet: %2").arg(number, words::finding(*blocks));
    }
    if (ids.empty()) {
        if (!in_the_way.isEmpty()) emit said(in_the_way);
        return;
    }
    const QString ready = ids.size() == 1 ? tr("Order %1 is ready").arg(text(day_.order(ids.front())->order.key.number))
                                          : tr("%n orders are ready", nullptr, static_cast<int>(ids.size()));
    settle(book::check_orders(day_.book(), ids), joined({ready, in_the_way}));
}

void ArrivalsController::checkAll()
{
    book::OrderIds ids;
    for (const ArrivedOrder& row : orders_.all()) {
        if (!row.ready && !row.aside && row.problem.isEmpty()) ids.push_back({row.order});
    }
    if (ids.empty()) return;
    const QString words = tr("%n orders are ready", nullptr, static_cast<int>(ids.size()));
    const auto done =
        away(day_, tr("Checking the orders"), [&ids](Day& beside) { return book::check_orders(beside.book(), ids); });
    emit said(done ? words : words::refused(done.error()));
}

QString ArrivalsController::setAside(qlonglong order, const QString& reason, const QString& until)
{
    const auto orders = meant(order);
    if (orders.empty()) return {};
    const auto day = typed_date(until);
    if (!day && !until.trimmed().isEmpty()) return tr("“%1” is not a day").arg(until);
    if (day && *day < day_.today()) return tr("%1 is past").arg(words::date(*day));
    const QString words = orders.size() == 1
                              ? tr("Order %1 set aside: %2").arg(text(orders.front()->order.key.number), reason)
                              : tr("%n orders set aside: %1", nullptr, static_cast<int>(orders.size())).arg(reason);
    settle(book::set_aside(day_.book(), ids_of(orders), utf8(reason), day), words);
    return {};
}

void ArrivalsController::takeBack(qlonglong order)
{
    auto orders = meant(order);
    std::erase_if(orders, [](const auto* held) { return held->state != shop::OrderState::set_aside; });
    if (orders.empty()) return;
    settle(book::take_back(day_.book(), ids_of(orders)),
           orders.size() == 1 ? tr("Order %1 is back").arg(text(orders.front()->order.key.number))
                              : tr("%n orders are back", nullptr, static_cast<int>(orders.size())));
}

void ArrivalsController::isPaid(qlonglong id)
{
    const shop::HeldOrder* held = day_.order({id});
    if (held == nullptr || held->order.paid) return;
    shop::Order order = held->order;
    order.paid = true;
    settle(book::edit_order(day_.book(), held->id, order), tr("Order %1 is paid").arg(text(order.key.number)));
}

void ArrivalsController::callOff(qlonglong order)
{
    const auto orders = meant(order);
    if (orders.empty()) return;
    settle(book::call_off(day_.book(), ids_of(orders)),
           orders.size() == 1 ? tr("Order %1 called off").arg(text(orders.front()->order.key.number))
                              : tr("%n orders called off", nullptr, static_cast<int>(orders.size())));
}

void ArrivalsController::join(qlonglong order)
{
    const shop::HeldOrder* held = day_.order({order});
    if (held == nullptr || held->joined_to) return;
    const shop::HeldOrder* other = travels_with(*held);
    if (other == nullptr) return;
    settle(book::join_orders(day_.book(), held->id, other->id),
           tr("%1 travels with %2").arg(text(held->order.key.number), text(other->order.key.number)));
}

namespace {

shop::Address typed_address(const QVariantMap& typed)
{
    const auto value = [&](const char* key) { return utf8(typed.value(QString::fromLatin1(key)).toString()); };
    shop::Address to;
    to.name = value("name");
    if (const std::string street = value("street"); !street.empty()) to.street = {street};
    to.postcode = value("postcode");
    to.town = value("town");
    const QString country = typed.value(QStringLiteral("country")).toString();
    to.country = intake::CountryNames().code(utf8(country)).value_or(utf8(country.toUpper()));
    return to;
}

// Empty: it can be delivered to.
QString fault_of(const shop::Address& to)
{
    if (to.name.empty()) return ArrivalsController::tr("the name is missing");
    if (to.street.empty()) return ArrivalsController::tr("house and street are missing");
    if (to.town.empty()) return ArrivalsController::tr("the town is missing");
    if (!shop::is_country(to.country))
        return ArrivalsController::tr("the country is its name, or two letters such as DE or NO");
    if (!shop::postcode_ok(to.country, to.postcode)) {
        return ArrivalsController::tr("“%1” is not a postcode of %2").arg(text(to.postcode), text(to.country));
    }
    return {};
}

// By its code, letter case aside where that leaves no doubt.
const shop::Good* good_called(const shop::Cupboard& cupboard, const shop::GoodCode& typed)
{
    if (const shop::Good* good = cupboard.good(typed)) return good;
    const shop::Good* found = nullptr;
    for (const auto& [code, good] : cupboard.goods) {
        if (text(code.text).compare(text(typed.text), Qt::CaseInsensitive) != 0) continue;
        if (found != nullptr) return nullptr;
        found = &good;
    }
    return found;
}

} // namespace

QString ArrivalsController::enterByHand(const QVariantMap& typed)
{
    shop::Order order;
    order.to = typed_address(typed);
    if (const QString fault = fault_of(order.to); !fault.isEmpty()) return fault;
    order.date = day_.today();
    order.key.shop = utf8(typed.value(QStringLiteral("shop")).toString());
    order.key.number = utf8(typed.value(QStringLiteral("number")).toString());
    if (order.key.shop.empty()) order.key.shop = tr("by hand").toStdString();
    if (order.key.number.empty()) {
        int next = 1;
        const std::string prefix = "H" + to_text(day_.today()).substr(2, 2) + to_text(day_.today()).substr(5, 2) + "-";
        const auto taken = [&](const std::string& number) {
            return std::any_of(day_.orders().begin(), day_.orders().end(), [&](const auto& held) {
                return held.order.key == shop::OrderKey{order.key.shop, number};
            });
        };
        while (taken(prefix + std::to_string(next))) ++next;
        order.key.number = prefix + std::to_string(next);
    }
    const QString lines = typed.value(QStringLiteral("lines")).toString();
    for (const QString& part : lines.split(QLatin1Char(','), Qt::SkipEmptyParts)) {
        const auto counted = intake::counted_codes(utf8(part), '.');
        if (!counted || counted->size() != 1) return tr("“%1” is not a count and a code").arg(part.trimmed());
        shop::OrderLine line;
        const std::int64_t thousandths = counted->front().thousandths;
        constexpr std::int64_t most = 9'999;
        if (thousandths % 1000 != 0 || thousandths <= 0 || thousandths > most * 1000)
            return tr("“%1”: a count from 1 to %2").arg(part.trimmed()).arg(most);
        line.count = static_cast<int>(thousandths / 1000);
        const shop::Good* good = good_called(day_.cupboard(), {counted->front().code});
        if (good == nullptr) return tr("there is no good with the code %1").arg(text(counted->front().code));
        line.good = good->code;
        line.title = good->name;
        line.price = good->price;
        order.lines.push_back(std::move(line));
    }
    if (order.lines.empty()) return tr("nothing is ordered yet");
    order.note = utf8(typed.value(QStringLiteral("note")).toString());
    if (typed.value(QStringLiteral("gift")).toBool()) {
        order.gift = shop::Gift{utf8(typed.value(QStringLiteral("giver")).toString()),
                                utf8(typed.value(QStringLiteral("message")).toString())};
    }
    const auto entered = book::enter_order(day_.book(), order);
    if (!entered) return words::refused(entered.error());
    emit said(tr("Order %1 is in").arg(text(order.key.number)));
    day_.moved();
    look(entered->value);
    return {};
}

QString ArrivalsController::mendAddress(qlonglong id, const QVariantMap& typed)
{
    const shop::HeldOrder* held = day_.order({id});
    if (held == nullptr) return {};
    shop::Order order = held->order;
    const shop::Address mended = typed_address(typed);
    if (const QString fault = fault_of(mended); !fault.isEmpty()) return fault;
    order.to.name = mended.name;
    order.to.street = mended.street;
    order.to.postcode = mended.postcode;
    order.to.town = mended.town;
    order.to.country = mended.country;
    const auto done = book::edit_order(day_.book(), {id}, order);
    if (!done) return words::refused(done.error());
    emit said(tr("Address of %1 mended").arg(text(order.key.number)));
    day_.moved();
    return {};
}

} // namespace stow::view
