#include "core/planning/before_sale.h"

#include "core/weighing/expected.h"

#include <cmath>

namespace stow::planning {

namespace {

constexpr int plenty = 1'000'000;

// Whatever is there by name is there in plenty.
shop::Cupboard full(const shop::Cupboard& cupboard)
{
    shop::Cupboard all = cupboard;
    for (auto& [code, good] : all.goods) all.pieces[code] = good.pieces = plenty;
    for (auto& [code, supply] : all.supplies) all.on_hand[code] = supply.on_hand = shop::pieces(plenty);
    return all;
}

tl::expected<ParcelPlan, StuckOrder> packed(const shop::Cupboard& cupboard, const Offer& offer,
                                            const std::vector<postage::RateSheet>& sheets, const Wish& wish, Run& run)
{
    shop::HeldOrder held;
    held.id = {1};
    held.state = shop::OrderState::checked;
    held.order.date = wish.day;
    held.order.to.country = offer.country;
    held.order.to.postcode = offer.postcode;
    shop::OrderLine line;
    line.good = offer.good;
    line.count = offer.count;
    if (const shop::Good* good = cupboard.good(offer.good)) line.price = good->price;
    held.order.lines = {line};
    const std::vector<shop::Piece> pieces{{held.id, 0, offer.good, offer.count}};
    return plan_parcel(cupboard, {held}, pieces, sheets, wish, std::nullopt, run);
}

} // namespace

tl::expected<ParcelPlan, StuckOrder> before_sale(const shop::Cupboard& cupboard, const Offer& offer,
                                                 const std::vector<postage::RateSheet>& sheets, const Wish& wish,
                                                 Run& run)
{
    return packed(full(cupboard), offer, sheets, wish, run);
}

std::vector<Charge> charges(const shop::Cupboard& cupboard, const std::vector<SendTo>& destinations,
                            const std::vector<postage::RateSheet>& sheets, const Wish& wish, Run& run)
{
    const shop::Cupboard all = full(cupboard);
    std::vector<Charge> table;
    for (const auto& [code, good] : all.goods) {
        for (const SendTo& to : destinations) {
            if (run.stopped()) return table;
            Charge charge;
            charge.good = code;
            charge.country = to.country;
            if (const auto plan = packed(all, {code, 1, to.country, to.postcode}, sheets, wish, run)) {
                charge.weight = plan->weight;
                if (plan->chosen) {
                    const postage::Quote& quote = plan->quotes[*plan->chosen];
                    const postage::Price& price = *quote.price();
                    charge.postage = charge.to_charge = price.total;
                    charge.carrier = quote.carrier;
                    charge.service = quote.service_name;
                    charge.next_step = price.next_step;
                    if (price.step_edge) charge.risk = weighing::probability_above(plan->weight, *price.step_edge);
                    if (price.next_step && price.next_step->currency == price.total.currency) {
                        const auto permille = static_cast<std::int64_t>(std::ceil(charge.risk * 1000));
                        charge.to_charge = price.total + share(*price.next_step - price.total, permille, 1000);
                    }
                }
            }
            table.push_back(std::move(charge));
        }
    }
    return table;
}

} // namespace stow::planning
