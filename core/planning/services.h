// Which service a parcel goes with: the one asked for if it can, else the cheapest that keeps the promised day.
#pragma once

#include "core/planning/planner.h"
#include "core/postage/calendar.h"

#include <string>
#include <vector>

namespace stow::planning {

// Of Monday to Friday, where no rate sheet tells holidays.
inline Date collection_day(const postage::Service& service, Date day, std::optional<TimeOfDay> ready_at)
{
    return postage::collection_day(service, {}, day, ready_at);
}
using postage::working_days_after;

// The rate sheets made ready for a whole day's quotes. Refers to the sheets, which must live as long.
class Services {
public:
    Services(const std::vector<postage::RateSheet>& sheets, Date day, std::optional<TimeOfDay> ready_at);

    struct Collected { // each service once, as the sheet valid on the day describes it
        std::string carrier, code;
        Date day; // of its next collection
        const std::vector<Date>* holidays;
    };

    const std::vector<postage::RateSheet>& sheets() const { return sheets_; }
    const postage::Tariffs& tariffs() const { return tariffs_; }
    const std::vector<Collected>& collected() const { return collected_; }

private:
    const std::vector<postage::RateSheet>& sheets_;
    postage::Tariffs tariffs_;
    std::vector<Collected> collected_;
};

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
// sheets. Prices in another currency than the house's are quoted and never chosen. A service is quoted for the day on
// which it would collect this parcel, whatever day the facts name.
ServiceChoice choose_service(const Services& services, postage::ParcelFacts facts, const Promise& promise,
                             Currency currency);

} // namespace stow::planning
