#include "app/view/paper_ways.h"

#include "app/paper_keys.h"
#include "app/view/text.h"
#include "core/book/settings.h"
#include "core/papers/label.h"

#include <QCoreApplication>

namespace stow::view {

namespace {

struct Say {
    Q_DECLARE_TR_FUNCTIONS(PaperWays)
};

std::string remembered_as(const QString& paper)
{
    return "printer." + utf8(paper);
}

} // namespace

std::vector<PrintedPaper> printed_papers()
{
    return {{paper_key::pick_list, Say::tr("Pick list")},
            {paper_key::pick_list_by_order, Say::tr("Pick list by order")},
            {paper_key::packing_slips, Say::tr("Packing slips")},
            {paper_key::bench_cards, Say::tr("Bench cards")},
            {paper_key::labels, Say::tr("Labels")},
            {paper_key::return_labels, Say::tr("Return labels")},
            {paper_key::gift_notes, Say::tr("Gift notes")},
            {paper_key::customs, Say::tr("Customs data")},
            {paper_key::hand_over_list, Say::tr("Hand-over list")},
            {paper_key::reorder_list, Say::tr("Reorder list")},
            {paper_key::making_list, Say::tr("Making list")},
            {paper_key::packaging, Say::tr("Packaging report")},
            {paper_key::paper_box, Say::tr("Paper box template")},
            {paper_key::command_cards, Say::tr("Command cards")}};
}

QString name_of_paper(const QString& key)
{
    for (const PrintedPaper& paper : printed_papers()) {
        if (key == QLatin1String(paper.key)) return paper.name;
    }
    return key;
}

QString typed_way(const Day& day, const QString& paper)
{
    return text(book::remembered(day.book(), remembered_as(paper)).value_or(std::string()));
}

bool labels_at_the_bench(const Day& day)
{
    const bool single = papers::labels_on_a_sheet(day.cupboard().house.label_form) == 1;
    return single && !typed_way(day, text(paper_key::labels)).isEmpty();
}

void set_way(Day& day, const QString& paper, const QString& typed)
{
    book::remember(day.book(), remembered_as(paper), utf8(typed.trimmed()));
}

} // namespace stow::view
