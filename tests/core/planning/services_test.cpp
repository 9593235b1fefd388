#include "core/planning/services.h"

#include "workshop.h"

namespace stow::planning {
namespace {

const Date friday = day("2026-11-27");
const Date saturday = day("2026-11-28");
const Date monday = day("2026-11-30");

TEST(Collection, SkipsTheWeekendUnlessItCollectsThen)
{
    postage::Service service;
    EXPECT_EQ(collection_day(service, wednesday, {}), wednesday);
    EXPECT_EQ(collection_day(service, saturday, {}), monday);
    service.weekdays = {6};
    EXPECT_EQ(collection_day(service, wednesday, {}), saturday);
    service.weekdays = {3};
    EXPECT_EQ(collection_day(service, friday, {}), day("2026-12-02"));
}

TEST(Collection, AMissedCutOffWaitsForTheNextDay)
{
    postage::Service service;
    service.cut_off = std::chrono::hours(16);
    EXPECT_EQ(collection_day(service, friday, std::chrono::hours(16)), friday);
    EXPECT_EQ(collection_day(service, friday, std::chrono::minutes(16 * 60 + 1)), monday);
}

TEST(WorkingDays, SkipSaturdayAndSunday)
{
    EXPECT_EQ(working_days_after(friday, 0), friday);
    EXPECT_EQ(working_days_after(friday, 1), monday);
    EXPECT_EQ(working_days_after(saturday, 1), monday);
    EXPECT_EQ(working_days_after(wednesday, 5), day("2026-12-02"));
}

class Choosing : public testing::Test {
protected:
    ServiceChoice choose(std::optional<Date> promised, const std::string& wanted = {})
    {
        return choose_service(Services(sheets, wish.day, wish.ready_at), facts, {promised, wanted}, Currency{});
    }
    std::string chosen(const ServiceChoice& c) { return c.chosen ? c.quotes.at(*c.chosen).service : "none"; }

    std::vector<postage::RateSheet> sheets{tariff()};
    postage::ParcelFacts facts{{mm(200), mm(150), mm(100)}, false, grams(500), "DK", "5700", {}, {}, wednesday};
    Wish wish{.day = wednesday};
};

TEST_F(Choosing, TheCheapestWithoutAPromise)
{
    const ServiceChoice c = choose({});
    EXPECT_EQ(chosen(c), "slow");
    EXPECT_EQ(c.hand_over, wednesday);
    EXPECT_EQ(c.delivered, day("2026-12-01")); // four working days over a weekend
    EXPECT_TRUE(c.keeps_promise);
}

TEST_F(Choosing, TheCheapestThatKeepsThePromisedDay)
{
    EXPECT_EQ(chosen(choose(day("2026-12-01"))), "slow");
    EXPECT_EQ(chosen(choose(day("2026-11-30"))), "fast");
    EXPECT_TRUE(choose(day("2026-11-30")).keeps_promise);
}

TEST_F(Choosing, TheEarliestWhenNoneKeepsIt)
{
    const ServiceChoice c = choose(wednesday);
    EXPECT_EQ(chosen(c), "fast");
    EXPECT_FALSE(c.keeps_promise);
}

TEST_F(Choosing, TheServiceAskedForIfItCan)
{
    EXPECT_EQ(chosen(choose({}, "Fast")), "fast");
    EXPECT_EQ(chosen(choose({}, "standard delivery")), "slow"); // no such service: as if nothing was said
    facts.weight = grams(12'000);
    EXPECT_EQ(chosen(choose({}, "fast")), "none");
}

TEST_F(Choosing, PricesInAnotherCurrencyAreQuotedNotChosen)
{
    sheets[0].currency = *Currency::from("DKK");
    for (postage::Step& step : sheets[0].steps) step.price.currency = sheets[0].currency;
    const ServiceChoice c = choose({});
    EXPECT_EQ(chosen(c), "none");
    EXPECT_EQ(c.quotes.size(), 2U);
    EXPECT_NE(c.quotes[0].price(), nullptr);
}

} // namespace
} // namespace stow::planning
