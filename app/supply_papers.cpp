#include "app/supply_papers.h"

#include "app/her_papers.h"
#include "app/painting/fonts.h"
#include "app/painting/paint.h"
#include "app/paper_keys.h"
#include "app/words/format.h"
#include "core/book/ledger.h"
#include "core/book/orders.h"
#include "core/book/parcels.h"
#include "core/book/prints.h"
#include "core/papers/need_list.h"
#include "core/papers/template.h"

#include <QObject>

#include <fstream>

namespace stow {

namespace {

using papers::Words;

std::string amount(shop::Amount a, shop::Unit unit)
{
    return words::amount(a, unit, QLocale::c()).toStdString();
}

std::string reorder_csv(const Day& day)
{
    std::string csv = "supplier,code,name,on_hand,reorder_at,order,packs,unit,cost,currency,lead_days\n";
    const auto plain = [](shop::Amount a) {
        return QLocale::c().toString(static_cast<double>(a.thousandths) / 1000.0, 'f', 3).remove(',').toStdString();
    };
    for (const supplies::ReorderList& from : reorder_lists(day)) {
        for (const supplies::ReorderLine& line : from.lines) {
            const shop::Supply& supply = *day.cupboard().supply(line.supply);
            csv += csv_cell(from.supplier) + ',' + csv_cell(supply.code.text) + ',' + csv_cell(supply.name) + ',' +
                   plain(line.on_hand) + ',' + plain(line.reorder_at) + ',' + plain(line.to_order) + ',' +
                   std::to_string(line.packs) + ',' + std::string(shop::name_of(supply.unit)) + ',' +
                   words::money(line.cost, QLocale::c()).remove(',').toStdString() + ',' + line.cost.currency.code() +
                   ',' + std::to_string(line.lead_days) + '\n';
        }
    }
    return csv;
}

// No page where there is nothing on the list.
papers::Document laid_out(const Day& day, const papers::NeedList& list)
{
    if (list.groups.empty()) return {};
    const painting::FontMeasure measure;
    return papers::lay_out(list, blank_of(day), her_words(), measure);
}

} // namespace

std::map<shop::SupplyCode, supplies::Outlook> outlook_of(const Day& day)
{
    return supplies::outlook(day.cupboard().supplies, day.cupboard().on_hand, book::supplies_reserved(day.book()),
                             book::weekly_use(day.book(), day.book().now(), supplies::weeks_known),
                             day.cupboard().house.service_percent / 100.0);
}

std::vector<supplies::ReorderList> reorder_lists(const Day& day)
{
    return supplies::reorder_list(supplies::with_points(day.cupboard().supplies, outlook_of(day)),
                                  day.cupboard().on_hand, book::supplies_reserved(day.book()));
}

std::vector<planning::ToMake> making_list(const Day& day)
{
    std::vector<shop::HeldOrder> waiting; // what planned parcels hold is reserved already
    for (shop::HeldOrder& held : book::orders_to_plan(day.book())) {
        if (book::parcels_of(day.book(), held.id).empty()) waiting.push_back(std::move(held));
    }
    return planning::making_list(day.cupboard(), book::pieces_reserved(day.book()), waiting);
}

papers::Document reorder_paper(const Day& day)
{
    papers::NeedList list;
    list.kind = papers::NeedList::Kind::reorder;
    list.day = day.today();
    list.reprint = reprint_of(day, paper_key::reorder_list, {to_text(list.day)});
    for (const supplies::ReorderList& from : reorder_lists(day)) {
        papers::NeedList::Group group{from.supplier, {}};
        for (const supplies::ReorderLine& line : from.lines) {
            const shop::Supply& supply = *day.cupboard().supply(line.supply);
            const std::string packs = QObject::tr("%n packs of %1", nullptr, static_cast<int>(line.packs))
                                          .arg(words::amount(supply.pack, supply.unit, QLocale::c()))
                                          .toStdString();
            group.lines.push_back({supply.name, supply.code.text, packs, amount(line.on_hand, supply.unit),
                                   amount(line.to_order, supply.unit)});
        }
        list.groups.push_back(std::move(group));
    }
    return laid_out(day, list);
}

papers::Document making_paper(const Day& day)
{
    papers::NeedList list;
    list.kind = papers::NeedList::Kind::making;
    list.day = day.today();
    list.reprint = reprint_of(day, paper_key::making_list, {to_text(list.day)});
    papers::NeedList::Group group;
    for (const planning::ToMake& need : making_list(day)) {
        const shop::Good& good = *day.cupboard().good(need.good);
        std::string detail = good.shelf;
        if (need.waiting > 0) {
            detail +=
                (detail.empty() ? "" : " · ") + QObject::tr("%n wait for it", nullptr, need.waiting).toStdString();
        }
        if (need.first_promise) detail += " · " + her_words().date(*need.first_promise);
        group.lines.push_back(
            {good.name, good.code.text, detail, std::to_string(need.on_hand), std::to_string(need.make)});
    }
    if (!group.lines.empty()) list.groups.push_back(std::move(group));
    return laid_out(day, list);
}

std::optional<std::filesystem::path> print_reorder_list(Day& day, const std::filesystem::path& folder)
{
    auto file = write_document(folder, paper_key::reorder_list, reorder_paper(day), palette_of(day));
    if (!file) return std::nullopt;
    std::ofstream out(folder / (std::string(paper_key::reorder_list) + ".csv"), std::ios::binary);
    out << reorder_csv(day);
    if (!out.flush()) return std::nullopt;
    book::count_print(day.book(), paper_key::reorder_list, {to_text(day.today())});
    return file;
}

std::optional<std::filesystem::path> print_making_list(Day& day, const std::filesystem::path& folder)
{
    auto file = write_document(folder, paper_key::making_list, making_paper(day), palette_of(day));
    if (file) book::count_print(day.book(), paper_key::making_list, {to_text(day.today())});
    return file;
}

papers::Document box_template(const paperbox::Wanted& wanted, papers::Format format)
{
    const paperbox::Laid laid = paperbox::lay(wanted);
    if (!laid.net) return {};
    const std::string size = her_words().size(wanted.size), kind(paperbox::name_of(wanted.kind));
    const papers::BoxTemplate box{
        kind + " " + size,
        QObject::tr("sheet %1; cut along the lines, score the dashed ones")
            .arg(QString::fromStdString(her_words().flat_size({laid.net->length, laid.net->width, {}})))
            .toStdString(),
        *laid.net};
    const painting::FontMeasure measure;
    return papers::lay_out(box, format, her_words(), measure);
}

std::optional<std::filesystem::path> write_box_template(const paperbox::Wanted& wanted, papers::Format format,
                                                        const std::filesystem::path& folder)
{
    return write_document(folder, std::string(paper_key::paper_box) + "-" + std::string(paperbox::name_of(wanted.kind)),
                          box_template(wanted, format), painting::black_only());
}

} // namespace stow
