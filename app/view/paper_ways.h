// Which paper goes to which printer: remembered by the book, typed in the house's settings.
#pragma once

#include "app/day.h"
#include "app/printing/print_queue.h"

#include <QString>

#include <optional>
#include <vector>

namespace stow::view {

struct PrintedPaper {
    const char* key; // as in file names: "labels"
    QString name;
};
std::vector<PrintedPaper> printed_papers();
QString name_of_paper(const QString& key);

QString typed_way(const Day& day, const QString& paper); // as she typed it; empty: not printed
// A label of its own is printed when its parcel is right; sheets of several come with the round.
bool labels_at_the_bench(const Day& day);
void set_way(Day& day, const QString& paper, const QString& typed);

} // namespace stow::view
