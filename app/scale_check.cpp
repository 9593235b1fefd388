#include "app/scale_check.h"

#include "app/words/format.h"
#include "core/planning/scene.h"
#include "core/weighing/drift.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace stow {

namespace {

using weighing::Thing;

struct Words {
    Q_DECLARE_TR_FUNCTIONS(scale)
};

} // namespace

ScaleCheck check_scale(const Day& day, const book::HeldParcel& parcel, shop::WeighingStage stage, Weight reading)
{
    weighing::Scene scene = planning::scene_of(parcel.plan, day.cupboard(), stage);
    // What the record of estimate against scale tells of this scale and of these weights.
    const std::vector<weighing::Weighed> record = book::weighed(day.book(), shop::WeighingStage::closed);
    std::vector<Weight> readings;
    for (const weighing::Weighed& w : record) readings.push_back(w.reading);
    if (const auto step = weighing::step_seen(readings)) {
        scene.circumstances.scale_step = std::max(scene.circumstances.scale_step, *step);
    }
    std::vector<weighing::Share> shares;
    for (const Thing& thing : scene.things) shares.push_back(thing.share);
    ScaleCheck check;
    check.by_parts = weighing::expected_weight(shares, scene.circumstances);
    scene.circumstances.spread_permille = weighing::spread_permille(record);
    check.finding = weighing::investigate(scene, reading);
    check.scale_step = scene.circumstances.scale_step;
    return check;
}

QString words_of(const Day& day, const weighing::Finding& finding)
{
    using Verdict = weighing::Finding::Verdict;
    using Kind = weighing::Explanation::Kind;
    const auto name = [&](const std::string& id) {
        const shop::Good* good = day.cupboard().good({id});
        const shop::Supply* supply = day.cupboard().supply({id});
        return QString::fromStdString(good != nullptr ? good->name : supply != nullptr ? supply->name : id);
    };
    const QString off = words::weight({std::abs(finding.off.units)});
    const QString how_far =
        finding.off < Weight{} ? Words::tr("%1 too light").arg(off) : Words::tr("%1 too heavy").arg(off);
    switch (finding.verdict) {
    case Verdict::right: return Words::tr("as expected");
    case Verdict::cannot_tell: return Words::tr("cannot tell what is wrong: %1").arg(how_far);
    case Verdict::named: break;
    }
    const weighing::Explanation& likely = finding.explanations.front();
    switch (likely.kind) {
    case Kind::missing: return Words::tr("most likely missing: %1 × %2").arg(likely.count).arg(name(likely.thing));
    case Kind::extra: return Words::tr("most likely too many: %1 × %2").arg(likely.count).arg(name(likely.thing));
    case Kind::swapped: return Words::tr("most likely %1 in place of %2").arg(name(likely.instead), name(likely.thing));
    case Kind::wrong_outer:
        return Words::tr("most likely packed in %1, not %2").arg(name(likely.instead), name(likely.thing));
    case Kind::insert_missing: return Words::tr("most likely missing: %1").arg(name(likely.thing));
    case Kind::right:
    case Kind::something_else: break;
    }
    return Words::tr("cannot tell what is wrong: %1").arg(how_far);
}

QString drift_words(const Day& day)
{
    const auto drift = weighing::drift(book::weighed(day.book(), shop::WeighingStage::closed));
    if (!drift) return {};
    const QString off = words::weight({std::abs(drift->mean_off.units)});
    return drift->mean_off < Weight{} ? Words::tr("the last %1 parcels were %2 lighter than reckoned: check the scale")
                                            .arg(drift->parcels)
                                            .arg(off)
                                      : Words::tr("the last %1 parcels were %2 heavier than reckoned: check the scale")
                                            .arg(drift->parcels)
                                            .arg(off);
}

} // namespace stow
