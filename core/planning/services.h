// Which service a parcel goes with: the one asked for if it can, else the cheapest that keeps the promised day.
#pragma once

#include "core/planning/planner.h"

#include <string>
#include <vector>

namespace stow::planning {

// The first day from `day` on which the service collects: its weekdays, or Monday to Friday. A day whose cut-off is
// before `ready_at` counts as missed. Public holidays are not known here.
Date collection_day(const postage::Service& service, Date day, std::optional<TimeOfDay> ready_at);
// `days` working days (Monday to Friday) later.
Date working_days_after(Date day, int days);

struct ServiceChoice {
    std::vector<postage::Quote> quotes; // one a service, in the order of the sheets
    std::optional<std::size_t> chosen;
    Date hand_over, delivered; // of the chosen one
    bool keeps_promise = true;
};

struct Promise {
    std::optional<Date> promised{};
    std::string service_wanted{}; // code or name of a service, or words that are neither
};

// If no service keeps the promised day, the earliest delivered is chosen, then the cheaper; ties by order of the
// sheets. Prices in another currency than the house's are quoted and never chosen.
ServiceChoice choose_service(const std::vector<postage::RateSheet>& sheets, postage::ParcelFacts facts,
                             const Promise& promise, const Wish& wish, Currency currency);

} // namespace stow::planning
