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

using ServiceKey = std::pair<std::string, std::string>; // carrier, code

struct Known {
    ServiceKey key;
    const postage::Service* service;
    const postage::RateSheet* sheet;
};

// Each service once, as the sheet valid on the day describes it.
std::vector<Known> services_on(const std::vector<postage::RateSheet>& sheets, Date day)
{
    std::vector<Known> known;
    for (const bool valid : {true, false}) {
        for (const postage::RateSheet& sheet : sheets) {
            if (valid_on(sheet, day) != valid) continue;
            for (const postage::Service& service : sheet.services) {
                const ServiceKey key{sheet.carrier, service.code};
                const bool seen = std::any_of(known.begin(), known.end(), [&](const Known& k) { return k.key == key; });
                if (!seen) known.push_back({key, &service, &sheet});
            }
        }
    }
    return known;
}

} // namespace

ServiceChoice choose_service(const Services& services, postage::ParcelFacts facts, const Promise& promise,
                             const Wish& wish, Currency currency)
{
    // A service is quoted for the day on which it would collect this parcel.
    const std::vector<Known> on_the_day = services_on(services.sheets(), wish.day);
    std::map<ServiceKey, Date> collected;
    for (const Known& known : on_the_day) {
        collected.emplace(known.key,
                          postage::collection_day(*known.service, known.sheet->holidays, wish.day, wish.ready_at));
    }
    std::map<Date, std::vector<postage::Quote>> quoted;
    for (const auto& [key, day] : collected) {
        facts.hand_over = day;
        if (!quoted.contains(day)) quoted.emplace(day, services.tariffs().quotes(facts));
    }

    ServiceChoice choice;
    using Rank = std::tuple<bool, bool, Date, std::int64_t>; // unwanted, late, delivery if late, price
    std::optional<Rank> best;
    for (const Known& known : on_the_day) {
        const Date day = collected.at(known.key);
        const auto& all = quoted.at(day);
        const auto quote = std::find_if(all.begin(), all.end(), [&](const postage::Quote& q) {
            return ServiceKey{q.carrier, q.service} == known.key;
        });
        if (quote == all.end()) continue;
        choice.quotes.push_back(*quote);
        const postage::Price* price = quote->price();
        if (price == nullptr || price->total.currency != currency) continue;
        const Date delivered = working_days_after(day, quote->days_most, known.sheet->holidays);
        const bool late = promise.promised && delivered > *promise.promised;
        const Rank rank{!is_wanted(*quote, promise.service_wanted), late, late ? delivered : Date{},
                        price->total.minor};
        if (best && *best <= rank) continue;
        best = rank;
        choice.chosen = choice.quotes.size() - 1;
        choice.hand_over = day;
        choice.delivered = delivered;
        choice.keeps_promise = !late;
    }
    return choice;
}

} // namespace stow::planning
