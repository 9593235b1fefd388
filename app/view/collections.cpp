#include "app/view/collections.h"

#include "core/postage/calendar.h"

#include <algorithm>

namespace stow::view {

namespace {

bool valid(const postage::RateSheet& sheet, Date today)
{
    return (!sheet.valid_from || *sheet.valid_from <= today) && (!sheet.valid_until || today <= *sheet.valid_until);
}

// Whether `a` tells more about the rest of the day than `b`.
bool nearer(TimeOfDay a, TimeOfDay b, TimeOfDay now)
{
    const bool a_comes = a >= now, b_comes = b >= now;
    if (a_comes != b_comes) return a_comes;
    return a_comes ? a < b : a > b;
}

} // namespace

std::vector<Collection> collections(const Day& day)
{
    std::vector<Collection> all;
    for (const postage::RateSheet& sheet : day.rate_sheets()) {
        if (!valid(sheet, day.today())) continue;
        auto found = std::find_if(all.begin(), all.end(), [&](const auto& c) { return c.carrier == sheet.carrier; });
        if (found == all.end()) found = all.insert(all.end(), Collection{sheet.carrier, std::nullopt});
        for (const postage::Service& service : sheet.services) {
            const auto at = postage::cut_off_on(service, day.today());
            if (!at || postage::collection_day(service, sheet.holidays, day.today()) != day.today()) continue;
            if (!found->at || nearer(*at, *found->at, day.time())) found->at = at;
        }
    }
    return all;
}

} // namespace stow::view
