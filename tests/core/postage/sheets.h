// Small rate sheets that several tests share.
#pragma once

#include "core/measure/decimal.h"
#include "core/postage/quote.h"

#include <gtest/gtest.h>

namespace stow::postage {

inline Money euro(std::int64_t cents)
{
    return {cents, Currency{}};
}

inline Date day(const char* iso)
{
    return *parse_date(iso);
}

// A format that takes up to these edges in millimetres.
inline Format format_mm(const char* name, std::int64_t l, std::int64_t w, std::int64_t h)
{
    Format f;
    f.name = name;
    f.most_length = mm(l);
    f.most_width = mm(w);
    f.most_height = mm(h);
    return f;
}

// One service "parcel" to one country in one format: enough to ask about sizes and weights.
inline RateSheet one_format_sheet(const Format& format, Weight most = grams(30'000))
{
    RateSheet sheet;
    sheet.carrier = "Test Carrier";
    Service service;
    service.code = "parcel";
    service.name = "Parcel";
    sheet.services = {service};
    sheet.zones = {{"home", {{"DK", "", ""}}}};
    sheet.formats = {format};
    sheet.steps = {{"parcel", "home", format.name, most, euro(500)}};
    return sheet;
}

inline ParcelFacts parcel_of(const Size& closed, Weight weight = grams(400))
{
    ParcelFacts p;
    p.closed = closed;
    p.weight = weight;
    p.country = "DK";
    p.postcode = "5700";
    p.hand_over = day("2026-11-25");
    return p;
}

// A roll of this diameter and length.
inline ParcelFacts roll_of(Length diameter, Length length, Weight weight = grams(300))
{
    ParcelFacts p = parcel_of({diameter, diameter, length}, weight);
    p.roll = true;
    return p;
}

inline Price price_of(const RateSheet& sheet, const ParcelFacts& parcel, std::size_t service = 0)
{
    const auto all = quotes({sheet}, parcel);
    const Price* price = all.at(service).price();
    EXPECT_NE(price, nullptr);
    return price ? *price : Price{};
}

inline Refused refusal_of(const RateSheet& sheet, const ParcelFacts& parcel, std::size_t service = 0)
{
    const auto all = quotes({sheet}, parcel);
    const auto* refused = std::get_if<Refused>(&all.at(service).result);
    EXPECT_NE(refused, nullptr);
    return refused ? *refused : Refused{};
}

inline bool takes(const RateSheet& sheet, const ParcelFacts& parcel)
{
    return quotes({sheet}, parcel).front().price() != nullptr;
}

} // namespace stow::postage
