#include "core/fitting/rounds.h"

#include "core/fitting/dice.h"

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <numeric>

namespace stow::fitting {

namespace {

constexpr std::size_t most_columns = 80;     // a floor of more is not tried
constexpr std::size_t most_by_degree = 24;   // hole degrees cost the fourth power of the columns
constexpr int pushes = 400;                  // until circles that overlap are given up
constexpr double wider = 1.5;                // units
constexpr std::uint64_t checks_a_node = 400; // pairs of circles compared, a node of work

struct Disc {
    Units x, y, d; // low corner and diameter, enlarged
};

// Circles in a rectangle, put down one after the other.
class Floor {
public:
    Floor(Units width, Units depth) : width_(width), depth_(depth) {}

    const std::vector<Disc>& discs() const { return discs_; }
    void put(const Disc& disc) { discs_.push_back(disc); }
    std::uint64_t checks() const { return checks_; }

    bool is_free(const Disc& disc) const
    {
        if (disc.x < 0 || disc.y < 0 || disc.x + disc.d > width_ || disc.y + disc.d > depth_) return false;
        checks_ += discs_.size();
        return std::none_of(discs_.begin(), discs_.end(), [&](const Disc& o) {
            const Units dx = 2 * disc.x + disc.d - 2 * o.x - o.d, dy = 2 * disc.y + disc.d - 2 * o.y - o.d;
            const Units least = disc.d + o.d;
            return dx * dx + dy * dy < least * least;
        });
    }
    void count_checks(std::uint64_t n) { checks_ += n; }

    std::optional<Disc> free_corner(Units d) const
    {
        for (const Disc& corner : {Disc{width_ - d, depth_ - d, d}, Disc{0, depth_ - d, d}, Disc{width_ - d, 0, d}}) {
            if (is_free(corner)) return corner;
        }
        return std::nullopt;
    }

    // Every place where a circle of this diameter touches two of walls and circles, to the next free 0.1 mm.
    std::vector<Disc> touching(Units d) const
    {
        std::vector<Disc> places;
        if (d > width_ || d > depth_) return places;
        for (const Units x : {Units{0}, width_ - d}) {
            for (const Units y : {Units{0}, depth_ - d}) add(places, static_cast<double>(x), static_cast<double>(y), d);
        }
        for (std::size_t i = 0; i < discs_.size(); ++i) {
            touching_wall(places, discs_[i], d);
            for (std::size_t j = i + 1; j < discs_.size(); ++j) touching_both(places, discs_[i], discs_[j], d);
        }
        return places;
    }

    // Distance to the nearest wall or circle besides the two it touches, in radii, subtracted from one.
    double hole_degree(const Disc& disc) const
    {
        std::array<double, 3> nearest;
        nearest.fill(1e18);
        const auto note = [&](double distance) {
            if (distance >= nearest[2]) return;
            nearest[2] = distance;
            std::sort(nearest.begin(), nearest.end());
        };
        for (const Units gap : {disc.x, disc.y, width_ - disc.x - disc.d, depth_ - disc.y - disc.d}) {
            note(static_cast<double>(gap));
        }
        for (const Disc& other : discs_)
            note((std::sqrt(squared(disc, other)) - static_cast<double>(disc.d + other.d)) / 2);
        checks_ += discs_.size();
        return 1 - nearest[2] / (static_cast<double>(disc.d) / 2);
    }

private:
    // Of twice the distance of the middles.
    static double squared(const Disc& a, const Disc& b)
    {
        const auto dx = static_cast<double>(2 * a.x + a.d - 2 * b.x - b.d);
        const auto dy = static_cast<double>(2 * a.y + a.d - 2 * b.y - b.d);
        return dx * dx + dy * dy;
    }
    // The whole units around a place, the first that is free.
    void add(std::vector<Disc>& places, double x, double y, Units d) const
    {
        const auto x0 = static_cast<Units>(std::floor(x)), y0 = static_cast<Units>(std::floor(y));
        for (const auto& [dx, dy] : {std::pair<Units, Units>{0, 0}, {1, 0}, {0, 1}, {1, 1}}) {
            const Disc disc{x0 + dx, y0 + dy, d};
            if (!is_free(disc)) continue;
            places.push_back(disc);
            return;
        }
    }

