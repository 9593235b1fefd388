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

// One thing that goes into the outer: a wrapped good, several wrapped together, a gift box with content, or an insert.
struct PackedItem {
    enum class Kind { good, gift_box, insert, slip } kind = Kind::good;
    std::string id;          // as the arrangement calls it
    std::string name;        // for people
    shop::GoodCode good;     // of a good
    shop::SupplyCode supply; // of a gift box or insert
    shop::WrappingCode wrapping;
    int count = 1;
    Shape shape; // wrapped
    bool fragile = false;
    bool rolled = false;             // a sheet that travels rolled
    shop::WeightEstimate weight;     // of one, with its wrapping
    std::vector<PackedItem> content; // of a gift box
};

struct Used { // a supply this parcel uses up
    shop::SupplyCode supply;
    shop::Amount amount;
};

// An outer that was looked at and not taken, smallest first.
struct PassedOver {
    shop::SupplyCode outer;
    OuterForm form;
    enum class Why { does_not_fit, undecided, none_left, no_service, dearer } why = Why::does_not_fit;
    fitting::Refusal refusal; // for does_not_fit and undecided
};

struct ParcelPlan {
    std::vector<shop::Piece> pieces;
    std::vector<PackedItem> items;
    fitting::Question question; // with the chosen outer only: what the checker judges
    shop::SupplyCode outer;
    std::optional<Length> cut_height;
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
    std::optional<Money> saves_if_larger; // a larger outer is cheaper in all by this much
    shop::SupplyCode cheaper_outer;
    int part = 1, parts = 1; // of an order that was split
};

enum class Stuck {
    unmatched_good,
    unknown_good,
    unpaid,
    set_aside,
    short_of_goods,
    nothing_holds_it,
    no_service,
    missing_size
};

struct StuckOrder {
    shop::OrderId order;
    Stuck why;
    shop::GoodCode good;
    int missing = 0;
};

struct Shortage {
    shop::SupplyCode supply;
    shop::Amount needed, on_hand;
};

struct DayPlan {
    Date day;
    Preference preference = Preference::smallest;
    std::vector<ParcelPlan> parcels;
    std::vector<StuckOrder> stuck;
    std::vector<Shortage> shortages;
    Money postage, packaging;
    Volume filler;
    Length tape;
};

} // namespace stow::planning
