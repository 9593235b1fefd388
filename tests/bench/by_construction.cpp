#include "tests/bench/by_construction.h"

#include "core/fitting/check.h"
#include "core/fitting/contact.h"
#include "tests/bench/dissection.h"

#include <algorithm>
#include <cmath>
#include <string>

namespace stow::bench {

namespace {

using namespace fitting;

Length between(Dice& dice, Length least, Length most)
{
    return Length{dice.from_to(least.units, std::max(least, most).units)};
}

Size plus(const Size& s, Length more)
{
    return {s.x + more, s.y + more, s.z + more};
}

// Enough for a search of arrangements, rounded up.
Length root(std::int64_t square)
{
    auto r = static_cast<std::int64_t>(std::sqrt(static_cast<double>(square)));
    while (r * r < square) ++r;
    return {r};
}

class Builder {
public:
    explicit Builder(Dice& dice) : dice_(dice)
    {
        constexpr std::array gaps{0, 0, 0, 7, 33, 50};
        constexpr std::array linings{0, 0, 80}, beds{0, 0, 100};
        Question& q = made_.question;
        q.gap = Length{dice.one_of(gaps)};
        q.lining = Length{dice.one_of(linings)};
        q.bed = Length{dice.one_of(beds)};
        q.support = std::array{Support::none, Support::none, Support::partial, Support::full}[dice.below(4)];
    }

    std::optional<Constructed> build(Scene scene)
    {
        switch (scene) {
        case Scene::carton: in_box(OuterKind::carton); break;
        case Scene::gift_box: in_box(OuterKind::gift_box); break;
        case Scene::board_mailer: in_box(OuterKind::board_mailer); break;
        case Scene::cut_carton: in_cut_carton(); break;
        case Scene::mailer: in_sleeve(OuterKind::mailer); break;
        case Scene::padded_mailer: in_sleeve(OuterKind::padded_mailer); break;
        case Scene::tube_bundle: bundle_in_tube(); break;
        case Scene::tube_rolls: ring_in_tube(); break;
        case Scene::jars_in_rows: jars_in_rows(); break;
        case Scene::jars_zigzag: jars_zigzag(); break;
        case Scene::gift_inside: gift_inside(); break;
        }
        name_the_rules();
        Question geometry = made_.question;
        geometry.support = Support::none;
        if (!check(geometry, made_.outer, made_.cut_height, made_.placements).empty()) return std::nullopt;
        return made_;
    }

private:
    Length gap() const { return made_.question.gap; }

    // The inside that the enlarged bodies fill needs linings, bed, and no gap at its sides.
    Size inner_around(const Size& enlarged) const
    {
        const Question& q = made_.question;
        const Size bare = plus(enlarged, q.lining * 2 - q.gap);
        return {bare.x, bare.y, bare.z + q.bed};
    }
    Size origin() const
    {
        const Question& q = made_.question;
        return {q.lining, q.lining, q.lining + q.bed};
    }

    Outer& add_outer(OuterKind kind, const Size& inner, const char* id)
    {
        Outer outer;
        outer.id = id;
        outer.form.kind = kind;
        outer.form.inner = inner;
        outer.form.outer = plus(inner, mm(6));
        outer.tare = grams(50);
        made_.question.outers.push_back(outer);
        return made_.question.outers.back();
    }
    void set_main_outer(OuterKind kind, const Size& inner)
    {
        made_.outer = add_outer(kind, inner, "main").id;
        if (dice_.one_in(3)) { // something smaller beside it, refused or not
            const Size less{inner.x * 9, inner.y * 9, inner.z * 9};
            add_outer(kind, {Length{less.x.units / 10}, Length{less.y.units / 10}, Length{less.z.units / 10}}, "less");
        }
    }

    Cutting any_cutting(int pieces) { return pieces >= 5 && dice_.one_in(2) ? Cutting::pinwheel : Cutting::guillotine; }
    std::vector<Cell> cells_of(const Size& enlarged, int pieces)
    {
        return dissect(dice_, enlarged, pieces, any_cutting(pieces), gap() + mm(8));
    }
    int any_count() { return static_cast<int>(dice_.one_in(8) ? dice_.from_to(9, 14) : dice_.from_to(1, 8)); }
    Size any_enlarged(Length least, Length most)
    {
        const auto side = [&] { return between(dice_, least, most) + gap(); };
        return {side(), side(), side()};
    }

