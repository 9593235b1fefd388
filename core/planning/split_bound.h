// What no way to split an order can be cheaper than, without packing anything.
#pragma once

#include "core/planning/shares.h"

#include <array>
#include <cstdint>
#include <vector>

namespace stow::planning {

// Every parcel is of some kind k: an outer with room V, at a postage step that leaves weight W to its contents, and
// costs at least c (outer, tape, label, the cheapest price of the sheets; no filler, no inserts). Goods of volume v and
// weight w in any number of parcels therefore cost at least max { a v + b w : a, b >= 0, a V + b W <= c for every k },
// the dual of the covering problem (weak duality), and whole parcels at least what an integer program covers both with.
// Wraps, which cost the same however the goods are shared out, are added. Rests on sheets whose prices do not fall as a
// parcel grows heavier or larger, which core/postage/check_sheet.cpp watches over. In minor units of the house.
class SplitBound {
public:
    SplitBound(const Bench& bench, const Task& task, const Stock& stock);

    std::int64_t least(const Counts& share) const; // in one parcel or several
    std::int64_t least_of_all() const;             // of the whole task, in whole parcels: at least as strong

private:
    struct Kind { // of parcel
        double room = 0, load = 0, cost = 0;
    };
    struct Piece {
        double volume = 0, weight = 0, wraps = 0; // of one; wraps in minor units
    };
    void add_outer(const Bench& bench, const Task& task, const shop::Supply& outer);
    void keep_undominated();
    void find_corners();
    std::int64_t cover_all() const;

    std::vector<Piece> pieces_;
    Counts all_;
    Weight all_weight_;
    double rounded_ = 0; // a parcel's wraps may round down by this much
    std::vector<Kind> kinds_;
    std::vector<std::array<double, 2>> corners_;       // of the dual: a, b
    mutable std::optional<std::int64_t> least_of_all_; // once it was asked for
};

} // namespace stow::planning
