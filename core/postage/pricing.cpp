#include "core/postage/pricing.h"

#include <algorithm>

namespace stow::postage {

namespace {

constexpr Weight one_kg = grams(1000);
constexpr Weight least_weight = tenth_g(1);

std::int64_t started(std::int64_t amount, std::int64_t unit)
{
    return amount <= 0 ? 0 : (amount + unit - 1) / unit;
}

// Volume / divisor (cm³ for 1 kg), rounded up to whole `rounding`, in one exact division: 1 kg is 10,000 units of
// weight, 1 cm³ is 1,000,000 units of volume.
Weight volumetric_weight(Volume volume, std::int64_t divisor, Weight rounding)
{
    return rounding * started(volume.units, 100 * divisor * rounding.units);
}

bool names(const std::string& wanted, const std::string& name)
{
    return wanted.empty() || wanted == name;
}

} // namespace

Pricing::Pricing(const Tariff& tariff, std::size_t service, std::size_t zone, const Tariff::Misses& missed,
                 const ParcelFacts& parcel)
    : tariff_(tariff), service_(tariff.services_[service]), zone_(tariff.zones_[zone]),
      ladders_(tariff.ladders(service, zone)), missed_(missed), parcel_(parcel), rounding_(least_weight)
{
    for (const Surcharge& s : tariff.surcharges_) {
        if (may_apply(s)) surcharges_.push_back(&s);
    }
    const auto& divisor = service_.volumetric_divisor;
    if (!divisor || *divisor <= 0) return;
    rounding_ = std::max(service_.volumetric_rounding, least_weight);
    const Volume size = volume(parcel.closed);
    if (!service_.volumetric_above || size > *service_.volumetric_above) {
        volumetric_ = volumetric_weight(size, *divisor, rounding_);
    }
}

bool Pricing::fits(const Ladder& ladder) const
{
    return !ladder.format || !missed_[*ladder.format];
}

Weight Pricing::charged(Weight on_scale) const
{
    return std::max(rounding_ * started(on_scale.units, rounding_.units), volumetric_);
}

// All but the weight, which differs along the ruler.
bool Pricing::may_apply(const Surcharge& s) const
{
    return names(s.service, service_.code) && names(s.zone, zone_.name) &&
           (!s.longer_than || sorted(parcel_.closed).x > *s.longer_than) && (!s.only_rolls || parcel_.roll) &&
           (!s.from || *s.from <= parcel_.hand_over) && (!s.until || parcel_.hand_over <= *s.until);
}

bool Pricing::applies(const Surcharge& s, Weight on_scale) const
{
    return !s.heavier_than || on_scale > *s.heavier_than;
}

std::int64_t Pricing::amount(const Surcharge& s, std::int64_t base, Weight charged) const
{
    switch (s.kind) {
    case Surcharge::Kind::percent: return share(money(base), s.permille, 1000).minor;
    case Surcharge::Kind::fixed: return s.amount.minor;
    case Surcharge::Kind::per_kg: return s.amount.minor * started(charged.units, one_kg.units);
    }
    return 0;
}

std::optional<Pricing::Found> Pricing::found(Weight on_scale) const
{
    const Weight weight = charged(on_scale);
    std::optional<Found> best;
    for (const Ladder& ladder : ladders_) {
        if (!fits(ladder)) continue;
        const auto base = ladder.price(weight);
        // Surcharges and tax do not look at the format, so the cheapest base is the cheapest total.
        if (base && (!best || *base < best->base)) best = Found{&ladder, *base, 0, 0};
    }
    if (!best) return best;
    for (const Surcharge* s : surcharges_) {
        if (applies(*s, on_scale)) best->surcharges += amount(*s, best->base, weight);
    }
    const std::int64_t permille = service_.tax_permille.value_or(tariff_.tax_permille_);
    best->tax = share(money(best->base + best->surcharges), permille, 1000).minor;
    return best;
}

std::optional<Weight> Pricing::edge(Weight on_scale) const
{
    const Weight weight = charged(on_scale);
    std::optional<Weight> next;
    const auto lower_to = [&](Weight at) {
        if (!next || at < *next) next = at;
    };
    // A charged weight is a whole number of roundings; below the volumetric weight the scale's reading changes nothing.
    const auto on_the_scale = [&](Weight at) { return rounding_ * (at.units / rounding_.units); };
    for (const Ladder& ladder : ladders_) {
        if (!fits(ladder)) continue;
        if (const auto at = ladder.edge(weight)) lower_to(on_the_scale(*at));
    }
    if (!next) return next;
    for (const Surcharge* s : surcharges_) {
        if (s->heavier_than && *s->heavier_than >= on_scale) lower_to(*s->heavier_than);
        if (s->kind == Surcharge::Kind::per_kg) lower_to(on_the_scale(one_kg * started(weight.units, one_kg.units)));
    }
    return next;
}

Pricing::Edge Pricing::total_edge(Weight on_scale, std::int64_t total) const
{
    Weight at = on_scale;
    while (const auto next = edge(on_scale)) {
        at = *next;
        on_scale = at + least_weight;
        const auto past = found(on_scale);
        if (!past) break;
        if (past->total() != total) return {at, past->total()};
    }
    return {at, std::nullopt};
}

Price Pricing::price(const Found& f) const
{
    Price price;
    const Weight weight = charged(parcel_.weight);
    price.total = money(f.total());
    price.zone = zone_.name;
    if (f.ladder->format) price.format = tariff_.formats_[*f.ladder->format].name;
    price.charged = weight;
    price.parts.reserve(2 + surcharges_.size());
    price.parts.push_back({Part::Kind::base, price.format, money(f.base)});
    for (const Surcharge* s : surcharges_) {
        if (!applies(*s, parcel_.weight)) continue;
        price.parts.push_back({Part::Kind::surcharge, s->name, money(amount(*s, f.base, weight))});
    }
    if (f.tax != 0) price.parts.push_back({Part::Kind::tax, "tax", money(f.tax)});

    const Edge edge = total_edge(parcel_.weight, f.total());
    price.step_edge = edge.at;
    if (edge.total_past) price.next_step = money(*edge.total_past);
    if (parcel_.value) {
        if (!service_.cover) {
            price.covered = false;
        } else if (service_.cover->currency == parcel_.value->currency) {
            price.covered = true;
        }
    }
    return price;
}

std::optional<Refused> Pricing::refusal_before_price() const
{
    for (const std::string& content : parcel_.holds) {
        if (std::find(service_.not_sent.begin(), service_.not_sent.end(), content) != service_.not_sent.end()) {
            return Refused{NotTaken::not_admitted, {}, content, {}, {}};
        }
    }
    const bool comparable = parcel_.value && service_.cover && parcel_.value->currency == service_.cover->currency;
    if (comparable && *parcel_.value > *service_.cover) {
        return Refused{NotTaken::not_covered, {}, to_text(*service_.cover), {}, {}};
    }
    return std::nullopt;
}

// Where a format fits, weight is what stands in the way; otherwise the format missed by least tells the reason. Without
// any price there is no format to miss.
Refused Pricing::refusal_without_price() const
{
    std::optional<Weight> most;
    const Ladder* nearest = nullptr;
    for (const Ladder& ladder : ladders_) {
        if (fits(ladder)) {
            if (!most || ladder.most > *most) most = ladder.most;
        } else if (nearest == nullptr || missed_[*ladder.format]->by < missed_[*nearest->format]->by) {
            nearest = &ladder;
        }
    }
    if (most) {
        const Weight weight = charged(parcel_.weight);
        const bool by_size = volumetric_ == weight && weight > parcel_.weight;
        return {NotTaken::too_heavy, {}, by_size ? "volumetric weight" : "weight", {}, weight - *most};
    }
    if (nearest == nullptr) return {NotTaken::no_price, {}, zone_.name, {}, {}};
    const Miss& missed = *missed_[*nearest->format];
    return {missed.too_small ? NotTaken::too_small : NotTaken::too_big,
            missed.by,
            std::string(missed.limit),
            tariff_.formats_[*nearest->format].name,
            {}};
}

std::variant<Price, Refused> Pricing::result() const
{
    if (auto refused = refusal_before_price()) return *std::move(refused);
    if (const auto at_weight = found(parcel_.weight)) return price(*at_weight);
    return refusal_without_price();
}

std::vector<Mark> Pricing::marks() const
{
    std::vector<Mark> marks;
    if (refusal_before_price()) return marks;
    Weight from = least_weight;
    for (auto at = found(from); at; at = found(from)) {
        const Edge edge = total_edge(from, at->total());
        marks.push_back({edge.at, money(at->total())});
        from = edge.at + least_weight;
    }
    return marks;
}

} // namespace stow::postage
