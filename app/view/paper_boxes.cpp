#include "app/view/paper_boxes.h"

#include "app/day_papers.h"
#include "app/her_papers.h"
#include "app/paper_keys.h"
#include "app/supply_papers.h"
#include "app/view/paper_ways.h"
#include "app/view/text.h"
#include "app/words/book.h"
#include "app/words/format.h"
#include "core/book/cupboard.h"
#include "core/papers/template.h"

#include <algorithm>
#include <array>

namespace stow::view {

namespace {

using paperbox::Kind;

constexpr std::array offered{Kind::one_square, Kind::tray, Kind::pillow, Kind::envelope}; // a tray has its lid
constexpr Length ease = mm(1), loop = mm(60), tail = mm(80), wrap_spare = mm(20);

QString kind_word(Kind kind)
{
    switch (kind) {
    case Kind::one_square: return PaperBoxesController::tr("gift box from one square");
    case Kind::tray: return PaperBoxesController::tr("tray and lid");
    case Kind::lid: return PaperBoxesController::tr("lid");
    case Kind::pillow: return PaperBoxesController::tr("pillow box");
    case Kind::envelope: break;
    }
    return PaperBoxesController::tr("envelope from one square");
}

QString flat(Length a, Length b)
{
    return words::length(a) + QStringLiteral(" × ") + words::length(b);
}

QString fault_words(paperbox::Fault fault)
{
    switch (fault) {
    case paperbox::Fault::no_size: return PaperBoxesController::tr("all its lengths must be above zero");
    case paperbox::Fault::flaps_miss:
        return PaperBoxesController::tr("the flaps of one square do not meet over that shape: a tray and lid does it");
    case paperbox::Fault::too_bulged: break;
    }
    return PaperBoxesController::tr("a pillow that thick does not close: make it wider, or less thick");
}

} // namespace

PaperBoxesController::PaperBoxesController(Day& day, QObject* parent) : QObject(parent), day_(day) {}

QStringList PaperBoxesController::kinds() const
{
    QStringList names;
    for (const Kind kind : offered) names += kind_word(kind);
    return names;
}

void PaperBoxesController::refresh()
{
    QStringList names;
    codes_.clear();
    for (const auto& [code, supply] : day_.cupboard().supplies) {
        if (supply.kind != shop::SupplyKind::paper || !supply.sheet) continue;
        codes_.push_back(code);
        names += text(supply.name);
    }
    if (names == papers_) return;
    papers_ = names;
    emit papersChanged();
}

QString PaperBoxesController::lay(int kind, int paper, const QString& length, const QString& width,
                                  const QString& height, bool around)
{
    if (kind < 0 || kind >= static_cast<int>(offered.size())) return tr("choose a kind");
    const Kind of = offered.at(static_cast<std::size_t>(kind));
    const bool flat_one = of == Kind::envelope && !around;
    const auto x = typed_length(length), y = typed_length(width);
    const auto z = height.trimmed().isEmpty() && of == Kind::envelope ? std::optional(Length{}) : typed_length(height);
    if (!x || !y || !z) return tr("lengths in millimetres, such as 120 or 82.5");
    paperbox::Wanted wanted{of, {*x, *y, flat_one ? Length{} : *z}};
    if (around) wanted = paperbox::around(of, {*x, *y, *z}, ease).value_or(wanted);
    const paperbox::Laid laid = paperbox::lay(wanted);
    made_.reset();
    wanted_.reset();
    if (!laid.net) {
        facts_.show({});
        net_ = {};
        emit changed();
        return fault_words(laid.fault);
    }
    wanted_ = wanted;
    if (paper >= 0 && paper < static_cast<int>(codes_.size())) {
        if (const shop::Supply* sheet = day_.cupboard().supply(codes_[static_cast<std::size_t>(paper)])) {
            made_ = planning::paper_outer(wanted, *sheet);
        }
    }
    show(*laid.net);
    return {};
}

void PaperBoxesController::show(const paperbox::Net& net)
{
    const Size room = paperbox::room_in(*wanted_);
    std::vector<PaperFact> facts;
    facts.push_back({tr("room inside"), room.z > Length{} ? words::size(room) : flat(room.x, room.y)});
    for (const paperbox::Wanted& piece : paperbox::pieces_of(*wanted_)) {
        const auto cut = paperbox::lay(piece).net;
        if (!cut) continue;
        facts.push_back(
            {piece.kind == Kind::lid ? tr("and for the lid") : tr("cut a sheet of"), flat(cut->length, cut->width)});
    }
    if (!net.edge_marks.empty()) {
        QStringList marks;
        for (const Length mark : net.edge_marks) marks += words::length(mark);
        facts.push_back({tr("marks along each edge, from the corner"), marks.join(QStringLiteral(", "))});
    }
    if (net.trim > Length{}) facts.push_back({tr("cut off the long flap by"), words::length(net.trim)});
    if (wanted_->kind != Kind::envelope) {
        facts.push_back({tr("ribbon, tied crosswise with a bow"), words::length(paperbox::ribbon(room, loop, tail))});
        const paperbox::WrapSheet wrap = paperbox::wrap_around(room, wrap_spare);
        facts.push_back({tr("wrapping paper"), flat(wrap.length, wrap.width)});
    }
    if (made_) {
        facts.push_back({tr("out of one sheet of the paper"), tr("%n pieces", nullptr, made_->from_a_sheet)});
        facts.push_back({tr("weighs"), words::weight(made_->supply.weight.mean)});
    } else {
        facts.push_back({tr("out of the paper chosen"), tr("it does not go on one sheet")});
    }
    net_ = {[net](papers::Extent extent, const papers::TextMeasure&) { return papers::draw(net, extent); },
            tr("The sheet with its cuts as lines and its scores dashed")};
    facts_.show(std::move(facts));
    emit changed();
}

void PaperBoxesController::setOpen(bool open)
{
    if (open == open_) return;
    open_ = open;
    emit openChanged();
}

std::vector<DraftPaper> PaperBoxesController::drafts()
{
    if (!wanted_) return {};
    DraftPaper draft{name_of_paper(text(paper_key::paper_box)), {}, &painting::black_only(), tr("Print"), [this] {
                         printTemplate();
                     }};
    for (const paperbox::Wanted& piece : paperbox::pieces_of(*wanted_)) {
        papers::Document sheets = box_template(piece, format_of(day_));
        if (draft.document.title.empty()) draft.document.title = sheets.title;
        std::move(sheets.pages.begin(), sheets.pages.end(), std::back_inserter(draft.document.pages));
    }
    return {std::move(draft)};
}

void PaperBoxesController::printTemplate()
{
    if (!wanted_) return;
    QStringList files;
    for (const paperbox::Wanted& piece : paperbox::pieces_of(*wanted_)) {
        const auto file = write_box_template(piece, format_of(day_), paper_folder(day_));
        if (!file) return emit said(tr("The template cannot be written."));
        files += text(file->string());
    }
    emit said(tr("Template at 1:1, with a ruler of 100 mm to check the printer by: %1").arg(joined(files)));
    for (const QString& file : files) emit written(text(paper_key::paper_box), file);
}

QString PaperBoxesController::keep(const QString& code, const QString& name, const QString& minutes)
{
    if (!made_) return tr("it does not go on one sheet of the paper chosen");
    if (code.trimmed().isEmpty()) return tr("a code is needed, such as BOX-S");
    if (day_.cupboard().supply({utf8(code)}) != nullptr) return tr("%1 is there already").arg(code.trimmed());
    bool whole = minutes.trimmed().isEmpty();
    const int spent = whole ? 0 : minutes.trimmed().toInt(&whole);
    if (!whole || spent < 0 || spent > 240) return tr("minutes: 0 to 240");
    shop::Supply outer = made_->supply;
    outer.code = {utf8(code)};
    outer.name = name.trimmed().isEmpty() ? utf8(code) : utf8(name);
    outer.minutes = spent;
    if (const auto done = book::put_supply(day_.book(), outer); !done) return words::refused(done.error());
    emit said(tr("%1 is one of your outers now, as long as the paper lasts").arg(text(outer.name)));
    day_.moved();
    return {};
}

} // namespace stow::view