    void touching_wall(std::vector<Disc>& places, const Disc& other, Units d) const
    {
        const double apart = static_cast<double>(d + other.d) / 2;
        const double r = static_cast<double>(d) / 2;
        const double cx = static_cast<double>(other.x) + static_cast<double>(other.d) / 2;
        const double cy = static_cast<double>(other.y) + static_cast<double>(other.d) / 2;
        for (const Units x : {Units{0}, width_ - d}) {
            const double across = static_cast<double>(x) + r - cx;
            if (std::abs(across) > apart) continue;
            const double along = std::sqrt(apart * apart - across * across);
            for (const double y : {cy - along, cy + along}) add(places, static_cast<double>(x), y - r, d);
        }
        for (const Units y : {Units{0}, depth_ - d}) {
            const double across = static_cast<double>(y) + r - cy;
            if (std::abs(across) > apart) continue;
            const double along = std::sqrt(apart * apart - across * across);
            for (const double x : {cx - along, cx + along}) add(places, x - r, static_cast<double>(y), d);
        }
    }

    void touching_both(std::vector<Disc>& places, const Disc& a, const Disc& b, Units d) const
    {
        const double r = static_cast<double>(d) / 2;
        const double ra = static_cast<double>(a.d) / 2 + r, rb = static_cast<double>(b.d) / 2 + r;
        const double ax = static_cast<double>(a.x) + static_cast<double>(a.d) / 2;
        const double ay = static_cast<double>(a.y) + static_cast<double>(a.d) / 2;
        const double dx = static_cast<double>(b.x) + static_cast<double>(b.d) / 2 - ax;
        const double dy = static_cast<double>(b.y) + static_cast<double>(b.d) / 2 - ay;
        const double apart = std::sqrt(dx * dx + dy * dy);
        if (apart > ra + rb || apart == 0) return;
        const double along = (ra * ra - rb * rb + apart * apart) / (2 * apart);
        const double across = std::sqrt(std::max(ra * ra - along * along, 0.0));
        for (const double side : {across, -across}) {
            add(places, ax + (along * dx - side * dy) / apart - r, ay + (along * dy + side * dx) / apart - r, d);
        }
    }

    Units width_, depth_;
    std::vector<Disc> discs_;
    mutable std::uint64_t checks_ = 0;
};

struct Column { // pieces standing on one another, widest below
    Units d = 0, height = 0;
    std::vector<std::size_t> pieces;
};

struct Round { // how a kind stands as a circle
    std::uint32_t pose = 0;
    Units d = 0, height = 0;
};

std::optional<Round> round_of(const Kind& kind)
{
    if (kind.soft) return std::nullopt;
    for (std::uint32_t pose = 0; pose < kind.poses.size(); ++pose) {
        const Pose& p = kind.poses[pose];
        if (p.circle) return Round{pose, p.side[0], p.side[2]};
    }
    return std::nullopt;
}

class RoundSearch {
public:
    RoundSearch(const Load& load, const Space& space, Run& run, const Accept& accept)
        : load_(load), space_(space), run_(run), accept_(accept)
    {
        for (const Kind& kind : load.kinds) rounds_.push_back(round_of(kind));
        for (std::size_t p = 0; p < load.pieces.size(); ++p) {
            (rounds_[load.pieces[p].kind] ? round_pieces_ : others_).push_back(p);
        }
    }

    std::optional<Arrangement> find(int tries)
    {
        // Where the others lie: nowhere, or in a slab along a wall or on top; what the round ones have left.
        for (const std::size_t axis :
             others_.empty() ? std::vector<std::size_t>{0} : std::vector<std::size_t>{1, 0, 2}) {
            spots_.assign(load_.pieces.size(), {});
            room_ = space_.side;
            if (!others_.empty() && !put_others_beside(axis)) continue;
            for (const bool tall_first : {true, false}) {
                if (!stack(tall_first)) continue;
                for (int t = 0; t < tries; ++t) {
                    if (!attempt(t)) {
                        if (run_.stopped()) return std::nullopt;
                        continue;
                    }
                    if (accept_(spots_)) return spots_;
                }
            }
        }
        return std::nullopt;
    }

private:
    // The thinnest slab that takes what is not round; thicknesses doubled until it goes.
    bool put_others_beside(std::size_t axis)
    {
        Load part = load_;
        part.pieces.clear();
        part.volume = 0;
        Units thinnest = 1;
        for (const std::size_t p : others_) {
            part.pieces.push_back(load_.pieces[p]);
            const Kind& kind = load_.kinds[load_.pieces[p].kind];
            part.volume += kind.volume;
            Units least = kind.soft ? kind.soft_least + load_.gap : space_.side[axis] + 1;
            for (const Pose& pose : kind.poses) least = std::min(least, pose.side[axis]);
            thinnest = std::max(thinnest, least);
        }
        for (Units thick = thinnest; thick < space_.side[axis]; thick = thick * 3 / 2 + 1) {
            Space slab = space_;
            slab.side[axis] = thick;
            const auto found = find_quick(part, slab, 6, run_, [](const Arrangement&) { return true; });
            if (!found) continue;
            Units used = 0;
            for (const Spot& spot : *found) used = std::max(used, spot.at[axis] + spot.side[axis]);
            for (std::size_t k = 0; k < others_.size(); ++k) {
                spots_[others_[k]] = (*found)[k];
                spots_[others_[k]].at[axis] += space_.side[axis] - used; // against the far wall
            }
            room_[axis] -= used;
            return true;
        }
        return false;
    }

