#include "core/planning/cushion.h"

namespace stow::planning {

Cushion cushion_of(const shop::Cupboard& cupboard, const Contents& contents)
{
    Length gap;
    for (const Several& several : off_the_shelf(contents)) {
        const shop::Wrapping* wrapping = cupboard.wrapping(several.good->wrapping);
        const Length given = wrapping == nullptr ? Length{} : wrapping->cushion;
        gap = std::max(gap, several.good->cushion - given);
    }
    return {gap, std::max(gap, cupboard.house.lining)};
}

Length cushion_in_walls(const OuterForm& form)
{
    return form.kind == OuterKind::padded_mailer ? form.wall : Length{};
}

bool is_lined(OuterKind kind)
{
    return kind == OuterKind::carton || kind == OuterKind::gift_box || kind == OuterKind::board_mailer;
}

} // namespace stow::planning
