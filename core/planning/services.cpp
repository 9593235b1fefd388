#include "core/planning/services.h"

#include <map>
#include <tuple>

namespace stow::planning {

namespace {

bool valid_on(const postage::RateSheet& sheet, Date day)
{
    return (!sheet.valid_from || *sheet.valid_from <= day) && (!sheet.valid_until || day <= *sheet.valid_until);
}

bool same_words(const std::string& a, const std::string& b)
{
    const auto lower = [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; };
    return std::equal(a.begin(), a.end(), b.begin(), b.end(), [&](char x, char y) { return lower(x) == lower(y); });
}

bool is_wanted(const postage::Quote& quote, const std::string& wanted)
{
    return !wanted.empty() && (same_words(quote.service, wanted) || same_words(quote.service_name, wanted));
}

} // namespace

Services::Services(const std::vector<postage::RateSheet>& sheets, Date day, std::optional<TimeOfDay> ready_at)
    : sheets_(sheets), tariffs_(sheets)
{
    for (const bool valid : {true, false}) {
        for (const postage::RateSheet& sheet : sheets) {
            if (valid_on(sheet, day) != valid) continue;
            for (const postage::Service& service : sheet.services) {
                const bool seen = std::any_of(collected_.begin(), collected_.end(), [&](const Collected& c) {
                    return c.carrier == sheet.carrier && c.code == service.code;
                });
                if (seen) continue;
                collected_.push_back({sheet.carrier, service.code,
                                      postage::collection_day(service, sheet.holidays, day, ready_at),
                                      &sheet.holidays});
            }
        }
    }
}

ServiceChoice choose_service(const Services& services, postage::ParcelFacts facts, const Promise& promise,
                             Currency currency)
{
    std::map<Date, std::vector<postage::Quote>> quoted;
    for (const Services::Collected& service : services.collected()) {
        if (quoted.contains(service.day)) continue;
        facts.hand_over = service.day;
        quoted.emplace(service.day, services.tariffs().quotes(facts));
    }

    ServiceChoice choice;
    using Rank = std::tuple<bool, bool, Date, std::int64_t>; // unwanted, late, delivery if late, price
    std::optional<Rank> best;
    for (const Services::Collected& service : services.collected()) {
        auto& all = quoted.at(service.day);
        const auto quote = std::find_if(all.begin(), all.end(), [&](const postage::Quote& q) {
            return q.service == service.code && q.carrier == service.carrier;
        });
        if (quote == all.end()) continue;
        const bool wanted = is_wanted(*quote, promise.service_wanted);
        const Date delivered = working_days_after(service.day, quote->days_most, *service.holidays);
        choice.quotes.push_back(std::move(*quote));
        all.erase(quote);
        const postage::Price* price = choice.quotes.back().price();
        if (price == nullptr || price->total.currency != currency) continue;
        const bool late = promise.promised && delivered > *promise.promised;
        const Rank rank{!wanted, late, late ? delivered : Date{}, price->total.minor};
        if (best && *best <= rank) continue;
        best = rank;
        choice.chosen = choice.quotes.size() - 1;
        choice.hand_over = service.day;
        choice.delivered = delivered;
        choice.keeps_promise = !late;
    }
    return choice;
}

} // namespace stow::planning
