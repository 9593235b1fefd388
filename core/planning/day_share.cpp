#include "core/planning/day_share.h"

#include "core/planning/sharing.h"
#include "core/planning/split.h"

#include <algorithm>
#include <set>

namespace stow::planning {

namespace {

class DayChoice {
public:
    DayChoice(const Bench& bench, const Stock& stock, const std::vector<Waiting>& waiting)
        : bench_(bench), stock_(stock), waiting_(waiting), options_(waiting.size())
    {
        for (std::size_t o = 0; o < waiting.size(); ++o) {
            if (waiting[o].plan)
                options_[o].push_back(option(*waiting[o].plan));
            else
                options_[o].push_back(option(waiting[o].splits.front()));
        }
    }

    DayShare share()
    {
        Sharing sharing = written_down();
        Ways plain = one_by_one(sharing);
        Shared shared = share_out(sharing, bench_.run, &plain);
        // Who touches what is scarce must be known with every way it can be packed, or the choice would not be whole.
        while (look_at_every_way(shared.scarce)) {
            sharing = written_down();
            plain = one_by_one(sharing);
            shared = share_out(sharing, bench_.run, &plain);
        }
        if (!shared.proven()) shared = share_out(sharing, bench_.run);
        DayShare day;
        if (std::find(shared.scarce.begin(), shared.scarce.end(), true) != shared.scarce.end()) {
            tell(sharing, shared, day);
        }
        keep(shared.ways, day);
        return day;
    }

private:
    struct Option {
        Merit merit;
        Volume closed;
        Money cost;
        std::vector<Used> uses;
        shop::SupplyCode outer{};          // of one parcel
        std::vector<ParcelPlan> parcels{}; // of a split, and of the best
    };

    // What outers are compared by, as in `pack`.
    Volume closed_of(const ParcelPlan& plan) const
    {
        return closed_volume(*bench_.cupboard.supply(plan.outer)->form, plan.contents_thickness, plan.cut_at);
    }

    Option option(const ParcelPlan& plan) const
    {
        return {merit_of(plan, closed_of(plan), bench_.wish.preference, before(plan)),
                closed_of(plan),
                cost_in_all(plan),
                plan.uses,
                plan.outer,
                {plan}};
    }

    Option option(const std::vector<ParcelPlan>& parcels) const
    {
        Option sum{{}, {}, Money{0, bench_.cupboard.house.currency}, {}, {}, parcels};
        for (const ParcelPlan& p : parcels) {
            sum.merit = sum.merit + merit_of(p, closed_of(p), bench_.wish.preference, {});
            sum.closed += closed_of(p);
            sum.cost += cost_in_all(p);
            sum.uses.insert(sum.uses.end(), p.uses.begin(), p.uses.end());
        }
        return sum;
    }

    shop::SupplyCode before(const ParcelPlan& plan) const
    {
        const auto found = bench_.wish.before.find(plan.pieces.front().order);
        return found == bench_.wish.before.end() ? shop::SupplyCode{} : found->second;
    }

    // Nothing: it is no limit of the day.
    std::optional<Limit> limit_of(const shop::SupplyCode& code) const
    {
        const shop::Supply* supply = bench_.cupboard.supply(code);
        if (supply == nullptr) return std::nullopt;
        const std::int64_t left = stock_.left(code).thousandths;
        // Paper is used up by boxes made of it only: as firm as they are.
        if (supply->kind == shop::SupplyKind::outer || supply->kind == shop::SupplyKind::paper) {
            return Limit{left, true};
        }
        const bool chosen_with_outer =
            supply->kind == shop::SupplyKind::filler || supply->kind == shop::SupplyKind::tape;
        if (!chosen_with_outer) return std::nullopt;
        return Limit{left, false};
    }

