#include "app/view/parcel_looks.h"

#include "app/view/text.h"
#include "app/words/format.h"
#include "app/words/reasons.h"

#include <QCoreApplication>

#include <algorithm>

namespace stow::view {

namespace {

constexpr std::size_t most_refused = 3; // more would not be read

struct Say {
    Q_DECLARE_TR_FUNCTIONS(View)
};

std::optional<Size> size_of(const planning::ParcelPlan& plan, const std::string& item)
{
    const auto found = std::find_if(plan.items.begin(), plan.items.end(), [&](const auto& i) { return i.id == item; });
    return found != plan.items.end() ? std::optional(bounding_size(found->shape)) : std::nullopt;
}

// Beside one much longer than itself, the chosen outer would be drawn too small to see anything in it.
std::vector<planning::PassedOver> comparable(const planning::ParcelPlan& plan, const OuterForm& chosen)
{
    const auto longest = [](const OuterForm& form) { return std::max({form.inner.x, form.inner.y, form.inner.z}); };
    std::vector<planning::PassedOver> near;
    std::copy_if(plan.passed_over.begin(), plan.passed_over.end(), std::back_inserter(near),
                 [&](const auto& passed) { return longest(passed.form) * 2 <= longest(chosen) * 3; });
    return near.empty() ? plan.passed_over : near;
}

} // namespace

papers::Arrangement arrangement_of(const Day& day, const planning::ParcelPlan& plan)
{
    papers::Arrangement arrangement;
    if (const shop::Supply* supply = day.cupboard().supply(plan.outer); supply != nullptr && supply->form) {
        arrangement.form = *supply->form;
    } else if (!plan.question.outers.empty()) {
        arrangement.form = plan.question.outers.front().form;
    }
    arrangement.cut_height = plan.cut_at;
    arrangement.contents_thickness = plan.contents_thickness;
    arrangement.placements = plan.placements;
    arrangement.looks = papers::looks_by_item(plan.placements);
    return arrangement;
}

OuterRowScene outer_row(const Day& day, const planning::ParcelPlan& plan)
{
    OuterRowScene scene;
    OuterRowScene::Outer chosen;
    chosen.arrangement = arrangement_of(day, plan);
    QStringList said;
    const std::vector<planning::PassedOver> near = comparable(plan, chosen.arrangement.form);
    for (std::size_t i = near.size() > most_refused ? near.size() - most_refused : 0; i < near.size(); ++i) {
        const planning::PassedOver& passed = near[i];
        OuterRowScene::Outer outer;
        outer.arrangement.form = passed.form;
        outer.standing = papers::Standing::passed_over;
        outer.stayed_out = size_of(plan, passed.refusal.item);
        outer.name = text(passed.outer.text);
        outer.words = words::reason(passed);
        said += outer.name + QStringLiteral(": ") + outer.words;
        scene.outers.push_back(std::move(outer));
    }
    chosen.standing = papers::Standing::chosen;
    chosen.name = text(plan.outer.text);
    if (plan.cut_at) chosen.name = Say::tr("%1 cut to %2").arg(chosen.name, words::length(*plan.cut_at));
    const int cutting = day.cupboard().house.cut_minutes;
    if (plan.cut_at && cutting > 0) chosen.name = Say::tr("%1, %2 min").arg(chosen.name).arg(cutting);
    chosen.good = plan.proven_smallest;
    chosen.words = plan.squeezed          ? Say::tr("by hand, pressed")
                   : plan.proven_smallest ? Say::tr("proven")
                                          : Say::tr("smallest found");
    said.prepend(chosen.name + QStringLiteral(": ") + chosen.words);
    scene.outers.push_back(std::move(chosen));
    scene.sentence = said.join(QStringLiteral(". "));
    return scene;
}

} // namespace stow::view
