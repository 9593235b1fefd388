// Rate sheets: read, checked, and asked for a price where nothing stops that.
#include "core/intake/rate_sheet_csv.h"
#include "core/postage/quote.h"
#include "input.h"

#include <algorithm>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    using namespace stow;
    auto in = fuzz::stream(data, size);
    const intake::TakenRates taken = intake::read_rate_sheet(in, "fuzz.csv");
    if (!taken.sheet) return 0;
    const Date day = *parse_date("2026-11-25");
    const auto problems = postage::check(*taken.sheet, day);
    if (std::any_of(problems.begin(), problems.end(), [](const auto& p) { return p.stops; })) return 0;
    postage::ParcelFacts parcel;
    parcel.closed = {mm(300), mm(200), mm(100)};
    parcel.weight = grams(1200);
    parcel.country = "DE";
    parcel.postcode = "20095";
    parcel.hand_over = day;
    postage::quotes({*taken.sheet}, parcel);
    return 0;
}
