// One rate sheet made ready for quoting: names looked up, steps sorted into ladders. Internal to postage.
#pragma once

#include "core/postage/quote.h"
#include "core/postage/size_limits.h"
#include "core/postage/zone_finder.h"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <vector>

namespace stow::postage {

struct Rung {
    Weight up_to;       // inclusive
    std::int64_t price; // minor units
};

struct VolumeRung {
    Volume up_to; // inclusive
    std::int64_t price;
    Weight most; // the heaviest it takes
};

// The prices of one service in one zone for one format, by weight, by volume or by both.
struct Ladder {
    std::optional<std::size_t> format;    // nothing: any size
    std::vector<Rung> rungs;              // rising
    std::vector<VolumeRung> volume_rungs; // rising; of the two at least one
    std::int64_t per_kg = 0;              // past the last rung
    Weight most;                          // the heaviest it takes by weight

    // The price for a charged weight and a volume; nothing past what it takes.
    std::optional<std::int64_t> price(Weight charged, Volume size) const;
    // The greatest charged weight at the same price; nothing past what it takes.
    std::optional<Weight> edge(Weight charged, Volume size) const;
    std::optional<Weight> most_at(Volume size) const; // nothing: larger than it takes
};

class Tariff {
public:
    explicit Tariff(const RateSheet& sheet);

    bool valid_on(Date day) const;
    const std::string& carrier() const { return carrier_; }
    std::optional<Date> valid_from() const { return valid_from_; }

    // Appends one quote a service.
    void quote(const ParcelFacts& parcel, std::vector<Quote>& quotes) const;
    // The same with one reason for all.
    void refuse(NotTaken reason, std::vector<Quote>& quotes) const;
    std::vector<Mark> ruler(const std::string& service, const ParcelFacts& parcel) const;

private:
    friend class Pricing;
    struct Seen {                                // of a parcel, the same for all services
        std::vector<std::optional<Miss>> missed; // by format
        std::vector<char> there;                 // by surcharge: the place is one of its own
    };

    Seen seen(const ParcelFacts& parcel, const std::string& postcode) const;
    const std::vector<Ladder>& ladders(std::size_t service, std::size_t zone) const;

    std::string carrier_;
    Currency currency_;
    std::optional<Date> valid_from_, valid_until_;
    std::int64_t tax_permille_;
    std::vector<Service> services_;
    std::vector<std::string> zones_; // names
    std::vector<Format> formats_;
    std::vector<Surcharge> surcharges_;             // without their places
    std::vector<std::vector<std::size_t>> also_of_; // by surcharge, those before it that its percentage counts in
    PlaceFinder zone_finder_;
    std::vector<std::optional<PlaceFinder>> surcharge_places_;
    std::vector<std::vector<Ladder>> ladders_; // by service, then zone
};

} // namespace stow::postage
