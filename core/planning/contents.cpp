#include "core/planning/contents.h"

#include <map>

namespace stow::planning {

namespace {

constexpr int deepest_set = 8; // a set of sets of sets: more is a set that contains itself

using Counts = std::map<shop::GoodCode, Several>;

bool has_size(const shop::Good& good)
{
    const Size s = bounding_size(good.shape);
    return s.x > Length{} && s.y > Length{} && s.z > Length{} && good.weight.mean > Weight{};
}

bool has_inside(const shop::Supply* box)
{
    return box != nullptr && box->form && volume(box->form->inner) > Volume{};
}

std::optional<StuckOrder> add(const shop::Cupboard& cupboard, const shop::GoodCode& code, int count, int depth,
                              Counts& into)
{
    const shop::Good* good = cupboard.good(code);
    if (good == nullptr || depth > deepest_set) return StuckOrder{{}, Stuck::unknown_good, code};
    if (good->parts.empty()) {
        if (!has_size(*good)) return StuckOrder{{}, Stuck::missing_size, code};
        Several& several = into[code];
        several.good = good;
        several.count += count;
    }
    for (const shop::SetPart& part : good->parts) {
        if (auto stuck = add(cupboard, part.good, part.count * count, depth + 1, into)) return stuck;
    }
    return std::nullopt;
}

std::vector<Several> listed(const Counts& counts)
{
    std::vector<Several> list;
    for (const auto& [code, several] : counts) list.push_back(several);
    return list;
}

} // namespace

tl::expected<Contents, StuckOrder> contents_of(const shop::Cupboard& cupboard, const std::vector<shop::Piece>& pieces)
{
    Counts loose;
    std::map<shop::GoodCode, BoxedSet> boxed;
    for (const shop::Piece& piece : pieces) {
        const auto stuck_at = [&](StuckOrder stuck) {
            stuck.order = piece.order;
            return tl::unexpected(std::move(stuck));
        };
        if (piece.good.empty()) return stuck_at({{}, Stuck::unmatched_good});
        const shop::Good* good = cupboard.good(piece.good);
        if (good == nullptr || good->parts.empty() || good->gift_box.empty()) {
            if (auto stuck = add(cupboard, piece.good, piece.count, 0, loose)) return stuck_at(*std::move(stuck));
            continue;
        }
        BoxedSet& set = boxed[piece.good];
        set.count += piece.count;
        if (set.set != nullptr) continue;
        set.set = good;
        set.box = cupboard.supply(good->gift_box);
        if (!has_inside(set.box)) return stuck_at({{}, Stuck::missing_size, piece.good});
        Counts content;
        if (auto stuck = add(cupboard, piece.good, 1, 0, content)) return stuck_at(*std::move(stuck));
        set.content = listed(content);
    }
    Contents contents{listed(loose), {}};
    for (auto& [code, set] : boxed) contents.boxed.push_back(std::move(set));
    return contents;
}

std::vector<Several> off_the_shelf(const Contents& contents)
{
    Counts counts;
    const auto add_all = [&](const std::vector<Several>& some, int times) {
        for (const Several& s : some) {
            Several& sum = counts[s.good->code];
            sum.good = s.good;
            sum.count += s.count * times;
        }
    };
    add_all(contents.loose, 1);
    for (const BoxedSet& set : contents.boxed) add_all(set.content, set.count);
    return listed(counts);
}

} // namespace stow::planning
