// The demo day: a fresh book from the files of demo_orders and rate_tables, planned, its papers written, and the
// morning played through so that every place of the day line has something to show.
#include "app/command/command.h"
#include "app/command/day_table.h"
#include "app/day_papers.h"
#include "app/plan_day.h"
#include "app/take_in.h"
#include "app/words/book.h"
#include "app/words/reasons.h"
#include "core/book/verify.h"
#include "core/intake/csv.h"
#include "core/intake/orders_csv.h"

#include <algorithm>
#include <chrono>
#include <nlohmann/json.hpp>
#include <ostream>
#include <set>

namespace stow::command {

namespace {

using namespace std::chrono_literals;
namespace fs = std::filesystem;

// The demo's own calendar, so that it reads the same whenever it is run: a Wednesday morning.
constexpr LocalTime demo_morning{Date{std::chrono::year{2026} / 11 / 25}, 8h + 30min};
constexpr LocalTime december_morning{Date{std::chrono::year{2026} / 12 / 9}, 7h + 30min};

struct Options {
    std::string out = "demo_day";
    std::string orders = "small";
};

struct Export { // one file of one shop
    const char* shop;
    const char* file;
};
constexpr std::array small_day{Export{"Harbour Stall", "harbour_stall.csv"}, Export{"Federkai", "federkai.csv"}};
constexpr std::array december_day{Export{"Harbour Stall", "december_harbour_stall.csv"},
                                  Export{"Federkai", "december_federkai.csv"}};
constexpr Export later_export{"Harbour Stall", "harbour_stall_later.csv"};

using Place = std::tuple<std::string, std::size_t, std::string>; // file, row, column

Place place_of(const intake::Problem& problem)
{
    return {problem.file, problem.row, problem.column};
}

// The rows that are wrong on purpose: file, row, column.
std::set<Place> planned_problems(const fs::path& file)
{
    std::set<Place> places;
    for (const intake::CsvRow& row : intake::read_csv_file(file.string()).rows) {
        places.insert({row.cells.at(0), std::stoul(row.cells.at(1)), row.cells.at(2)});
    }
    return places;
}

class Demo {
public:
    Demo(Context& context, Day& day, fs::path folder) : context_(context), day_(day), folder_(std::move(folder)) {}

    // Every file of the shop and its carriers.
    void furnish()
    {
        take(TakeInKind::supplies, data("supplies.csv"));
        take(TakeInKind::house, data("house.csv"));
        take(TakeInKind::wrappings, data("wrappings.csv"));
        take(TakeInKind::goods, data("goods.csv"));
        take(TakeInKind::rules, data("house_rules.csv"));
        std::vector<fs::path> sheets;
        for (const auto& entry : fs::directory_iterator(context_.demo_data / "rate_tables")) {
            if (entry.path().extension() == ".csv") sheets.push_back(entry.path());
        }
        std::sort(sheets.begin(), sheets.end());
        for (const fs::path& sheet : sheets) take(TakeInKind::rates, sheet);
    }

    // The shelves are fuller for December.
    void count_for_december() { take(TakeInKind::stock, data("december_stock.csv")); }

    // What the shops call her goods, as she has told before: shop, title, variant, good.
    void remember_titles()
    {
        for (const intake::CsvRow& row : intake::read_csv_file(data("matches.csv").string()).rows) {
            const auto& cells = row.cells;
            (void)book::remember_match(day_.book(), {cells.at(0), cells.at(1), cells.at(2), {cells.at(3)}});
        }
    }

    void take_orders(const Export& shop_export)
    {
        const intake::Csv csv = intake::read_csv_file((context_.demo_data / "demo_orders" / shop_export.file).string());
        const TakenIn taken = take_in_orders(day_, csv, columns_for(day_, csv, shop_export.shop));
        problems_.insert(problems_.end(), taken.problems.begin(), taken.problems.end());
    }

    // What she does each morning: everything sound is checked, orders of one buyer go together.
    void check_and_join()
    {
        std::vector<shop::OrderId> sound;
        for (const shop::HeldOrder& held : day_.orders()) {
            const auto findings = shop::look_over(held.order, day_.today());
            const bool blocked =
                std::any_of(findings.begin(), findings.end(), [](const shop::OrderFinding& f) { return f.blocks; });
            if (held.state == shop::OrderState::arrived && !blocked) sound.push_back(held.id);
        }
        (void)book::check_orders(day_.book(), sound);
        std::map<std::string, shop::OrderId> first;
        for (const shop::HeldOrder& held : day_.orders()) {
            if (std::find(sound.begin(), sound.end(), held.id) == sound.end()) continue;
            const auto [found, fresh] = first.emplace(shop::joining_key(held.order.to), held.id);
            if (!fresh) (void)book::join_orders(day_.book(), held.id, found->second);
        }
        day_.moved();
    }

