#include "tests/quick/many_orders.h"

#include "app/plan_day.h"
#include "core/book/orders.h"
#include "tests/bench/demo_shop.h"

#include <stdexcept>

namespace stow::quick {

namespace {

constexpr int kinds = 400; // of orders; they come again and again

} // namespace

void take_in_many(Workshop& shop, int orders)
{
    const auto like = bench::random_orders(bench::demo_shop(), kinds, 6, shop.day().today());
    std::vector<shop::Order> all;
    for (int n = 0; n < orders; ++n) {
        shop::Order order = like[static_cast<std::size_t>(n % kinds)].order;
        const std::string number = std::to_string(n + 1);
        order.key = {"Harbour Stall", number};
        order.paid = true;
        for (std::string* part : {&order.to.name, &order.to.street.front()}) { // another buyer each
            *part += '-';
            *part += number;
        }
        if (n % 7 == 0) order.to.postcode.clear();
        all.push_back(std::move(order));
    }
    if (book::take_in_orders(shop.day().book(), all, "many.csv").fresh != orders)
        throw std::logic_error("the orders were not taken in");
    shop.day().moved();
}

void plan_many(Workshop& shop)
{
    shop.check_what_is_sound();
    PlanInput input = gather(shop.day(), planning::Preference::smallest);
    for (auto& [code, amount] : input.cupboard.on_hand) amount = shop::pieces(1'000'000);
    for (auto& [code, pieces] : input.cupboard.pieces) pieces = 1'000'000;
    input.wish.prove = false;

    // The first order of each kind is planned; the others of its kind get the same.
    std::map<int, std::vector<const shop::HeldOrder*>> of_kind;
    for (const shop::HeldOrder& held : input.orders)
        of_kind[(std::stoi(held.order.key.number) - 1) % kinds].push_back(&held);
    std::vector<shop::HeldOrder> firsts;
    for (const auto& [kind, orders] : of_kind) firsts.push_back(*orders.front());
    Run run;
    const auto plan = planning::plan_day(input.cupboard, firsts, input.rate_sheets, input.wish, run);
    std::vector<planning::ParcelPlan> plans;
    for (const planning::ParcelPlan& parcel : plan.parcels) {
        const shop::OrderId first = parcel.pieces.front().order;
        for (const auto& [kind, orders] : of_kind) {
            if (orders.front()->id != first) continue;
            for (const shop::HeldOrder* held : orders) {
                plans.push_back(parcel);
                for (shop::Piece& piece : plans.back().pieces) piece.order = held->id;
            }
        }
    }
    std::vector<shop::OrderId> ids;
    for (const shop::HeldOrder& held : input.orders) ids.push_back(held.id);
    if (!book::put_plan(shop.day().book(), ids, plans)) throw std::logic_error("the orders were not planned");
    shop.day().moved();
}

} // namespace stow::quick
