// Days on which a carrier collects and delivers.
#pragma once

#include "core/postage/rate_sheet.h"

namespace stow::postage {

// The hour until which parcels go the same day; nothing: no hour is set.
std::optional<TimeOfDay> cut_off_on(const Service& service, Date day);

// The first day from `day` on which the service collects: its weekdays, or Monday to Friday, and no holiday. A first
// day whose cut-off is before `ready_at` counts as missed.
Date collection_day(const Service& service, const std::vector<Date>& holidays, Date day,
                    std::optional<TimeOfDay> ready_at = std::nullopt);

// `days` working days (Monday to Friday, no holidays) later.
Date working_days_after(Date day, int days, const std::vector<Date>& holidays = {});

} // namespace stow::postage
