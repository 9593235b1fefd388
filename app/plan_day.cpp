#include "app/plan_day.h"

#include "core/book/settings.h"

#include <algorithm>
#include <set>
#include <sstream>

namespace stow {

namespace {

constexpr const char* remembered_stuck = "plan.stuck";
constexpr const char* remembered_sharing = "plan.sharing";

// What parcels that stay as they are will still take from shelf and rack.
void reserve(const Day& day, const std::set<shop::ParcelId>& free, planning::Wish& wish)
{
    for (const shop::ParcelState state : {shop::ParcelState::planned, shop::ParcelState::picked}) {
        for (const shop::Parcel& parcel : book::parcels_in(day.book(), state)) {
            if (free.contains(parcel.id)) continue;
            const auto held = book::parcel(day.book(), parcel.id);
            wish.reserved.insert(wish.reserved.end(), held->plan.uses.begin(), held->plan.uses.end());
            for (const shop::Piece& piece : parcel.pieces) wish.reserved_goods.push_back({piece.good, piece.count});
        }
    }
}

std::vector<shop::OrderId> ids_of(const std::vector<shop::HeldOrder>& orders)
{
    std::vector<shop::OrderId> ids;
    ids.reserve(orders.size());
    for (const shop::HeldOrder& held : orders) ids.push_back(held.id);
    return ids;
}

planning::Wish wish_of(const Day& day, planning::Preference preference)
{
    planning::Wish wish;
    wish.day = day.today();
    wish.preference = preference;
    wish.ready_at = day.time();
    return wish;
}

constexpr int no_gap = -1;

// First what was gained, then a line for each scarce supply.
std::string written(const planning::DaySharing& sharing)
{
    std::ostringstream out;
    out << sharing.moved << ' ' << sharing.more_go << ' ' << sharing.more_in_time << ' ' << sharing.saves.minor << ' '
        << sharing.smaller.units << ' ' << (sharing.gap ? static_cast<int>(sharing.gap->in) : no_gap) << ' '
        << (sharing.gap ? sharing.gap->most : 0) << '\n';
    for (const planning::ScarceSupply& s : sharing.scarce) {
        out << s.more.thousandths << ' ' << s.more_go << ' ' << s.saves.minor << ' ' << s.smaller.units << ' '
            << s.supply.text << '\n';
    }
    return out.str();
}

} // namespace

PlanInput gather(const Day& day, planning::Preference preference)
{
    PlanInput input{day.cupboard(), book::orders_to_plan(day.book()), day.rate_sheets(), wish_of(day, preference)};
    std::set<shop::ParcelId> replaced;
    for (const shop::HeldOrder& held : input.orders) {
        for (const shop::Parcel& parcel : book::parcels_of(day.book(), held.id)) {
            if (parcel.state != shop::ParcelState::planned || parcel.locked) continue;
            replaced.insert(parcel.id);
            // What she saw this morning stays as it was where nothing is lost by it.
            if (const auto before = book::parcel(day.book(), parcel.id); before->plan.parts == 1) {
                input.wish.before[before->plan.pieces.front().order] = before->plan.outer;
            }
        }
    }
    reserve(day, replaced, input.wish);
    return input;
}

tl::expected<std::vector<shop::ParcelId>, book::Refused> store(Day& day, const PlanInput& input,
                                                               const planning::DayPlan& plan)
{
    auto stored = book::put_plan(day.book(), ids_of(input.orders), plan.parcels);
    if (!stored) return stored;
    std::ostringstream stuck; // one a line: order, why, how many missing, good
    for (const planning::StuckOrder& s : plan.stuck) {
        stuck << s.order.value << ' ' << static_cast<int>(s.why) << ' ' << s.missing << ' ' << s.good.text << '\n';
    }
    book::remember(day.book(), remembered_stuck, stuck.str());
    book::remember(day.book(), remembered_sharing, written(plan.sharing));
    day.moved();
    return stored;
}

std::vector<planning::StuckOrder> still_stuck(const Day& day)
{
    std::istringstream lines(book::remembered(day.book(), remembered_stuck).value_or(""));
    std::vector<planning::StuckOrder> all;
    for (std::string line; std::getline(lines, line);) {
        std::istringstream words(line);
        planning::StuckOrder stuck;
        int why = 0;
        if (!(words >> stuck.order.value >> why >> stuck.missing)) continue;
        if (why < 0 || why > static_cast<int>(planning::Stuck::no_gift_box_left)) continue;
        stuck.why = static_cast<planning::Stuck>(why);
        std::getline(words >> std::ws, stuck.good.text);
        if (day.to_plan().contains(stuck.order) && book::parcels_of(day.book(), stuck.order).empty())
            all.push_back(std::move(stuck));
    }
    return all;
}

planning::DaySharing last_sharing(const Day& day)
{
    std::istringstream in(book::remembered(day.book(), remembered_sharing).value_or(""));
    planning::DaySharing sharing;
    sharing.saves.currency = day.cupboard().house.currency;
    int gap_in = no_gap;
    std::int64_t gap = 0;
    in >> sharing.moved >> sharing.more_go >> sharing.more_in_time >> sharing.saves.minor >> sharing.smaller.units >>
        gap_in >> gap;
    if (!in) return {};
    if (gap_in != no_gap) sharing.gap = planning::SharingGap{static_cast<planning::SharingGap::In>(gap_in), gap};
    planning::ScarceSupply scarce;
    scarce.saves.currency = sharing.saves.currency;
    while (in >> scarce.more.thousandths >> scarce.more_go >> scarce.saves.minor >> scarce.smaller.units) {
        std::getline(in >> std::ws, scarce.supply.text);
        sharing.scarce.push_back(scarce);
    }
    return sharing;
}

std::optional<ParcelInput> gather(const Day& day, shop::ParcelId id)
{
    const auto held = book::parcel(day.book(), id);
    if (!held) return std::nullopt;
    ParcelInput input{day.cupboard(),
                      {},
                      held->parcel.pieces,
                      day.rate_sheets(),
                      wish_of(day, planning::Preference::smallest),
                      held->plan.part,
                      held->plan.parts};
    for (const shop::Piece& piece : input.pieces) {
        const bool known =
            std::any_of(input.orders.begin(), input.orders.end(), [&](const auto& o) { return o.id == piece.order; });
        if (const shop::HeldOrder* order = day.order(piece.order); order != nullptr && !known)
            input.orders.push_back(*order);
    }
    input.wish.first_part = input.part == 1;
    reserve(day, {id}, input.wish);
    return input;
}

tl::expected<planning::ParcelPlan, planning::StuckOrder>
plan(const ParcelInput& input, const std::optional<shop::SupplyCode>& outer, Run& run, fitting::Memory* memory)
{
    auto made = planning::plan_parcel(input.cupboard, input.orders, input.pieces, input.rate_sheets, input.wish, outer,
                                      run, memory);
    if (made) {
        made->part = input.part;
        made->parts = input.parts;
    }
    return made;
}

tl::expected<planning::ParcelPlan, NotRepacked>
repack(Day& day, shop::ParcelId id, const std::optional<shop::SupplyCode>& outer, Run& run, fitting::Memory* memory)
{
    const auto input = gather(day, id);
    if (!input) return tl::unexpected(NotRepacked{book::Refused{book::Why::unknown_parcel, {}, {}}});
    auto made = plan(*input, outer, run, memory);
    if (!made) return tl::unexpected(NotRepacked{made.error()});
    const auto kept = outer ? book::Kept::from_now_on : book::Kept::as_before;
    if (const auto done = book::replan(day.book(), id, *made, kept); !done)
        return tl::unexpected(NotRepacked{done.error()});
    day.moved();
    return *made;
}

} // namespace stow
