// The records of a stretch of days, from the book.
#pragma once

#include "app/day.h"
#include "core/records/account.h"

#include <filesystem>
#include <optional>

namespace stow {

std::vector<records::ParcelAccount> parcel_accounts(const Day& day, const std::vector<records::ParcelFacts>& facts);

// Packaging of those days by country and material: "packaging.pdf" and "packaging.csv". Nothing: it cannot be written.
std::string materials_csv(const Day& day, const std::vector<records::ParcelFacts>& facts, Date from, Date until);
std::optional<std::filesystem::path> write_material_report(const Day& day,
                                                           const std::vector<records::ParcelFacts>& facts, Date from,
                                                           Date until, const std::filesystem::path& folder);

} // namespace stow
