// The records of a stretch of days, from the book.
#pragma once

#include "app/day.h"
#include "core/records/summary.h"

namespace stow {

// Parcels packed from `from` to `until`, inclusive.
records::Summary records_of(const Day& day, Date from, Date until);

} // namespace stow