    // Columns no higher than the room, each piece on one at least as wide: the highest that still takes it.
    bool stack(bool tall_first)
    {
        columns_.clear();
        std::vector<std::size_t> order = round_pieces_;
        std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
            const Round ra = of(a), rb = of(b);
            return tall_first ? std::pair{ra.height, ra.d} > std::pair{rb.height, rb.d}
                              : std::pair{ra.d, ra.height} > std::pair{rb.d, rb.height};
        });
        for (const std::size_t piece : order) {
            const Round round = of(piece);
            if (round.height > room_[2]) return false;
            Column* best = nullptr;
            for (Column& column : columns_) {
                const bool takes = column.d >= round.d && column.height + round.height <= room_[2];
                if (takes && (best == nullptr || column.height > best->height)) best = &column;
            }
            if (best == nullptr) {
                columns_.push_back({round.d, 0, {}});
                best = &columns_.back();
            }
            best->height += round.height;
            best->pieces.push_back(piece);
        }
        std::stable_sort(columns_.begin(), columns_.end(), [](const Column& a, const Column& b) { return a.d > b.d; });
        double area = 0;
        for (const Column& column : columns_) area += static_cast<double>(column.d) * static_cast<double>(column.d);
        // A circle takes at least its part of the densest packing of a plane (0.785 of its square in 0.907).
        const double most = static_cast<double>(room_[0]) * static_cast<double>(room_[1]);
        return columns_.size() <= most_columns && (area * 0.785 <= most);
    }

    bool attempt(int t)
    {
        std::vector<std::size_t> order(columns_.size());
        std::iota(order.begin(), order.end(), std::size_t{0});
        const int way = t % 5, round = t / 5;
        const bool along_x = way % 2 == 0;
        if (round > 0 && way < 2) { // ever more out of order
            const std::size_t swaps = std::min<std::size_t>(static_cast<std::size_t>(round), 2 * order.size());
            for (std::size_t s = 0; s < swaps; ++s) {
                std::swap(order[dice_.below(order.size())], order[dice_.below(order.size())]);
            }
        }
        Floor floor(room_[0], room_[1]);
        std::vector<Disc> at(columns_.size());
        const bool few = columns_.size() <= most_by_degree;
        const bool placed = way == 4 && few   ? pushed_apart(floor, at)
                            : way >= 2 && few ? by_hole_degree(floor, at, static_cast<std::size_t>(round), along_x)
                                              : lowest_first(floor, at, order, along_x);
        if (!run_.go_on(1 + floor.checks() / checks_a_node) || !placed) return false;
        for (std::size_t c = 0; c < columns_.size(); ++c) raise(columns_[c], at[c]);
        return true;
    }

