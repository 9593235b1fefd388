// The price of one parcel with one service to one zone, at its own weight and along the weight axis. Internal to
// postage.
#pragma once

#include "core/postage/tariff.h"

namespace stow::postage {

class Pricing {
public:
    Pricing(const Tariff& tariff, std::size_t service, std::size_t zone, const Tariff::Seen& seen,
            const ParcelFacts& parcel);

    std::variant<Price, Refused> result() const;
    std::vector<Mark> marks() const; // over all weights

private:
    struct Found {
        const Ladder* ladder;
        std::int64_t base, surcharges, tax; // minor units
        std::int64_t total() const { return base + surcharges + tax; }
    };

    std::optional<Refused> refusal_before_price() const;
    Refused refusal_without_price() const;
    bool fits(const Ladder& ladder) const;
    Weight charged(Weight on_scale) const;
    // Of the formats that fit the cheapest. Nothing: too heavy for all that fit.
    std::optional<Found> found(Weight on_scale) const;
    Found priced(const Ladder& ladder, std::int64_t base, Weight on_scale, Weight charged) const;
    // The least weight at or above this one past which something in the price changes; nothing: too heavy.
    std::optional<Weight> edge(Weight on_scale) const;
    // As `edge`, but past it the total changes or the parcel is too heavy.
    struct Edge {
        Weight at;
        std::optional<std::int64_t> total_past;
    };
    Edge total_edge(Weight on_scale, std::int64_t total) const;
    bool may_apply(std::size_t surcharge) const;
    bool applies(const Surcharge& surcharge, const Ladder& ladder, Weight on_scale) const;
    // Tells each surcharge that applies with its amount, in the order of the sheet.
    template <class Tell>
    void surcharges(const Ladder& ladder, std::int64_t base, Weight on_scale, Weight charged, Tell tell) const;
    Price price(const Found& found) const;
    Money money(std::int64_t minor) const { return {minor, tariff_.currency_}; }

    const Tariff& tariff_;
    const Service& service_;
    const std::string& zone_;
    const std::vector<Ladder>& ladders_;
    const Tariff::Seen& seen_;
    const ParcelFacts& parcel_;
    std::vector<std::size_t> surcharges_; // that may apply, heavy enough or not
    Volume size_;                         // as the service counts it
    Weight rounding_;                     // of the charged weight
    Weight volumetric_;                   // rounded up; zero where it does not count
};

} // namespace stow::postage
