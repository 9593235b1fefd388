// December at once: 10,000 orders of a small shop's goods through the fitting engine, with a memory of solved sets.
//   december [--orders 10000] [--work 3000] [--support partial]
// First every order gets an outer within that much work (search nodes), then what is left unproven is gone through
// again with growing budgets, and the share of orders with a proven smallest outer is told after 1, 5 and 10 s.
#include "core/fitting/check.h"
#include "core/fitting/fit.h"
#include "tests/bench/cpu_clock.h"
#include "tests/bench/order_series.h"
#include "tests/bench/random.h"
#include "tests/bench/report.h"

#include <algorithm>
#include <array>
#include <fmt/format.h>
#include <fstream>
#include <map>
#include <unistd.h>

namespace {

using namespace stow;
using namespace stow::bench;
using namespace stow::fitting;

// Goods of an ink-and-paper workshop: bottles, tins, blocks of paper, notebooks, cards.
std::vector<Item> catalogue()
{
    Dice dice(12);
    std::vector<Item> goods;
    const auto side = [&](std::int64_t least, std::int64_t most) { return mm(dice.from_to(least, most)); };
    for (int k = 0; k < 60; ++k) {
        Item item;
        item.id = fmt::format("good {:02}", k);
        switch (k % 4) {
        case 0: // upright bottle in its wrap
            item.shape = Cylinder{side(35, 80), side(50, 130)};
            item.turns.rule = Turns::Rule::upright;
            item.weight = grams(250);
            break;
        case 1: item.shape = Block{{side(90, 240), side(60, 170), side(8, 35)}}; break;  // notebook
        case 2: item.shape = Block{{side(40, 150), side(30, 110), side(15, 80)}}; break; // tin or box
        default: item.shape = Sheet{side(90, 220), side(60, 160), side(1, 4), std::nullopt};
        }
        if (k % 4 != 0) item.weight = grams(120);
        goods.push_back(item);
    }
    return goods;
}

// Every third carton of the shop series: 14 of 0.3 to 50 litres.
std::vector<Outer> outers()
{
    const Question shop = order_of(Series::shop, 1, 0);
    std::vector<Outer> chosen;
    for (std::size_t k = 0; k < shop.outers.size(); k += 3) chosen.push_back(shop.outers[k]);
    return chosen;
}

constexpr std::array<int, 12> per_thousand{300, 220, 150, 100, 70, 50, 30, 20, 20, 15, 13, 12}; // orders by pieces

using Set = std::vector<std::pair<std::size_t, int>>; // good and count, by good

Set any_set(Dice& dice, std::size_t goods)
{
    int drawn = static_cast<int>(dice.below(1000)), pieces = 1;
    for (const int share : per_thousand) {
        if (drawn < share) break;
        drawn -= share;
        ++pieces;
    }
    std::map<std::size_t, int> counts;
    while (pieces > 0) {
        const int count = dice.one_in(4) ? static_cast<int>(dice.from_to(1, std::min(pieces, 3))) : 1;
        counts[dice.below(goods)] += count;
        pieces -= count;
    }
    return {counts.begin(), counts.end()};
}

// Keeps each set's answer as the shop book does, but in memory. Every question here has the same outers and rules.
class SetMemory : public Memory {
public:
    std::optional<Answer> recall(const Question& question) override
    {
        const auto known = answers_.find(key(question));
        if (known == answers_.end()) return std::nullopt;
        ++recalled_;
        return known->second;
    }
    void keep(const Question& question, const Answer& answer) override { answers_[key(question)] = answer; }
    std::size_t size() const { return answers_.size(); }
    int recalled() const { return recalled_; }

private:
    static std::string key(const Question& question)
    {
        std::string key;
        for (const Item& item : question.items) key += item.id + '*' + std::to_string(item.count) + ' ';
        return key;
    }
    std::map<std::string, Answer> answers_;
    int recalled_ = 0;
};

double resident_mb()
{
    std::ifstream in("/proc/self/statm");
    double total = 0, resident = 0;
    in >> total >> resident;
    return resident * static_cast<double>(sysconf(_SC_PAGESIZE)) / 1e6;
}

struct Solved {
    Question question;
    int orders = 0; // that ask for this set
    bool decided = false, found = false;
};

bool decided(const Answer& a)
{
    return a.proven_smallest || a.verdict == Verdict::cannot_fit;
}

double share_decided(const std::map<Set, Solved>& sets, int orders)
{
    int count = 0;
    for (const auto& [set, solved] : sets) count += solved.decided ? solved.orders : 0;
    return static_cast<double>(count) / orders;
}

} // namespace