    // From places drawn at random, circles that overlap push one another away until they hardly do. They are taken a
    // little wider than they are, so that places of whole units stay apart.
    bool pushed_apart(Floor& floor, std::vector<Disc>& at)
    {
        struct Middle {
            double x, y, r;
        };
        std::vector<Middle> middles;
        middles.reserve(columns_.size());
        for (const Column& column : columns_) {
            const double r = static_cast<double>(column.d) / 2;
            const auto drawn = [&](Units side) {
                return r + (static_cast<double>(side) - 2 * r) * static_cast<double>(dice_.below(1'000)) / 1'000;
            };
            middles.push_back({drawn(room_[0]), drawn(room_[1]), r});
        }
        for (int step = 0; step < pushes; ++step) {
            double worst = 0;
            for (std::size_t i = 0; i < middles.size(); ++i) {
                for (std::size_t j = i + 1; j < middles.size(); ++j) {
                    Middle &a = middles[i], &b = middles[j];
                    const double dx = b.x - a.x, dy = b.y - a.y, apart = std::max(std::hypot(dx, dy), 0.1);
                    const double over = a.r + b.r + wider - apart;
                    if (over <= 0) continue;
                    worst = std::max(worst, over);
                    const double push = over / 2 / apart;
                    a.x -= dx * push, a.y -= dy * push;
                    b.x += dx * push, b.y += dy * push;
                }
            }
            for (Middle& m : middles) {
                m.x = std::clamp(m.x, m.r, static_cast<double>(room_[0]) - m.r);
                m.y = std::clamp(m.y, m.r, static_cast<double>(room_[1]) - m.r);
            }
            if (worst < 0.2) break;
        }
        floor.count_checks(static_cast<std::uint64_t>(pushes) * middles.size() * middles.size() / 2);
        for (std::size_t c = 0; c < columns_.size(); ++c) {
            const Units d = columns_[c].d;
            at[c] = {static_cast<Units>(std::llround(middles[c].x - middles[c].r)),
                     static_cast<Units>(std::llround(middles[c].y - middles[c].r)), d};
            if (!floor.is_free(at[c])) return false;
            floor.put(at[c]);
        }
        return true;
    }

    static bool lower(const Disc& a, const Disc& b, bool along_x)
    {
        return along_x ? std::pair{a.y, a.x} < std::pair{b.y, b.x} : std::pair{a.x, a.y} < std::pair{b.x, b.y};
    }

    bool lowest_first(Floor& floor, std::vector<Disc>& at, const std::vector<std::size_t>& order, bool along_x) const
    {
        for (const std::size_t c : order) {
            const std::vector<Disc> places = floor.touching(columns_[c].d);
            if (places.empty()) return false;
            at[c] = *std::min_element(places.begin(), places.end(),
                                      [&](const Disc& a, const Disc& b) { return lower(a, b, along_x); });
            floor.put(at[c]);
        }
        return true;
    }

    // The first column is another one each time; then, every other time, one in each corner that is left; then always
    // the circle that fills its hole best.
    bool by_hole_degree(Floor& floor, std::vector<Disc>& at, std::size_t round, bool along_x)
    {
        std::vector<bool> done(columns_.size(), false);
        const auto put = [&](std::size_t c, const Disc& disc) {
            at[c] = disc;
            floor.put(disc);
            done[c] = true;
        };
        const std::size_t first = round % columns_.size();
        if (columns_[first].d > room_[0] || columns_[first].d > room_[1]) return false;
        put(first, {0, 0, columns_[first].d});
        std::size_t left = columns_.size() - 1;
        for (std::size_t c = 0; c < columns_.size() && left > 0 && !along_x; ++c) {
            if (done[c]) continue;
            const std::optional<Disc> corner = floor.free_corner(columns_[c].d);
            if (!corner) break;
            put(c, *corner);
            --left;
        }
        for (; left > 0; --left) {
            double best = -1e18;
            std::optional<std::pair<std::size_t, Disc>> chosen;
            Units looked = -1; // equal columns are looked at once
            for (std::size_t c = 0; c < columns_.size(); ++c) {
                if (done[c] || columns_[c].d == looked) continue;
                looked = columns_[c].d;
                for (const Disc& place : floor.touching(looked)) {
                    double degree = floor.hole_degree(place);
                    // A little at random, so that near ties go this way and that.
                    if (round % 2 == 1 || round >= columns_.size())
                        degree += static_cast<double>(dice_.below(100)) * 0.002;
                    const bool tie = chosen && degree == best && lower(place, chosen->second, along_x);
                    if (degree <= best && !tie) continue;
                    best = degree;
                    chosen = {c, place};
                }
            }
            if (!chosen) return false;
            put(chosen->first, chosen->second);
        }
        return true;
    }

    void raise(const Column& column, const Disc& disc)
    {
        Units z = 0;
        for (const std::size_t piece : column.pieces) {
            const Round round = of(piece);
            const Units in = (column.d - round.d) / 2;
            spots_[piece] = {{disc.x + in, disc.y + in, z}, {round.d, round.d, round.height}, round.pose};
            z += round.height;
        }
    }

    Round of(std::size_t piece) const { return *rounds_[load_.pieces[piece].kind]; }

    const Load& load_;
    const Space& space_;
    Run& run_;
    const Accept& accept_;
    Dice dice_;
    std::vector<std::optional<Round>> rounds_; // by kind
    std::vector<std::size_t> round_pieces_, others_;
    Sides room_{};
    std::vector<Column> columns_;
    Arrangement spots_;
};

} // namespace

bool has_rounds(const Load& load)
{
    if (!load.circles) return false;
    int n = 0;
    for (const Piece& piece : load.pieces) n += round_of(load.kinds[piece.kind]) ? 1 : 0;
    return n >= 2;
}

std::optional<Arrangement> find_rounds(const Load& load, const Space& space, int tries, Run& run, const Accept& accept)
{
    return RoundSearch(load, space, run, accept).find(tries);
}

} // namespace stow::fitting
