// One rate sheet made ready for quoting: names looked up, steps sorted into ladders. Internal to postage.
#pragma once

#include "core/postage/quote.h"
#include "core/postage/size_limits.h"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <vector>

namespace stow::postage {

struct Rung {
    Weight up_to;       // inclusive
    std::int64_t price; // minor units
};

// The prices of one service in one zone for one format, by weight.
struct Ladder {
    std::optional<std::size_t> format; // nothing: any size
    std::vector<Rung> rungs;           // rising; at least one
    std::int64_t per_kg = 0;           // past the last rung
    Weight most;                       // the heaviest it takes

    // The price for a charged weight; nothing past `most`.
    std::optional<std::int64_t> price(Weight charged) const;
    // The greatest charged weight at the same price; nothing past `most`.
    std::optional<Weight> edge(Weight charged) const;
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
    using Misses = std::vector<std::optional<Miss>>; // by format

    Misses misses(const Outline& parcel) const;
    const std::vector<Ladder>& ladders(std::size_t service, std::size_t zone) const;

    std::string carrier_;
    Currency currency_;
    std::optional<Date> valid_from_, valid_until_;
    std::int64_t tax_permille_;
    std::vector<Service> services_;
    std::vector<Zone> zones_;
    std::vector<Format> formats_;
    std::vector<Surcharge> surcharges_;
    std::vector<std::vector<Ladder>> ladders_; // by service, then zone
};

} // namespace stow::postage
