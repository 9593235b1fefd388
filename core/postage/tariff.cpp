#include "core/postage/tariff.h"

#include "core/postage/pricing.h"

#include <algorithm>
#include <stdexcept>
#include <string_view>

namespace stow::postage {

namespace {

constexpr Weight one_kg = grams(1000);

std::int64_t started_kg(Weight w)
{
    return (w.units + one_kg.units - 1) / one_kg.units;
}

// Finds names in a short list; rows of a sheet mostly repeat the name before.
template <class Named, class NameOf>
class Finder {
public:
    Finder(const std::vector<Named>& list, NameOf name_of) : list_(list), name_of_(name_of) {}

    std::optional<std::size_t> operator()(std::string_view name)
    {
        if (last_ < list_.size() && name_of_(list_[last_]) == name) return last_;
        const auto found =
            std::find_if(list_.begin(), list_.end(), [&](const Named& n) { return name_of_(n) == name; });
        if (found == list_.end()) return std::nullopt;
        return last_ = static_cast<std::size_t>(found - list_.begin());
    }

private:
    const std::vector<Named>& list_;
    NameOf name_of_;
    std::size_t last_ = 0;
};

std::int64_t minor_in(Money amount, Currency currency)
{
    if (amount.currency != currency) throw std::logic_error("a rate sheet in two currencies: " + to_text(amount));
    return amount.minor;
}

Ladder& ladder_for(std::vector<Ladder>& ladders, std::optional<std::size_t> format)
{
    for (Ladder& l : ladders) {
        if (l.format == format) return l;
    }
    ladders.emplace_back();
    ladders.back().format = format;
    return ladders.back();
}

} // namespace

std::optional<Weight> Ladder::most_at(Volume size) const
{
    if (volume_rungs.empty()) return most;
    const auto rung = std::lower_bound(volume_rungs.begin(), volume_rungs.end(), size,
                                       [](const VolumeRung& r, Volume v) { return r.up_to < v; });
    if (rung == volume_rungs.end()) return std::nullopt;
    return rungs.empty() ? rung->most : std::min(rung->most, most);
}

std::optional<std::int64_t> Ladder::price(Weight charged, Volume size) const
{
    const auto takes = most_at(size);
    if (!takes || charged > *takes) return std::nullopt;
    std::optional<std::int64_t> price;
    if (!volume_rungs.empty()) {
        price = std::lower_bound(volume_rungs.begin(), volume_rungs.end(), size, [](const VolumeRung& r, Volume v) {
                    return r.up_to < v;
                })->price;
    }
    if (rungs.empty()) return price;
    const auto rung =
        std::lower_bound(rungs.begin(), rungs.end(), charged, [](const Rung& r, Weight w) { return r.up_to < w; });
    const std::int64_t by_weight =
        rung != rungs.end() ? rung->price : rungs.back().price + per_kg * started_kg(charged - rungs.back().up_to);
    return std::max(price.value_or(by_weight), by_weight);
}

std::optional<Weight> Ladder::edge(Weight charged, Volume size) const
{
    const auto takes = most_at(size);
    if (!takes || charged > *takes) return std::nullopt;
    if (rungs.empty()) return takes;
    const auto rung =
        std::lower_bound(rungs.begin(), rungs.end(), charged, [](const Rung& r, Weight w) { return r.up_to < w; });
    if (rung != rungs.end()) return std::min(rung->up_to, *takes);
    const Weight last = rungs.back().up_to;
    return std::min(*takes, last + one_kg * started_kg(charged - last));
}

Tariff::Tariff(const RateSheet& sheet)
    : carrier_(sheet.carrier), currency_(sheet.currency), valid_from_(sheet.valid_from),
      valid_until_(sheet.valid_until), tax_permille_(sheet.tax_permille), services_(sheet.services),
      formats_(sheet.formats), surcharges_(sheet.surcharges), also_of_(sheet.surcharges.size()),
      surcharge_places_(sheet.surcharges.size()), ladders_(sheet.services.size() * sheet.zones.size())
{
    for (std::size_t z = 0; z < sheet.zones.size(); ++z) {
        zones_.push_back(sheet.zones[z].name);
        for (const Place& place : sheet.zones[z].places) zone_finder_.add(place, z);
    }
    zone_finder_.ready();
    for (std::size_t i = 0; i < surcharges_.size(); ++i) {
        if (!surcharges_[i].places.empty()) {
            PlaceFinder& places = surcharge_places_[i].emplace();
            for (const Place& place : surcharges_[i].places) places.add(place, 0);
            places.ready();
            surcharges_[i].places.clear();
        }
        for (std::size_t before = 0; before < i; ++before) {
            const auto& names = surcharges_[i].also_of;
            const bool named = std::find(names.begin(), names.end(), surcharges_[before].name) != names.end();
            if (named) also_of_[i].push_back(before);
        }
    }
    Finder service(services_, [](const Service& s) -> std::string_view { return s.code; });
    Finder zone(zones_, [](const std::string& name) -> std::string_view { return name; });
    Finder format(formats_, [](const Format& f) -> std::string_view { return f.name; });

    // The ladder a row belongs to; rows that name something unknown belong nowhere.
    const auto place = [&](const auto& row) -> Ladder* {
        const auto s = service(row.service);
        const auto z = zone(row.zone);
        const auto f = row.format.empty() ? std::nullopt : format(row.format);
        if (!s || !z || (!f && !row.format.empty())) return nullptr;
        return &ladder_for(ladders_[*s * zones_.size() + *z], f);
    };
    for (const Step& step : sheet.steps) {
        if (Ladder* l = place(step)) l->rungs.push_back({step.up_to, minor_in(step.price, currency_)});
    }
    for (const BeyondLast& row : sheet.beyond) {
        Ladder* l = place(row);
        if (l == nullptr) continue;
        l->per_kg = minor_in(row.per_kg, currency_);
        l->most = row.most;
    }
    for (const VolumeStep& step : sheet.volume_steps) {
        if (Ladder* l = place(step))
            l->volume_rungs.push_back({step.up_to, minor_in(step.price, currency_), step.most});
    }
    for (std::vector<Ladder>& ladders : ladders_) {
        ladders.erase(std::remove_if(ladders.begin(), ladders.end(),
                                     [](const Ladder& l) { return l.rungs.empty() && l.volume_rungs.empty(); }),
                      ladders.end());
        for (Ladder& l : ladders) {
            std::stable_sort(l.volume_rungs.begin(), l.volume_rungs.end(),
                             [](const VolumeRung& a, const VolumeRung& b) { return a.up_to < b.up_to; });
            if (l.rungs.empty()) continue;
            // Stable: of two equal steps the first in the sheet counts.
            std::stable_sort(l.rungs.begin(), l.rungs.end(),
                             [](const Rung& a, const Rung& b) { return a.up_to < b.up_to; });
            l.most = std::max(l.most, l.rungs.back().up_to);
        }
    }
}

bool Tariff::valid_on(Date day) const
{
    return (!valid_from_ || *valid_from_ <= day) && (!valid_until_ || day <= *valid_until_);
}

Tariff::Seen Tariff::seen(const ParcelFacts& parcel, const std::string& postcode) const
{
    Seen seen;
    const Outline outside = outline(parcel.closed, parcel.roll);
    seen.missed.reserve(formats_.size());
    for (const Format& f : formats_) seen.missed.push_back(miss(f, outside));
    seen.there.reserve(surcharge_places_.size());
    for (const auto& places : surcharge_places_) {
        seen.there.push_back(!places || places->find(parcel.country, postcode));
    }
    return seen;
}

const std::vector<Ladder>& Tariff::ladders(std::size_t service, std::size_t zone) const
{
    return ladders_[service * zones_.size() + zone];
}

namespace {

Quote blank_quote(const std::string& carrier, const Service& service)
{
    return {carrier, service.code, service.name, service.tracked, service.days_most, Refused{}};
}

} // namespace

void Tariff::quote(const ParcelFacts& parcel, std::vector<Quote>& quotes) const
{
    const std::string postcode = plain_postcode(parcel.postcode);
    const auto zone = zone_finder_.find(parcel.country, postcode);
    if (!zone) return refuse(NotTaken::no_zone, quotes);
    const Seen seen = this->seen(parcel, postcode);
    for (std::size_t s = 0; s < services_.size(); ++s) {
        quotes.push_back(blank_quote(carrier_, services_[s]));
        quotes.back().result = Pricing(*this, s, *zone, seen, parcel).result();
    }
}

void Tariff::refuse(NotTaken reason, std::vector<Quote>& quotes) const
{
    for (const Service& service : services_) {
        quotes.push_back(blank_quote(carrier_, service));
        quotes.back().result = Refused{reason, {}, {}, {}, {}};
    }
}

std::vector<Mark> Tariff::ruler(const std::string& service, const ParcelFacts& parcel) const
{
    const std::string postcode = plain_postcode(parcel.postcode);
    const auto zone = zone_finder_.find(parcel.country, postcode);
    const auto found =
        std::find_if(services_.begin(), services_.end(), [&](const Service& s) { return s.code == service; });
    if (!zone || found == services_.end()) return {};
    const Seen seen = this->seen(parcel, postcode);
    return Pricing(*this, static_cast<std::size_t>(found - services_.begin()), *zone, seen, parcel).marks();
}

} // namespace stow::postage