    // A body in every cell, as large as the cell allows in most cases; then equal ones become copies.
    void fill(const std::vector<Cell>& cells, const Size& from, std::vector<Item>& items,
              std::vector<Placement>& placements)
    {
        for (const Cell& cell : cells) {
            Item item;
            item.id = "item" + std::to_string(items.size());
            item.weight = Weight{dice_.from_to(0, 5000)};
            if (dice_.one_in(4)) item.top_load = Weight{dice_.from_to(0, 5000)};
            item.fragile = dice_.one_in(6);
            Placement p;
            p.item = item.id;
            p.at = {from.x + cell.at.x, from.y + cell.at.y, from.z + cell.at.z};
            p.size = plus(cell.size, -gap());
            shape_for(item, p);
            const bool again = !items.empty() && items.back().shape == item.shape && items.back().count < 3;
            if (again) {
                p.item = items.back().id;
                p.copy = ++items.back().count;
            } else {
                items.push_back(item);
            }
            placements.push_back(p);
        }
    }

    void shape_for(Item& item, Placement& p)
    {
        const Size room = p.size;
        switch (dice_.below(8)) {
        case 0: // standing
            item.shape = Cylinder{std::min(room.x, room.y), room.z};
            p.size = {std::min(room.x, room.y), std::min(room.x, room.y), room.z};
            p.axis = Axis::z;
            break;
        case 1: { // lying along x or y
            const bool along_x = dice_.one_in(2);
            const Length d = std::min(along_x ? room.y : room.x, room.z), length = along_x ? room.x : room.y;
            item.shape = dice_.one_in(2) ? Shape{Roll{d, length}} : Shape{Cylinder{d, length}};
            p.size = along_x ? Size{length, d, d} : Size{d, length, d};
            p.axis = along_x ? Axis::x : Axis::y;
            break;
        }
        case 2: {
            const Size edges = sorted(room);
            item.shape = Sheet{edges.x, edges.y, edges.z, std::nullopt};
            break;
        }
        case 3: {
            if (!dice_.one_in(3)) { // not often: a set with soft goods is never proven out
                item.shape = Block{turned(room)};
                break;
            }
            const Length least = std::min({room.x, room.y, room.z});
            item.shape = Soft{Volume{volume(room).units / 100 * dice_.from_to(60, 100)}, between(dice_, {10}, least)};
            break;
        }
        default: item.shape = Block{turned(room)};
        }
    }

    Size turned(const Size& s)
    {
        std::array<Length, 3> edge{s.x, s.y, s.z};
        if (dice_.one_in(2)) dice_.shuffle(edge);
        return {edge[0], edge[1], edge[2]};
    }

    // Turns as narrow as the arrangement allows them to be, by trial; and a greatest load just kept.
    void name_the_rules()
    {
        using Rule = Turns::Rule;
        constexpr std::array rules{Rule::any, Rule::any, Rule::upright, Rule::flat, Rule::fixed, Rule::listed};
        Question& q = made_.question;
        std::vector<Turns::Rule> drawn;
        const auto name_all = [&](std::vector<Item>& items) {
            for (Item& item : items) {
                item.turns.rule = dice_.one_of(rules);
                for (bool& vertical : item.turns.vertical) vertical = dice_.one_in(2);
            }
        };
        name_all(q.items);
        for (Item& item : q.items) name_all(item.content);
        Question geometry = q;
        geometry.support = Support::none;
        for (const Violation& v : check(geometry, made_.outer, made_.cut_height, made_.placements)) {
            if (v.rule != fitting::Rule::turned) continue;
            const auto loosen = [&](std::vector<Item>& items, std::string_view label) {
                for (Item& item : items) {
                    if (label.substr(0, label.rfind(' ')) == item.id) item.turns.rule = Rule::any;
                }
            };
            const std::size_t inside = v.item.find(" / ");
            if (inside == std::string::npos) {
                loosen(q.items, v.item);
            } else {
                for (Item& item : q.items) loosen(item.content, std::string_view(v.item).substr(inside + 3));
            }
        }
        for (Outer& outer : q.outers) {
            if (dice_.one_in(2)) outer.max_load = total_weight();
        }
    }
    Weight total_weight() const
    {
        const auto sum_of = [](const std::vector<Item>& items) {
            Weight sum;
            for (const Item& item : items) sum += item.weight * item.count;
            return sum;
        };
        Weight sum = sum_of(made_.question.items);
        for (const Item& item : made_.question.items) {
            if (!item.packed_in.empty()) sum += (sum_of(item.content) + grams(50)) * item.count;
        }
        return sum;
    }

    void in_box(OuterKind kind)
    {
        Size enlarged = any_enlarged(mm(60), mm(400));
        if (kind == OuterKind::board_mailer) enlarged.z = between(dice_, mm(20), mm(60)) + gap();
        const int most = kind == OuterKind::board_mailer ? 6 : any_count();
        fill(cells_of(enlarged, std::min(any_count(), most)), origin(), made_.question.items, made_.placements);
        set_main_outer(kind, inner_around(enlarged));
        // Room to spare at times.
        if (dice_.one_in(3)) made_.question.outers[0].form.inner.x += between(dice_, {}, mm(20));
    }

