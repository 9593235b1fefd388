#include "app/view/paper_ways.h"

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
    return {{"pick-list", Say::tr("Pick list")},
            {"pick-list-by-order", Say::tr("Pick list by order")},
            {"packing-slips", Say::tr("Packing slips")},
            {"bench-cards", Say::tr("Bench cards")},
            {"labels", Say::tr("Labels")},
            {"return-labels", Say::tr("Return labels")},
            {"gift-notes", Say::tr("Gift notes")},
            {"customs", Say::tr("Customs data")},
            {"hand-over-list", Say::tr("Hand-over list")},
            {"reorder-list", Say::tr("Reorder list")},
            {"making-list", Say::tr("Making list")},
            {"packaging", Say::tr("Packaging report")},
            {"paper-box", Say::tr("Paper box template")},
            {"command-cards", Say::tr("Command cards")}};
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
    return single && !typed_way(day, QStringLiteral("labels")).isEmpty();
}

void set_way(Day& day, const QString& paper, const QString& typed)
{
    book::remember(day.book(), remembered_as(paper), utf8(typed.trimmed()));
}

} // namespace stow::view
