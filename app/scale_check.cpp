#include "app/scale_check.h"

#include "app/words/format.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace stow {

namespace {

using weighing::Thing;

struct Words {
    Q_DECLARE_TR_FUNCTIONS(scale)
};

bool is_board(const shop::Supply& supply)
{
    return supply.material == shop::Material::paper;
}

class SceneMaker {
public:
    explicit SceneMaker(const shop::Cupboard& cupboard) : cupboard_(cupboard)
    {
        const shop::House& house = cupboard.house;
        scene_.circumstances = {house.humidity_percent * 10, house.scale_step};
    }

    void add(const planning::PackedItem& item, int times = 1)
    {
        const int count = item.count * times;
        switch (item.kind) {
        case planning::PackedItem::Kind::good: {
            const shop::Good* good = cupboard_.good(item.good);
            if (good == nullptr) break;
            scene_.things.push_back(
                {good->code.text, Thing::Kind::good, {good->weight, count, cupboard_.house.batch_percent * 10, false}});
            if (const shop::Wrapping* wrapping = cupboard_.wrapping(item.wrapping)) {
                scene_.things.push_back({wrapping->code.text, Thing::Kind::other, {wrapping->weight, count, 0, false}});
            }
            break;
        }
        case planning::PackedItem::Kind::insert:
        case planning::PackedItem::Kind::slip:
        case planning::PackedItem::Kind::gift_note:
            scene_.things.push_back({item.name, Thing::Kind::insert, {item.weight, count, 0, true}});
            break;
        case planning::PackedItem::Kind::gift_box:
            add_supply(item.supply, 1000 * count);
            for (const planning::PackedItem& inner : item.content) add(inner, count);
            break;
        case planning::PackedItem::Kind::roll:
            for (const planning::PackedItem& inner : item.content) add(inner, count);
            break;
        }
    }

    void add_supply(const shop::SupplyCode& code, std::int64_t thousandths, Thing::Kind kind = Thing::Kind::other)
    {
        const shop::Supply* supply = cupboard_.supply(code);
        if (supply == nullptr || thousandths == 0) return;
        const auto part = [&](Weight w) { return Weight{(w.units * thousandths + 500) / 1000}; };
        const weighing::Share share{{part(supply->weight.mean), part(supply->weight.spread)}, 1, 0, is_board(*supply)};
        scene_.things.push_back({code.text, kind, share});
    }

    // What might be in it by mistake: any good on the shelves, and for a closed parcel any outer on the rack.
    weighing::Scene finish(bool outers)
    {
        for (const auto& [code, good] : cupboard_.goods) {
            if (good.parts.empty()) scene_.goods.push_back({code.text, good.weight});
        }
        for (const auto& [code, supply] : cupboard_.supplies) {
            if (outers && supply.kind == shop::SupplyKind::outer) scene_.outers.push_back({code.text, supply.weight});
        }
        return std::move(scene_);
    }

private:
    const shop::Cupboard& cupboard_;
    weighing::Scene scene_;
};

} // namespace

weighing::Finding check_scale(const Day& day, const book::HeldParcel& parcel, shop::WeighingStage stage, Weight reading)
{
    const planning::ParcelPlan& plan = parcel.plan;
    const shop::House& house = day.cupboard().house;
    SceneMaker maker(day.cupboard());
    for (const planning::PackedItem& item : plan.items) maker.add(item);
    const bool closed = stage != shop::WeighingStage::contents;
    if (closed) {
        maker.add_supply(plan.outer, 1000, Thing::Kind::outer);
        maker.add_supply(house.filler, plan.filler_volume.units / 1'000'000);
        maker.add_supply(house.tape, plan.tape.units / 10);
    }
    if (stage == shop::WeighingStage::labelled) maker.add_supply(house.label, 1000);
    return weighing::investigate(maker.finish(closed), reading);
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

} // namespace stow
