// Parcels as rows. For the files of this folder.
#pragma once

#include "core/book/parcels.h"
#include "core/book/step_writer.h"

namespace stow::book {

// Of the parcels that `condition` (SQL over the table parcel) picks, by number.
std::vector<shop::Parcel> read_parcels(const Book& book, const std::string& condition);
std::optional<HeldParcel> read_held(const Book& book, const std::string& condition);
planning::ParcelPlan read_plan(const Book& book, shop::ParcelId id);

// A parcel in one of the states given, or why not.
tl::expected<shop::Parcel, Refused> parcel_in(const Book& book, shop::ParcelId id,
                                              std::initializer_list<shop::ParcelState> states);
// Refuses when an order of the parcel changed, was called off or set aside.
Allowed may_go_on(const Book& book, const shop::Parcel& parcel);
Words words_of(const Book& book, shop::ParcelId id);

void delete_parcel(Writer& writer, shop::ParcelId id);

// The single goods that so many of a good are: itself, or of a set its parts, and theirs.
std::map<shop::GoodCode, int> single_goods(const Book& book, const std::vector<shop::Piece>& pieces);

} // namespace stow::book