    // Verified parcels first, proofs after, as the window does it.
    bool plan()
    {
        input_ = gather(day_, planning::Preference::smallest);
        input_.wish.prove = false;
        Run run;
        const auto start = std::chrono::steady_clock::now();
        plan_ = planning::plan_day(input_.cupboard, input_.orders, input_.rate_sheets, input_.wish, run);
        timing_.all_verified = std::chrono::steady_clock::now() - start;
        timing_.parcel_ms.resize(plan_.parcels.size());
        auto last = std::chrono::steady_clock::now();
        planning::prove_day(plan_, input_.cupboard, input_.orders, input_.rate_sheets, input_.wish, run,
                            [&](std::size_t index, const planning::ParcelPlan&) {
                                const auto now = std::chrono::steady_clock::now();
                                timing_.parcel_ms[index] =
                                    std::chrono::duration<double, std::milli>(now - last).count();
                                last = now;
                            });
        timing_.all_proven = std::chrono::steady_clock::now() - start;
        auto stored = store(day_, input_, plan_);
        if (!stored) {
            say(context_.err, words::refused(stored.error()));
            return false;
        }
        parcels_ = std::move(*stored);
        return true;
    }

    bool write_papers()
    {
        for (const PaperKind kind : all_paper_kinds) {
            if (kind == PaperKind::hand_over_list) continue;
            if (!write_paper(day_, kind, parcels_, folder_) && !only_some_have(kind)) {
                say(context_.err,
                    QObject::tr("Could not write into %1.").arg(QString::fromStdString(folder_.string())));
                return false;
            }
        }
        return true;
    }

    // Two rounds are picked; the first is packed, labelled and, as far as its busiest carrier takes it, handed over.
    // Then the shop's later file comes in: an order of the second round has been called off.
    void play_morning()
    {
        const auto trays = static_cast<std::size_t>(std::max(1, day_.cupboard().house.trays));
        const auto first = round(0, trays);
        const auto second = round(first.size(), trays);
        std::map<std::string, int> labelled;
        for (const shop::ParcelId id : first) {
            const auto held = book::parcel(day_.book(), id);
            const planning::ParcelPlan& plan = held->plan;
            (void)book::weigh(day_.book(), id, {shop::WeighingStage::closed, to_step(plan.weight.mean)});
            (void)book::mark_packed(day_.book(), id);
            if (!plan.chosen) continue;
            const postage::Quote& quote = plan.quotes[*plan.chosen];
            (void)book::choose_service(day_.book(), id, quote.carrier, quote.service, quote.price()->total);
            (void)book::mark_labelled(day_.book(), id);
            ++labelled[quote.carrier];
        }
        day_.moved();
        const auto most = std::max_element(labelled.begin(), labelled.end(),
                                           [](const auto& a, const auto& b) { return a.second < b.second; });
        if (most != labelled.end()) {
            if (const auto list = book::hand_over(day_.book(), most->first)) {
                day_.moved();
                (void)print_hand_over_list(day_, *list, folder_);
            }
        }
        take_orders(later_export);
    }