    void in_cut_carton()
    {
        in_box(OuterKind::carton);
        OuterForm& form = made_.question.outers[0].form;
        made_.cut_height = form.inner.z;
        form.inner.z += between(dice_, mm(10), mm(200));
        form.outer.z = form.inner.z + mm(6);
        form.cut_heights = {*made_.cut_height + mm(5), *made_.cut_height, *made_.cut_height - mm(12)};
    }

    void in_sleeve(OuterKind kind)
    {
        const Size enlarged{between(dice_, mm(60), mm(300)) + gap(), between(dice_, mm(60), mm(250)) + gap(),
                            between(dice_, mm(20), mm(80)) + gap()};
        fill(cells_of(enlarged, std::min(any_count(), 8)), {}, made_.question.items, made_.placements);
        const Size body = plus(enlarged, -gap());
        const std::array<Length, 2> ease{between(dice_, {}, mm(5)), between(dice_, {}, mm(5))};
        set_main_outer(kind, {body.z + body.x + ease[0], body.z + body.y + ease[1], {}});
        for (Outer& outer : made_.question.outers) {
            outer.form.ease = ease;
            outer.form.outer.z = mm(1);
            if (kind == OuterKind::padded_mailer) outer.form.wall = tenth_mm(35);
        }
    }

    void set_tube(Length diameter, Length length) { set_main_outer(OuterKind::tube, {diameter, diameter, length}); }

    void bundle_in_tube()
    {
        const Size enlarged{between(dice_, mm(50), mm(100)) + gap(), between(dice_, mm(50), mm(100)) + gap(),
                            between(dice_, mm(100), mm(500)) + gap()};
        const Size body = plus(enlarged, -gap());
        const Length diameter = root((body.x * body.x + body.y * body.y).units) + Length{2};
        const Size corner{Length{(diameter - body.x).units / 2}, Length{(diameter - body.y).units / 2}, {}};
        fill(cells_of(enlarged, std::min(any_count(), 6)), corner, made_.question.items, made_.placements);
        set_tube(diameter, body.z);
    }

    // Middles on a ring wide enough for neighbours to touch; a seventh to ninth goes into the middle.
    void ring_in_tube()
    {
        const int count = static_cast<int>(dice_.from_to(1, 9));
        const bool middle = count >= 7;
        const int on_ring = middle ? count - 1 : count;
        const Length length = between(dice_, mm(100), mm(500));
        Item item;
        item.id = "roll";
        item.count = count;
        item.weight = grams(30);
        Length diameter = between(dice_, mm(15), mm(70));
        if (dice_.one_in(3)) {
            const Sheet sheet{length, between(dice_, mm(100), mm(600)), between(dice_, {1}, {8}), diameter};
            item.shape = sheet;
            diameter = rolled_diameter(*sheet.least_roll, sheet.width, sheet.thickness);
        } else {
            item.shape = Roll{diameter, length};
        }
        const double pi = std::acos(-1.0), d = static_cast<double>((diameter + gap()).units);
        double radius = on_ring == 1 ? 0 : d / 2 / std::sin(pi / on_ring);
        if (middle) radius = std::max(radius, d);
        const Length wide{static_cast<std::int64_t>(std::ceil(2 * radius)) + diameter.units + 7};
        const double half = static_cast<double>(wide.units - diameter.units) / 2;
        for (int k = 0; k < count; ++k) {
            const bool in_middle = middle && k == count - 1;
            const double turn = 2 * pi * k / on_ring, r = in_middle || radius == 0 ? 0 : radius + 2;
            Placement p;
            p.item = item.id;
            p.copy = k + 1;
            p.at = {
                Length{std::llround(half + r * std::cos(turn))}, Length{std::llround(half + r * std::sin(turn))}, {}};
            p.size = {diameter, diameter, length};
            p.axis = Axis::z;
            made_.placements.push_back(p);
        }
        made_.question.items.push_back(item);
        set_tube(wide, length);
    }

    void add_jar(const std::string& id, int copy, Length diameter, Length height, Length x, Length y)
    {
        Placement p;
        p.item = id;
        p.copy = copy;
        p.at = {origin().x + x, origin().y + y, origin().z};
        p.size = {diameter, diameter, height};
        p.axis = Axis::z;
        made_.placements.push_back(p);
    }
    static Item jar(std::string id, int count, Length diameter, Length height)
    {
        Item item;
        item.id = std::move(id);
        item.count = count;
        item.shape = Cylinder{diameter, height};
        item.weight = grams(200);
        return item;
    }