    Sharing written_down()
    {
        Sharing sharing;
        limits_.clear();
        std::map<shop::SupplyCode, std::size_t> index;
        const auto n = static_cast<std::int64_t>(options_.size());
        for (std::size_t o = 0; o < options_.size(); ++o) {
            std::vector<Way> ways;
            const std::int64_t turn = n - static_cast<std::int64_t>(o);
            for (const Option& option : options_[o]) {
                Way way{option.merit, {}};
                way.merit.turn = turn * static_cast<std::int64_t>(ways.size());
                std::map<std::size_t, std::int64_t> needs;
                const bool by_hand = waiting_[o].task.by_hand.has_value(); // that very outer, even if there is none
                for (const Used& used : option.uses) {
                    const auto limit = limit_of(used.supply);
                    if (!limit || used.amount <= shop::Amount{} || (by_hand && used.supply == option.outer)) continue;
                    const auto [at, fresh] = index.emplace(used.supply, sharing.limits.size());
                    if (fresh) {
                        sharing.limits.push_back(*limit);
                        limits_.push_back(used.supply);
                    }
                    needs[at->second] += used.amount.thousandths;
                }
                for (const auto& [limit, amount] : needs) way.needs.push_back({limit, amount});
                ways.push_back(std::move(way));
            }
            Way out;
            out.merit.left_out = static_cast<std::int64_t>(waiting_[o].task.orders.size());
            out.merit.turn = turn * static_cast<std::int64_t>(ways.size());
            ways.push_back(std::move(out));
            sharing.orders.push_back(std::move(ways));
        }
        take_by_hand_off(sharing, index);
        return sharing;
    }

    // What she chose by hand is gone for the others.
    void take_by_hand_off(Sharing& sharing, const std::map<shop::SupplyCode, std::size_t>& index) const
    {
        for (const Waiting& waiting : waiting_) {
            if (!waiting.task.by_hand) continue;
            const auto found = index.find(*waiting.task.by_hand);
            if (found != index.end()) sharing.limits[found->second].left -= 1000;
        }
    }

    // True when some were looked at anew.
    bool look_at_every_way(const std::vector<bool>& scarce)
    {
        bool any = false;
        for (std::size_t o = 0; o < options_.size(); ++o) {
            const bool touched = std::any_of(options_[o].front().uses.begin(), options_[o].front().uses.end(),
                                             [&](const Used& used) { return is_scarce(used.supply, scarce); });
            if (!touched || known_whole_.contains(o) || waiting_[o].task.by_hand) continue;
            known_whole_.insert(o);
            if (!bench_.run.go_on(256)) continue;
            if (waiting_[o].plan)
                add_ways(o);
            else
                add_splits(o, scarce);
            any = true;
        }
        return any;
    }

    bool is_scarce(const shop::SupplyCode& code, const std::vector<bool>& scarce) const
    {
        const auto found = std::find(limits_.begin(), limits_.end(), code);
        return found != limits_.end() && scarce[static_cast<std::size_t>(found - limits_.begin())];
    }

    void add_ways(std::size_t o)
    {
        Wish wish = bench_.wish;
        wish.prove = false;
        const Bench quick{bench_.cupboard, bench_.services, wish, bench_.run, bench_.memory, bench_.asked};
        const Packed packed = pack(quick, waiting_[o].task, waiting_[o].contents, stock_, true);
        for (const PackedWay& way : packed.ways) {
            const shop::SupplyCode outer{way.merit.code};
            if (outer == options_[o].front().outer) continue;
            options_[o].push_back({way.merit, way.closed, way.cost, way.uses, outer, {}});
        }
        std::stable_sort(options_[o].begin() + 1, options_[o].end(),
                         [](const Option& a, const Option& b) { return a.merit < b.merit; });
    }

    // Over several parcels, without the scarce outer: one way more for each.
    void add_splits(std::size_t o, const std::vector<bool>& scarce)
    {
        std::vector<shop::SupplyCode> outers;
        for (const ParcelPlan& p : options_[o].front().parcels) {
            if (is_scarce(p.outer, scarce) && std::find(outers.begin(), outers.end(), p.outer) == outers.end()) {
                outers.push_back(p.outer);
            }
        }
        for (const shop::SupplyCode& outer : outers) {
            Stock without = stock_;
            without.take({{outer, stock_.left(outer)}});
            auto parts = split(bench_, waiting_[o].task, without, waiting_[o].learned);
            if (auto* parcels = std::get_if<std::vector<ParcelPlan>>(&parts)) {
                options_[o].push_back(option(*parcels));
            }
        }
    }