    int report()
    {
        std::vector<std::string> numbers;
        for (const shop::ParcelId id : parcels_) {
            const auto held = book::parcel(day_.book(), id);
            numbers.push_back(held ? held->parcel.number : std::string());
        }
        const auto unsound = book::verify(day_.book());
        const auto planned = planned_problems(data("wrong_on_purpose.csv"));
        std::vector<intake::Problem> unplanned;
        std::copy_if(problems_.begin(), problems_.end(), std::back_inserter(unplanned),
                     [&](const intake::Problem& p) { return !planned.contains(place_of(p)); });

        for (const intake::Problem& problem : problems_) say(context_.err, words::problem(problem));
        for (const book::Finding& finding : unsound) say(context_.err, words::finding(finding));
        if (context_.json) {
            context_.out << day_json(plan_, input_.orders, numbers, timing_).dump() << '\n';
        } else {
            print_day(context_.out, plan_, input_.orders, day_.cupboard(), numbers);
            for (const shop::HeldOrder& held : day_.orders()) {
                if (held.state != shop::OrderState::arrived) continue;
                for (const shop::OrderFinding& found : shop::look_over(held.order, day_.today())) {
                    if (found.blocks) {
                        say(context_.out,
                            QObject::tr("Waits: %1 (%2)")
                                .arg(QString::fromStdString(held.order.key.number), words::finding(found)));
                    }
                }
            }
            for (const shop::Parcel& parcel : book::parcels(day_.book())) {
                if (parcel.state != shop::ParcelState::planned && book::parcel_standing(day_.book(), parcel).stops()) {
                    say(context_.out,
                        QObject::tr("Stops at its next scan: parcel %1, its order changed or was called off")
                            .arg(QString::fromStdString(parcel.number)));
                }
            }
            say(context_.err, QObject::tr("Papers: %1").arg(QString::fromStdString(folder_.string())));
        }
        return unplanned.empty() && unsound.empty() ? done : attention;
    }

private:
    fs::path data(const char* file) const { return context_.demo_data / "demo_orders" / file; }

    void take(TakeInKind kind, const fs::path& file)
    {
        const TakenIn taken = take_in(day_, kind, file);
        problems_.insert(problems_.end(), taken.problems.begin(), taken.problems.end());
    }

    std::vector<shop::ParcelId> round(std::size_t from, std::size_t trays)
    {
        std::vector<shop::ParcelId> ids;
        std::vector<book::Tray> round;
        for (std::size_t i = from; i < std::min(parcels_.size(), from + trays); ++i) {
            round.push_back({parcels_[i], std::string(1, static_cast<char>('A' + (i - from)))});
            ids.push_back(parcels_[i]);
        }
        (void)book::start_round(day_.book(), round);
        for (const shop::ParcelId id : ids) (void)book::mark_picked(day_.book(), id);
        day_.moved();
        return ids;
    }

    Weight to_step(Weight weight) const // as the scale shows it
    {
        const std::int64_t step = std::max<std::int64_t>(1, day_.cupboard().house.scale_step.units);
        return {(weight.units + step / 2) / step * step};
    }

    Context& context_;
    Day& day_;
    fs::path folder_;
    PlanInput input_;
    planning::DayPlan plan_;
    Timing timing_;
    std::vector<shop::ParcelId> parcels_;
    std::vector<intake::Problem> problems_;
};

int demo(Context& context, const Options& options)
{
    const fs::path folder = options.out;
    std::error_code error;
    fs::create_directories(folder, error);
    if (!context.book_named) {
        context.book = folder / "demo.book";
        for (const char* suffix : {"", "-wal", "-shm"}) fs::remove(context.book.string() + suffix, error);
    } else if (fs::exists(context.book)) {
        say(context.err, QObject::tr("%1 is there already. The demo begins with a fresh book; name another file.")
                             .arg(QString::fromStdString(context.book.string())));
        return refused;
    }
    const bool december = options.orders == "december";
    const LocalTime morning = december ? december_morning : demo_morning;
    auto book = book::Book::open(context.book, [morning, second = std::chrono::seconds{0}]() mutable {
        return Instant{morning.day + morning.time + second++};
    });
    if (!book) {
        say(context.err, words::problem(book.error()));
        return book_unusable;
    }
    Day day(std::move(*book), [morning] { return morning; });
    Demo demo(context, day, folder);
    demo.furnish();
    demo.remember_titles();
    if (december) demo.count_for_december();
    for (const Export& shop_export : december ? december_day : small_day) demo.take_orders(shop_export);
    demo.check_and_join();
    if (!demo.plan() || !demo.write_papers()) return refused;
    if (!december) demo.play_morning();
    return demo.report();
}

} // namespace

void add_demo(CLI::App& app, Context& context)
{
    const auto options = std::make_shared<Options>();
    auto* command = app.add_subcommand("demo", "A whole day of an invented ink-and-paper workshop: plan and papers");
    command->add_option("--out", options->out, "Folder for the papers and, unless --book names one, the book");
    command->add_option("--orders", options->orders, "small (about 24) or december (200)")
        ->check(CLI::IsMember({"small", "december"}));
    command->callback([&context, options] { context.exit = demo(context, *options); });
}

} // namespace stow::command
