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

struct ParcelFacts { // as the book holds them
    std::string number, order, shop, country;
    Date packed_on;
    planning::ParcelPlan plan;
    std::optional<Money> postage;      // spent
    std::optional<Money> postage_paid; // by the buyer, for the whole order; given with its first parcel only
    std::optional<Weight> weighed;     // closed or labelled
    bool overridden = false;           // she said the weight is right although it did not look so
    bool came_back = false, restocked = false, written_off = false;
    std::string back_why;
    bool again = false; // carries what came back in another parcel
};

struct ParcelAccount {
    std::string number, order, shop, country;
    Date packed_on;
    std::map<Spent, Money> spent;
    Money total, paid; // paid: postage by the buyer
    int seconds = 0;   // to make up outers and to wrap, as far as she gave times
    std::optional<int> empty_permille;
    Weight expected;
    std::optional<Weight> weighed;
    bool overridden = false, came_back = false, restocked = false, written_off = false;
    std::string back_why;
    bool again = false;
};

// In the currency of the house; amounts in others are left out. Supplies cost what they cost on average when received,
// else what their definition says.
ParcelAccount account_of(const ParcelFacts& facts, const shop::Cupboard& cupboard,
                         const std::map<shop::SupplyCode, Money>& average_costs);

enum class Grouped { week, shop, country };
struct Sum {
    std::string key; // Monday of the week as 2026-11-23, shop, or country
    int parcels = 0, came_back = 0, restocked = 0, overridden = 0;
    std::map<Spent, Money> spent;
    Money total, paid;
    Money lost;  // cost of parcels that came back
    Money again; // cost of parcels that carry it once more
    int seconds = 0;
};
std::vector<Sum> sums(const std::vector<ParcelAccount>& accounts, Grouped by, Currency currency); // by key

// Packaging put on the market in a stretch of days: grams by country and material. Outers that came in with others'
// goods and are used again are not counted; the goods' own packaging is.
struct MaterialLine {
    std::string country;
    shop::Material material = shop::Material::paper;
    Weight weight, of_goods; // of_goods: the part that is the goods' own packaging
};
std::vector<MaterialLine> materials(const std::vector<ParcelFacts>& parcels, const shop::Cupboard& cupboard);

} // namespace stow::records