    struct Sum {
        int go = 0;
        std::int64_t late = 0;
        Money cost;
        Volume closed;
    };
    Sum sum_of(const Ways& ways) const
    {
        Sum sum{0, 0, Money{0, bench_.cupboard.house.currency}, {}};
        for (std::size_t o = 0; o < ways.size(); ++o) {
            if (ways[o] >= options_[o].size()) continue;
            const Option& chosen = options_[o][ways[o]];
            sum.go += static_cast<int>(waiting_[o].task.orders.size());
            sum.late += chosen.merit.late;
            sum.cost += chosen.cost;
            sum.closed += chosen.closed;
        }
        return sum;
    }

    // Of orders that go in both choices only, so that an order left out is no saving.
    Money saved(const Ways& before, const Ways& after) const
    {
        Money sum{0, bench_.cupboard.house.currency};
        for_both(before, after, [&](const Option& a, const Option& b) { sum += a.cost - b.cost; });
        return sum;
    }
    Volume smaller(const Ways& before, const Ways& after) const
    {
        Volume sum;
        for_both(before, after, [&](const Option& a, const Option& b) { sum += a.closed - b.closed; });
        return sum;
    }
    template <class Do>
    void for_both(const Ways& before, const Ways& after, Do&& act) const
    {
        for (std::size_t o = 0; o < before.size(); ++o) {
            if (before[o] >= options_[o].size() || after[o] >= options_[o].size()) continue;
            act(options_[o][before[o]], options_[o][after[o]]);
        }
    }

    void tell(const Sharing& sharing, const Shared& shared, DayShare& day) const
    {
        const Ways plain = one_by_one(sharing);
        const Sum before = sum_of(plain), now = sum_of(shared.ways);
        DaySharing& told = day.told;
        told.more_go = now.go - before.go;
        told.more_in_time = static_cast<int>(before.late - now.late);
        told.saves = saved(plain, shared.ways);
        told.smaller = smaller(plain, shared.ways);
        told.gap = gap_of(shared);
        for (const std::size_t way : shared.ways) told.moved += way != 0 ? 1 : 0;
        count_missed(sharing, shared, day.missed);
        std::vector<std::pair<Merit, ScarceSupply>> worth;
        for (const std::size_t l : most_wanted(shared, day.missed)) {
            Sharing more = sharing;
            more.limits[l].left = unlimited;
            const Shared then = share_out(more, bench_.run, &shared.ways);
            const std::int64_t needed = amounts_needed(sharing, then.ways)[l];
            ScarceSupply scarce;
            scarce.supply = limits_[l];
            scarce.more = {needed - std::max<std::int64_t>(sharing.limits[l].left, 0)};
            if (scarce.more <= shop::Amount{} || !(then.merit < shared.merit)) continue;
            scarce.more_go = sum_of(then.ways).go - now.go;
            scarce.saves = saved(shared.ways, then.ways);
            scarce.smaller = smaller(shared.ways, then.ways);
            worth.emplace_back(then.merit, std::move(scarce));
        }
        std::stable_sort(worth.begin(), worth.end(), [](const auto& a, const auto& b) { return a.first < b.first; });
        for (auto& [merit, scarce] : worth) told.scarce.push_back(std::move(scarce));
    }

