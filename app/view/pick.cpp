#include "app/view/pick.h"

#include "app/day_papers.h"
#include "app/paper_troubles.h"
#include "app/view/away.h"
#include "app/view/paper_ways.h"
#include "app/view/text.h"
#include "app/words/book.h"
#include "core/book/parcels.h"
#include "core/book/settings.h"
#include "core/papers/pick_list.h"

#include <algorithm>
#include <filesystem>
#include <set>

namespace stow::view {

namespace {

constexpr const char* remembered_ticks = "pick.ticks"; // "round\nkey 0\nkey 2\n..."

std::string key_of(const papers::PickSheet::Line& line)
{
    return line.code + "\x1f" + line.personal_text;
}

std::vector<PaperKind> papers_of_a_round(const Day& day)
{
    std::vector<PaperKind> kinds{PaperKind::pick_list,     PaperKind::pick_list_by_order,
                                 PaperKind::packing_slips, PaperKind::bench_cards,
                                 PaperKind::labels,        PaperKind::gift_notes};
    // For workshops that put one into every parcel.
    if (!typed_way(day, QStringLiteral("return-labels")).isEmpty()) kinds.push_back(PaperKind::return_labels);
    return kinds;
}

bool printed_later(const Day& day, PaperKind kind)
{
    return kind == PaperKind::labels && labels_at_the_bench(day);
}

std::vector<shop::ParcelId> ids_of(const std::vector<book::Tray>& trays)
{
    std::vector<shop::ParcelId> ids;
    ids.reserve(trays.size());
    for (const book::Tray& tray : trays) ids.push_back(tray.parcel);
    return ids;
}

} // namespace

PickController::PickController(Day& day, QObject* parent) : QObject(parent), day_(day) {}

// The round under way: planned parcels that have a tray.
void PickController::refresh()
{
    std::vector<shop::Parcel> parcels;
    int waiting = 0;
    round_ = 0;
    for (const shop::Parcel& parcel : day_.parcels_in(shop::ParcelState::planned)) {
        if (parcel.tray.empty()) {
            ++waiting;
            continue;
        }
        parcels.push_back(parcel);
        if (const auto held = book::parcel(day_.book(), parcel.id)) round_ = std::max(round_, held->round);
    }
    can_start_ = parcels.empty() && waiting > 0;
    lines_.clear();
    if (!parcels.empty()) {
        std::vector<shop::Piece> pieces;
        for (const shop::Parcel& parcel : parcels)
            pieces.insert(pieces.end(), parcel.pieces.begin(), parcel.pieces.end());
        lines_ = papers::pick_sheet(day_.today(), round_, parcels, orders_of(day_, pieces), day_.cupboard()).lines;
    }
    parcels_ = std::move(parcels);
    read_ticks();
    show();
    if (can_start_) {
        const int trays = std::min(waiting, std::max(1, day_.cupboard().house.trays));
        headline_ =
            tr("%n parcels to pick", nullptr, waiting) + QStringLiteral(" · ") + tr("%n trays a round", nullptr, trays);
        emit changed();
    }
}

void PickController::read_ticks()
{
    ticked_.assign(lines_.size(), 0);
    ticks_.clear();
    taken_back_.clear();
    const QStringList kept =
        text(book::remembered(day_.book(), remembered_ticks).value_or("")).split(QLatin1Char('\n'), Qt::SkipEmptyParts);
    if (kept.isEmpty() || kept.front().toInt() != round_) return;
    for (std::size_t i = 0; i < lines_.size(); ++i) {
        const QString key = text(key_of(lines_[i])) + QLatin1Char('\x1e');
        for (const QString& line : kept) {
            if (line.startsWith(key)) ticked_[i] = line.mid(key.size()).toInt();
        }
    }
}

void PickController::keep_ticks()
{
    std::string kept = std::to_string(round_);
    for (std::size_t i = 0; i < lines_.size(); ++i) {
        if (ticked_[i] > 0) kept += "\n" + key_of(lines_[i]) + "\x1e" + std::to_string(ticked_[i]);
    }
    book::remember(day_.book(), remembered_ticks, kept);
}

namespace {
int pieces_of(const papers::PickSheet::Line& line)
{
    int pieces = 0;
    for (const auto& into : line.into) pieces += into.count;
    return pieces;
}
} // namespace

void PickController::show()
{
    std::vector<WalkRow> walk;
    std::map<std::string, int> missing;
    int pieces = 0, picked = 0;
    next_row_ = -1;
    QString shelf;
    for (std::size_t i = 0; i < lines_.size(); ++i) {
        const auto& line = lines_[i];
        WalkRow row;
        row.shelf = line.shelf.empty() ? tr("no place") : text(line.shelf);
        row.first = row.shelf != shelf;
        shelf = row.shelf;
        row.code = text(line.code);
        row.name = joined({text(line.name), text(line.variant)}, QStringLiteral(", "));
        row.personal = line.personal_text.empty() ? QString() : tr("“%1”").arg(text(line.personal_text));
        row.count = pieces_of(line);
        row.picked = std::min(ticked_[i], row.count);
        row.done = row.picked >= row.count;
        QStringList trays;
        int left = row.picked;
        for (const auto& into : line.into) {
            trays += into.count == 1 ? text(into.tray) : QStringLiteral("%1 (%2)").arg(text(into.tray)).arg(into.count);
            const int here = std::min(left, into.count);
            left -= here;
            missing[into.tray] += into.count - here;
        }
        row.trays = trays.join(QStringLiteral(" · "));
        pieces += row.count;
        picked += row.picked;
        if (!row.done && next_row_ < 0) next_row_ = static_cast<int>(i);
        walk.push_back(std::move(row));
    }
    std::vector<TrayRow> trays;
    for (const shop::Parcel& parcel : parcels_) {
        TrayRow row;
        row.name = text(parcel.tray);
        row.parcel = text(parcel.number);
        if (const auto* held = order_of(day_, parcel.pieces)) row.buyer = text(held->order.to.name);
        if (const auto held = book::parcel(day_.book(), parcel.id)) row.outer = text(held->plan.outer.text);
        row.missing = missing[parcel.tray];
        trays.push_back(std::move(row));
    }
    std::sort(trays.begin(), trays.end(), [](const auto& a, const auto& b) {
        return std::pair(a.name.size(), a.name) < std::pair(b.name.size(), b.name);
    });
    done_ = pieces == 0 ? 0.0 : static_cast<double>(picked) / pieces;
    round_done_ = !lines_.empty() && next_row_ < 0;
    headline_ = tr("Round %1: %2, %3 of %4 pieces")
                    .arg(round_)
                    .arg(tr("%n trays", nullptr, static_cast<int>(trays.size())))
                    .arg(picked)
                    .arg(pieces);
    next_.clear();
    next_trays_.clear();
    if (next_row_ >= 0) {
        const WalkRow& row = walk[static_cast<std::size_t>(next_row_)];
        const int still = row.count - row.picked;
        next_ = tr("%1: %2 × %3").arg(row.shelf).arg(still).arg(row.name);
        next_trays_ = tr("into tray %1").arg(row.trays) +
                      (row.personal.isEmpty() ? QString() : QStringLiteral("   ") + row.personal);
    }
    trays_.show(std::move(trays));
    walk_.show(std::move(walk));
    emit changed();
}

// The parcels of the round that would be started now, with their trays.
std::vector<book::Tray> PickController::next_trays() const
{
    std::vector<book::Tray> trays;
    const int most = std::max(1, day_.cupboard().house.trays);
    for (const shop::Parcel& parcel : day_.parcels_in(shop::ParcelState::planned)) {
        if (static_cast<int>(trays.size()) == most) break;
        if (!parcel.tray.empty()) continue;
        if (const auto standing = book::parcel_standing(day_.book(), parcel); standing.stops()) continue;
        const auto n = trays.size();
        std::string name(1, static_cast<char>('A' + n % 26));
        if (n >= 26) name += std::to_string(n / 26);
        trays.push_back({parcel.id, name});
    }
    return trays;
}

void PickController::startRound()
{
    const std::vector<book::Tray> trays = next_trays();
    if (trays.empty()) return;
    const auto round = book::start_round(day_.book(), trays);
    if (!round) {
        emit said(words::refused(round.error()));
        return;
    }
    day_.moved();
    const QString folder = text(paper_folder(day_).string());
    emit said(print(ids_of(trays))
                  ? tr("Round %1: the papers lie in %2").arg(*round).arg(folder)
                  : tr("Round %1 started, but papers could not be written into %2").arg(*round).arg(folder));
}

bool PickController::print(const std::vector<shop::ParcelId>& parcels)
{
    struct Written {
        PaperKind kind;
        std::filesystem::path file;
    };
    bool all_on_file = true;
    const auto files = away(day_, tr("Writing the papers of the round"), [&](Day& beside) {
        std::vector<Written> to_print;
        for (const PaperKind kind : papers_of_a_round(beside)) {
            const bool later = printed_later(beside, kind);
            const auto file = later ? write_paper(beside, kind, parcels, paper_folder(beside))
                                    : print_paper(beside, kind, parcels, paper_folder(beside));
            all_on_file = all_on_file && (file || only_some_have(kind));
            if (file && !later) to_print.push_back({kind, *file});
        }
        return to_print;
    });
    for (const Written& paper : files) {
        const QString name = text(name_of(paper.kind));
        emit written(name, text(paper.file.string()));
        const bool printed = !typed_way(day_, name).isEmpty();
        if (paper.kind == PaperKind::labels && printed) use_labels(day_, static_cast<int>(parcels.size()));
    }
    if (const QString trouble = words_of(paper_troubles(day_, parcels)); !trouble.isEmpty())
        emit wrong(tr("Something is wrong on paper"), trouble);
    return all_on_file;
}

std::vector<DraftPaper> PickController::drafts()
{
    std::vector<shop::ParcelId> under_way;
    for (const shop::Parcel& parcel : parcels_) under_way.push_back(parcel.id);
    const std::vector<book::Tray> next = under_way.empty() ? next_trays() : std::vector<book::Tray>{};
    std::vector<DraftPaper> drafts;
    if (under_way.empty() && next.empty()) return drafts;
    const auto again = [this, under_way] {
        const QString folder = text(paper_folder(day_).string());
        emit said(print(under_way) ? tr("The papers of round %1, marked as reprints, lie in %2").arg(round_).arg(folder)
                                   : tr("Papers could not be written into %1").arg(folder));
    };
    const QString trouble = words_of(paper_troubles(day_, under_way.empty() ? ids_of(next) : under_way));
    for (const PaperKind kind : papers_of_a_round(day_)) {
        if (printed_later(day_, kind)) continue;
        DraftPaper draft{name_of_paper(text(name_of(kind))), {}, &palette_of(day_, kind), {}, {}, trouble};
        if (under_way.empty()) {
            draft.document = paper_of_round(day_, kind, next);
            draft.print_words = tr("Start the round and print");
            draft.print = [this] { startRound(); };
        } else {
            draft.document = paper_of(day_, kind, under_way);
            draft.print_words = tr("Print all again");
            draft.print = again;
        }
        drafts.push_back(std::move(draft));
    }
    return drafts;
}

void PickController::set_tick(std::size_t line, int pieces)
{
    if (ticked_[line] == pieces) return;
    ticks_.push_back({line, ticked_[line], text(lines_[line].name)});
    taken_back_.clear();
    ticked_[line] = pieces;
    keep_ticks();
    show();
}

bool PickController::swap_tick(std::vector<Tick>& from, std::vector<Tick>& to)
{
    if (from.empty()) return false;
    Tick tick = std::move(from.back());
    from.pop_back();
    std::swap(ticked_[tick.line], tick.before);
    to.push_back(std::move(tick));
    keep_ticks();
    show();
    return true;
}

void PickController::tick(int row)
{
    if (row < 0 || row >= static_cast<int>(lines_.size())) return;
    const auto index = static_cast<std::size_t>(row);
    set_tick(index, pieces_of(lines_[index]));
}

void PickController::untick(int row)
{
    if (row < 0 || row >= static_cast<int>(lines_.size())) return;
    set_tick(static_cast<std::size_t>(row), 0);
}

void PickController::notThere(int row, bool broken)
{
    if (row < 0 || row >= static_cast<int>(lines_.size())) return;
    const papers::PickSheet::Line line = lines_[static_cast<std::size_t>(row)];
    const int there = ticked_[static_cast<std::size_t>(row)];
    // What was found fills the first trays; a broken piece costs the last tray only.
    int left = there;
    QStringList aside;
    std::vector<std::pair<std::string, int>> short_trays;
    for (const auto& into : line.into) {
        const int here = std::min(left, into.count);
        left -= here;
        if (here < into.count) short_trays.emplace_back(into.tray, broken ? 1 : into.count - here);
    }
    if (broken && short_trays.size() > 1) short_trays = {short_trays.back()};
    for (const auto& [tray, missing] : short_trays) {
        const auto parcel =
            std::find_if(parcels_.begin(), parcels_.end(), [t = tray](const auto& p) { return p.tray == t; });
        if (parcel == parcels_.end()) continue;
        const QString reason = (broken ? tr("%1 was broken") : tr("%1 was not on its shelf")).arg(text(line.name));
        const auto done = book::not_there(day_.book(), parcel->id, {line.code}, missing, reason.toStdString());
        if (!done) {
            emit said(words::refused(done.error()));
            break;
        }
        aside += text(tray);
    }
    if (aside.isEmpty()) return;
    day_.moved();
    emit said(tr("Tray %1 set aside: %2").arg(aside.join(QStringLiteral(", ")), text(line.name)));
}

void PickController::finishRound()
{
    if (!round_done_) return;
    for (const shop::Parcel& parcel : std::vector(parcels_)) {
        if (const auto done = book::mark_picked(day_.book(), parcel.id); !done) emit said(words::refused(done.error()));
    }
    day_.moved();
    emit roundFinished();
}

bool PickController::scan(const QString& code)
{
    const std::string scanned = utf8(code);
    for (std::size_t i = 0; i < lines_.size(); ++i) {
        const shop::Good* good = day_.cupboard().good({lines_[i].code});
        const bool same =
            lines_[i].code == scanned || (good != nullptr && !good->gtin.empty() && good->gtin == scanned);
        if (!same || ticked_[i] >= pieces_of(lines_[i])) continue;
        set_tick(i, ticked_[i] + 1);
        emit right();
        return true;
    }
    if (lines_.empty())
        emit said(tr("No round is under way."));
    else
        emit wrong(tr("Put it back"), tr("%1 is not wanted, or no more of it, in this round.").arg(code));
    return false;
}

} // namespace stow::view
