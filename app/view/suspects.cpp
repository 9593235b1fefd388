#include "app/view/suspects.h"

#include "app/view/text.h"
#include "core/weighing/detective.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace stow::view {

namespace {

struct Say {
    Q_DECLARE_TR_FUNCTIONS(Bench)
};

void add_item(weighing::Scene& scene, const planning::PackedItem& item, int batch_permille)
{
    using Kind = planning::PackedItem::Kind;
    if (item.kind == Kind::gift_box || item.kind == Kind::roll) {
        for (const planning::PackedItem& inside : item.content) add_item(scene, inside, batch_permille);
        return;
    }
    weighing::Thing thing;
    const bool good = item.kind == Kind::good;
    thing.kind = good                        ? weighing::Thing::Kind::good
                 : item.kind == Kind::insert ? weighing::Thing::Kind::insert
                                             : weighing::Thing::Kind::other;
    thing.id = good ? item.good.text : item.supply.text;
    thing.share = {item.weight, item.count, good ? batch_permille : 0, !good};
    scene.things.push_back(std::move(thing));
}

QString name_of(const Day& day, const std::string& code)
{
    return day.cupboard().good({code}) != nullptr ? good_name(day, {code}) : supply_name(day, {code});
}

QString words_of(const Day& day, const weighing::Explanation& explanation)
{
    using Kind = weighing::Explanation::Kind;
    const QString thing = name_of(day, explanation.thing), instead = name_of(day, explanation.instead);
    switch (explanation.kind) {
    case Kind::right: return Say::tr("it may still be right");
    case Kind::missing: return Say::tr("missing: %1 × %2").arg(explanation.count).arg(thing);
    case Kind::extra: return Say::tr("too many: %1 × %2").arg(explanation.count).arg(thing);
    case Kind::swapped: return Say::tr("%1 in place of %2").arg(instead, thing);
    case Kind::wrong_outer: return Say::tr("outer %1 in place of %2").arg(instead, thing);
    case Kind::insert_missing: return Say::tr("missing: %1").arg(thing);
    case Kind::something_else: return Say::tr("something else");
    }
    return {};
}

} // namespace

QString suspicion(const Day& day, const planning::ParcelPlan& plan, Weight closed)
{
    const shop::Cupboard& cupboard = day.cupboard();
    constexpr int permille_a_percent = 10;
    weighing::Scene scene;
    scene.circumstances.humidity_permille = cupboard.house.humidity_percent * permille_a_percent;
    scene.circumstances.scale_step = cupboard.house.scale_step;
    Weight named;
    for (const planning::PackedItem& item : plan.items) {
        add_item(scene, item, cupboard.house.batch_percent * permille_a_percent);
        named += item.weight.mean * item.count;
    }
    if (const shop::Supply* outer = cupboard.supply(plan.outer)) {
        scene.things.push_back({plan.outer.text, weighing::Thing::Kind::outer, {outer->weight, 1, 0, true}});
        named += outer->weight.mean;
    }
    // Filler, tape, label and gift boxes: what is left of the estimate.
    if (plan.weight.mean > named) {
        scene.things.push_back({"", weighing::Thing::Kind::other, {{plan.weight.mean - named, {}}, 1, 0, true}});
    }
    for (const auto& [code, good] : cupboard.goods) {
        if (good.parts.empty()) scene.goods.push_back({code.text, good.weight});
    }
    for (const auto& [code, supply] : cupboard.supplies) {
        if (supply.form) scene.outers.push_back({code.text, supply.weight});
    }
    const weighing::Finding finding = weighing::investigate(scene, closed);
    if (finding.explanations.empty()) return {};
    const auto& best = finding.explanations.front();
    if (finding.verdict == weighing::Finding::Verdict::named) {
        return Say::tr("most likely %1 (%2 %)").arg(words_of(day, best)).arg(std::lround(100 * best.probability));
    }
    if (finding.explanations.size() < 2) return Say::tr("cannot tell why");
    return Say::tr("cannot tell: %1, or %2").arg(words_of(day, best), words_of(day, finding.explanations[1]));
}

} // namespace stow::view
