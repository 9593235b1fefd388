// The ledger: movements of goods and supplies. Rows are only ever added; on hand is their sum.
#pragma once

#include "core/book/steps.h"
#include "core/shop/supplies.h"

#include <variant>

namespace stow::book {

enum class MovementKind {
    start,    // on hand when first taken in
    received, // from a supplier
    made,     // by her
    used,     // in packing
    sold,     // packed into a parcel
    counted,  // the difference a count found
    spoilt,   // broken, wet, misprinted
    missing,  // not on its shelf when picked
    returned, // came back in a parcel
};
std::string_view name_of(MovementKind kind);
std::optional<MovementKind> movement_kind(std::string_view name);

enum class Ledger { supplies, goods };

struct Movement {
    std::int64_t id = 0;
    StepId step;
    Instant at;
    Ledger ledger = Ledger::supplies;
    std::string code;
    MovementKind kind = MovementKind::start;
    shop::Amount amount; // with its sign; goods in thousandths of a piece as well
    std::optional<shop::ParcelId> parcel;
    std::string reason;
    std::optional<Money> cost; // of all of it, where it was received for a price
    std::string supplier;
};

std::map<shop::SupplyCode, shop::Amount> supplies_on_hand(const Book& book);
std::map<shop::GoodCode, int> pieces_on_hand(const Book& book);
// What planned and picked parcels will use up or take out; packed ones have moved already.
std::map<shop::SupplyCode, shop::Amount> supplies_reserved(const Book& book);
std::map<shop::GoodCode, int> pieces_reserved(const Book& book);

std::vector<Movement> movements(const Book& book); // oldest first
// The newest, oldest first.
std::vector<Movement> movements_of(const Book& book, const shop::SupplyCode& code, std::size_t most = 200);
std::vector<Movement> movements_of(const Book& book, const shop::GoodCode& code, std::size_t most = 200);

// What came in; `cost`: of all of it.
Done receive(Book& book, const shop::SupplyCode& code, shop::Amount amount,
             const std::optional<Money>& cost = std::nullopt, const std::string& supplier = {});
// Of one unit: what was paid for all that came in, by what came in; in the house's currency. Nothing for supplies that
// were never received for a price.
std::map<shop::SupplyCode, Money> average_costs(const Book& book, Currency currency);
// Used in packing in each of the last `weeks` stretches of seven days (of UTC), the last one ending today; oldest
// first, in thousandths; taken back where it was undone. Supplies that were never used are left out.
std::map<shop::SupplyCode, std::vector<std::int64_t>> weekly_use(const Book& book, Instant now, int weeks);
Done count(Book& book, const shop::SupplyCode& code, shop::Amount found, const std::string& reason);
Done spoil(Book& book, const shop::SupplyCode& code, shop::Amount amount, const std::string& reason);
Done make(Book& book, const shop::GoodCode& code, int pieces);
Done count(Book& book, const shop::GoodCode& code, int found, const std::string& reason);
Done spoil(Book& book, const shop::GoodCode& code, int pieces, const std::string& reason);

struct StockCount {
    std::variant<shop::GoodCode, shop::SupplyCode> what;
    shop::Amount found; // goods: whole pieces
};
// A count of many things from a file, as one step. Unknown codes refuse the whole.
Done take_in_stock(Book& book, const std::vector<StockCount>& counts, const std::string& file);

} // namespace stow::book
