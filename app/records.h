// The records of a stretch of days, from the book.
#pragma once

#include "app/day.h"
#include "core/records/account.h"
#include "core/records/size_advice.h"
#include "core/records/summary.h"

namespace stow {

// Parcels packed from `from` to `until`, inclusive.
records::Summary records_of(const Day& day, Date from, Date until);

// Each parcel packed in those days, for accounts and materials.
std::vector<records::ParcelFacts> parcel_facts(const Day& day, Date from, Date until);
std::vector<records::ParcelAccount> parcel_accounts(const Day& day, const std::vector<records::ParcelFacts>& facts);

// The blocks that contents were packed as, of all cartons packed in those days: for the choice of sizes.
std::vector<records::PackedShape> packed_shapes(const Day& day, Date from, Date until);

} // namespace stow
