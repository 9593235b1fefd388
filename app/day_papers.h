// The papers of the day as PDF: page models from core/papers, painted by app/painting.
#pragma once

#include "app/day.h"
#include "core/book/parcels.h"

#include <array>
#include <filesystem>
#include <optional>
#include <string_view>
#include <vector>

namespace stow {

enum class PaperKind {
    pick_list,
    packing_slips,
    bench_cards,
    labels,
    return_labels,
    gift_notes,
    customs,
    hand_over_list
};
inline constexpr std::array all_paper_kinds{PaperKind::pick_list, PaperKind::packing_slips, PaperKind::bench_cards,
                                            PaperKind::labels,    PaperKind::return_labels, PaperKind::gift_notes,
                                            PaperKind::customs,   PaperKind::hand_over_list};
std::string_view name_of(PaperKind kind); // as on the command line and in file names: "packing-slips"
std::optional<PaperKind> paper_kind(std::string_view name);
bool only_some_have(PaperKind kind); // parcels that cross a border, gifts: perhaps none today

// Writes one PDF with one paper a parcel (the pick list: one for all of them, trays lettered in their order) into the
// folder, which is made if need be. Gives the file, or nothing when it cannot be written. `reprint` marks the paper.
std::optional<std::filesystem::path> write_paper(const Day& day, PaperKind kind,
                                                 const std::vector<shop::ParcelId>& parcels,
                                                 const std::filesystem::path& folder, bool reprint = false);

std::optional<std::filesystem::path> write_hand_over_list(const Day& day, const book::HandOverList& list,
                                                          const std::filesystem::path& folder, bool reprint = false);

std::optional<std::filesystem::path> write_command_cards(const Day& day, const std::filesystem::path& folder);

// Of the sheet of labels that lies in the printer: the place (from 1) of the first that is left. Labels are laid out
// from there on; once they went to a printer, they are used up.
int next_label(const Day& day);
void use_labels(Day& day, int count);

// Where papers go that she did not send anywhere else: a folder beside the shop book.
std::filesystem::path paper_folder(const Day& day);

} // namespace stow
