// What holds for every sheet without faults and every parcel.
#include "sheets.h"

#include <rapidcheck/gtest.h>

namespace stow::postage {
namespace {

std::int64_t pick(std::int64_t from, std::int64_t to) // inclusive
{
    return *rc::gen::inRange<std::int64_t>(from, to + 1);
}

std::optional<Length> maybe(std::int64_t from, std::int64_t to)
{
    if (*rc::gen::arbitrary<bool>()) return std::nullopt;
    return mm(pick(from, to));
}

Format any_format(std::size_t number, bool with_least)
{
    Format f;
    f.name = "format " + std::to_string(number);
    f.most_length = maybe(100, 900);
    f.most_width = maybe(60, 600);
    f.most_height = maybe(3, 500);
    f.most_sum = maybe(200, 1500);
    f.most_girth = maybe(300, 3000);
    if (with_least) {
        f.least_length = maybe(50, 150);
        f.least_width = maybe(30, 100);
    }
    return f;
}

// Prices rise along every ladder; nothing that stops.
RateSheet any_sheet(bool with_least)
{
    RateSheet sheet = one_format_sheet(Format{});
    sheet.formats.clear();
    sheet.steps.clear();
    for (std::size_t f = 0; f < static_cast<std::size_t>(pick(1, 4)); ++f) {
        sheet.formats.push_back(any_format(f, with_least));
        Weight up_to;
        Money price = euro(0);
        for (std::int64_t n = pick(1, 5); n > 0; --n) {
            up_to += tenth_g(pick(1, 20'000));
            price += euro(pick(1, 500));
            sheet.steps.push_back({"parcel", "home", sheet.formats.back().name, up_to, price});
        }
        if (*rc::gen::arbitrary<bool>()) {
            sheet.beyond.push_back(
                {"parcel", "home", sheet.formats.back().name, euro(pick(1, 200)), up_to + tenth_g(pick(1, 50'000))});
        }
    }
    if (*rc::gen::arbitrary<bool>()) {
        sheet.services[0].volumetric_divisor = pick(3000, 7000);
        sheet.services[0].volumetric_rounding = tenth_g(pick(1, 10'000));
    }
    for (std::int64_t n = pick(0, 3); n > 0; --n) {
        Surcharge s;
        s.name = "extra";
        s.kind = *rc::gen::element(Surcharge::Kind::percent, Surcharge::Kind::fixed, Surcharge::Kind::per_kg);
        s.permille = pick(0, 300);
        s.amount = euro(pick(0, 300));
        s.longer_than = maybe(100, 800);
        if (*rc::gen::arbitrary<bool>()) s.heavier_than = tenth_g(pick(1, 50'000));
        sheet.surcharges.push_back(s);
    }
    sheet.tax_permille = *rc::gen::element(0, 70, 190, 250);
    for (const SheetProblem& p : check(sheet, day("2026-11-25"))) RC_ASSERT(!p.stops);
    return sheet;
}

Size any_size()
{
    return {tenth_mm(pick(10, 6000)), tenth_mm(pick(10, 6000)), tenth_mm(pick(10, 6000))};
}

const Price* price_in(const std::vector<Quote>& quotes)
{
    return quotes.front().price();
}

RC_GTEST_PROP(Quotes, PartsAddUpToTheTotal, ())
{
    const auto all = quotes({any_sheet(true)}, parcel_of(any_size(), tenth_g(pick(1, 100'000))));
    if (price_in(all) == nullptr) return;
    Money sum = euro(0);
    for (const Part& part : price_in(all)->parts) sum += part.amount;
    RC_ASSERT(sum == price_in(all)->total);
}

RC_GTEST_PROP(Quotes, AHeavierParcelIsNeverCheaper, ())
{
    const RateSheet sheet = any_sheet(true);
    ParcelFacts parcel = parcel_of(any_size(), tenth_g(pick(1, 80'000)));
    const auto light = quotes({sheet}, parcel);
    parcel.weight += tenth_g(pick(1, 20'000));
    const auto heavy = quotes({sheet}, parcel);
    if (price_in(heavy) == nullptr) return;
    RC_ASSERT(price_in(light) != nullptr);
    RC_ASSERT(price_in(light)->total <= price_in(heavy)->total);
}

RC_GTEST_PROP(Quotes, ASmallerParcelLosesNoFormatThatHasNoLeastSizes, ())
{
    const RateSheet sheet = any_sheet(false);
    ParcelFacts parcel = parcel_of(any_size(), tenth_g(pick(1, 80'000)));
    const auto large = quotes({sheet}, parcel);
    for (Length* edge : {&parcel.closed.x, &parcel.closed.y, &parcel.closed.z}) {
        *edge = tenth_mm(pick(1, edge->units));
    }
    const auto small = quotes({sheet}, parcel);
    if (price_in(large) == nullptr) return;
    RC_ASSERT(price_in(small) != nullptr);
    RC_ASSERT(price_in(small)->total <= price_in(large)->total);
}

RC_GTEST_PROP(Quotes, TurningTheParcelChangesNothing, ())
{
    const RateSheet sheet = any_sheet(true);
    const Size a = any_size();
    const Weight weight = tenth_g(pick(1, 80'000));
    const auto one = quotes({sheet}, parcel_of(a, weight));
    const auto other = quotes({sheet}, parcel_of({a.z, a.x, a.y}, weight));
    RC_ASSERT((price_in(one) == nullptr) == (price_in(other) == nullptr));
    if (price_in(one) != nullptr) RC_ASSERT(price_in(one)->total == price_in(other)->total);
}

RC_GTEST_PROP(Quotes, TheTotalHoldsToTheEdgeAndChangesPastIt, ())
{
    const RateSheet sheet = any_sheet(true);
    ParcelFacts parcel = parcel_of(any_size(), tenth_g(pick(1, 80'000)));
    const auto now = quotes({sheet}, parcel);
    if (price_in(now) == nullptr) return;
    const Price price = *price_in(now);
    RC_ASSERT(price.step_edge.has_value());
    parcel.weight = *price.step_edge;
    const auto at = quotes({sheet}, parcel);
    RC_ASSERT(price_in(at) != nullptr);
    RC_ASSERT(price_in(at)->total == price.total);
    parcel.weight += tenth_g(1);
    const auto past = quotes({sheet}, parcel);
    RC_ASSERT((price_in(past) != nullptr) == price.next_step.has_value());
    if (price.next_step) RC_ASSERT(price_in(past)->total == *price.next_step);
    RC_ASSERT(price.next_step != price.total);
}

RC_GTEST_PROP(Quotes, ByHowMuchATooLargeParcelMustShrink, ())
{
    const RateSheet sheet = any_sheet(false);
    ParcelFacts parcel = parcel_of(any_size(), tenth_g(1));
    const auto all = quotes({sheet}, parcel);
    const auto* refused = std::get_if<Refused>(&all.front().result);
    if (refused == nullptr || refused->reason != NotTaken::too_big) return;
    // Every edge shorter by the miss: then every limit of that format is kept.
    for (Length* edge : {&parcel.closed.x, &parcel.closed.y, &parcel.closed.z}) {
        if (*edge <= *refused->over_by) return;
        *edge -= *refused->over_by;
    }
    const auto shrunk = quotes({sheet}, parcel);
    const auto* still = std::get_if<Refused>(&shrunk.front().result);
    if (still != nullptr) RC_ASSERT(still->reason == NotTaken::too_heavy); // by volume
}

} // namespace
} // namespace stow::postage
