// Ten hours of packing in one process: 5,000 parcels (`full`; 300 otherwise) from the order to the courier, through the
// book and the planner as a day does it. Memory must not grow with what was packed: what a parcel holds (its plan alone
// is some 10 kB) may not stay behind.
#include "core/book/rate_sheets.h"
#include "core/book/solved.h"
#include "core/book/verify.h"
#include "core/planning/planner.h"
#include "small_shop.h"
#include "tests/bench/demo_shop.h"
#include "tests/bench/extent.h"

#include <fmt/format.h>
#include <malloc.h>

using namespace stow;
using namespace stow::book;

namespace {

#if defined(__SANITIZE_ADDRESS__)
constexpr bool memory_tells = false; // freed memory is kept on purpose; leaks are found by the sanitizer itself
#elif defined(__has_feature)
constexpr bool memory_tells = !__has_feature(address_sanitizer);
#else
constexpr bool memory_tells = true;
#endif

constexpr int a_round = 50;                // orders taken in, planned and packed at a time
constexpr std::int64_t most_growth = 4000; // bytes a parcel

std::int64_t resident()
{
    ::malloc_trim(0); // what was freed is given back
    std::ifstream file("/proc/self/statm");
    std::int64_t pages = 0, in_memory = 0;
    file >> pages >> in_memory;
    return in_memory * ::sysconf(_SC_PAGESIZE);
}

class LongDay {
public:
    LongDay()
    {
        std::vector<shop::Supply> supplies;
        for (auto [code, supply] : demo_.cupboard.supplies) {
            supply.on_hand = shop::pieces(100'000);
            supplies.push_back(std::move(supply));
        }
        std::vector<shop::Good> goods;
        for (auto [code, good] : demo_.cupboard.goods) {
            good.pieces = 100'000;
            goods.push_back(std::move(good));
        }
        std::vector<shop::Wrapping> wrappings;
        for (const auto& [code, wrapping] : demo_.cupboard.wrappings) wrappings.push_back(wrapping);
        take_in_supplies(book_, supplies, "supplies.csv");
        put_house(book_, demo_.cupboard.house).value();
        take_in_wrappings(book_, wrappings, "wrappings.csv");
        take_in_goods(book_, goods, "goods.csv");
        take_in_rate_sheets(book_, demo_.rate_sheets, "rates.csv");
    }

    // Gives how many parcels went.
    int round(int number)
    {
        std::vector<shop::Order> file;
        for (const shop::HeldOrder& held :
             bench::random_orders(demo_, a_round, static_cast<std::uint64_t>(number), today())) {
            file.push_back(held.order);
            file.back().key.number = fmt::format("{}-{}", number, held.order.key.number);
        }
        const OrdersTaken taken = take_in_orders(book_, file, "orders.csv");
        check_orders(book_, taken.touched).value();
        planning::Wish wish;
        wish.day = today();
        wish.prove = false;
        stow::Run run;
        SolvedQuestions memory(book_.path());
        const auto waiting = orders_to_plan(book_);
        std::vector<shop::OrderId> ids;
        for (const shop::HeldOrder& held : waiting) ids.push_back(held.id);
        const auto plan = planning::plan_day(cupboard(book_), waiting, rate_sheets(book_), wish, run, &memory);
        const auto parcels = put_plan(book_, ids, plan.parcels).value();
        int gone = 0;
        std::set<std::string> carriers;
        for (const shop::ParcelId id : parcels) {
            const auto held = parcel(book_, id);
            if (!held->plan.chosen) continue;
            start_round(book_, {{id, "A"}}).value();
            mark_picked(book_, id).value();
            for (int step = 1; step <= 3; ++step) bench_tick(book_, id, step).value();
            weigh(book_, id, {shop::WeighingStage::closed, held->plan.weight.mean}).value();
            mark_packed(book_, id).value();
            const postage::Quote& quote = held->plan.quotes.at(*held->plan.chosen);
            choose_service(book_, id, quote.carrier, quote.service, quote.price()->total).value();
            mark_labelled(book_, id).value();
            set_tracking(book_, id, "T" + held->parcel.number).value();
            carriers.insert(quote.carrier);
            (void)last_undoable(book_);
            (void)search(book_, held->parcel.number);
            now_ += std::chrono::seconds(7);
            ++gone;
        }
        for (const std::string& carrier : carriers) hand_over(book_, carrier).value();
        (void)orders_open(book_, today() + std::chrono::days(1)); // what the day line asks
        (void)parcels_in(book_, shop::ParcelState::labelled);
        (void)packed_facts(book_, today(), today());
        return gone;
    }

    const Book& book() const { return book_; }

private:
    Date today() const { return std::chrono::floor<std::chrono::days>(now_); }

    bench::DemoShop demo_ = bench::demo_shop();
    Folder folder_;
    Instant now_ = *parse_instant("2026-12-09T07:00:00Z");
    Book book_ = open_or_throw(folder_ / "shop.book", [this] { return now_; });
};

} // namespace

TEST(LongDay, MemoryDoesNotGrowWithWhatWasPacked)
{
    const int parcels = bench::cases(300, 5000);
    LongDay day;
    int gone = 0, number = 0;
    while (gone < parcels / 3) gone += day.round(++number); // caches fill
    const int warm = gone;
    const std::int64_t before = resident();
    while (gone < parcels) gone += day.round(++number);
    const std::int64_t grown = resident() - before;
    std::cout << gone << " parcels; " << before / 1024 << " KiB resident after " << warm << " of them, " << grown / 1024
              << " KiB more at the end, " << grown / (gone - warm) << " bytes a parcel\n";
    if (memory_tells) {
        EXPECT_LT(grown, (gone - warm) * most_growth);
    }
    EXPECT_TRUE(verify(day.book()).empty());
}
