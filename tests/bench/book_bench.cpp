// A shop book of five years and 100,000 orders: made here, then every question that a screen asks is timed on it.
//   book_bench FOLDER [orders]
#include "core/book/cupboard.h"
#include "core/book/erasing.h"
#include "core/book/ledger.h"
#include "core/book/orders.h"
#include "core/book/parcels.h"
#include "core/book/settings.h"
#include "core/intake/plan_json.h"
#include "core/planning/planner.h"
#include "tests/bench/demo_shop.h"
#include "tests/bench/report.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <SQLiteCpp/VariadicBind.h>
#include <chrono>
#include <filesystem>
#include <fmt/format.h>
#include <functional>
#include <unistd.h>

namespace {

using namespace stow;
namespace fs = std::filesystem;
using Clock = std::chrono::steady_clock;

const Date today = *parse_date("2026-11-25");

double ms_since(Clock::time_point start)
{
    return std::chrono::duration<double, std::milli>(Clock::now() - start).count();
}

// Plans of real orders, to be used again and again: what a parcel's row weighs.
std::vector<std::string> sample_plans(const bench::DemoShop& shop)
{
    bench::DemoShop full = shop;
    for (auto& [code, amount] : full.cupboard.on_hand) amount = shop::pieces(100'000);
    for (auto& [code, pieces] : full.cupboard.pieces) pieces = 100'000;
    planning::Wish wish;
    wish.day = today;
    wish.prove = false;
    Run run;
    std::vector<std::string> documents;
    const auto orders = bench::random_orders(full, 60, 7, today);
    for (const auto& parcel : planning::plan_day(full.cupboard, orders, full.rate_sheets, wish, run).parcels) {
        documents.push_back(intake::plan_to_json(parcel));
    }
    return documents;
}

class Filling { // rows put in by the thousand, past the steps: only the sizes and numbers are to be right
public:
    Filling(SQLite::Database& db, const bench::DemoShop& shop, int orders) : db_(db), shop_(shop), orders_(orders) {}

    void fill()
    {
        const auto plans = sample_plans(shop_);
        const auto orders = bench::random_orders(shop_, 2000, 11, today);
        SQLite::Transaction all(db_);
        SQLite::Statement order(db_,
                                "INSERT INTO orders (id, shop, number, date, paid, contact, name, company, street, "
                                "postcode, town, region, country, note, service_wanted, called_off, state, done) "
                                "VALUES (?, ?, ?, ?, 1, '', ?, '', ?, ?, ?, '', ?, '', '', 0, ?, ?)");
        SQLite::Statement line(
            db_, "INSERT INTO order_line (order_id, place, title, variant, shop_code, good, count, price, "
                 "price_currency, personal_text) VALUES (?, ?, ?, '', '', ?, ?, 990, 'EUR', '')");
        SQLite::Statement parcel(db_, "INSERT INTO parcel (id, number, state, locked, order_version, carrier, service, "
                                      "postage, postage_currency, packed_at, list) "
                                      "VALUES (?, ?, ?, 1, 1, 'Skua Post', 'packet', 490, 'EUR', ?, ?)");
        SQLite::Statement plan(db_, "INSERT INTO parcel_plan (id, document) VALUES (?, ?)");
        SQLite::Statement piece(
            db_, "INSERT INTO parcel_piece (parcel, order_id, line, good, count) VALUES (?, ?, ?, ?, ?)");
        SQLite::Statement weighing(db_, "INSERT INTO weighing (parcel, stage, weight, overridden, at) "
                                        "VALUES (?, 'labelled', 4200, 0, ?)");
        SQLite::Statement step(db_, "INSERT INTO step (id, at, kind, words) VALUES (?, ?, ?, '{}')");
        SQLite::Statement image(db_, "INSERT INTO image (step, tab, key, before) VALUES (?, ?, ?, ?)");
        SQLite::Statement movement(db_, "INSERT INTO movement (step, ledger, code, kind, amount, parcel) "
                                        "VALUES (?, ?, ?, ?, ?, ?)");
        SQLite::Statement list(
            db_, "INSERT INTO hand_over_list (id, carrier, day, number, at) VALUES (?, 'Skua Post', ?, 1, ?)");
        const auto run = [](SQLite::Statement& s, const auto&... values) {
            s.reset();
            SQLite::bind(s, values...);
            s.exec();
        };
        const std::string before(280, ' ');
        const std::string row = "{\"id\":1,\"state\":\"planned\"" + before + "}";
        std::int64_t last_day = -1, list_id = 0, steps = 1000;
        for (int n = 1; n <= orders_; ++n) {
            const auto& like = orders[static_cast<std::size_t>(n) % orders.size()].order;
            const auto days_ago = static_cast<std::int64_t>(orders_ - n) * 5 * 365 / orders_;
            const Date day = today - std::chrono::days(days_ago);
            const std::int64_t at = Instant(day).time_since_epoch().count() + 36'000 + n % 20'000;
            const bool open = n > orders_ - 60; // today's
            run(order, n, n % 2 == 0 ? "Harbour Stall" : "Federkai", std::to_string(n), to_text(day),
                like.to.name + " " + std::to_string(n), like.to.street.front(), like.to.postcode, like.to.town,
                like.to.country, "checked", open ? 0 : 1);
            for (std::size_t l = 0; l < like.lines.size(); ++l) {
                run(line, n, static_cast<int>(l), like.lines[l].title, like.lines[l].good.text, like.lines[l].count);
            }
            if (!open && days_ago != last_day) {
                last_day = days_ago;
                run(list, ++list_id, to_text(day), at);
            }
            const std::string number =
                fmt::format("{}-{:05}", to_text(day).substr(2, 2) + to_text(day).substr(5, 2), n);
            parcel.reset();
            parcel.clearBindings();
            parcel.bind(1, n);
            parcel.bind(2, number);
            parcel.bind(3, open ? "planned" : "handed over");
            if (!open) {
                parcel.bind(4, at);
                parcel.bind(5, list_id);
            }
            parcel.exec();
            run(plan, n, plans[static_cast<std::size_t>(n) % plans.size()]);
            for (std::size_t l = 0; l < like.lines.size(); ++l) {
                run(piece, n, n, static_cast<int>(l), like.lines[l].good.text, like.lines[l].count);
            }
            for (const char* kind : {"take in orders", "check order", "plan", "pick", "weigh", "pack", "label"}) {
                ++steps;
                image.reset();
                image.bind(1, steps);
                image.bind(2, "parcel");
                image.bind(3, n);
                image.bind(4, row);
                image.exec();
                if (!open && std::string(kind) == "pack") {
                    for (const char* code : {"K2", "KRAFT", "TAPE", "LABEL", "THANKS", "CARE"}) {
                        run(movement, steps, "supplies", code, "used", -1000, n);
                    }
                    for (const auto& l : like.lines) {
                        run(movement, steps, "goods", l.good.text, "sold", -1000 * l.count, n);
                    }
                }
                run(step, steps, at, kind); // after its movements, as steps are written
            }
            if (!open) run(weighing, n, at);
        }
        all.commit();
    }

private:
    SQLite::Database& db_;
    const bench::DemoShop& shop_;
    int orders_;
};

std::vector<bench::TableRow> rows;

void measured(const char* what, const std::function<std::size_t()>& ask)
{
    double best = 1e9;
    std::size_t found = 0;
    for (int i = 0; i < 3; ++i) {
        const auto start = Clock::now();
        found = ask();
        best = std::min(best, ms_since(start));
    }
    rows.push_back({what, fmt::format("{:.1f}", best), fmt::to_string(found), best > 50 ? "over 50 ms" : ""});
}

// A step cannot be done twice: the longest of several is told.
void steps_measured(const char* what, int times, const std::function<bool(int)>& step)
{
    double longest = 0;
    std::size_t done = 0;
    for (int i = 0; i < times; ++i) {
        const auto start = Clock::now();
        done += step(i) ? 1U : 0U;
        longest = std::max(longest, ms_since(start));
    }
    rows.push_back({what, fmt::format("{:.1f}", longest), fmt::to_string(done), longest > 100 ? "over 100 ms" : ""});
}

// On a copy of the book, so that it can be measured again. On the disk it lies on, each step waits until it is written.
void measure_steps(const fs::path& file, int orders)
{
    const fs::path copy = file.parent_path() / "worked_on.book";
    fs::copy_file(file, copy, fs::copy_options::overwrite_existing);
    ::sync(); // or the first step to tidy up the log waits for the whole copy
    {
        auto book = book::Book::open(copy, [] { return Instant(today) + std::chrono::hours(15); }).value();
        const auto planned = book::parcels_in(book, shop::ParcelState::planned);
        const auto id = [&](int i) { return planned.at(static_cast<std::size_t>(i)).id; };
        steps_measured("a delivery received", 20,
                       [&](int) { return book::receive(book, {"TAPE"}, shop::pieces(1)).has_value(); });
        steps_measured("a parcel picked", 20, [&](int i) { return book::mark_picked(book, id(i)).has_value(); });
        steps_measured("a parcel packed", 20, [&](int i) { return book::mark_packed(book, id(i)).has_value(); });
        steps_measured("a packing undone, and packed again", 1, [&](int) {
            const auto last = book::last_undoable(book);
            return last && book::undo(book, last->id) && book::mark_packed(book, id(19));
        });
        steps_measured("a label stuck on", 20, [&](int i) { return book::mark_labelled(book, id(i)).has_value(); });
        steps_measured("the list of a carrier closed", 1,
                       [&](int) { return book::hand_over(book, "Skua Post").has_value(); });
        steps_measured("that undone", 1, [&](int) {
            const auto last = book::last_undoable(book);
            return last && book::undo(book, last->id).has_value();
        });
        steps_measured("a buyer erased", 20,
                       [&](int i) { return book::erase_buyer(book, {orders / 2 + i}).has_value(); });
    }
    for (const char* ending : {"", "-wal", "-shm"}) fs::remove(copy.string() + ending);
}

} // namespace

int main(int argc, char** argv)
{
    if (argc < 2) return 2;
    const fs::path file = fs::path(argv[1]) / "five_years.book";
    const int orders = argc > 2 ? std::stoi(argv[2]) : 100'000;
    fs::create_directories(file.parent_path());
    const bench::DemoShop shop = bench::demo_shop();
    if (!fs::exists(file)) {
        const auto start = Clock::now();
        {
            auto book = book::Book::open(file).value();
            std::vector<shop::Supply> supplies;
            for (const auto& [code, s] : shop.cupboard.supplies) supplies.push_back(s);
            std::vector<shop::Good> goods;
            for (const auto& [code, g] : shop.cupboard.goods) goods.push_back(g);
            (void)book::take_in_supplies(book, supplies, "supplies.csv");
            (void)book::put_house(book, shop.cupboard.house);
            (void)book::take_in_goods(book, goods, "goods.csv");
        }
        SQLite::Database db(file.string(), SQLite::OPEN_READWRITE);
        db.exec("PRAGMA journal_mode = OFF");
        db.exec("PRAGMA synchronous = OFF"); // a half-made one is made again
        db.exec("PRAGMA cache_size = -400000");
        Filling(db, shop, orders).fill();
        fmt::print(stderr, "made in {:.1f} s\n", ms_since(start) / 1000);
    }
    bench::print_heading(orders > 100'000 ? "A book with a million rows in its ledger" : "A book of five years",
                         fmt::format("book_bench FOLDER {}", orders));
    const auto movements =
        SQLite::Database(file.string(), SQLite::OPEN_READWRITE).execAndGet("SELECT count(*) FROM movement").getInt64();
    fmt::print("{} orders, {} rows in the ledger, {:.0f} MB on disk. Wall-clock time, the best of three.\n\n", orders,
               movements, static_cast<double>(fs::file_size(file)) / 1e6);

    const auto start = Clock::now();
    auto book = book::Book::open(file, [] { return Instant(today) + std::chrono::hours(15); }).value();
    const double opened = ms_since(start);
    rows.push_back({"opening", fmt::format("{:.1f}", opened), "", opened > 1000 ? "over 1 s" : ""});
    measured("cupboard with all that is on hand", [&] { return book::cupboard(book).supplies.size(); });
    measured("open orders and the last fortnight's",
             [&] { return book::orders_open(book, today - std::chrono::days(14)).size(); });
    measured("orders to plan", [&] { return book::orders_to_plan(book).size(); });
    measured("parcels of the day", [&] { return book::parcels_of_day(book, today).size(); });
    measured("lists of the day", [&] { return book::hand_over_lists(book, today).size(); });
    measured("what plans have reserved", [&] { return book::supplies_reserved(book).size(); });
    measured("weekly use of all supplies, 130 weeks", [&] { return book::weekly_use(book, book.now(), 130).size(); });
    measured("average costs", [&] { return book::average_costs(book, {}).size(); });
    measured("movements of one supply", [&] { return book::movements_of(book, shop::SupplyCode{"TAPE"}).size(); });
    measured("what can be undone", [&] { return book::last_undoable(book) ? std::size_t{1} : 0; });
    measured("find a name", [&] { return book::search(book, "99990").size(); });
    measured("history of an order", [&] { return book::history(book, {orders / 2}).size(); });
    measured("one parcel with its plan", [&] { return book::parcel(book, {orders / 2}) ? std::size_t{1} : 0; });
    measured("records of four weeks",
             [&] { return book::packed_facts(book, today - std::chrono::days(28), today).size(); });
    measured("records of a year",
             [&] { return book::packed_facts(book, today - std::chrono::days(365), today).size(); });
    bench::print_table({"asked", "ms", "found", ""}, rows);
    rows.clear();
    measure_steps(file, orders);
    fmt::print("\nSteps, the longest of 20 (of 1 where only one is there), each written through to the disk:\n\n");
    bench::print_table({"step", "ms", "done", ""}, rows);
    return 0;
}
