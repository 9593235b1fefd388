// Parcels in the book, from the plan to the courier.
#pragma once

#include "core/book/steps.h"
#include "core/planning/plan.h"
#include "core/records/account.h"
#include "core/shop/dispatch.h"
#include "core/weighing/drift.h"
#include "core/weighing/lessons.h"

namespace stow::book {

struct HeldParcel {
    shop::Parcel parcel;
    planning::ParcelPlan plan; // the snapshot it is packed by
    int round = 0;             // of picking; 0: none yet
    Date packed_on{};          // UTC; the first day of time where it is not packed
};

// In place of the planned, unlocked parcels of `orders` come these. Numbers run within the month: 2611-001, 2611-002.
// Refused when an order would have more pieces in parcels than in its lines. Gives the new parcels in the given order.
tl::expected<std::vector<shop::ParcelId>, Refused> put_plan(Book& book, const std::vector<shop::OrderId>& orders,
                                                            const std::vector<planning::ParcelPlan>& plans);
// Another plan for one parcel that is not packed yet (box gone, something added); number, tray and lock stay, bench
// steps start anew.
enum class Kept { as_before, from_now_on }; // from_now_on: chosen by hand, planning again leaves it alone
Done replan(Book& book, shop::ParcelId id, const planning::ParcelPlan& plan, Kept kept = Kept::as_before);
Done drop_parcel(Book& book, shop::ParcelId id); // not once it is packed

std::vector<shop::Parcel> parcels(const Book& book); // without plans, by number
// Those that are not with a carrier yet, and those handed over on a list of this day.
std::vector<shop::Parcel> parcels_of_day(const Book& book, Date day);
std::vector<shop::Parcel> parcels_in(const Book& book, shop::ParcelState state);
std::vector<shop::Parcel> parcels_of(const Book& book, shop::OrderId order); // without those that are sent again
std::optional<HeldParcel> parcel(const Book& book, shop::ParcelId id);
std::optional<HeldParcel> parcel_by_number(const Book& book, std::string_view number);
// Those packed on days from..until (inclusive, UTC), oldest first, as the records need them: without reading their
// plans.
std::vector<records::ParcelFacts> packed_facts(const Book& book, Date from, Date until);
int packed_count(const Book& book, Date from, Date until);

// Its goods are on the shelf again.
bool is_restocked(const Book& book, shop::ParcelId id);

struct Standing {                       // may the parcel go on?
    std::vector<shop::OrderId> changed; // versions grew since it was planned, if any did
    std::vector<shop::OrderId> called_off;
    std::vector<shop::OrderId> aside;
    bool stops() const { return !changed.empty() || !called_off.empty() || !aside.empty(); }
};
Standing parcel_standing(const Book& book, const shop::Parcel& parcel);
// She has looked at the changed order and the parcel still serves.
Done accept_changes(Book& book, shop::ParcelId id);

// Several are one step: all of them, or none and why.
Done lock_parcels(Book& book, const std::vector<shop::ParcelId>& ids);
Done unlock_parcels(Book& book, const std::vector<shop::ParcelId>& ids); // while planned
inline Done lock_parcel(Book& book, shop::ParcelId id)
{
    return lock_parcels(book, {id});
}
inline Done unlock_parcel(Book& book, shop::ParcelId id)
{
    return unlock_parcels(book, {id});
}

struct Tray {
    shop::ParcelId parcel;
    std::string name; // "A"
};
int last_round(const Book& book); // its number; 0: there was none yet
// A round of picking; locks its parcels. Gives the number of the round.
tl::expected<int, Refused> start_round(Book& book, const std::vector<Tray>& trays);
Done mark_picked(Book& book, shop::ParcelId id);
// Picked, but not there or broken: `missing` pieces leave the stock, the orders are set aside, the parcel is dropped.
Done not_there(Book& book, shop::ParcelId id, const shop::GoodCode& good, int missing, const std::string& reason);

// `scanned`: the step just done (steps_done - 1) was done by scanning its goods; going back unsays it.
Done bench_tick(Book& book, shop::ParcelId id, int steps_done, bool scanned = false);
struct Reading {
    shop::WeighingStage stage = shop::WeighingStage::closed;
    Weight weight;
    bool overridden = false;
    std::string why{};                              // of overruling the scale
    std::optional<shop::WeightEstimate> expected{}; // before the scale spoke: the record of estimate against scale
    std::optional<weighing::Lesson> lesson{};       // kept only where not overridden
};
Done weigh(Book& book, shop::ParcelId id, const Reading& reading);
// What the newest weighings teach, oldest first. A weighing that was undone is not among them.
std::vector<weighing::Lesson> lessons(const Book& book, std::size_t most = weighing::lessons_kept);
// The newest weighings with their estimates, oldest first; overridden ones are left out.
std::vector<weighing::Weighed> weighed(const Book& book, shop::WeighingStage stage, std::size_t most = 200);
// Supplies of the plan are used up, goods (of a set: its parts) leave the stock.
Done mark_packed(Book& book, shop::ParcelId id);
Done choose_service(Book& book, shop::ParcelId id, const std::string& carrier, const std::string& service,
                    std::optional<Money> postage);
struct StuckOn {     // which of a parcel's labels
    int print = 0;   // whose code was scanned; 0: none was
    int printed = 0; // so many were made
};
Done mark_labelled(Book& book, shop::ParcelId id, const StuckOn& label = {});
Done set_tracking(Book& book, shop::ParcelId id, const std::string& tracking);
// Many numbers from a file or pasted, by parcel number, as one step. Refused, changing nothing, when a parcel is
// unknown.
Done set_trackings(Book& book, const std::map<std::string, std::string>& tracking_by_number);
// The parcel that holds this tracking number; nothing: none, or several.
std::optional<shop::ParcelId> parcel_by_tracking(const Book& book, std::string_view tracking);
enum class GoodsBack { undecided, on_the_shelf, written_off };
struct CameBack {
    std::string why{};
    GoodsBack goods = GoodsBack::undecided;
    bool send_again = false; // its orders are to be planned anew for what it held
};
// With what becomes of it, which may be said later too: once.
Done mark_came_back(Book& book, shop::ParcelId id, const CameBack& back = {});

struct PostageBought {
    std::int64_t id = 0;
    shop::ParcelId parcel;
    std::string carrier, service;
    Money amount;
    std::string number; // the carrier's, or of the receipt
    Instant at;
    bool refunded = false;
};
// Refused with already_bought when postage stands for this parcel, unless `again`. `stamps` leave the stock.
Done buy_postage(Book& book, const PostageBought& bought, bool again = false,
                 const std::map<shop::SupplyCode, int>& stamps = {});
Done refund_postage(Book& book, std::int64_t id);
std::vector<PostageBought> postage_bought(const Book& book, shop::ParcelId id);

struct HandOverList {
    shop::ListId id;
    std::string carrier;
    Date day;
    int number = 1; // of the carrier's lists that day
    Instant at;
    std::vector<shop::ParcelId> parcels; // by parcel number
};
// The list that `hand_over` would close now, yet without an id; of no parcel: nothing of the carrier may go.
HandOverList next_hand_over(const Book& book, const std::string& carrier);
// Closes a list of exactly the labelled parcels of the carrier that may go; those that stop stay.
tl::expected<HandOverList, Refused> hand_over(Book& book, const std::string& carrier);
std::vector<HandOverList> hand_over_lists(const Book& book); // newest first
std::vector<HandOverList> hand_over_lists(const Book& book, Date day);
std::optional<HandOverList> hand_over_list(const Book& book, shop::ListId id);

} // namespace stow::book
