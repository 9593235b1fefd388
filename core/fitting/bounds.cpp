#include "core/fitting/bounds.h"

#include <cmath>

namespace stow::fitting {

Refusal refusal(Reason reason, const Kind* kind, Units short_by)
{
    Refusal r;
    r.verdict = Verdict::cannot_fit;
    r.proof = Proof::geometry;
    r.reason = reason;
    if (short_by > 0) r.short_by = Length{short_by};
    if (kind != nullptr) r.item = std::to_string(kind->item);
    return r;
}

namespace {

Units excess(const Sides& side, const Sides& room)
{
    return std::max({side[0] - room[0], side[1] - room[1], side[2] - room[2]});
}

std::optional<Refusal> refuse_edges(const Load& load, const Space& space)
{
    Sides room = space.side;
    std::sort(room.begin(), room.end());
    for (const Kind& kind : load.kinds) {
        if (kind.soft) {
            if (kind.soft_least > room[0] - load.gap) {
                return refusal(Reason::edge, &kind, kind.soft_least - (room[0] - load.gap));
            }
            continue;
        }
        Units least = INT64_MAX;
        for (const Pose& pose : kind.poses) least = std::min(least, excess(pose.side, space.side));
        if (least <= 0) continue;
        Sides edges = kind.poses.front().side;
        std::sort(edges.begin(), edges.end());
        const Units turned_freely = excess(edges, room);
        return turned_freely > 0 ? refusal(Reason::edge, &kind, turned_freely) : refusal(Reason::turns, &kind, least);
    }
    return std::nullopt;
}

// Least room two bodies need to stand side by side along an axis.
Units side_by_side(const Pose& a, const Pose& b, std::size_t axis)
{
    Units sum = a.side[axis] + b.side[axis];
    if (axis == 2 || (!a.circle && !b.circle)) return sum;
    // Two circles, or a circle and a block, may overlap along one axis and be apart all the same.
    if (a.circle) sum -= inscribed(a.side[axis]).margin;
    if (b.circle) sum -= inscribed(b.side[axis]).margin;
    return sum;
}

bool pair_fits(const Kind& a, const Kind& b, const Space& space)
{
    for (const Pose& p : a.poses) {
        if (!within(p.side, space.side)) continue;
        for (const Pose& q : b.poses) {
            if (!within(q.side, space.side)) continue;
            for (std::size_t axis = 0; axis < 3; ++axis) {
                if (side_by_side(p, q, axis) <= space.side[axis]) return true;
            }
        }
    }
    return false;
}

std::optional<Refusal> refuse_pairs(const Load& load, const Space& space)
{
    for (std::size_t i = 0; i < load.kinds.size(); ++i) {
        if (load.kinds[i].soft) continue;
        for (std::size_t j = i; j < load.kinds.size(); ++j) {
            if (load.kinds[j].soft) continue;
            if (i == j) {
                int count = 0;
                for (const Piece& piece : load.pieces) count += piece.kind == i ? 1 : 0;
                if (count < 2) continue;
            }
            if (!pair_fits(load.kinds[i], load.kinds[j], space)) {
                return refusal(Reason::cross_section, &load.kinds[j]);
            }
        }
    }
    return std::nullopt;
}

// One dual feasible function on one side of the space: whole numbers over a common denominator.
struct Dual {
    enum class Form { step, threshold, count } form = Form::threshold;
    Units parameter = 0; // step: k; threshold and count: ε in units
    Units room = 1;

