#include "core/papers/drawing.h"
#include "core/papers/isometry.h"

namespace stow::papers {

namespace {

// Whether `a` must be painted before `b`. If a line of sight meets both, every axis that separates them agrees.
bool behind(const Solid& a, const Solid& b)
{
    if (!cover_each_other(a, b)) return false;
    for (std::size_t k = 0; k < 3; ++k) {
        if (a.high[k] <= b.low[k]) return true;
    }
    return false;
}

struct Piece {
    std::size_t whole;
    Solid solid;
    bool round;
};

// Cuts one of the pieces along a face of another that covers it; says whether there was anything to cut. Cuts lie in
// the planes of the blocks' own faces, of which there are finitely many; pieces cut along all of them form no ring.
bool cut_one(std::vector<Piece>& pieces)
{
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        if (pieces[i].round) continue; // a round good stays whole
        for (std::size_t j = 0; j < pieces.size(); ++j) {
            if (i == j || !cover_each_other(pieces[i].solid, pieces[j].solid)) continue;
            for (std::size_t k = 0; k < 3; ++k) {
                for (const std::int64_t plane : {pieces[j].solid.low[k], pieces[j].solid.high[k]}) {
                    if (plane <= pieces[i].solid.low[k] || plane >= pieces[i].solid.high[k]) continue;
                    Piece far = pieces[i];
                    far.solid.high[k] = plane;
                    pieces[i].solid.low[k] = plane;
                    pieces.insert(pieces.begin() + static_cast<std::ptrdiff_t>(i), far);
                    return true;
                }
            }
        }
    }
    return false;
}

// The first piece that nothing left has to be painted before, if there is one.
std::optional<std::size_t> hindmost(const std::vector<Piece>& pieces)
{
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        const auto hides = [&](const Piece& other) { return behind(other.solid, pieces[i].solid); };
        if (std::none_of(pieces.begin(), pieces.end(), hides)) return i;
    }
    return std::nullopt;
}

} // namespace

std::vector<Part> painting_order(const std::vector<fitting::Placement>& placements,
                                 const std::vector<std::size_t>& shown)
{
    std::vector<Piece> left;
    left.reserve(shown.size());
    for (const std::size_t i : shown) {
        left.push_back({i, solid_of(placements[i].at, placements[i].size), placements[i].axis.has_value()});
    }
    std::vector<Part> parts;
    while (!left.empty()) {
        std::optional<std::size_t> next = hindmost(left);
        if (!next && cut_one(left)) continue;
        const Piece piece = left[next.value_or(0)]; // a ring of round goods alone: in the order given
        left.erase(left.begin() + static_cast<std::ptrdiff_t>(next.value_or(0)));
        const Solid& s = piece.solid;
        parts.push_back({piece.whole,
                         {{s.low[0]}, {s.low[1]}, {s.low[2]}},
                         {{s.high[0] - s.low[0]}, {s.high[1] - s.low[1]}, {s.high[2] - s.low[2]}}});
    }
    return parts;
}

} // namespace stow::papers
