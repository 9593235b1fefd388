#include "core/records/account.h"

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

// Volume of the goods; a set is what its parts are.
Volume volume_of(const shop::GoodCode& code, std::int64_t count, const shop::Cupboard& cupboard, int depth = 0)
{
    const shop::Good* good = cupboard.good(code);
    if (good == nullptr || depth > 8) return {};
    if (good->parts.empty()) return volume(bounding_size(good->shape)) * count;
    Volume sum;
    for (const shop::SetPart& part : good->parts) sum += volume_of(part.good, part.count * count, cupboard, depth + 1);
    return sum;
}

std::optional<int> permille_empty(Volume closed, Volume goods)
{
    if (closed <= Volume{}) return std::nullopt;
    // Millilitres: permille of many parcels' 0.001 mm³ would not fit.
    const std::int64_t whole = closed.units / 1'000'000;
    if (whole == 0) return std::nullopt;
    const std::int64_t empty = whole - goods.units / 1'000'000;
    return static_cast<int>((empty * 1000 + whole / 2) / whole);
}

Sum nothing(Currency currency)
{
    Sum sum;
    sum.total = sum.paid = sum.lost = sum.for_again = Money{0, currency};
    return sum;
}

void add(Sum& sum, const ParcelAccount& a)
{
    ++sum.parcels;
    sum.came_back += a.came_back ? 1 : 0;
    sum.restocked += a.restocked ? 1 : 0;
    sum.written_off += a.written_off ? 1 : 0;
    sum.overridden += a.overridden ? 1 : 0;
    sum.again += a.again ? 1 : 0;
    for (const auto& [on, amount] : a.spent) {
        sum.spent.try_emplace(on, Money{0, amount.currency}).first->second += amount;
    }
    sum.total += a.total;
    sum.paid += a.paid;
    if (a.came_back) sum.lost += a.total;
    if (a.again) sum.for_again += a.total;
    sum.in_other_currency += a.in_other_currency;
    sum.seconds += a.seconds;
    sum.closed += a.closed;
    sum.goods += a.goods;
    if (a.weighed) {
        const Weight difference = *a.weighed - a.expected;
        sum.off += difference < Weight{} ? -difference : difference;
        ++sum.weighed;
    }
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
    const auto ours = [&](const Money& amount) {
        if (amount.currency != currency) ++account.in_other_currency;
        return amount.currency == currency;
    };
    const auto add = [&](Spent on, const Money& amount) {
        if (amount.minor == 0 || !ours(amount)) return;
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
    if (facts.postage_paid && ours(*facts.postage_paid)) account.paid = *facts.postage_paid;
    account.seconds = facts.plan.seconds;
    account.closed = volume(facts.plan.closed);
    for (const shop::Piece& piece : facts.pieces) account.goods += volume_of(piece.good, piece.count, cupboard);
    account.expected = facts.plan.weight.mean;
    account.weighed = facts.weighed;
    account.overridden = facts.overridden;
    account.overridden_why = facts.overridden_why;
    account.came_back = facts.came_back;
    account.restocked = facts.restocked;
    account.written_off = facts.written_off;
    account.back_why = facts.back_why;
    account.again = facts.again;
    return account;
}

std::optional<int> ParcelAccount::empty_permille() const
{
    return permille_empty(closed, goods);
}

std::optional<int> Sum::empty_permille() const
{
    return permille_empty(closed, goods);
}

Weight Sum::off_by() const
{
    return weighed > 0 ? Weight{(off.units + weighed / 2) / weighed} : Weight{};
}

std::string key_of(const ParcelAccount& account, Grouped by)
{
    switch (by) {
    case Grouped::week: return to_text(monday_of(account.packed_on));
    case Grouped::shop: return account.shop;
    case Grouped::country: break;
    }
    return account.country;
}

Sum sum_of(const std::vector<ParcelAccount>& accounts, Currency currency)
{
    Sum sum = nothing(currency);
    for (const ParcelAccount& a : accounts) add(sum, a);
    return sum;
}

std::vector<Sum> sums(const std::vector<ParcelAccount>& accounts, Grouped by, Currency currency)
{
    std::map<std::string, Sum> groups;
    for (const ParcelAccount& a : accounts) {
        add(groups.try_emplace(key_of(a, by), nothing(currency)).first->second, a);
    }
    std::vector<Sum> list;
    list.reserve(groups.size());
    for (auto& [key, sum] : groups) {
        sum.key = key;
        list.push_back(std::move(sum));
    }
    return list;
}

std::vector<MaterialLine> materials(const std::vector<ParcelFacts>& parcels, const shop::Cupboard& cupboard)
{
    std::map<std::pair<std::string, shop::Material>, MaterialLine> lines;
    for (const ParcelFacts& parcel : parcels) {
        for (const shop::Piece& piece : parcel.pieces) {
            add_goods(lines, parcel.country, piece.good, piece.count, cupboard, 0);
        }
        for (const planning::Used& used : parcel.plan.uses) {
            const shop::Supply* supply = cupboard.supply(used.supply);
            if (supply == nullptr) continue;
            MaterialLine& line = lines[{parcel.country, supply->material}];
            const Weight used_up{used.amount.thousandths * supply->weight.mean.units / 1000};
            (supply->reused ? line.again : line.weight) += used_up;
        }
    }
    std::vector<MaterialLine> list;
    for (auto& [key, line] : lines) {
        if (line.weight + line.again <= Weight{}) continue;
        line.country = key.first;
        line.material = key.second;
        list.push_back(std::move(line));
    }
    return list;
}

} // namespace stow::records
