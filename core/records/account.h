// What each packed parcel cost, by what it was spent on, and the sums by week, shop or country.
#pragma once

#include "core/planning/plan.h"
#include "core/shop/cupboard.h"

#include <array>
#include <map>
#include <string>
#include <vector>

namespace stow::records {

enum class Spent { outer, wrap, filler, tape, label, insert, other, postage };
inline constexpr std::array all_spent{Spent::outer, Spent::wrap,   Spent::filler, Spent::tape,
                                      Spent::label, Spent::insert, Spent::other,  Spent::postage};
std::string_view name_of(Spent spent);

// What records need of a parcel's plan.
struct PlannedPart {
    std::vector<planning::Used> uses;
    Size closed;
    shop::WeightEstimate weight, contents; // closed and labelled; goods, wraps and inserts alone
    int seconds = 0;                       // of handwork
    OuterKind kind = OuterKind::carton;    // of the outer
    Length lining;                         // kept free along its walls
    Size reach;                            // of what lies in it, from the inner corner; nothing is laid: 0
};

struct ParcelFacts { // as the book holds them
    std::string number, order, shop, country;
    Date packed_on;
    std::vector<shop::Piece> pieces;
    PlannedPart plan;
    std::optional<Money> postage;      // spent
    std::optional<Money> postage_paid; // by the buyer, for the whole order; given with its first parcel only
    std::optional<Weight> weighed;     // closed or labelled
    bool overridden = false;           // she said the weight is right although it did not look so
    std::string overridden_why;
    bool came_back = false, restocked = false, written_off = false;
    std::string back_why;
    bool again = false; // carries what came back in another parcel
};

struct ParcelAccount {
    std::string number, order, shop, country;
    Date packed_on;
    std::map<Spent, Money> spent;
    Money total, paid;         // paid: postage by the buyer
    int in_other_currency = 0; // amounts that are in neither of them
    int seconds = 0;           // to make up outers and to wrap, as far as she gave times
    Volume closed, goods;      // of the closed parcel, and of the goods in it
    Weight expected;
    std::optional<Weight> weighed;
    bool overridden = false, came_back = false, restocked = false, written_off = false;
    std::string overridden_why, back_why;
    bool again = false;

    std::optional<int> empty_permille() const; // as Sum::empty_permille
};

// In the currency of the house; amounts in others are left out. Supplies cost what they cost on average when received,
// else what their definition says.
ParcelAccount account_of(const ParcelFacts& facts, const shop::Cupboard& cupboard,
                         const std::map<shop::SupplyCode, Money>& average_costs);

enum class Grouped { week, shop, country };
struct Sum {
    std::string key; // Monday of the week as 2026-11-23, shop, or country; of all: nothing
    int parcels = 0, came_back = 0, restocked = 0, written_off = 0, overridden = 0, again = 0;
    std::map<Spent, Money> spent;
    Money total, paid;
    Money lost;      // cost of parcels that came back
    Money for_again; // cost of parcels that carry it once more
    int in_other_currency = 0;
    int seconds = 0;
    Volume closed, goods;
    int weighed = 0;
    Weight off; // sum of the absolute differences of estimate and scale

    // The share of empty space in 0.1 %, after Regulation (EU) 2025/40, Article 24: what is not goods counts as empty,
    // filler and wraps too. Our estimate: the total is taken as the closed outer's volume; the official method was not
    // adopted when this was written. Nothing where there are no parcels.
    std::optional<int> empty_permille() const;
    Weight off_by() const; // on average; nothing weighed: 0
};
Sum sum_of(const std::vector<ParcelAccount>& accounts, Currency currency);
std::vector<Sum> sums(const std::vector<ParcelAccount>& accounts, Grouped by, Currency currency); // by key
std::string key_of(const ParcelAccount& account, Grouped by);

// Packaging that left in a stretch of days: grams by country and material, the goods' own with it. What came in with
// others' goods and is used again was put on the market by them: it stands apart.
struct MaterialLine {
    std::string country;
    shop::Material material = shop::Material::paper;
    Weight weight, of_goods; // of_goods: the part that is the goods' own packaging
    Weight again;            // used again; not in `weight`
};
std::vector<MaterialLine> materials(const std::vector<ParcelFacts>& parcels, const shop::Cupboard& cupboard);

} // namespace stow::records
