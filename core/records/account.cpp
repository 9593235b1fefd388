#include "core/records/account.h"

#include "core/planning/handwork.h"
#include "core/records/summary.h"

#include <algorithm>

namespace stow::records {

namespace {

Spent spent_on(shop::SupplyKind kind)
{
    using K = shop::SupplyKind;
    switch (kind) {
    case K::outer: return Spent::outer;
    case K::wrap: return Spent::wrap;
    case K::filler: return Spent::filler;
    case K::tape: return Spent::tape;
    case K::label: return Spent::label;
    case K::insert: return Spent::insert;
    case K::ribbon:
    case K::paper: break;
    }
    return Spent::other;
}

void add_goods(std::map<std::pair<std::string, shop::Material>, MaterialLine>& lines, const std::string& country,
               const shop::GoodCode& code, std::int64_t count, const shop::Cupboard& cupboard, int depth)
{
    const shop::Good* good = cupboard.good(code);
    if (good == nullptr || depth > 8) return;
    for (const shop::SetPart& part : good->parts) {
        add_goods(lines, country, part.good, count * part.count, cupboard, depth + 1);
    }
    if (!good->parts.empty() || good->own_packaging.weight <= Weight{}) return;
    MaterialLine& line = lines[{country, good->own_packaging.material}];
    line.weight += good->own_packaging.weight * count;
    line.of_goods += good->own_packaging.weight * count;
}

} // namespace

std::string_view name_of(Spent spent)
{
    switch (spent) {
    case Spent::outer: return "outer";
    case Spent::wrap: return "wrap";
    case Spent::filler: return "filler";
    case Spent::tape: return "tape";
    case Spent::label: return "label";
    case Spent::insert: return "inserts";
    case Spent::other: return "other";
    case Spent::postage: return "postage";
    }
    return {};
}

ParcelAccount account_of(const ParcelFacts& facts, const shop::Cupboard& cupboard,
                         const std::map<shop::SupplyCode, Money>& average_costs)
{
    const Currency currency = cupboard.house.currency;
    ParcelAccount account;
    account.number = facts.number;
    account.order = facts.order;
    account.shop = facts.shop;
    account.country = facts.country;
    account.packed_on = facts.packed_on;
    account.total = account.paid = Money{0, currency};
    const auto add = [&](Spent on, const Money& amount) {
        if (amount.currency != currency || amount.minor == 0) return;
        account.spent.try_emplace(on, Money{0, currency}).first->second += amount;
        account.total += amount;
    };
    for (const planning::Used& used : facts.plan.uses) {
        const shop::Supply* supply = cupboard.supply(used.supply);
        if (supply == nullptr) continue;
        const auto average = average_costs.find(used.supply);
        const Money unit = average == average_costs.end() ? supply->cost : average->second;
        add(spent_on(supply->kind), share(unit, used.amount.thousandths, 1000));
    }
    if (facts.postage) add(Spent::postage, *facts.postage);
    if (facts.postage_paid && facts.postage_paid->currency == currency) account.paid = *facts.postage_paid;
    account.seconds = static_cast<int>(planning::handwork(facts.plan, cupboard).count());
    account.empty_permille = summarise({{facts.plan, {}, {}, facts.country}}, cupboard).empty_permille();
    account.expected = facts.plan.weight.mean;
    account.weighed = facts.weighed;
    account.overridden = facts.overridden;
    account.came_back = facts.came_back;
    account.restocked = facts.restocked;
    account.written_off = facts.written_off;
    account.back_why = facts.back_why;
    account.again = facts.again;
    return account;
}

std::vector<Sum> sums(const std::vector<ParcelAccount>& accounts, Grouped by, Currency currency)
{
    std::map<std::string, Sum> groups;
    for (const ParcelAccount& a : accounts) {
        const std::string key = by == Grouped::week   ? to_text(monday_of(a.packed_on))
                                : by == Grouped::shop ? a.shop
                                                      : a.country;
        auto [at, fresh] = groups.try_emplace(key);
        Sum& sum = at->second;
        if (fresh) {
            sum.key = key;
            sum.total = sum.paid = sum.lost = sum.again = Money{0, currency};
        }
        ++sum.parcels;
        sum.came_back += a.came_back ? 1 : 0;
        sum.restocked += a.restocked ? 1 : 0;
        sum.overridden += a.overridden ? 1 : 0;
        for (const auto& [on, amount] : a.spent) {
            sum.spent.try_emplace(on, Money{0, currency}).first->second += amount;
        }
        sum.total += a.total;
        sum.paid += a.paid;
        if (a.came_back) sum.lost += a.total;
        if (a.again) sum.again += a.total;
        sum.seconds += a.seconds;
    }
    std::vector<Sum> list;
    list.reserve(groups.size());
    for (auto& [key, sum] : groups) list.push_back(std::move(sum));
    return list;
}

std::vector<MaterialLine> materials(const std::vector<ParcelFacts>& parcels, const shop::Cupboard& cupboard)
{
    std::map<std::pair<std::string, shop::Material>, MaterialLine> lines;
    for (const ParcelFacts& parcel : parcels) {
        for (const shop::Piece& piece : parcel.plan.pieces) {
            add_goods(lines, parcel.country, piece.good, piece.count, cupboard, 0);
        }
        for (const planning::Used& used : parcel.plan.uses) {
            const shop::Supply* supply = cupboard.supply(used.supply);
            if (supply == nullptr || supply->reused) continue;
            lines[{parcel.country, supply->material}].weight +=
                Weight{used.amount.thousandths * supply->weight.mean.units / 1000};
        }
    }
    std::vector<MaterialLine> list;
    for (auto& [key, line] : lines) {
        if (line.weight <= Weight{}) continue;
        line.country = key.first;
        line.material = key.second;
        list.push_back(std::move(line));
    }
    return list;
}

} // namespace stow::records
