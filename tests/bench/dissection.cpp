#include "tests/bench/dissection.h"

#include <algorithm>
#include <stdexcept>
#include <string>

namespace stow::bench {

namespace {

using Side = Length Size::*;
constexpr std::array<Side, 3> sides{&Size::x, &Size::y, &Size::z};

Length between(Dice& dice, Length least, Length most)
{
    return Length{dice.from_to(least.units, most.units)};
}

bool cut_through(Dice& dice, std::vector<Cell>& cells, std::size_t k, Length least)
{
    const Side along = dice.one_of(sides);
    Cell& cell = cells[k];
    if (cell.size.*along < least * 2) return false;
    Cell rest = cell;
    const Length first = between(dice, least, cell.size.*along - least);
    cell.size.*along = first;
    rest.at.*along += first;
    rest.size.*along -= first;
    cells.push_back(rest);
    return true;
}

// Four pieces around a fifth in the plane of two axes, left- or right-handed.
bool cut_pinwheel(Dice& dice, std::vector<Cell>& cells, std::size_t k, Length least)
{
    const std::size_t first = dice.below(3);
    Side a = sides[first], b = sides[(first + 1) % 3];
    if (dice.one_in(2)) std::swap(a, b);
    const Cell whole = cells[k];
    if (whole.size.*a < least * 3 || whole.size.*b < least * 3) return false;
    const Length a1 = between(dice, least, whole.size.*a - least * 2);
    const Length a2 = between(dice, a1 + least, whole.size.*a - least);
    const Length b1 = between(dice, least, whole.size.*b - least * 2);
    const Length b2 = between(dice, b1 + least, whole.size.*b - least);
    const auto part = [&](Length from_a, Length to_a, Length from_b, Length to_b) {
        Cell cell = whole;
        cell.at.*a += from_a;
        cell.at.*b += from_b;
        cell.size.*a = to_a - from_a;
        cell.size.*b = to_b - from_b;
        return cell;
    };
    const Length end_a = whole.size.*a, end_b = whole.size.*b;
    cells[k] = part(a1, a2, b1, b2);
    cells.push_back(part({}, a2, {}, b1));
    cells.push_back(part(a2, end_a, {}, b2));
    cells.push_back(part(a1, end_a, b2, end_b));
    cells.push_back(part({}, a1, b1, end_b));
    return true;
}

Size turned(Dice& dice, const Size& s)
{
    std::array<Length, 3> edge{s.x, s.y, s.z};
    dice.shuffle(edge);
    return {edge[0], edge[1], edge[2]};
}

Size& size_of(fitting::Item& item)
{
    return std::get<Block>(item.shape).size;
}

} // namespace

std::vector<Cell> dissect(Dice& dice, const Size& box, int pieces, Cutting cutting, Length least)
{
    const int most_pinwheels = cutting == Cutting::guillotine ? 0 : (pieces - 1) / 4;
    for (int attempt = 0; attempt < 1000; ++attempt) {
        const auto pinwheels =
            most_pinwheels == 0 ? 0 : static_cast<int>(dice.from_to(1, most_pinwheels)); // each makes four pieces more
        std::vector<bool> cuts(static_cast<std::size_t>(pinwheels), true);
        cuts.resize(static_cast<std::size_t>(pieces - 1 - 3 * pinwheels), false);
        for (std::size_t k = cuts.size(); k > 1; --k) { // std::vector<bool> has no swap of elements to speak of
            const std::size_t other = dice.below(k);
            const bool kept = cuts[k - 1];
            cuts[k - 1] = cuts[other];
            cuts[other] = kept;
        }
        std::vector<Cell> cells{{{}, box}};
        bool done = true;
        for (const bool pinwheel : cuts) {
            bool cut = false;
            for (int t = 0; t < 30 && !cut; ++t) {
                // The larger of two, so that pieces do not differ too much.
                std::size_t k = dice.below(cells.size());
                const std::size_t other = dice.below(cells.size());
                if (volume(cells[other].size) > volume(cells[k].size)) k = other;
                cut = pinwheel ? cut_pinwheel(dice, cells, k, least) : cut_through(dice, cells, k, least);
            }
            done = done && cut;
        }
        if (done) return cells;
    }
    throw std::logic_error("the box is too small for so many pieces");
}

Puzzle perfect_puzzle(Dice& dice, int pieces, Cutting cutting, Length grain)
{
    const auto grains = [&](Length l) { return Length{l.units / grain.units}; };
    const auto scale = [&](Size& s) { s = {s.x * grain.units, s.y * grain.units, s.z * grain.units}; };
    const auto side = [&] { return between(dice, grains(mm(100)), grains(mm(300))); };
    Size box{side(), side(), side()};
    std::vector<Cell> cells = dissect(dice, box, pieces, cutting, grains(mm(20)));
    scale(box);
    for (Cell& cell : cells) {
        scale(cell.at);
        scale(cell.size);
    }
    dice.shuffle(cells);
    Puzzle puzzle;
    for (std::size_t k = 0; k < cells.size(); ++k) {
        fitting::Item item;
        item.id = std::string(1, static_cast<char>('a' + k));
        item.shape = Block{turned(dice, cells[k].size)};
        item.weight = grams(100);
        puzzle.question.items.push_back(item);
        fitting::Placement placement;
        placement.item = item.id;
        placement.at = cells[k].at;
        placement.size = cells[k].size;
        puzzle.solution.push_back(placement);
    }
    fitting::Outer outer;
    outer.id = "box";
    outer.form.inner = outer.form.outer = box;
    puzzle.question.outers = {outer};
    return puzzle;
}

Puzzle twin_of(Dice& dice, const Puzzle& puzzle)
{
    Puzzle twin;
    twin.question = puzzle.question;
    std::vector<fitting::Item>& items = twin.question.items;
    const Size box = twin.question.outers[0].form.inner;
    const Length longest = std::max({box.x, box.y, box.z});
    for (;;) {
        const std::size_t grown = dice.below(items.size()), shrunk = dice.below(items.size());
        if (grown == shrunk) continue;
        const Size before = size_of(items[grown]), other_before = size_of(items[shrunk]);
        const Side along = dice.one_of(sides), other_along = dice.one_of(sides);
        Length& edge = size_of(items[grown]).*along;
        Length& other = size_of(items[shrunk]).*other_along;
        edge += between(dice, {1}, {std::max<std::int64_t>(edge.units / 10, 1)});
        const std::int64_t more = volume(size_of(items[grown])).units - volume(before).units;
        const std::int64_t face = volume(other_before).units / (other_before.*other_along).units;
        other -= Length{(more + face - 1) / face};
        if (edge <= longest && other >= mm(10)) return twin;
        size_of(items[grown]) = before;
        size_of(items[shrunk]) = other_before;
    }
}

} // namespace stow::bench
