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

// Of the sides rounded as the service says; a roll counts as a part of its block, rounded up.
Volume counted_volume(const Service& service, const ParcelFacts& parcel)
{
    const auto side = [&](Length l) {
        const std::int64_t to = service.sides_to.units;
        if (to <= 0) return l;
        return Length{(service.sides_up ? started(l.units, to) : (l.units + to / 2) / to) * to};
    };
    const Volume block = side(parcel.closed.x) * side(parcel.closed.y) * side(parcel.closed.z);
    if (!parcel.roll || service.roll_permille == 1000) return block;
    // In two steps, so that no product leaves the range.
    const std::int64_t whole = block.units / 1000, rest = block.units % 1000;
    return Volume{whole * service.roll_permille + started(rest * service.roll_permille, 1000)};
}

bool names(const std::string& wanted, const std::string& name)
{
    return wanted.empty() || wanted == name;
}

} // namespace

Pricing::Pricing(const Tariff& tariff, std::size_t service, std::size_t zone, const Tariff::Seen& seen,
                 const ParcelFacts& parcel)
    : tariff_(tariff), service_(tariff.services_[service]), zone_(tariff.zones_[zone]),
      ladders_(tariff.ladders(service, zone)), seen_(seen), parcel_(parcel), size_(counted_volume(service_, parcel)),
      rounding_(least_weight)
{
    for (std::size_t i = 0; i < tariff.surcharges_.size(); ++i) {
        if (may_apply(i)) surcharges_.push_back(i);
    }
    const auto& divisor = service_.volumetric_divisor;
    if (!divisor || *divisor <= 0) return;
    rounding_ = std::max(service_.volumetric_rounding, least_weight);
    if (!service_.volumetric_above || size_ > *service_.volumetric_above) {
        volumetric_ = volumetric_weight(size_, *divisor, rounding_);
    }
}

bool Pricing::fits(const Ladder& ladder) const
{
    return !ladder.format || !seen_.missed[*ladder.format];
}

Weight Pricing::charged(Weight on_scale) const
{
    return std::max(rounding_ * started(on_scale.units, rounding_.units), volumetric_);
}

// All but weight, which differs along the ruler, and format, of which several may fit.
bool Pricing::may_apply(std::size_t surcharge) const
{
    const Surcharge& s = tariff_.surcharges_[surcharge];
    if (!seen_.there[surcharge] || !names(s.service, service_.code) || !names(s.zone, zone_)) return false;
    if ((s.from && parcel_.hand_over < *s.from) || (s.until && *s.until < parcel_.hand_over)) return false;
    if ((s.only_rolls && !parcel_.roll) || (s.only_unboxed && !parcel_.roll && !parcel_.soft)) return false;
    const bool by_value = s.value_above || s.kind == Surcharge::Kind::percent_of_value;
    if (by_value && (!parcel_.value || parcel_.value->currency != tariff_.currency_)) return false;
    if (s.value_above && *parcel_.value <= *s.value_above) return false;
    if (s.larger_than && size_ <= *s.larger_than) return false;
    if (!s.longer_than && !s.wider_than && !s.girth_over) return true;
    const Outline outside = outline(parcel_.closed, parcel_.roll);
    return (!s.longer_than || outside.edges.x > *s.longer_than) && (!s.wider_than || outside.edges.y > *s.wider_than) &&
           (!s.girth_over || length_and_girth(outside) > *s.girth_over);
}

bool Pricing::applies(const Surcharge& s, const Ladder& ladder, Weight on_scale) const
{
    if (s.heavier_than && on_scale <= *s.heavier_than) return false;
    return s.format.empty() || (ladder.format && tariff_.formats_[*ladder.format].name == s.format);
}

