// The plan of a day: one value, computed from orders and cupboard, stored as a snapshot.
#pragma once

#include "core/fitting/answer.h"
#include "core/measure/date.h"
#include "core/postage/quote.h"
#include "core/shop/codes.h"
#include "core/shop/orders.h"
#include "core/shop/parcels.h"
#include "core/shop/supplies.h"

#include <optional>
#include <string>
#include <vector>

namespace stow::planning {

enum class Preference { smallest, cheapest, least_material };
std::string_view name_of(Preference preference); // "smallest", "cheapest", "least-material"
std::optional<Preference> preference(std::string_view name);

// One thing that goes into the outer: a wrapped good, several wrapped together, a gift box with content, an insert, or
// several sheets rolled together.
struct PackedItem {
    enum class Kind { good, gift_box, insert, slip, gift_note, roll } kind = Kind::good;
    std::string id{};          // as the arrangement calls it
    std::string name{};        // for people
    shop::GoodCode good{};     // of a good
    shop::SupplyCode supply{}; // of a gift box or insert
    shop::WrappingCode wrapping{};
    int count = 1;
    Shape shape{}; // wrapped
    bool fragile = false;
    bool rolled = false;               // a sheet that travels rolled
    bool folded = false;               // an insert or slip folded smaller than it could be
    bool under_cushion = false;        // lies flat beneath the cushion of the floor: no place in the arrangement
    shop::WeightEstimate weight{};     // of one, with its wrapping
    std::vector<PackedItem> content{}; // of a gift box or a roll
};

struct Used { // a supply this parcel uses up
    shop::SupplyCode supply;
    shop::Amount amount;
};

// An outer that was looked at and not taken, smallest first.
struct PassedOver {
    shop::SupplyCode outer{};
    OuterForm form{};
    enum class Why {
        does_not_fit,
        undecided,
        none_left,
        no_service,
        dearer,
        too_little_cushion,
        too_late
    } why = Why::does_not_fit;
    fitting::Refusal refusal{}; // for does_not_fit and undecided
    Length gives{};             // does_not_fit: the wrap of what stays out may be pressed by this much; by hand only
};

struct ParcelPlan {
    std::vector<shop::Piece> pieces;
    std::vector<PackedItem> items;
    fitting::Question question; // with the chosen outer only: what the checker judges
    shop::SupplyCode outer;
    std::optional<Length> cut_height; // as the question has it, ease taken off
    std::optional<Length> cut_at;     // true inner height to cut the carton down to
    std::vector<fitting::Placement> placements;
    std::vector<PassedOver> passed_over;
    bool proven_smallest = false;
    Length contents_thickness;
    Size closed;        // with bulge
    Volume void_volume; // inside, around the items
    std::optional<Used> filler;
    Volume filler_volume;
    Length tape;
    std::vector<Used> uses;               // all supplies, outer and filler included
    shop::WeightEstimate weight;          // closed and labelled
    shop::WeightEstimate contents_weight; // goods, wraps and inserts; no outer, no filler
    std::vector<std::string> holds;       // "flammable", "liquid", "glass"
    std::vector<postage::Quote> quotes;
    std::optional<std::size_t> chosen;    // index into quotes; nothing: no service takes it
    Money packaging;                      // cost of all supplies used
    int seconds = 0;                      // of handwork, as her supplies and wrappings say
    Money work;                           // what they count for, where the house sets a rate
    std::optional<Money> saves_if_larger; // a larger outer is cheaper in all by this much
    shop::SupplyCode cheaper_outer;
    int part = 1, parts = 1;                 // of an order that was split
    std::optional<int> split_gap_permille{}; // no way to split it is cheaper by more; 0: proven
    bool squeezed = false;                   // by hand: the wraps are pressed as far as they give
    Date hand_over, delivered;               // with the chosen service: next collection, last likely day of delivery
    bool keeps_promise = true;               // of the promised day, if there is one
};

enum class Stuck {
    unmatched_good,
    unknown_good,
    unpaid,
    set_aside,
    short_of_goods,
    nothing_holds_it,
    no_service,
    missing_size,
    no_gift_box_left
};

struct StuckOrder {
    shop::OrderId order{};
    Stuck why{};
    shop::GoodCode good{};
    int missing = 0;
    std::vector<PassedOver> passed_over{}; // of nothing_holds_it: why each outer does not
    std::vector<postage::Quote> quotes{};  // of no_service: why each does not take the smallest parcel found
};

struct Shortage {
    shop::SupplyCode supply;
    shop::Amount needed, on_hand;
};

// What there is too little of today, and what more of it would be worth.
struct ScarceSupply {
    shop::SupplyCode supply;
    shop::Amount more; // so much more would be used
    int more_go = 0;   // orders
    Money saves;       // packaging and postage of what goes either way
    Volume smaller;    // closed parcels
};

// How far a day shared out may be from the best there is, in the first thing that counts in which they may differ.
struct SharingGap {
    enum class In { orders_going, orders_in_time, filler_and_tape, wish } in = In::wish;
    std::int64_t most = 0; // orders; orders; thousandths of what is used beyond what is there; per mille of the wish
};

// How the day was shared out, against taking the orders one by one from the same stock.
struct DaySharing {
    int moved = 0; // orders that do not have their own best, for the good of the others
    int more_go = 0, more_in_time = 0;
    Money saves;
    Volume smaller;
    std::optional<SharingGap> gap{};    // nothing: none is better by the first wish or by what comes before it
    std::vector<ScarceSupply> scarce{}; // dearest shortage first
};

struct DayPlan {
    Date day;
    Preference preference = Preference::smallest;
    std::vector<ParcelPlan> parcels;
    std::vector<StuckOrder> stuck;
    std::vector<Shortage> shortages;
    Money postage, packaging;
    std::optional<Stop> stopped_by;           // the run ended before all orders were reached
    std::vector<shop::OrderId> not_reached{}; // then
    Volume filler;
    Length tape;
    DaySharing sharing;
};

} // namespace stow::planning
