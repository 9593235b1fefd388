// The records of a stretch of days, from the book.
#pragma once

#include "app/day.h"
#include "core/papers/display_list.h"
#include "core/records/account.h"

#include <filesystem>
#include <optional>

namespace stow {

struct RecordsRead {
    std::vector<records::ParcelFacts> facts;
    std::vector<records::ParcelAccount> accounts; // of the same parcels
};
RecordsRead read_records(const book::Book& book, const shop::Cupboard& cupboard, Date from, Date until);

// Packaging of those days by country and material: "packaging.pdf" and "packaging.csv". Nothing: it cannot be written.
std::string materials_csv(const Day& day, const std::vector<records::ParcelFacts>& facts, Date from, Date until);
papers::Document material_paper(const Day& day, const std::vector<records::ParcelFacts>& facts, Date from, Date until);
std::optional<std::filesystem::path> print_material_report(Day& day, const std::vector<records::ParcelFacts>& facts,
                                                           Date from, Date until, const std::filesystem::path& folder);

} // namespace stow
