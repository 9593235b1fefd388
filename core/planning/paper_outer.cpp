#include "core/planning/paper_outer.h"

#include <algorithm>

namespace stow::planning {

namespace {

using paperbox::Kind;

int from_a_sheet(const paperbox::Net& net, const stow::Sheet& sheet)
{
    const auto side_by_side = [&](Length along, Length across) {
        return static_cast<int>((sheet.length.units / along.units) * (sheet.width.units / across.units));
    };
    return std::max(side_by_side(net.length, net.width), side_by_side(net.width, net.length));
}

OuterForm form_of(const paperbox::Wanted& wanted, Length paper)
{
    OuterForm form;
    if (wanted.kind == Kind::envelope) {
        form.kind = OuterKind::mailer;
        form.inner = {wanted.size.x, wanted.size.y, {}};
        form.wall = paper * 2;
        return form;
    }
    form.kind = OuterKind::gift_box;
    form.inner = paperbox::room_in(wanted);
    const Length walls = paper * (wanted.kind == Kind::one_square ? 6 : 4); // on both sides together
    form.outer = {form.inner.x + walls, form.inner.y + walls, form.inner.z + walls};
    if (wanted.kind == Kind::pillow) { // its faces reach further than what goes in
        const paperbox::Pillow pillow = paperbox::pillow(wanted.size);
        form.outer = {wanted.size.x, wanted.size.y, pillow.thickness + walls};
    }
    return form;
}

} // namespace

std::optional<PaperOuter> paper_outer(const paperbox::Wanted& wanted, const shop::Supply& paper)
{
    if (paper.kind != shop::SupplyKind::paper || paper.unit != shop::Unit::piece || !paper.sheet) return std::nullopt;
    PaperOuter made;
    std::int64_t takes = 0, area = 0;
    for (const paperbox::Wanted& piece : paperbox::pieces_of(wanted)) {
        const paperbox::Laid laid = paperbox::lay(piece);
        if (!laid.net) return std::nullopt;
        const int count = from_a_sheet(*laid.net, *paper.sheet);
        if (count == 0) return std::nullopt;
        if (made.from_a_sheet == 0) made.from_a_sheet = count;
        takes += (1000 + count - 1) / count;
        area += laid.net->length.units * laid.net->width.units;
    }
    shop::Supply& outer = made.supply;
    outer.kind = shop::SupplyKind::outer;
    outer.form = form_of(wanted, paper.sheet->thickness);
    outer.made_from = paper.code;
    outer.takes = {takes};
    outer.material = paper.material;
    outer.cost = share(paper.cost, takes, 1000);
    const std::int64_t whole = paper.sheet->length.units * paper.sheet->width.units;
    const auto part = [&](Weight weight) { return Weight{(weight.units * area + whole / 2) / whole}; };
    outer.weight = {part(paper.weight.mean), part(paper.weight.spread)};
    return made;
}

} // namespace stow::planning
