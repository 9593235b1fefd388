#include "core/planning/costing.h"

#include "core/planning/consumables.h"
#include "core/planning/handwork.h"
#include "core/planning/parcel_weight.h"

#include <map>

namespace stow::planning {

namespace {

// Supplies are added up by code, so that a plan lists each once.
class Uses {
public:
    explicit Uses(const shop::Cupboard& cupboard) : cupboard_(cupboard) {}

    void add(const shop::SupplyCode& code, shop::Amount amount)
    {
        if (cupboard_.supply(code) != nullptr && amount > shop::Amount{}) amounts_[code] += amount;
    }
    std::vector<Used> list() const
    {
        std::vector<Used> uses;
        for (const auto& [code, amount] : amounts_) uses.push_back({code, amount});
        return uses;
    }

private:
    const shop::Cupboard& cupboard_;
    std::map<shop::SupplyCode, shop::Amount> amounts_;
};

void add_wraps(const Costing& with, Uses& uses)
{
    for (const Several& s : off_the_shelf(with.contents)) {
        const shop::Wrapping* wrapping = with.cupboard.wrapping(s.good->wrapping);
        if (wrapping == nullptr) continue;
        for (const shop::Wrapping::Use& use : wrapping->uses) {
            uses.add(use.supply, {use.amount.thousandths * s.count});
        }
    }
}

void add_papers(const std::vector<PackedItem>& items, Uses& uses)
{
    for (const PackedItem& item : items) {
        if (item.kind == PackedItem::Kind::insert) uses.add(item.supply, shop::pieces(item.count));
        if (item.kind == PackedItem::Kind::roll) add_papers(item.content, uses);
    }
}

// The void of the outer, and that within its gift boxes, which are filled too.
Volume void_of(const ParcelPlan& plan, const Costing& with, const OuterForm& form, std::optional<Length> cut_at)
{
    Size inner = form.inner;
    if (cut_at) inner.z = *cut_at;
    Volume room = is_filled(form.kind) ? room_around(inner, plan.items) : Volume{};
    for (const PackedItem& item : plan.items) {
        if (item.kind != PackedItem::Kind::gift_box) continue;
        const shop::Supply* box = with.cupboard.supply(item.supply);
        if (box != nullptr && box->form) room += room_around(box->form->inner, item.content) * item.count;
    }
    return room;
}

Money cost_of(const std::vector<Used>& uses, const shop::Cupboard& cupboard)
{
    Money sum{0, cupboard.house.currency};
    for (const Used& used : uses) {
        const Money cost = share(cupboard.supply(used.supply)->cost, used.amount.thousandths, 1000);
        if (cost.minor != 0) sum += cost; // an amount of nothing needs no currency
    }
    return sum;
}

} // namespace

Size bulged(const Size& closed, OuterKind kind, Length bulge)
{
    switch (kind) {
    case OuterKind::carton:
    case OuterKind::gift_box: return {closed.x + bulge, closed.y + bulge, closed.z + bulge};
    case OuterKind::mailer:
    case OuterKind::padded_mailer:
    case OuterKind::board_mailer: return {closed.x, closed.y, closed.z + bulge};
    case OuterKind::tube: break;
    }
    return closed;
}

std::vector<std::string> holds(const Contents& contents)
{
    bool flammable = false;
    bool ask = false;
    bool liquid = false;
    bool glass = false;
    for (const Several& s : off_the_shelf(contents)) {
        flammable = flammable || s.good->restriction == shop::Restriction::flammable;
        ask = ask || s.good->restriction == shop::Restriction::ask_carrier;
        liquid = liquid || s.good->liquid;
        glass = glass ||
                (s.good->own_packaging.material == shop::Material::glass && s.good->own_packaging.weight > Weight{});
    }
    std::vector<std::string> held;
    if (flammable) held.emplace_back("flammable");
    if (ask) held.emplace_back("ask carrier");
    if (liquid) held.emplace_back("liquid");
    if (glass) held.emplace_back("glass");
    return held;
}

void cost(ParcelPlan& plan, const Costing& with, const shop::Supply& outer, Length thickness,
          std::optional<Length> cut_at)
{
    const shop::House& house = with.cupboard.house;
    const OuterForm& form = *outer.form;
    plan.outer = outer.code;
    plan.cut_at = cut_at;
    plan.contents_thickness = thickness;
    plan.closed = bulged(closed_size(form, thickness, cut_at), form.kind, house.bulge);
    plan.void_volume = void_of(plan, with, form, cut_at);
    plan.filler_volume = filler_for(plan.void_volume, house.overfill_percent);
    plan.tape = tape_for(form);

    Uses uses(with.cupboard);
    const Used own = taken_for(outer);
    uses.add(own.supply, own.amount);
    for (const BoxedSet& set : with.contents.boxed) uses.add(set.box->code, shop::pieces(set.count));
    add_wraps(with, uses);
    add_papers(plan.items, uses);
    const shop::Supply* filler = with.cupboard.supply(house.filler);
    plan.filler.reset();
    if (filler != nullptr && plan.filler_volume > Volume{}) {
        plan.filler = Used{house.filler, amount_of_filler(*filler, plan.filler_volume)};
        uses.add(house.filler, plan.filler->amount);
    }
    uses.add(house.tape, {(plan.tape.units + 9) / 10}); // by the metre
    uses.add(house.label, shop::pieces(1));
    plan.uses = uses.list();
    plan.packaging = cost_of(plan.uses, with.cupboard);
    plan.seconds = static_cast<int>(handwork(plan, with.cupboard).count());
    if (house.hour.minor > 0 && house.hour.currency == house.currency) {
        plan.work = share(house.hour, plan.seconds, 3600);
    }

    weigh(plan, with.cupboard);
    plan.holds = holds(with.contents);
    const postage::ParcelFacts facts{.closed = plan.closed,
                                     .roll = form.kind == OuterKind::tube,
                                     .weight = plan.weight.mean,
                                     .country = with.destination.country,
                                     .postcode = with.destination.postcode,
                                     .value = with.destination.value,
                                     .holds = plan.holds,
                                     .hand_over = with.wish.day,
                                     .soft = form.kind == OuterKind::mailer || form.kind == OuterKind::padded_mailer};
    ServiceChoice choice = choose_service(with.services, facts, with.destination.promise, house.currency);
    plan.quotes = std::move(choice.quotes);
    plan.chosen = choice.chosen;
    plan.hand_over = choice.hand_over;
    plan.delivered = choice.delivered;
    plan.keeps_promise = choice.keeps_promise;
}

} // namespace stow::planning
