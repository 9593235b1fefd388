#include "core/planning/making.h"

#include "core/planning/contents.h"

#include <algorithm>

namespace stow::planning {

std::vector<ToMake> making_list(const shop::Cupboard& cupboard, const std::map<shop::GoodCode, int>& reserved,
                                const std::vector<shop::HeldOrder>& waiting)
{
    std::map<shop::GoodCode, ToMake> needs;
    for (const auto& [code, count] : reserved) needs[code].reserved += count;
    for (const shop::HeldOrder& held : waiting) {
        for (std::size_t l = 0; l < held.order.lines.size(); ++l) {
            const shop::OrderLine& line = held.order.lines[l];
            const auto contents = contents_of(cupboard, {{held.id, static_cast<int>(l), line.good, line.count}});
            if (line.count <= 0 || !contents) continue; // what is not known cannot be made by this list
            for (const Several& s : off_the_shelf(*contents)) {
                ToMake& need = needs[s.good->code];
                need.waiting += s.count;
                const auto& promised = held.order.promised;
                if (promised && (!need.first_promise || *promised < *need.first_promise)) need.first_promise = promised;
            }
        }
    }
    std::vector<ToMake> list;
    for (const auto& [code, good] : cupboard.goods) {
        if (!good.parts.empty()) continue; // a set is packed from its parts
        ToMake own = needs[code];
        own.good = code;
        const auto there = cupboard.pieces.find(code);
        own.on_hand = there == cupboard.pieces.end() ? 0 : there->second;
        own.make = std::max(own.reserved + own.waiting + good.lowest - own.on_hand, 0);
        if (own.make > 0) list.push_back(std::move(own));
    }
    return list;
}

} // namespace stow::planning