    Units denominator() const
    {
        switch (form) {
        case Form::step: return parameter * room;
        case Form::threshold: return room;
        case Form::count: return room / parameter;
        }
        return 1;
    }
    Units operator()(Units x) const
    {
        switch (form) {
        case Form::step: return (parameter + 1) * x % room == 0 ? parameter * x : (parameter + 1) * x / room * room;
        case Form::threshold:
            if (x < parameter) return 0;
            return x > room - parameter ? room : x;
        case Form::count:
            if (x < parameter) return 0;
            if (2 * x <= room) return 1;
            return room / parameter - (room - x) / parameter;
        }
        return 0;
    }
};

// The edges that stand in for a body in products: for a circle its inscribed square.
Sides solid_sides(const Pose& pose)
{
    if (!pose.circle) return pose.side;
    const Units side = inscribed(pose.side[0]).side;
    return {side, side, pose.side[2]};
}

std::vector<Dual> duals_for(const Load& load, Units room, std::size_t axis)
{
    std::vector<Units> steps;
    for (const Kind& kind : load.kinds) {
        if (kind.soft) continue;
        for (const Pose& pose : kind.poses) {
            const Units x = solid_sides(pose)[axis];
            for (const Units e : {x, room - x + 1}) {
                if (e > 0 && 2 * e <= room) steps.push_back(e);
            }
        }
    }
    std::sort(steps.begin(), steps.end());
    steps.erase(std::unique(steps.begin(), steps.end()), steps.end());
    std::vector<Dual> duals{{Dual::Form::threshold, 0, room}};
    for (Units k = 1; k <= 3; ++k) duals.push_back({Dual::Form::step, k, room});
    // A handful spread over the sizes that occur; the largest act on the largest pieces.
    const std::size_t most = 4;
    for (std::size_t i = 0; i < std::min(most, steps.size()); ++i) {
        const Units e = steps[steps.size() - 1 - i * steps.size() / std::min(most, steps.size())];
        duals.push_back({Dual::Form::threshold, e, room});
        duals.push_back({Dual::Form::count, e, room});
    }
    return duals;
}

} // namespace

std::optional<Refusal> refuse_fast(const Load& load, const Space& space)
{
    if (auto r = refuse_edges(load, space)) return r;
    if (load.volume > product(space.side)) return refusal(Reason::volume);
    return refuse_pairs(load, space);
}

std::optional<Refusal> refuse_by_bounds(const Load& load, const Space& space)
{
    for (const Units side : space.side) {
        if (side <= 0 || side > 50'000) return std::nullopt; // keeps every sum below within 64 bits
    }
    if (load.pieces.size() > 100) return std::nullopt;
    std::vector<int> count(load.kinds.size(), 0);
    for (const Piece& piece : load.pieces) ++count[piece.kind];

    std::array<std::vector<Dual>, 3> duals;
    for (std::size_t axis = 0; axis < 3; ++axis) duals[axis] = duals_for(load, space.side[axis], axis);
    // The value of each function at each pose, once.
    struct Row {
        std::size_t kind;
        std::array<std::vector<Units>, 3> value;
    };
    std::vector<Row> rows;
    for (std::size_t k = 0; k < load.kinds.size(); ++k) {
        if (load.kinds[k].soft) continue;
        for (const Pose& pose : load.kinds[k].poses) {
            if (!within(pose.side, space.side)) continue;
            Row row{k, {}};
            for (std::size_t axis = 0; axis < 3; ++axis) {
                for (const Dual& dual : duals[axis]) row.value[axis].push_back(dual(solid_sides(pose)[axis]));
            }
            rows.push_back(std::move(row));
        }
    }
    std::vector<Units> floor(rows.size()); // of each row, on the first two axes
    // No value passes its denominator, at most 3 * 50'000; a hundred products of three stay below 2^63.
    for (std::size_t f = 0; f < duals[0].size(); ++f) {
        for (std::size_t g = 0; g < duals[1].size(); ++g) {
            const Units area = duals[0][f].denominator() * duals[1][g].denominator();
            for (std::size_t r = 0; r < rows.size(); ++r) floor[r] = rows[r].value[0][f] * rows[r].value[1][g];
            for (std::size_t h = 0; h < duals[2].size(); ++h) {
                Units sum = 0;
                for (std::size_t r = 0; r < rows.size();) {
                    const std::size_t kind = rows[r].kind;
                    Units least = floor[r] * rows[r].value[2][h];
                    for (++r; r < rows.size() && rows[r].kind == kind; ++r) {
                        least = std::min(least, floor[r] * rows[r].value[2][h]);
                    }
                    sum += least * count[kind];
                }
                if (sum > area * duals[2][h].denominator()) return refusal(Reason::bound);
            }
        }
    }
    return std::nullopt;
}

} // namespace stow::fitting
