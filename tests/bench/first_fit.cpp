#include "tests/bench/first_fit.h"

#include <algorithm>
#include <numeric>
#include <tuple>

namespace stow::bench {

namespace {

Length end(Length at, Length size)
{
    return at + size;
}

bool overlap(Length a, Length a_size, Length b, Length b_size)
{
    return a < end(b, b_size) && b < end(a, a_size);
}

Size inner_of(const fitting::Question& question, std::size_t k = 0)
{
    return question.outers[k].form.inner;
}

} // namespace

bool FirstFit::free_at(const Size& at, const Size& size) const
{
    if (end(at.x, size.x) > inner_.x || end(at.y, size.y) > inner_.y || end(at.z, size.z) > inner_.z) return false;
    for (const fitting::Placement& p : placed_) {
        if (overlap(at.x, size.x, p.at.x, p.size.x) && overlap(at.y, size.y, p.at.y, p.size.y) &&
            overlap(at.z, size.z, p.at.z, p.size.z)) {
            return false;
        }
    }
    return true;
}

bool FirstFit::supported(const Size& at, const Size& size) const
{
    if (at.z == Length{}) return true;
    Area contact;
    for (const fitting::Placement& p : placed_) {
        if (end(p.at.z, p.size.z) != at.z) continue;
        const Length x = std::min(end(at.x, size.x), end(p.at.x, p.size.x)) - std::max(at.x, p.at.x);
        const Length y = std::min(end(at.y, size.y), end(p.at.y, p.size.y)) - std::max(at.y, p.at.y);
        if (x > Length{} && y > Length{}) contact += x * y;
    }
    return contact == size.x * size.y;
}

bool FirstFit::put(const std::vector<Size>& turned)
{
    for (std::size_t c = 0; c < corners_.size(); ++c) {
        for (const Size& size : turned) {
            const Size at = corners_[c];
            if (!free_at(at, size) || (full_support_ && !supported(at, size))) continue;
            fitting::Placement p;
            p.at = at;
            p.size = size;
            placed_.push_back(p);
            volume_ += volume(size);
            corners_.erase(corners_.begin() + static_cast<std::ptrdiff_t>(c));
            for (const Size& corner : {Size{end(at.x, size.x), at.y, at.z}, Size{at.x, end(at.y, size.y), at.z},
                                       Size{at.x, at.y, end(at.z, size.z)}}) {
                const auto lower = [](const Size& a, const Size& b) {
                    return std::tie(a.z, a.y, a.x) < std::tie(b.z, b.y, b.x);
                };
                const auto place = std::lower_bound(corners_.begin(), corners_.end(), corner, lower);
                if (place == corners_.end() || *place != corner) corners_.insert(place, corner);
            }
            return true;
        }
    }
    return false;
}

std::vector<LoosePiece> pieces_by_volume(const fitting::Question& question)
{
    std::vector<LoosePiece> pieces;
    for (const fitting::Item& item : question.items) {
        const Size size = bounding_size(item.shape);
        for (int copy = 1; copy <= item.count; ++copy) {
            pieces.push_back({item.id, copy, turned_sizes(size, item.turns), volume(size)});
        }
    }
    std::stable_sort(pieces.begin(), pieces.end(),
                     [](const LoosePiece& a, const LoosePiece& b) { return a.volume > b.volume; });
    return pieces;
}

std::optional<std::size_t> first_fit_outer(const fitting::Question& question)
{
    const std::vector<LoosePiece> pieces = pieces_by_volume(question);
    std::vector<std::size_t> order(question.outers.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
        return volume(inner_of(question, a)) < volume(inner_of(question, b));
    });
    for (const std::size_t k : order) {
        FirstFit space(inner_of(question, k), false);
        if (std::all_of(pieces.begin(), pieces.end(), [&](const LoosePiece& p) { return space.put(p.turned); }))
            return k;
    }
    return std::nullopt;
}

Volume first_fit_filled(const fitting::Question& question)
{
    FirstFit space(inner_of(question), question.support == fitting::Support::full);
    for (const LoosePiece& piece : pieces_by_volume(question)) space.put(piece.turned);
    return space.volume_inside();
}

int first_fit_bins(const fitting::Question& question)
{
    std::vector<FirstFit> bins;
    for (const LoosePiece& piece : pieces_by_volume(question)) {
        if (std::any_of(bins.begin(), bins.end(), [&](FirstFit& bin) { return bin.put(piece.turned); })) continue;
        bins.emplace_back(inner_of(question), false).put(piece.turned);
    }
    return static_cast<int>(bins.size());
}

} // namespace stow::bench
