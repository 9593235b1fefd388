#include "core/planning/scene.h"

namespace stow::planning {

namespace {

using weighing::Share;
using weighing::Thing;

bool is_board(const shop::Supply& supply)
{
    return supply.material == shop::Material::paper;
}

Share share_of(const shop::LearntWeight& weight, int count, bool board)
{
    return {weight.one, count, weight.batch_permille, board};
}

class Things {
public:
    explicit Things(const shop::Cupboard& cupboard) : cupboard_(cupboard) {}

    void add(const std::vector<PackedItem>& items, int times = 1)
    {
        for (const PackedItem& item : items) add(item, item.count * times);
    }

    // So many thousandths of the unit of a supply. What is cut from one roll or bag is off together, not piece by
    // piece.
    void add(const shop::SupplyCode& code, std::int64_t thousandths, Thing::Kind kind = Thing::Kind::other)
    {
        const shop::Supply* supply = cupboard_.supply(code);
        if (supply == nullptr || thousandths == 0) return;
        shop::LearntWeight weight = cupboard_.weight_of(*supply);
        const auto part = [&](Weight w) { return Weight{(w.units * thousandths + 500) / 1000}; };
        weight.one = {part(weight.one.mean), part(weight.one.spread)};
        things_.push_back({code.text, kind, share_of(weight, 1, is_board(*supply))});
    }

    std::vector<Thing> take() { return std::move(things_); }

private:
    void add(const PackedItem& item, int count)
    {
        switch (item.kind) {
        case PackedItem::Kind::good: add_good(item, count); break;
        case PackedItem::Kind::gift_box:
            if (const shop::Supply* box = cupboard_.supply(item.supply)) {
                things_.push_back(
                    {box->code.text, Thing::Kind::other, share_of(cupboard_.weight_of(*box), count, is_board(*box))});
            }
            add(item.content, count);
            break;
        case PackedItem::Kind::roll: add(item.content, count); break;
        case PackedItem::Kind::insert:
        case PackedItem::Kind::slip:
        case PackedItem::Kind::gift_note:
            things_.push_back({item.name, Thing::Kind::insert, {item.weight, count, 0, true}});
            break;
        }
    }

    void add_good(const PackedItem& item, int count)
    {
        if (const shop::Good* good = cupboard_.good(item.good)) {
            things_.push_back({good->code.text, Thing::Kind::good, share_of(cupboard_.weight_of(*good), count, false)});
        }
        if (const shop::Wrapping* wrapping = cupboard_.wrapping(item.wrapping)) {
            const shop::Supply* first =
                wrapping->uses.empty() ? nullptr : cupboard_.supply(wrapping->uses.front().supply);
            things_.push_back({wrapping->code.text,
                               Thing::Kind::other,
                               {wrapping->weight, count, 0, first != nullptr && is_board(*first)}});
        }
    }

    const shop::Cupboard& cupboard_;
    std::vector<Thing> things_;
};

} // namespace

std::vector<Thing> things_in(const ParcelPlan& plan, const shop::Cupboard& cupboard, shop::WeighingStage stage)
{
    Things things(cupboard);
    things.add(plan.items);
    if (stage != shop::WeighingStage::contents) {
        things.add(plan.outer, 1000, Thing::Kind::outer);
        things.add(cupboard.house.filler, plan.filler_volume.units / 1'000'000);
        things.add(cupboard.house.tape, plan.tape.units / 10);
    }
    if (stage == shop::WeighingStage::labelled) things.add(cupboard.house.label, 1000);
    return things.take();
}

weighing::Circumstances circumstances(const shop::Cupboard& cupboard)
{
    return {cupboard.house.humidity_percent * 10, cupboard.house.scale_step};
}

weighing::Scene scene_of(const ParcelPlan& plan, const shop::Cupboard& cupboard, shop::WeighingStage stage)
{
    weighing::Scene scene;
    scene.things = things_in(plan, cupboard, stage);
    scene.circumstances = circumstances(cupboard);
    for (const auto& [code, good] : cupboard.goods) {
        if (good.parts.empty()) scene.goods.push_back({code.text, cupboard.weight_of(good).one});
    }
    if (stage == shop::WeighingStage::contents) return scene;
    for (const auto& [code, supply] : cupboard.supplies) {
        if (supply.kind == shop::SupplyKind::outer) {
            scene.outers.push_back({code.text, cupboard.weight_of(supply).one});
        }
    }
    return scene;
}

weighing::Lesson lesson_of(const ParcelPlan& plan, const shop::Cupboard& cupboard, shop::WeighingStage stage,
                           Weight reading)
{
    weighing::Lesson lesson;
    lesson.reading = reading;
    std::vector<Share> rest;
    const std::int64_t filled = plan.filler_volume.units / 1'000'000; // ml
    for (const Thing& thing : things_in(plan, cupboard, stage)) {
        const shop::Good* good = thing.kind == Thing::Kind::good ? cupboard.good({thing.id}) : nullptr;
        const bool filler = thing.kind == Thing::Kind::other && thing.id == cupboard.house.filler.text && filled > 0;
        const shop::Supply* supply = thing.kind == Thing::Kind::outer || filler ? cupboard.supply({thing.id}) : nullptr;
        if (good != nullptr)
            lesson.things.push_back({thing.id, false, thing.share.count, 1000, good->weight});
        else if (supply != nullptr)
            lesson.things.push_back({thing.id, true, 1, filler ? filled : 1000, supply->weight});
        else
            rest.push_back(thing.share);
    }
    lesson.rest = weighing::expected_weight(rest, circumstances(cupboard));
    return lesson;
}

} // namespace stow::planning