int main(int argc, char** argv)
{
    const Options options(argc, argv, {{"--orders", "10000"}, {"--work", "3000"}, {"--support", "partial"}});
    const int orders = options.number("--orders");
    const auto work = static_cast<std::uint64_t>(options.number("--work"));
    const std::vector<Item> goods = catalogue();
    Question base;
    base.outers = outers();
    base.support = options.text("--support") == "none" ? Support::none : Support::partial;

    Dice dice(20'261'201);
    std::map<Set, Solved> sets;
    SetMemory memory;
    std::vector<double> ms;
    std::vector<TableRow> memory_rows;
    std::array<int, 12> histogram{};
    int found = 0, none = 0, undecided = 0;
    const Stopwatch watch;
    for (int k = 1; k <= orders; ++k) {
        const Set set = any_set(dice, goods.size());
        Question q = base;
        int pieces = 0;
        for (const auto& [good, count] : set) {
            q.items.push_back(goods[good]);
            q.items.back().count = count;
            pieces += count;
        }
        ++histogram[static_cast<std::size_t>(pieces - 1)];
        const Stopwatch one;
        Run run({std::chrono::seconds(1), work}, nullptr, thread_time);
        const Answer a = fit(q, run, &memory);
        ms.push_back(one.milliseconds());
        if (a.verdict == Verdict::fits && !check(q, a.outer, a.cut_height, a.placements).empty()) {
            throw std::logic_error("the checker objects");
        }
        (a.verdict == Verdict::fits ? found : a.verdict == Verdict::cannot_fit ? none : undecided) += 1;
        Solved& solved = sets[set];
        if (solved.orders == 0) solved = {q, 0, decided(a), a.verdict == Verdict::fits};
        ++solved.orders;
        if (k == orders / 10 || k == orders / 2 || k == orders) {
            memory_rows.push_back(
                {std::to_string(k), std::to_string(sets.size()), fixed(watch.seconds(), 2), fixed(resident_mb(), 1)});
        }
    }
    const double first_pass = watch.seconds();
    const int remembered = memory.recalled();
    // All of it again: nothing is left to solve, and nothing may be left behind.
    dice = Dice(20'261'201);
    for (int k = 1; k <= orders; ++k) {
        Run run({std::chrono::seconds(1), work}, nullptr, thread_time);
        fit(sets.at(any_set(dice, goods.size())).question, run, &memory);
    }
    memory_rows.push_back({std::to_string(orders) + " again", std::to_string(sets.size()), fixed(watch.seconds(), 2),
                           fixed(resident_mb(), 1)});

    print_heading("December: 10,000 orders", options.command());
    fmt::print(
        "60 goods (upright bottles, notebooks, tins, cards), 14 cartons, `support` {}. Orders by pieces, 1 to 12: "
        "{}.\n\n",
        options.text("--support"), fmt::join(histogram, ", "));
    print_table({"orders", "distinct sets", "s", "resident MB, every set's question and answer in it"}, memory_rows);
    print_table(
        {"verified parcel", "none holds it (proven)", "undecided", "remembered", "median ms", "99th percentile ms",
         "slowest ms", "all, s"},
        {{std::to_string(found), std::to_string(none), std::to_string(undecided), std::to_string(remembered),
          fixed(quantile(ms, 0.5), 3), fixed(quantile(ms, 0.99), 1), fixed(quantile(ms, 1), 1), fixed(first_pass, 2)}});

    const double at_once = share_decided(sets, orders);
    std::vector<double> shares;
    const Stopwatch background; // its time goes to what is left unproven
    std::uint64_t budget = 4 * work;
    for (const double moment : {1.0, 5.0, 10.0}) {
        while (background.seconds() < moment) {
            bool left = false;
            for (auto& [set, solved] : sets) {
                if (solved.decided) continue;
                left = true;
                if (background.seconds() >= moment) break;
                Run run({std::chrono::milliseconds(500), budget}, nullptr, thread_time);
                solved.decided = decided(fit(solved.question, run));
            }
            if (!left) break;
            if (background.seconds() < moment) budget *= 4;
        }
        shares.push_back(share_decided(sets, orders));
    }
    print_table({"orders with a proven answer: at once %", "after 1 s of proofs %", "5 s %", "10 s %"},
                {{percent(at_once), percent(shares[0]), percent(shares[1]), percent(shares[2])}});
    return 0;
}
