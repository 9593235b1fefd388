// What changed in the book since it was last looked at, by this program or another, so that a screen over thousands of
// orders reads again what a step touched and no more.
#pragma once

#include "core/book/parcels.h"
#include "core/shop/orders.h"

#include <set>

namespace stow::book {

struct Touched {
    std::set<shop::OrderId> orders; // themselves, their lines, or what is in parcels of them; also those that are gone
    std::set<shop::ParcelId> parcels; // themselves, their plans, pieces or weighings; also those that are gone
    bool cupboard = false;            // goods, supplies, wrappings, rules, the house
    bool rate_sheets = false;
};

using Mark = std::int64_t; // how far the book was looked at; grows with every change
Mark newest_mark(const Book& book);
Touched touched_since(const Book& book, Mark mark);

// The same questions as in orders.h and parcels.h, about these alone.
std::vector<shop::HeldOrder> orders_open(const Book& book, Date since, const std::set<shop::OrderId>& among);
std::vector<shop::Parcel> parcels_of_day(const Book& book, Date day, const std::set<shop::ParcelId>& among);
// The ids of orders_to_plan.
std::set<shop::OrderId> ids_to_plan(const Book& book);
std::set<shop::OrderId> ids_to_plan(const Book& book, const std::set<shop::OrderId>& among);

// The day its plan says that it arrives on, without reading the plan.
Date planned_arrival(const Book& book, shop::ParcelId id);

} // namespace stow::book
