#include "core/postage/saving.h"

#include <algorithm>
#include <array>

namespace stow::postage {

namespace {

using By = Saving::By;

class Savings {
public:
    Savings(const Tariffs& tariffs, const ParcelFacts& parcel, const Quote& now, int days_most)
        : tariffs_(tariffs), parcel_(parcel), now_(now), days_most_(std::max(days_most, now.days_most)),
          present_(now.price()->total)
    {
        if (const auto best = cheapest(parcel)) present_ = best->price()->total;
    }

    void edge(By by, std::array<Length Size::*, 2> sides, int millimetres)
    {
        Money lowest = present_;
        for (int taken = 1; taken <= millimetres; ++taken) {
            ParcelFacts smaller = parcel_;
            for (const auto side : sides) smaller.closed.*side = parcel_.closed.*side - mm(taken);
            if (smaller.closed.*sides[0] <= Length{}) return;
            if (const auto best = cheapest(smaller); best && best->price()->total < lowest) {
                lowest = best->price()->total;
                note(by, mm(taken), {}, *best);
            }
        }
    }

    void weight(Weight most)
    {
        // Every weight at which some price ends, the heaviest first.
        std::vector<Weight> ends;
        for (const Quote& quote : tariffs_.quotes(parcel_)) {
            for (const Mark& mark : tariffs_.ruler(quote.carrier, quote.service, parcel_)) {
                if (mark.up_to < parcel_.weight && mark.up_to >= parcel_.weight - most) ends.push_back(mark.up_to);
            }
        }
        std::sort(ends.begin(), ends.end(), std::greater<>());
        ends.erase(std::unique(ends.begin(), ends.end()), ends.end());
        Money lowest = present_;
        for (const Weight end : ends) {
            ParcelFacts lighter = parcel_;
            lighter.weight = end;
            if (const auto best = cheapest(lighter); best && best->price()->total < lowest) {
                lowest = best->price()->total;
                note(By::weight, {}, parcel_.weight - end, *best);
            }
        }
    }

    std::vector<Saving> take() { return std::move(found_); }

private:
    bool as_good(const Quote& quote) const
    {
        const Price& price = *quote.price();
        return price.total.currency == present_.currency && (quote.tracked || !now_.tracked) &&
               quote.days_most <= days_most_ && (now_.price()->covered != true || price.covered == true);
    }

    std::optional<Quote> cheapest(const ParcelFacts& parcel) const
    {
        std::optional<Quote> best;
        for (Quote& quote : tariffs_.quotes(parcel)) {
            if (quote.price() == nullptr || !as_good(quote)) continue;
            if (!best || quote.price()->total < best->price()->total) best = std::move(quote);
        }
        return best;
    }

    void note(By by, Length less, Weight lighter, const Quote& as)
    {
        const Price& price = *as.price();
        found_.push_back({by, less, lighter, as.carrier, as.service, as.service_name, price.format, price.total,
                          present_ - price.total});
    }

    const Tariffs& tariffs_;
    const ParcelFacts& parcel_;
    const Quote& now_;
    int days_most_;
    Money present_;
    std::vector<Saving> found_;
};

} // namespace

std::vector<Saving> savings(const Tariffs& tariffs, const ParcelFacts& parcel, const Quote& now, int days_most,
                            const Reach& reach)
{
    if (now.price() == nullptr) return {};
    Savings all(tariffs, parcel, now, days_most);
    if (parcel.roll) {
        all.edge(By::length, {&Size::z, &Size::z}, reach.millimetres);
        all.edge(By::height, {&Size::x, &Size::y}, reach.millimetres);
    } else {
        std::array<Length Size::*, 3> sides{&Size::x, &Size::y, &Size::z};
        std::stable_sort(sides.begin(), sides.end(),
                         [&](auto a, auto b) { return parcel.closed.*a > parcel.closed.*b; });
        constexpr std::array names{By::length, By::width, By::height};
        for (std::size_t i = 0; i < sides.size(); ++i) all.edge(names[i], {sides[i], sides[i]}, reach.millimetres);
    }
    all.weight(reach.weight);
    return all.take();
}

} // namespace stow::postage
