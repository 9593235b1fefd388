#include "core/weighing/lessons.h"

#include <algorithm>
#include <cmath>

namespace stow::weighing {

namespace {

constexpr int least_seen = 3;

struct Key {
    bool supply = false;
    std::string code;
    friend auto operator<=>(const Key&, const Key&) = default;
};

std::optional<shop::WeightEstimate> entered(const shop::Cupboard& cupboard, const Key& key)
{
    if (key.supply) {
        const shop::Supply* supply = cupboard.supply({key.code});
        return supply != nullptr ? std::optional(supply->weight) : std::nullopt;
    }
    const shop::Good* good = cupboard.good({key.code});
    return good != nullptr ? std::optional(good->weight) : std::nullopt;
}

shop::LearntWeight shown(const Belief& belief)
{
    const auto tenths = [](double grams) { return Weight{std::llround(grams * 10)}; };
    const double doubt = belief.mean_g > 0 ? belief.doubt_g / belief.mean_g * 1000 : 0;
    return {{tenths(belief.mean_g), tenths(belief.spread_g)}, static_cast<int>(std::lround(doubt)), belief.seen};
}

} // namespace

void teach(shop::Cupboard& cupboard, const std::vector<Lesson>& lessons)
{
    std::map<Key, Belief> beliefs;
    const int batch_permille = cupboard.house.batch_percent * 10;
    for (const Lesson& lesson : lessons) {
        std::vector<Learner> learners;
        std::vector<std::optional<Key>> keys; // nothing: entered anew since
        for (const Lesson::Taught& taught : lesson.things) {
            const Key key{taught.supply, taught.code};
            const Belief first = first_belief(taught.entered, batch_permille);
            const double amount = static_cast<double>(taught.thousandths) / 1000;
            if (entered(cupboard, key) == taught.entered) {
                learners.push_back({beliefs.emplace(key, first).first->second, taught.count, amount});
                keys.emplace_back(key);
            } else {
                learners.push_back({first, taught.count, amount});
                keys.emplace_back();
            }
        }
        const std::vector<Belief> after = learn(learners, lesson.rest, lesson.reading);
        for (std::size_t i = 0; i < after.size(); ++i) {
            if (keys[i]) beliefs[*keys[i]] = after[i];
        }
    }
    cupboard.learnt_goods.clear();
    cupboard.learnt_supplies.clear();
    for (const auto& [key, belief] : beliefs) {
        if (belief.seen < least_seen) continue;
        if (key.supply)
            cupboard.learnt_supplies[{key.code}] = shown(belief);
        else
            cupboard.learnt_goods[{key.code}] = shown(belief);
    }
}

} // namespace stow::weighing
