#include "app/paper_troubles.h"

#include "app/day_papers.h"
#include "app/painting/coverage.h"
#include "core/papers/address.h"
#include "core/papers/text.h"

#include <QCoreApplication>
#include <QStringList>

#include <set>

namespace stow {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(PaperTroubles)
};

// Addresses, gift notes and personal texts of its orders.
std::string written_by_the_buyers(const Day& day, const shop::Parcel& parcel)
{
    std::set<shop::OrderId> seen;
    std::string texts;
    const auto add = [&](const std::string& text) { texts += text + '\n'; };
    for (const shop::Piece& piece : parcel.pieces) {
        const shop::HeldOrder* held = day.order(piece.order);
        if (held == nullptr || !seen.insert(piece.order).second) continue;
        const shop::Order& order = held->order;
        for (const std::string& line : papers::address_lines(order.to, day.cupboard().house.address.country)) add(line);
        if (order.gift) add(order.gift->giver + '\n' + order.gift->message);
        for (const shop::OrderLine& line : order.lines) add(line.personal_text);
    }
    return texts;
}

QString listed(const std::vector<std::string>& names)
{
    QStringList list;
    for (const std::string& name : names) list += QString::fromStdString(name);
    return list.join(QStringLiteral(", "));
}

} // namespace

std::vector<PaperTrouble> paper_troubles(const Day& day, const std::vector<shop::ParcelId>& parcels)
{
    std::vector<PaperTrouble> found;
    const std::map<std::string, papers::LabelFit> fits = label_fits(day, parcels);
    for (const shop::ParcelId id : parcels) {
        const auto held = book::parcel(day.book(), id);
        if (!held) continue;
        PaperTrouble trouble{held->parcel.number,
                             painting::letters_without_font(written_by_the_buyers(day, held->parcel))};
        if (const auto fit = fits.find(trouble.parcel); fit != fits.end()) trouble.label = fit->second;
        if (!trouble.letters.empty() || trouble.label != papers::LabelFit::all_of_it)
            found.push_back(std::move(trouble));
    }
    return found;
}

QString words_of(const std::vector<PaperTrouble>& troubles)
{
    std::vector<std::string> boxes, without_marks, too_long;
    std::set<std::string> packages;
    bool without_package = false;
    for (const PaperTrouble& one : troubles) {
        if (!one.letters.empty()) boxes.push_back(one.parcel);
        if (one.label == papers::LabelFit::without_marks) without_marks.push_back(one.parcel);
        if (one.label == papers::LabelFit::too_long) too_long.push_back(one.parcel);
        for (const std::string_view letter : papers::letters(one.letters)) {
            const std::string package = painting::package_with(letter);
            without_package = without_package || package.empty();
            if (!package.empty()) packages.insert(package);
        }
    }
    QStringList said;
    if (!boxes.empty()) {
        said += Words::tr("This computer has no font for some letters of %1: the papers show boxes in their place.")
                    .arg(listed(boxes));
    }
    if (!packages.empty()) {
        said += Words::tr("Install %1, start the program again and print anew.")
                    .arg(listed({packages.begin(), packages.end()}));
    }
    if (without_package) said += Words::tr("For some there is no font to install: mend the order.");
    if (!without_marks.empty()) {
        said += Words::tr("The long address of %1 leaves no room for all handling marks: put them on by hand, or take "
                          "larger labels.")
                    .arg(listed(without_marks));
    }
    if (!too_long.empty()) {
        said += Words::tr("The address of %1 is too long for this label: shorten it, or take larger labels.")
                    .arg(listed(too_long));
    }
    return said.join(QLatin1Char(' '));
}

} // namespace stow