template <class Tell>
void Pricing::surcharges(const Ladder& ladder, std::int64_t base, Weight on_scale, Weight charged, Tell tell) const
{
    std::int64_t before = base;     // all that stands before the surcharge in hand
    std::vector<std::int64_t> told; // by place in surcharges_, for percentages that name others
    const auto told_of = [&](std::size_t surcharge) -> std::int64_t {
        const auto at = std::lower_bound(surcharges_.begin(), surcharges_.end(), surcharge);
        const auto place = static_cast<std::size_t>(at - surcharges_.begin());
        return at != surcharges_.end() && *at == surcharge && place < told.size() ? told[place] : 0;
    };
    told.reserve(surcharges_.size());
    for (const std::size_t i : surcharges_) {
        const Surcharge& s = tariff_.surcharges_[i];
        if (!applies(s, ladder, on_scale)) {
            told.push_back(0);
            continue;
        }
        std::int64_t amount = 0;
        switch (s.kind) {
        case Surcharge::Kind::percent: {
            std::int64_t of = base;
            for (const std::size_t other : tariff_.also_of_[i]) of += told_of(other);
            amount = share(money(of), s.permille, 1000).minor;
            break;
        }
        case Surcharge::Kind::fixed: amount = s.amount.minor; break;
        case Surcharge::Kind::per_kg: amount = s.amount.minor * started(charged.units, one_kg.units); break;
        case Surcharge::Kind::percent_of_value: amount = share(*parcel_.value, s.permille, 1000).minor; break;
        }
        amount = std::max(amount, -before);
        before += amount;
        told.push_back(amount);
        tell(s, amount);
    }
}

Pricing::Found Pricing::priced(const Ladder& ladder, std::int64_t base, Weight on_scale, Weight charged) const
{
    Found f{&ladder, base, 0, 0};
    if (!surcharges_.empty()) {
        surcharges(ladder, base, on_scale, charged,
                   [&](const Surcharge&, std::int64_t amount) { f.surcharges += amount; });
    }
    const std::int64_t permille = service_.tax_permille.value_or(tariff_.tax_permille_);
    f.tax = share(money(f.base + f.surcharges), permille, 1000).minor;
    return f;
}

std::optional<Pricing::Found> Pricing::found(Weight on_scale) const
{
    const Weight weight = charged(on_scale);
    std::optional<Found> best;
    for (const Ladder& ladder : ladders_) {
        if (!fits(ladder)) continue;
        const auto base = ladder.price(weight, size_);
        if (!base) continue;
        const Found f = priced(ladder, *base, on_scale, weight);
        if (!best || f.total() < best->total()) best = f;
    }
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
        if (const auto at = ladder.edge(weight, size_)) lower_to(on_the_scale(*at));
    }
    if (!next) return next;
    for (const std::size_t i : surcharges_) {
        const Surcharge& s = tariff_.surcharges_[i];
        if (s.heavier_than && *s.heavier_than >= on_scale) lower_to(*s.heavier_than);
        if (s.kind == Surcharge::Kind::per_kg) lower_to(on_the_scale(one_kg * started(weight.units, one_kg.units)));
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
    price.zone = zone_;
    if (f.ladder->format) price.format = tariff_.formats_[*f.ladder->format].name;
    price.charged = weight;
    price.parts.reserve(2 + surcharges_.size());
    price.parts.push_back({Part::Kind::base, price.format, money(f.base)});
    surcharges(*f.ladder, f.base, parcel_.weight, weight, [&](const Surcharge& s, std::int64_t amount) {
        price.parts.push_back({Part::Kind::surcharge, s.name, money(amount)});
    });
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

// Where a format fits, weight or volume is what stands in the way; otherwise the format missed by least tells the
// reason. Without any price there is no format to miss.
Refused Pricing::refusal_without_price() const
{
    std::optional<Weight> most;
    const Ladder* too_large = nullptr;
    const Ladder* nearest = nullptr;
    for (const Ladder& ladder : ladders_) {
        if (fits(ladder)) {
            const auto takes = ladder.most_at(size_);
            if (!takes) too_large = &ladder;
            if (takes && (!most || *takes > *most)) most = takes;
        } else if (nearest == nullptr || seen_.missed[*ladder.format]->by < seen_.missed[*nearest->format]->by) {
            nearest = &ladder;
        }
    }
    if (most) {
        const Weight weight = charged(parcel_.weight);
        const bool by_size = volumetric_ == weight && weight > parcel_.weight;
        return {NotTaken::too_heavy, {}, by_size ? "volumetric weight" : "weight", {}, weight - *most};
    }
    if (too_large != nullptr) {
        return {NotTaken::too_big,
                {},
                "volume",
                too_large->format ? tariff_.formats_[*too_large->format].name : std::string(),
                {}};
    }
    if (nearest == nullptr) return {NotTaken::no_price, {}, zone_, {}, {}};
    const Miss& missed = *seen_.missed[*nearest->format];
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
