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
#include "app/words/reasons.h"
#include "core/book/cupboard.h"
#include "core/book/ledger.h"
#include "core/shop/check_digits.h"
#include "core/shop/countries.h"

#include <algorithm>

namespace stow::view {

namespace {

QString turns_word(const Turns& turns)
{
    switch (turns.rule) {
    case Turns::Rule::any: return QStringLiteral("any");
    case Turns::Rule::upright: return QStringLiteral("upright");
    case Turns::Rule::flat: return QStringLiteral("flat");
    case Turns::Rule::fixed: return QStringLiteral("fixed");
    case Turns::Rule::listed: return QStringLiteral("any");
    }
    return {};
}

Turns::Rule turns_rule(const QString& word)
{
    if (word == QLatin1String("upright")) return Turns::Rule::upright;
    if (word == QLatin1String("flat")) return Turns::Rule::flat;
    if (word == QLatin1String("fixed")) return Turns::Rule::fixed;
    return Turns::Rule::any;
}

QString size_words(const Shape& shape)
{
    if (const auto* block = std::get_if<Block>(&shape)) return words::size(block->size);
    if (const auto* c = std::get_if<Cylinder>(&shape)) {
        return GoodsController::tr("⌀ %1, %2 high").arg(words::length(c->diameter), words::length(c->height));
    }
    if (const auto* s = std::get_if<Sheet>(&shape)) return words::size({s->length, s->width, s->thickness});
    if (const auto* r = std::get_if<Roll>(&shape)) {
        return GoodsController::tr("⌀ %1, %2 long").arg(words::length(r->diameter), words::length(r->length));
    }
    return GoodsController::tr("soft, %1").arg(words::litres(std::get<Soft>(shape).volume));
}

} // namespace

GoodsController::GoodsController(Day& day, QObject* parent)
    : QObject(parent), day_(day),
      rows_({{tr("by code"), {}},
             {tr("fewest first"), [](const auto& a, const auto& b) { return a.pieces < b.pieces; }},
             {tr("heaviest first"), [](const auto& a, const auto& b) { return a.mean > b.mean; }},
             {tr("by shelf"), [](const auto& a, const auto& b) { return a.shelf.localeAwareCompare(b.shelf) < 0; }}})
{
}

void GoodsController::refresh()
{
    std::vector<GoodRow> rows;
    int few = 0;
    for (const auto& [code, good] : day_.cupboard().goods) {
        GoodRow row;
        row.code = text(code.text);
        row.name = text(good.name);
        if (good.parts.empty()) {
            row.size = size_words(good.shape);
            row.weight = words::weight_and_spread(good.weight);
            row.mean = good.weight.mean;
        } else {
            QStringList parts;
            for (const shop::SetPart& part : good.parts)
                parts += QStringLiteral("%1 %2").arg(part.count).arg(text(part.good.text));
            row.size = tr("set of %1").arg(parts.join(QStringLiteral(" + ")));
        }
        row.shelf = text(good.shelf);
        const auto pieces = day_.cupboard().pieces.find(code);
        row.pieces = pieces != day_.cupboard().pieces.end() ? pieces->second : 0;
        row.marks = joined({good.fragile ? tr("fragile") : QString(),
                            good.turns.rule == Turns::Rule::upright ? tr("this way up") : QString(),
                            good.liquid ? tr("liquid") : QString(),
                            good.restriction == shop::Restriction::flammable ? tr("flammable") : QString(),
                            good.softens_above_c ? tr("softens above %1 °C").arg(*good.softens_above_c) : QString()});
        if (good.parts.empty() && row.pieces < good.lowest) {
            row.warning = tr("make more: %1 left, lowest %2").arg(row.pieces).arg(good.lowest);
            ++few;
        }
        rows.push_back(std::move(row));
    }
    headline_ = few > 0 ? tr("%n goods", nullptr, static_cast<int>(rows.size())) + QStringLiteral(", ") +
                              tr("%n to make more of", nullptr, few)
                        : tr("%n goods", nullptr, static_cast<int>(rows.size()));
    rows_.show(std::move(rows));
    emit changed();
}

QVariantMap GoodsController::good(int index) const
{
    const GoodRow* row = rows_.shown(index);
    const shop::Good* good = row != nullptr ? day_.cupboard().good({utf8(row->code)}) : nullptr;
    if (good == nullptr) return {};
    QString shape, first, second, third;
    if (const auto* block = std::get_if<Block>(&good->shape)) {
        shape = QStringLiteral("block");
        first = number(in_mm(block->size.x));
        second = number(in_mm(block->size.y));
        third = number(in_mm(block->size.z));
    } else if (const auto* c = std::get_if<Cylinder>(&good->shape)) {
        shape = QStringLiteral("cylinder");
        first = number(in_mm(c->diameter));
        second = number(in_mm(c->height));
    } else if (const auto* s = std::get_if<Sheet>(&good->shape)) {
        shape = QStringLiteral("sheet");
        first = number(in_mm(s->length));
        second = number(in_mm(s->width));
        third = number(in_mm(s->thickness));
    } else if (const auto* soft = std::get_if<Soft>(&good->shape)) {
        shape = QStringLiteral("soft");
        first = number(in_litres(soft->volume));
        second = number(in_mm(soft->least));
    }
    const auto pieces = day_.cupboard().pieces.find(good->code);
    return {{QStringLiteral("code"), text(good->code.text)},
            {QStringLiteral("name"), text(good->name)},
            {QStringLiteral("shape"), shape},
            {QStringLiteral("first"), first},
            {QStringLiteral("second"), second},
            {QStringLiteral("third"), third},
            {QStringLiteral("weight"), number(in_grams(good->weight.mean))},
            {QStringLiteral("spread"), number(2 * in_grams(good->weight.spread))},
            {QStringLiteral("turns"), turns_word(good->turns)},
            {QStringLiteral("cushion"), number(in_mm(good->cushion))},
            {QStringLiteral("fragile"), good->fragile},
            {QStringLiteral("liquid"), good->liquid},
            {QStringLiteral("shelf"), text(good->shelf)},
            {QStringLiteral("pieces"), QString::number(pieces != day_.cupboard().pieces.end() ? pieces->second : 0)},
            {QStringLiteral("lowest"), QString::number(good->lowest)},
            {QStringLiteral("gtin"), text(good->gtin)},
            {QStringLiteral("price"), good->price ? words::money(*good->price) : QString()},
            {QStringLiteral("customsWords"), text(good->customs_words)},
            {QStringLiteral("hsCode"), text(good->hs_code)},
            {QStringLiteral("origin"), text(good->origin)},
            {QStringLiteral("wrapping"), text(good->wrapping.text)}};
}

namespace {

// The shape as typed, or which measure is wrong.
tl::expected<Shape, QString> typed_shape(const QVariantMap& typed, const Shape& before)
{
    const auto length = [&](const char* key) { return typed_length(typed.value(QString::fromLatin1(key)).toString()); };
    const QString kind = typed.value(QStringLiteral("shape")).toString();
    const auto first = length("first"), second = length("second"), third = length("third");
    if (kind == QLatin1String("soft")) {
        const auto volume = typed_litres(typed.value(QStringLiteral("first")).toString());
        if (!volume) return tl::unexpected(GoodsController::tr("the volume is not a number of litres above zero"));
        return Soft{*volume, second.value_or(Length{})};
    }
    if (!first || !second)
        return tl::unexpected(GoodsController::tr("the size needs numbers of millimetres above zero"));
    if (kind == QLatin1String("cylinder")) return Cylinder{*first, *second};
    if (!third)
        return tl::unexpected(GoodsController::tr("the third measure is not a number of millimetres above zero"));
    if (kind == QLatin1String("sheet")) {
        const auto* sheet = std::get_if<Sheet>(&before);
        return Sheet{*first, *second, *third, sheet != nullptr ? sheet->least_roll : std::nullopt};
    }
    return Block{{*first, *second, *third}};
}

} // namespace

QString GoodsController::keep(const QVariantMap& typed)
{
    const auto value = [&](const char* key) { return typed.value(QString::fromLatin1(key)).toString().trimmed(); };
    const shop::GoodCode code{utf8(value("code"))};
    if (code.empty()) return tr("the code is missing");
    if (value("name").isEmpty()) return tr("the name is missing");
    const shop::Good* before = day_.cupboard().good(code);
    if (before != nullptr && typed.value(QStringLiteral("fresh")).toBool())
        return tr("there is a good of this code already");
    shop::Good good = before != nullptr ? *before : shop::Good{};
    good.code = code;
    good.name = utf8(value("name"));
    const auto shape = typed_shape(typed, good.shape);
    if (!shape && good.parts.empty()) return shape.error();
    if (shape) good.shape = *shape;
    const auto weight = typed_weight(value("weight"));
    if (!weight && good.parts.empty()) return tr("the weight is not a number of grams above zero");
    if (weight) good.weight.mean = *weight;
    constexpr Weight most = grams(1'000'000);
    if (good.weight.mean > most) return tr("the weight is more than %1").arg(words::weight(most));
    const auto none = [&](const char* key) { return value(key).isEmpty() || value(key) == QLatin1String("0"); };
    const auto two_sigma = typed_weight(value("spread"));
    if (!two_sigma && !none("spread")) return tr("“%1” is not a number of grams, give or take").arg(value("spread"));
    good.weight.spread = {two_sigma.value_or(Weight{}).units / 2}; // as it is shown: 19 times of 20 it is within
    if (good.turns.rule != Turns::Rule::listed) good.turns.rule = turns_rule(value("turns"));
    const auto cushion = typed_length(value("cushion"));
    if (!cushion && !none("cushion")) return tr("“%1” is not a number of millimetres of cushion").arg(value("cushion"));
    good.cushion = cushion.value_or(Length{});
    good.fragile = typed.value(QStringLiteral("fragile")).toBool();
    good.liquid = typed.value(QStringLiteral("liquid")).toBool();
    good.shelf = utf8(value("shelf"));
    bool number_of_pieces = false;
    good.lowest = value("lowest").toInt(&number_of_pieces);
    if (!none("lowest") && (!number_of_pieces || good.lowest < 0))
        return tr("“%1” is not a number of pieces").arg(value("lowest"));
    good.gtin = utf8(value("gtin"));
    if (!good.gtin.empty() && !shop::gtin_ok(good.gtin))
        return tr("“%1” is not a number below bars").arg(value("gtin"));
    good.price.reset();
    if (!value("price").isEmpty()) {
        good.price = typed_money(value("price"), day_.cupboard().house.currency);
        if (!good.price) return tr("“%1” is not a price").arg(value("price"));
    }
    good.customs_words = utf8(value("customsWords"));
    good.hs_code = utf8(value("hsCode"));
    good.origin = utf8(value("origin").toUpper());
    if (!good.origin.empty() && !shop::is_country(good.origin))
        return tr("“%1” is not a country: two letters, such as DE or NO").arg(value("origin"));
    good.wrapping = {utf8(value("wrapping"))};
    if (!good.wrapping.empty() && day_.cupboard().wrapping(good.wrapping) == nullptr) {
        return tr("there is no wrapping with the code %1").arg(value("wrapping"));
    }
    bool whole = false;
    const int pieces = value("pieces").toInt(&whole);
    if (!value("pieces").isEmpty() && (!whole || pieces < 0))
        return tr("“%1” is not a number of pieces").arg(value("pieces"));
    if (before == nullptr) good.pieces = pieces;
    if (const auto done = book::put_good(day_.book(), good); !done) return words::refused(done.error());
    const auto there = day_.cupboard().pieces.find(code);
    if (before != nullptr && whole && (there == day_.cupboard().pieces.end() || there->second != pieces)) {
        if (const auto done = book::count(day_.book(), code, pieces, tr("counted").toStdString()); !done)
            return words::refused(done.error());
    }
    emit said(tr("%1 is kept").arg(text(code.text)));
    day_.moved();
    return {};
}

QString GoodsController::count(int index, const QString& pieces)
{
    const GoodRow* row = rows_.shown(index);
    if (row == nullptr) return {};
    bool whole = false;
    const int found = pieces.toInt(&whole);
    if (!whole || found < 0) return tr("“%1” is not a number of pieces").arg(pieces);
    if (const auto done = book::count(day_.book(), shop::GoodCode{utf8(row->code)}, found, tr("counted").toStdString());
        !done) {
        return words::refused(done.error());
    }
    day_.moved();
    return {};
}

DraftPaper GoodsController::draft()
{
    return {name_of_paper(text(paper_key::making_list)), making_paper(day_), &palette_of(day_), tr("Print"),
            [this] { printMaking(); }};
}

void GoodsController::printMaking()
{
    const auto file = print_making_list(day_, paper_folder(day_));
    if (file) emit written(text(paper_key::making_list), text(file->string()));
    emit said(file ? tr("Making list: %1").arg(text(file->string())) : tr("There is nothing to make."));
}

void GoodsController::takeIn(const QUrl& file)
{
    emit said(taken_words(take_in(day_, TakeInKind::goods, file.toLocalFile().toStdString())));
}

} // namespace stow::view
