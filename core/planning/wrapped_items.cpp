#include "core/planning/wrapped_items.h"

#include "core/measure/overload.h"
#include "core/planning/spread.h"

#include <cmath>
#include <set>

namespace stow::planning {

namespace {

// Inserts are paper: they need no cushion and carry anything.
fitting::Item fitted_insert(const PackedItem& item)
{
    return {.id = item.id, .count = item.count, .shape = item.shape, .weight = item.weight.mean};
}

fitting::Item fitted_good(const PackedItem& item, const shop::Good& good)
{
    return {.id = item.id,
            .count = item.count,
            .shape = item.shape,
            .weight = item.weight.mean,
            .turns = good.turns,
            .top_load = good.top_load,
            .fragile = good.fragile};
}

const Sheet* rollable(const Shape& shape)
{
    const auto* sheet = std::get_if<Sheet>(&shape);
    return sheet != nullptr && sheet->least_roll ? sheet : nullptr;
}

Length less(Length a, Length b)
{
    return std::max(a - b, Length{});
}

Size growth_of(const shop::Wrapping* wrapping, bool squeezed)
{
    if (wrapping == nullptr) return {};
    if (!squeezed) return wrapping->growth;
    const Size& g = wrapping->growth;
    return {less(g.x, wrapping->squeeze), less(g.y, wrapping->squeeze), less(g.z, wrapping->squeeze)};
}

Length ceil_sqrt(std::int64_t square)
{
    auto root = static_cast<std::int64_t>(std::sqrt(static_cast<double>(square)));
    while (root * root < square) ++root;
    while (root > 0 && (root - 1) * (root - 1) >= square) --root;
    return {root};
}

// The roll of all sheets that may be rolled; they are told apart in its content.
PackedItem roll_of(const shop::Cupboard& cupboard, const std::vector<Several>& sheets,
                   const std::vector<PackedItem>& papers, Manner manner)
{
    PackedItem roll{.kind = PackedItem::Kind::roll, .id = "roll", .name = "roll", .rolled = true};
    std::vector<Rolled> flat;
    Size growth;
    for (const Several& s : sheets) {
        PackedItem item = packed_good(cupboard, s, s.good->code.text, manner.squeezed);
        item.rolled = true;
        const Size g = growth_of(cupboard.wrapping(s.good->wrapping), manner.squeezed);
        growth = {std::max({growth.x, g.x, g.y}), {}, std::max(growth.z, g.z)};
        flat.push_back({*rollable(s.good->shape), s.count});
        roll.fragile = roll.fragile || item.fragile;
        roll.weight = sum(roll.weight, times(item.weight, item.count));
        roll.content.push_back(std::move(item));
    }
    for (PackedItem paper : papers) {
        paper.rolled = true;
        flat.push_back({*rollable(paper.shape), paper.count});
        roll.weight = sum(roll.weight, times(paper.weight, paper.count));
        roll.content.push_back(std::move(paper));
    }
    Roll shape = rolled_together(flat, manner.sheets == Manner::Sheets::rolled_long);
    shape.length += growth.x;
    shape.diameter += growth.z;
    roll.shape = shape;
    return roll;
}

fitting::Outer box_outer(const shop::Cupboard& cupboard, const shop::Supply& box)
{
    return {box.code.text, eased(*box.form, cupboard.house.ease), box.weight.mean, box.max_load};
}

void add_boxed(const shop::Cupboard& cupboard, const BoxedSet& set, Manner manner, Load& load)
{
    PackedItem packed{.kind = PackedItem::Kind::gift_box,
                      .id = set.set->code.text,
                      .name = set.set->name,
                      .good = set.set->code,
                      .supply = set.box->code,
                      .count = set.count,
                      .shape = Block{set.box->form->outer},
                      .weight = set.box->weight};
    fitting::Item item{.id = packed.id,
                       .count = set.count,
                       .shape = packed.shape,
                       .turns = {Turns::Rule::upright},
                       .top_load = set.set->top_load,
                       .fragile = set.set->fragile,
                       .packed_in = set.box->code.text};
    for (const Several& s : set.content) {
        PackedItem part = packed_good(cupboard, s, packed.id + "/" + s.good->code.text, manner.squeezed);
        packed.weight = sum(packed.weight, times(part.weight, part.count));
        packed.fragile = packed.fragile || part.fragile;
        item.content.push_back(fitted_good(part, *s.good));
        packed.content.push_back(std::move(part));
    }
    item.weight = packed.weight.mean;
    packed.fragile = packed.fragile || set.set->fragile;
    load.items.push_back(std::move(packed));
    load.fitted.push_back(std::move(item));
}

} // namespace

Shape wrapped(const Shape& shape, const Size& g)
{
    return std::visit(Overload{[&](const Block& b) -> Shape {
                                   return Block{{b.size.x + g.x, b.size.y + g.y, b.size.z + g.z}};
                               },
                               [&](const Cylinder& c) -> Shape {
                                   return Cylinder{c.diameter + std::max(g.x, g.y), c.height + g.z};
                               },
                               [&](const Sheet& s) -> Shape {
                                   return Sheet{s.length + g.x, s.width + g.y, s.thickness + g.z, s.least_roll};
                               },
                               [&](const Roll& r) -> Shape {
                                   return Roll{r.diameter + std::max(g.y, g.z), r.length + g.x};
                               },
                               [&](const Soft& s) -> Shape {
                                   const Size b = bounding_size(s);
                                   const Size with{b.x + g.x, b.y + g.y, b.z + g.z};
                                   return Soft{s.volume + (volume(with) - volume(b)), s.least + g.z};
                               }},
                      shape);
}

Roll rolled_together(const std::vector<Rolled>& sheets, bool along_longer_edge)
{
    Roll roll;
    Length core, thickest;
    Area section;
    for (const auto& [sheet, count] : sheets) {
        const auto [shorter, longer] = std::minmax(sheet.length, sheet.width);
        const Length axis = along_longer_edge ? longer : shorter;
        const Length round = along_longer_edge ? shorter : longer;
        roll.length = std::max(roll.length, axis);
        core = std::max(core, sheet.least_roll.value_or(Length{}));
        thickest = std::max(thickest, sheet.thickness);
        section = {section.units + (round * sheet.thickness).units * count};
    }
    // 4/π rounded up to 1.27324, so that the roll is never drawn thinner than it is.
    roll.diameter = ceil_sqrt((core * core).units + (section.units * 127'324 + 99'999) / 100'000) + thickest * 2;
    return roll;
}

PackedItem packed_good(const shop::Cupboard& cupboard, const Several& several, std::string id, bool squeezed)
{
    const shop::Good& good = *several.good;
    const shop::Wrapping* wrapping = cupboard.wrapping(good.wrapping);
    PackedItem item{.kind = PackedItem::Kind::good,
                    .id = std::move(id),
                    .name = good.name,
                    .good = good.code,
                    .wrapping = wrapping == nullptr ? shop::WrappingCode{} : good.wrapping,
                    .count = several.count,
                    .shape = wrapped(good.shape, growth_of(wrapping, squeezed)),
                    .fragile = good.fragile,
                    .weight = good.weight};
    if (wrapping != nullptr) item.weight = sum(item.weight, wrapping->weight);
    return item;
}

bool can_be_rolled(const Contents& contents)
{
    return std::any_of(contents.loose.begin(), contents.loose.end(),
                       [](const Several& s) { return rollable(s.good->shape) != nullptr; });
}

Load load_of(const shop::Cupboard& cupboard, const Contents& contents, const std::vector<PackedItem>& inserts,
             Manner manner)
{
    Load load;
    const bool rolls = manner.sheets != Manner::Sheets::flat && can_be_rolled(contents);
    std::vector<Several> sheets;
    for (const Several& s : contents.loose) {
        if (rolls && rollable(s.good->shape) != nullptr) {
            sheets.push_back(s);
            continue;
        }
        PackedItem item = packed_good(cupboard, s, s.good->code.text, manner.squeezed);
        load.fitted.push_back(fitted_good(item, *s.good));
        load.items.push_back(std::move(item));
    }
    std::set<shop::SupplyCode> boxes;
    for (const BoxedSet& set : contents.boxed) {
        add_boxed(cupboard, set, manner, load);
        if (boxes.insert(set.box->code).second) load.boxes.push_back(box_outer(cupboard, *set.box));
    }
    std::vector<PackedItem> rolled_papers;
    for (const PackedItem& insert : inserts) {
        if (rolls && rollable(insert.shape) != nullptr) {
            rolled_papers.push_back(insert);
            continue;
        }
        if (!insert.under_cushion) load.fitted.push_back(fitted_insert(insert));
        load.items.push_back(insert);
    }
    if (rolls) {
        PackedItem roll = roll_of(cupboard, sheets, rolled_papers, manner);
        load.fitted.push_back(
            {.id = roll.id, .count = 1, .shape = roll.shape, .weight = roll.weight.mean, .fragile = roll.fragile});
        load.items.push_back(std::move(roll));
    }
    return load;
}

OuterForm eased(const OuterForm& form, Length ease)
{
    OuterForm less_ease = form;
    Size& inner = less_ease.inner;
    if (is_sleeve(form.kind)) return less_ease;
    inner.x = less(inner.x, ease);
    inner.y = less(inner.y, ease);
    if (form.kind == OuterKind::board_mailer) return less_ease;
    inner.z = less(inner.z, ease);
    for (Length& height : less_ease.cut_heights) height = less(height, ease);
    return less_ease;
}

} // namespace stow::planning
