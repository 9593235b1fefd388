#include "core/planning/parcel_weight.h"

#include "core/weighing/expected.h"

namespace stow::planning {

namespace {

using weighing::Share;

class Shares {
public:
    explicit Shares(const shop::Cupboard& cupboard) : cupboard_(cupboard) {}

    void add(const std::vector<PackedItem>& items, int times = 1)
    {
        for (const PackedItem& item : items) add(item, item.count * times);
    }

    // So many thousandths of the unit of a supply. What is cut from one roll or bag is off together, not piece by
    // piece.
    void add(const shop::SupplyCode& code, std::int64_t thousandths)
    {
        const shop::Supply* supply = cupboard_.supply(code);
        if (supply == nullptr || thousandths == 0) return;
        const auto part = [&](Weight w) { return Weight{(w.units * thousandths + 500) / 1000}; };
        shares_.push_back({{part(supply->weight.mean), part(supply->weight.spread)}, 1, 0, is_board(*supply)});
    }

    shop::WeightEstimate expected() const
    {
        const shop::House& house = cupboard_.house;
        return weighing::expected_weight(shares_, {house.humidity_percent * 10, house.scale_step});
    }

private:
    static bool is_board(const shop::Supply& supply) { return supply.material == shop::Material::paper; }

    void add(const PackedItem& item, int count)
    {
        switch (item.kind) {
        case PackedItem::Kind::good: add_good(item, count); break;
        case PackedItem::Kind::gift_box:
            if (const shop::Supply* box = cupboard_.supply(item.supply)) {
                shares_.push_back({box->weight, count, 0, is_board(*box)});
            }
            add(item.content, count);
            break;
        case PackedItem::Kind::roll: add(item.content, count); break;
        case PackedItem::Kind::insert:
        case PackedItem::Kind::slip:
        case PackedItem::Kind::gift_note: shares_.push_back({item.weight, count, 0, true}); break;
        }
    }

    void add_good(const PackedItem& item, int count)
    {
        if (const shop::Good* good = cupboard_.good(item.good)) {
            shares_.push_back({good->weight, count, cupboard_.house.batch_percent * 10, false});
        }
        if (const shop::Wrapping* wrapping = cupboard_.wrapping(item.wrapping)) {
            const shop::Supply* first =
                wrapping->uses.empty() ? nullptr : cupboard_.supply(wrapping->uses.front().supply);
            shares_.push_back({wrapping->weight, count, 0, first != nullptr && is_board(*first)});
        }
    }

    const shop::Cupboard& cupboard_;
    std::vector<Share> shares_;
};

} // namespace

void weigh(ParcelPlan& plan, const shop::Cupboard& cupboard, const shop::Supply& outer)
{
    Shares shares(cupboard);
    shares.add(plan.items);
    plan.contents_weight = shares.expected();

    shares.add(outer.code, 1000);
    shares.add(cupboard.house.filler, plan.filler_volume.units / 1'000'000);
    shares.add(cupboard.house.tape, plan.tape.units / 10);
    shares.add(cupboard.house.label, 1000);
    plan.weight = shares.expected();
}

} // namespace stow::planning