    static std::optional<SharingGap> gap_of(const Shared& shared)
    {
        const Levels& behind = shared.behind;
        const auto first = std::find_if(behind.begin(), behind.end(), [](std::int64_t by) { return by != 0; });
        const auto level = static_cast<std::size_t>(first - behind.begin());
        if (level > wish_level) return std::nullopt; // what follows the first wish only tells ties apart
        using In = SharingGap::In;
        if (level < 2) return SharingGap{In::orders_going, *first};
        if (level < over_level) return SharingGap{In::orders_in_time, *first};
        if (level == over_level) return SharingGap{In::filler_and_tape, *first};
        const std::int64_t wish = std::max<std::int64_t>(shared.merit.wishes[0], 1);
        return SharingGap{In::wish, (*first * 1000 + wish - 1) / wish};
    }

    // Scarce limits, those first of which most orders' own best go without; at most a handful.
    std::vector<std::size_t> most_wanted(const Shared& shared, const std::map<shop::SupplyCode, int>& missed) const
    {
        constexpr std::size_t handful = 4;
        std::vector<std::pair<int, std::size_t>> wanted;
        for (std::size_t l = 0; l < limits_.size(); ++l) {
            if (!shared.scarce[l]) continue;
            const auto found = missed.find(limits_[l]);
            wanted.emplace_back(found == missed.end() ? 0 : -found->second, l);
        }
        std::sort(wanted.begin(), wanted.end());
        wanted.resize(std::min(wanted.size(), handful));
        std::vector<std::size_t> limits;
        limits.reserve(wanted.size());
        for (const auto& [count, l] : wanted) limits.push_back(l);
        return limits;
    }

    // Firm things that an order's own best needs and its share does not have.
    void count_missed(const Sharing& sharing, const Shared& shared, std::map<shop::SupplyCode, int>& missed) const
    {
        for (std::size_t o = 0; o < shared.ways.size(); ++o) {
            if (shared.ways[o] == 0) continue;
            const auto& given = sharing.orders[o][shared.ways[o]].needs;
            for (const Need& need : sharing.orders[o].front().needs) {
                const bool has = std::any_of(given.begin(), given.end(), [&](const Need& g) {
                    return g.limit == need.limit && g.amount >= need.amount;
                });
                if (!has && sharing.limits[need.limit].firm && shared.scarce[need.limit]) {
                    missed[limits_[need.limit]] += static_cast<int>(need.amount / 1000);
                }
            }
        }
    }

    void keep(const Ways& ways, DayShare& day)
    {
        Stock left = stock_;
        for (std::size_t o = 0; o < ways.size(); ++o) {
            if (ways[o] < options_[o].size()) left.take(options_[o][ways[o]].uses);
        }
        for (std::size_t o = 0; o < ways.size(); ++o) {
            Kept kept{&waiting_[o], {}};
            if (ways[o] < options_[o].size()) {
                Option& chosen = options_[o][ways[o]];
                kept.parcels = chosen.parcels.empty() ? packed_anew(o, ways[o], left) : std::move(chosen.parcels);
            }
            day.kept.push_back(std::move(kept));
        }
    }

    // In the outer it was given, with the better ones named as gone.
    std::vector<ParcelPlan> packed_anew(std::size_t o, std::size_t way, Stock& left) const
    {
        left.give_back(options_[o][way].uses);
        Stock given = left;
        for (std::size_t better = 0; better < way; ++better) {
            const shop::SupplyCode& outer = options_[o][better].outer;
            if (given.left(outer) > shop::Amount{}) given.take({{outer, given.left(outer)}});
        }
        Packed packed = pack(bench_, waiting_[o].task, waiting_[o].contents, given);
        if (!packed.plan) return {};
        left.take(packed.plan->uses);
        return {*std::move(packed.plan)};
    }

    static constexpr std::int64_t unlimited = 1'000'000'000'000;

    const Bench& bench_;
    const Stock& stock_;
    const std::vector<Waiting>& waiting_;
    std::vector<std::vector<Option>> options_; // of each, the best first; past the last: left out
    std::vector<shop::SupplyCode> limits_;     // as the sharing numbers them
    std::set<std::size_t> known_whole_;
};

} // namespace

DayShare share_day(const Bench& bench, const Stock& stock, const std::vector<Waiting>& waiting)
{
    return DayChoice(bench, stock, waiting).share();
}

} // namespace stow::planning
