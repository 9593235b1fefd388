// Goods, supplies, wrappings, house rules and the house itself.
#pragma once

#include "core/book/steps.h"
#include "core/shop/cupboard.h"
#include "core/shop/dispatch.h"

namespace stow::book {

struct Taken {
    int fresh = 0, unchanged = 0, changed = 0;
    std::optional<StepId> step; // nothing when nothing was new
};
// What is on hand counts for codes that are new; for the others the ledger knows better.
Taken take_in_goods(Book& book, const std::vector<shop::Good>& goods, const std::string& file);
Taken take_in_supplies(Book& book, const std::vector<shop::Supply>& supplies, const std::string& file);
Taken take_in_wrappings(Book& book, const std::vector<shop::Wrapping>& wrappings, const std::string& file);
Taken take_in_rules(Book& book, const std::vector<shop::HouseRule>& rules, const std::string& file); // replaces all

Done put_good(Book& book, const shop::Good& good); // new or edited
Done put_supply(Book& book, const shop::Supply& supply);
Done put_wrapping(Book& book, const shop::Wrapping& wrapping);
Done put_wrappings(Book& book, const std::vector<shop::Wrapping>& wrappings); // these and no others, in one step
Done put_rules(Book& book, const std::vector<shop::HouseRule>& rules);
Done put_house(Book& book, const shop::House& house);
// What of these the house takes for its filler, tape and label where it has none (shop::use_where_none_is).
Done use_where_none_is(Book& book, const std::vector<shop::Supply>& supplies);
Done remove_good(Book& book, const shop::GoodCode& code);
Done remove_supply(Book& book, const shop::SupplyCode& code);
Done remove_wrapping(Book& book, const shop::WrappingCode& code);

// How parcels leave: customs rules, files to carriers and shops, texts, stamps. What `first_dispatch` says until
// changed.
shop::Dispatch dispatch(const Book& book);
Done put_dispatch(Book& book, const shop::Dispatch& settings);

shop::House house(const Book& book);
// All of it, with what is on hand by the ledger (reservations: ledger.h).
shop::Cupboard cupboard(const Book& book);

} // namespace stow::book
