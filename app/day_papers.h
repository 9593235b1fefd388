// The papers of the day as PDF: page models from core/papers, painted by app/painting.
#pragma once

#include "app/day.h"
#include "app/painting/palette.h"
#include "core/book/parcels.h"
#include "core/papers/display_list.h"
#include "core/papers/label.h"

#include <array>
#include <filesystem>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace stow {

enum class PaperKind {
    pick_list,
    pick_list_by_order,
    packing_slips,
    bench_cards,
    labels,
    return_labels,
    gift_notes,
    customs,
    hand_over_list
};
inline constexpr std::array all_paper_kinds{
    PaperKind::pick_list,     PaperKind::pick_list_by_order, PaperKind::packing_slips, PaperKind::bench_cards,
    PaperKind::labels,        PaperKind::return_labels,      PaperKind::gift_notes,    PaperKind::customs,
    PaperKind::hand_over_list};
std::string_view name_of(PaperKind kind); // as on the command line and in file names: "packing-slips"
std::optional<PaperKind> paper_kind(std::string_view name);
bool only_some_have(PaperKind kind); // parcels that cross a border, gifts: perhaps none today

// One paper a parcel (the pick lists: one for all of them, trays lettered in their order), as it would come out now:
// what came out before says so. No page: none of them has it.
papers::Document paper_of(const Day& day, PaperKind kind, const std::vector<shop::ParcelId>& parcels);
papers::Document paper_of_round(const Day& day, PaperKind kind,
                                const std::vector<book::Tray>& round); // not started yet
const painting::Palette& palette_of(const Day& day, PaperKind kind);   // labels are always black

// As one PDF in the folder, which is made if need be. Gives the file, or nothing when it cannot be written.
std::optional<std::filesystem::path> write_paper(const Day& day, PaperKind kind,
                                                 const std::vector<shop::ParcelId>& parcels,
                                                 const std::filesystem::path& folder);
// The same, to be used: the next print of it will say that it is not the first.
std::optional<std::filesystem::path> print_paper(Day& day, PaperKind kind, const std::vector<shop::ParcelId>& parcels,
                                                 const std::filesystem::path& folder);

papers::Document hand_over_paper(const Day& day, const book::HandOverList& list);
std::optional<std::filesystem::path> print_hand_over_list(Day& day, const book::HandOverList& list,
                                                          const std::filesystem::path& folder);

papers::Document command_cards(const Day& day);
std::optional<std::filesystem::path> write_command_cards(const Day& day, const std::filesystem::path& folder);

int labels_printed(const Day& day, const std::string& parcel); // prints of its address label so far; 0: none

// What of them their address labels have room for, by parcel number; as they were printed last.
std::map<std::string, papers::LabelFit> label_fits(const Day& day, const std::vector<shop::ParcelId>& parcels);

// Of the sheet of labels that lies in the printer: the place (from 1) of the first that is left. Labels are laid out
// from there on; once they went to a printer, they are used up.
int next_label(const Day& day);
void use_labels(Day& day, int count);

// Where papers go that she did not send anywhere else: a folder beside the shop book.
std::filesystem::path paper_folder(const Day& day);

} // namespace stow
