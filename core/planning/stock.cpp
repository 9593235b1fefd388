#include "core/planning/stock.h"

namespace stow::planning {

Stock::Stock(const shop::Cupboard& cupboard, const Wish& wish) : supplies_(cupboard.on_hand), goods_(cupboard.pieces)
{
    take(wish.reserved);
    for (const shop::SetPart& part : wish.reserved_goods) {
        const auto contents = contents_of(cupboard, {{{}, 0, part.good, part.count}});
        if (!contents) continue; // a good that is no longer known is not planned either
        for (const Several& s : off_the_shelf(*contents)) goods_[s.good->code] -= s.count;
    }
}

shop::Amount Stock::left(const shop::SupplyCode& supply) const
{
    const auto found = supplies_.find(supply);
    return found == supplies_.end() ? shop::Amount{} : found->second;
}

int Stock::left(const shop::GoodCode& good) const
{
    const auto found = goods_.find(good);
    return found == goods_.end() ? 0 : found->second;
}

void Stock::take(const std::vector<Used>& uses)
{
    for (const Used& used : uses) supplies_[used.supply] += -used.amount;
}

void Stock::give_back(const std::vector<Used>& uses)
{
    for (const Used& used : uses) supplies_[used.supply] += used.amount;
}

std::optional<Stock::Short> Stock::take_goods(const std::vector<Several>& goods)
{
    for (const Several& s : goods) {
        const int there = std::max(left(s.good->code), 0);
        if (there < s.count) return Short{s.good->code, s.count - there};
    }
    for (const Several& s : goods) goods_[s.good->code] -= s.count;
    return std::nullopt;
}

void Stock::give_back(const std::vector<Several>& goods)
{
    for (const Several& s : goods) goods_[s.good->code] += s.count;
}

} // namespace stow::planning
