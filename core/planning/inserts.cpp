#include "core/planning/inserts.h"

namespace stow::planning {

namespace {

bool asked_for(const shop::HouseRule& rule, const shop::Order& order, const std::vector<Several>& goods,
               const shop::House& house)
{
    using When = shop::HouseRule::When;
    switch (rule.when) {
    case When::every_order: return true;
    case When::gift: return order.gift.has_value();
    case When::no_gift: return !order.gift;
    case When::abroad: return order.to.country != house.address.country;
    case When::good_in_order:
        return std::any_of(order.lines.begin(), order.lines.end(),
                           [&](const shop::OrderLine& line) { return line.good == rule.good; }) ||
               std::any_of(goods.begin(), goods.end(), [&](const Several& s) { return s.good->code == rule.good; });
    case When::value_from: {
        std::int64_t value = 0;
        for (const shop::OrderLine& line : order.lines) {
            if (line.price && rule.from && line.price->currency == rule.from->currency) {
                value += line.price->minor * line.count;
            }
        }
        return rule.from && value >= rule.from->minor;
    }
    }
    return false;
}

PackedItem insert(const shop::Supply& supply, int count, bool folded)
{
    const bool folds = folded && supply.folded;
    return {.kind = PackedItem::Kind::insert,
            .id = "insert " + supply.code.text,
            .name = supply.name,
            .supply = supply.code,
            .count = count,
            .shape = folds ? *supply.folded : *supply.sheet,
            .folded = folds,
            .weight = supply.weight};
}

// ISO 216: A4 210 × 297, A5 148 × 210, A6 105 × 148; folding an A size once gives the next. A4 is 1/16 m², so 5 g at
// 80 g/m². Office paper may be rolled to 20 mm (common practice, no source).
PackedItem office_paper(PackedItem::Kind kind, std::string id, std::string name, bool a4, bool folded)
{
    const auto sheet = [](Length l, Length w, int layers) { return Sheet{l, w, tenth_mm(layers), mm(20)}; };
    PackedItem paper{.kind = kind, .id = std::move(id), .name = std::move(name), .folded = folded};
    if (a4)
        paper.shape = folded ? sheet(mm(149), mm(105), 4) : sheet(mm(210), mm(149), 2);
    else
        paper.shape = folded ? sheet(mm(148), mm(105), 2) : sheet(mm(210), mm(148), 1);
    paper.weight.mean = a4 ? tenth_g(50) : tenth_g(25);
    return paper;
}

} // namespace

std::vector<PackedItem> inserts_for(const shop::Cupboard& cupboard, const std::vector<const shop::HeldOrder*>& orders,
                                    const Contents& contents, Wish::Slip slip, bool first, bool folded)
{
    std::vector<PackedItem> inserts;
    const std::vector<Several> goods = off_the_shelf(contents);
    // Orders that travel together get each insert once, as often as the most demanding rule asks.
    std::map<shop::SupplyCode, int> counts;
    bool note = false;
    for (const shop::HeldOrder* held : orders) {
        const shop::Order& order = held->order;
        note = note || (order.gift && !order.gift->message.empty());
        for (const shop::HouseRule& rule : cupboard.rules) {
            if (!asked_for(rule, order, goods, cupboard.house)) continue;
            int& count = counts[rule.insert];
            count = std::max(count, rule.count);
        }
    }
    for (const auto& [code, count] : counts) {
        const shop::Supply* supply = cupboard.supply(code);
        if (first && supply != nullptr && supply->sheet && count > 0) inserts.push_back(insert(*supply, count, folded));
    }
    if (first && note) {
        inserts.push_back(office_paper(PackedItem::Kind::gift_note, "gift note", "gift note", false, folded));
    }
    if (slip != Wish::Slip::none) {
        inserts.push_back(office_paper(PackedItem::Kind::slip, "slip", "packing slip", slip == Wish::Slip::a4, folded));
    }
    return inserts;
}

Length lay_under_cushion(std::vector<PackedItem>& inserts)
{
    Length thickness;
    for (PackedItem& insert : inserts) {
        insert.under_cushion = true;
        thickness += bounding_size(insert.shape).z * insert.count;
    }
    return thickness;
}

} // namespace stow::planning
