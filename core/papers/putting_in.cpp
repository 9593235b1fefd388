#include "core/papers/drawing.h"

#include <numeric>
#include <tuple>

namespace stow::papers {

namespace {

bool share_ground(const fitting::Placement& a, const fitting::Placement& b)
{
    return a.at.x < b.at.x + b.size.x && b.at.x < a.at.x + a.size.x && a.at.y < b.at.y + b.size.y &&
           b.at.y < a.at.y + a.size.y;
}

std::vector<std::size_t> from_the_floor_up(const std::vector<fitting::Placement>& placements)
{
    std::vector<std::size_t> order(placements.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(),
                     [&](std::size_t a, std::size_t b) { return placements[a].at.z < placements[b].at.z; });
    return order;
}

} // namespace

std::vector<Arrangement::Looks> looks_by_item(const std::vector<fitting::Placement>& placements)
{
    std::vector<std::string> names;
    std::vector<Arrangement::Looks> looks;
    for (const fitting::Placement& p : placements) {
        auto found = std::find(names.begin(), names.end(), p.item);
        if (found == names.end()) found = names.insert(names.end(), p.item);
        looks.push_back({static_cast<int>(found - names.begin()), {}, false});
    }
    return looks;
}

std::vector<int> layers(const std::vector<fitting::Placement>& placements)
{
    std::vector<int> layer(placements.size(), 1);
    const std::vector<std::size_t> order = from_the_floor_up(placements);
    for (std::size_t i = 0; i < order.size(); ++i) {
        const fitting::Placement& upper = placements[order[i]];
        for (std::size_t j = 0; j < i; ++j) {
            const fitting::Placement& lower = placements[order[j]];
            if (lower.at.z + lower.size.z <= upper.at.z && share_ground(lower, upper)) {
                layer[order[i]] = std::max(layer[order[i]], layer[order[j]] + 1);
            }
        }
    }
    return layer;
}

std::vector<std::size_t> putting_in_order(const std::vector<fitting::Placement>& placements)
{
    const std::vector<int> layer = layers(placements);
    std::vector<std::size_t> order(placements.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    const auto key = [&](std::size_t i) {
        const fitting::Placement& p = placements[i];
        return std::tuple(layer[i], p.at.x + p.at.y, p.at.y, p.at.z, i);
    };
    std::sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) { return key(a) < key(b); });
    return order;
}

std::vector<int> numbers(const std::vector<fitting::Placement>& placements)
{
    std::vector<int> number(placements.size());
    int next = 1;
    for (const std::size_t i : putting_in_order(placements)) number[i] = next++;
    return number;
}

} // namespace stow::papers