    void jars_in_rows()
    {
        const Length d = between(dice_, mm(15), mm(90)), h = between(dice_, mm(40), mm(150));
        const Length wide = d + gap();
        const int rows = static_cast<int>(dice_.from_to(1, 4)), in_row = static_cast<int>(dice_.from_to(1, 4));
        // Neighbours of the next row stand half a diameter off, one of them rounded down.
        const Length half{(wide.units + 1) / 2}, less = wide - half;
        const Length step = root((wide * wide - less * less).units);
        made_.question.items = {jar("jar", rows * in_row, d, h)};
        for (int r = 0; r < rows; ++r) {
            for (int k = 0; k < in_row; ++k) {
                add_jar("jar", r * in_row + k + 1, d, h, wide * k + (r % 2 == 1 ? half : Length{}), step * r);
            }
        }
        set_main_outer(OuterKind::carton, inner_around({wide * in_row + (rows > 1 ? half : Length{}),
                                                        wide + step * (rows - 1), h + gap()}));
    }

    void jars_zigzag()
    {
        const int count = static_cast<int>(dice_.from_to(2, 7));
        std::vector<Length> diameters;
        for (int k = 0; k < count; ++k) diameters.push_back(between(dice_, mm(20), mm(90)) + gap());
        const Length widest = *std::max_element(diameters.begin(), diameters.end());
        const Length strip = widest + between(dice_, {}, widest);
        const Length h = between(dice_, mm(40), mm(150));
        std::vector<std::array<std::int64_t, 2>> middles; // twice the middle, of enlarged circles
        std::int64_t end = 0;
        for (std::size_t k = 0; k < diameters.size(); ++k) {
            const std::int64_t d = diameters[k].units;
            const std::int64_t y = k % 2 == 0 ? d : 2 * strip.units - d;
            std::int64_t x = d;
            for (std::size_t i = 0; i < k; ++i) { // clear of every earlier one
                const std::int64_t least = diameters[i].units + d, dy = y - middles[i][1];
                if (least * least <= dy * dy) continue;
                x = std::max(x, middles[i][0] + root(least * least - dy * dy).units);
            }
            if ((x - d) % 2 != 0) ++x;
            middles.push_back({x, y});
            end = std::max(end, x + d);
        }
        for (std::size_t k = 0; k < diameters.size(); ++k) {
            const Length d = diameters[k];
            const std::string id = "jar" + std::to_string(k);
            made_.question.items.push_back(jar(id, 1, d - gap(), h));
            add_jar(id, 1, d - gap(), h, {(middles[k][0] - d.units) / 2}, {(middles[k][1] - d.units) / 2});
        }
        set_main_outer(OuterKind::carton, inner_around({Length{end / 2}, strip, h + gap()}));
    }

    // The gift box first, then things beside it in a carton.
    void gift_inside()
    {
        const Size content = any_enlarged(mm(40), mm(150));
        Item set;
        set.id = "set";
        set.packed_in = "gift";
        set.bow = dice_.one_in(2) ? between(dice_, {}, mm(30)) : Length{};
        Placement p;
        p.item = set.id;
        fill(cells_of(content, static_cast<int>(dice_.from_to(1, 5))), origin(), set.content, p.content);
        const Size inner = inner_around(content);
        const Size closed = plus(inner, mm(6));
        p.size = {closed.x, closed.y, closed.z + set.bow};
        p.at = origin();
        made_.question.items.push_back(set);
        made_.placements.push_back(p);
        // Beside it along x, of the same width and height.
        const Size beside{between(dice_, mm(30), mm(200)) + gap(), p.size.y + gap(), p.size.z + gap()};
        const Size from{origin().x + p.size.x + gap(), origin().y, origin().z};
        fill(cells_of(beside, static_cast<int>(dice_.from_to(1, 5))), from, made_.question.items, made_.placements);
        set_main_outer(OuterKind::carton, inner_around({p.size.x + gap() + beside.x, beside.y, beside.z}));
        add_outer(OuterKind::gift_box, inner, "gift");
    }

    Dice& dice_;
    Constructed made_;
};

} // namespace

std::string_view name_of(Scene scene)
{
    switch (scene) {
    case Scene::carton: return "carton";
    case Scene::cut_carton: return "cut carton";
    case Scene::gift_box: return "gift box";
    case Scene::board_mailer: return "board mailer";
    case Scene::mailer: return "mailer";
    case Scene::padded_mailer: return "padded mailer";
    case Scene::tube_bundle: return "bundle in a tube";
    case Scene::tube_rolls: return "rolls in a tube";
    case Scene::jars_in_rows: return "jars in rows";
    case Scene::jars_zigzag: return "jars zigzag";
    case Scene::gift_inside: return "gift box inside";
    }
    return {};
}

std::optional<Constructed> construct(Dice& dice, Scene scene)
{
    return Builder(dice).build(scene);
}

} // namespace stow::bench
