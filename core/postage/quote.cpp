#include "core/postage/quote.h"

#include "core/postage/tariff.h"

#include <algorithm>

namespace stow::postage {

// All sheets of one carrier, this year's and the next.
struct Tariffs::Carrier {
    std::vector<Tariff> sheets;

    // Of several that are valid the one that came into force last; of equals the later in the list.
    const Tariff* valid_on(Date day) const
    {
        const Tariff* found = nullptr;
        for (const Tariff& t : sheets) {
            if (t.valid_on(day) && (found == nullptr || !(t.valid_from() < found->valid_from()))) found = &t;
        }
        return found;
    }
};

Tariffs::Tariffs(const std::vector<RateSheet>& sheets)
{
    for (const RateSheet& sheet : sheets) {
        const auto known = std::find_if(carriers_.begin(), carriers_.end(),
                                        [&](const Carrier& c) { return c.sheets.front().carrier() == sheet.carrier; });
        Carrier& carrier = known == carriers_.end() ? carriers_.emplace_back() : *known;
        carrier.sheets.emplace_back(sheet);
    }
}

Tariffs::~Tariffs() = default;
Tariffs::Tariffs(Tariffs&&) noexcept = default;
Tariffs& Tariffs::operator=(Tariffs&&) noexcept = default;

std::vector<Quote> Tariffs::quotes(const ParcelFacts& parcel) const
{
    std::vector<Quote> quotes;
    for (const Carrier& carrier : carriers_) {
        if (const Tariff* valid = carrier.valid_on(parcel.hand_over)) {
            valid->quote(parcel, quotes);
        } else {
            carrier.sheets.back().refuse(NotTaken::not_valid_then, quotes);
        }
    }
    return quotes;
}

const Tariff* Tariffs::tariff_of(const std::string& carrier, Date day) const
{
    const auto known = std::find_if(carriers_.begin(), carriers_.end(),
                                    [&](const Carrier& c) { return c.sheets.front().carrier() == carrier; });
    return known == carriers_.end() ? nullptr : known->valid_on(day);
}

std::vector<Mark> Tariffs::ruler(const std::string& carrier, const std::string& service,
                                 const ParcelFacts& parcel) const
{
    const Tariff* tariff = tariff_of(carrier, parcel.hand_over);
    return tariff == nullptr ? std::vector<Mark>{} : tariff->ruler(service, parcel);
}

std::vector<Quote> quotes(const std::vector<RateSheet>& sheets, const ParcelFacts& parcel)
{
    return Tariffs(sheets).quotes(parcel);
}

std::vector<Mark> ruler(const RateSheet& sheet, const std::string& service, const ParcelFacts& parcel)
{
    return Tariff(sheet).ruler(service, parcel);
}

} // namespace stow::postage
